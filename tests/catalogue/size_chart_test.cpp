// SPDX-License-Identifier: MIT
// Size charts from CSV in the forms that spreadsheets write, and bands told from names.
#include "creaseline/catalogue/size_chart.h"

#include <catch2/catch.hpp>

#include "catalogue/catalogue_data.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

namespace {

SizeChart parse(const std::string& text) {
  return parseSizeChartCsv(text, "chart.csv");
}

}  // namespace

TEST_CASE("a chart with commas and one unit for all columns is read", "[catalogue][chart]") {
  const SizeChart chart = parse("size (in),body-width,body-length\nS,20,27\nM,22.5,28\n");
  REQUIRE(chart.sizes.size() == 2);
  CHECK(chart.sizes[0].name == SizeName("S"));
  CHECK(chart.sizes[1].measures ==
        std::map<Measure, Length>{{Measure::BodyWidth, 22.5_in}, {Measure::BodyLength, 28_in}});
}

TEST_CASE("charts that differ only in how they are written are equal", "[catalogue][chart]") {
  const SizeChart plain =
      parse("size,body-width (cm),body-length (mm)\nS,50.5,700\n\"L\",53,720\n");
  const char* others[] = {
      "\xEF\xBB\xBFsize;body-width (cm);body-length (mm)\r\nS;50,5;700\r\nL;53;720\r\n",
      "size\tbody-width (cm)\tbody-length (mm)\nS\t50,5\t700\nL\t53\t720",
      "Size , Body Width (cm) , BODY_LENGTH ( MM )\n S , 50.5 , 700 \n\n L,53,720\n\n",
      "size,\"body-width (cm)\",\"body-length (mm)\"\nS,\"50,5\",700\nL,\"53\",720\n",
      "size;body-width (cm);body-length (mm)\rS;50,5;700\rL;53;720\r",
      "size (mm),body-width,body-length\nS,505,700\nL,530,720\n",
      "size (cm),body-width,body-length\nS,50.5,27.559055118110235 in\nL,530 mm,72\n",
  };
  for (const char* text : others) {
    CAPTURE(text);
    CHECK(parse(text) == plain);
  }
}

TEST_CASE("an empty cell is a measure not given, a note is not read", "[catalogue][chart]") {
  const SizeChart chart =
      parse("size (cm);band;body-width;rib-height;note\nS;;50;;\nX1;youth;40;0;\"wide; soft\"\n");
  CHECK(chart.sizes.at(0).measures.count(Measure::RibHeight) == 0);
  CHECK_FALSE(chart.sizes.at(0).bandGiven);
  CHECK(chart.sizes.at(1).measures.at(Measure::RibHeight) == Length());
  CHECK(chart.sizes.at(1).band == SizeBand::Youth);
  CHECK(chart.sizes.at(1).bandGiven);
}

TEST_CASE("a broken chart is refused with line and column", "[catalogue][chart]") {
  struct Row {
    const char* text;
    std::vector<std::string> expected;
  };
  const Row rows[] = {
      {"", {"chart.csv", "an empty file"}},
      {"size,body-width\nS,20\n", {"line 1, column 'body-width'", "no unit"}},
      {"size (in),body-width\nS,0\n", {"line 2, column 'body-width'", "\"0\"", "more than 0"}},
      {"size (in),body-width\nS,1e308\n", {"line 2", "\"1e308\""}},
      {"size (in),body-width\nS,NaN\n", {"line 2", "\"NaN\""}},
      {"size (in),body-width\nS,999\n", {"line 2", "at most 5000 mm"}},
      {"size (in),body-width\n,20\n", {"line 2, column 'size'", "an empty cell"}},
      {"size (in),,body-width\nS,1,20\n", {"line 1", "no title over column 2"}},
      {"size (in),body-width\nS,20\x01\n", {"line 2", "\\x01"}},
      {"size (in),body-width\n\"two\nlines\",20\nS,x\n", {"line 4", "\"x\""}},
      {"size (in),sleeve\nS,20\n", {"line 1", "\"sleeve\"", "sleeve-width"}},
  };
  for (const Row& row : rows) {
    const std::string message = inputErrorOf([&] { static_cast<void>(parse(row.text)); });
    CAPTURE(row.text, message);
    for (const std::string& fragment : row.expected) {
      CAPTURE(fragment);
      CHECK(message.find(fragment) != std::string::npos);
    }
  }
}

TEST_CASE("a chart of more sizes than any garment has is refused", "[catalogue][chart]") {
  std::string text = "size (in),body-width\n";
  for (int i = 0; i < 201; ++i) {
    text += "size" + std::to_string(i) + ",20\n";
  }
  CHECK_THAT(inputErrorOf([&] { static_cast<void>(parse(text)); }),
             Catch::Contains("201 sizes") && Catch::Contains("at most 200"));
}

TEST_CASE("the name of a size tells its band", "[catalogue][chart]") {
  const std::pair<const char*, std::optional<SizeBand>> rows[] = {
      {"YS", SizeBand::Youth},
      {"Youth M", SizeBand::Youth},
      {"Y10", SizeBand::Youth},
      {"YXL", SizeBand::Youth},
      {"Y6-8", SizeBand::Youth},
      {"youth x-large", SizeBand::Youth},
      {"2XL", SizeBand::AdultAboveXl},
      {"XXL", SizeBand::AdultAboveXl},
      {"4X", SizeBand::AdultAboveXl},
      {"XXXL", SizeBand::AdultAboveXl},
      {"3xl", SizeBand::AdultAboveXl},
      {"Adult 2XL", SizeBand::AdultAboveXl},
      {"XS", SizeBand::Adult},
      {"S", SizeBand::Adult},
      {"M", SizeBand::Adult},
      {"L", SizeBand::Adult},
      {"XL", SizeBand::Adult},
      {"X-Large", SizeBand::Adult},
      {"2XS", SizeBand::Adult},
      {"Adult M", SizeBand::Adult},
      {"6M", SizeBand::Infant},
      {"18-24M", SizeBand::Infant},
      {"12 months", SizeBand::Infant},
      {"newborn", SizeBand::Infant},
      {"48", std::nullopt},
      {"tall", std::nullopt},
      {"Y", std::nullopt},
      {"Yellow", std::nullopt},
      {"1XL", std::nullopt},
      {"", std::nullopt},
      {"100M", std::nullopt},
      {"adult", std::nullopt}};
  for (const auto& [name, band] : rows) {
    CAPTURE(name);
    CHECK(bandFromName(SizeName(name)) == band);
  }
}
