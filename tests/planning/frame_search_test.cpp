// SPDX-License-Identifier: MIT
#include <geos_c.h>
#include <catch2/catch.hpp>
#include <random>
#include <set>
#include <tuple>

#include "creaseline/planning/planner.h"
#include "creaseline/planning/wording.h"
#include "planning/seat.h"
#include "planning/workshop.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using sample::planFor;

namespace {

Plan planWith(std::vector<Frame> frames, const Design& design, const std::string& kind,
              const std::string& location, const std::vector<std::string>& sizes) {
  PlanOptions options;
  options.checkRemedies = false;
  return planOrder(sample::order(sample::blank(kind), design, location, sizes),
                   sample::shop(std::move(frames)), sample::shippedRules(), options);
}

const FrameRejection& rejectionOf(const PlacementPlan& plan, const std::string& frame) {
  const auto found = std::find_if(
      plan.rejections.begin(), plan.rejections.end(),
      [&frame](const FrameRejection& rejection) { return rejection.frame.text() == frame; });
  REQUIRE(found != plan.rejections.end());
  return *found;
}

// GEOS as a second opinion about what lies on what.
class OverlapGeos {
 public:
  OverlapGeos() : context_(GEOS_init_r()) {}
  ~OverlapGeos() { GEOS_finish_r(context_); }
  OverlapGeos(const OverlapGeos&) = delete;
  OverlapGeos& operator=(const OverlapGeos&) = delete;

  [[nodiscard]] double sharedArea(const Ring& a, const Ring& b) const {
    GEOSGeometry* first = polygon(a);
    GEOSGeometry* second = polygon(b);
    GEOSGeometry* both = GEOSIntersection_r(context_, first, second);
    double area = 0.0;
    GEOSArea_r(context_, both, &area);
    GEOSGeom_destroy_r(context_, both);
    GEOSGeom_destroy_r(context_, second);
    GEOSGeom_destroy_r(context_, first);
    return area;
  }

 private:
  [[nodiscard]] GEOSGeometry* polygon(const Ring& ring) const {
    GEOSCoordSequence* points =
        GEOSCoordSeq_create_r(context_, static_cast<unsigned>(ring.size() + 1), 2);
    for (unsigned i = 0; i <= ring.size(); ++i) {
      const Point p = ring[i % ring.size()];
      GEOSCoordSeq_setXY_r(context_, points, i, p.x, p.y);
    }
    return GEOSGeom_createPolygon_r(context_, GEOSGeom_createLinearRing_r(context_, points),
                                    nullptr, 0);
  }
  GEOSContextHandle_t context_;
};

}  // namespace

// common practice, no source: an 8 x 9 in frame serves an 8 x 8 in design; some makers' stated
// sewing field already allows for the foot.
TEST_CASE("an 8 x 9 in sewing field serves an 8 x 8 in design", "[frame]") {
  Frame frame = sample::frame("8x9", 8_in + 20_mm, 9_in + 20_mm);
  frame.sewingField = *Window::rectangle(8_in, 9_in);
  const Plan plan = planWith({frame}, sample::design("monogram", 8_in, 8_in), "pullover-hoodie",
                             "centre-chest", {"XL"});
  const PlacementPlan& xl = planFor(plan, "XL");
  REQUIRE(xl.frame);
  // Nothing to spare sideways, half an inch up and down in all: 1 in of play.
  CHECK(xl.frame->slack.left == 0_mm);
  CHECK(xl.frame->slack.right == 0_mm);
  CHECK(std::abs((xl.frame->slack.up + xl.frame->slack.down - 1_in).mm()) < 1e-6);
}

TEST_CASE("slack is window less clearance less design, by hand", "[frame]") {
  // 200 x 230 window, 10 mm clearance all round: 180 x 210 is left for 100 x 60.
  const Plan plan = planWith({sample::frame("A", 200_mm, 230_mm)},
                             sample::design("d", 100_mm, 60_mm), "t-shirt", "centre-chest", {"XL"});
  const PlacementPlan& xl = planFor(plan, "XL");
  REQUIRE(xl.frame);
  const Slack& slack = xl.frame->slack;
  CHECK((slack.left + slack.right).mm() == Approx(80.0).margin(1e-6));
  CHECK((slack.up + slack.down).mm() == Approx(150.0).margin(1e-6));
}

