// SPDX-License-Identifier: MIT
#include "planning/report_words.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/text_layout.h"

namespace creaseline {

std::string headingOf(Severity severity) {
  switch (severity) {
    case Severity::Stop:
      return worded("Stops: cannot be sewn as asked");
    case Severity::Watch:
      return worded("Watches: can be sewn, with care");
    case Severity::Note:
      return worded("Notes");
  }
  return {};
}

std::string amount(Length value, const UnitChoice& units) {
  return value != Length() && roundToMark(value, units) == Length() ? roomPhrase(abs(value), units)
                                                                    : formatLength(value, units);
}

std::string percentDown(double factor) {
  return fmt::format("{} %", static_cast<int>(std::floor(factor * 100.0 + 1e-9)));
}

std::size_t labelColumns() {
  std::size_t widest = TextLayout::kLabelColumns - 1;
  for (const std::string_view label : {toBeWorded("Placement"), toBeWorded("Topping"),
                                       toBeWorded("Why backing"), toBeWorded("Why sideways")}) {
    widest = std::max(widest, columnsOf(inLanguage(label)));
  }
  return widest + 1;
}

}  // namespace creaseline
