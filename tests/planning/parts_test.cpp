// SPDX-License-Identifier: MIT
// Designs that are sewn in several hoopings, from the order to run cards and templates.
#include "planning/parts.h"

#include <catch2/catch.hpp>

#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "creaseline/planning/order_summary.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/plan_reader.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/quality_check.h"
#include "creaseline/planning/run_card.h"
#include "creaseline/planning/template_figure.h"
#include "plan_samples.h"
#include "shape/geos_oracle.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

// Two words beside each other, 300 mm together, on backs; the frame holds one of them.
struct Words {
  Shop shop = sample::shop({sample::frame("broad", 220_mm, 180_mm)});
  Order order;

  Words() {
    Design design = sample::design("words", 300_mm, 80_mm);
    design.outline = {{{{{-150, -40}, {-10, -40}, {-10, 40}, {-150, 40}}, {}},
                       {{{10, -40}, {150, -40}, {150, 40}, {10, 40}}, {}}}};
    design.blocks = {{"red", {200, 20, 20}, design.stitches, BlockKind::Sew, {}}};
    order = sample::order(sample::blank("t-shirt"), design, "full-back", {"M", "XL"});
    order.lines[0].placements[0].split = true;
  }
  [[nodiscard]] Plan plan() const { return planOrder(order, shop, sample::shippedRules()); }
  [[nodiscard]] ReportContext context() const { return {order, shop, sample::shippedRules()}; }
};

// Four words, two above two, that are together too wide and too high for the frame.
struct WordsBothWays : Words {
  WordsBothWays() {
    shop = sample::shop({sample::frame("broad", 200_mm, 160_mm)});
    Design& design = order.designs[0];
    design.width = 300_mm;
    design.height = 220_mm;
    design.outline.pieces.clear();
    for (const Point at : {Point{-80, -60}, Point{80, -60}, Point{-80, 60}, Point{80, 60}}) {
      design.outline.pieces.push_back(
          {{at + Point{-70, -50}, at + Point{70, -50}, at + Point{70, 50}, at + Point{-70, 50}},
           {}});
    }
  }
};

// Everything that must be sewn in one hooping, about the frame's centre: GEOS says whether the
// window, shrunk by the foot's clearance, covers it.
void checkHeld(const PlacementPlan& plan, const Shop& shop) {
  const test::Geos geos;
  const Frame& frame = *shop.frame(plan.frame->frame);
  const Ring window = transformedRing(frame.window.boundary(Length::fromMm(0.01)), plan.frame->turn,
                                      plan.frame->centre);
  const auto open = geos.own(GEOSBuffer_r(geos.handle(), geos.polygon(window).get(),
                                          -frame.clearance.value_or(10_mm).mm() + 1e-6, 64));
  const auto prepared = geos.prepare(open);
  for (const Piece& piece : plan.outlineOnPanel.pieces) {
    CHECK(geos.covers(prepared, geos.polygon(piece.outer)));
  }
  for (const RegisterMark& mark : plan.part->marks) {
    const double half = mark.extent.mm() / 2.0;
    for (const Point arm : {Point{half, 0}, Point{-half, 0}, Point{0, half}, Point{0, -half}}) {
      CHECK(geos.covers(prepared, geos.point(mark.at + turned(arm, plan.placed.panelTurn))));
    }
  }
}

std::vector<std::string> texts(const RunCard& card) {
  std::vector<std::string> list;
  for (const RunStep& step : card.steps) {
    list.push_back(step.text);
  }
  return list;
}

}  // namespace

TEST_CASE("A design too wide for every frame is sewn in two hoopings", "[parts]") {
  const Words words;
  const Plan plan = words.plan();
  REQUIRE(plan.placements.size() == 4);  // two sizes of two parts
  CHECK(plan.counts.garments == 2);
  CHECK(plan.counts.placements == 4);
  CHECK(plan.counts.stops == 0);
  CHECK(sample::findingOf(plan, FindingCode::SewnInParts).severity == Severity::Watch);
  CHECK_FALSE(sample::hasFinding(plan, FindingCode::TooLargeForEveryFrame));
  for (std::size_t i = 0; i < plan.placements.size(); ++i) {
    const PlacementPlan& part = plan.placements[i];
    CAPTURE(i);
    REQUIRE(part.part);
    REQUIRE(part.frame);
    CHECK(part.part->number == static_cast<int>(i % 2) + 1);
    CHECK(part.countsGarments() == (i % 2 == 0));
    CHECK(part.design.width == 140_mm);
    CHECK(part.frame->slack.least() >= 3_mm);  // the shipped hooping error
    checkHeld(part, words.shop);
  }
  const PlacementPlan& left = plan.placements[0];
  const PlacementPlan& right = plan.placements[1];
  // The words' centres lie 80 mm to either side of the design's, at the same drop.
  CHECK(left.placed.lateral == -80_mm);
  CHECK(right.placed.lateral == 80_mm);
  CHECK(left.placed.drop == right.placed.drop);
  CHECK(left.placed.centreOffset == right.placed.centreOffset);
  // Both know the same marks at the same places on the cloth.
  CHECK(left.part->marks == right.part->marks);
  CHECK(left.part->marks[0].sewnBy == 1);
  CHECK(left.part->marks[0].alignedBy == 2);
  CHECK(left.part->joins[0].crossed == Length());
  CHECK(left.part->joins[0].overlap == Length());
}