TEST_CASE("each rejected frame names the failed test and its millimetres", "[frame]") {
  Frame narrow = sample::frame("narrow", 110_mm, 200_mm);
  narrow.turns = {Angle()};
  Frame elsewhere = sample::frame("elsewhere", 300_mm, 300_mm);
  elsewhere.panels = {PanelName::Back};
  const Plan plan = planWith({narrow, elsewhere, sample::frame("good", 200_mm, 200_mm)},
                             sample::design("d", 100_mm, 60_mm), "t-shirt", "centre-chest", {"XL"});
  const PlacementPlan& xl = planFor(plan, "XL");
  // 110 - 2 x 10 = 90 wide is 10 mm too narrow for 100.
  CHECK(rejectionOf(xl, "narrow").test == FrameTest::HoldsDesign);
  CHECK(rejectionOf(xl, "narrow").missing == 10_mm);
  CHECK(rejectionOf(xl, "elsewhere").test == FrameTest::MeantForPanel);
  REQUIRE(xl.frame);
  CHECK(xl.frame->frame == FrameId("good"));
}

TEST_CASE("the frame with enough room and the least backing is chosen", "[frame]") {
  const Design design = sample::design("d", 100_mm, 60_mm);
  const Plan plan =
      planWith({sample::frame("large", 250_mm, 250_mm), sample::frame("small", 140_mm, 100_mm),
                sample::frame("tight", 121_mm, 81_mm)},
               design, "t-shirt", "centre-chest", {"XL"});
  const PlacementPlan& xl = planFor(plan, "XL");
  REQUIRE(xl.frame);
  // "tight" has half a millimetre of slack, less than the shop's hooping error of 3 mm.
  CHECK(xl.frame->frame == FrameId("small"));
  REQUIRE(xl.alternatives.size() == 2);
  CHECK(xl.alternatives[0].frame == FrameId("large"));
  CHECK(xl.alternatives[1].frame == FrameId("tight"));
}

TEST_CASE("a frame that must be turned on the garment is a watch", "[frame]") {
  // On a garment that opens to lie flat: in a tube a turned frame's bracket would face a seam.
  const Plan plan =
      planWith({sample::frame("A", 100_mm, 200_mm)}, sample::design("wide", 150_mm, 50_mm),
               "full-zip-hoodie", "full-back", {"XL"});
  const PlacementPlan& xl = planFor(plan, "XL");
  REQUIRE(xl.frame);
  CHECK(xl.frame->turn == 90_deg);
  CHECK(sample::findingOf(plan, FindingCode::FitsOnlyTurned).severity == Severity::Watch);
}

TEST_CASE("a frame is shifted within its slack to clear the pocket", "[frame]") {
  // The design leaves 100 mm of play up and down; centred, the body would lie on the pocket.
  const Design design = sample::design("d", 120_mm, 120_mm);
  const Frame tall = sample::frame("tall", 160_mm, 260_mm);
  const Plan plan = planWith({tall}, design, "pullover-hoodie", "centre-chest", {"YM", "M"});
  for (const PlacementPlan& placement : plan.placements) {
    CAPTURE(placement.size.text());
    if (!placement.frame) {
      continue;
    }
    const PanelShape& front = *placement.garment->panel(PanelName::Front);
    Ring body = tall.body.boundary(Length::fromMm(0.01));
    body = transformedRing(body, placement.frame->turn, placement.frame->centre);
    OverlapGeos geos;
    for (const KeepOut& keepOut : front.keepOuts) {
      if (keepOut.frame) {
        CHECK(geos.sharedArea(body, keepOut.area) < 1.0);
      }
    }
  }
}

