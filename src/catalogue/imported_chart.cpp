// SPDX-License-Identifier: MIT
// From a table whose columns are settled to a size chart.

#include <algorithm>

#include "base/worded.h"
#include "catalogue/json_reader.h"
#include "catalogue/said_name.h"
#include "catalogue/size_chart_reader.h"
#include "creaseline/catalogue/chart_import.h"

namespace creaseline {

namespace {

// "-", "n/a": how makers say that there is nothing.
bool saysNothing(const std::string& text) {
  return text.empty() || text == "-" || text == "–" || text == "—" || text == "n/a" ||
         text == "N/A";
}

class ChartBuilder {
 public:
  explicit ChartBuilder(const ChartImport& table) : table_(table) {}

  ImportedChart build() {
    result_.problems = table_.problems;
    if (result_.problems.empty() && columnsAreUsable()) {
      for (const std::vector<ImportCell>& row : table_.rows) {
        addRow(row);
      }
      if (result_.chart.sizes.empty() && result_.problems.empty()) {
        problem({}, worded("there are no sizes in the table"));
      }
    }
    std::stable_sort(result_.problems.begin(), result_.problems.end(),
                     [](const ImportProblem& a, const ImportProblem& b) {
                       return std::pair(a.place.line, a.place.column) <
                              std::pair(b.place.line, b.place.column);
                     });
    return std::move(result_);
  }

 private:
  void problem(TablePlace place, std::string text) {
    result_.problems.push_back({place, std::move(text)});
  }

  [[nodiscard]] std::ptrdiff_t count(ColumnRole role, std::optional<Measure> measure = {}) const {
    return std::count_if(table_.columns.begin(), table_.columns.end(),
                         [&](const ImportColumn& column) {
                           return column.role == role && (!measure || column.measure == *measure);
                         });
  }

  bool columnsAreUsable() {
    if (count(ColumnRole::Size) != 1) {
      problem({}, worded("choose one column for the sizes"));
    }
    if (count(ColumnRole::Band) > 1) {
      problem({}, worded("choose at most one column for the band"));
    }
    for (const auto& [measure, name] : EnumNames<Measure>::names) {
      const std::ptrdiff_t columns = count(ColumnRole::Measure, measure);
      const bool needed = measure == Measure::BodyWidth || measure == Measure::BodyLength;
      if (columns > 1) {
        problem({}, worded("more than one column is {}", saidName(measure)));
      } else if (columns == 0 && needed) {
        problem({}, worded("no column is {}, which every chart needs", saidName(measure)));
      }
    }
    return result_.problems.empty();
  }

  // A remark below the table: its first cell and nothing else.
  [[nodiscard]] bool isRemark(const std::vector<ImportCell>& row) const {
    for (std::size_t i = 0; i < row.size() && i < table_.columns.size(); ++i) {
      if (table_.columns[i].role != ColumnRole::Size && !row[i].text.empty()) {
        return false;
      }
    }
    return true;
  }

  void addRow(const std::vector<ImportCell>& row) {
    if (isRemark(row)) {
      result_.skippedLines.push_back(row.front().place.line);
      return;
    }
    ChartSize size;
    for (std::size_t i = 0; i < row.size() && i < table_.columns.size(); ++i) {
      addCell(row[i], table_.columns[i], size);
    }
    if (size.name.empty()) {
      problem({row.front().place.line, 0}, worded("a size without a name"));
      return;
    }
    if (!size.bandGiven) {
      size.band = bandFromName(size.name).value_or(SizeBand::Adult);
    }
    if (result_.chart.find(size.name) != nullptr) {
      problem(row.front().place, worded("the size {} a second time", inQuotes(size.name.text())));
    } else if (result_.chart.sizes.size() == kMostSizes) {
      problem(row.front().place, worded("more than {} sizes", kMostSizes));
    } else {
      result_.chart.sizes.push_back(std::move(size));
    }
  }

  void addCell(const ImportCell& cell, const ImportColumn& column, ChartSize& size) {
    switch (column.role) {
      case ColumnRole::Size:
        if (characterCount(cell.text) > kLongestLabel || hasControlCharacter(cell.text, false)) {
          problem(cell.place, worded("a name of a size that is too long or has several lines"));
        }
        size.name = SizeName(cell.text);
        break;
      case ColumnRole::Band:
        addBand(cell, size);
        break;
      case ColumnRole::Measure:
        if (!saysNothing(cell.text)) {
          addMeasure(cell, column, size);
        }
        break;
      case ColumnRole::Ignored:
        break;
    }
  }

  void addBand(const ImportCell& cell, ChartSize& size) {
    if (saysNothing(cell.text)) {
      return;
    }
    const std::optional<SizeBand> band = enumFromName<SizeBand>(cell.text);
    if (!band) {
      problem(cell.place, worded("{} is no band; write {}", inQuotes(cell.text),
                                 offer(cell.text, namesOf<SizeBand>())));
      return;
    }
    size.band = *band;
    size.bandGiven = true;
  }

  void addMeasure(const ImportCell& cell, const ImportColumn& column, ChartSize& size) {
    const Result<Length> length =
        parseLength(cell.text, column.unit ? column.unit : table_.unitOfAll);
    if (!length) {
      problem(cell.place, length.message());
      return;
    }
    const Length flat = column.girth ? *length / 2.0 : *length;
    const bool zero = mayBeZero(column.measure);
    if (flat < Length() || (flat == Length() && !zero) || flat > kLargestPart) {
      const std::string found = inQuotes(cell.text);
      const std::string most = exactText(kLargestPart);
      problem(
          cell.place,
          zero ? worded("{} is no size of a garment; it must be from 0 and at most {}", found, most)
               : worded("{} is no size of a garment; it must be more than 0 and at most {}", found,
                        most));
      return;
    }
    size.measures[column.measure] = flat;
  }

  const ChartImport& table_;
  ImportedChart result_;
};

}  // namespace

ImportedChart chartOf(const ChartImport& table) {
  return ChartBuilder(table).build();
}

}  // namespace creaseline
