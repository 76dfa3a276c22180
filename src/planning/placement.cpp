// SPDX-License-Identifier: MIT
#include "planning/placement.h"

#include <fmt/format.h>
#include <algorithm>
#include <cmath>
#include <limits>

#include "base/worded.h"
#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

template <class T>
bool matches(const std::vector<T>& wanted, const T& value) {
  return wanted.empty() || std::find(wanted.begin(), wanted.end(), value) != wanted.end();
}

Measure neckDrop(PanelName panel) {
  return panel == PanelName::Back ? Measure::BackNeckDrop : Measure::FrontNeckDrop;
}

bool hasNeck(PanelName panel) {
  return panel == PanelName::Front || panel == PanelName::Back;
}

// How much of a measure leads from the panel's datum down to the mark; what leads up counts less
// than nothing.
double shareOf(Measure measure, Landmark from, PanelName panel) {
  switch (from) {
    case Landmark::PieceMiddle:
      return 0.5;
    case Landmark::BorderTop:
      return measure == Measure::BodyLength ? 1.0 : -1.0;
    case Landmark::BorderMiddle:
      return measure == Measure::BodyLength ? 1.0 : measure == Measure::BorderHeight ? -0.5 : -1.0;
    default:
      return measure == neckDrop(panel) ? -1.0 : 1.0;
  }
}

// The measures that tell where a mark lies; none for a mark at the datum itself.
std::vector<Measure> measuresOf(Landmark from, PanelName panel) {
  switch (from) {
    case Landmark::CollarSeam:
    case Landmark::FaceEdge:
    case Landmark::CuffEdge:
      return {};
    case Landmark::ShoulderPoint:
      return {neckDrop(panel)};
    case Landmark::CuffSeam:
      return {Measure::CuffHeight};
    case Landmark::ShoulderSeam:
      return {Measure::SleeveLength};
    case Landmark::PlacketEnd:
      return {Measure::PlacketLength};
    case Landmark::YokeSeam:
      return {Measure::YokeDepth};
    case Landmark::HemEdge:
      return hasNeck(panel) ? std::vector{Measure::BodyLength, neckDrop(panel)}
                            : std::vector{Measure::BodyLength};
    case Landmark::TopEdge:
    case Landmark::WaistSeam:
      return {};
    case Landmark::PieceMiddle:
      return {Measure::BodyLength};
    case Landmark::BorderTop:
    case Landmark::BorderMiddle:
      return {Measure::BodyLength, Measure::BorderAboveHem, Measure::BorderHeight};
    case Landmark::PocketTop:
    case Landmark::PocketOpening:
      return {Measure::PocketBelowHps, neckDrop(panel)};
  }
  return {};
}

// A rule that measures from a mark that this garment lacks (a placket on a T-shirt) says nothing
// about it.
bool hasMark(const PlacementRule& rule, const GarmentShape& garment, const Workshop& workshop) {
  const Location* location = workshop.rules->location(rule.location);
  if (location == nullptr || !liesOn(rule.from, location->panel)) {
    return false;
  }
  std::vector<Measure> needed = measuresOf(rule.from, location->panel);
  if (rule.sideways == Sideways::PocketMiddle) {
    needed.push_back(Measure::PocketFromCentre);
  }
  return std::all_of(needed.begin(), needed.end(),
                     [&garment](Measure measure) { return garment.measures.count(measure) != 0; });
}

// Whether the rule is meant for this garment, whatever marks it has.
bool isMeantFor(const PlacementRule& rule, const PlacementRequest& request) {
  return rule.location == request.placement.location && matches(rule.kinds, request.blank->kind) &&
         matches(rule.bands, request.garment->band) && matches(rule.sizes, request.size) &&
         matches(rule.blanks, request.blank->id);
}

bool applies(const PlacementRule& rule, const PlacementRequest& request, const Workshop& workshop) {
  return isMeantFor(rule, request) && hasMark(rule, *request.garment, workshop);
}

// "centre of the design 8 in below the high point of the shoulder"
std::string placePhrase(const PlacementRule& rule, const UnitChoice& units) {
  return fmt::format("{} {} {}",
                     rule.anchor == Anchor::NearEdge ? worded("nearest side of the design")
                                                     : worded("centre of the design"),
                     formatLength(rule.distance, units), landmarkPhrase(rule.from));
}

