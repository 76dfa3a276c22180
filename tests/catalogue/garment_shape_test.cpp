// SPDX-License-Identifier: MIT
// Drawn panels against the measures they are drawn from.
#include <catch2/catch.hpp>
#include <cmath>

#include "catalogue/garment_sizes.h"

using namespace creaseline;
using namespace creaseline::garment_test;

namespace {

// Twice the enclosed area; positive for a walk that is clockwise to the viewer (+y down).
double signedArea(const Ring& ring) {
  double sum = 0.0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    sum += cross(ring[i], ring[(i + 1) % ring.size()]);
  }
  return sum;
}

bool hasPoint(const Ring& ring, Point wanted) {
  return std::any_of(ring.begin(), ring.end(),
                     [wanted](Point point) { return norm(point - wanted) < 1e-9; });
}

bool isBody(const PanelShape& panel) {
  return panel.name == PanelName::Front || panel.name == PanelName::Back;
}

bool isSleeve(const PanelShape& panel) {
  return creaseline::isSleeve(panel.name);
}

}  // namespace

TEST_CASE("every kind draws all of its panels in every size band", "[garment]") {
  REQUIRE(shippedRules().kinds.size() == 23);
  for (const GarmentKind& kind : shippedRules().kinds) {
    for (const ChartSize& size : usualSizes()) {
      CAPTURE(kind.id.text(), size.name.text());
      const GarmentShape shape = drawn(kind, size);
      CHECK(shape.kind == kind.id);
      CHECK(shape.size == size.name);
      CHECK(shape.band == size.band);
      CHECK(shape.panels.size() == kind.panels.size());
      for (const PanelName name : kind.panels) {
        REQUIRE(shape.panel(name) != nullptr);
        CHECK(shape.panel(name)->name == name);
        CHECK(shape.panel(name)->insideSeen == kind.showsInside(name));
      }
      CHECK((shape.panel(PanelName::Hood) != nullptr) == (kind.neck == NeckForm::Hood));
    }
  }
}

TEST_CASE("outlines are simple, clockwise, symmetric, and name every side", "[garment]") {
  forEveryPanel([](const GarmentKind&, const GarmentShape&, const PanelShape& panel) {
    REQUIRE(panel.outline.size() >= 4);
    CHECK(panel.sides.size() == panel.outline.size());
    CHECK_FALSE(selfCrossing(panel.outline).has_value());
    CHECK(signedArea(panel.outline) > 0.0);
    bool symmetric = true;
    for (const Point point : panel.outline) {
      symmetric = symmetric && hasPoint(panel.outline, {-point.x, point.y});
    }
    CHECK(symmetric);
    for (std::size_t i = 0; i < panel.sides.size(); ++i) {
      const Point a = panel.outline[i];
      const Point b = panel.outline[(i + 1) % panel.outline.size()];
      if (panel.sides[i].viewerRight) {
        CHECK(std::min(a.x, b.x) >= 0.0);
      }
      if (panel.sides[i].name == EdgeName::CollarSeam || panel.sides[i].name == EdgeName::Armhole ||
          panel.sides[i].name == EdgeName::NeckSeam) {
        CHECK(norm(b - a) <= 4.0 + 1e-9);
      }
    }
  });
}

