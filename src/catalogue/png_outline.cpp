// SPDX-License-Identifier: MIT
// From a PNG's opaque pixels to a design's outline in true size.

#include <stdexcept>
#include <string>
#include <utility>

#include "base/worded.h"
#include "catalogue/filled_rings.h"
#include "catalogue/pixel_outline.h"
#include "catalogue/png_alpha.h"
#include "creaseline/base/error.h"
#include "creaseline/base/file.h"
#include "creaseline/catalogue/outline_files.h"

namespace creaseline {
namespace {

constexpr std::size_t kLargestPng = std::size_t{4} * 1024 * 1024;
constexpr std::size_t kMostTracedPoints = 200'000;
// From a picture that spans a garment to one that is finer than any thread.
constexpr double kLeastDotsPerInch = 10.0;
constexpr double kMostDotsPerInch = 10'000.0;
constexpr double kMmPerMetre = 1000.0;

struct PixelSize {
  double widthMm = 0.0, heightMm = 0.0;
};

[[noreturn]] void refuse(const std::filesystem::path& file, std::string found,
                         std::string expected) {
  throw InputError({file.string(), "", std::move(found), std::move(expected)});
}

void checkResolution(const std::filesystem::path& file, double dotsPerInch) {
  if (!(dotsPerInch >= kLeastDotsPerInch && dotsPerInch <= kMostDotsPerInch)) {
    refuse(file, worded("a resolution of {:g} dots an inch", dotsPerInch),
           worded("one from {:g} to {:g}", kLeastDotsPerInch, kMostDotsPerInch));
  }
}

PngAlpha readAlpha(const std::filesystem::path& file) {
  auto alpha = readPngAlpha(readFile(file, kLargestPng));
  if (!alpha) {
    refuse(file, alpha.message(),
           worded("a PNG with transparency of at most {0} x {0} pixels", kMostPixelsOneWay));
  }
  return std::move(*alpha);
}

PixelSize pixelSize(const std::filesystem::path& file, const PngAlpha& alpha, double dotsPerInch) {
  if (dotsPerInch != 0.0) {
    checkResolution(file, dotsPerInch);
    return {Length::kMmPerInch / dotsPerInch, Length::kMmPerInch / dotsPerInch};
  }
  if (!alpha.pixelsPerMetreX || !alpha.pixelsPerMetreY) {
    refuse(file, worded("no resolution"),
           worded("its dots per inch, given with it or kept in the picture"));
  }
  const PixelSize size{kMmPerMetre / *alpha.pixelsPerMetreX, kMmPerMetre / *alpha.pixelsPerMetreY};
  checkResolution(file, Length::kMmPerInch / size.widthMm);
  checkResolution(file, Length::kMmPerInch / size.heightMm);
  return size;
}

}  // namespace

bool pngSaysItsSize(const std::filesystem::path& file) {
  const PngAlpha alpha = readAlpha(file);
  return alpha.pixelsPerMetreX && alpha.pixelsPerMetreY;
}

double pngDotsPerInchFor(const std::filesystem::path& file, Length width) {
  // At one that is always taken, to see how many pixels wide it is.
  constexpr double kAnyDotsPerInch = 100.0;
  const double wide = readPngOutline(file, kAnyDotsPerInch).bounds().width();
  const double dotsPerInch = kAnyDotsPerInch * wide / width.mm();
  checkResolution(file, dotsPerInch);
  return dotsPerInch;
}

Outline readPngOutline(const std::filesystem::path& file, double dotsPerInch) {
  const PngAlpha alpha = readAlpha(file);
  const PixelSize size = pixelSize(file, alpha, dotsPerInch);
  auto rings = tracePixels(alpha.pixels, kMostRings, kMostTracedPoints);
  if (!rings) {
    refuse(file, worded("too many specks"), worded("a picture of fewer parts with clean edges"));
  }
  if (rings->empty()) {
    refuse(file, worded("no opaque pixel"),
           worded("a design that is opaque and a ground that is not"));
  }
  for (Ring& ring : *rings) {
    for (Point& point : ring) {
      point = {point.x * size.widthMm, point.y * size.heightMm};
    }
  }
  Outline outline;
  FilledRings filled = fillRings(*rings, FillRule::EvenOdd);
  if (filled.crossing) {
    throw std::logic_error("traced boundaries cross");  // tracePixels() promises that they do not
  }
  outline.pieces = std::move(filled.pieces);
  return outline.centred();
}

}  // namespace creaseline
