// SPDX-License-Identifier: MIT
// A digest of content: tells whether a file still says what it said when it was read.
#pragma once

#include <string>
#include <string_view>

namespace creaseline {

// SHA-256 (NIST, FIPS 180-4), as 64 lower-case hexadecimal digits.
[[nodiscard]] std::string contentDigest(std::string_view content);

}  // namespace creaseline
