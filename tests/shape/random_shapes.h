// SPDX-License-Identifier: MIT
// Seeded random outlines and windows for the tests of the geometry kernel.
#pragma once

#include <numbers>
#include <random>

#include "creaseline/shape/outline.h"
#include "creaseline/shape/window.h"
#include "support/case_count.h"

namespace creaseline::test {

// The standard leaves distributions to the library; this one gives the same numbers everywhere.
class Dice {
 public:
  explicit Dice(std::uint32_t seed) : engine_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_()) / 4294967296.0);
  }
  int below(int count) { return static_cast<int>(engine_() % static_cast<std::uint32_t>(count)); }
  bool oneIn(int count) { return below(count) == 0; }

 private:
  std::mt19937 engine_;
};

// A star-shaped ring around the origin, concave as a rule: n corners at rising angles.
inline Ring starRing(Dice& dice, int corners, double least, double most) {
  Ring ring;
  for (int i = 0; i < corners; ++i) {
    const double angle = 2.0 * std::numbers::pi * (i + dice.between(0.0, 0.9)) / corners;
    const double radius = dice.between(least, most);
    ring.push_back({radius * std::cos(angle), radius * std::sin(angle)});
  }
  return ring;
}

// A convex ring: the hull of points in a box.
inline Ring convexRing(Dice& dice, int points, double width, double height) {
  std::vector<Point> cloud;
  for (int i = 0; i < points; ++i) {
    cloud.push_back({dice.between(-width / 2, width / 2), dice.between(-height / 2, height / 2)});
  }
  return convexHull(std::move(cloud));
}

inline Outline randomOutline(Dice& dice) {
  const double size = dice.between(10.0, 110.0);
  Outline outline;
  if (dice.oneIn(3)) {
    outline = Outline::rectangle(Length::fromMm(size), Length::fromMm(dice.between(5.0, 130.0)));
  } else if (dice.oneIn(2)) {
    outline.pieces.push_back({convexRing(dice, 4 + dice.below(60), size, size * 0.7), {}});
  } else {
    outline.pieces.push_back({starRing(dice, 5 + dice.below(40), size * 0.15, size * 0.6), {}});
  }
  return outline.centred();
}

// Thinner than a thread, up to a hand wide.
inline Outline sliver(Dice& dice) {
  return Outline::rectangle(Length::fromMm(dice.between(30.0, 160.0)),
                            Length::fromMm(dice.between(0.001, 0.5)));
}

// Three letters in a row, each concave and with a hole.
inline Outline monogram(Dice& dice) {
  Outline outline;
  const double size = dice.between(4.0, 25.0);
  for (int letter = -1; letter <= 1; ++letter) {
    const Point at{letter * size * 2.2, dice.between(-size, size) / 3.0};
    outline.pieces.push_back(
        {transformedRing(starRing(dice, 5 + dice.below(10), size * 0.5, size), {}, at),
         {transformedRing(starRing(dice, 4, size * 0.1, size * 0.3), {}, at)}});
  }
  return outline.centred();
}

// What makes fits hard: slivers, several pieces, concave ones, and all of randomOutline().
inline Outline hardOutline(Dice& dice) {
  switch (dice.below(4)) {
    case 0:
      return sliver(dice);
    case 1:
      return monogram(dice);
    default:
      return randomOutline(dice);
  }
}

inline Window polygonWindow(Dice& dice, double width, double height) {
  Ring ring;
  while (!isConvex(ring)) {
    ring = convexRing(dice, 3 + dice.below(9), width, height);
  }
  return *Window::polygon(ring);
}

inline Window randomWindow(Dice& dice) {
  const double width = dice.between(40.0, 180.0);
  const double height = dice.between(40.0, 180.0);
  switch (dice.below(3)) {
    case 0:
      return *Window::rectangle(
          Length::fromMm(width), Length::fromMm(height),
          Length::fromMm(dice.oneIn(5) ? 0.0 : dice.between(0.0, std::min(width, height) / 2.1)));
    case 1:
      return *Window::ellipse(Length::fromMm(width), Length::fromMm(height));
    default:
      return polygonWindow(dice, width, height);
  }
}

// Also those between an ellipse and a rectangle.
inline Window anyWindow(Dice& dice) {
  if (!dice.oneIn(4)) {
    return randomWindow(dice);
  }
  return *Window::rounded(Length::fromMm(dice.between(40.0, 180.0)),
                          Length::fromMm(dice.between(40.0, 180.0)), dice.between(2.0, 8.0));
}

}  // namespace creaseline::test
