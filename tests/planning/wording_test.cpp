// SPDX-License-Identifier: MIT
// The plan's numbers in words: sides, turns, rounding.
#include "creaseline/planning/wording.h"

#include <catch2/catch.hpp>

#include "plan_samples.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::samples::kInches;
using creaseline::samples::kMillimetres;

namespace {

PlacementPlan onPanel(PanelName panel, Length lateral) {
  PlacementPlan plan = samples::placement();
  plan.panel = panel;
  plan.placed.lateral = lateral;
  return plan;
}

PlacementPlan turnedOn(PanelName panel, Angle turn, Angle panelTurn) {
  PlacementPlan plan = samples::placement();
  plan.panel = panel;
  plan.placed.turn = turn;
  plan.placed.panelTurn = panelTurn;
  return plan;
}

std::vector<SizeName> sizes(std::initializer_list<const char*> names) {
  std::vector<SizeName> list;
  for (const char* name : names) {
    list.emplace_back(name);
  }
  return list;
}

}  // namespace

TEST_CASE("a design on the centre line is said to be on the crease", "[wording]") {
  CHECK(lateralPhrase(onPanel(PanelName::Front, 0_mm), kInches) == "on the centre crease");
  CHECK(lateralPhrase(onPanel(PanelName::LeftSleeve, 0_mm), kInches) ==
        "on the fold of the sleeve");
  // Less than half a mark is nothing on this ruler.
  CHECK(lateralPhrase(onPanel(PanelName::Front, 1_mm), kInches) == "on the centre crease");
}

TEST_CASE("left and right are the wearer's, and the viewer's side is said too", "[wording]") {
  CHECK(lateralPhrase(onPanel(PanelName::Front, 3.5_in), kInches) ==
        "3 1/2 in to the wearer's left of the centre crease (viewer's right)");
  CHECK(lateralPhrase(onPanel(PanelName::Front, -3.5_in), kInches) ==
        "3 1/2 in to the wearer's right of the centre crease (viewer's left)");
  CHECK(lateralPhrase(onPanel(PanelName::Back, 20_mm), kMillimetres) ==
        "20 mm to the wearer's right of the centre crease (viewer's right)");
  CHECK(lateralPhrase(onPanel(PanelName::Hood, -20_mm), kMillimetres) ==
        "20 mm to the wearer's left of the centre crease (viewer's left)");
}

TEST_CASE("on a sleeve sideways is towards the garment's front or back", "[wording]") {
  // Cuff on top: the left sleeve, seen from outside, has the garment's front on the viewer's right.
  CHECK(lateralPhrase(onPanel(PanelName::LeftSleeve, 12_mm), kMillimetres) ==
        "12 mm from the fold of the sleeve towards the front of the garment");
  CHECK(lateralPhrase(onPanel(PanelName::RightSleeve, 12_mm), kMillimetres) ==
        "12 mm from the fold of the sleeve towards the back of the garment");
}

TEST_CASE("the middle of a zip stands in for the crease", "[wording]") {
  auto garment = std::make_shared<GarmentShape>();
  PanelShape front;
  front.name = PanelName::Front;
  front.keepOuts = {{KeepOutName::Zip, {}, true, true, false}};
  garment->panels[PanelName::Front] = front;
  PlacementPlan plan = onPanel(PanelName::Front, 4_in);
  plan.garment = garment;
  CHECK(lateralPhrase(plan, kInches) ==
        "4 in to the wearer's left of the middle of the zip (viewer's right)");
}

