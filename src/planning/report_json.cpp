// SPDX-License-Identifier: MIT
// The plan for machines: every decision with its reasons, as JSON with keys in a fixed order.
#include <array>
#include <charconv>
#include <nlohmann/json.hpp>

#include "creaseline/planning/report.h"
#include "planning/report_cost.h"

namespace creaseline {

namespace {

using Json = nlohmann::ordered_json;

// Coordinates with the fewest digits that read back as the same number. Rounding them to whole
// nanometres would move a design that just touches its frame out of it.
std::string millimetres(double value) {
  std::array<char, 400> digits{};  // the longest number without an exponent has 327
  const auto end =
      std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed)
          .ptr;
  return std::string(digits.data(), end) + " mm";
}

Json point(Point p) {
  return {{"x", millimetres(p.x)}, {"y", millimetres(p.y)}};
}

Json boxJson(const Box& box) {
  return {{"min", point(box.min)}, {"max", point(box.max)}};
}

template <class E>
std::string name(E value) {
  return std::string(nameOf(value));
}

template <class T>
Json texts(const std::vector<T>& identifiers) {
  Json list = Json::array();
  for (const T& identifier : identifiers) {
    list.push_back(identifier.text());
  }
  return list;
}

Json slackJson(const Slack& slack) {
  return {{"left", exactText(slack.left)},
          {"right", exactText(slack.right)},
          {"up", exactText(slack.up)},
          {"down", exactText(slack.down)},
          {"turn", exactText(slack.turn)}};
}

Json frameJson(const FrameChoice& choice) {
  return {{"frame", choice.frame.text()},       {"turn", exactText(choice.turn)},
          {"centre", point(choice.centre)},     {"slack", slackJson(choice.slack)},
          {"bears-error", choice.bearsError},   {"body-room", exactText(choice.bodyRoom)},
          {"body-nearest", choice.bodyNearest}, {"reasons", reasonsJson(choice.reasons)}};
}

Json placedJson(const Placed& placed) {
  Json json = {{"from", name(placed.from)},
               {"drop", exactText(placed.drop)},
               {"centre-offset", exactText(placed.centreOffset)},
               {"centre-below-datum", exactText(placed.centreBelowDatum)},
               {"lateral", exactText(placed.lateral)},
               {"turn", exactText(placed.turn)},
               {"panel-turn", exactText(placed.panelTurn)},
               {"centre", point(placed.centre)},
               {"rule", placed.rule.text()},
               {"drop-reasons", reasonsJson(placed.dropReasons)},
               {"lateral-reasons", reasonsJson(placed.lateralReasons)},
               {"turn-reasons", reasonsJson(placed.turnReasons)}};
  if (!placed.bounds.empty()) {
    json["bounds"] = boxJson(placed.bounds);
  }
  return json;
}

Json clothJson(const std::vector<ClothCheck>& checks) {
  Json list = Json::array();
  for (const ClothCheck& check : checks) {
    list.push_back({{"against", check.against},
                    {"room", exactText(check.room)},
                    {"least", exactText(check.least)},
                    {"assumed", check.assumed},
                    {"outside", check.outside}});
  }
  return list;
}

Json rejectionsJson(const std::vector<FrameRejection>& rejections) {
  Json list = Json::array();
  for (const FrameRejection& rejection : rejections) {
    list.push_back({{"frame", rejection.frame.text()},
                    {"turn", exactText(rejection.turn)},
                    {"test", name(rejection.test)},
                    {"missing", exactText(rejection.missing)},
                    {"what", rejection.what},
                    {"largest-scale", rejection.largestScale}});
  }
  return list;
}

Json backingJson(const BackingChoice& backing) {
  return {{"kind", name(backing.kind)},
          {"least-weight", exactText(backing.leastWeight)},
          {"layers", backing.layers},
          {"hold", name(backing.hold)},
          {"topping", backing.topping},
          {"skin-cover", backing.skinCover},
          {"needle-size", backing.needleSize},
          {"needle-point", name(backing.needlePoint)},
          {"most-density", backing.mostDensity ? Json(*backing.mostDensity) : Json()},
          {"cut-width", exactText(backing.cutWidth)},
          {"cut-height", exactText(backing.cutHeight)},
          {"stock", backing.stock.text()},
          {"stock-name", backing.stockName},
          {"fired", reasonsJson(backing.fired)}};
}

Json designJson(const Design& design) {
  return {{"id", design.id.text()},
          {"name", design.name},
          {"width", exactText(design.width)},
          {"height", exactText(design.height)},
          {"stitches", design.stitches}};
}

Json partJson(const DesignPart& part) {
  Json joins = Json::array();
  for (const PartJoin& join : part.joins) {
    joins.push_back({{"neighbour", join.neighbour},
                     {"from", point(join.from)},
                     {"to", point(join.to)},
                     {"crossed", exactText(join.crossed)},
                     {"overlap", exactText(join.overlap)}});
  }
  Json marks = Json::array();
  for (const RegisterMark& mark : part.marks) {
    marks.push_back({{"name", mark.name},
                     {"at", point(mark.at)},
                     {"extent", exactText(mark.extent)},
                     {"sewn-by", mark.sewnBy},
                     {"aligned-by", mark.alignedBy}});
  }
  Json json = {{"number", part.number},
               {"of", part.of},
               {"section", boxJson(part.section)},
               {"whole-centre", point(part.wholeCentre)},
               {"joins", std::move(joins)},
               {"marks", std::move(marks)},
               {"reasons", reasonsJson(part.reasons)}};
  if (part.cell) {
    json["cell"] = {{"first-cuts", name(part.cell->firstCuts)},
                    {"strip", part.cell->strip},
                    {"place", part.cell->place}};
  }
  return json;
}

Json stepsJson(const std::vector<Step>& steps) {
  Json list = Json::array();
  for (const Step& step : steps) {
    list.push_back({{"text", step.text}, {"by-hand", step.byHand}});
  }
  return list;
}

Json cautionsJson(const std::vector<const Caution*>& cautions) {
  Json list = Json::array();
  for (const Caution* caution : cautions) {
    list.push_back(
        {{"rule", caution->id.text()}, {"text", caution->text}, {"basis", caution->basis}});
  }
  return list;
}

Json placementJson(const PlacementPlan& plan, const Order& order) {
  const OrderLine& line = order.lines[plan.line];
  Json json = {{"line", line.id},
               {"blank", line.blank.text()},
               {"colour", line.colour},
               {"placement", plan.placement},
               {"location", plan.location.text()},
               {"size", plan.size.text()},
               {"band", name(plan.band)},
               {"quantity", plan.quantity},
               {"panel", name(plan.panel)},
               {"design", designJson(plan.design)},
               {"worst", name(plan.worst)},
               {"has-rule", plan.hasRule}};
  if (plan.part) {
    json["part"] = partJson(*plan.part);
  }
  if (!plan.hasRule) {
    return json;  // nothing else is decided
  }
  json["letters"] = plan.letters;
  json["letter-reasons"] = reasonsJson(plan.letterReasons);
  json["placed"] = placedJson(plan.placed);
  json["cloth"] = clothJson(plan.cloth);
  json["frame"] = plan.frame ? frameJson(*plan.frame) : Json();
  json["only-turned"] = plan.onlyTurned;
  json["alternatives"] = Json::array();
  for (const FrameChoice& choice : plan.alternatives) {
    json["alternatives"].push_back(frameJson(choice));
  }
  json["rejections"] = rejectionsJson(plan.rejections);
  json["largest-scale"] = plan.largestScale;
  json["backing"] = backingJson(plan.backing);
  json["steps"] = stepsJson(plan.steps);
  json["cautions"] = cautionsJson(plan.cautions);
  json["assumed"] = Json::array();
  for (const Measure measure : plan.assumed) {
    json["assumed"].push_back(name(measure));
  }
  return json;
}

Json scalesJson(const std::vector<SizeScale>& scales) {
  Json list = Json::array();
  for (const SizeScale& scale : scales) {
    list.push_back({{"scale", scale.factor}, {"sizes", texts(scale.sizes)}});
  }
  return list;
}

// One key that tells the kind of change, with what it takes.
struct ChangeJson {
  const Order& order;

