// SPDX-License-Identifier: MIT
// Left and right, up and down of every location: what is printed is read back and compared with
// where the design lies. Nothing here is taken from the program's own words but the words under
// test.
//
// From outside: of a person who stands in front of one, the left is at one's right; of one who
// turns the back, it is at one's left.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cctype>
#include <map>
#include <regex>

#include "creaseline/planning/plan_reader.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/report.h"
#include "creaseline/planning/run_card.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

constexpr UnitChoice kUnits{LengthUnit::Millimetre, RulerMark::Eighth,
                            WeightUnit::GramsPerSquareMetre};

struct Located {
  Order order;
  Shop shop;
  Plan plan;

  [[nodiscard]] const PlacementPlan& placement() const { return sample::planFor(plan, "M"); }
  // The report with every run of blanks as one.
  [[nodiscard]] std::string report() const {
    const std::string text = textReport(plan, {order, shop, sample::shippedRules()}, kUnits);
    return std::regex_replace(text, std::regex("\\s+"), " ");
  }
};

Located located(const GarmentKind& kind, const Location& location) {
  Located made{sample::order(sample::blank(kind.id.text()), sample::design("d", 12_mm, 8_mm),
                             location.id.text(), {"M"}),
               sample::shop({sample::frame("A", 60_mm, 60_mm, 5_mm)}),
               {}};
  PlanOptions options;
  options.checkRemedies = false;
  made.plan = planOrder(made.order, made.shop, sample::shippedRules(), options);
  return made;
}

// Calls `check` for every location on every kind that has a rule for it; there must be one.
template <class Check>
void forEveryLocation(Check check) {
  for (const Location& location : sample::shippedRules().locations) {
    int kinds = 0;
    for (const GarmentKind& kind : sample::shippedRules().kinds) {
      if (!kind.has(location.panel)) {
        continue;
      }
      const Located made = located(kind, location);
      if (made.placement().hasRule) {
        CAPTURE(location.id.text(), kind.id.text());
        check(location, made);
        ++kinds;
      }
    }
    CAPTURE(location.id.text());
    CHECK(kinds > 0);
  }
}

// "left", "right" or "centre" as the words of a name tell it.
std::string sideInWords(const std::string& text) {
  std::string lower;
  for (const char c : text) {
    lower += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  const bool left = lower.find("left") != std::string::npos;
  const bool right = lower.find("right") != std::string::npos;
  REQUIRE_FALSE((left && right));
  return left ? "left" : right ? "right" : "centre";
}

}  // namespace

TEST_CASE("a location's name, id and wearer's side agree", "[placement][sides]") {
  for (const Location& location : sample::shippedRules().locations) {
    CAPTURE(location.id.text());
    const std::string side = std::string(nameOf(location.wearerSide));
    CHECK(sideInWords(location.id.text()) == sideInWords(location.name));
    // A chest pocket sits on the wearer's left (common practice, no source).
    const bool pocket = location.id.text().find("pocket") != std::string::npos;
    CHECK(side == (pocket ? "left" : sideInWords(location.id.text())));
    const bool faced =
        location.panel == PanelName::Front || isSleeve(location.panel) || isLeg(location.panel);
    const std::map<Side, Side> opposite = {
        {Side::Left, Side::Right}, {Side::Right, Side::Left}, {Side::Centre, Side::Centre}};
    CHECK(location.viewerSide == (faced ? opposite.at(location.wearerSide) : location.wearerSide));
  }
}

