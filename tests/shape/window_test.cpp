// SPDX-License-Identifier: MIT
#include "creaseline/shape/window.h"

#include <catch2/catch.hpp>
#include <numbers>

#include "creaseline/shape/outline.h"

using namespace creaseline;
using namespace creaseline::literals;

TEST_CASE("Windows with impossible sizes are refused with a reason", "[shape][window]") {
  CHECK_THAT(Window::rectangle(0_mm, 10_mm).message(), Catch::Contains("positive"));
  CHECK_THAT(Window::rectangle(10_mm, -1_mm).message(), Catch::Contains("positive"));
  CHECK_THAT(Window::rectangle(10_mm, 20_mm, 6_mm).message(), Catch::Contains("corner radius"));
  CHECK_THAT(Window::rectangle(10_mm, 20_mm, -1_mm).message(), Catch::Contains("corner radius"));
  CHECK_THAT(Window::ellipse(10_mm, 0_mm).message(), Catch::Contains("positive"));
  CHECK_THAT(Window::rounded(10_mm, 0_mm, 4.0).message(), Catch::Contains("positive"));
  CHECK_THAT(Window::rounded(10_mm, 20_mm, 1.9).message(), Catch::Contains("fullness"));
  CHECK_THAT(Window::rounded(10_mm, 20_mm, 20.1).message(), Catch::Contains("fullness"));
  CHECK_THAT(Window::rounded(10_mm, 20_mm, std::nan("")).message(), Catch::Contains("fullness"));
  CHECK(Window::rectangle(10_mm, 20_mm, 5_mm).ok());
}

TEST_CASE("Polygons that are no convex window are refused with a reason", "[shape][window]") {
  CHECK_THAT(Window::polygon({}).message(), Catch::Contains("convex"));
  CHECK_THAT(Window::polygon({{0, 0}, {1, 0}}).message(), Catch::Contains("convex"));
  CHECK_THAT(Window::polygon({{0, 0}, {9, 0}, {4, 1}, {0, 9}}).message(),
             Catch::Contains("convex"));
  CHECK_THAT(Window::polygon({{0, 0}, {1e7, 0}, {0, 1}}).message(), Catch::Contains("1 km"));
  CHECK_THAT(Window::polygon({{0, 0}, {std::nan(""), 0}, {0, 1}}).message(),
             Catch::Contains("number"));
}

TEST_CASE("A polygon window is centred and put clockwise", "[shape][window]") {
  // Counter-clockwise to the viewer, with a point in the middle of a side.
  const auto window = Window::polygon({{0, 0}, {0, 20}, {10, 20}, {10, 10}, {10, 0}});
  REQUIRE(window.ok());
  CHECK(window->boundary(1_mm) == Ring{{-5, -10}, {5, -10}, {5, 10}, {-5, 10}});
  CHECK(window->width() == 10_mm);
  CHECK(window->height() == 20_mm);
  CHECK(window->area().squareMm() == Approx(200.0));
}

TEST_CASE("Areas of windows by their textbook formulas", "[shape][window]") {
  // 100 x 180 less the corners of a 40 mm square around a circle: (4 - pi) * 400 = 343.363.
  CHECK(Window::rectangle(100_mm, 180_mm, 20_mm)->area().squareMm() ==
        Approx(18000.0 - 343.3629385));
  CHECK(Window::ellipse(100_mm, 60_mm)->area().squareMm() == Approx(4712.3889804));
  // Fullness 2 is the ellipse; at 4 the area is a share gamma(5/4)^2 / gamma(3/2) of the rectangle,
  // with gamma(5/4) = 0.9064024771 and gamma(3/2) = 0.8862269255 (sqrt(pi) / 2).
  CHECK(Window::rounded(100_mm, 60_mm, 2.0)->area().squareMm() == Approx(4712.3889804));
  CHECK(Window::rounded(100_mm, 60_mm, 4.0)->area().squareMm() ==
        Approx(6000.0 * 0.9064024771 * 0.9064024771 / 0.8862269255));
}

TEST_CASE("The boundary of a window lies on it, within the tolerance, clockwise",
          "[shape][window]") {
  for (const Window& window :
       {*Window::rectangle(100_mm, 60_mm, 12_mm), *Window::rectangle(60_mm, 60_mm, 30_mm),
        *Window::rectangle(60_mm, 40_mm), *Window::ellipse(90_mm, 30_mm),
        *Window::rounded(90_mm, 30_mm, 3.5)}) {
    const Ring ring = window.boundary(0.01_mm);
    CHECK(isConvex(ring));
    const Box box = ringBounds(ring);
    CHECK(box.width() == Approx(window.width().mm()).epsilon(1e-12));
    CHECK(box.height() == Approx(window.height().mm()).epsilon(1e-12));
    // Inscribed, and short of the true area by no more than tolerance times circumference.
    CHECK(ringArea(ring) <= window.area().squareMm() * (1.0 + 1e-12));
    CHECK(window.area().squareMm() - ringArea(ring) <= 0.01 * 2.0 * (box.width() + box.height()));
    const Point first = ring[1] - ring[0];
    const Point second = ring[2] - ring[1];
    CHECK(cross(first, second) >= 0.0);
    CHECK(convexHull(ring).size() == ring.size());
  }
}

TEST_CASE("A rounded window's polygon lies within it and by no more than the tolerance",
          "[shape][window]") {
  for (const double fullness : {2.0, 2.5, 4.0, 9.0, 20.0}) {
    for (const Length tolerance : {0.00025_mm, 0.1_mm}) {
      CAPTURE(fullness, tolerance.mm());
      const Window window = *Window::rounded(180_mm, 60_mm, fullness);
      const Ring ring = window.boundary(tolerance);
      CHECK(isConvex(ring));
      const auto level = [&](Point p) {
        return std::pow(std::abs(p.x) / 90.0, fullness) + std::pow(std::abs(p.y) / 30.0, fullness);
      };
      double farthest = 0.0;
      for (std::size_t i = 0; i < ring.size(); ++i) {
        REQUIRE(level(ring[i]) == Approx(1.0).margin(1e-12));
        // The curve bulges over each side: points of it, seen from the middle, between the ends.
        const Point next = ring[(i + 1) % ring.size()];
        const Point along = next - ring[i];
        for (const double share : {0.2, 0.4, 0.5, 0.6, 0.8}) {
          const Point chord = ring[i] + along * share;
          const Point on = chord * std::pow(level(chord), -1.0 / fullness);
          farthest = std::max(farthest, cross(on - ring[i], along) / norm(along));
        }
      }
      CHECK(farthest <= tolerance.mm() * (1.0 + 1e-6));
      // Not a waste of corners either: the bound is used.
      CHECK(farthest >= tolerance.mm() / 20.0);
    }
  }
}