// GEOS (general geometry library) decides whether the chosen body really is on the cloth.
TEST_CASE("a chosen frame lies on no keep-out and over no closed edge, by GEOS", "[frame]") {
  const OverlapGeos geos;
  std::mt19937 random(20261);
  std::uniform_real_distribution<double> side(40.0, 260.0);
  const std::vector<Frame> frames = {
      sample::frame("A", 120_mm, 120_mm), sample::frame("B", 180_mm, 130_mm),
      sample::frame("C", 230_mm, 230_mm), sample::frame("D", 300_mm, 350_mm),
      sample::frame("E", 360_mm, 220_mm)};
  int chosen = 0;
  for (int round = 0; round < 60; ++round) {
    const Design design =
        sample::design("d", Length::fromMm(side(random)), Length::fromMm(side(random)));
    for (const char* kind : {"pullover-hoodie", "full-zip-hoodie", "polo"}) {
      for (const char* location : {"centre-chest", "left-chest", "full-back"}) {
        const Plan plan = planWith(frames, design, kind, location, {"YM", "M", "2XL"});
        for (const PlacementPlan& placement : plan.placements) {
          if (!placement.frame) {
            continue;
          }
          ++chosen;
          CAPTURE(kind, location, placement.size.text(), design.width.mm(), design.height.mm());
          const PanelShape& panel = *placement.garment->panel(placement.panel);
          const auto frame = std::find_if(frames.begin(), frames.end(), [&](const Frame& f) {
            return f.id == placement.frame->frame;
          });
          const Ring body = transformedRing(frame->body.boundary(Length::fromMm(0.01)),
                                            placement.frame->turn, placement.frame->centre);
          for (const KeepOut& keepOut : panel.keepOuts) {
            if (keepOut.frame) {
              CHECK(geos.sharedArea(body, keepOut.area) < ringArea(body) * 1e-4);
            }
          }
          // Side seams and collar may not be crossed; shoulder and armhole may, so the part of
          // the body beyond the panel must lie above the pit, off the neck opening.
          const Box box = ringBounds(body);
          const Box cloth = ringBounds(panel.outline);
          CHECK(box.min.x > cloth.min.x - 0.1);
          CHECK(box.max.x < cloth.max.x + 0.1);
        }
      }
    }
  }
  CHECK(chosen > 200);
}

TEST_CASE("another frame never makes a plan worse", "[frame]") {
  std::mt19937 random(77);
  std::uniform_real_distribution<double> side(60.0, 300.0);
  for (int round = 0; round < 40; ++round) {
    const Design design =
        sample::design("d", Length::fromMm(side(random)), Length::fromMm(side(random)));
    const Frame first =
        sample::frame("A", Length::fromMm(side(random)), Length::fromMm(side(random)));
    const Frame second =
        sample::frame("B", Length::fromMm(side(random)), Length::fromMm(side(random)));
    const Plan one = planWith({first}, design, "t-shirt", "centre-chest", {"M", "2XL"});
    const Plan two = planWith({first, second}, design, "t-shirt", "centre-chest", {"M", "2XL"});
    CHECK(two.counts.stops <= one.counts.stops);
    for (std::size_t i = 0; i < one.placements.size(); ++i) {
      if (one.placements[i].frame) {
        CHECK(two.placements[i].frame.has_value());
      }
    }
  }
}

TEST_CASE("the largest scale is just the one that fits", "[frame]") {
  const Design design = sample::design("d", 300_mm, 200_mm);
  const Frame frame = sample::frame("A", 200_mm, 230_mm);
  Order order = sample::order(sample::blank("full-zip-hoodie"), design, "full-back", {"2XL"});
  const Shop shop = sample::shop({frame});
  const Plan refused = planOrder(order, shop, sample::shippedRules());
  const double scale = planFor(refused, "2XL").largestScale;
  CHECK_FALSE(planFor(refused, "2XL").frame);
  // Turned by a quarter, 210 mm are left for 300 mm.
  CHECK(scale == Approx(210.0 / 300.0).epsilon(1e-6));
  order.lines[0].placements[0].scale = scale * (1.0 - 1e-5);
  CHECK(planFor(planOrder(order, shop, sample::shippedRules()), "2XL").frame);
  order.lines[0].placements[0].scale = scale * (1.0 + 1e-5);
  CHECK_FALSE(planFor(planOrder(order, shop, sample::shippedRules()), "2XL").frame);
}

