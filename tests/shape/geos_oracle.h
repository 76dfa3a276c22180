// SPDX-License-Identifier: MIT
// GEOS, an independent geometry library, as the oracle of the shape tests.
#pragma once

#include <geos_c.h>

#include <memory>
#include <vector>

#include "creaseline/shape/outline.h"

namespace creaseline::test {

class Geos {
 public:
  using Handle = GEOSContextHandle_t;
  struct Free {
    Handle handle = nullptr;
    void operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(handle, geometry); }
    void operator()(const GEOSPreparedGeometry* prepared) const {
      GEOSPreparedGeom_destroy_r(handle, prepared);
    }
  };
  using Geometry = std::unique_ptr<GEOSGeometry, Free>;
  using Prepared = std::unique_ptr<const GEOSPreparedGeometry, Free>;

  Geos() : handle_(GEOS_init_r()) {}
  ~Geos() { GEOS_finish_r(handle_); }
  Geos(const Geos&) = delete;
  Geos& operator=(const Geos&) = delete;

  [[nodiscard]] Handle handle() const { return handle_; }

  [[nodiscard]] Geometry polygon(const Ring& ring, Point shift = {}) const {
    return own(GEOSGeom_createPolygon_r(
        handle_, GEOSGeom_createLinearRing_r(handle_, closedSequence(ring, shift)), nullptr, 0));
  }
  [[nodiscard]] Geometry linearRing(const Ring& ring) const {
    return own(GEOSGeom_createLinearRing_r(handle_, closedSequence(ring, {})));
  }
  [[nodiscard]] Geometry segment(Point from, Point to) const {
    GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(handle_, 2, 2);
    GEOSCoordSeq_setXY_r(handle_, sequence, 0, from.x, from.y);
    GEOSCoordSeq_setXY_r(handle_, sequence, 1, to.x, to.y);
    return own(GEOSGeom_createLineString_r(handle_, sequence));
  }
  [[nodiscard]] Geometry point(Point at) const {
    return own(GEOSGeom_createPointFromXY_r(handle_, at.x, at.y));
  }
  [[nodiscard]] Geometry own(GEOSGeometry* geometry) const { return {geometry, Free{handle_}}; }
  [[nodiscard]] Prepared prepare(const Geometry& geometry) const {
    return {GEOSPrepare_r(handle_, geometry.get()), Free{handle_}};
  }
  [[nodiscard]] bool covers(const Prepared& outer, const Geometry& inner) const {
    return GEOSPreparedCovers_r(handle_, outer.get(), inner.get()) == 1;
  }
  [[nodiscard]] double distance(const Geometry& a, const Geometry& b) const {
    double value = -1.0;
    GEOSDistance_r(handle_, a.get(), b.get(), &value);
    return value;
  }
  [[nodiscard]] double area(const Geometry& geometry) const {
    double value = -1.0;
    GEOSArea_r(handle_, geometry.get(), &value);
    return value;
  }

 private:
  [[nodiscard]] GEOSCoordSequence* closedSequence(const Ring& ring, Point shift) const {
    const auto count = static_cast<unsigned>(ring.size());
    GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(handle_, count + 1, 2);
    for (unsigned i = 0; i <= count; ++i) {
      const Point point = ring[i % count] + shift;
      GEOSCoordSeq_setXY_r(handle_, sequence, i, point.x, point.y);
    }
    return sequence;
  }

  Handle handle_;
};

// Whether any translation brings the points inside, by GEOS: the windows moved by minus each
// point must have a place in common.
inline bool fitsByGeos(const Geos& geos, const std::vector<Ring>& windows,
                       const std::vector<Point>& points) {
  auto common = geos.polygon(windows.front(), -points.front());
  for (const Ring& window : windows) {
    for (const Point& point : points) {
      const auto moved = geos.polygon(window, -point);
      common = geos.own(GEOSIntersection_r(geos.handle(), common.get(), moved.get()));
      if (GEOSisEmpty_r(geos.handle(), common.get()) == 1) {
        return false;
      }
    }
  }
  return true;
}

}  // namespace creaseline::test