TEST_CASE("Without leave the order is stopped, and splitting is offered as a remedy that works",
          "[parts]") {
  Words words;
  words.order.lines[0].placements[0].split = false;
  const Plan before = words.plan();
  const Finding& stop = sample::findingOf(before, FindingCode::TooLargeForEveryFrame);
  const auto remedy =
      std::find_if(stop.remedies.begin(), stop.remedies.end(), [](const Remedy& candidate) {
        return std::holds_alternative<SplitChange>(candidate.change);
      });
  REQUIRE(remedy != stop.remedies.end());
  CHECK(std::get<SplitChange>(remedy->change).parts == 2);
  CHECK(remedy->text == "sew it in 2 hoopings, joined on register marks");
  words.order.lines[0].placements[0].split = true;
  CHECK(words.plan().counts.stops == 0);
}

TEST_CASE("A design that one frame holds is sewn at once even where several hoopings are allowed",
          "[parts]") {
  Words words;
  words.shop = sample::shop({sample::frame("wide", 400_mm, 180_mm)});
  const Plan plan = words.plan();
  REQUIRE(plan.placements.size() == 2);
  CHECK_FALSE(plan.placements[0].part);
  CHECK_FALSE(sample::hasFinding(plan, FindingCode::SewnInParts));
}

TEST_CASE("What cannot be split says why", "[parts]") {
  Words words;
  SECTION("appliqué pieces lie nobody knows where") {
    words.order.designs[0].pieces = {{"A", "twill", 50_mm, 50_mm}};
    CHECK(sample::findingOf(words.plan(), FindingCode::TooLargeForEveryFrame)
              .text.find("appliqué pieces") != std::string::npos);
  }
  SECTION("no part has room for marks") {
    // 80 mm of sewing, 2 x 10 mm of clearance, and no more for marks and hooping error.
    words.shop = sample::shop({sample::frame("low", 101_mm, 101_mm)});
    words.order.designs[0].outline = Outline::rectangle(300_mm, 80_mm);
    CHECK(sample::findingOf(words.plan(), FindingCode::TooLargeForEveryFrame)
              .text.find("no room for every part with two register marks") != std::string::npos);
  }
}

TEST_CASE("Stitches are shared out by area, and a cut through sewing overlaps", "[parts]") {
  Words words;
  words.order.designs[0].outline = Outline::rectangle(300_mm, 80_mm);
  const Plan plan = words.plan();
  REQUIRE(plan.placements.size() == 4);
  const PlacementPlan& first = plan.placements[0];
  REQUIRE(first.part);
  CHECK(first.part->joins[0].crossed == 80_mm);
  CHECK(first.part->joins[0].overlap == Length::fromMm(1.5));
  CHECK(first.design.width == Length::fromMm(150.75));
  const int whole = words.order.designs[0].stitches;
  CHECK(first.design.stitches == Approx(whole * 150.75 / 300.0).margin(1));
  CHECK(sample::findingOf(plan, FindingCode::SewnInParts).numbers[0].value == 80_mm);
}