TEST_CASE("A frame that is too small says at which turn it would hold the design", "[frames]") {
  // With 10 mm of clearance 120 x 200 leaves 100 x 180. A design of 120 x 60 goes in at
  // atan(1/2) + acos(100 / sqrt(120^2 + 60^2)) = 68.38 degrees. With 2 degrees and 3 mm each way of
  // error, 60 cos(t - 2) + 30 sin(t - 2) + 3 (cos t + sin t) <= 50: 50.8 at 74, 49.9 at 75 degrees.
  // Turning the frame turns the design in it the other way.
  Frame upright = sample::frame("A", 120_mm, 200_mm);
  upright.turns = {0_deg};
  const auto plan = planWith({upright}, sample::design("d", 120_mm, 60_mm), "pullover-hoodie",
                             "full-back", {"M"});
  const FrameRejection& rejection = rejectionOf(planFor(plan, "M"), "A");
  CHECK(rejection.test == FrameTest::HoldsDesign);
  CHECK_THAT(rejection.what, Catch::Contains("turned on the garment by 75°"));
  CHECK_THAT(rejection.what, Catch::Contains("anticlockwise"));
  // None helps where the diagonal is too long for every turn.
  const auto none =
      planWith({sample::frame("B", 120_mm, 120_mm)}, sample::design("d", 150_mm, 120_mm),
               "pullover-hoodie", "full-back", {"M"});
  CHECK_THAT(rejectionOf(planFor(none, "M"), "B").what, !Catch::Contains("turned on the garment"));
}

TEST_CASE("A frame that bears shift and turn each alone but not both is a watch", "[frames]") {
  // 100 x 60 with 10 mm of clearance leaves 3.2 mm on each side of a design of 73.6 x 33.6: more
  // than the 3 mm of the shop. Turned by 2 degrees its half height grows from 16.8 to
  // 16.8 cos 2 + 36.8 sin 2 = 18.07, by 1.27: below 3.2, but with 3 mm of shift beyond it.
  const auto plan =
      planWith({sample::frame("A", 100_mm, 60_mm)}, sample::design("d", 73.6_mm, 33.6_mm),
               "pullover-hoodie", "full-back", {"M"});
  const PlacementPlan& answer = planFor(plan, "M");
  REQUIRE(answer.frame);
  CHECK(answer.frame->slack.least() > 3_mm);
  CHECK(answer.frame->slack.turn > 2_deg);
  CHECK_THAT(sample::findingOf(plan, FindingCode::LittleRoom).text,
             Catch::Contains("but not both at once"));
}

// Metamorphic: more frames on the rack never make an answer worse, and a frame taken away never
// makes it better.
TEST_CASE("adding a frame never worsens the answer", "[frame-search]") {
  std::mt19937 random(20261127);
  std::uniform_int_distribution<int> side(60, 320);
  std::uniform_int_distribution<int> rim(5, 30);
  const char* locations[] = {"centre-chest", "left-chest", "upper-back", "full-back"};
  const char* kinds[] = {"pullover-hoodie", "t-shirt", "polo", "full-zip-hoodie"};
  const auto worth = [](const PlacementPlan& plan) {
    return std::make_tuple(!plan.stops(), plan.frame.has_value(),
                           plan.frame.has_value() && plan.frame->bearsError,
                           plan.frame.has_value() ? 1.0 : plan.largestScale);
  };
  int better = 0;
  for (int i = 0; i < 60; ++i) {
    std::vector<Frame> frames;
    for (const char* name : {"A", "B", "C", "D"}) {
      frames.push_back(sample::frame(name, Length::fromMm(side(random)),
                                     Length::fromMm(side(random)), Length::fromMm(rim(random))));
    }
    const Order order = sample::order(
        sample::blank(kinds[i % 4]),
        sample::design("d", Length::fromMm(side(random)), Length::fromMm(side(random))),
        locations[i / 4 % 4], {"M"});
    PlanOptions options;
    options.checkRemedies = false;
    std::optional<std::tuple<bool, bool, bool, double>> last;
    for (std::size_t count = 1; count <= frames.size(); ++count) {
      const Shop shop = sample::shop({frames.begin(), frames.begin() + static_cast<long>(count)});
      const auto now = worth(planOrder(order, shop, sample::shippedRules(), options).placements[0]);
      CAPTURE(i, count);
      if (last) {
        CHECK(now >= *last);
        better += now > *last;
      }
      last = now;
    }
  }
  CHECK(better > 20);
}

