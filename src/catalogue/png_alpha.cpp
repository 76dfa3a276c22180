// SPDX-License-Identifier: MIT
// Decodes a PNG with libpng under bounds of size and memory.
#include "catalogue/png_alpha.h"

#include <png.h>

#include <array>
#include <csetjmp>
#include <cstring>

#include "base/worded.h"

namespace creaseline {
namespace {

constexpr std::size_t kSignatureBytes = 8;
constexpr std::size_t kHeaderBytes = kSignatureBytes + 8 + 13;  // signature, length, "IHDR", data
constexpr std::size_t kBytesPerPixel = 4;
constexpr png_byte kLeastOpaqueAlpha = 128;
// Texts and colour profiles are of no use here; a compressed one may not swell beyond this.
constexpr png_alloc_size_t kMostChunkBytes = 1024 * 1024;
constexpr png_uint_32 kMostAncillaryChunks = 64;

// Literals, so they end in a zero as libpng wants it. What it says itself stays in its words.
constexpr std::string_view kEndsTooEarly = toBeWorded("the file ends too early");
constexpr std::string_view kOtherRows = toBeWorded("rows of an unexpected length");

// All that the C side needs; nothing in it has a destructor, as errors leave by longjmp.
struct Decoder {
  png_structp png = nullptr;
  png_infop info = nullptr;
  const char* next = nullptr;
  std::size_t left = 0;
  std::array<char, 80> problem{};
};

void readBytes(png_structp png, png_bytep to, std::size_t count) {
  auto* decoder = static_cast<Decoder*>(png_get_io_ptr(png));
  if (count > decoder->left) {
    png_error(png, kEndsTooEarly.data());
  }
  std::memcpy(to, decoder->next, count);
  decoder->next += count;
  decoder->left -= count;
}

[[noreturn]] void noteError(png_structp png, png_const_charp message) {
  auto* decoder = static_cast<Decoder*>(png_get_error_ptr(png));
  std::strncpy(decoder->problem.data(), message, decoder->problem.size() - 1);
  png_longjmp(png, 1);
}

void ignoreWarning(png_structp, png_const_charp) {
}

// False if libpng reported an error. Only plain C objects live here.
bool readHeader(Decoder& decoder) {
  if (setjmp(png_jmpbuf(decoder.png)) != 0) {
    return false;
  }
  png_set_read_fn(decoder.png, &decoder, readBytes);
  png_set_user_limits(decoder.png, kMostPixelsOneWay, kMostPixelsOneWay);
  png_set_chunk_malloc_max(decoder.png, kMostChunkBytes);
  png_set_chunk_cache_max(decoder.png, kMostAncillaryChunks);
  png_read_info(decoder.png, decoder.info);
  return true;
}

bool hasTransparency(const Decoder& decoder) {
  return (png_get_color_type(decoder.png, decoder.info) & PNG_COLOR_MASK_ALPHA) != 0 ||
         png_get_valid(decoder.png, decoder.info, PNG_INFO_tRNS) != 0;
}

// Asks for 8-bit red, green, blue and alpha whatever the file has; false on an error.
bool prepareRows(Decoder& decoder, std::size_t expectedRowBytes) {
  if (setjmp(png_jmpbuf(decoder.png)) != 0) {
    return false;
  }
  png_set_expand(decoder.png);
  png_set_scale_16(decoder.png);
  png_set_gray_to_rgb(decoder.png);
  png_set_interlace_handling(decoder.png);
  png_read_update_info(decoder.png, decoder.info);
  if (png_get_rowbytes(decoder.png, decoder.info) != expectedRowBytes) {
    png_error(decoder.png, kOtherRows.data());
  }
  return true;
}

bool readRows(Decoder& decoder, png_bytepp rows) {
  if (setjmp(png_jmpbuf(decoder.png)) != 0) {
    return false;
  }
  png_read_image(decoder.png, rows);
  png_read_end(decoder.png, nullptr);
  return true;
}

class PngReader {
 public:
  explicit PngReader(std::string_view content) {
    decoder_.next = content.data();
    decoder_.left = content.size();
    decoder_.png =
        png_create_read_struct(PNG_LIBPNG_VER_STRING, &decoder_, noteError, ignoreWarning);
    decoder_.info = decoder_.png == nullptr ? nullptr : png_create_info_struct(decoder_.png);
    if (decoder_.info == nullptr) {
      png_destroy_read_struct(&decoder_.png, nullptr, nullptr);
      throw std::bad_alloc();
    }
  }
  PngReader(const PngReader&) = delete;
  PngReader& operator=(const PngReader&) = delete;
  ~PngReader() { png_destroy_read_struct(&decoder_.png, &decoder_.info, nullptr); }

  Result<PngAlpha> read() {
    if (!readHeader(decoder_)) {
      return broken();
    }
    if (!hasTransparency(decoder_)) {
      return Refusal{worded("a picture without transparency")};
    }
    const std::size_t width = png_get_image_width(decoder_.png, decoder_.info);
    const std::size_t height = png_get_image_height(decoder_.png, decoder_.info);
    const std::size_t rowBytes = width * kBytesPerPixel;
    if (!prepareRows(decoder_, rowBytes)) {
      return broken();
    }
    std::vector<png_byte> bytes(rowBytes * height);
    std::vector<png_bytep> rows(height);
    for (std::size_t y = 0; y < height; ++y) {
      rows[y] = bytes.data() + y * rowBytes;
    }
    if (!readRows(decoder_, rows.data())) {
      return broken();
    }
    PngAlpha alpha{OpaquePixels(width, height), {}, {}};
    for (std::size_t y = 0; y < height; ++y) {
      for (std::size_t x = 0; x < width; ++x) {
        alpha.pixels.set(x, y, rows[y][x * kBytesPerPixel + 3] >= kLeastOpaqueAlpha);
      }
    }
    readResolution(alpha);
    return alpha;
  }

 private:
  [[nodiscard]] Refusal broken() const {
    return Refusal{worded("a broken PNG: {}", inLanguage(decoder_.problem.data()))};
  }

  void readResolution(PngAlpha& alpha) const {
    png_uint_32 x = 0;
    png_uint_32 y = 0;
    int unit = PNG_RESOLUTION_UNKNOWN;
    if (png_get_pHYs(decoder_.png, decoder_.info, &x, &y, &unit) != 0 &&
        unit == PNG_RESOLUTION_METER && x > 0 && y > 0) {
      alpha.pixelsPerMetreX = x;
      alpha.pixelsPerMetreY = y;
    }
  }

  Decoder decoder_;
};

std::size_t bigEndian(std::string_view bytes) {
  std::size_t value = 0;
  for (const char byte : bytes) {
    value = value << 8U | static_cast<unsigned char>(byte);
  }
  return value;
}

}  // namespace

Result<PngAlpha> readPngAlpha(std::string_view content) {
  using namespace std::string_view_literals;
  if (!content.starts_with("\x89PNG\r\n\x1a\n"sv)) {
    return Refusal{worded("a file that is no PNG")};
  }
  if (content.size() < kHeaderBytes) {
    return Refusal{worded("a broken PNG: {}", inLanguage(kEndsTooEarly))};
  }
  // Read ahead of libpng for the sake of the message.
  const std::size_t width = bigEndian(content.substr(kSignatureBytes + 8, 4));
  const std::size_t height = bigEndian(content.substr(kSignatureBytes + 12, 4));
  if (width > kMostPixelsOneWay || height > kMostPixelsOneWay) {
    return Refusal{worded("{} x {} pixels", width, height)};
  }
  return PngReader(content).read();
}

}  // namespace creaseline