  Json operator()(const TurnChange& change) const { return keyed("turn", exactText(change.turn)); }
  Json operator()(const ScaleChange& change) const { return keyed("scale", change.factor); }
  Json operator()(const MoveChange& change) const {
    return keyed("move-down", exactText(change.down));
  }
  Json operator()(const LocationChange& change) const {
    return keyed("location", change.location.text());
  }
  Json operator()(const DesignSizesChange& change) const {
    return keyed("design-sizes", scalesJson(change.scales));
  }
  Json operator()(const DesignSizesOfLinesChange& change) const {
    Json list = Json::array();
    for (const PlacementScales& each : change.placements) {
      list.push_back({{"line", order.lines[each.line].id},
                      {"placement", each.placement},
                      {"sizes", scalesJson(each.scales)}});
    }
    return keyed("design-sizes-of-lines", std::move(list));
  }
  Json operator()(const StitchesChange& change) const { return keyed("stitches", change.stitches); }
  Json operator()(const SplitChange& change) const { return keyed("hoopings", change.parts); }
  Json operator()(const FrameTurnChange& change) const {
    return keyed("frame-turn", exactText(change.turn));
  }
  Json operator()(const FramesChange& change) const {
    return keyed("frames", texts(change.frames));
  }
  Json operator()(const ShopChange& change) const { return keyed("shop", change.what); }

