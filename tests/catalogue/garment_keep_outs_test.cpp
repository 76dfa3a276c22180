// SPDX-License-Identifier: MIT
// Where frame and needle must not go, and what a ring in a pocket meets.
#include <catch2/catch.hpp>

#include "catalogue/garment_sizes.h"

using namespace creaseline;
using namespace creaseline::garment_test;

namespace {

std::vector<Box> areasNamed(const PanelShape& panel, KeepOutName name) {
  std::vector<Box> boxes;
  for (const KeepOut& keepOut : panel.keepOuts) {
    if (keepOut.name == name) {
      boxes.push_back(ringBounds(keepOut.area));
    }
  }
  return boxes;
}

}  // namespace

TEST_CASE("keep-outs are convex and lie on their panel", "[garment][keep-out]") {
  forEveryPanel([](const GarmentKind& kind, const GarmentShape&, const PanelShape& panel) {
    for (const KeepOut& keepOut : panel.keepOuts) {
      INFO(nameOf(keepOut.name));
      CHECK(isConvex(keepOut.area));
      CHECK(keepOut.needle);
      // Rings may hold a soft cuff rib, a flat seam or border, a flat patch pocket, a soft tunnel
      // and the edge of a pocket whose bag is pinned back (common practice, no source).
      const bool flat =
          keepOut.name == KeepOutName::CuffRib || keepOut.name == KeepOutName::BorderEdge ||
          keepOut.name == KeepOutName::CuffSeam || keepOut.name == KeepOutName::YokeSeam ||
          keepOut.name == KeepOutName::DrawcordTunnel ||
          keepOut.name == KeepOutName::PocketOpening ||
          (keepOut.name == KeepOutName::PocketEdge && kind.pocket == PocketForm::Chest);
      CHECK(keepOut.frame != flat);
      if (keepOut.name == KeepOutName::Eyelet) {
        continue;  // in the hood, beyond the front's collar seam
      }
      for (std::size_t i = 0; i < keepOut.area.size(); ++i) {
        const Point a = keepOut.area[i];
        const Point b = keepOut.area[(i + 1) % keepOut.area.size()];
        // Chords of the collar strip leave the curve by less than 1 mm.
        CHECK(insideWithin(panel.outline, a, 1e-6));
        CHECK(insideWithin(panel.outline, (a + b) * 0.5, 1.0));
      }
    }
  });
}

TEST_CASE("a hood with a cord keeps needles off its tunnel, and its eyelets lie in the hood",
          "[garment][keep-out]") {
  int hoods = 0;
  forEveryPanel(
      [&hoods](const GarmentKind& kind, const GarmentShape& shape, const PanelShape& panel) {
        const auto tunnels = areasNamed(panel, KeepOutName::DrawcordTunnel);
        const auto eyelets = areasNamed(panel, KeepOutName::Eyelet);
        REQUIRE(tunnels.size() == (kind.drawcord && panel.name == PanelName::Hood ? 1 : 0));
        REQUIRE(eyelets.size() == (kind.drawcord && panel.name == PanelName::Front ? 2 : 0));
        for (const Box& tunnel : tunnels) {
          ++hoods;
          CHECK(tunnel.min.y == 0.0);  // along the whole face edge
          CHECK(tunnel.width() == Approx(millimetres(shape, Measure::HoodHeight)));
        }
        if (eyelets.size() == 2) {
          CHECK(eyelets[0].centre().x == Approx(-eyelets[1].centre().x));
          for (const Box& eyelet : eyelets) {
            CHECK_FALSE(contains(panel.outline, {eyelet.centre().x, eyelet.max.y}));
            CHECK(eyelet.max.y < 0.0);
            CHECK(std::abs(eyelet.centre().x) < millimetres(shape, Measure::NeckWidth) / 2.0);
          }
        }
      });
  CHECK(hoods > 0);
}

