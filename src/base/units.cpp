// SPDX-License-Identifier: MIT
// Lengths, areal weights and angles as text. Rounding for people is done on whole nanometres, so
// that a length shown on a ruler mark is that mark exactly.
#include "creaseline/base/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <numeric>
#include <utility>

#include "base/number_text.h"
#include "base/power_of_ten.h"
#include "base/quoted_text.h"
#include "base/worded.h"

namespace creaseline {
namespace {

constexpr std::int64_t kNanometresPerMm = 1'000'000;
constexpr std::int64_t kNanometresPerInch = 25'400'000;

constexpr std::pair<std::string_view, LengthUnit> kLengthUnits[] = {
    {"mm", LengthUnit::Millimetre}, {"cm", LengthUnit::Centimetre}, {"in", LengthUnit::Inch},
    {"in.", LengthUnit::Inch},      {"inch", LengthUnit::Inch},     {"inches", LengthUnit::Inch},
    {"\"", LengthUnit::Inch},       {"″", LengthUnit::Inch},        {"”", LengthUnit::Inch},
};

constexpr std::pair<std::string_view, WeightUnit> kWeightUnits[] = {
    {"g/m2", WeightUnit::GramsPerSquareMetre},    {"g/m²", WeightUnit::GramsPerSquareMetre},
    {"g/m^2", WeightUnit::GramsPerSquareMetre},   {"gsm", WeightUnit::GramsPerSquareMetre},
    {"oz/yd2", WeightUnit::OuncesPerSquareYard},  {"oz/yd²", WeightUnit::OuncesPerSquareYard},
    {"oz/yd^2", WeightUnit::OuncesPerSquareYard}, {"oz", WeightUnit::OuncesPerSquareYard},
};

constexpr std::pair<std::string_view, bool> kAngleUnits[] = {
    {"", true}, {"deg", true}, {"°", true}, {"degree", true}, {"degrees", true},
};

std::string lowerCase(std::string_view text) {
  std::string lower(text);
  std::transform(lower.begin(), lower.end(), lower.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return lower;
}

template <class Unit, std::size_t n>
std::optional<Unit> unitOf(std::string_view text,
                           const std::pair<std::string_view, Unit> (&units)[n]) {
  const std::string lower = lowerCase(text);
  for (const auto& [name, unit] : units) {
    if (name == lower) {
      return unit;
    }
  }
  return std::nullopt;
}

double mmPer(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre:
      return 1.0;
    case LengthUnit::Centimetre:
      return 10.0;
    case LengthUnit::Inch:
      return Length::kMmPerInch;
  }
  return 1.0;
}

// Half away from zero.
std::int64_t nearestMultiple(std::int64_t value, std::int64_t step) {
  const std::int64_t magnitude = (std::abs(value) + step / 2) / step * step;
  return value < 0 ? -magnitude : magnitude;
}

// Rulers end at 1/64, and so do halves of an inch in whole nanometres; then come thousandths.
constexpr int kFinestFraction = 64;
constexpr int kThousandths = 1'000;
constexpr int kFinestDecimals = 3;  // of a millimetre

int marksPerInch(const UnitChoice& units) {
  int marks = static_cast<int>(units.mark);
  for (int i = 0; i < units.finer && marks < kThousandths; ++i) {
    marks = marks < kFinestFraction ? 2 * marks : kThousandths;
  }
  return marks;
}

int decimalsOfMm(const UnitChoice& units) {
  return std::min(units.finer, kFinestDecimals);
}

std::int64_t markStep(const UnitChoice& units) {
  return units.length == LengthUnit::Inch ? kNanometresPerInch / marksPerInch(units)
                                          : kNanometresPerMm / powerOfTen(decimalsOfMm(units));
}

bool mayBeFiner(const UnitChoice& units) {
  return units.length == LengthUnit::Inch ? marksPerInch(units) < kThousandths
                                          : decimalsOfMm(units) < kFinestDecimals;
}

// value / 10^digits in its shortest decimal form, with at least so many digits after the separator:
// a point in files, for people what they write.
std::string decimalText(std::int64_t value, int digits, char separator = '.', int least = 0) {
  std::int64_t magnitude = std::abs(value);
  for (; digits > least && magnitude % 10 == 0; --digits) {
    magnitude /= 10;
  }
  const std::int64_t scale = powerOfTen(digits);
  std::string text = fmt::format("{}{}", value < 0 ? "-" : "", magnitude / scale);
  if (digits > 0) {
    text += fmt::format("{}{:0{}}", separator, magnitude % scale, digits);
  }
  return text;
}

std::string inchText(std::int64_t marks, std::int64_t marksPerInch) {
  const std::int64_t magnitude = std::abs(marks);
  const std::int64_t whole = magnitude / marksPerInch;
  const std::int64_t part = magnitude % marksPerInch;
  std::string text = marks < 0 ? "-" : "";
  if (whole != 0 || part == 0) {
    text += fmt::format("{}", whole);
  }
  if (part != 0) {
    const std::int64_t divisor = std::gcd(part, marksPerInch);
    text += fmt::format("{}{}/{}", whole != 0 ? " " : "", part / divisor, marksPerInch / divisor);
  }
  return text + " in";
}

}  // namespace

Result<Length> parseLength(std::string_view text, std::optional<LengthUnit> bareUnit) {
  const auto number = readLeadingNumber(text);
  if (!number) {
    return Refusal{
        worded("{}; write a length such as 3 1/2 in, 8.9 cm or 89 mm", number.message())};
  }
  const auto unit = number->rest.empty() ? bareUnit : unitOf(number->rest, kLengthUnits);
  if (!unit) {
    return Refusal{number->rest.empty()
                       ? worded("{} has no unit; write mm, cm or in", quotedText(text))
                       : worded("{} has {} for a unit; write mm, cm or in", quotedText(text),
                                quotedText(number->rest))};
  }
  const double mm = number->value * mmPer(*unit);
  if (!(std::abs(mm) <= Length::kLimitMm)) {
    return Refusal{worded("{} is out of range; at most 1000 m can be meant", quotedText(text))};
  }
  return Length::fromMm(mm);
}

Result<ArealWeight> parseArealWeight(std::string_view text) {
  const auto number = readLeadingNumber(text);
  const auto unit = number ? unitOf(number->rest, kWeightUnits) : std::nullopt;
  if (!unit) {
    return Refusal{
        number ? worded("{} has no unit of weight; write a weight such as 180 g/m2 or 5.3 oz/yd2",
                        quotedText(text))
               : worded("{}; write a weight such as 180 g/m2 or 5.3 oz/yd2", number.message())};
  }
  const double grams = *unit == WeightUnit::GramsPerSquareMetre
                           ? number->value
                           : number->value * ArealWeight::kGramsPerSquareMetrePerOunce;
  if (!(grams >= 0.0 && grams <= ArealWeight::kLimitGramsPerSquareMetre)) {
    return Refusal{
        worded("{} is out of range; a weight is from 0 to 100000 g/m2", quotedText(text))};
  }
  return ArealWeight::fromGramsPerSquareMetre(grams);
}

Result<Angle> parseAngle(std::string_view text) {
  const auto number = readLeadingNumber(text);
  if (!number || !unitOf(number->rest, kAngleUnits)) {
    return Refusal{number
                       ? worded("{} is not an angle; write degrees such as 90 deg or -1.5 deg",
                                quotedText(text))
                       : worded("{}; write degrees such as 90 deg or -1.5 deg", number.message())};
  }
  if (!(std::abs(number->value) <= 1.0e6)) {
    return Refusal{
        worded("{} is out of range; an angle is at most 1000000 degrees", quotedText(text))};
  }
  return Angle::fromDegrees(number->value);
}

std::string formatLength(Length length, const UnitChoice& units) {
  const std::int64_t marks = roundToMark(length, units).nanometres() / markStep(units);
  const char separator = spokenDecimalSeparator();
  switch (units.length) {
    case LengthUnit::Millimetre:
      return decimalText(marks, decimalsOfMm(units), separator) + " mm";
    case LengthUnit::Centimetre:
      return decimalText(marks, decimalsOfMm(units) + 1, separator, 1) + " cm";
    case LengthUnit::Inch:
      break;
  }
  return marksPerInch(units) == kThousandths ? decimalText(marks, 3, separator, 3) + " in"
                                             : inchText(marks, marksPerInch(units));
}

Length roundToMark(Length length, const UnitChoice& units) {
  return Length::fromNanometres(nearestMultiple(length.nanometres(), markStep(units)));
}

Length roundDownToMark(Length length, const UnitChoice& units) {
  constexpr std::int64_t kOnMark = 1'000;
  const std::int64_t step = markStep(units);
  const std::int64_t value = length.nanometres() + kOnMark;
  const std::int64_t marks = value / step - (value % step < 0 ? 1 : 0);
  return Length::fromNanometres(marks * step);
}

Length roundUpToMark(Length length, const UnitChoice& units) {
  return -roundDownToMark(-length, units);
}

Length rulerMark(const UnitChoice& units) {
  return Length::fromNanometres(markStep(units));
}

UnitChoice fineUnits(UnitChoice units) {
  units.finer = units.length == LengthUnit::Inch ? 0 : 1;
  while (units.length == LengthUnit::Inch && marksPerInch(units) < kFinestFraction) {
    ++units.finer;
  }
  return units;
}

UnitChoice unitsTellingApart(Length length, std::initializer_list<Length> limits, UnitChoice units,
                             Compared compared) {
  const auto readsAsItIs = [&](Length limit) {
    const Length shown =
        compared == Compared::Room ? roundDownToMark(length, units) : roundToMark(length, units);
    const Length shownLimit = roundToMark(limit, units);
    if (compared == Compared::Room && length >= limit) {
      return length == limit || shown >= shownLimit;
    }
    return (shown <=> shownLimit) == (length <=> limit);
  };
  while (mayBeFiner(units) && !std::all_of(limits.begin(), limits.end(), readsAsItIs)) {
    ++units.finer;
  }
  return units;
}

std::string formatArealWeight(ArealWeight weight, const UnitChoice& units) {
  if (units.weight == WeightUnit::OuncesPerSquareYard) {
    return worded("{:.1f} oz/yd²", weight.ouncesPerSquareYard());
  }
  return fmt::format("{} g/m²", std::llround(weight.gramsPerSquareMetre()));
}

std::string formatAngle(Angle angle) {
  return decimalText(nearestMultiple(angle.millidegrees(), 100), 3, spokenDecimalSeparator()) + "°";
}

std::string exactText(Length length) {
  return decimalText(length.nanometres(), 6) + " mm";
}

std::string exactText(Length length, LengthUnit unit) {
  constexpr std::int64_t kFinestMarks = 64;
  constexpr std::int64_t kFinestStep = kNanometresPerInch / kFinestMarks;
  if (unit == LengthUnit::Centimetre) {
    return decimalText(length.nanometres(), 7) + " cm";
  }
  if (unit == LengthUnit::Inch && length.nanometres() % kFinestStep == 0) {
    return inchText(length.nanometres() / kFinestStep, kFinestMarks);
  }
  return exactText(length);
}

std::string fieldText(Length length, LengthUnit unit) {
  return unit == LengthUnit::Inch ? formatLength(length, fineUnits({unit, RulerMark::Eighth, {}}))
                                  : exactText(length, unit);
}

std::string exactText(ArealWeight weight) {
  return decimalText(std::llround(weight.gramsPerSquareMetre() * 1000.0), 3) + " g/m2";
}

std::string exactText(Angle angle) {
  return decimalText(angle.millidegrees(), 3) + " deg";
}

}  // namespace creaseline
