// SPDX-License-Identifier: MIT
#include "planning/plan_reader_parts.h"

#include <charconv>
#include <cmath>
#include <cstdlib>

#include "planning/frame_search.h"

namespace creaseline {

namespace {

Slack readSlack(const JsonCursor& at) {
  JsonObject object = at.object();
  Slack slack;
  slack.left = readAnyLength(object.at("left"));
  slack.right = readAnyLength(object.at("right"));
  slack.up = readAnyLength(object.at("up"));
  slack.down = readAnyLength(object.at("down"));
  slack.turn = object.at("turn").angle();
  return slack;
}

// The centres' difference is rounded, so the last nanometre may differ.
bool agree(const Slack& a, const Slack& b) {
  constexpr Length kRounding = Length::fromNanometres(5);
  constexpr int kMillidegrees = 2;
  const auto near = [=](Length x, Length y) { return abs(x - y) <= kRounding; };
  return near(a.left, b.left) && near(a.right, b.right) && near(a.up, b.up) &&
         near(a.down, b.down) && std::abs((a.turn - b.turn).millidegrees()) <= kMillidegrees;
}

}  // namespace

PlanSource::PlanSource(const Order& theOrder, const Shop& theShop, const Rules& theRules)
    : order(theOrder),
      shop(theShop),
      rules(theRules),
      workshop(prepareWorkshop(theShop, theRules)) {
  for (std::size_t i = 0; i < order.lines.size(); ++i) {
    lines.emplace(order.lines[i].id, i);
    for (const OrderPlacement& placement : order.lines[i].placements) {
      workshop = withFrameTurn(workshop, placement.frameTurn);
    }
  }
}

std::size_t readLineIndex(const JsonCursor& at, const PlanSource& source) {
  const auto found = source.lines.find(at.anyText());
  if (found == source.lines.end()) {
    at.fail("the unknown line " + at.shown(), "a line of the order");
  }
  return found->second;
}

std::size_t readPlacementIndex(const JsonCursor& at, const OrderLine& line) {
  if (line.placements.empty()) {
    at.failShown("no placement: the order's line has none");
  }
  return static_cast<std::size_t>(at.integer(0, static_cast<int>(line.placements.size()) - 1));
}

SizeName readChartSize(const JsonCursor& at, const Blank& blank) {
  SizeName size(at.anyText());
  if (blank.chart.find(size) == nullptr) {
    at.fail("the unknown size " + at.shown(), "a size that the blank is made in");
  }
  return size;
}

LocationId readPlanLocation(const JsonCursor& at, const Rules& rules) {
  LocationId location(at.anyText());
  if (rules.location(location) == nullptr) {
    at.fail("the unknown location " + at.shown(), offer(location.text(), idsOf(rules.locations)));
  }
  return location;
}

FrameId readFrameId(const JsonCursor& at, const Shop& shop) {
  FrameId frame(at.anyText());
  if (shop.frame(frame) == nullptr) {
    at.fail("the unknown frame " + at.shown(), offer(frame.text(), idsOf(shop.frames)));
  }
  return frame;
}

Length readAnyLength(const JsonCursor& at) {
  const Length most = Length::fromMm(Length::kLimitMm);
  return at.length(-most, most);
}

double readMillimetres(const JsonCursor& at) {
  const std::string text = at.anyText();
  constexpr std::string_view kUnit = " mm";
  double value = 0.0;
  if (text.size() > kUnit.size() && text.ends_with(kUnit)) {
    const char* const end = text.data() + text.size() - kUnit.size();
    const auto read = std::from_chars(text.data(), end, value, std::chars_format::fixed);
    if (read.ec == std::errc() && read.ptr == end && std::abs(value) <= Length::kLimitMm) {
      return value;
    }
  }
  at.failShown("millimetres such as \"152.4 mm\"");
}

Point readPoint(const JsonCursor& at) {
  JsonObject object = at.object();
  return {readMillimetres(object.at("x")), readMillimetres(object.at("y"))};
}

Box readBox(const JsonCursor& at) {
  JsonObject object = at.object();
  const Box box{readPoint(object.at("min")), readPoint(object.at("max"))};
  if (box.empty()) {
    at.fail("a box whose ends are the wrong way round", "the least and the greatest corner");
  }
  return box;
}

Reason readReason(const JsonCursor& at) {
  JsonObject object = at.object();
  Reason reason{object.at("text").anyText(), readIdOrEmpty<RuleId>(object.at("rule")),
                object.at("basis").anyText(), object.at("assumed").boolean()};
  if (const JsonCursor measure = object.at("measure"); !measure.isNull()) {
    reason.measure = measure.enumerator<Measure>();
  }
  reason.changedBy = object.at("changed-by").anyText();
  return reason;
}

Reasons readReasons(const JsonCursor& at) {
  return readList(at, "reasons", readReason);
}

FrameChoice readFrameChoice(const JsonCursor& at, const PlanSource& source, const Held& held) {
  JsonObject object = at.object();
  FrameChoice choice;
  choice.frame = readFrameId(object.at("frame"), source.shop);
  const JsonCursor turnAt = object.at("turn");
  choice.turn = turnAt.angle();
  const PreparedFrame* frame = preparedFrame(source.workshop, choice.frame, choice.turn);
  if (frame == nullptr) {
    turnAt.failShown("a turn in which the shop lays this frame");
  }
  choice.centre = readPoint(object.at("centre"));
  const JsonCursor slackAt = object.at("slack");
  choice.slack = readSlack(slackAt);
  RoomInFrame drawn = roomInFrame(*frame, held.outline, held.centre, choice.centre);
  if (drawn.room.empty() || !agree(drawn.slack, choice.slack)) {
    slackAt.fail("slack that this frame does not give the design at that centre",
                 "what follows from the shop's frame: plan again");
  }
  choice.room = std::move(drawn.room);
  choice.bearsError = object.at("bears-error").boolean();
  choice.bodyRoom = readAnyLength(object.at("body-room"));
  choice.bodyNearest = object.at("body-nearest").anyText();
  choice.reasons = readReasons(object.at("reasons"));
  return choice;
}

double readFactor(const JsonCursor& at) {
  return at.number(0.0, 1e9);
}

DesignPart readDesignPart(const JsonCursor& at) {
  constexpr int kMostParts = 9;
  JsonObject object = at.object();
  DesignPart part;
  part.of = object.at("of").integer(2, kMostParts);
  part.number = object.at("number").integer(1, part.of);
  part.section = readBox(object.at("section"));
  if (const auto cell = object.find("cell")) {
    JsonObject where = cell->object();
    part.cell =
        GridCell{where.at("first-cuts").enumerator<CutDirection>(),
                 where.at("strip").integer(1, part.of), where.at("place").integer(1, part.of)};
  }
  part.wholeCentre = readPoint(object.at("whole-centre"));
  part.joins = readList(object.at("joins"), "joins", [&part](const JsonCursor& item) {
    JsonObject join = item.object();
    return PartJoin{join.at("neighbour").integer(1, part.of), readPoint(join.at("from")),
                    readPoint(join.at("to")), readAnyLength(join.at("crossed")),
                    readAnyLength(join.at("overlap"))};
  });
  part.marks = readList(object.at("marks"), "marks", [&part](const JsonCursor& item) {
    JsonObject mark = item.object();
    return RegisterMark{mark.at("name").anyText(), readPoint(mark.at("at")),
                        readAnyLength(mark.at("extent")), mark.at("sewn-by").integer(1, part.of),
                        mark.at("aligned-by").integer(1, part.of)};
  });
  part.reasons = readReasons(object.at("reasons"));
  return part;
}

}  // namespace creaseline
