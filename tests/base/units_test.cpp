// SPDX-License-Identifier: MIT
// Lengths, weights and angles as people type and read them.
#include "creaseline/base/units.h"

#include <catch2/catch.hpp>
#include <random>
#include <string>

#include "support/spoken.h"

namespace creaseline {
namespace {

using namespace literals;

struct LengthRow {
  std::string text;
  std::optional<Length> length;  // nothing: refused
};

constexpr UnitChoice inches(RulerMark mark) {
  return {LengthUnit::Inch, mark, WeightUnit::GramsPerSquareMetre};
}
constexpr UnitChoice kEighths = inches(RulerMark::Eighth);
constexpr UnitChoice kSixteenths = inches(RulerMark::Sixteenth);
constexpr UnitChoice kMillimetres{LengthUnit::Millimetre};
constexpr UnitChoice kCentimetres{LengthUnit::Centimetre};

}  // namespace

TEST_CASE("a length is read as it stands on a work order, or refused", "[base][units]") {
  const LengthRow row = GENERATE(values<LengthRow>({
      {"3 1/2 in", 88.9_mm},
      {"3.5\"", 88.9_mm},
      {"3-1/2\"", 88.9_mm},
      {"3½ in", 88.9_mm},
      {"3 ½ in", 88.9_mm},
      {"3-½\"", 88.9_mm},
      {"3.5″", 88.9_mm},
      {"3 1/2”", 88.9_mm},
      {"3 1⁄2 in", 88.9_mm},
      {"3 1/2 inches", 88.9_mm},
      {"3,5 IN.", 88.9_mm},
      {"1 inch", 25.4_mm},
      {"1/4 in", 6.35_mm},
      {"¼\"", 6.35_mm},
      {"¾ in", 19.05_mm},
      {"⅛ in", 3.175_mm},
      {"1⅝ in", 41.275_mm},
      {"1/64 in", Length::fromNanometres(396'875)},
      {"7/2 in", 88.9_mm},
      {"8,9 cm", 89_mm},
      {"8.9 cm", 89_mm},
      {"89mm", 89_mm},
      {"  89\tmm ", 89_mm},
      {"89\u00A0mm", 89_mm},
      {".5 in", 12.7_mm},
      {"0 in", 0_mm},
      {"0,125 mm", 0.125_mm},
      {"1234,567 mm", 1234.567_mm},
      {"-3 1/2 in", -(88.9_mm)},
      {"\u22123 mm", -(3_mm)},
      {"+3 mm", 3_mm},
      {"1000000 mm", Length::fromMm(1.0e6)},
      {"", {}},
      {" ", {}},
      {"in", {}},
      {"\"", {}},
      {"3", {}},
      {"3 1/0 in", {}},
      {"1/ in", {}},
      {"/2 in", {}},
      {"3 /2 in", {}},
      {"3 1/2 1/2 in", {}},
      {"3 3/2 in", {}},
      {"3.5 1/2 in", {}},
      {"3 -1/2 in", {}},
      {"1,234.5 mm", {}},
      {"1.234,5 mm", {}},
      {"1,234 mm", {}},
      {"12,500 mm", {}},
      {"3 in 2", {}},
      {"3 in 2 mm", {}},
      {"3 4 in", {}},
      {"3 ft", {}},
      {"3 mmm", {}},
      {"nan mm", {}},
      {"inf mm", {}},
      {"1e308 mm", {}},
      {"1e2 mm", {}},
      {"0x10 mm", {}},
      {"--3 mm", {}},
      {"+-3 mm", {}},
      {"3- mm", {}},
      {"3. mm", {}},
      {". mm", {}},
      {"1000001 mm", {}},
      {"-40000 in", {}},
      {std::string(400, '9') + " mm", {}},
      {"1/" + std::string(400, '9') + " in", {}},
      {std::string("3 mm\0", 5), {}},
      {"\xC2 mm", {}},
  }));
  CAPTURE(row.text);
  const auto length = parseLength(row.text);
  REQUIRE(length.ok() == row.length.has_value());
  if (row.length) {
    CHECK(length.value().nanometres() == row.length->nanometres());
  } else {
    CHECK_FALSE(length.message().empty());
    CHECK(length.message().size() < 200);
    CHECK(length.message().back() != '.');
  }
}

TEST_CASE("a bare number is read in the unit that the field states", "[base][units]") {
  CHECK(parseLength("3 1/2", LengthUnit::Inch).value() == 88.9_mm);
  CHECK(parseLength("8,9", LengthUnit::Centimetre).value() == 89_mm);
  CHECK(parseLength("89", LengthUnit::Millimetre).value() == 89_mm);
  CHECK(parseLength("89 mm", LengthUnit::Inch).value() == 89_mm);
  CHECK_FALSE(parseLength("89 furlongs", LengthUnit::Millimetre).ok());
  CHECK_FALSE(parseLength("", LengthUnit::Millimetre).ok());
}

TEST_CASE("a refusal says what is wrong with the length", "[base][units]") {
  CHECK(parseLength("3").message() == "'3' has no unit; write mm, cm or in");
  CHECK_THAT(parseLength("3 ell").message(), Catch::Contains("'ell'"));
  CHECK_THAT(parseLength("3 1/0 in").message(), Catch::Contains("denominator zero"));
  CHECK_THAT(parseLength("1,234 mm").message(), Catch::Contains("thousands separator"));
  CHECK_THAT(parseLength("9999999 mm").message(), Catch::Contains("out of range"));
}

TEST_CASE("inches are written as ruler fractions", "[base][units]") {
  struct Row {
    Length length;
    std::string eighths;
    std::string sixteenths;
  };
  const Row row = GENERATE(values<Row>({
      {0_mm, "0 in", "0 in"},
      {88.9_mm, "3 1/2 in", "3 1/2 in"},
      {3.175_mm, "1/8 in", "1/8 in"},
      {3.1875_in, "3 1/4 in", "3 3/16 in"},  // 3 3/16 is half-way between eighths
      {0.9375_in, "1 in", "15/16 in"},       // 15/16 carries to the whole inch
      {0.96875_in, "1 in", "1 in"},          // 31/32
      {0.9374_in, "7/8 in", "15/16 in"},
      {2.99_in, "3 in", "3 in"},
      {0.75_in, "3/4 in", "3/4 in"},
      {0.625_in, "5/8 in", "5/8 in"},
      {0.0625_in, "1/8 in", "1/16 in"},
      {0.06_in, "0 in", "1/16 in"},
      {-(0.01_in), "0 in", "0 in"},
      {-(3.5_in), "-3 1/2 in", "-3 1/2 in"},
      {-(0.125_in), "-1/8 in", "-1/8 in"},
      {-(0.0625_in), "-1/8 in", "-1/16 in"},
      {-(0.9375_in), "-1 in", "-15/16 in"},
      {120_in, "120 in", "120 in"},
  }));
  CAPTURE(row.length.inches());
  CHECK(formatLength(row.length, kEighths) == row.eighths);
  CHECK(formatLength(row.length, kSixteenths) == row.sixteenths);
}

TEST_CASE("metric lengths are written to the millimetre", "[base][units]") {
  CHECK(formatLength(88.9_mm, kMillimetres) == "89 mm");
  CHECK(formatLength(88.9_mm, kCentimetres) == "8.9 cm");
  CHECK(formatLength(90_mm, kCentimetres) == "9.0 cm");
  CHECK(formatLength(9.6_mm, kCentimetres) == "1.0 cm");
  CHECK(formatLength(0.5_mm, kMillimetres) == "1 mm");
  CHECK(formatLength(-(0.5_mm), kMillimetres) == "-1 mm");
  CHECK(formatLength(-(0.4_mm), kMillimetres) == "0 mm");
  CHECK(formatLength(-(4_mm), kCentimetres) == "-0.4 cm");
  CHECK(formatLength(-(0.4_mm), kCentimetres) == "0.0 cm");
  CHECK(formatLength(0_mm, kCentimetres) == "0.0 cm");
}

TEST_CASE("errors smaller than the ruler's marks are written finer", "[base][units]") {
  CHECK(formatLength(7.5_mm, fineUnits(kEighths)) == "19/64 in");
  CHECK(formatLength(7.5_mm, fineUnits(kSixteenths)) == "19/64 in");
  CHECK(formatLength(3.175_mm, fineUnits(kSixteenths)) == "1/8 in");
  CHECK(formatLength(4.61_mm, fineUnits(kMillimetres)) == "4.6 mm");
  CHECK(formatLength(4_mm, fineUnits(kMillimetres)) == "4 mm");
  CHECK(formatLength(4.6_mm, fineUnits(kCentimetres)) == "0.46 cm");
  CHECK(formatLength(40_mm, fineUnits(kCentimetres)) == "4.0 cm");
}

TEST_CASE("lengths that a text compares read differently where they differ", "[base][units]") {
  const auto told = [](Length length, Length limit, const UnitChoice& units, Compared compared) {
    const UnitChoice shown = unitsTellingApart(length, {limit}, units, compared);
    const Length read = compared == Compared::Room ? roundDownToMark(length, shown) : length;
    return formatLength(read, shown) + " of " + formatLength(limit, shown);
  };
  // 3 mm and 3.4 mm are both 1/8 in to the ruler.
  CHECK(told(3_mm, 3.4_mm, kEighths, Compared::Nearest) == "1/8 in of 9/64 in");
  CHECK(told(3_mm, 4_mm, kEighths, Compared::Nearest) == "1/8 in of 3/16 in");
  CHECK(told(3.2_mm, 4_mm, kEighths, Compared::Room) == "1/8 in of 3/16 in");
  CHECK(told(6_mm, 20_mm, kEighths, Compared::Nearest) == "1/4 in of 3/4 in");
  // What is enough must not read as too little for being rounded down.
  CHECK(told(12.75_mm, 12.7_mm, kEighths, Compared::Nearest) == "0.502 in of 0.500 in");
  CHECK(told(12.6_mm, 12.5_mm, kEighths, Compared::Room) == "31/64 in of 31/64 in");
  CHECK(told(12.1_mm, 12.3_mm, kMillimetres, Compared::Nearest) == "12.1 mm of 12.3 mm");
  CHECK(told(12.6_mm, 12.4_mm, kMillimetres, Compared::Nearest) == "13 mm of 12 mm");
  CHECK(told(12.11_mm, 12.13_mm, kCentimetres, Compared::Nearest) == "1.211 cm of 1.213 cm");
  CHECK(told(3_mm, 3_mm, kEighths, Compared::Nearest) == "1/8 in of 1/8 in");
}

TEST_CASE("compared lengths never read the wrong way round", "[base][units][random]") {
  std::mt19937 random(20261129);
  std::uniform_int_distribution<std::int64_t> near(-12'000'000, 12'000'000);
  for (int i = 0; i < 20'000; ++i) {
    // To a hundredth of a millimetre, which the finest thousandths of an inch still tell.
    const Length length = Length::fromNanometres(near(random) / 100'000 * 100'000);
    const Length limit = Length::fromNanometres(near(random) / 100'000 * 100'000);
    for (const UnitChoice& units : {kEighths, kSixteenths, kMillimetres, kCentimetres}) {
      for (const Compared compared : {Compared::Nearest, Compared::Room}) {
        const UnitChoice shown = unitsTellingApart(length, {limit}, units, compared);
        const Length read = compared == Compared::Room ? roundDownToMark(length, shown)
                                                       : roundToMark(length, shown);
        CAPTURE(length.mm(), limit.mm());
        const Length readLimit = roundToMark(limit, shown);
        if (length < limit) {
          REQUIRE(read < readLimit);
          REQUIRE(formatLength(read, shown) != formatLength(limit, shown));
        } else if (length > limit) {
          REQUIRE(read >= readLimit);
          REQUIRE((compared == Compared::Room || read > readLimit));
        }
      }
    }
  }
}

TEST_CASE("a field says a length in the unit chosen, whatever it was given in", "[base][units]") {
  CHECK(fieldText(250_mm, LengthUnit::Inch) == "9 27/32 in");
  CHECK(fieldText(1.5_mm, LengthUnit::Inch) == "1/16 in");
  CHECK(fieldText(84_mm, LengthUnit::Inch) == "3 5/16 in");
  CHECK(fieldText(3.5_in, LengthUnit::Inch) == "3 1/2 in");
  CHECK(fieldText(-(8.8_mm), LengthUnit::Inch) == "-11/32 in");
  CHECK(fieldText(3.25_in, LengthUnit::Millimetre) == "82.55 mm");
  CHECK(fieldText(3.25_in, LengthUnit::Centimetre) == "8.255 cm");
}

TEST_CASE("an exact text is read back to the same length", "[base][units]") {
  CHECK(exactText(88.9_mm) == "88.9 mm");
  CHECK(exactText(89_mm) == "89 mm");
  CHECK(exactText(0_mm) == "0 mm");
  CHECK(exactText(Length::fromNanometres(-1)) == "-0.000001 mm");
  CHECK(exactText(Length::fromInches(1.0 / 64.0)) == "0.396875 mm");
  const unsigned seed = 20263;
  CAPTURE(seed);
  std::mt19937_64 random(seed);
  for (const std::int64_t limit : {1'000LL, 1'000'000LL, 1'000'000'000LL, 1'000'000'000'000LL}) {
    std::uniform_int_distribution<std::int64_t> nanometres(-limit, limit);
    for (int i = 0; i < 2000; ++i) {
      const Length length = Length::fromNanometres(nanometres(random));
      const auto again = parseLength(exactText(length));
      CAPTURE(exactText(length));
      REQUIRE(again.ok());
      CHECK(again->nanometres() == length.nanometres());
    }
  }
}

TEST_CASE("what is shown is read back as the nearest ruler mark", "[base][units]") {
  const unsigned seed = 20264;
  CAPTURE(seed);
  std::mt19937_64 random(seed);
  std::uniform_int_distribution<std::int64_t> nanometres(-2'000'000'000, 2'000'000'000);
  const UnitChoice choice = GENERATE(kEighths, kSixteenths, kMillimetres, kCentimetres);
  const Length mark = choice.length == LengthUnit::Inch
                          ? Length::fromInches(1.0 / static_cast<int>(choice.mark))
                          : 1_mm;
  for (int i = 0; i < 3000; ++i) {
    const Length length = Length::fromNanometres(nanometres(random));
    const Length rounded = roundToMark(length, choice);
    const std::string shown = formatLength(length, choice);
    CAPTURE(shown, length.nanometres());
    const auto again = parseLength(shown);
    REQUIRE(again.ok());
    CHECK(again->nanometres() == rounded.nanometres());
    CHECK(rounded.nanometres() % mark.nanometres() == 0);
    CHECK(abs(rounded - length) * 2.0 <= mark);
    CHECK(roundDownToMark(length, choice) <= length + Length::fromNanometres(1'000));
    CHECK(roundUpToMark(length, choice) >= length - Length::fromNanometres(1'000));
    CHECK((roundDownToMark(length, choice) == rounded || roundUpToMark(length, choice) == rounded));
    CHECK(roundDownToMark(rounded, choice) == rounded);
    CHECK(roundUpToMark(rounded, choice) == rounded);
    CHECK(roundDownToMark(-length, choice) == -roundUpToMark(length, choice));
    CHECK(roundToMark(-length, choice) == -rounded);
    CHECK(roundToMark(rounded, choice) == rounded);
  }
}

TEST_CASE("an areal weight is read with its unit, or refused", "[base][units]") {
  struct Row {
    std::string text;
    std::optional<double> grams;
  };
  const Row row = GENERATE(values<Row>({
      {"180 g/m2", 180.0}, {"180 g/m²", 180.0},     {"180 g/m^2", 180.0}, {"180 gsm", 180.0},
      {"180GSM", 180.0},   {"5.3 oz/yd2", 179.7},   {"5,3 oz", 179.7},    {"8 oz/yd²", 271.246},
      {"0 g/m2", 0.0},     {"5 1/2 oz/yd2", 186.5}, {"180", {}},          {"", {}},
      {"g/m2", {}},        {"-5 g/m2", {}},         {"180 g", {}},        {"180 g/m3", {}},
      {"180 g/m2 x", {}},  {"1e9 g/m2", {}},        {"200000 gsm", {}},   {"9000000 oz", {}},
      {"nan gsm", {}},
  }));
  CAPTURE(row.text);
  const auto weight = parseArealWeight(row.text);
  REQUIRE(weight.ok() == row.grams.has_value());
  if (row.grams) {
    CHECK(weight->gramsPerSquareMetre() == Approx(*row.grams).margin(0.05).epsilon(0.0));
  } else {
    CHECK_FALSE(weight.message().empty());
  }
}

TEST_CASE("areal weights are written for people and for files", "[base][units]") {
  const UnitChoice ounces{LengthUnit::Inch, RulerMark::Eighth, WeightUnit::OuncesPerSquareYard};
  const ArealWeight heavy = ArealWeight::fromGramsPerSquareMetre(280.0);
  CHECK(formatArealWeight(heavy, kEighths) == "280 g/m²");
  CHECK(formatArealWeight(heavy, ounces) == "8.3 oz/yd²");
  CHECK(formatArealWeight(ArealWeight::fromOuncesPerSquareYard(8), ounces) == "8.0 oz/yd²");
  CHECK(exactText(ArealWeight::fromGramsPerSquareMetre(179.7)) == "179.7 g/m2");
  const unsigned seed = 20265;
  CAPTURE(seed);
  std::mt19937_64 random(seed);
  std::uniform_real_distribution<double> grams(0.0, 1.0e5);
  for (int i = 0; i < 2000; ++i) {
    const ArealWeight weight = ArealWeight::fromGramsPerSquareMetre(grams(random));
    CHECK(parseArealWeight(exactText(weight)).value() == weight);
  }
}

TEST_CASE("an angle is read with or without its unit, or refused", "[base][units]") {
  struct Row {
    std::string text;
    std::optional<int> millidegrees;
  };
  const Row row = GENERATE(values<Row>({
      {"90", 90'000},
      {"90 deg", 90'000},
      {"90°", 90'000},
      {"-1,5 deg", -1'500},
      {"-180 degrees", 180'000},
      {"450", 90'000},
      {"1 degree", 1'000},
      {"", {}},
      {"deg", {}},
      {"90 rad", {}},
      {"90 deg 3", {}},
      {"2000000", {}},
      {"nan", {}},
      {"1e3", {}},
  }));
  CAPTURE(row.text);
  const auto angle = parseAngle(row.text);
  REQUIRE(angle.ok() == row.millidegrees.has_value());
  if (row.millidegrees) {
    CHECK(angle->millidegrees() == *row.millidegrees);
  } else {
    CHECK_FALSE(angle.message().empty());
  }
}

TEST_CASE("angles are written for people and for files", "[base][units]") {
  CHECK(formatAngle(90_deg) == "90°");
  CHECK(formatAngle(1.5_deg) == "1.5°");
  CHECK(formatAngle(-(1.26_deg)) == "-1.3°");
  CHECK(formatAngle(-(0.04_deg)) == "0°");
  CHECK(exactText(-(1.5_deg)) == "-1.5 deg");
  for (int millidegrees = -179'999; millidegrees <= 180'000; millidegrees += 97) {
    const Angle angle = Angle::fromMillidegrees(millidegrees);
    CHECK(parseAngle(exactText(angle)).value() == angle);
  }
}

TEST_CASE("what is wrong with a number is one sentence in the language spoken", "[base][units]") {
  Phrasebook::Content content;
  content.decimalSeparator = ',';
  content.phrases = {{"{} is too large", "{} es demasiado grande"},
                     {"{} has {} for a unit; write mm, cm or in", "{1} no es unidad de {0}"},
                     {"{}; write degrees such as 90 deg or -1.5 deg", "{}; escriba grados"},
                     {"{:.1f} oz/yd²", "{:.1Lf} oz/yd²"}};
  const Phrasebook book(content);
  const Speaking speaking(book);
  CHECK(parseLength("3 ft").message() == "'ft' no es unidad de '3 ft'");
  CHECK(parseAngle("9" + std::string(400, '9')).message() ==
        "'" + std::string(40, '9') + "...' es demasiado grande; escriba grados");
  const UnitChoice ounces{LengthUnit::Inch, RulerMark::Eighth, WeightUnit::OuncesPerSquareYard};
  CHECK(formatArealWeight(ArealWeight::fromOuncesPerSquareYard(8), ounces) == "8,0 oz/yd²");
}

}  // namespace creaseline
