// SPDX-License-Identifier: MIT
// The findings of a plan file, with their remedies.
#include <algorithm>
#include <array>

#include "planning/plan_reader_parts.h"

namespace creaseline {

namespace {

constexpr int kMostStitches = 2'000'000'000;

// The line and placement that a finding is about.
struct FindingPlace {
  const PlanSource& source;
  const Blank& blank;
};

std::vector<SizeName> readSizes(const JsonCursor& at, const FindingPlace& place) {
  return readList(at, "sizes",
                  [&place](const JsonCursor& item) { return readChartSize(item, place.blank); });
}

std::vector<SizeScale> readScales(const JsonCursor& at, const FindingPlace& place) {
  return readList(at, "sizes", [&place](const JsonCursor& item) {
    JsonObject entry = item.object();
    return SizeScale{readFactor(entry.at("scale")), readSizes(entry.at("sizes"), place)};
  });
}

// The blank of a line, for the sizes of its chart.
FindingPlace placeOn(const JsonCursor& lineAt, const OrderLine& line, const PlanSource& source) {
  const Blank* blank = source.order.blank(line.blank);
  if (blank == nullptr) {
    lineAt.fail("a line on the blank " + inQuotes(line.blank.text()), "a blank of the order");
  }
  return {source, *blank};
}

PlacementScales readPlacementScales(const JsonCursor& at, const PlanSource& source) {
  JsonObject object = at.object();
  PlacementScales scales;
  const JsonCursor lineAt = object.at("line");
  scales.line = readLineIndex(lineAt, source);
  const OrderLine& line = source.order.lines[scales.line];
  scales.placement = readPlacementIndex(object.at("placement"), line);
  scales.scales = readScales(object.at("sizes"), placeOn(lineAt, line, source));
  return scales;
}

// One key tells the kind of change.
Change readChange(const JsonCursor& at, const FindingPlace& place) {
  JsonObject object = at.object();
  if (const auto turn = object.find("turn")) {
    return TurnChange{turn->angle()};
  }
  if (const auto scale = object.find("scale")) {
    return ScaleChange{readFactor(*scale)};
  }
  if (object.find("design-sizes")) {
    return DesignSizesChange{readScales(object.at("design-sizes"), place)};
  }
  if (object.find("design-sizes-of-lines")) {
    return DesignSizesOfLinesChange{readList(
        object.at("design-sizes-of-lines"), "placements",
        [&place](const JsonCursor& item) { return readPlacementScales(item, place.source); })};
  }
  if (const auto turn = object.find("frame-turn")) {
    return FrameTurnChange{turn->angle()};
  }
  if (object.find("frames")) {
    return FramesChange{readList(object.at("frames"), "frames", [&place](const JsonCursor& item) {
      return readFrameId(item, place.source.shop);
    })};
  }
  if (const auto down = object.find("move-down")) {
    return MoveChange{readAnyLength(*down)};
  }
  if (const auto location = object.find("location")) {
    return LocationChange{readPlanLocation(*location, place.source.rules)};
  }
  if (const auto stitches = object.find("stitches")) {
    return StitchesChange{stitches->integer(0, kMostStitches)};
  }
  if (const auto hoopings = object.find("hoopings")) {
    return SplitChange{hoopings->integer(2, kMostStitches)};
  }
  if (const auto shop = object.find("shop")) {
    return ShopChange{shop->anyText()};
  }
  at.fail("a change of no known kind",
          "a turn, scale, design-sizes, design-sizes-of-lines, move-down, location, stitches, "
          "hoopings, "
          "frame-turn, frames or shop");
}

std::vector<Number> readNumbers(const JsonCursor& at) {
  return readList(at, "numbers", [](const JsonCursor& item) {
    JsonObject object = item.object();
    return Number{object.at("name").anyText(), readAnyLength(object.at("value"))};
  });
}

std::vector<Remedy> readRemedies(const JsonCursor& at, const FindingPlace& place) {
  return readList(at, "remedies", [&place](const JsonCursor& item) {
    JsonObject object = item.object();
    Remedy remedy{readChange(object.at("change"), place), object.at("text").anyText(),
                  object.at("result").anyText(), std::nullopt};
    if (const JsonCursor moves = object.at("moves"); !moves.isNull()) {
      remedy.moves = readAnyLength(moves);
    }
    return remedy;
  });
}

Finding readFinding(const JsonCursor& at, const PlanSource& source) {
  JsonObject object = at.object();
  Finding finding;
  finding.severity = object.at("severity").enumerator<Severity>();
  finding.code = object.at("code").enumerator<FindingCode>();
  const JsonCursor lineAt = object.at("line");
  finding.line = readLineIndex(lineAt, source);
  const OrderLine& line = source.order.lines[finding.line];
  finding.placement = readPlacementIndex(object.at("placement"), line);
  finding.wholeOrder = object.at("whole-order").boolean();
  const FindingPlace place = placeOn(lineAt, line, source);
  finding.sizes = readSizes(object.at("sizes"), place);
  finding.place = object.at("place").anyText();
  finding.text = object.at("text").anyText();
  finding.numbers = readNumbers(object.at("numbers"));
  if (const JsonCursor reason = object.at("reason"); !reason.isNull()) {
    finding.reason = readReason(reason);
  }
  finding.remedies = readRemedies(object.at("remedies"), place);
  return finding;
}

}  // namespace

std::vector<Finding> readFindings(const JsonCursor& at, const PlanSource& source) {
  return readList(at, "findings",
                  [&source](const JsonCursor& item) { return readFinding(item, source); });
}

}  // namespace creaseline