TEST_CASE("a front or back lies on its points of measure", "[garment]") {
  forEveryPanel([](const GarmentKind& kind, const GarmentShape& shape, const PanelShape& panel) {
    if (!isBody(panel)) {
      return;
    }
    const double drop = millimetres(
        shape, panel.name == PanelName::Front ? Measure::FrontNeckDrop : Measure::BackNeckDrop);
    const Box box = ringBounds(panel.outline);
    CHECK(box.width() == Approx(millimetres(shape, Measure::BodyWidth)));
    CHECK(box.min.y == Approx(-drop));
    CHECK(box.height() == Approx(millimetres(shape, Measure::BodyLength)));
    CHECK(panel.centreBackOrFront.mm() == Approx(box.max.y));
    CHECK(panel.wornUp == Angle());

    const Polyline collar = cornersOf(panel, EdgeName::CollarSeam, true);
    CHECK(collar.front() == Point{0.0, 0.0});
    CHECK(std::all_of(collar.begin(), collar.end(), [](Point p) { return p.y <= 0.0; }));
    CHECK(collar.back().x == Approx(millimetres(shape, Measure::NeckWidth) / 2.0));
    CHECK(collar.back().y == Approx(-drop));

    const Polyline shoulder = cornersOf(panel, EdgeName::ShoulderSeam, true);
    REQUIRE(shoulder.size() == 2);
    CHECK(shoulder[1].x == Approx(millimetres(shape, Measure::ShoulderWidth) / 2.0));
    CHECK(shoulder[1].y - shoulder[0].y == Approx(millimetres(shape, Measure::ShoulderDrop)));

    const Polyline side = cornersOf(panel, EdgeName::SideSeam, true);
    REQUIRE(side.size() == 2);
    CHECK(side[0].y == Approx(millimetres(shape, Measure::ArmholeDepth) - drop));
    const bool legs = kind.hem == HemForm::Legs;
    CHECK(side[1].y == Approx(box.max.y - (legs ? millimetres(shape, Measure::LegRise) : 0.0)));
    const Polyline hem = cornersOf(panel, EdgeName::Hem, false);
    REQUIRE(hem.size() == 2);
    CHECK(norm(hem[1] - hem[0]) ==
          Approx(millimetres(shape, legs ? Measure::CrotchWidth : Measure::BodyWidth)));
    CHECK(cornersOf(panel, EdgeName::LegOpening, true).empty() != legs);
    const bool sleeves = kind.sleeve != SleeveForm::None;
    CHECK(cornersOf(panel, EdgeName::Armhole, true).empty() != sleeves);
    CHECK(cornersOf(panel, EdgeName::ArmOpening, true).empty() == sleeves);
    CHECK(cornersOf(panel, EdgeName::SideSeam, false).size() == 2);
  });
}

TEST_CASE("a flat piece lies on its measures and ends as its kind says", "[garment]") {
  forEveryPanel([](const GarmentKind& kind, const GarmentShape& shape, const PanelShape& panel) {
    REQUIRE((panel.name == PanelName::Flat) == (kind.form == KindForm::Flat));
    if (panel.name != PanelName::Flat) {
      return;
    }
    const Box cloth = ringBounds(panel.outline);
    CHECK(cloth.width() == Approx(millimetres(shape, Measure::BodyWidth)));
    CHECK(cloth.min.y == 0.0);
    CHECK(cloth.max.y == Approx(millimetres(shape, Measure::BodyLength)));
    CHECK(panel.wornUp == Angle());
    const Polyline top = cornersOf(panel, EdgeName::TopEdge, false);
    REQUIRE(top.size() == 2);
    CHECK(norm(top[1] - top[0]) == Approx(millimetres(shape, Measure::TopWidth)));
    const Polyline bottom = cornersOf(panel, kind.flat.bottom, false);
    REQUIRE(bottom.size() == 2);
    CHECK(bottom[0].y == Approx(cloth.max.y));
    CHECK(norm(bottom[1] - bottom[0]) == Approx(cloth.width()));
    CHECK_FALSE(cornersOf(panel, kind.flat.sides, true).empty());
    CHECK(isConvex(panel.outline) == (kind.id != KindId("apron")));  // its bib is cut in
    // The band of a towel: two edges, as far apart as it is high.
    std::vector<double> edges;
    for (const KeepOut& keepOut : panel.keepOuts) {
      if (keepOut.name == KeepOutName::BorderEdge) {
        edges.push_back(ringBounds(keepOut.area).centre().y);
      }
    }
    REQUIRE(edges.size() == (kind.flat.border ? 2 : 0));
    if (kind.flat.border) {
      CHECK(edges[1] - edges[0] == Approx(millimetres(shape, Measure::BorderHeight)));
      CHECK(cloth.max.y - edges[1] == Approx(millimetres(shape, Measure::BorderAboveHem)));
    }
  });
}

