// SPDX-License-Identifier: MIT
// Which pixels of a PNG are opaque, and how large a pixel is.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "creaseline/base/result.h"

namespace creaseline {

inline constexpr std::size_t kMostPixelsOneWay = 4096;

// A picture in two tones. Outside of it nothing is opaque.
class OpaquePixels {
 public:
  OpaquePixels(std::size_t width, std::size_t height)
      : width_(width), height_(height), opaque_(width * height) {}
  [[nodiscard]] std::size_t width() const { return width_; }
  [[nodiscard]] std::size_t height() const { return height_; }
  [[nodiscard]] bool at(std::int64_t x, std::int64_t y) const {
    return x >= 0 && y >= 0 && x < static_cast<std::int64_t>(width_) &&
           y < static_cast<std::int64_t>(height_) &&
           opaque_[static_cast<std::size_t>(y) * width_ + static_cast<std::size_t>(x)];
  }
  void set(std::size_t x, std::size_t y, bool opaque) { opaque_[y * width_ + x] = opaque; }

 private:
  std::size_t width_;
  std::size_t height_;
  std::vector<bool> opaque_;
};

struct PngAlpha {
  OpaquePixels pixels;
  // From the pHYs chunk, if it has one in pixels per metre.
  std::optional<double> pixelsPerMetreX;
  std::optional<double> pixelsPerMetreY;
};

// Decodes the content of a PNG; alpha of at least 50 % (128 of 255) is opaque. Refuses what is not
// a sound PNG, has no transparency, or is larger than kMostPixelsOneWay. The refusal says what was
// found.
Result<PngAlpha> readPngAlpha(std::string_view content);

}  // namespace creaseline
