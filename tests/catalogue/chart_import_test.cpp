// SPDX-License-Identifier: MIT
// Size charts as makers publish them.
#include "creaseline/catalogue/chart_import.h"

#include <catch2/catch.hpp>
#include <random>

#include "catalogue/catalogue_data.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

namespace {

const MeasureWords& words() {
  static const MeasureWords words =
      loadMeasureWords(std::filesystem::path(SOURCE_DIR) / "resources");
  return words;
}

Length measure(const ImportedChart& chart, const std::string& size, Measure measure) {
  return chart.chart.find(SizeName(size))->measures.at(measure);
}

std::string sentences(const ImportedChart& chart) {
  std::string text;
  for (const ImportProblem& problem : chart.problems) {
    text += std::to_string(problem.place.line) + ":" + std::to_string(problem.place.column) + " " +
            problem.text + "\n";
  }
  return text;
}

}  // namespace

TEST_CASE("a table from a spreadsheet is understood at once", "[catalogue][import]") {
  const ChartImport table = importTable(
      "Size\tChest Width (in)\tBody Length (in)\tSleeve\nS\t18\t28\t8 1/4\nM\t20 1/2\t29\t\n",
      words());
  CHECK(table.separator == '\t');
  CHECK_FALSE(table.sizesAcross);
  REQUIRE(table.columns.size() == 4);
  CHECK(table.columns[3].measure == Measure::SleeveLength);
  CHECK_FALSE(table.columns[3].unit);
  // The last column says no unit.
  CHECK_THAT(sentences(chartOf(table)), Catch::StartsWith("2:4 ") && Catch::Contains("no unit"));

  ChartImport settled = table;
  settled.unitOfAll = LengthUnit::Inch;
  const ImportedChart chart = chartOf(settled);
  CHECK(sentences(chart).empty());
  CHECK(measure(chart, "M", Measure::BodyWidth) == Length::fromInches(20.5));
  CHECK(measure(chart, "S", Measure::SleeveLength) == Length::fromInches(8.25));
  CHECK(chart.chart.find(SizeName("M"))->measures.count(Measure::SleeveLength) == 0);
}

TEST_CASE("Spanish titles, semicolons and decimal commas", "[catalogue][import]") {
  const ChartImport table = importTable(
      "Medidas en centímetros;;;\n\nTalla;Ancho de pecho;Largo total;Contorno de puño\n"
      "S;48,5;70;20\nXL;58;76,25;22\n",
      words());
  CHECK(table.separator == ';');
  CHECK(table.unitOfAll == LengthUnit::Centimetre);
  CHECK(table.columns[3].girth);
  const ImportedChart chart = chartOf(table);
  CHECK(sentences(chart).empty());
  CHECK(measure(chart, "S", Measure::BodyWidth) == 485_mm);
  CHECK(measure(chart, "XL", Measure::BodyLength) == Length::fromMm(762.5));
  CHECK(measure(chart, "S", Measure::CuffWidth) == 100_mm);  // half of the way round
}

TEST_CASE("sizes side by side, a title above, and a remark below", "[catalogue][import]") {
  const ChartImport table = importTable(
      "Adult hoodie - all measures in inches\n,,,,\n"
      "Code,Point,S,M,2XL\nA,Body Width,20,22,\"26\"\nB,Length from HPS,27 1/2,28.5,-\n"
      "C,Hood Height,13,13,14\nTolerance +/- 1/2\n",
      words());
  CHECK(table.separator == ',');
  CHECK(table.sizesAcross);
  CHECK(table.unitOfAll == LengthUnit::Inch);
  const ImportedChart chart = chartOf(table);
  CHECK(sentences(chart).empty());
  REQUIRE(chart.chart.sizes.size() == 3);
  CHECK(chart.chart.sizes[2].band == SizeBand::AdultAboveXl);
  CHECK(measure(chart, "S", Measure::BodyLength) == Length::fromInches(27.5));
  CHECK(measure(chart, "2XL", Measure::HoodHeight) == 14_in);
  CHECK(chart.chart.sizes[2].measures.count(Measure::BodyLength) == 0);
}

