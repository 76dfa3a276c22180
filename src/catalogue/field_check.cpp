// SPDX-License-Identifier: MIT
// Single fields, with the limits of the readers.
#include "creaseline/catalogue/field_check.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "base/number_text.h"
#include "base/worded.h"
#include "catalogue/blank_reader.h"
#include "catalogue/design_reader.h"
#include "catalogue/order_reader.h"
#include "catalogue/size_chart_reader.h"

namespace creaseline {

namespace {

Result<int> wholeNumber(std::string_view text, int least, int most, std::string_view example) {
  const std::string_view digits = withoutOuterSpaces(text);
  int value = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (digits.empty() || error != std::errc() || end != digits.data() + digits.size() ||
      value < least || value > most) {
    return Refusal{worded("write a whole number from {} to {}, such as {}", least, most, example)};
  }
  return value;
}

std::optional<std::string> textProblem(std::string_view text, bool lineBreaks, std::size_t most) {
  if (!isUtf8(text) || hasControlCharacter(text, lineBreaks)) {
    return lineBreaks ? worded("there are characters in it that cannot be written")
                      : worded("it must stand on one line");
  }
  if (const std::size_t count = characterCount(text); count > most) {
    return worded("it has {} characters, {} more than fit", count, count - most);
  }
  return std::nullopt;
}

template <class Entry>
std::vector<std::string> otherIds(const std::vector<Entry>& entries, std::size_t index) {
  std::vector<std::string> ids = idsOf(entries);
  if (index < ids.size()) {
    ids.erase(ids.begin() + static_cast<std::ptrdiff_t>(index));
  }
  return ids;
}

}  // namespace

Result<Length> checkLengthText(std::string_view text, LengthUnit bareUnit,
                               const LengthRange& range) {
  const Result<Length> length = parseLength(text, bareUnit);
  if (!length) {
    return Refusal{length.message()};
  }
  if (*length < range.least || *length > range.most) {
    const UnitChoice units{bareUnit, RulerMark::Sixteenth, {}};
    const std::string most = formatLength(range.most, units);
    return Refusal{
        range.least == Length::fromNanometres(1)
            ? worded("it must be more than 0 and at most {}", most)
            : worded("it must be from {} and at most {}", formatLength(range.least, units), most)};
  }
  return *length;
}

Result<Length> checkMove(std::string_view text, LengthUnit bareUnit) {
  return checkLengthText(text, bareUnit, {-kLargestPart, kLargestPart});
}

Result<Length> checkMeasure(std::string_view text, LengthUnit bareUnit, Measure measure) {
  const Length least = mayBeZero(measure) ? Length() : Length::fromNanometres(1);
  return checkLengthText(text, bareUnit, {least, kLargestPart});
}

Result<Length> checkDesignSide(std::string_view text, LengthUnit bareUnit) {
  return checkLengthText(text, bareUnit, {kSmallestDesign, kLargestPart});
}

Result<Angle> checkTurn(std::string_view text) {
  return parseAngle(text);
}

Result<ArealWeight> checkFabricWeight(std::string_view text) {
  const Result<ArealWeight> weight = parseArealWeight(text);
  if (weight && (*weight == ArealWeight() ||
                 weight->gramsPerSquareMetre() > kHeaviestFabricGramsPerSquareMetre)) {
    return Refusal{
        worded("it must be more than 0 and at most {} g/m2", kHeaviestFabricGramsPerSquareMetre)};
  }
  return weight;
}

Result<Colour> checkColour(std::string_view text) {
  return parseColour(withoutOuterSpaces(text));
}

Result<int> checkQuantity(std::string_view text) {
  if (withoutOuterSpaces(text).empty()) {
    return 0;
  }
  return wholeNumber(text, 0, kMostGarments, "12");
}

Result<int> checkStitches(std::string_view text) {
  return wholeNumber(text, 1, kMostStitches, "8500");
}

Result<double> checkScale(std::string_view text, const Design& design, const UnitChoice& units) {
  const auto number = readLeadingNumber(text);
  if (!number || !(number->rest.empty() || number->rest == "%")) {
    return Refusal{worded("write a factor such as 0.9, or 90 %")};
  }
  const double scale = number->rest.empty() ? number->value : number->value / 100.0;
  if (!(scale > 0.0 && scale <= kLargestScale)) {
    return Refusal{worded("it must be more than 0 and at most {}", kLargestScale)};
  }
  if (std::min(design.width, design.height) * scale < kSmallestScaledDesign) {
    return Refusal{worded("it leaves the design less than {} wide or high",
                          formatLength(kSmallestScaledDesign, fineUnits(units)))};
  }
  return scale;
}

Result<std::string> checkDue(std::string_view text) {
  const std::string date(withoutOuterSpaces(text));
  if (!date.empty() && !isCalendarDate(date)) {
    return Refusal{worded("write a date that exists as year, month, day, such as 2026-12-04")};
  }
  return date;
}

Result<std::string> checkLabel(std::string_view text, bool mayBeEmpty) {
  const std::string label(withoutOuterSpaces(text));
  if (label.empty() && !mayBeEmpty) {
    return Refusal{worded("it must not be empty")};
  }
  if (const auto problem = textProblem(label, false, kLongestLabel)) {
    return Refusal{*problem};
  }
  return label;
}

Result<std::string> checkNote(std::string_view text) {
  if (const auto problem = textProblem(text, true, kLongestProse)) {
    return Refusal{*problem};
  }
  return std::string(text);
}

Result<std::string> checkDistinct(std::string_view text, const std::vector<std::string>& others,
                                  std::string_view whatIsIt) {
  const Result<std::string> label = checkLabel(text, false);
  if (label && std::find(others.begin(), others.end(), *label) != others.end()) {
    return Refusal{worded("the {} {} is taken; each must be there once", inLanguage(whatIsIt),
                          inQuotes(*label))};
  }
  return label;
}

Result<std::string> checkLineId(std::string_view text, const Order& order, std::size_t index) {
  std::vector<std::string> others;
  for (std::size_t i = 0; i < order.lines.size(); ++i) {
    if (i != index) {
      others.push_back(order.lines[i].id);
    }
  }
  return checkDistinct(text, others, toBeWorded("line id"));
}

Result<std::string> checkBlankId(std::string_view text, const Order& order, std::size_t index) {
  return checkDistinct(text, otherIds(order.blanks, index), toBeWorded("blank id"));
}

Result<std::string> checkDesignId(std::string_view text, const Order& order, std::size_t index) {
  return checkDistinct(text, otherIds(order.designs, index), toBeWorded("design id"));
}

std::optional<std::string> fibresProblem(const std::vector<FibreShare>& fibres) {
  double sum = 0.0;
  std::vector<std::string> names;
  for (const FibreShare& share : fibres) {
    if (const Result<std::string> name = checkDistinct(share.fibre, names, toBeWorded("fibre"));
        !name) {
      return name.message();
    }
    names.push_back(share.fibre);
    if (!(share.percent >= kLeastFibrePercent && share.percent <= 100.0)) {
      return worded("{} must have a share of more than 0 and at most 100 %", share.fibre);
    }
    sum += share.percent;
  }
  if (fibres.empty()) {
    return worded("name at least one fibre");
  }
  if (std::abs(sum - 100.0) > kFibreTolerancePercent) {
    return worded("the shares add up to {:.6g} %, not 100 %", sum);
  }
  return std::nullopt;
}

}  // namespace creaseline
