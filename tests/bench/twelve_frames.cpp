// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "benchmarks.h"
#include "support/sample.h"

using namespace creaseline;

std::vector<Frame> twelveFrames() {
  std::vector<Frame> frames;
  const std::vector<Angle> turns = {Angle::fromDegrees(0), Angle::fromDegrees(90),
                                    Angle::fromDegrees(180), Angle::fromDegrees(270)};
  for (int i = 0; i < 12; ++i) {
    const double width = 90.0 + 15.0 * i;
    const double height = width * 1.15;
    Frame frame =
        sample::frame(fmt::format("frame-{}", i), Length::fromMm(width), Length::fromMm(height));
    frame.turns = turns;
    frame.window =
        *Window::rectangle(Length::fromMm(width), Length::fromMm(height), Length::fromMm(15.0));
    if (i % 4 == 1) {
      frame.window = *Window::ellipse(Length::fromMm(width), Length::fromMm(height));
      frame.body = *Window::ellipse(Length::fromMm(width + 30.0), Length::fromMm(height + 30.0));
    } else if (i % 4 == 3) {
      const double cut = width / 4.0;
      const double x = width / 2.0;
      const double y = height / 2.0;
      frame.window = *Window::polygon({{-x + cut, -y},
                                       {x - cut, -y},
                                       {x, -y + cut},
                                       {x, y - cut},
                                       {x - cut, y},
                                       {-x + cut, y},
                                       {-x, y - cut},
                                       {-x, -y + cut}});
    }
    frames.push_back(std::move(frame));
  }
  return frames;
}
