// SPDX-License-Identifier: MIT
// Size charts from the clipboard or a file of any maker: what stands in the columns is proposed,
// shown, put right by the user, and only then taken.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/size_chart.h"

namespace creaseline {

// What makers call a point of measure (resources/import/measure-words.json). `girths` are names of
// the way all round the garment, of which the flat measure is half.
struct MeasureWords {
  struct Entry {
    Measure measure{};
    std::vector<std::string> names, girths;
    std::string basis;
  };
  std::vector<Entry> entries;
  std::vector<std::string> sizeColumn, bandColumn;  // titles of these columns
};
[[nodiscard]] MeasureWords loadMeasureWords(const std::filesystem::path& resources);

enum class ColumnRole { Size, Band, Measure, Ignored };
struct ImportColumn {
  std::string title;  // as found, may be empty
  ColumnRole role = ColumnRole::Ignored;
  Measure measure{};               // of role Measure
  std::optional<LengthUnit> unit;  // as the title says; absent: unitOfAll
  bool girth = false;              // half of the value is taken
};

// Where in the text something stands, from 1; 0: no single line or column.
struct TablePlace {
  std::size_t line = 0, column = 0;
  bool operator==(const TablePlace&) const = default;
};
struct ImportProblem {
  TablePlace place;
  std::string text;  // one sentence, without a full stop
  bool operator==(const ImportProblem&) const = default;
};
struct ImportCell {
  std::string text;
  TablePlace place;
};

// A table with a proposal of what its columns are. All of it may be changed before chartOf().
struct ChartImport {
  char separator = ',';
  bool sizesAcross = false;  // sizes stood side by side; rows and columns are exchanged already
  std::vector<ImportColumn> columns;
  std::vector<std::vector<ImportCell>> rows;  // one a size, as many cells as columns
  std::optional<LengthUnit> unitOfAll;        // as a line or the title of the sizes says
  std::vector<ImportProblem> problems;        // why there is no table
};

// Tab (from a spreadsheet), semicolon or comma; a title line may stand above the header; units in
// the header, above it, or in the cells; decimal point or comma. Sizes may stand one below the
// other or side by side. Nothing is guessed from the values: a column whose title does not say
// what it is, or says it of two columns, is left aside for the user to choose.
[[nodiscard]] ChartImport importTable(std::string_view text, const MeasureWords& words);

struct ImportedChart {
  SizeChart chart;                        // what could be read; usable if there are no problems
  std::vector<ImportProblem> problems;    // by place
  std::vector<std::size_t> skippedLines;  // remarks below the table: a first cell, nothing else
  [[nodiscard]] bool ok() const { return problems.empty(); }
};
[[nodiscard]] ImportedChart chartOf(const ChartImport& table);

}  // namespace creaseline
