// SPDX-License-Identifier: MIT
// Finding kinds and locations among the rules; which panels have which marks.
#include "creaseline/catalogue/rules.h"

#include <algorithm>

#include "creaseline/base/units.h"

namespace creaseline {

const Currency* Rules::currency(std::string_view code) const {
  const auto found = std::find_if(currencies.begin(), currencies.end(),
                                  [&](const Currency& each) { return each.code == code; });
  return found == currencies.end() ? nullptr : &*found;
}

bool liesOn(Landmark landmark, PanelName panel) {
  switch (landmark) {
    case Landmark::CollarSeam:
    case Landmark::ShoulderPoint:
      return panel == PanelName::Front || panel == PanelName::Back;
    case Landmark::HemEdge:
      return panel == PanelName::Front || panel == PanelName::Back || panel == PanelName::Flat ||
             isLeg(panel);
    case Landmark::TopEdge:
    case Landmark::PieceMiddle:
    case Landmark::BorderTop:
    case Landmark::BorderMiddle:
      return panel == PanelName::Flat;
    case Landmark::WaistSeam:
      return isLeg(panel);
    case Landmark::PlacketEnd:
    case Landmark::PocketTop:
    case Landmark::PocketOpening:
      return panel == PanelName::Front;
    case Landmark::YokeSeam:
      return panel == PanelName::Back;
    case Landmark::FaceEdge:
      return panel == PanelName::Hood;
    case Landmark::CuffEdge:
    case Landmark::CuffSeam:
    case Landmark::ShoulderSeam:
      return isSleeve(panel);
  }
  return false;
}

bool leadsTowardsDatum(Landmark landmark) {
  switch (landmark) {
    case Landmark::ShoulderSeam:
    case Landmark::HemEdge:
    case Landmark::PocketTop:
    case Landmark::BorderTop:
    case Landmark::BorderMiddle:
      return true;
    case Landmark::CollarSeam:
    case Landmark::ShoulderPoint:
    case Landmark::FaceEdge:
    case Landmark::CuffEdge:
    case Landmark::CuffSeam:
    case Landmark::PlacketEnd:
    case Landmark::PocketOpening:
    case Landmark::YokeSeam:
    case Landmark::TopEdge:
    case Landmark::PieceMiddle:
    case Landmark::WaistSeam:
      return false;
  }
  return false;
}

SizeBand BandWidths::band(Length bodyWidth) const {
  return bodyWidth < infant    ? SizeBand::Infant
         : bodyWidth < youth   ? SizeBand::Youth
         : bodyWidth > adultXl ? SizeBand::AdultAboveXl
                               : SizeBand::Adult;
}

BandWidths bandWidths(const Defaults& defaults) {
  return {*parseLength(defaults.infantBodyWidth.text), *parseLength(defaults.youthBodyWidth.text),
          *parseLength(defaults.adultXlBodyWidth.text)};
}

SizeBand bandOf(const ChartSize& size, const Defaults& defaults) {
  if (size.bandGiven) {
    return size.band;
  }
  if (const std::optional<SizeBand> named = bandFromName(size.name)) {
    return *named;
  }
  const auto width = size.measures.find(Measure::BodyWidth);
  if (width == size.measures.end()) {
    return SizeBand::Adult;
  }
  return bandWidths(defaults).band(width->second);
}

const GarmentKind* Rules::kind(const KindId& id) const {
  const auto found = std::find_if(kinds.begin(), kinds.end(),
                                  [&](const GarmentKind& each) { return each.id == id; });
  return found == kinds.end() ? nullptr : &*found;
}

const Location* Rules::location(const LocationId& id) const {
  const auto found = std::find_if(locations.begin(), locations.end(),
                                  [&](const Location& each) { return each.id == id; });
  return found == locations.end() ? nullptr : &*found;
}

}  // namespace creaseline