TEST_CASE("a leg lies on its measures, its outer side where the wearer has it", "[garment]") {
  forEveryPanel([](const GarmentKind&, const GarmentShape& shape, const PanelShape& panel) {
    if (!isLeg(panel.name)) {
      return;
    }
    const double rise = millimetres(shape, Measure::FrontRise);
    const Box cloth = ringBounds(panel.outline);
    CHECK(cloth.min.y == 0.0);
    CHECK(cloth.max.y == Approx(millimetres(shape, Measure::BodyLength)));
    CHECK(cloth.width() == Approx(millimetres(shape, Measure::ThighWidth)));
    CHECK(panel.wornUp == Angle());
    const Polyline waist = cornersOf(panel, EdgeName::WaistSeam, false);
    REQUIRE(waist.size() == 2);
    // Each leg has half of the waist's front.
    CHECK(2.0 * norm(waist[1] - waist[0]) == Approx(millimetres(shape, Measure::WaistWidth)));
    const Polyline hem = cornersOf(panel, EdgeName::Hem, false);
    REQUIRE(hem.size() == 2);
    CHECK(norm(hem[1] - hem[0]) == Approx(millimetres(shape, Measure::LegHemWidth)));
    // The wearer's left leg is on the viewer's right, so its outer side is there too.
    const bool outerIsRight = panel.name == PanelName::LeftLeg;
    CHECK_FALSE(cornersOf(panel, EdgeName::SideSeam, outerIsRight).empty());
    CHECK(cornersOf(panel, EdgeName::SideSeam, !outerIsRight).empty());
    for (const Point point : cornersOf(panel, EdgeName::CrotchSeam, !outerIsRight)) {
      CHECK(point.y <= rise + 1e-9);
    }
    const Polyline inseam = cornersOf(panel, EdgeName::Inseam, !outerIsRight);
    REQUIRE(inseam.size() == 2);
    CHECK(std::min(inseam[0].y, inseam[1].y) == Approx(rise));
  });
}

TEST_CASE("a V-neck's front runs straight from its point", "[garment]") {
  const GarmentShape shape = drawn(kindNamed("scrub-top"), chartSize("M", SizeBand::Adult, 53, 72));
  const Polyline front = cornersOf(*shape.panel(PanelName::Front), EdgeName::CollarSeam, true);
  const Point end = front.back();
  // Over its lower half it leaves the straight line to the shoulder by less than 5 mm.
  for (const Point point : front) {
    if (point.y > end.y / 2.0) {
      CHECK(std::abs(cross(end, point)) / norm(end) < 5.0);
    }
  }
  // The back of the same garment is a dish: level where the front is steep.
  const Polyline back = cornersOf(*shape.panel(PanelName::Back), EdgeName::CollarSeam, true);
  CHECK(std::abs(back[1].y) < 0.2 * std::abs(back[1].x));
}

TEST_CASE("a sleeve is half its tube, from the cuff edge to the shoulder", "[garment]") {
  forEveryPanel([](const GarmentKind&, const GarmentShape& shape, const PanelShape& panel) {
    if (!isSleeve(panel)) {
      return;
    }
    const Box box = ringBounds(panel.outline);
    CHECK(box.min.y == 0.0);
    CHECK(box.max.y == Approx(millimetres(shape, Measure::SleeveLength)));
    CHECK(box.width() == Approx(millimetres(shape, Measure::SleeveWidth)));
    const Polyline cuff = cornersOf(panel, EdgeName::CuffEdge, false);
    REQUIRE(cuff.size() == 2);
    CHECK(norm(cuff[1] - cuff[0]) == Approx(millimetres(shape, Measure::CuffWidth)));
    CHECK(hasPoint(panel.outline, {0.0, millimetres(shape, Measure::SleeveLength)}));
    CHECK(panel.wornUp == Angle::fromDegrees(180.0));
    CHECK_FALSE(cornersOf(panel, EdgeName::Fold, true).empty());
    CHECK_FALSE(cornersOf(panel, EdgeName::Armhole, true).empty());
  });
}

TEST_CASE("a hood is as wide as it is high at the face edge and ends at the neck", "[garment]") {
  forEveryPanel([](const GarmentKind&, const GarmentShape& shape, const PanelShape& panel) {
    if (panel.name != PanelName::Hood) {
      return;
    }
    const double height = millimetres(shape, Measure::HoodHeight);
    const double depth = millimetres(shape, Measure::HoodDepth);
    const Polyline face = cornersOf(panel, EdgeName::FaceEdge, false);
    REQUIRE(face.size() == 2);
    CHECK(face[0].y == 0.0);
    CHECK(norm(face[1] - face[0]) == Approx(height));
    CHECK(ringBounds(panel.outline).width() == Approx(height));
    const Polyline neck = cornersOf(panel, EdgeName::NeckSeam, true);
    CHECK(neck.front().x == Approx(millimetres(shape, Measure::NeckWidth) / 2.0));
    CHECK(neck.back().y == Approx(panel.centreBackOrFront.mm()));
    CHECK(panel.centreBackOrFront.mm() < depth + height);
    CHECK(panel.centreBackOrFront.mm() > std::hypot(depth, height));
    CHECK(panel.wornUp == Angle::fromDegrees(180.0));
    CHECK(panel.insideSeen);
  });
}

