// SPDX-License-Identifier: MIT
// Help for tests of outlines from files: a folder of their own, and GEOS as the judge.
#pragma once

#include <geos_c.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "creaseline/base/error.h"
#include "creaseline/shape/outline.h"

namespace creaseline::test {

// A file that lives as long as the test, in a folder of its own.
class ScratchFile {
 public:
  ScratchFile(const std::string& name, std::string_view content) {
    std::string pattern =
        (std::filesystem::temp_directory_path() / "creaseline-outline-XXXXXX").string();
    REQUIRE(::mkdtemp(pattern.data()) != nullptr);
    folder_ = pattern;
    path_ = folder_ / name;
    std::ofstream(path_, std::ios::binary) << content;
  }
  ScratchFile(const ScratchFile&) = delete;
  ScratchFile& operator=(const ScratchFile&) = delete;
  ~ScratchFile() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path folder_;
  std::filesystem::path path_;
};

// GEOS 3.11, the geometry library that knows nothing of ours.
class OutlineOracle {
 public:
  using Geometry = std::shared_ptr<GEOSGeometry>;

  OutlineOracle() : handle_(GEOS_init_r(), &GEOS_finish_r) {}

  [[nodiscard]] Geometry polygon(const Piece& piece) const {
    std::vector<GEOSGeometry*> holes;
    for (const Ring& hole : piece.holes) {
      holes.push_back(linearRing(hole));
    }
    return own(GEOSGeom_createPolygon_r(get(), linearRing(piece.outer), holes.data(),
                                        static_cast<unsigned>(holes.size())));
  }
  [[nodiscard]] Geometry unionOf(const Geometry& a, const Geometry& b) const {
    return own(GEOSUnion_r(get(), a.get(), b.get()));
  }
  [[nodiscard]] Geometry unionOf(const Outline& outline) const {
    Geometry all = own(GEOSGeom_createEmptyPolygon_r(get()));
    for (const Piece& piece : outline.pieces) {
      all = unionOf(all, polygon(piece));
    }
    return all;
  }
  [[nodiscard]] bool valid(const Geometry& geometry) const {
    return GEOSisValid_r(get(), geometry.get()) == 1;
  }
  [[nodiscard]] double area(const Geometry& geometry) const {
    double area = -1.0;
    GEOSArea_r(get(), geometry.get(), &area);
    return area;
  }
  // The largest distance of any boundary point of one from the other's boundary, either way.
  [[nodiscard]] double boundaryDistance(const Geometry& a, const Geometry& b) const {
    const Geometry boundaryA = own(GEOSBoundary_r(get(), a.get()));
    const Geometry boundaryB = own(GEOSBoundary_r(get(), b.get()));
    double distance = -1.0;
    GEOSHausdorffDistanceDensify_r(get(), boundaryA.get(), boundaryB.get(), 0.1, &distance);
    return distance;
  }

 private:
  [[nodiscard]] GEOSContextHandle_t get() const { return handle_.get(); }
  [[nodiscard]] Geometry own(GEOSGeometry* geometry) const {
    REQUIRE(geometry != nullptr);
    return {geometry, [handle = handle_](GEOSGeometry* g) { GEOSGeom_destroy_r(handle.get(), g); }};
  }
  [[nodiscard]] GEOSGeometry* linearRing(const Ring& ring) const {
    const auto size = static_cast<unsigned>(ring.size());
    GEOSCoordSequence* points = GEOSCoordSeq_create_r(get(), size + 1, 2);
    for (unsigned i = 0; i <= size; ++i) {
      GEOSCoordSeq_setXY_r(get(), points, i, ring[i % size].x, ring[i % size].y);
    }
    return GEOSGeom_createLinearRing_r(get(), points);
  }

  std::shared_ptr<GEOSContextHandle_HS> handle_;
};

// The details of the refusal; the test fails if there is none.
template <class Read>
InputError::Details refusalOf(Read read) {
  try {
    read();
  } catch (const InputError& error) {
    CHECK_FALSE(error.details().expected.empty());
    CHECK_FALSE(error.details().found.empty());
    return error.details();
  }
  FAIL("nothing was refused");
  return {};
}

}  // namespace creaseline::test
