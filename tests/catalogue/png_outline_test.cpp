// SPDX-License-Identifier: MIT
// Outlines from the opaque part of a PNG. The pictures are written here with libpng's own writer.
#include <png.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>
#include <random>
#include <string>

#include "catalogue/filled_rings.h"
#include "catalogue/outline_oracle.h"
#include "catalogue/pixel_outline.h"
#include "creaseline/catalogue/outline_files.h"

namespace creaseline {
namespace {

using test::OutlineOracle;
using test::ScratchFile;

using Inside = std::function<bool(unsigned x, unsigned y)>;

enum class Form { Rgba, Rgba16, Interlaced, GreyAlpha, Palette, Rgb };

struct Picture {
  unsigned width = 0, height = 0;
  Inside inside;
  Form form = Form::Rgba;
  unsigned pixelsPerMetre = 0;  // 0: no pHYs
};

struct Writer {
  png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
  png_infop info = png_create_info_struct(png);
  Writer() = default;
  Writer(const Writer&) = delete;
  Writer& operator=(const Writer&) = delete;
  ~Writer() { png_destroy_write_struct(&png, &info); }
};

int colourType(Form form) {
  switch (form) {
    case Form::GreyAlpha:
      return PNG_COLOR_TYPE_GRAY_ALPHA;
    case Form::Palette:
      return PNG_COLOR_TYPE_PALETTE;
    case Form::Rgb:
      return PNG_COLOR_TYPE_RGB;
    default:
      return PNG_COLOR_TYPE_RGB_ALPHA;
  }
}

// One pixel as bytes; just opaque enough, or just not.
std::string pixelBytes(Form form, bool inside) {
  const char alpha = static_cast<char>(inside ? 128 : 127);
  switch (form) {
    case Form::Rgba16:
      return {1, 1, 2, 2, 3, 3, alpha, 0};
    case Form::GreyAlpha:
      return {9, alpha};
    case Form::Palette:
      return {static_cast<char>(inside ? 1 : 0)};
    case Form::Rgb:
      return {1, 2, 3};
    default:
      return {1, 2, 3, alpha};
  }
}

std::string encoded(const Picture& picture) {
  std::string bytes;
  Writer writer;
  png_set_write_fn(
      writer.png, &bytes,
      [](png_structp png, png_bytep data, std::size_t size) {
        static_cast<std::string*>(png_get_io_ptr(png))
            ->append(reinterpret_cast<const char*>(data), size);
      },
      [](png_structp) {});
  png_set_IHDR(writer.png, writer.info, picture.width, picture.height,
               picture.form == Form::Rgba16 ? 16 : 8, colourType(picture.form),
               picture.form == Form::Interlaced ? PNG_INTERLACE_ADAM7 : PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  const png_color colours[] = {{255, 255, 255}, {0, 0, 0}};
  const png_byte alphas[] = {0, 255};
  if (picture.form == Form::Palette) {
    png_set_PLTE(writer.png, writer.info, colours, 2);
    png_set_tRNS(writer.png, writer.info, alphas, 2, nullptr);
  }
  if (picture.pixelsPerMetre > 0) {
    png_set_pHYs(writer.png, writer.info, picture.pixelsPerMetre, picture.pixelsPerMetre,
                 PNG_RESOLUTION_METER);
  }
  std::vector<std::string> lines(picture.height);
  std::vector<png_bytep> rows;
  for (unsigned y = 0; y < picture.height; ++y) {
    for (unsigned x = 0; x < picture.width; ++x) {
      lines[y] += pixelBytes(picture.form, picture.inside(x, y));
    }
    rows.push_back(reinterpret_cast<png_bytep>(lines[y].data()));
  }
  png_set_rows(writer.png, writer.info, rows.data());
  png_write_png(writer.png, writer.info, PNG_TRANSFORM_IDENTITY, nullptr);
  return bytes;
}

Outline readBytes(const std::string& bytes, double dotsPerInch = 254.0) {
  const ScratchFile file("design.png", bytes);
  return readPngOutline(file.path(), dotsPerInch);
}

InputError::Details refusalOfBytes(const std::string& bytes, double dotsPerInch = 254.0) {
  return test::refusalOf([&] { static_cast<void>(readBytes(bytes, dotsPerInch)); });
}

Inside block(unsigned left, unsigned top, unsigned width, unsigned height) {
  return [=](unsigned x, unsigned y) {
    return x >= left && x < left + width && y >= top && y < top + height;
  };
}

// Connected parts by flooding, an independent count. Corners connect if `corners`.
int partsOf(const OpaquePixels& pixels, bool opaque, bool corners) {
  const int width = static_cast<int>(pixels.width()) + 2;  // with a border around
  const int height = static_cast<int>(pixels.height()) + 2;
  std::vector<bool> seen(static_cast<std::size_t>(width * height));
  int parts = 0;
  for (int start = 0; start < width * height; ++start) {
    std::vector<int> open{start};
    bool counted = false;
    while (!open.empty()) {
      const int at = open.back();
      open.pop_back();
      const int x = at % width;
      const int y = at / width;
      if (seen[static_cast<std::size_t>(at)] || pixels.at(x - 1, y - 1) != opaque) {
        continue;
      }
      seen[static_cast<std::size_t>(at)] = true;
      parts += counted ? 0 : 1;
      counted = true;
      for (int dy = -1; dy <= 1; ++dy) {
        for (int dx = -1; dx <= 1; ++dx) {
          const bool inside = x + dx >= 0 && x + dx < width && y + dy >= 0 && y + dy < height;
          if (inside && (corners || dx == 0 || dy == 0)) {
            open.push_back((y + dy) * width + x + dx);
          }
        }
      }
    }
  }
  return parts;
}

OpaquePixels randomPixels(std::mt19937& random) {
  std::uniform_int_distribution<std::size_t> side(1, 14);
  const std::size_t width = side(random);
  OpaquePixels pixels(width, side(random));
  std::bernoulli_distribution opaque(std::uniform_real_distribution<>(0.05, 0.95)(random));
  for (std::size_t y = 0; y < pixels.height(); ++y) {
    for (std::size_t x = 0; x < pixels.width(); ++x) {
      pixels.set(x, y, opaque(random));
    }
  }
  return pixels;
}

}  // namespace

TEST_CASE("an opaque block has its true size in every kind of PNG", "[catalogue][outline]") {
  const Form form =
      GENERATE(Form::Rgba, Form::Rgba16, Form::Interlaced, Form::GreyAlpha, Form::Palette);
  CAPTURE(static_cast<int>(form));
  const Outline outline = readBytes(encoded({60, 50, block(5, 6, 40, 30), form}));
  REQUIRE(outline.pieces.size() == 1);
  // 254 dots an inch: a pixel is 0.1 mm.
  CHECK(outline.bounds().width() == Approx(4.0));
  CHECK(outline.bounds().height() == Approx(3.0));
  CHECK(outline.bounds().centre().x == Approx(0.0).margin(1e-12));
  CHECK(outline.area().squareMm() == Approx(12.0 - 4 * 0.00125));  // less four cut corners
  CHECK(outline.pieces[0].outer.size() == 8);
}

TEST_CASE("a block that fills the whole picture is traced along its edge", "[catalogue][outline]") {
  const Outline outline = readBytes(encoded({30, 20, block(0, 0, 30, 20)}));
  REQUIRE(outline.pieces.size() == 1);
  CHECK(outline.bounds().width() == Approx(3.0));
  CHECK(outline.bounds().height() == Approx(2.0));
}

TEST_CASE("a disc comes within half a pixel of its area", "[catalogue][outline]") {
  const double radius = 100.0;
  const Outline outline =
      readBytes(encoded({220, 220, [=](unsigned x, unsigned y) {
                           return std::hypot(x + 0.5 - 110, y + 0.5 - 110) <= radius;
                         }}));
  REQUIRE(outline.pieces.size() == 1);
  const double perimeterMm = 2 * std::numbers::pi * 10.0;
  CHECK(outline.area().squareMm() == Approx(std::numbers::pi * 100).margin(0.05 * perimeterMm));
  CHECK(outline.pieces[0].outer.size() < 400);
}

TEST_CASE("a picture without resolution takes its size from the width of what is opaque",
          "[catalogue][outline]") {
  const Picture without{60, 50, block(5, 6, 40, 30)};
  const ScratchFile file("design.png", encoded(without));
  CHECK_FALSE(pngSaysItsSize(file.path()));
  const double dots = pngDotsPerInchFor(file.path(), Length::fromInches(2.0));
  CHECK(dots == Approx(20.0));
  CHECK(readPngOutline(file.path(), dots).bounds().width() == Approx(50.8));
  // Forty pixels over four metres are coarser than any picture of a design.
  CHECK_THROWS_AS(pngDotsPerInchFor(file.path(), Length::fromMm(4000.0)), InputError);
  Picture with = without;
  with.pixelsPerMetre = 10'000;
  CHECK(pngSaysItsSize(ScratchFile("design.png", encoded(with)).path()));
  CHECK_THROWS_AS(pngSaysItsSize(ScratchFile("design.png", "no picture").path()), InputError);
}

TEST_CASE("holes and islands nest", "[catalogue][outline]") {
  const Outline outline = readBytes(encoded({60, 60, [](unsigned x, unsigned y) {
                                               const auto ring = block(5, 5, 50, 50)(x, y) &&
                                                                 !block(15, 15, 30, 30)(x, y);
                                               return ring || block(25, 25, 10, 10)(x, y);
                                             }}));
  REQUIRE(outline.pieces.size() == 2);
  CHECK(outline.pieces[0].holes.size() == 1);
  CHECK(outline.pieces[1].holes.empty());
  CHECK(outline.area().squareMm() == Approx(25.0 - 9.0 + 1.0).margin(0.02));
}

TEST_CASE("the resolution comes from the call or from the picture", "[catalogue][outline]") {
  const Picture picture{40, 40, block(0, 0, 40, 40), Form::Rgba, 11811};  // 300 dots an inch
  CHECK(readBytes(encoded(picture), 0.0).bounds().width() == Approx(40 * 25.4 / 300).epsilon(1e-5));
  CHECK(readBytes(encoded(picture), 150.0).bounds().width() == Approx(40 * 25.4 / 150));
  Picture without = picture;
  without.pixelsPerMetre = 0;
  CHECK(refusalOfBytes(encoded(without), 0.0).found == "no resolution");
  Picture absurd = picture;
  absurd.pixelsPerMetre = 4'000'000'000U;
  CHECK_THAT(refusalOfBytes(encoded(absurd), 0.0).found, Catch::Contains("resolution"));
  const double dots = GENERATE(-300.0, 1e-300, 1e308, std::numeric_limits<double>::quiet_NaN(),
                               std::numeric_limits<double>::infinity());
  CHECK_THAT(refusalOfBytes(encoded(picture), dots).found, Catch::Contains("resolution"));
}

TEST_CASE("a PNG that gives no outline is refused", "[catalogue][outline]") {
  CHECK(refusalOfBytes(encoded({20, 20, block(5, 5, 5, 5), Form::Rgb})).found ==
        "a picture without transparency");
  CHECK(refusalOfBytes(encoded({20, 20, block(0, 0, 0, 0)})).found == "no opaque pixel");
  CHECK(refusalOfBytes(encoded({4097, 2, block(0, 0, 9, 9)})).found == "4097 x 2 pixels");
  CHECK(refusalOfBytes("").found == "a file that is no PNG");
  CHECK(refusalOfBytes("<svg/>").found == "a file that is no PNG");
  const auto specks = [](unsigned x, unsigned y) { return x % 2 == 0 && y % 2 == 0; };
  CHECK(refusalOfBytes(encoded({300, 300, specks})).found == "too many specks");
  std::string large = encoded({20, 20, block(5, 5, 5, 5)});
  large.resize(5'000'000);
  CHECK_THAT(refusalOfBytes(large).expected, Catch::Contains("4194304 bytes"));
}

TEST_CASE("a PNG that claims to be huge is refused before it is read", "[catalogue][outline]") {
  std::string bytes = encoded({20, 20, block(5, 5, 5, 5)});
  bytes.replace(16, 8, std::string("\x00\x01\x86\xA0\x00\x01\x86\xA0", 8));
  CHECK(refusalOfBytes(bytes).found == "100000 x 100000 pixels");
}

TEST_CASE("a PNG cut off anywhere is refused", "[catalogue][outline]") {
  const std::string bytes = encoded({20, 20, block(5, 5, 5, 5), Form::Palette, 11811});
  for (std::size_t length = 8; length < bytes.size(); ++length) {
    CAPTURE(length);
    CHECK_THAT(refusalOfBytes(bytes.substr(0, length)).found, Catch::Contains("PNG"));
  }
}

TEST_CASE("a PNG with any byte changed is read or refused, never worse", "[catalogue][outline]") {
  const unsigned seed = 20267;
  CAPTURE(seed);
  std::mt19937 random(seed);
  int refused = 0;
  for (const Form form : {Form::Rgba, Form::Interlaced, Form::Palette}) {
    const std::string bytes = encoded({20, 20, block(5, 5, 5, 5), form, 11811});
    for (std::size_t at = 0; at < bytes.size(); ++at) {
      std::string changed = bytes;
      changed[at] = static_cast<char>(changed[at] ^ static_cast<char>(1U << (random() % 8)));
      try {
        static_cast<void>(readBytes(changed));
      } catch (const InputError&) {
        ++refused;
      }
    }
  }
  CHECK(refused > 100);  // checksums see nearly all of it
}

TEST_CASE("traced boundaries agree with GEOS and with flooding", "[catalogue][outline]") {
  const unsigned seed = 20268;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const OutlineOracle geos;
  for (int i = 0; i < 300; ++i) {
    CAPTURE(i);
    const OpaquePixels pixels = randomPixels(random);
    const auto rings = tracePixels(pixels, 1000, 10'000);
    REQUIRE(rings.has_value());
    OutlineOracle::Geometry squares = geos.unionOf(Outline());
    for (std::size_t y = 0; y < pixels.height(); ++y) {
      for (std::size_t x = 0; x < pixels.width(); ++x) {
        if (pixels.at(static_cast<int>(x), static_cast<int>(y))) {
          const auto left = static_cast<double>(x);
          const auto top = static_cast<double>(y);
          squares = geos.unionOf(
              squares,
              geos.polygon(
                  {{{left, top}, {left + 1, top}, {left + 1, top + 1}, {left, top + 1}}, {}}));
        }
      }
    }
    const int outer = partsOf(pixels, true, true);
    const int holes = partsOf(pixels, false, false) - 1;
    CHECK(static_cast<int>(rings->size()) == outer + holes);
    for (const Ring& ring : *rings) {
      CHECK_FALSE(selfCrossing(ring).has_value());
    }
    const FilledRings filled = fillRings(*rings, FillRule::EvenOdd);
    CHECK_FALSE(filled.crossing.has_value());
    CHECK(static_cast<int>(filled.pieces.size()) == outer);
    for (const Piece& piece : filled.pieces) {
      CHECK(geos.valid(geos.polygon(piece)));
    }
    if (outer > 0) {
      CHECK(geos.boundaryDistance(squares, geos.unionOf(Outline{filled.pieces})) <= 0.5);
    }
  }
}

}  // namespace creaseline
