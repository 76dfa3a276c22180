// SPDX-License-Identifier: MIT
// Size charts from CSV, as spreadsheets write them.

#include <algorithm>

#include "base/worded.h"
#include "catalogue/csv_table.h"
#include "catalogue/size_chart_reader.h"
#include "catalogue/text_check.h"
#include "creaseline/base/error.h"
#include "creaseline/base/units.h"
#include "creaseline/catalogue/load.h"

namespace creaseline {

namespace {

// What a column holds: the size's name, its band, a remark that is not read, or a measure.
struct Column {
  enum class Role { Size, Band, Note, Measure };
  std::string title;  // as written, for messages
  Role role = Role::Measure;
  Measure measure{};
  std::optional<LengthUnit> unit;
};

struct Place {
  const std::string& file;
  std::size_t line;
  std::string column;  // may be empty
  [[noreturn]] void fail(std::string found, std::string expected) const {
    throw InputError({file,
                      column.empty() ? worded("line {}", line)
                                     : worded("line {}, column '{}'", line, printable(column)),
                      std::move(found), std::move(expected)});
  }
};

// "Body Width (cm)" -> "body-width" and "cm".
struct Title {
  std::string name;
  std::string unit;
  bool hasUnit = false;
};
Title splitTitle(std::string_view text) {
  Title title;
  const std::size_t open = text.find('(');
  std::string_view name = text.substr(0, open);
  if (open != std::string_view::npos && text.back() == ')') {
    title.hasUnit = true;
    for (const char c : text.substr(open + 1, text.size() - open - 2)) {
      if (c != ' ') {
        title.unit += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
      }
    }
  } else {
    name = text;
  }
  while (!name.empty() && name.back() == ' ') {
    name.remove_suffix(1);
  }
  for (const char c : name) {
    title.name += c == ' ' || c == '_'   ? '-'
                  : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a')
                                         : c;
  }
  return title;
}

std::optional<LengthUnit> unitOf(const Title& title, const Place& place) {
  if (!title.hasUnit) {
    return std::nullopt;
  }
  if (title.unit == "mm") {
    return LengthUnit::Millimetre;
  }
  if (title.unit == "cm") {
    return LengthUnit::Centimetre;
  }
  if (title.unit == "in" || title.unit == "inch" || title.unit == "inches") {
    return LengthUnit::Inch;
  }
  place.fail(worded("the unit {}", inQuotes(title.unit)), worded("one of {}", "mm, cm, in"));
}

Column readTitle(const std::string& text, std::optional<LengthUnit> unitOfAll, const Place& place) {
  const Title title = splitTitle(text);
  Column column{text, Column::Role::Measure, {}, unitOf(title, place)};
  if (title.name == "band" || title.name == "note") {
    column.role = title.name == "band" ? Column::Role::Band : Column::Role::Note;
    return column;
  }
  const std::optional<Measure> measure = enumFromName<Measure>(title.name);
  if (!measure) {
    std::vector<std::string> names = namesOf<Measure>();
    names.insert(names.end(), {"band", "note"});
    place.fail(worded("the column {}", inQuotes(text)), offer(title.name, names));
  }
  column.measure = *measure;
  if (!column.unit) {
    column.unit = unitOfAll;
  }
  if (!column.unit) {
    place.fail(worded("no unit"),
               worded("the unit in the header, \"{} (in)\", or one for all columns in the "
                      "first cell, \"size (in)\"",
                      title.name));
  }
  return column;
}

std::vector<Column> readHeader(const CsvRecord& header, const std::string& file) {
  const Place first{file, header.line, ""};
  const Title title = splitTitle(header.cells.front());
  if (title.name != "size") {
    first.fail(worded("the first column {}", inQuotes(header.cells.front())),
               worded("the column \"size\""));
  }
  const std::optional<LengthUnit> unitOfAll = unitOf(title, first);
  std::vector<Column> columns = {{header.cells.front(), Column::Role::Size, {}, unitOfAll}};
  for (std::size_t i = 1; i < header.cells.size(); ++i) {
    const std::string& text = header.cells[i];
    const Place place{file, header.line, text};
    if (text.empty()) {
      first.fail(worded("no title over column {}", i + 1), worded("a point of measure"));
    }
    const Column column = readTitle(text, unitOfAll, place);
    const bool twice = std::any_of(columns.begin(), columns.end(), [&](const Column& other) {
      return other.role == column.role && other.measure == column.measure &&
             column.role != Column::Role::Note;
    });
    if (twice) {
      place.fail(worded("the column a second time"), worded("every column once"));
    }
    columns.push_back(column);
  }
  return columns;
}

Length readLength(const std::string& cell, const Column& column, const Place& place) {
  const Result<Length> length = parseLength(cell, column.unit);
  if (!length) {
    place.fail(inQuotes(cell), worded("a length such as 20.5: {}", length.message()));
  }
  const bool zeroAllowed = mayBeZero(column.measure);
  if (*length < Length() || (!zeroAllowed && *length == Length()) || *length > kLargestPart) {
    place.fail(inQuotes(cell),
               zeroAllowed
                   ? worded("a length from 0 and at most {}", exactText(kLargestPart))
                   : worded("a length of more than 0 and at most {}", exactText(kLargestPart)));
  }
  return *length;
}

ChartSize readRow(const CsvRecord& row, const std::vector<Column>& columns,
                  const std::string& file) {
  const Place line{file, row.line, ""};
  if (row.cells.size() != columns.size()) {
    line.fail(worded("{} cells", row.cells.size()), worded("{}, as in the header", columns.size()));
  }
  ChartSize size;
  if (row.cells.front().empty()) {
    Place{file, row.line, "size"}.fail(worded("an empty cell"), worded("the name of the size"));
  }
  if (characterCount(row.cells.front()) > kLongestLabel) {
    line.fail(worded("a size with a very long name"),
              worded("at most {} characters", kLongestLabel));
  }
  size.name = SizeName(row.cells.front());
  size.band = bandFromName(size.name).value_or(SizeBand::Adult);
  for (std::size_t i = 1; i < columns.size(); ++i) {
    const Place place{file, row.line, columns[i].title};
    const std::string& cell = row.cells[i];
    if (cell.empty() || columns[i].role == Column::Role::Note) {
      continue;
    }
    if (columns[i].role == Column::Role::Measure) {
      size.measures[columns[i].measure] = readLength(cell, columns[i], place);
      continue;
    }
    const std::optional<SizeBand> band = enumFromName<SizeBand>(cell);
    if (!band) {
      place.fail(inQuotes(cell), offer(cell, namesOf<SizeBand>()));
    }
    size.band = *band;
    size.bandGiven = true;
  }
  return size;
}

}  // namespace

SizeChart parseSizeChartCsv(const std::string& text, const std::string& file) {
  std::vector<CsvRecord> records = splitCsv(text, file);
  records.erase(std::remove_if(records.begin(), records.end(),
                               [](const CsvRecord& record) { return record.blank(); }),
                records.end());
  if (records.empty()) {
    throw InputError({file, worded("line {}", 1), worded("an empty file"),
                      worded("a header and one line for each size")});
  }
  const std::vector<Column> columns = readHeader(records.front(), file);
  if (records.size() == 1) {
    Place{file, records.front().line, ""}.fail(worded("a header without sizes"),
                                               worded("one line for each size"));
  }
  if (records.size() - 1 > kMostSizes) {
    Place{file, records[kMostSizes + 1].line, ""}.fail(worded("{} sizes", records.size() - 1),
                                                       worded("at most {}", kMostSizes));
  }
  SizeChart chart;
  for (std::size_t i = 1; i < records.size(); ++i) {
    ChartSize size = readRow(records[i], columns, file);
    if (chart.find(size.name) != nullptr) {
      Place{file, records[i].line, "size"}.fail(
          worded("the size {} a second time", inQuotes(size.name.text())),
          worded("every size once"));
    }
    chart.sizes.push_back(std::move(size));
  }
  return chart;
}

}  // namespace creaseline