TEST_CASE("a turn says which way the top of the design points", "[wording]") {
  CHECK(turnPhrase(turnedOn(PanelName::Front, Angle(), Angle())) ==
        "none, top of the design towards the collar seam");
  CHECK(turnPhrase(turnedOn(PanelName::Hood, 180_deg, Angle())) ==
        "none with the face edge on top, top of the design towards the face edge");
  CHECK(turnPhrase(turnedOn(PanelName::Hood, -90_deg, 90_deg)) ==
        "90° clockwise with the face edge on top, top of the design towards the wearer's right "
        "(viewer's right)");
  CHECK(turnPhrase(turnedOn(PanelName::Hood, Angle(), 180_deg)) ==
        "180° with the face edge on top, top of the design towards the neck seam");
  CHECK(turnPhrase(turnedOn(PanelName::Front, 180_deg, 180_deg)) ==
        "180° against upright as worn, top of the design towards the hem");
  CHECK(turnPhrase(turnedOn(PanelName::LeftSleeve, Angle(), 180_deg)) ==
        "none, top of the design towards the shoulder");
  CHECK(turnPhrase(turnedOn(PanelName::Front, 90_deg, 90_deg)) ==
        "90° clockwise, top of the design towards the wearer's left (viewer's right)");
  CHECK(turnPhrase(turnedOn(PanelName::Back, -90_deg, -90_deg)) ==
        "90° anticlockwise, top of the design towards the wearer's left (viewer's left)");
  CHECK(turnPhrase(turnedOn(PanelName::Front, 15_deg, 15_deg)) ==
        "15° clockwise, top of the design mostly towards the collar seam");
}

TEST_CASE("the drop names the side of the design that is nearest to the landmark", "[wording]") {
  CHECK(nearSidePhrase(turnedOn(PanelName::Front, Angle(), Angle())) == "top of the design");
  CHECK(nearSidePhrase(turnedOn(PanelName::LeftSleeve, Angle(), 180_deg)) ==
        "bottom of the design");
  CHECK(nearSidePhrase(turnedOn(PanelName::Front, 90_deg, 90_deg)) == "left side of the design");
  CHECK(nearSidePhrase(turnedOn(PanelName::Front, -90_deg, -90_deg)) == "right side of the design");
  CHECK(nearSidePhrase(turnedOn(PanelName::Front, 10_deg, 10_deg)) ==
        "nearest point of the design");
  PlacementPlan fromShoulder = turnedOn(PanelName::LeftSleeve, Angle(), 180_deg);
  fromShoulder.placed.from = Landmark::ShoulderSeam;
  CHECK(nearSidePhrase(fromShoulder) == "top of the design");
}

TEST_CASE("room is never rounded up", "[wording]") {
  CHECK(roomPhrase(0_mm, kInches) == "none");
  CHECK(roomPhrase(3_mm, kInches) == "under 1/8 in");
  CHECK(roomPhrase(1_in, kInches) == "1 in");
  CHECK(roomPhrase(25_mm, kInches) == "7/8 in");  // nearest mark is 1 in, 25.4 mm
  CHECK(roomPhrase(0.9_mm, kMillimetres) == "under 1 mm");
  CHECK(roomPhrase(7.9_mm, kMillimetres) == "7 mm");
}

TEST_CASE("room rounded down to a mark never exceeds the room, and loses less than a mark",
          "[wording][property]") {
  const UnitChoice sixteenths{LengthUnit::Inch, RulerMark::Sixteenth,
                              WeightUnit::GramsPerSquareMetre};
  for (const UnitChoice& units : {kInches, kMillimetres, sixteenths}) {
    const Length mark = units.length == LengthUnit::Millimetre ? 1_mm
                        : units.mark == RulerMark::Sixteenth   ? 0.0625_in
                                                               : 0.125_in;
    for (int tenths = 40; tenths < 3000; tenths += 7) {
      const Length room = Length::fromMm(tenths / 10.0);
      CAPTURE(tenths, static_cast<int>(units.mark));
      const Length shown = parseLength(roomPhrase(room, units)).value();
      CHECK(shown <= room);
      CHECK(room - shown < mark);
    }
  }
}

TEST_CASE("slack lists four sides and the turn, each rounded down", "[wording]") {
  const Slack slack{6.4_mm, 6_mm, 8.99_mm, 0.5_mm, Angle::fromDegrees(2.19)};
  CHECK(slackPhrase(slack, kMillimetres) ==
        "left 6 mm, right 6 mm, up 8 mm, down under 1 mm, turned 2.1°");
}

TEST_CASE("sizes of things carry their unit once", "[wording]") {
  CHECK(sizePhrase(200_mm, 230_mm, kMillimetres) == "200 × 230 mm");
  CHECK(sizePhrase(8_in, 9.5_in, kInches) == "8 × 9 1/2 in");
}