 private:
  static Json keyed(const char* key, Json value) {
    Json json = Json::object();
    json[key] = std::move(value);
    return json;
  }
};

Json reasonJson(const Reason& reason) {
  Json json = {{"text", reason.text},
               {"rule", reason.rule.text()},
               {"basis", reason.basis},
               {"assumed", reason.assumed}};
  json["measure"] = reason.measure ? Json(name(*reason.measure)) : Json();
  json["changed-by"] = reason.changedBy;
  return json;
}

Json findingJson(const Finding& finding, const Order& order) {
  Json numbers = Json::array();
  for (const Number& number : finding.numbers) {
    numbers.push_back({{"name", number.name}, {"value", exactText(number.value)}});
  }
  Json remedies = Json::array();
  for (const Remedy& remedy : finding.remedies) {
    Json json = {{"change", std::visit(ChangeJson{order}, remedy.change)},
                 {"text", remedy.text},
                 {"result", remedy.result}};
    json["moves"] = remedy.moves ? Json(exactText(*remedy.moves)) : Json();
    remedies.push_back(std::move(json));
  }
  return {{"severity", name(finding.severity)},
          {"code", name(finding.code)},
          {"line", order.lines[finding.line].id},
          {"placement", finding.placement},
          {"whole-order", finding.wholeOrder},
          {"sizes", texts(finding.sizes)},
          {"place", finding.place},
          {"text", finding.text},
          {"numbers", std::move(numbers)},
          {"reason", finding.reason ? reasonJson(*finding.reason) : Json()},
          {"remedies", std::move(remedies)}};
}

}  // namespace

Json reasonsJson(const Reasons& reasons) {
  Json list = Json::array();
  for (const Reason& reason : reasons) {
    list.push_back(reasonJson(reason));
  }
  return list;
}

std::string jsonReport(const Plan& plan, const ReportContext& context) {
  const Order& order = context.order;
  Json json = {{"format", "creaseline-plan"},
               {"version", kPlanVersion},
               {"order", plan.orderId},
               {"title", order.title},
               {"customer", order.customer},
               {"due", order.due},
               {"shop", context.shop.name},
               {"counts",
                {{"garments", plan.counts.garments},
                 {"placements", plan.counts.placements},
                 {"stops", plan.counts.stops},
                 {"watches", plan.counts.watches},
                 {"notes", plan.counts.notes}}}};
  json["findings"] = Json::array();
  for (const Finding& finding : plan.findings) {
    json["findings"].push_back(findingJson(finding, order));
  }
  json["placements"] = Json::array();
  for (const PlacementPlan& placement : plan.placements) {
    json["placements"].push_back(placementJson(placement, order));
  }
  // Words of the cost are in millimetres and metres, as all of this report.
  const UnitChoice exact{LengthUnit::Millimetre, {}, {}};
  if (context.shop.rates) {
    json["cost"] = costJson(*orderCost(plan, planRuns(plan, context, exact), context, exact));
  }
  // A size chart may bring bytes that are not UTF-8; the report stays valid all the same.
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace creaseline
