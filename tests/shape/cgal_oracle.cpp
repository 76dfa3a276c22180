// SPDX-License-Identifier: MIT
#include "shape/cgal_oracle.h"

#include <CGAL/Gmpq.h>
#include <CGAL/Gmpzf.h>
#include <CGAL/Min_circle_2.h>
#include <CGAL/Min_circle_2_traits_2.h>
#include <CGAL/QP_functions.h>
#include <CGAL/QP_models.h>
#include <CGAL/Simple_cartesian.h>

#include <stdexcept>

namespace creaseline::test {

double marginByCgal(const Ring& convexClockwise, const std::vector<Point>& points) {
  // Unknowns: the translation and the margin, none of them bounded; least of minus the margin.
  CGAL::Quadratic_program<double> programme(CGAL::SMALLER, false, 0, false, 0);
  const int count = static_cast<int>(convexClockwise.size());
  for (int side = 0; side < count; ++side) {
    const Point from = convexClockwise[static_cast<std::size_t>(side)];
    const Point along = convexClockwise[static_cast<std::size_t>((side + 1) % count)] - from;
    const Point normal = Point{along.y, -along.x} * (1.0 / norm(along));
    double farthest = -std::numeric_limits<double>::infinity();
    for (const Point& point : points) {
      farthest = std::max(farthest, dot(normal, point));
    }
    programme.set_a(0, side, normal.x);
    programme.set_a(1, side, normal.y);
    programme.set_a(2, side, 1.0);
    programme.set_b(side, dot(normal, from) - farthest);
  }
  programme.set_c(2, -1.0);
  const auto solution = CGAL::solve_linear_program(programme, CGAL::Gmpzf());
  if (!solution.is_optimal()) {
    throw std::logic_error("a convex polygon has a largest margin");
  }
  return -CGAL::to_double(solution.objective_value());
}

double smallestRadiusByCgal(const std::vector<Point>& points) {
  using Kernel = CGAL::Simple_cartesian<CGAL::Gmpq>;
  std::vector<Kernel::Point_2> exact;
  for (const Point& point : points) {
    exact.emplace_back(point.x, point.y);
  }
  const CGAL::Min_circle_2<CGAL::Min_circle_2_traits_2<Kernel>> circle(exact.begin(), exact.end(),
                                                                       true);
  return std::sqrt(CGAL::to_double(circle.circle().squared_radius()));
}

}  // namespace creaseline::test