TEST_CASE("units in cells, inch marks, quoted commas, CRLF and a byte-order mark",
          "[catalogue][import]") {
  const ChartImport table = importTable(
      "\xEF\xBB\xBFsize (mm),body-width,Body_Length\r\nS,50 cm,700\r\nM,20\",\"71,5 cm\"\r\n",
      words());
  const ImportedChart chart = chartOf(table);
  CHECK(sentences(chart).empty());
  CHECK(measure(chart, "S", Measure::BodyWidth) == 500_mm);
  CHECK(measure(chart, "S", Measure::BodyLength) == 700_mm);
  CHECK(measure(chart, "M", Measure::BodyWidth) == 20_in);
  CHECK(measure(chart, "M", Measure::BodyLength) == 715_mm);
}

TEST_CASE("what a title does not say is left to the user", "[catalogue][import]") {
  // "Chest" alone may be flat or all round, of the garment or of the wearer.
  ChartImport table =
      importTable("Size,Chest (cm),Length (cm),Pocket length,Length\nS,100,70,20,1\n", words());
  CHECK(table.columns[1].role == ColumnRole::Ignored);
  CHECK(table.columns[2].measure == Measure::BodyLength);
  CHECK(table.columns[3].role == ColumnRole::Ignored);
  CHECK(table.columns[4].role == ColumnRole::Ignored);  // a second one of the same name
  CHECK_THAT(sentences(chartOf(table)), Catch::Contains("no column is body-width"));
  table.columns[1].role = ColumnRole::Measure;
  table.columns[1].measure = Measure::BodyWidth;
  table.columns[1].girth = true;
  const ImportedChart chart = chartOf(table);
  CHECK(sentences(chart).empty());
  CHECK(measure(chart, "S", Measure::BodyWidth) == 500_mm);
  table.columns[4].role = ColumnRole::Measure;
  table.columns[4].measure = Measure::BodyLength;
  CHECK_THAT(sentences(chartOf(table)), Catch::Contains("more than one column is body-length"));
}

TEST_CASE("every problem has its line and column", "[catalogue][import]") {
  const ImportedChart chart = chartOf(importTable(
      "size (cm),body width,body length,band\nS,wide,70,adult\nM,52,-7,grown\nM,52,0,\n,52,70,\n",
      words()));
  std::vector<TablePlace> places;
  for (const ImportProblem& problem : chart.problems) {
    places.push_back(problem.place);
  }
  CHECK(places == std::vector<TablePlace>{{2, 2}, {3, 3}, {3, 4}, {4, 1}, {4, 3}, {5, 0}});
  CHECK_FALSE(chart.ok());
}

TEST_CASE("texts that are no tables say so and never crash", "[catalogue][import]") {
  for (const std::string text : {"", "\n\n", "\xff\xfe", "\"open", "one word", "\x01\x02"}) {
    CAPTURE(text);
    CHECK_FALSE(chartOf(importTable(text, words())).ok());
  }
  const std::string good = "Talla;Ancho de pecho (cm);Largo\nS;48,5;70\nM;50;\"72\"\n";
  std::mt19937 random(4711);
  for (int i = 0; i < 2000; ++i) {
    CAPTURE(i);
    std::string text = good;
    for (auto hits = 1 + random() % 6; hits > 0; --hits) {
      text[random() % text.size()] = static_cast<char>(random() % 256);
    }
    const ChartImport table = importTable(text, words());
    for (const auto& row : table.rows) {
      REQUIRE(row.size() == table.columns.size());
    }
    static_cast<void>(chartOf(table));
  }
}

TEST_CASE("every point of measure has names, and no name means two things", "[catalogue][import]") {
  std::vector<std::string> names;
  for (const MeasureWords::Entry& entry : words().entries) {
    CHECK_FALSE(entry.basis.empty());
    for (const auto* list : {&entry.names, &entry.girths}) {
      for (const std::string& name : *list) {
        CAPTURE(name);
        CHECK(std::find(names.begin(), names.end(), name) == names.end());
        names.push_back(name);
        const ChartImport table = importTable("size (cm)," + name + "\nS,1\n", words());
        REQUIRE(table.columns.size() == 2);
        CHECK(table.columns[1].role == ColumnRole::Measure);
        CHECK(table.columns[1].measure == entry.measure);
        CHECK(table.columns[1].girth == (list == &entry.girths));
      }
    }
  }
  CHECK(words().entries.size() == std::size(EnumNames<Measure>::names));
}
