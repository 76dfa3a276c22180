// SPDX-License-Identifier: MIT
// Text of lengths, angles and areal weights: what people type and what they read on a ruler.
// Locale-free. The only place where inches, centimetres and ounces exist.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "creaseline/base/angle.h"
#include "creaseline/base/areal_weight.h"
#include "creaseline/base/length.h"
#include "creaseline/base/result.h"

namespace creaseline {

enum class LengthUnit { Millimetre, Centimetre, Inch };
enum class WeightUnit { GramsPerSquareMetre, OuncesPerSquareYard };

// The finest mark of the ruler at the hooping table.
enum class RulerMark : int { Eighth = 8, Sixteenth = 16 };

// How the user wants numbers shown. Never changes a stored value.
struct UnitChoice {
  LengthUnit length = LengthUnit::Inch;
  RulerMark mark = RulerMark::Eighth;  // inches only; metric rulers are read to 1 mm
  WeightUnit weight = WeightUnit::GramsPerSquareMetre;
  // Steps finer than the ruler's marks, for a text that needs them: halves of a mark down to 1/64
  // in, then thousandths of an inch; tenths of a millimetre, hundredths, thousandths. Never kept,
  // and never typed: see fineUnits() and unitsTellingApart().
  int finer = 0;
  bool operator==(const UnitChoice&) const = default;
};

// Reads "3 1/2 in", "3-1/2\"", "3.5 in", "8,9 cm", "89mm", "1/4\"". Both decimal separators are
// accepted; thousands separators are not, and a comma that may be one ("1,234 mm") is refused
// rather than guessed at. A text without a unit is read in `bareUnit`, or refused
// if there is none. Refuses trailing text, more than one number, zero denominators, values that
// are not finite or beyond Length::kLimitMm.
Result<Length> parseLength(std::string_view text, std::optional<LengthUnit> bareUnit = {});

// Reads "180 g/m2", "180 g/m²", "180 gsm", "5.3 oz/yd2", "5,3 oz". Refuses negatives and a bare
// number.
Result<ArealWeight> parseArealWeight(std::string_view text);

// Reads "90", "90 deg", "90°", "-1,5 deg".
Result<Angle> parseAngle(std::string_view text);

// For people. Inches as ruler fractions to the chosen mark ("3 1/2 in", "1/8 in", "0 in"),
// millimetres to 1 mm ("89 mm"), centimetres to 0.1 cm ("8.9 cm"). Rounds half away from zero.
std::string formatLength(Length length, const UnitChoice& units);

// The value that formatLength() shows, as a length: two lengths "agree to the ruler mark" if
// their rounded values are equal.
Length roundToMark(Length length, const UnitChoice& units);
// The last mark that the length reaches, and the first that it does not go beyond: what is open
// must not be said larger than it is, nor what is needed smaller. A thousandth of a millimetre off
// a mark counts as on it, for lengths that come from reckoning.
Length roundDownToMark(Length length, const UnitChoice& units);
Length roundUpToMark(Length length, const UnitChoice& units);

// One mark of the ruler in use.
Length rulerMark(const UnitChoice& units);

// For lengths smaller than the ruler's marks, such as errors: inches to 1/64, millimetres to 0.1,
// centimetres to 0.01.
UnitChoice fineUnits(UnitChoice units);

// How a length and the limits that one text compares with it are shown: to the ruler's mark if that
// tells them apart, else finer, until the larger ones read larger. Equal lengths stay alike.
// `Room`: the length is rounded down, as what is left over is; where it is enough it may read as
// just enough, but not as too little.
enum class Compared { Nearest, Room };
UnitChoice unitsTellingApart(Length length, std::initializer_list<Length> limits, UnitChoice units,
                             Compared compared = Compared::Nearest);

// For people: "280 g/m²" or "8.3 oz/yd²".
std::string formatArealWeight(ArealWeight weight, const UnitChoice& units);
// For people, to 0.1 degree: "90°", "1.5°".
std::string formatAngle(Angle angle);

// For files: exact, always millimetres, shortest decimal form: "88.9 mm". parseLength() returns
// the same length.
std::string exactText(Length length);
// The same in a unit of one's own where that is exact: inches as whole 64ths ("3 1/2 in"), else
// millimetres; centimetres always ("8.9 cm").
std::string exactText(Length length, LengthUnit unit);
std::string exactText(ArealWeight weight);
std::string exactText(Angle angle);

// For a field to type in, always in the unit chosen: millimetres and centimetres exact, inches to
// the nearest 1/64, since what was given in millimetres lies on no mark. So a field must take only
// what was typed over, lest a value be changed by being looked at.
std::string fieldText(Length length, LengthUnit unit);

}  // namespace creaseline