TEST_CASE("each kind keeps frame and needle off what it has sewn on", "[garment]") {
  const auto areasOf = [](const PanelShape& panel, KeepOutName name) {
    std::vector<Box> boxes;
    for (const KeepOut& keepOut : panel.keepOuts) {
      if (keepOut.name == name) {
        boxes.push_back(ringBounds(keepOut.area));
      }
    }
    return boxes;
  };
  forEveryPanel([&](const GarmentKind& kind, const GarmentShape& shape, const PanelShape& panel) {
    const bool front = panel.name == PanelName::Front;
    const Box cloth = ringBounds(panel.outline);
    CHECK(areasOf(panel, KeepOutName::CollarSeam).empty() != isBody(panel));

    const auto ribs = areasOf(panel, KeepOutName::HemRib);
    REQUIRE(ribs.size() == (isBody(panel) && kind.hemRib ? 1 : 0));
    for (const Box& rib : ribs) {
      CHECK(rib.height() == Approx(millimetres(shape, Measure::RibHeight)));
      CHECK(rib.max.y == Approx(cloth.max.y));
    }

    const bool cuffed = isSleeve(panel) && millimetres(shape, Measure::CuffHeight) > 0.0;
    const bool band = kind.cuff == CuffForm::Band;
    const auto cuffs = areasOf(panel, KeepOutName::CuffRib);
    REQUIRE(cuffs.size() == (cuffed && !band ? 1 : 0));
    for (const Box& cuff : cuffs) {
      CHECK(cuff.max.y == Approx(millimetres(shape, Measure::CuffHeight)));
    }
    const auto cuffSeams = areasOf(panel, KeepOutName::CuffSeam);
    REQUIRE(cuffSeams.size() == (cuffed && band ? 1 : 0));
    for (const Box& seam : cuffSeams) {
      CHECK(seam.centre().y == Approx(millimetres(shape, Measure::CuffHeight)));
    }
    const auto yokes = areasOf(panel, KeepOutName::YokeSeam);
    REQUIRE(yokes.size() == (panel.name == PanelName::Back && kind.yoke ? 1 : 0));
    for (const Box& yoke : yokes) {
      CHECK(yoke.centre().y == Approx(millimetres(shape, Measure::YokeDepth)));
    }
    const auto snaps = areasOf(panel, KeepOutName::Snaps);
    REQUIRE(snaps.size() == (isBody(panel) && kind.hem == HemForm::Legs ? 1 : 0));
    for (const Box& snap : snaps) {
      CHECK(snap.max.y == Approx(cloth.max.y));
      CHECK(snap.width() == Approx(millimetres(shape, Measure::CrotchWidth)));
    }

    const bool throughZip = kind.opening == FrontOpening::FullZip;
    const auto zips = areasOf(panel, KeepOutName::Zip);
    REQUIRE(zips.size() ==
            (front && (throughZip || kind.opening == FrontOpening::QuarterZip) ? 1 : 0));
    for (const Box& zip : zips) {
      CHECK(zip.width() == Approx(millimetres(shape, Measure::ZipWidth)));
      CHECK(zip.min.y == 0.0);
      CHECK(zip.max.y == Approx(throughZip ? cloth.max.y : millimetres(shape, Measure::ZipLength)));
    }

    const bool shortPlacket = kind.opening == FrontOpening::Placket;
    const bool throughPlacket =
        kind.opening == FrontOpening::Buttons || kind.opening == FrontOpening::Wrap;
    const auto plackets = areasOf(panel, KeepOutName::Placket);
    REQUIRE(plackets.size() == (front && (shortPlacket || throughPlacket) ? 1 : 0));
    for (const Box& placket : plackets) {
      CHECK(placket.width() == Approx(millimetres(shape, Measure::PlacketWidth)));
      CHECK(placket.max.y ==
            Approx(shortPlacket ? millimetres(shape, Measure::PlacketLength) : cloth.max.y));
    }
  });
}

