// SPDX-License-Identifier: MIT
// Identifiers of catalogue entries as distinct types: a frame's name cannot be passed as a
// design's.
#pragma once

#include <compare>
#include <string>
#include <utility>

namespace creaseline {

template <class Tag>
class Identifier {
 public:
  Identifier() = default;
  explicit Identifier(std::string text) : text_(std::move(text)) {}
  [[nodiscard]] const std::string& text() const { return text_; }
  [[nodiscard]] bool empty() const { return text_.empty(); }
  auto operator<=>(const Identifier&) const = default;

 private:
  std::string text_;
};

}  // namespace creaseline