namespace {

// The leg itself is the side; on it a design lies on the crease or to the outer side of it, which
// is the viewer's right on the wearer's left leg.
void checkLeg(const Location& location, double lateral, const std::string& report) {
  std::smatch panel, sideways;
  REQUIRE(std::regex_search(report, panel, std::regex("Panel (\\w+) leg \\(viewer's (\\w+)\\)")));
  CHECK(panel[1].str() == nameOf(location.wearerSide));
  CHECK(panel[2].str() == nameOf(location.viewerSide));
  if (lateral == 0.0) {
    CHECK(report.find("Sideways on the centre crease") != std::string::npos);
    return;
  }
  REQUIRE(std::regex_search(
      report, sideways,
      std::regex("Sideways \\S+ .*? to the (\\w+) side of .*? \\(viewer's (\\w+)\\)")));
  CHECK(sideways[1].str() == "outer");
  CHECK(sideways[2].str() == panel[2].str());
  CHECK(panel[2].str() == (lateral > 0.0 ? "right" : "left"));
}

// Nobody wears a towel: its sides are the viewer's.
void checkFlatPiece(const Location& location, double lateral, const std::string& report) {
  CHECK(location.wearerSide == location.viewerSide);
  CHECK(report.find("wearer") == std::string::npos);
  if (location.viewerSide == Side::Centre) {
    CHECK(lateral == 0.0);
    CHECK(report.find("Panel flat piece, centre") != std::string::npos);
    CHECK(report.find("Sideways on the centre crease") != std::string::npos);
    return;
  }
  std::smatch panel, sideways;
  REQUIRE(std::regex_search(report, panel, std::regex("Panel flat piece, viewer's (\\w+)")));
  REQUIRE(std::regex_search(report, sideways,
                            std::regex("Sideways \\S+ .*? to the viewer's (\\w+) of ")));
  CHECK(panel[1].str() == nameOf(location.viewerSide));
  CHECK(sideways[1].str() == panel[1].str());
  CHECK(panel[1].str() == (lateral > 0.0 ? "right" : "left"));
}

}  // namespace

TEST_CASE("the printed sides of every location are those where the design lies",
          "[placement][sides]") {
  forEveryLocation([](const Location& location, const Located& made) {
    const double lateral = made.placement().placed.centre.x;
    const std::string report = made.report();
    CAPTURE(report, lateral);
    if (isSleeve(location.panel)) {
      // The sleeve itself is the side.
      CHECK(lateral == 0.0);
      CHECK(report.find("Panel " + std::string(nameOf(location.wearerSide)) + " sleeve") !=
            std::string::npos);
      CHECK(report.find("on the fold of the sleeve") != std::string::npos);
      return;
    }
    if (isLeg(location.panel)) {
      checkLeg(location, lateral, report);
      return;
    }
    if (location.panel == PanelName::Flat) {
      checkFlatPiece(location, lateral, report);
      return;
    }
    std::smatch panel, sideways;
    const bool offCentre = std::regex_search(
        report, panel, std::regex("Panel \\w+, wearer's (\\w+) \\(viewer's (\\w+)\\)"));
    REQUIRE(offCentre == (location.wearerSide != Side::Centre));
    if (!offCentre) {
      CHECK(lateral == 0.0);
      CHECK(std::regex_search(report, std::regex("Panel \\w+, centre")));
      CHECK(std::regex_search(report, std::regex("Sideways on the (centre crease|middle of the "
                                                 "zip)")));
      return;
    }
    REQUIRE(std::regex_search(
        report, sideways,
        std::regex("Sideways \\S+ .*? to the wearer's (\\w+) of .*? \\(viewer's (\\w+)\\)")));
    CHECK(panel[1].str() == nameOf(location.wearerSide));
    CHECK(panel[2].str() == nameOf(location.viewerSide));
    CHECK(sideways[1].str() == panel[1].str());
    CHECK(sideways[2].str() == panel[2].str());
    // +x is to the viewer's right.
    CHECK(panel[2].str() == (lateral > 0.0 ? "right" : "left"));
  });
}

TEST_CASE("a plan that is read back has every location on the same side, with the same words",
          "[placement][sides]") {
  forEveryLocation([](const Location&, const Located& made) {
    const ReportContext context{made.order, made.shop, sample::shippedRules()};
    const Plan again = readPlan(jsonReport(made.plan, context), "plan.json", made.order, made.shop,
                                sample::shippedRules());
    const Placed& before = made.placement().placed;
    const Placed& after = sample::planFor(again, "M").placed;
    CHECK(after.centre == before.centre);
    CHECK(after.lateral == before.lateral);
    CHECK(after.panelTurn == before.panelTurn);
    CHECK(textReport(again, context, kUnits) == textReport(made.plan, context, kUnits));
  });
}