TEST_CASE("no frame of any kind sits on a zip or on snaps", "[frame-search][metal]") {
  std::set<std::string> carriers;
  for (const GarmentKind& kind : sample::shippedRules().kinds) {
    const Order order = sample::order(sample::blank(kind.id.text()),
                                      sample::design("d", 60_mm, 40_mm), "centre-chest", {"M"});
    for (const FrameKind frameKind : {FrameKind::Magnetic, FrameKind::Screw, FrameKind::Clamp}) {
      Frame frame = sample::frame("A", 100_mm, 80_mm);
      frame.kind = frameKind;
      const Shop shop = sample::shop({frame});
      const Workshop workshop = prepareWorkshop(shop, sample::shippedRules());
      const PlacementPlan plan = planOrder(order, shop, sample::shippedRules()).placements.front();
      for (const auto& [name, panel] : plan.garment->panels) {
        for (const KeepOut& metal : panel.keepOuts) {
          if (metal.name != KeepOutName::Zip && metal.name != KeepOutName::Snaps) {
            continue;
          }
          CAPTURE(kind.id.text(), nameOf(name), nameOf(metal.name), nameOf(frameKind));
          carriers.insert(kind.id.text() + " " + std::string(nameOf(metal.name)));
          const auto meetings = meetingsOf(
              workshop.frames->front(), ringBounds(metal.area).centre(), panel, workshop.crossings);
          const auto met =
              std::find_if(meetings.begin(), meetings.end(), [&metal](const Meeting& meeting) {
                return meeting.what == keepOutPhrase(metal.name);
              });
          REQUIRE(met != meetings.end());
          CHECK(met->keepOut);
          CHECK(met->depth > 0.0);
        }
      }
    }
  }
  CHECK(carriers == std::set<std::string>{"full-zip-hoodie zip", "infant-bodysuit snaps",
                                          "quarter-zip zip", "soft-jacket zip", "vest zip"});
}

TEST_CASE("a frame over a zip is rejected by name, with how far it is over, whatever its kind",
          "[frame-search][metal]") {
  // The body is 130 mm wide, and 100 - 2 x 10 - 60 leaves the design 10 mm of play to either side.
  for (const FrameKind frameKind : {FrameKind::Magnetic, FrameKind::Screw, FrameKind::Clamp}) {
    Frame frame = sample::frame("A", 100_mm, 80_mm);
    frame.kind = frameKind;
    frame.turns = {0_deg};
    for (const char* kind : {"full-zip-hoodie", "soft-jacket", "vest"}) {
      CAPTURE(kind, nameOf(frameKind));
      const Plan made =
          planWith({frame}, sample::design("d", 60_mm, 40_mm), kind, "centre-chest", {"M"});
      const PlacementPlan& plan = planFor(made, "M");
      CHECK_FALSE(plan.frame.has_value());
      const FrameRejection& rejection = rejectionOf(plan, "A");
      CHECK(rejection.test == FrameTest::ClearOfKeepOut);
      CHECK_THAT(rejection.what, Catch::Contains("its body meets the zip"));
      const double zip = plan.garment->measures.at(Measure::ZipWidth).value.mm();
      CHECK(rejection.missing.mm() == Approx(65.0 + zip / 2.0 - 10.0).margin(0.1));
    }
  }
}
