// SPDX-License-Identifier: MIT
// Finds the table in a pasted text and proposes what its columns are.
#include "creaseline/catalogue/chart_import.h"

#include <algorithm>
#include <array>

#include "base/worded.h"
#include "catalogue/csv_table.h"
#include "catalogue/folded_text.h"
#include "catalogue/text_check.h"
#include "creaseline/base/error.h"

namespace creaseline {

namespace {

using Cells = std::vector<ImportCell>;

constexpr std::size_t kMostChartLines = 2'000;

// The first of tab, semicolon and comma that most lines have.
char separatorOf(std::string_view text) {
  std::size_t lines = 0;
  std::array<std::pair<char, std::size_t>, 3> counts = {{{'\t', 0}, {';', 0}, {',', 0}}};
  while (!text.empty()) {
    const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    if (line.find_first_not_of(" \t;,") != std::string_view::npos) {
      ++lines;
    }
    for (auto& [separator, count] : counts) {
      if (line.find(separator) != std::string_view::npos) {
        ++count;
      }
    }
  }
  for (const auto& [separator, count] : counts) {
    if (count > 0 && count * 2 >= lines) {
      return separator;
    }
  }
  return ',';
}

bool isOneOf(std::string_view word, std::initializer_list<std::string_view> words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

std::optional<LengthUnit> unitOfWord(std::string_view word) {
  if (isOneOf(word, {"mm", "millimetres", "millimeters", "milimetros"})) {
    return LengthUnit::Millimetre;
  }
  if (isOneOf(word, {"cm", "cms", "centimetres", "centimeters", "centimetros"})) {
    return LengthUnit::Centimetre;
  }
  if (isOneOf(word, {"in", "inch", "inches", "pulgadas", "pulg"})) {
    return LengthUnit::Inch;
  }
  return std::nullopt;
}

// "in" is an English word besides: "measured in cm" says centimetres.
std::optional<LengthUnit> unitIn(const std::string& text) {
  std::optional<LengthUnit> found;
  for (const std::string& word : foldedWords(text)) {
    const std::optional<LengthUnit> unit = unitOfWord(word);
    if (unit && (!found || word != "in")) {
      found = unit;
    }
  }
  const bool inchMark = text.find('"') != std::string::npos || text.find("″") != std::string::npos;
  return !found && inchMark ? LengthUnit::Inch : found;
}

// The words of a title without units, with a space on both sides.
std::string nameIn(const std::string& title) {
  std::string name = " ";
  for (const std::string& word : foldedWords(title)) {
    name += unitOfWord(word) ? "" : word + " ";
  }
  return name;
}

std::string joined(const std::string& name) {
  std::string text = " ";
  for (const std::string& word : foldedWords(name)) {
    text += word + " ";
  }
  return text;
}

struct Meaning {
  ColumnRole role = ColumnRole::Ignored;
  Measure measure{};
  bool girth = false;
  std::size_t length = 0;  // of the name that was found; the longest wins
};

void takeIfLonger(Meaning& best, const Meaning& other) {
  if (other.length > best.length) {
    best = other;
  }
}

// A title means what the longest name in it means. Short names of one word must be all of it:
// "length" is the body's, but "pocket length" is not.
std::size_t foundLength(const std::string& title, const std::string& name) {
  const std::string wanted = joined(name);
  const bool oneWord = wanted.find(' ', 1) + 1 == wanted.size();
  const bool found = oneWord ? title == wanted : title.find(wanted) != std::string::npos;
  return found ? wanted.size() : 0;
}

Meaning meaningOf(const std::string& text, const MeasureWords& words) {
  const std::string title = nameIn(text);
  Meaning best;
  for (const std::string& name : words.sizeColumn) {
    takeIfLonger(best, {ColumnRole::Size, {}, false, foundLength(title, name)});
  }
  for (const std::string& name : words.bandColumn) {
    takeIfLonger(best, {ColumnRole::Band, {}, false, foundLength(title, name)});
  }
  for (const MeasureWords::Entry& entry : words.entries) {
    const auto look = [&](const std::string& name, bool girth) {
      takeIfLonger(best, {ColumnRole::Measure, entry.measure, girth, foundLength(title, name)});
    };
    look(std::string(nameOf(entry.measure)), false);
    for (const std::string& name : entry.names) {
      look(name, false);
    }
    for (const std::string& name : entry.girths) {
      look(name, true);
    }
  }
  return best;
}

bool isMeasure(const ImportCell& cell, const MeasureWords& words) {
  return meaningOf(cell.text, words).role == ColumnRole::Measure;
}

std::vector<Cells> squareTable(const std::vector<CsvRecord>& records) {
  std::size_t width = 0;
  for (const CsvRecord& record : records) {
    width = std::max(width, record.cells.size());
  }
  std::vector<Cells> table;
  for (const CsvRecord& record : records) {
    if (record.blank()) {
      continue;
    }
    Cells row;
    for (std::size_t i = 0; i < width; ++i) {
      row.push_back({i < record.cells.size() ? record.cells[i] : "", {record.line, i + 1}});
    }
    table.push_back(std::move(row));
  }
  return table;
}

std::size_t filled(const Cells& row) {
  return static_cast<std::size_t>(std::count_if(
      row.begin(), row.end(), [](const ImportCell& cell) { return !cell.text.empty(); }));
}

// The row with the most names of measures, and how many; the first of equals.
std::pair<std::size_t, std::size_t> bestHeader(const std::vector<Cells>& table,
                                               const MeasureWords& words) {
  std::pair<std::size_t, std::size_t> best = {0, 0};
  for (std::size_t i = 0; i < table.size(); ++i) {
    const auto count = static_cast<std::size_t>(
        std::count_if(table[i].begin(), table[i].end(),
                      [&](const ImportCell& cell) { return isMeasure(cell, words); }));
    if (count > best.second) {
      best = {i, count};
    }
  }
  return best;
}

std::vector<Cells> exchanged(const std::vector<Cells>& table) {
  std::vector<Cells> result(table.front().size());
  for (const Cells& row : table) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      result[i].push_back(row[i]);
    }
  }
  return result;
}

// Drops what stands above the header, after looking there for a unit.
void dropAbove(std::vector<Cells>& table, std::size_t header, ChartImport& result) {
  for (std::size_t i = 0; i < header; ++i) {
    for (const ImportCell& cell : table[i]) {
      if (const auto unit = unitIn(cell.text); unit && !result.unitOfAll) {
        result.unitOfAll = unit;
      }
    }
  }
  table.erase(table.begin(), table.begin() + static_cast<std::ptrdiff_t>(header));
}

void proposeColumns(const Cells& header, const MeasureWords& words, ChartImport& result) {
  bool sizeFound = false;
  for (const ImportCell& cell : header) {
    const Meaning meaning = meaningOf(cell.text, words);
    ImportColumn column{cell.text, meaning.role, meaning.measure, unitIn(cell.text), meaning.girth};
    const bool taken =
        std::any_of(result.columns.begin(), result.columns.end(), [&](const ImportColumn& other) {
          return other.role == column.role && other.measure == column.measure;
        });
    if (taken) {
      column.role = ColumnRole::Ignored;
    }
    if (column.role == ColumnRole::Size) {
      sizeFound = true;
      result.unitOfAll = column.unit ? column.unit : result.unitOfAll;
    }
    result.columns.push_back(std::move(column));
  }
  // A first column without a name of its own holds the sizes.
  if (!sizeFound && !result.columns.empty() && result.columns.front().role == ColumnRole::Ignored) {
    ImportColumn& first = result.columns.front();
    first.role = ColumnRole::Size;
    result.unitOfAll = first.unit ? first.unit : result.unitOfAll;
  }
}

std::vector<Cells> readTable(std::string_view text, ChartImport& result) {
  try {
    std::vector<Cells> table = squareTable(splitCsv(text, "table", result.separator));
    if (table.size() > kMostChartLines) {
      result.problems.push_back({{}, worded("the table has more lines than any size chart")});
      table.clear();
    } else if (table.empty()) {
      result.problems.push_back({{}, worded("there is no table in the text")});
    }
    return table;
  } catch (const InputError& error) {
    result.problems.push_back({{},
                               worded("it cannot be read as a table: found {}, expected {}",
                                      error.details().found, error.details().expected)});
    return {};
  }
}

}  // namespace