// At the machine: the card says which end of the panel is at the frame's top and where the top of
// the design is then; both together must be where the design's top points on the panel.
TEST_CASE("the printed loading and turn of every location agree with where its top points",
          "[placement][sides]") {
  const std::vector<std::string> sides = {"top", "right side", "bottom", "left side"};
  const auto quarterOf = [&sides](const std::string& text) {
    std::smatch side;
    REQUIRE(std::regex_search(text, side,
                              std::regex("at the frame's (top|right side|bottom|left "
                                         "side)")));
    return std::find(sides.begin(), sides.end(), side[1].str()) - sides.begin();
  };
  forEveryLocation([&](const Location&, const Located& made) {
    const RunPlan runs =
        planRuns(made.plan, {made.order, made.shop, sample::shippedRules()}, kUnits);
    if (runs.cards.empty()) {
      CHECK_FALSE(made.placement().frame.has_value());  // nothing to load
      return;
    }
    const RunCard& card = runs.cards.front();
    CAPTURE(card.loading, card.turn);
    // Quarter turns from the datum to the design's top, as said at the machine and as drawn.
    const auto said = (quarterOf(card.turn) - quarterOf(card.loading) + 4) % 4;
    const Point top = turned({0.0, -1.0}, made.placement().placed.panelTurn);
    const auto drawn = top.y < -0.5 ? 0 : top.x > 0.5 ? 1 : top.y > 0.5 ? 2 : 3;
    CHECK(said == drawn);
  });
}

// Where the top of the design looks, as the garment is worn. The hood: lying back it is read from
// behind, so its top looks to the face edge; its sides are read when it is worn up, so their tops
// look to the crown, which is the panel's middle.
TEST_CASE("the printed top of every location's design is up as it is worn", "[placement][sides]") {
  const std::map<std::string, std::string> hood = {{"hood-back", "towards the face edge"},
                                                   {"hood-edge", "towards the face edge"},
                                                   {"hood-left", "towards the wearer's right"},
                                                   {"hood-right", "towards the wearer's left"}};
  forEveryLocation([&hood](const Location& location, const Located& made) {
    std::string expected = "towards the collar seam";
    if (isSleeve(location.panel)) {
      expected = "towards the shoulder";
    } else if (isLeg(location.panel)) {
      expected = "towards the waist seam";
    } else if (location.panel == PanelName::Flat) {
      // A cuff that is turned up has its open edge on top.
      expected = location.id == LocationId("beanie-cuff") ? "towards the cuff's open edge"
                                                          : "towards the top edge";
    } else if (location.panel == PanelName::Hood) {
      REQUIRE(hood.count(location.id.text()) == 1);
      expected = hood.at(location.id.text());
    }
    const std::string report = made.report();
    CAPTURE(report);
    CHECK(report.find("top of the design " + expected) != std::string::npos);
    // The same from the drawing: where a point above the design's middle goes on the panel.
    const Point top = turned({0.0, -1.0}, made.placement().placed.panelTurn);
    const double towardsDatum = -top.y;
    const double towardsMiddle = -top.x * made.placement().placed.centre.x;
    if (expected == "towards the shoulder") {
      CHECK(towardsDatum == Approx(-1.0));  // the datum is the cuff
    } else if (location.wearerSide != Side::Centre && location.panel == PanelName::Hood) {
      CHECK(towardsMiddle > 0.0);
    } else {
      CHECK(towardsDatum == Approx(1.0));
    }
  });
}

// The turn is read back against the drawing: sleeves are drawn the other way up than panels lie,
// all else as it lies.
TEST_CASE("the printed turn of every location is the one that is drawn", "[placement][sides]") {
  int turnedPanels = 0;
  forEveryLocation([&turnedPanels](const Location& location, const Located& made) {
    const std::string report = made.report();
    CAPTURE(report);
    std::smatch said;
    REQUIRE(std::regex_search(
        report, said,
        std::regex("Turn (none|([0-9.]+)°( clockwise| anticlockwise)?)[^,]*, top of")));
    double degrees = said[2].matched ? std::stod(said[2].str()) : 0.0;
    if (said[3].str() == " anticlockwise") {
      degrees = -degrees;
    }
    const Point top = turned({0.0, -1.0}, made.placement().placed.panelTurn);
    const Point drawn = isSleeve(location.panel) ? -top : top;
    const Point expected = turned({0.0, -1.0}, Angle::fromDegrees(degrees));
    CHECK(norm(drawn - expected) < 1e-9);
    turnedPanels += degrees != 0.0 ? 1 : 0;
  });
  CHECK(turnedPanels >= 2);  // both sides of a hood
}