// A measure of this garment in millimetres; says in the reasons where it is from. Precondition:
// the garment has it.
double measured(const GarmentShape& garment, Measure measure, const UnitChoice& units,
                Reasons& reasons) {
  const MeasureValue& value = garment.measures.at(measure);
  const std::string name = measurePhrase(measure);
  const std::string size = formatLength(value.value, units);
  const bool proposed = value.assumed && value.rule.empty();
  reasons.push_back({proposed        ? worded("{} {} assumed: proposed, not measured", name, size)
                     : value.assumed ? worded("{} {} assumed: the size chart lacks it", name, size)
                                     : worded("{} {} from the size chart", name, size),
                     value.rule, value.basis, value.assumed, measure,
                     value.assumed ? worded("measuring it on the garment")
                                   : worded("another measure in the size chart")});
  return value.value.mm();
}

// Precondition: the panel has this mark (hasMark).
double landmarkY(Landmark from, PanelName panel, const GarmentShape& garment,
                 const UnitChoice& units, Reasons& reasons) {
  double y = 0.0;
  for (const Measure measure : measuresOf(from, panel)) {
    y += shareOf(measure, from, panel) * measured(garment, measure, units, reasons);
  }
  return y;
}

double sideSign(const Location& location) {
  switch (location.viewerSide) {
    case Side::Left:
      return -1.0;
    case Side::Right:
      return 1.0;
    case Side::Centre:
      return 0.0;
  }
  return 0.0;
}

double halfOpening(const GarmentShape& garment, const UnitChoice& units, Reasons& reasons) {
  for (const Measure measure : {Measure::PlacketWidth, Measure::ZipWidth}) {
    if (garment.measures.count(measure) != 0) {
      return measured(garment, measure, units, reasons) / 2.0;
    }
  }
  return 0.0;
}

// The panel's side at the height of the design, as far from the centre line as it is at its
// nearest.
double nearestSideMm(const PanelShape& panel, const Box& design, double fallback) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const double y : {design.min.y, design.max.y}) {
    if (const auto row = rowExtent(panel.outline, y)) {
      nearest = std::min({nearest, std::abs(row->low), std::abs(row->high)});
    }
  }
  return std::isfinite(nearest) ? nearest : fallback;
}

// Where the design's centre goes sideways. `design` is its box at the right height, centred on the
// centre line.
class Lateral {
 public:
  Lateral(const PlacementRule& rule, const Location& location, const PanelShape& panel,
          const GarmentShape& garment, const Box& design, const UnitChoice& units)
      : rule_(rule),
        sign_(sideSign(location)),
        panel_(panel),
        garment_(garment),
        design_(design),
        units_(units) {}

  double mm(Reasons& reasons) const {
    switch (rule_.sideways) {
      case Sideways::CentreLine:
        say(worded("on the centre crease"), reasons);
        return 0.0;
      case Sideways::FromCentreLine:
        say(worded("{} from the centre crease to the design's centre",
                   formatLength(rule_.sidewaysDistance, units_)),
            reasons);
        return sign_ * rule_.sidewaysDistance.mm();
      case Sideways::PlacketToArmhole:
        say(worded("midway between placket edge and armhole seam at the design's height"), reasons);
        return sign_ * placketToArmhole(reasons);
      case Sideways::PocketMiddle:
        say(worded("over the middle of the pocket"), reasons);
        return sign_ * measured(garment_, Measure::PocketFromCentre, units_, reasons);
      case Sideways::FromSide:
        say(worded("outer side of the design {} in from the side at its height",
                   formatLength(rule_.sidewaysDistance, units_)),
            reasons);
        return sign_ * (nearestSideMm(panel_, design_, 0.0) - rule_.sidewaysDistance.mm() -
                        design_.width() / 2.0);
    }
    return 0.0;
  }

 private:
  void say(std::string text, Reasons& reasons) const {
    reasons.push_back({std::move(text), rule_.id, rule_.basis, false, {}, ruleChanger(rule_)});
  }

