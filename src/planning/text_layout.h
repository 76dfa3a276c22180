// SPDX-License-Identifier: MIT
// Lines of plain text, wrapped at words to a fixed number of columns with hanging indents. Knows
// nothing of plans.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace creaseline {

class TextLayout {
 public:
  // `labelColumns`: of the column that labels have, a space behind them included.
  explicit TextLayout(std::size_t columns, std::size_t labelColumns = kLabelColumns)
      : columns_(columns), labelColumns_(labelColumns) {}
  static constexpr std::size_t kLabelColumns = 13;

  // The text from `indent` on, behind `marker` in its first line ("- "); further lines start below
  // the first word. Runs of spaces and control characters count as one space, so no text from a
  // file can break the layout or steer a terminal. A number stays with its fraction and unit.
  // A word longer than the line stays whole and is the only thing that may exceed the columns.
  void paragraph(std::size_t indent, std::string_view marker, std::string_view text);
  // "Label      text", the text in a column of its own, behind `marker` ("- ", "12. ") if given.
  void labelled(std::size_t indent, std::string_view label, std::string_view text,
                std::string_view marker = {});
  // A line of its own, underlined by `rule`.
  void heading(std::string_view text, char rule);
  void blank() { text_ += '\n'; }

  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  std::size_t columns_;
  std::size_t labelColumns_;
  std::string text_;
};

// Characters of UTF-8 text, each taken as one column wide.
[[nodiscard]] std::size_t columnsOf(std::string_view text);

}  // namespace creaseline