TEST_CASE("a window is never said larger than it is", "[wording]") {
  // 130 mm are 5.118 in: nearest to 5 1/8, but only 5 in are open.
  CHECK(windowPhrase(*Window::rectangle(130_mm, 5.125_in), kInches) == "5 × 5 1/8 in");
  CHECK(windowPhrase(*Window::ellipse(99.9_mm, 100_mm), kMillimetres) == "99 × 100 mm");
  const Shop shop = samples::shop();
  Frame frame = shop.frames[0];
  frame.window = *Window::rectangle(130_mm, 180_mm);
  CHECK(framePhrase(frame, *samples::placement().frame, kInches) ==
        "Large magnetic (5 × 7 in window)");
}

TEST_CASE("a frame is named with its window, and its turn if it is turned", "[wording]") {
  const Shop shop = samples::shop();
  FrameChoice choice = *samples::placement().frame;
  CHECK(framePhrase(shop.frames[0], choice, kMillimetres) ==
        "Large magnetic (200 × 230 mm window)");
  choice.turn = 90_deg;
  CHECK(framePhrase(shop.frames[0], choice, kMillimetres) ==
        "Large magnetic (200 × 230 mm window), turned 90° on the garment");
}

TEST_CASE("backing and needle are said as one asks for them", "[wording]") {
  BackingChoice backing = samples::placement().backing;
  CHECK(backingPhrase(backing, kInches) == "cut-away, at least 85 g/m², 1 layer, floated");
  CHECK(needlePhrase(backing) == "75 ball point");
  backing.layers = 2;
  backing.needleSize = 90;
  backing.needlePoint = NeedlePoint::LightBall;
  CHECK(backingPhrase(backing, kInches) == "cut-away, at least 85 g/m², 2 layers, floated");
  CHECK(needlePhrase(backing) == "90 light ball point");
}

TEST_CASE("sides of a location are the wearer's and the viewer's", "[wording]") {
  CHECK(sidePhrase({LocationId("left-chest"), "Left chest", PanelName::Front, Side::Left,
                    Side::Right}) == "front, wearer's left (viewer's right)");
  CHECK(sidePhrase({LocationId("full-back"), "Full back", PanelName::Back, Side::Centre,
                    Side::Centre}) == "back, centre");
  CHECK(sidePhrase({LocationId("left-sleeve"), "Left sleeve", PanelName::LeftSleeve, Side::Left,
                    Side::Right}) == "left sleeve");
}

TEST_CASE("a difference is never said to be nothing", "[wording]") {
  CHECK(differencePhrase(1_mm, kInches) == "under 1/8 in");
  CHECK(differencePhrase(2_mm, kInches) == "1/8 in");
  CHECK(differencePhrase(0.2_mm, kMillimetres) == "under 1 mm");
  CHECK(differencePhrase(35.2_mm, kMillimetres) == "35 mm");
}

TEST_CASE("sizes come in the chart's order, four neighbours and more as a range", "[wording]") {
  const SizeChart chart = samples::chart();
  CHECK(sizesPhrase(sizes({"YM", "YS"}), chart) == "YS YM");
  CHECK(sizesPhrase(sizes({"S", "M", "L"}), chart) == "S M L");
  CHECK(sizesPhrase(sizes({"XL", "L", "M", "S"}), chart) == "S to XL");
  CHECK(sizesPhrase(sizes({"YS", "S", "M", "L", "XL"}), chart) == "YS, S to XL");
  CHECK(sizesPhrase(sizes({"YS", "YM", "S", "M", "L", "XL", "2XL"}), chart) == "YS to 2XL");
  CHECK(sizesPhrase(sizes({"M", "6XL", "6XL"}), chart) == "M 6XL");
  CHECK(sizesPhrase({}, chart).empty());
}

TEST_CASE("every enumerator has words", "[wording]") {
  for (const auto& entry : EnumNames<Landmark>::names) {
    CHECK_FALSE(landmarkPhrase(entry.first).empty());
  }
  CHECK(measurePhrase(Measure::FrontNeckDrop) == "front neck drop");
  CHECK(panelPhrase(PanelName::LeftSleeve) == "left sleeve");
  CHECK(edgePhrase(EdgeName::SideSeam) == "side seam");
  CHECK(keepOutPhrase(KeepOutName::PocketEdge) == "pocket edge");
}
