// SPDX-License-Identifier: MIT
// Blanks: fabric, colours, chart.
#include "catalogue/blank_reader.h"

#include <fmt/format.h>

#include <cmath>

#include "base/worded.h"
#include "catalogue/file_kind.h"
#include "catalogue/rates_reader.h"
#include "catalogue/rules_reader.h"
#include "catalogue/size_chart_reader.h"
#include "creaseline/base/file.h"
#include "creaseline/catalogue/garment_shape.h"

namespace creaseline {

namespace {

std::vector<FibreShare> readFibres(const JsonCursor& at) {
  std::vector<FibreShare> fibres;
  double sum = 0.0;
  for (const auto& [name, share] : at.members(30, toBeWorded("fibres"))) {
    fibres.push_back({name, share.number(kLeastFibrePercent, 100.0)});
    sum += fibres.back().percent;
  }
  if (std::abs(sum - 100.0) > kFibreTolerancePercent) {
    at.fail(worded("shares that add up to {:.6g} %", sum), worded("shares that add up to 100 %"));
  }
  return fibres;
}

std::vector<ClothColour> readColours(const JsonCursor& at) {
  std::vector<ClothColour> colours;
  std::vector<std::string> names;
  for (const JsonCursor& item : at.items(1, 500, toBeWorded("colours"))) {
    JsonObject object = item.object();
    const std::string name = object.at("name").label();
    requireDistinct(names, name, item, toBeWorded("colour"));
    names.push_back(name);
    colours.push_back({name, object.at("colour").colour()});
    object.finish();
  }
  return colours;
}

// Where a chart stands, so that a size which makes no garment can be pointed at.
struct ChartPlace {
  std::string file;
  std::string where;  // of the list of sizes; empty for a CSV
  [[nodiscard]] std::string ofSize(std::size_t index, const ChartSize& size) const {
    return where.empty() ? worded("size {}", size.name.text()) : fmt::format("{}/{}", where, index);
  }
};

std::pair<SizeChart, ChartPlace> readChart(const JsonCursor& at) {
  JsonObject object = at.object();
  const auto csv = object.find("csv");
  const auto sizes = object.find("sizes");
  if (csv.has_value() == sizes.has_value()) {
    at.failShown(worded("exactly one of the keys {}", "\"csv\", \"sizes\""));
  }
  std::pair<SizeChart, ChartPlace> result;
  if (csv) {
    const std::filesystem::path path = referredFile(*csv);
    result = {parseSizeChartCsv(readFile(path), path.string()), {path.string(), ""}};
    at.reading().files.push_back(path);
  } else {
    result = {readSizeChart(object), {at.file(), sizes->where()}};
  }
  object.finish();
  return result;
}

}  // namespace

Fabric readFabric(const JsonCursor& at) {
  JsonObject object = at.object();
  Fabric fabric;
  fabric.name = object.at("name").label();
  fabric.construction = object.at("construction").enumerator<Construction>();
  fabric.fibres = readFibres(object.at("fibres"));
  fabric.weight = object.at("weight").weight();
  fabric.pile = object.at("pile").enumerator<Pile>();
  fabric.stretch = object.at("stretch").enumerator<Stretch>();
  if (const auto sheer = object.find("sheer")) {
    fabric.sheer = sheer->boolean();
  }
  if (const auto proposed = object.find("proposed")) {
    fabric.proposed = proposed->boolean();
  }
  object.finish();
  return fabric;
}

Blank readBlank(JsonObject& top, const Rules& rules) {
  Blank blank;
  blank.id = top.at("id").identifier<BlankId>();
  blank.name = top.at("name").label();
  const GarmentKind& kind = knownKind(top.at("kind"), rules);
  blank.kind = kind.id;
  blank.fabric = readFabric(top.at("fabric"));
  if (const auto colours = top.find("colours")) {
    blank.colours = readColours(*colours);
  }
  auto [chart, place] = readChart(top.at("chart"));
  blank.chart = std::move(chart);
  if (const auto price = top.find("price")) {
    blank.price = readPrice(*price, rules);
  }
  for (ChartSize& size : blank.chart.sizes) {
    size.band = bandOf(size, rules.defaults);
  }
  for (std::size_t i = 0; i < blank.chart.sizes.size(); ++i) {
    const ChartSize& size = blank.chart.sizes[i];
    // Drawn for its checks; the planner draws the sizes that it needs again.
    static_cast<void>(garmentShape(kind, size, place.file, place.ofSize(i, size)));
  }
  return blank;
}

}  // namespace creaseline