// Two blocks of thread side by side, the longer one first: cut between them, not in the middle.
TEST_CASE("A design is cut between blocks that touch before a block is cut apart", "[parts]") {
  Words words;
  words.order.designs[0].outline.pieces = {{{{-150, -40}, {20, -40}, {20, 40}, {-150, 40}}, {}},
                                           {{{20, -40}, {150, -40}, {150, 40}, {20, 40}}, {}}};
  const Plan plan = words.plan();
  REQUIRE(plan.placements.size() == 4);
  CHECK(plan.counts.stops == 0);
  const PlacementPlan& first = plan.placements[0];
  REQUIRE(first.part);
  CHECK(first.part->joins[0].crossed == Length());
  CHECK(first.part->joins[0].overlap == Length::fromMm(1.5));
  CHECK(first.design.width == Length::fromMm(170.75));
  CHECK(sample::findingOf(plan, FindingCode::SewnInParts)
            .text.find("meet between pieces of it that touch") != std::string::npos);
  CHECK(
      std::any_of(first.part->reasons.begin(), first.part->reasons.end(), [](const Reason& reason) {
        return reason.text ==
               "the cut to part 2 runs between pieces of the design that touch and "
               "crosses none of them";
      }));
  checkHeld(first, words.shop);
}

TEST_CASE("A plan with parts reads back from its JSON as it was", "[parts]") {
  const Words words;
  const Plan made = words.plan();
  const std::string json = jsonReport(made, words.context());
  const Plan read = readPlan(json, "plan.json", words.order, words.shop, sample::shippedRules());
  REQUIRE(read.placements.size() == made.placements.size());
  for (std::size_t i = 0; i < made.placements.size(); ++i) {
    CHECK(read.placements[i].part == made.placements[i].part);
    CHECK(read.placements[i].design == made.placements[i].design);
    CHECK(read.placements[i].frame == made.placements[i].frame);
  }
  CHECK(jsonReport(read, words.context()) == json);
  // A section in which nothing lies is no part of the design.
  nlohmann::json broken = nlohmann::json::parse(json);
  broken["placements"][0]["part"]["section"] = {{"min", {{"x", "500 mm"}, {"y", "500 mm"}}},
                                                {"max", {{"x", "510 mm"}, {"y", "510 mm"}}}};
  CHECK_THROWS_WITH(
      readPlan(broken.dump(), "plan.json", words.order, words.shop, sample::shippedRules()),
      Catch::Contains("a part in whose section nothing of the design lies"));
}

TEST_CASE("Each part has its run card: marks are sewn, aligned on and picked out", "[parts]") {
  const Words words;
  const Plan plan = words.plan();
  const RunPlan runs = planRuns(plan, words.context(), samples::kInches);
  REQUIRE(runs.cards.size() == 2);  // both sizes are sewn alike
  CHECK(runs.cards[0].design == "words, part 1 of 2");
  CHECK(runs.cards[0].garments == 2);
  CHECK(runs.hoopings == 4);
  const auto first = texts(runs.cards[0]);
  const auto second = texts(runs.cards[1]);
  CHECK(first.back() == "Sew register marks A and B for part 2");
  CHECK(runs.cards[0].steps.back().thread == "red");
  CHECK(second.front() ==
        "Needle up, go to register marks A and B of part 1: move and turn the design until the "
        "needle stands over both");
  CHECK(second.back() == "Check the join, then pick out register marks A and B");
}

TEST_CASE("Lists count garments once and name the whole design", "[parts]") {
  const Words words;
  const Plan plan = words.plan();
  const RunPlan runs = planRuns(plan, words.context(), samples::kInches);
  const OrderSummary summary = orderSummary(plan, runs, words.context());
  REQUIRE(summary.lines.size() == 1);
  const SummaryPlace& place = summary.lines[0].places[0];
  CHECK(place.garments == 2);
  CHECK(place.hoopings == 2);
  CHECK(place.design == "words");
  CHECK(place.width == 300_mm);
  const QualityCheck check = qualityCheck(plan, words.context(), samples::kInches);
  REQUIRE(check.parts.size() == 2);
  CHECK(check.parts[0].location == "Full back, part 1 of 2");
  CHECK(check.parts[1].rows.size() == 2);
}

TEST_CASE("Templates show a part's register marks where both parts have them", "[parts]") {
  const Words words;
  const Plan plan = words.plan();
  const FigureContext context{plan, words.order, words.shop, sample::shippedRules(),
                              samples::kInches};
  const auto groups = templateGroups(context);
  REQUIRE(groups.size() == 2);
  // Of each part the middles of its marks on the cloth, from the figure and the part's centre.
  std::vector<std::set<std::pair<int, int>>> onCloth;
  for (const SizeGroup& group : groups) {
    const PlacementPlan& part = plan.placements[group.front()];
    std::set<std::pair<int, int>> middles;
    for (const Stroke& stroke : templateFigure(context, group, TemplateView::Usual).strokes) {
      if (stroke.kind == StrokeKind::Register) {
        REQUIRE(stroke.line.size() == 2);
        CHECK(norm(stroke.line[1] - stroke.line[0]) == Approx(8.0));
        const Point middle = (stroke.line[0] + stroke.line[1]) * 0.5 + part.placed.centre;
        middles.emplace(static_cast<int>(std::lround(middle.x * 1000)),
                        static_cast<int>(std::lround(middle.y * 1000)));
      }
    }
    onCloth.push_back(middles);
  }
  CHECK(onCloth[0].size() == 2);
  CHECK(onCloth[0] == onCloth[1]);
}