  double placketToArmhole(Reasons& reasons) const {
    const double inner = halfOpening(garment_, units_, reasons);
    const auto row = rowExtent(panel_.outline, design_.centre().y);
    const double outer = row ? std::max(std::abs(row->low), std::abs(row->high)) : inner;
    return (inner + outer) / 2.0;
  }

  const PlacementRule& rule_;
  double sign_;
  const PanelShape& panel_;
  const GarmentShape& garment_;
  const Box& design_;
  const UnitChoice& units_;
};

// A mark that can be felt on cloth: what goes on a middle is measured from the edge.
Landmark feltMark(Landmark from) {
  switch (from) {
    case Landmark::PieceMiddle:
      return Landmark::TopEdge;
    case Landmark::BorderMiddle:
      return Landmark::HemEdge;
    default:
      return from;
  }
}

// Drop and centre offset of a design whose centre lies at `centreY`, from the mark that is felt.
void measureFrom(Placed& placed, Landmark mark, const PanelShape& panel,
                 const GarmentShape& garment, const Box& turnedBox, double centreY,
                 const UnitChoice& units) {
  Reasons known;  // the rule's own mark has given them
  const double direction = landmarkDirection(mark);
  const double nearSide = direction > 0.0 ? -turnedBox.min.y : turnedBox.max.y;
  const double along = direction * (centreY - landmarkY(mark, panel.name, garment, units, known));
  placed.from = mark;
  placed.centreOffset = Length::fromMm(along);
  placed.drop = Length::fromMm(along - nearSide);
}

// Why a rule that is meant for the garment does not decide. `own`: one of the shop won over it.
std::string beatenPhrase(const PlacementRule& rule, const std::string& place, bool markless,
                         bool own) {
  const std::string& id = rule.id.text();
  if (markless) {
    return worded("passed over the rule {}: {}; this garment lacks the mark that it measures from",
                  id, place);
  }
  return own ? worded("wins over the rule {}: {}; the shop's own rules come first", id, place)
             : worded("wins over the rule {}: {}; the first that applies is used", id, place);
}

void giveDropReasons(Placed& placed, const PlacementRule& rule, const OrderPlacement& placement,
                     const UnitChoice& units) {
  std::string place = placePhrase(rule, units);
  if (!rule.note.empty()) {
    place += fmt::format(" ({})", rule.note);
  }
  placed.dropReasons.insert(
      placed.dropReasons.begin(),
      {rule.house ? worded("house rule: {}", place) : place,
       rule.id,
       rule.basis,
       false,
       {},
       worded("{}, or a move in the order; {} to {} is usual", ruleChanger(rule),
              formatLength(rule.least, units), formatLength(rule.most, units))});
  if (placement.moveDown != Length()) {
    placed.dropReasons.push_back(
        {worded("moved by {} as the order asks",
                formatLength(placement.moveDown,
                             unitsTellingApart(placement.moveDown, {Length()}, units))),
         {},
         worded("order"),
         false,
         {},
         worded("the order")});
  }
}

void giveSidewaysReason(Placed& placed, const OrderPlacement& placement, PanelName panel,
                        const UnitChoice& units) {
  if (placement.moveRight == Length()) {
    return;
  }
  const bool right = placement.moveRight > Length();
  placed.lateralReasons.push_back(
      {worded("moved {} towards the {} as the order asks",
              formatLength(abs(placement.moveRight),
                           unitsTellingApart(placement.moveRight, {Length()}, units)),
              sideOfPanel(panel, right)),
       {},
       worded("order"),
       false,
       {},
       worded("the order")});
}

void giveTurnReasons(Placed& placed, const PlacementRule& rule, const OrderPlacement& placement) {
  if (rule.turn != Angle()) {
    placed.turnReasons.push_back({worded("turned by {} against upright as worn: {}",
                                         formatAngle(rule.turn), rule.turnReason),
                                  rule.id,
                                  rule.basis,
                                  false,
                                  {},
                                  worded("{}, or a turn in the order", ruleChanger(rule))});
  }
  if (placement.turn != Angle()) {
    placed.turnReasons.push_back(
        {worded("turned by {} as the order asks", formatAngle(placement.turn)),
         {},
         worded("order"),
         false,
         {},
         worded("the order")});
  }
  if (placed.turnReasons.empty()) {
    placed.turnReasons.push_back({worded("not turned: reads upright when worn"),
                                  rule.id,
                                  rule.basis,
                                  false,
                                  {},
                                  worded("{}, or a turn in the order", ruleChanger(rule))});
  }
}

}  // namespace