// Turned up, the cuff shows the cloth's inside; folded out, that side is inside again until the
// garment is turned inside out.
TEST_CASE("a beanie's cuff is brought to lie as it shows when worn", "[placement][sides]") {
  const Rules& rules = sample::shippedRules();
  const Located made =
      located(*rules.kind(KindId("beanie")), *rules.location(LocationId("beanie-cuff")));
  REQUIRE_FALSE(made.placement().steps.empty());
  const std::string first = made.placement().steps.front().text;
  CAPTURE(first);
  CHECK(first.find("Fold the cuff out and turn the beanie inside out") == 0);
  CHECK(first.find("shows when the cuff is turned up") != std::string::npos);
  CHECK(first.find("open edge is the top edge") != std::string::npos);
  const RunPlan runs = planRuns(made.plan, {made.order, made.shop, rules}, kUnits);
  REQUIRE(runs.cards.size() == 1);
  CHECK(runs.cards[0].loading == "the cuff's open edge at the frame's top");
}

namespace {

// Body widths and lengths of one usual size of each band, in centimetres; the rest is filled.
std::vector<ChartSize> oneSizeOfEachBand() {
  struct Row {
    const char* name;
    SizeBand band;
    double width, length;
  };
  std::vector<ChartSize> sizes;
  for (const Row& row :
       {Row{"12M", SizeBand::Infant, 28.0, 34.0}, Row{"YM", SizeBand::Youth, 44.0, 58.0},
        Row{"M", SizeBand::Adult, 53.0, 72.0}, Row{"3XL", SizeBand::AdultAboveXl, 73.0, 82.0}}) {
    ChartSize size;
    size.name = SizeName(row.name);
    size.band = row.band;
    size.bandGiven = true;
    size.measures = {{Measure::BodyWidth, Length::fromMm(10.0 * row.width)},
                     {Measure::BodyLength, Length::fromMm(10.0 * row.length)}};
    sizes.push_back(size);
  }
  return sizes;
}

// As large as the rule lets it be at its least, half as high as wide.
Design leastDesign(const PlacementRule& rule) {
  Length width = rule.leastWidth.value_or(rule.mostWidth.value_or(60_mm) * 0.5);
  Length height = width * 0.5;
  if (rule.mostHeight && height > *rule.mostHeight) {
    height = *rule.mostHeight;
  }
  return sample::design("d", width, height);
}

bool allows(const auto& wanted, const auto& value) {
  return wanted.empty() || std::find(wanted.begin(), wanted.end(), value) != wanted.end();
}

// The first shipped rule for them; null if there is none.
const PlacementRule* ruleFor(const Location& location, const GarmentKind& kind, SizeBand band) {
  for (const PlacementRule& rule : sample::shippedRules().placement) {
    if (rule.location == location.id && allows(rule.kinds, kind.id) && allows(rule.bands, band)) {
      return &rule;
    }
  }
  return nullptr;
}

// A zip or a pocket may lie where a chest design goes; the plan then says stop, as it should.
bool mayBeInTheWay(const std::string& against, const Location& location) {
  return location.id == LocationId("centre-chest") &&
         (against == "zip" || against == "placket" || against == "pocket edge");
}

}  // namespace

TEST_CASE("a design of the least size lies on the cloth and clear of seams at every location",
          "[placement][locations]") {
  PlanOptions options;
  options.checkRemedies = false;
  for (const Location& location : sample::shippedRules().locations) {
    for (const GarmentKind& kind : sample::shippedRules().kinds) {
      for (const ChartSize& size : oneSizeOfEachBand()) {
        const PlacementRule* rule = ruleFor(location, kind, size.band);
        if (!kind.has(location.panel) || rule == nullptr) {
          continue;
        }
        Blank blank = sample::blank(kind.id.text());
        blank.chart.sizes = {size};
        const Plan plan = planOrder(
            sample::order(blank, leastDesign(*rule), location.id.text(), {size.name.text()}),
            sample::shop({sample::frame("A", 60_mm, 60_mm, 5_mm)}), sample::shippedRules(),
            options);
        CAPTURE(rule->id.text(), kind.id.text(), size.name.text());
        REQUIRE(plan.placements.front().placed.rule == rule->id);
        for (const ClothCheck& check : plan.placements.front().cloth) {
          CAPTURE(check.against);
          CHECK((check.room.mm() >= 0.0 || mayBeInTheWay(check.against, location)));
        }
      }
    }
  }
}
