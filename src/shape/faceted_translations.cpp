// SPDX-License-Identifier: MIT
// Translations that keep a hull inside a convex polygon: one half-plane for each face,
// normal . t <= offset - support(normal), with the hull's support function.
#include "shape/nearest.h"
#include "shape/opening_part.h"

namespace creaseline {

namespace {

// Far beyond any cloth; where the faces themselves end the region, this never shows.
constexpr double kFarMm = 1e7;

// Support values for normals in order of angle: the supporting point only moves on around the
// hull, so all of them together take linear time (rotating calipers: G. Toussaint, Proc. IEEE
// MELECON 1983).
class SupportWalk {
 public:
  SupportWalk(std::span<const Point> hull, Point firstNormal)
      : hull_(hull), clockwise_(windingSum(hull) >= 0.0) {
    for (std::size_t i = 1; i < hull_.size(); ++i) {
      if (dot(hull_[i], firstNormal) > dot(hull_[at_], firstNormal)) {
        at_ = i;
      }
    }
  }

  double support(Point normal) {
    double value = dot(hull_[at_], normal);
    for (std::size_t steps = 0; steps < hull_.size(); ++steps) {
      const std::size_t next = following();
      const double other = dot(hull_[next], normal);
      if (other < value) {
        break;
      }
      value = other;
      at_ = next;
    }
    return value;
  }

 private:
  [[nodiscard]] std::size_t following() const {
    if (clockwise_) {
      return at_ + 1 == hull_.size() ? 0 : at_ + 1;
    }
    return at_ == 0 ? hull_.size() - 1 : at_ - 1;
  }

  std::span<const Point> hull_;
  bool clockwise_;
  std::size_t at_ = 0;
};

// Adds a line with a slope no less than the last one's to an upper envelope.
void addLine(Chain& chain, double from, double slope, double intercept) {
  double start = from;
  while (!chain.empty()) {
    const Span& last = chain.back();
    if (slope == last.slope) {
      if (intercept <= last.intercept) {
        return;
      }
    } else {
      start = (last.intercept - intercept) / (slope - last.slope);
      if (start > last.from) {
        break;
      }
    }
    start = last.from;
    chain.pop_back();
  }
  chain.push_back(lineSpan(std::max(start, from), 0.0, slope, intercept));
}

// Sets where the pieces end and drops what lies beyond the interval.
void finish(Chain& chain, double from, double to) {
  for (std::size_t i = 0; i < chain.size(); ++i) {
    chain[i].to = i + 1 < chain.size() ? chain[i + 1].from : kFarMm;
  }
  chain = trimmed(chain, from, to);
}

}  // namespace

OpenRegion translationsIn(const FacetedShape& shape, double inset, std::span<const Point> hull) {
  OpenRegion open{-kFarMm, kFarMm, {}, {}};
  SupportWalk walk(hull, shape.faces.front().normal);
  open.top.reserve(64);
  open.flippedBottom.reserve(64);
  std::vector<Point> bottom;  // slope and intercept, from the right
  for (const FacetedShape::Face& face : shape.faces) {
    const double offset = face.offset - inset - walk.support(face.normal);
    if (face.inverse == 0.0) {
      if (face.normal.x > 0.0) {
        open.to = std::min(open.to, offset);
      } else {
        open.from = std::max(open.from, -offset);
      }
    } else if (face.normal.y < 0.0) {
      addLine(open.top, -kFarMm, face.slope, offset * face.inverse);
    } else {
      bottom.push_back({-face.slope, -offset * face.inverse});
    }
  }
  for (auto line = bottom.rbegin(); line != bottom.rend(); ++line) {
    addLine(open.flippedBottom, -kFarMm, line->x, line->y);
  }
  if (open.from <= open.to) {
    finish(open.top, open.from, open.to);
    finish(open.flippedBottom, open.from, open.to);
  }
  return open;
}

}  // namespace creaseline