std::string ruleChanger(const PlacementRule& rule) {
  return rule.house ? worded("another house rule") : worded("a house rule of the shop");
}

double landmarkDirection(Landmark from) {
  return leadsTowardsDatum(from) ? -1.0 : 1.0;
}

std::optional<Region::Interval> rowExtent(const Ring& ring, double y) {
  std::optional<Region::Interval> extent;
  const auto add = [&extent](double x) {
    if (!extent) {
      extent = Region::Interval{x, x};
    } else {
      extent = Region::Interval{std::min(extent->low, x), std::max(extent->high, x)};
    }
  };
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    if ((a.y <= y) != (b.y <= y)) {
      add(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
  }
  return extent;
}

const PlacementRule* findPlacementRule(const PlacementRequest& request, const Workshop& workshop) {
  for (const auto* rules : {&workshop.shop->houseRules, &workshop.rules->placement}) {
    for (const PlacementRule& rule : *rules) {
      if (applies(rule, request, workshop)) {
        return &rule;
      }
    }
  }
  return nullptr;
}

void addBeatenRules(Placed& placed, const PlacementRule& rule, const PlacementRequest& request,
                    const Workshop& workshop) {
  const UnitChoice& units = workshop.shop->units;
  for (const auto* rules : {&workshop.shop->houseRules, &workshop.rules->placement}) {
    for (const PlacementRule& other : *rules) {
      if (&other == &rule || !isMeantFor(other, request)) {
        continue;
      }
      const bool markless = !hasMark(other, *request.garment, workshop);
      if (markless && !other.house) {
        continue;
      }
      placed.dropReasons.push_back(
          {beatenPhrase(other, placePhrase(other, units), markless, rule.house && !other.house),
           other.id, other.basis, false});
    }
  }
}

Placed placeDesign(const PlacementRequest& request, const PlacementRule& rule,
                   const Location& location, const PanelShape& panel, const Outline& outline,
                   const UnitChoice& units) {
  const GarmentShape& garment = *request.garment;
  Placed placed;
  placed.from = rule.from;
  placed.rule = rule.id;
  placed.turn = rule.turn + request.placement.turn;
  placed.panelTurn = panel.wornUp + placed.turn;

  const Box turnedBox = outline.transformed(placed.panelTurn, 1.0, {}).bounds();
  const double direction = landmarkDirection(rule.from);
  const double landmark = landmarkY(rule.from, panel.name, garment, units, placed.dropReasons);
  const double nearSide = direction > 0.0 ? -turnedBox.min.y : turnedBox.max.y;
  const double distance = (rule.distance + request.placement.moveDown).mm();
  const double along = rule.anchor == Anchor::NearEdge ? distance + nearSide : distance;
  const double centreY = landmark + direction * along;

  if (feltMark(rule.from) == rule.from) {
    placed.centreOffset = Length::fromMm(along);
    placed.drop = Length::fromMm(along - nearSide);
  } else {
    measureFrom(placed, feltMark(rule.from), panel, garment, turnedBox, centreY, units);
  }
  placed.centreBelowDatum = Length::fromMm(centreY);
  const Box atHeight{turnedBox.min + Point{0.0, centreY}, turnedBox.max + Point{0.0, centreY}};
  const double lateral =
      Lateral(rule, location, panel, garment, atHeight, units).mm(placed.lateralReasons) +
      request.placement.moveRight.mm();
  placed.lateral = Length::fromMm(lateral);
  placed.centre = {lateral, centreY};
  placed.bounds = {turnedBox.min + placed.centre, turnedBox.max + placed.centre};
  giveDropReasons(placed, rule, request.placement, units);
  giveSidewaysReason(placed, request.placement, panel.name, units);
  giveTurnReasons(placed, rule, request.placement);
  return placed;
}

}  // namespace creaseline