TEST_CASE("a fly lies along the crotch seam of both legs and pockets open at the outer sides",
          "[garment][keep-out]") {
  int legs = 0;
  forEveryPanel(
      [&legs](const GarmentKind& kind, const GarmentShape& shape, const PanelShape& panel) {
        const auto flies = areasNamed(panel, KeepOutName::Fly);
        const auto pockets = areasNamed(panel, KeepOutName::PocketOpening);
        REQUIRE(flies.size() == (kind.legs.fly ? 1 : 0));
        REQUIRE(pockets.size() == (kind.legs.sidePockets ? 1 : 0));
        if (!isLeg(panel.name)) {
          return;
        }
        // On the wearer's left leg the inner side is at the viewer's left.
        const double inner = panel.name == PanelName::LeftLeg ? -1.0 : 1.0;
        for (const Box& fly : flies) {
          ++legs;
          CHECK(fly.centre().x * inner > 0.0);
          CHECK(fly.min.y == 0.0);
          CHECK(fly.max.y < millimetres(shape, Measure::FrontRise));
          CHECK(fly.max.y > millimetres(shape, Measure::FrontRise) / 2.0);
        }
        for (const Box& pocket : pockets) {
          CHECK(pocket.centre().x * inner < 0.0);
          CHECK(pocket.max.y < millimetres(shape, Measure::FrontRise));
        }
      });
  CHECK(legs > 0);
}

TEST_CASE("a ring in a chest pocket may pass its hem and nothing else of it",
          "[garment][keep-out]") {
  for (const char* id : {"button-up-shirt", "scrub-top", "robe"}) {
    for (const ChartSize& size : usualSizes()) {
      CAPTURE(id, size.name.text());
      const GarmentShape shape = drawn(kindNamed(id), size);
      const PanelShape* alone = shape.hooped(PanelName::Front, LocationId("on-pocket"));
      const PanelShape* whole = shape.hooped(PanelName::Front, LocationId("left-chest"));
      REQUIRE(alone != nullptr);
      REQUIRE(whole == shape.panel(PanelName::Front));
      REQUIRE(alone->openings.size() == 1);
      CHECK(alone->openings[0].width->mm() == Approx(millimetres(shape, Measure::PocketWidth)));
      int open = 0;
      int shut = 0;
      double top = 1e9;
      for (const Box& edge : areasNamed(*alone, KeepOutName::PocketEdge)) {
        top = std::min(top, edge.min.y);
      }
      for (std::size_t i = 0; i < alone->keepOuts.size(); ++i) {
        const KeepOut& edge = alone->keepOuts[i];
        CHECK(edge.area == whole->keepOuts[i].area);
        if (edge.name == KeepOutName::PocketEdge) {
          (edge.frame ? shut : open) += 1;
          CHECK(edge.frame == (ringBounds(edge.area).min.y > top));
          CHECK_FALSE(whole->keepOuts[i].frame);
        }
      }
      CHECK(open == 1);
      CHECK(shut == 3);
      for (const PanelOpening& opening : whole->openings) {
        CHECK(opening.name != alone->openings[0].name);
      }
    }
  }
}

TEST_CASE("locations that a kind names are known, on the panels named beside them", "[rules]") {
  const Rules& rules = shippedRules();
  int named = 0;
  const auto check = [&](const std::vector<PanelName>& panels,
                         const std::vector<LocationId>& locations) {
    for (const LocationId& id : locations) {
      CAPTURE(id.text());
      const Location* location = rules.location(id);
      REQUIRE(location != nullptr);
      CHECK(std::find(panels.begin(), panels.end(), location->panel) != panels.end());
      ++named;
    }
  };
  for (const GarmentKind& kind : rules.kinds) {
    for (const LayerBehind& layer : kind.layers) {
      check(layer.panels, layer.locations);
    }
    for (const Opening& opening : kind.openings) {
      check(opening.panels, opening.intoPocketAt);
    }
  }
  CHECK(named >= 6);  // three kinds with a chest pocket
}
