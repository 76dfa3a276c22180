// SPDX-License-Identifier: MIT
// Size charts in JSON.
#include "catalogue/size_chart_reader.h"

#include "base/worded.h"
#include "catalogue/said_name.h"

namespace creaseline {

namespace {

std::map<Measure, Length> readMeasures(const JsonCursor& at) {
  std::map<Measure, Length> measures;
  for (const auto& [name, value] : at.members(100, toBeWorded("points of measure"))) {
    const std::optional<Measure> measure = enumFromName<Measure>(name);
    if (!measure) {
      value.fail(worded("the point of measure {}", inQuotes(name)),
                 offer(name, namesOf<Measure>()));
    }
    measures[*measure] =
        mayBeZero(*measure) ? value.length({}, kLargestPart) : value.positiveLength();
  }
  return measures;
}

ChartSize readSize(const JsonCursor& at) {
  JsonObject object = at.object();
  ChartSize size;
  size.name = object.at("size").identifier<SizeName>();
  if (const auto band = object.find("band")) {
    size.band = band->enumerator<SizeBand>();
    size.bandGiven = true;
  } else {
    size.band = bandFromName(size.name).value_or(SizeBand::Adult);
  }
  size.measures = readMeasures(object.at("measures"));
  if (const auto proposed = object.find("proposed")) {
    for (const Measure measure : proposed->enumerators<Measure>()) {
      if (size.measures.count(measure) == 0) {
        proposed->fail(worded("{}, which the size has no measure of", saidName(measure)),
                       worded("points of measure that stand in \"measures\""));
      }
      size.proposed.insert(measure);
    }
  }
  object.finish();
  return size;
}

}  // namespace

bool mayBeZero(Measure measure) {
  switch (measure) {
    case Measure::BackNeckDrop:
    case Measure::ShoulderDrop:
    case Measure::RibHeight:
    case Measure::CuffHeight:
    case Measure::PocketAboveHem:
    case Measure::CollarHeight:
      return true;
    default:
      return false;
  }
}

SizeChart readSizeChart(JsonObject& chart) {
  SizeChart result;
  std::vector<std::string> names;
  for (const JsonCursor& item : chart.at("sizes").items(1, kMostSizes, toBeWorded("sizes"))) {
    ChartSize size = readSize(item);
    requireDistinct(names, size.name.text(), item, toBeWorded("size"));
    names.push_back(size.name.text());
    result.sizes.push_back(std::move(size));
  }
  return result;
}

}  // namespace creaseline