ChartImport importTable(std::string_view text, const MeasureWords& words) {
  ChartImport result;
  result.separator = separatorOf(text);
  std::vector<Cells> table = readTable(text, result);
  if (table.empty()) {
    return result;
  }
  auto [header, down] = bestHeader(table, words);
  const std::vector<Cells> turned = exchanged(table);
  const auto [nameColumn, across] = bestHeader(turned, words);
  result.sizesAcross = across > down;
  if (result.sizesAcross) {
    // The sizes stand in the row above the first measure.
    const Cells& names = turned[nameColumn];
    const auto first = static_cast<std::size_t>(
        std::find_if(names.begin(), names.end(),
                     [&](const ImportCell& cell) { return isMeasure(cell, words); }) -
        names.begin());
    std::size_t sizes = first == 0 ? 0 : first - 1;
    while (sizes > 0 && filled(table[sizes]) < 2) {
      --sizes;
    }
    dropAbove(table, sizes, result);
    table = exchanged(table);
    header = nameColumn;
    table.erase(table.begin(), table.begin() + static_cast<std::ptrdiff_t>(header));
  } else {
    dropAbove(table, header, result);
  }
  proposeColumns(table.front(), words, result);
  result.rows.assign(table.begin() + 1, table.end());
  return result;
}

}  // namespace creaseline