TEST_CASE("A frame more never makes more hoopings, and a mirrored design needs as many",
          "[parts]") {
  Words words;
  words.order.designs[0].outline = {{{{{-150, -20}, {-60, -20}, {-60, 20}, {-150, 20}}, {}},
                                     {{{-40, -20}, {150, -15}, {150, 15}, {-40, 20}}, {}}}};
  const auto hoopings = [](const Words& asked) {
    return asked.plan().placements.front().part ? asked.plan().placements.front().part->of : 1;
  };
  words.shop = sample::shop({sample::frame("small", 120_mm, 120_mm)});
  const int few = hoopings(words);
  CHECK(few > 2);
  Words mirrored = words;
  for (Piece& piece : mirrored.order.designs[0].outline.pieces) {
    for (Point& point : piece.outer) {
      point.x = -point.x;
    }
  }
  CHECK(hoopings(mirrored) == few);
  words.shop = sample::shop(
      {sample::frame("small", 120_mm, 120_mm), sample::frame("broad", 260_mm, 180_mm)});
  CHECK(hoopings(words) < few);
}

TEST_CASE("Joins and marks are told in words", "[parts]") {
  const Words words;
  const Plan plan = words.plan();
  const PlacementPlan& left = plan.placements[0];
  CHECK(joinPhrase(left, left.part->joins[0], samples::kMillimetres) ==
        "the join with part 2 lies 80 mm from this part's centre, towards the wearer's right "
        "(viewer's right)");
  CHECK(markPhrase(left, left.part->marks[0], samples::kMillimetres) ==
        "80 mm right of and 40 mm above this part's centre, as the design reads; sewn by part 1");
  CHECK(markPhrase(left, left.part->marks[0], samples::kInches) ==
        "3 5/32 in (80.0 mm) right of and 1 37/64 in (40.0 mm) above this part's centre, as the "
        "design reads; sewn by part 1");
  CHECK(partSuffix(left) == ", part 1 of 2");
  CHECK(alignStep(*left.part).empty());
  CHECK(sewMarksStep(*plan.placements[1].part).empty());
}

TEST_CASE("A design too wide and too high for every frame is cut both ways", "[parts][grid]") {
  const WordsBothWays words;
  const Plan plan = words.plan();
  REQUIRE(plan.placements.size() == 8);  // two sizes of four parts
  CHECK(plan.counts.garments == 2);
  CHECK(plan.counts.stops == 0);
  CHECK_FALSE(sample::hasFinding(plan, FindingCode::TooLargeForEveryFrame));
  std::map<std::string, std::vector<Point>> marks;
  for (std::size_t i = 0; i < 4; ++i) {
    const PlacementPlan& part = plan.placements[i];
    CAPTURE(i);
    REQUIRE(part.part);
    REQUIRE(part.part->cell);
    REQUIRE(part.frame);
    CHECK(part.part->number == static_cast<int>(i) + 1);
    CHECK(part.part->of == 4);
    CHECK(part.part->joins.size() == 2);
    CHECK(part.frame->bearsError);
    checkHeld(part, words.shop);
    // Two marks that an earlier part sews.
    int earlier = 0;
    for (const RegisterMark& mark : part.part->marks) {
      CHECK(mark.sewnBy < mark.alignedBy);
      earlier += mark.alignedBy == part.part->number ? 1 : 0;
      marks[mark.name].push_back(mark.at);
    }
    CHECK(earlier == (i == 0 ? 0 : 2));
  }
  // Both parts of a mark know it by one name, at one place on the cloth.
  CHECK(marks.size() == 6);
  for (const auto& [name, at] : marks) {
    CAPTURE(name);
    REQUIRE(at.size() == 2);
    CHECK(at[0] == at[1]);
  }
  const std::string& text = sample::findingOf(plan, FindingCode::SewnInParts).text;
  CHECK(text.find("sewn in 4 hoopings that meet where there is no sewing") != std::string::npos);
  CHECK(text.find("part 3 on register marks C and D of part 1") != std::string::npos);
}