TEST_CASE("each pocket keeps needles off where its measures say", "[garment]") {
  forEveryPanel([](const GarmentKind& kind, const GarmentShape& shape, const PanelShape& panel) {
    std::vector<Box> pockets;
    for (const KeepOut& keepOut : panel.keepOuts) {
      if (keepOut.name == KeepOutName::PocketEdge) {
        pockets.push_back(ringBounds(keepOut.area));
      }
    }
    if (panel.name != PanelName::Front || kind.pocket == PocketForm::None) {
      CHECK(pockets.empty());
      return;
    }
    const double width = millimetres(shape, Measure::PocketWidth);
    const double height = millimetres(shape, Measure::PocketHeight);
    if (kind.pocket == PocketForm::Chest) {
      REQUIRE(pockets.size() == 4);  // hem, both sides, bottom
      Box whole;
      for (const Box& edge : pockets) {
        whole.add(edge.min);
        whole.add(edge.max);
      }
      CHECK(whole.width() == Approx(width));
      CHECK(whole.height() == Approx(height));
      // The wearer's left is the viewer's right.
      CHECK(whole.min.x > 0.0);
      CHECK(whole.centre().x == Approx(millimetres(shape, Measure::PocketFromCentre)));
      CHECK(whole.min.y == Approx(millimetres(shape, Measure::PocketBelowHps) -
                                  millimetres(shape, Measure::FrontNeckDrop)));
      return;
    }
    const bool side = kind.pocket == PocketForm::Side;
    REQUIRE(pockets.size() == (kind.pocket == PocketForm::Kangaroo ? 1 : 2));
    for (const Box& pocket : pockets) {
      const double farthest = std::max(-pocket.min.x, pocket.max.x);
      CHECK(pocket.height() == Approx(height));
      CHECK(ringBounds(panel.outline).max.y - pocket.max.y ==
            Approx(millimetres(shape, Measure::PocketAboveHem)));
      CHECK(farthest == Approx((side ? millimetres(shape, Measure::BodyWidth) : width) / 2.0));
      if (side) {
        CHECK(pocket.width() == Approx(width));
      }
    }
  });
}

TEST_CASE("a pocket as wide at the top as at the bottom is still convex", "[garment]") {
  ChartSize size = chartSize("M", SizeBand::Adult, 56, 70);
  size.measures[Measure::PocketWidth] = Length::fromMm(300.0);
  size.measures[Measure::PocketTopWidth] = Length::fromMm(300.0);
  for (const char* kind : {"pullover-hoodie", "full-zip-hoodie"}) {
    const GarmentShape shape = drawn(kindNamed(kind), size);
    for (const KeepOut& keepOut : shape.panel(PanelName::Front)->keepOuts) {
      CHECK(isConvex(keepOut.area));
    }
  }
}

TEST_CASE("drawing lines are there and a sleeve's cuff hangs clear of the body", "[garment]") {
  forEveryPanel([](const GarmentKind&, const GarmentShape&, const PanelShape& panel) {
    CHECK_FALSE(panel.details.empty());
    for (const Detail& detail : panel.details) {
      REQUIRE(detail.line.size() >= (detail.closed ? 3 : 2));
      CHECK(std::all_of(detail.line.begin(), detail.line.end(), [](Point point) {
        return std::isfinite(point.x) && std::isfinite(point.y);
      }));
      const bool slanted = detail.line.size() == 2 && detail.line[0].x != detail.line[1].x &&
                           detail.line[0].y != detail.line[1].y;
      if (isBody(panel) && slanted) {  // only the lines of a hanging cuff slant
        CHECK_FALSE(contains(panel.outline, detail.line[0]));
        CHECK_FALSE(contains(panel.outline, detail.line[1]));
      }
    }
  });
}

TEST_CASE("a larger size is larger in every measure", "[garment]") {
  for (const GarmentKind& kind : shippedRules().kinds) {
    const std::vector<ChartSize> sizes = usualSizes();
    for (std::size_t i = 1; i < sizes.size(); ++i) {
      const GarmentShape smaller = drawn(kind, sizes[i - 1]);
      const GarmentShape larger = drawn(kind, sizes[i]);
      CAPTURE(kind.id.text(), sizes[i - 1].name.text(), sizes[i].name.text());
      for (const auto& [measure, value] : smaller.measures) {
        CAPTURE(nameOf(measure));
        CHECK(value.value <= larger.measures.at(measure).value);
      }
      for (const auto& [name, panel] : smaller.panels) {
        CAPTURE(nameOf(name));
        CHECK(ringArea(panel.outline) < ringArea(larger.panel(name)->outline));
      }
    }
  }
}
