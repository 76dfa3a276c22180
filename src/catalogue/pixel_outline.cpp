// SPDX-License-Identifier: MIT
// Walks along the sides between pixels with the opaque one on the right hand, then leaves out
// points that do not matter (D. H. Douglas, T. K. Peucker, Cartographica 10(2), 1973).
#include "catalogue/pixel_outline.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <utility>

namespace creaseline {
namespace {

// A cut corner is sqrt(2) / 4 = 0.354 pixels away from the ring; this much may be added.
constexpr double kStraightenPixels = 0.14;
// Sides walked before points are left out; a picture of noise has more.
constexpr std::size_t kMostSides = 4'000'000;

struct PixelStep {
  std::int64_t x, y;
};
// Clockwise to the viewer: right, down, left, up.
constexpr std::array<PixelStep, 4> kSteps{{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}};

class Tracer {
 public:
  explicit Tracer(const OpaquePixels& pixels)
      : pixels_(pixels), walked_(pixels.width() * pixels.height()) {}

  std::optional<std::vector<Ring>> trace(std::size_t mostRings, std::size_t mostPoints);

 private:
  // The pixel next to the grid corner (x, y), seen in the direction: ahead, right or left of it.
  [[nodiscard]] bool ahead(PixelStep corner, std::size_t direction, bool right) const {
    const PixelStep forward = kSteps[direction];
    const PixelStep aside = kSteps[(direction + (right ? 1 : 3)) % 4];
    // Halves of steps from the corner to the pixel's centre, then to the pixel's own corner.
    return pixels_.at(corner.x + (forward.x + aside.x - 1) / 2,
                      corner.y + (forward.y + aside.y - 1) / 2);
  }

  [[nodiscard]] Ring walk(std::int64_t x, std::int64_t y);

  const OpaquePixels& pixels_;
  std::vector<bool> walked_;  // the upper side of that pixel
  std::size_t sides_ = 0;
};

// From the upper side of an opaque pixel around until that side comes again.
Ring Tracer::walk(std::int64_t x, std::int64_t y) {
  Ring ring;
  PixelStep corner{x, y};
  std::size_t direction = 0;
  do {
    const PixelStep step = kSteps[direction];
    if (direction == 0) {
      walked_[static_cast<std::size_t>(corner.y) * pixels_.width() +
              static_cast<std::size_t>(corner.x)] = true;
    }
    ring.push_back({static_cast<double>(corner.x) + static_cast<double>(step.x) / 2.0,
                    static_cast<double>(corner.y) + static_cast<double>(step.y) / 2.0});
    corner = {corner.x + step.x, corner.y + step.y};
    if (ahead(corner, direction, false)) {
      direction = (direction + 3) % 4;
    } else if (!ahead(corner, direction, true)) {
      direction = (direction + 1) % 4;
    }
    ++sides_;
  } while ((corner.x != x || corner.y != y || direction != 0) && sides_ <= kMostSides);
  return ring;
}

double distanceToChord(Point p, Point a, Point b) {
  const Point chord = b - a;
  const double length2 = dot(chord, chord);
  const double t = length2 > 0.0 ? std::clamp(dot(p - a, chord) / length2, 0.0, 1.0) : 0.0;
  return norm(p - (a + chord * t));
}

// Marks the points to keep between two kept ones; a list of spans in place of recursion, which
// could run deep.
void keepBetween(const Ring& ring, std::size_t from, std::size_t to, std::vector<bool>& keep) {
  std::vector<std::pair<std::size_t, std::size_t>> spans{{from, to}};
  while (!spans.empty()) {
    const auto [first, last] = spans.back();
    spans.pop_back();
    double furthest = kStraightenPixels;
    std::size_t at = first;
    for (std::size_t i = first + 1; i < last; ++i) {
      const double distance = distanceToChord(ring[i], ring[first], ring[last % ring.size()]);
      if (distance > furthest) {
        furthest = distance;
        at = i;
      }
    }
    if (at != first) {
      keep[at] = true;
      spans.emplace_back(first, at);
      spans.emplace_back(at, last);
    }
  }
}

Ring straightened(const Ring& ring) {
  // Two far points hold the ring open.
  const auto distanceFromFirst = [&ring](const Point& p) { return norm(p - ring.front()); };
  const auto furthest = std::max_element(
      ring.begin(), ring.end(),
      [&](const Point& a, const Point& b) { return distanceFromFirst(a) < distanceFromFirst(b); });
  const auto opposite = static_cast<std::size_t>(furthest - ring.begin());
  std::vector<bool> keep(ring.size());
  keep[0] = keep[opposite] = true;
  keepBetween(ring, 0, opposite, keep);
  keepBetween(ring, opposite, ring.size(), keep);
  Ring result;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (keep[i]) {
      result.push_back(ring[i]);
    }
  }
  return result;
}

std::optional<std::vector<Ring>> Tracer::trace(std::size_t mostRings, std::size_t mostPoints) {
  std::vector<Ring> rings;
  std::size_t points = 0;
  for (std::size_t y = 0; y < pixels_.height(); ++y) {
    for (std::size_t x = 0; x < pixels_.width(); ++x) {
      const auto column = static_cast<std::int64_t>(x);
      const auto row = static_cast<std::int64_t>(y);
      if (walked_[y * pixels_.width() + x] || !pixels_.at(column, row) ||
          pixels_.at(column, row - 1)) {
        continue;
      }
      rings.push_back(straightened(walk(column, row)));
      points += rings.back().size();
      if (rings.size() > mostRings || points > mostPoints || sides_ > kMostSides) {
        return std::nullopt;
      }
    }
  }
  return rings;
}

}  // namespace

std::optional<std::vector<Ring>> tracePixels(const OpaquePixels& pixels, std::size_t mostRings,
                                             std::size_t mostPoints) {
  return Tracer(pixels).trace(mostRings, mostPoints);
}

}  // namespace creaseline