TEST_CASE("A design without gaps is cut both ways through its sewing, and says what is crossed",
          "[parts][grid]") {
  // Parts of 150 x 110 with half the overlap, marks 7 mm off the sewing and 40 mm beside a cut, 4
  // mm for half a mark: 206 x 166. 250 x 210 less twice 10 mm of clearance and 3 mm of error hold
  // that, and neither half of the design with marks at both ends of the cut.
  WordsBothWays words;
  words.shop = sample::shop({sample::frame("broad", 250_mm, 210_mm)});
  words.order.designs[0].outline = Outline::rectangle(300_mm, 220_mm);
  const Plan plan = words.plan();
  CHECK(plan.counts.stops == 0);
  REQUIRE(plan.placements.size() == 8);
  for (const PlacementPlan& part : plan.placements) {
    CAPTURE(part.part->number);
    REQUIRE(part.frame);
    CHECK(part.frame->bearsError);
    checkHeld(part, words.shop);
    const auto said = [&part](const char* text) {
      return std::any_of(
          part.part->reasons.begin(), part.part->reasons.end(),
          [text](const Reason& reason) { return reason.text.find(text) != std::string::npos; });
    };
    CHECK(said("of sewing; all cuts together cross"));
    CHECK(said("the parts overlap there by"));
    CHECK(said("in the margin beyond its end, one on either side of it"));
  }
  CHECK(sample::findingOf(plan, FindingCode::SewnInParts)
            .text.find("sewn in 4 hoopings that meet across") != std::string::npos);
}

TEST_CASE("Parts of a grid are named by row and column, and marks by the parts that share them",
          "[parts][grid]") {
  const WordsBothWays words;
  const Plan plan = words.plan();
  const DesignPart& first = *plan.placements[0].part;
  const DesignPart& third = *plan.placements[2].part;
  CHECK(partSuffix(plan.placements[0]) == ", part 1 of 4 (column 1, row 1)");
  CHECK(partSuffix(plan.placements[2]) == ", part 3 of 4 (column 2, row 1)");
  CHECK(cellPhrase({CutDirection::Level, 2, 1}) == "row 2, column 1");
  CHECK(sewMarksStep(first) == "Sew register marks A and B for part 2, C and D for part 3");
  CHECK(alignStep(third) ==
        "Needle up, go to register marks C and D of part 1: move and turn the design until the "
        "needle stands over both");
  CHECK(pickOutStep(third) == "Check the join, then pick out register marks C and D");
  CHECK(sewMarksStep(*plan.placements[3].part).empty());
  const RunPlan runs = planRuns(plan, words.context(), samples::kInches);
  REQUIRE(runs.cards.size() == 4);
  for (std::size_t i = 0; i < 4; ++i) {
    CHECK(runs.cards[i].design == "words, " + partPhrase(static_cast<int>(i) + 1, 4));
  }
}

TEST_CASE("A plan of a grid reads back from its JSON as it was", "[parts][grid]") {
  const WordsBothWays words;
  const Plan made = words.plan();
  const std::string json = jsonReport(made, words.context());
  const Plan read = readPlan(json, "plan.json", words.order, words.shop, sample::shippedRules());
  REQUIRE(read.placements.size() == made.placements.size());
  for (std::size_t i = 0; i < made.placements.size(); ++i) {
    CHECK(read.placements[i].part == made.placements[i].part);
  }
  CHECK(jsonReport(read, words.context()) == json);
}

TEST_CASE("Splitting both ways is offered as a remedy, and refused where marks have no room",
          "[parts][grid]") {
  WordsBothWays words;
  words.order.lines[0].placements[0].split = false;
  const Plan before = words.plan();
  const Finding& stop = sample::findingOf(before, FindingCode::TooLargeForEveryFrame);
  CHECK(std::any_of(stop.remedies.begin(), stop.remedies.end(), [](const Remedy& candidate) {
    const auto* change = std::get_if<SplitChange>(&candidate.change);
    return change != nullptr && change->parts == 4;
  }));
  words.order.lines[0].placements[0].split = true;
  words.order.designs[0].outline = Outline::rectangle(300_mm, 220_mm);
  CHECK(sample::findingOf(words.plan(), FindingCode::TooLargeForEveryFrame)
            .text.find("cuts one way, and cuts both ways, into up to 6 parts leave no room") !=
        std::string::npos);
}
