// SPDX-License-Identifier: MIT
// Sizes, kinds and readings of drawn panels that the garment tests share.
#pragma once

#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "catalogue/catalogue_data.h"
#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/shape/outline.h"

namespace creaseline::garment_test {

using testing::shippedRules;

inline const GarmentKind& kindNamed(const std::string& id) {
  const GarmentKind* kind = shippedRules().kind(KindId(id));
  REQUIRE(kind != nullptr);
  return *kind;
}

inline ChartSize chartSize(const std::string& name, SizeBand band, double widthCm,
                           double lengthCm) {
  ChartSize size;
  size.name = SizeName(name);
  size.band = band;
  size.measures[Measure::BodyWidth] = Length::fromMm(widthCm * 10.0);
  size.measures[Measure::BodyLength] = Length::fromMm(lengthCm * 10.0);
  return size;
}

// Invented but usual body widths and lengths from infant to adult 4XL, smallest first.
inline std::vector<ChartSize> usualSizes() {
  return {chartSize("12M", SizeBand::Infant, 28, 32),
          chartSize("24M", SizeBand::Infant, 31, 36),
          chartSize("YS", SizeBand::Youth, 41, 54),
          chartSize("YM", SizeBand::Youth, 44, 58),
          chartSize("YL", SizeBand::Youth, 47, 62),
          chartSize("S", SizeBand::Adult, 48, 69),
          chartSize("M", SizeBand::Adult, 53, 72),
          chartSize("L", SizeBand::Adult, 58, 75),
          chartSize("XL", SizeBand::Adult, 63, 77),
          chartSize("2XL", SizeBand::AdultAboveXl, 68, 80),
          chartSize("3XL", SizeBand::AdultAboveXl, 73, 82),
          chartSize("4XL", SizeBand::AdultAboveXl, 78, 84)};
}

inline GarmentShape drawn(const GarmentKind& kind, const ChartSize& size) {
  return garmentShape(kind, size, "chart.csv", "size " + size.name.text());
}

inline bool insideWithin(const Ring& panel, Point point, double tolerance) {
  return contains(panel, point) || nearestSide(panel, point).distance <= tolerance;
}

// Calls `check` for every kind, size and panel, with all three named on failure.
template <class Check>
void forEveryPanel(Check check) {
  for (const GarmentKind& kind : shippedRules().kinds) {
    for (const ChartSize& size : usualSizes()) {
      const GarmentShape shape = drawn(kind, size);
      for (const auto& [name, panel] : shape.panels) {
        INFO(kind.id.text() << " " << size.name.text() << " " << nameOf(name));
        check(kind, shape, panel);
      }
    }
  }
}

inline double millimetres(const GarmentShape& shape, Measure measure) {
  return shape.measures.at(measure).value.mm();
}

// The corners at the ends of all sides of that name on the viewer's right or left, in the order
// of the walk round the panel.
inline Polyline cornersOf(const PanelShape& panel, EdgeName name, bool viewerRight) {
  Polyline corners;
  for (std::size_t i = 0; i < panel.outline.size(); ++i) {
    if (panel.sides[i].name == name && panel.sides[i].viewerRight == viewerRight) {
      if (corners.empty()) {
        corners.push_back(panel.outline[i]);
      }
      corners.push_back(panel.outline[(i + 1) % panel.outline.size()]);
    }
  }
  return corners;
}

// Rows of a comma separated table by column name; nothing if the file is not there.
using Row = std::map<std::string, std::string>;
inline std::vector<Row> tableRows(const std::string& file) {
  std::ifstream stream(file);
  std::string line;
  std::vector<std::string> header;
  std::vector<Row> rows;
  while (std::getline(stream, line)) {
    std::vector<std::string> cells;
    std::stringstream cellStream(line);
    for (std::string cell; std::getline(cellStream, cell, ',');) {
      cells.push_back(cell);
    }
    if (header.empty()) {
      header = cells;
      continue;
    }
    Row row;
    for (std::size_t i = 0; i < std::min(cells.size(), header.size()); ++i) {
      row[header[i]] = cells[i];
    }
    rows.push_back(row);
  }
  return rows;
}

}  // namespace creaseline::garment_test
