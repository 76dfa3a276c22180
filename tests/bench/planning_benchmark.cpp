// SPDX-License-Identifier: MIT
// Whole orders planned: time, memory, and how both grow with the number of lines.
#include <fmt/format.h>
#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <numbers>
#include <ostream>
#include <random>

#include "benchmarks.h"
#include "creaseline/planning/planner.h"
#include "support/sample.h"
#include "timing.h"

namespace {

using namespace creaseline;
using creaseline::bench::median;

// A star-like outline of 50 points, different for every line.
Design someDesign(std::size_t index, std::mt19937& random) {
  std::uniform_real_distribution<double> radius(20.0, 75.0);
  const double size = radius(random);
  Ring ring;
  for (int i = 0; i < 50; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / 50.0;
    const double r = size * (i % 2 == 0 ? 1.0 : 0.85);
    ring.push_back({r * std::cos(angle), r * std::sin(angle)});
  }
  Outline outline;
  outline.pieces = {{ring, {}}};
  outline = outline.centred();
  const Box box = outline.bounds();
  Design design = sample::design(fmt::format("design-{}", index), Length::fromMm(box.width()),
                                 Length::fromMm(box.height()));
  design.outline = outline;
  return design;
}

Order orderOf(std::size_t lines, std::size_t designs) {
  std::mt19937 random(4711);
  const char* locations[] = {"centre-chest", "left-chest", "upper-back", "full-back"};
  const char* sizes[] = {"YM", "M", "XL", "2XL"};
  Order order =
      sample::order(sample::blank("pullover-hoodie"), someDesign(0, random), "centre-chest", {"M"});
  const OrderLine pattern = order.lines.front();
  order.lines.clear();
  for (std::size_t i = 0; i < lines; ++i) {
    if (i > 0 && i < designs) {
      order.designs.push_back(someDesign(i, random));
    }
    OrderLine line = pattern;
    line.id = fmt::format("{}", i + 1);
    line.sizes[0].size = SizeName(sizes[i % 4]);
    line.placements[0].location = LocationId(locations[(i / 4) % 4]);
    line.placements[0].design = order.designs[i % designs].id;
    order.lines.push_back(std::move(line));
  }
  return order;
}

double peakMegabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

struct Measured {
  double seconds = 0.0;
  int stops = 0;
};

Measured planTime(std::size_t lines, std::size_t designs, const Shop& shop) {
  const Order order = orderOf(lines, designs);
  Measured measured;
  std::vector<double> seconds;
  for (int round = 0; round < 3; ++round) {
    const auto start = std::chrono::steady_clock::now();
    const Plan plan = planOrder(order, shop, sample::shippedRules());
    const std::chrono::duration<double> time = std::chrono::steady_clock::now() - start;
    seconds.push_back(time.count());
    measured.stops = plan.counts.stops;
  }
  measured.seconds = median(seconds);
  return measured;
}

// Time and memory of growing orders; `designs` at most, else one a line.
void timeOrders(std::ostream& out, std::size_t designs, const Shop& shop) {
  out << fmt::format("{:>8} {:>10} {:>14} {:>22} {:>8} {:>16}\n", "lines", "seconds", "ms a line",
                     "a line, against 100", "stops", "peak MB so far");
  double first = 0.0;
  for (const std::size_t lines : {std::size_t{100}, std::size_t{1'000}, std::size_t{10'000}}) {
    const Measured measured = planTime(lines, std::min(lines, designs), shop);
    const double perLine = measured.seconds / static_cast<double>(lines);
    first = first == 0.0 ? perLine : first;
    out << fmt::format("{:>8} {:>10.3f} {:>14.4f} {:>22.2f} {:>8} {:>16.0f}\n", lines,
                       measured.seconds, perLine * 1000.0, perLine / first, measured.stops,
                       peakMegabytes());
  }
}

}  // namespace

void benchmarkPlanning(std::ostream& out) {
  const Shop shop = sample::shop(twelveFrames());
  out << "\nPlanning an order, 12 frames in 4 turns each, 50-point designs, findings and remedies\n"
         "included; medians of 3. An order of 20 designs in 4 places and 4 sizes:\n\n";
  timeOrders(out, 20, shop);
  out << "\nThe same with a design of its own for every line:\n\n";
  timeOrders(out, 10'000, shop);
}
