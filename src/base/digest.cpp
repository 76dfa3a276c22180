// SPDX-License-Identifier: MIT
// SHA-256 after NIST, FIPS 180-4, sections 5 and 6.2. Names of variables are the standard's.
#include "creaseline/base/digest.h"

#include <fmt/format.h>

#include <array>
#include <bit>
#include <cstdint>

namespace creaseline {
namespace {

constexpr std::size_t kBlock = 64;         // bytes
constexpr std::size_t kLengthField = 8;    // bytes at the end of the last block
constexpr unsigned char kEndMark = 0x80U;  // a one bit after the content

// Section 4.2.2: the first 32 bits of the fractions of the cube roots of the first 64 primes.
constexpr std::array<std::uint32_t, 64> kRoots = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

class Hash {
 public:
  void addBlock(const unsigned char* block) {
    std::array<std::uint32_t, 64> w{};
    for (std::size_t t = 0; t < 16; ++t) {
      for (std::size_t byte = 0; byte < 4; ++byte) {
        w[t] = (w[t] << 8U) | block[4 * t + byte];
      }
    }
    for (std::size_t t = 16; t < w.size(); ++t) {
      const std::uint32_t sigma0 =
          std::rotr(w[t - 15], 7) ^ std::rotr(w[t - 15], 18) ^ (w[t - 15] >> 3U);
      const std::uint32_t sigma1 =
          std::rotr(w[t - 2], 17) ^ std::rotr(w[t - 2], 19) ^ (w[t - 2] >> 10U);
      w[t] = sigma1 + w[t - 7] + sigma0 + w[t - 16];
    }
    auto [a, b, c, d, e, f, g, h] = state_;
    for (std::size_t t = 0; t < w.size(); ++t) {
      const std::uint32_t sum1 = std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25);
      const std::uint32_t choice = (e & f) ^ (~e & g);
      const std::uint32_t t1 = h + sum1 + choice + kRoots[t] + w[t];
      const std::uint32_t sum0 = std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22);
      const std::uint32_t majority = (a & b) ^ (a & c) ^ (b & c);
      h = g;
      g = f;
      f = e;
      e = d + t1;
      d = c;
      c = b;
      b = a;
      a = t1 + sum0 + majority;
    }
    const std::array<std::uint32_t, 8> after = {a, b, c, d, e, f, g, h};
    for (std::size_t i = 0; i < state_.size(); ++i) {
      state_[i] += after[i];
    }
  }

  [[nodiscard]] std::string text() const {
    std::string digits;
    for (const std::uint32_t word : state_) {
      digits += fmt::format("{:08x}", word);
    }
    return digits;
  }

 private:
  // Section 5.3.3: likewise from the square roots of the first eight primes.
  std::array<std::uint32_t, 8> state_ = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                         0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
};

const unsigned char* bytesOf(std::string_view text) {
  return reinterpret_cast<const unsigned char*>(text.data());  // NOLINT: bytes are bytes
}

}  // namespace

std::string contentDigest(std::string_view content) {
  Hash hash;
  const auto bits = static_cast<std::uint64_t>(content.size()) * 8;
  while (content.size() >= kBlock) {
    hash.addBlock(bytesOf(content));
    content.remove_prefix(kBlock);
  }
  std::string last(content);
  last += static_cast<char>(kEndMark);
  const std::size_t size = last.size() + kLengthField <= kBlock ? kBlock : 2 * kBlock;
  last.resize(size - kLengthField, '\0');
  for (int shift = 56; shift >= 0; shift -= 8) {
    last += static_cast<char>((bits >> static_cast<unsigned>(shift)) & 0xffU);
  }
  for (std::size_t at = 0; at < last.size(); at += kBlock) {
    hash.addBlock(bytesOf(std::string_view(last).substr(at)));
  }
  return hash.text();
}

}  // namespace creaseline
