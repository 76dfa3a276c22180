// SPDX-License-Identifier: MIT
// Text for comparing as people do: letter case and accents of Latin letters aside.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace creaseline {

// "Größe Ñandú" -> "grosse nandu". Letters of Latin-1 and Latin Extended-A; combining marks are
// dropped; all else stays. Bytes that are not UTF-8 stay as they are.
[[nodiscard]] std::string foldedText(std::string_view text);

// The folded words of a text, parted by whatever is no letter and no digit.
[[nodiscard]] std::vector<std::string> foldedWords(std::string_view text);

}  // namespace creaseline
