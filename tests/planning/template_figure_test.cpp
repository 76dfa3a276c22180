// SPDX-License-Identifier: MIT
// Templates: true outline, window and crease about the design's centre. GEOS judges the shapes.
#include "creaseline/planning/template_figure.h"

#include "catalogue/outline_oracle.h"
#include "planning/figure_samples.h"

using namespace creaseline;
using namespace creaseline::literals;
using Catch::Contains;
using creaseline::samples::boxOf;
using creaseline::samples::linesOf;
using creaseline::samples::Planned;
using creaseline::samples::textOf;
using creaseline::test::OutlineOracle;

namespace {

// An L, so that neither mirroring nor turning maps it onto itself, with a hole in its foot.
// 100 by 80 mm; area 100 * 80 - 60 * 50 - 10 * 10 = 4900 mm².
Design lShape() {
  Design design = sample::design("ell", 100_mm, 80_mm);
  Piece piece;
  piece.outer = {{-50.0, -40.0}, {-10.0, -40.0}, {-10.0, 10.0},
                 {50.0, 10.0},   {50.0, 40.0},   {-50.0, 40.0}};
  piece.holes = {{{30.0, 20.0}, {40.0, 20.0}, {40.0, 30.0}, {30.0, 30.0}}};
  design.outline.pieces = {piece};
  return design;
}

Shop oneFrame() {
  return sample::shop({sample::frame("f", 180_mm, 160_mm)});
}

Planned planned(const std::string& kind, const std::string& location, const Design& design,
                const std::vector<std::string>& sizes = {"M"}) {
  Shop shop = oneFrame();
  shop.frames.push_back(sample::frame("small", 90_mm, 90_mm));
  return {sample::order(sample::blank(kind), design, location, sizes), shop};
}

Figure onlyTemplate(const Planned& planned, TemplateView view = TemplateView::Usual) {
  const auto groups = templateGroups(planned.context());
  REQUIRE(groups.size() == 1);
  return templateFigure(planned.context(), groups.front(), view);
}

Piece shownPiece(const Figure& figure) {
  Piece piece;
  const auto outers = linesOf(figure, StrokeKind::Design);
  REQUIRE(outers.size() == 1);
  piece.outer = outers.front();
  piece.holes = linesOf(figure, StrokeKind::Hole);
  return piece;
}

Piece moved(Piece piece, Point by, double sign = 1.0) {
  for (Point& point : piece.outer) {
    point = point * sign + by;
  }
  for (Ring& hole : piece.holes) {
    for (Point& point : hole) {
      point = point * sign + by;
    }
  }
  return piece;
}

void checkInside(const Figure& figure) {
  const auto cuts = linesOf(figure, StrokeKind::Cut);
  REQUIRE(cuts.size() == 1);
  const Box paper = boxOf(cuts.front());
  CHECK(gapBetween(figure.bounds, paper) < 0.0);
  for (const Stroke& stroke : figure.strokes) {
    const Box box = boxOf(stroke.line);
    CHECK(box.min.x >= paper.min.x);
    CHECK(box.min.y >= paper.min.y);
    CHECK(box.max.x <= paper.max.x);
    CHECK(box.max.y <= paper.max.y);
  }
  for (const FigureText& text : figure.texts) {
    INFO(text.text);
    const Box box = figure::textBox(text);
    CHECK(box.min.x > paper.min.x);
    CHECK(box.min.y > paper.min.y);
    CHECK(box.max.x < paper.max.x);
    CHECK(box.max.y < paper.max.y);
  }
}

Point arrowDirection(const Figure& figure) {
  const auto arrows = linesOf(figure, StrokeKind::Arrow);
  REQUIRE(arrows.size() == 1);
  return arrows.front().front() - boxOf(arrows.front()).centre();  // the tip comes first
}

}  // namespace

TEST_CASE("a template shows the design where the plan has it, holes and all", "[template]") {
  for (const double turn : {0.0, 90.0, 20.0}) {
    CAPTURE(turn);
    Order order = sample::order(sample::blank("t-shirt"), lShape(), "centre-chest", {"M"});
    order.lines[0].placements[0].turn = Angle::fromDegrees(turn);
    const Planned planned(order, oneFrame());
    const PlacementPlan& plan = planned.plan.placements.front();
    const OutlineOracle geos;
    const Figure figure = onlyTemplate(planned);
    const auto shown = geos.polygon(moved(shownPiece(figure), plan.placed.centre));
    CHECK(geos.area(shown) == Approx(4900.0));
    CHECK(geos.boundaryDistance(shown, geos.unionOf(plan.outlineOnPanel)) < 1e-6);
    REQUIRE(figure.crosses.size() == 1);
    CHECK(figure.crosses.front().at == Point());
    CHECK(figure.crosses.front().turn == Angle::fromDegrees(turn));
    checkInside(figure);
    samples::checkTextsApart(figure);
  }
}

TEST_CASE("the window is dashed at its true place and turn, and the design lies in it",
          "[template]") {
  for (const std::string location : {"centre-chest", "full-back", "upper-back"}) {
    CAPTURE(location);
    const Planned planned = ::planned("crew-sweatshirt", location, lShape());
    const PlacementPlan& plan = planned.plan.placements.front();
    REQUIRE(plan.frame);
    const Figure figure = onlyTemplate(planned);
    const auto windows = linesOf(figure, StrokeKind::Window);
    REQUIRE(windows.size() == 1);
    const Box window = boxOf(windows.front());
    const bool quarter = plan.frame->turn == 90_deg;
    CHECK(window.width() == Approx(quarter ? 160.0 : 180.0));
    CHECK(window.height() == Approx(quarter ? 180.0 : 160.0));
    const Point offset = plan.frame->centre - plan.placed.centre;
    CHECK(norm(window.centre() - offset) < 1e-6);
    const OutlineOracle geos;
    Piece opening;
    opening.outer = windows.front();
    const auto inside = geos.polygon(opening);
    const auto both = geos.unionOf(inside, geos.polygon(shownPiece(figure)));
    CHECK(geos.area(both) == Approx(geos.area(inside)));
  }
}

TEST_CASE("the crease lies where the plan has it, or the template says how far away it is",
          "[template]") {
  const Figure middle = onlyTemplate(planned("t-shirt", "centre-chest", lShape()));
  const auto creases = linesOf(middle, StrokeKind::Crease);
  REQUIRE(creases.size() == 1);
  CHECK(boxOf(creases.front()).min.x == Approx(0.0).margin(1e-9));
  CHECK(boxOf(creases.front()).max.x == Approx(0.0).margin(1e-9));
  CHECK_THAT(textOf(middle), Contains("centre crease"));

  Design small = sample::design("badge", 80_mm, 80_mm);
  const Planned chest(sample::order(sample::blank("t-shirt"), small, "left-chest", {"M"}),
                      sample::shop({sample::frame("f", 110_mm, 110_mm)}));
  const Figure side = onlyTemplate(chest);
  CHECK(linesOf(side, StrokeKind::Crease).empty());
  const std::string words = textOf(side);
  CHECK_THAT(words, Contains("the cross lies 4 in to the wearer's left of the centre crease"));

  const Planned wide(sample::order(sample::blank("t-shirt"), small, "left-chest", {"M"}),
                     sample::shop({sample::frame("f", 210_mm, 110_mm)}));
  const Figure near = onlyTemplate(wide);
  const auto found = linesOf(near, StrokeKind::Crease);
  REQUIRE(found.size() == 1);
  CHECK(found.front().front().x == Approx(-4.0 * 25.4));
}

TEST_CASE("a sleeve's template hangs with the cuff at the bottom, and its arrow points up",
          "[template]") {
  const Planned planned = ::planned("t-shirt", "left-sleeve", sample::design("s", 60_mm, 30_mm));
  const Figure figure = onlyTemplate(planned);
  CHECK(arrowDirection(figure).y < 0.0);
  CHECK_THAT(textOf(figure), Contains("this edge 1 1/4 in above the cuff edge"));
  // The drop runs from the cuff up to the design's lower side.
  bool found = false;
  for (const Polyline& guide : linesOf(figure, StrokeKind::Guide)) {
    found = found || guide.front().y == Approx(15.0);
  }
  CHECK(found);
}

TEST_CASE("a hood's template points down where the worn hood has its top", "[template]") {
  const Figure figure =
      onlyTemplate(planned("pullover-hoodie", "hood-back", sample::design("h", 60_mm, 30_mm)));
  CHECK(arrowDirection(figure).y > 0.0);
  CHECK_THAT(textOf(figure), Contains("from the face edge"));
}

TEST_CASE("variants are mirrored and turned about the centre, and say so", "[template]") {
  const Planned planned = ::planned("t-shirt", "centre-chest", lShape());
  const Figure usual = onlyTemplate(planned);
  const OutlineOracle geos;

  const Figure turned = onlyTemplate(planned, TemplateView::Turned);
  CHECK(geos.boundaryDistance(geos.polygon(moved(shownPiece(usual), {}, -1.0)),
                              geos.polygon(shownPiece(turned))) < 1e-9);
  CHECK(arrowDirection(turned).y > 0.0);
  CHECK_THAT(textOf(turned), Contains("turned: upside down"));

  const Figure mirrored = onlyTemplate(planned, TemplateView::Mirrored);
  Piece image = shownPiece(usual);
  for (Point& point : image.outer) {
    point.x = -point.x;
  }
  for (Point& point : image.holes.front()) {
    point.x = -point.x;
  }
  CHECK(geos.boundaryDistance(geos.polygon(image), geos.polygon(shownPiece(mirrored))) < 1e-9);
  CHECK(arrowDirection(mirrored).y < 0.0);
  CHECK_THAT(textOf(mirrored), Contains("mirrored: as seen"));
  for (const Figure* figure : {&turned, &mirrored}) {
    checkInside(*figure);
    samples::checkTextsApart(*figure);
  }
  CHECK_THAT(textOf(usual), !Contains("mirrored") && !Contains("upside down"));
}

TEST_CASE("folding so that two marks of an edge meet folds through the centre", "[template]") {
  // A frame that lies aside of the design, so that the centre is not the paper's middle.
  const Planned planned = ::planned("crew-sweatshirt", "upper-back", lShape());
  const Figure figure = onlyTemplate(planned);
  const Box paper = boxOf(linesOf(figure, StrokeKind::Cut).front());
  double sums[4] = {0.0, 0.0, 0.0, 0.0};
  int marks[4] = {0, 0, 0, 0};
  for (const Polyline& mark : linesOf(figure, StrokeKind::Fold)) {
    const Point at = mark.front();
    const double gaps[4] = {at.y - paper.min.y, paper.max.y - at.y, at.x - paper.min.x,
                            paper.max.x - at.x};
    for (int edge = 0; edge < 4; ++edge) {
      if (std::abs(gaps[edge]) < 1e-9) {
        sums[edge] += edge < 2 ? at.x : at.y;
        ++marks[edge];
      }
    }
  }
  for (int edge = 0; edge < 4; ++edge) {
    CHECK(marks[edge] == 3);
    CHECK(std::abs(sums[edge]) < 1e-9);  // equally far to both sides of the axis
  }
}

TEST_CASE("one template serves all sizes and lines that would get the same", "[template]") {
  Order order =
      sample::order(sample::blank("t-shirt"), lShape(), "centre-chest", samples::allSizes());
  order.lines.push_back(order.lines.front());
  order.lines.back().id = "2";
  order.lines.back().sizes = {{SizeName("M"), 4}};
  const Planned planned(order, sample::shop({sample::frame("f", 150_mm, 130_mm)}));
  const auto groups = templateGroups(planned.context());
  // The drop differs between youth and adult; that changes words, not the paper.
  REQUIRE(groups.size() == 1);
  CHECK(groups.front() == SizeGroup{0, 1, 2, 3, 4});
  CHECK(templateServes(planned.context(), groups.front()) ==
        std::vector<std::string>{"line 1, sample t-shirt, navy: YM to 2XL",
                                 "line 2, sample t-shirt, navy: M"});
  const Figure figure = templateFigure(planned.context(), groups.front(), TemplateView::Usual);
  const std::string words = textOf(figure);
  CHECK_THAT(words, Contains("differs by size"));
}

TEST_CASE("other designs, places and turns get templates of their own", "[template]") {
  Order order = sample::order(sample::blank("t-shirt"), lShape(), "centre-chest", {"M"});
  OrderPlacement placement = order.lines[0].placements[0];
  placement.location = LocationId("full-back");
  order.lines[0].placements.push_back(placement);
  order.lines.push_back(order.lines[0]);
  order.lines[1].id = "2";
  order.lines[1].placements[0].turn = 90_deg;
  order.lines[1].placements[1].scale = 0.9;
  const Planned planned(order, oneFrame());
  CHECK(templateGroups(planned.context()).size() == 4);
}

TEST_CASE("what must not be sewn has no template", "[template]") {
  const Planned planned = ::planned("t-shirt", "centre-chest", sample::design("x", 300_mm, 300_mm));
  REQUIRE(planned.plan.placements.front().stops());
  CHECK(templateGroups(planned.context()).empty());
}

TEST_CASE("a template of a long order with long names keeps its words apart and inside",
          "[template]") {
  Order order = sample::order(sample::blank("polo"), sample::design("b", 85_mm, 60_mm),
                              "left-chest", samples::allSizes());
  order.id = "2026-0123456789-0123456789-0123456789";
  order.blanks[0].name = "Donaudampfschifffahrtsgesellschaftskapitänspolohemd, langarm";
  order.designs[0].name = "Escudo conmemorativo del club náutico, versión bordada grande";
  const Planned planned(order, sample::shop({sample::frame("f", 110_mm, 110_mm)}));
  for (const SizeGroup& group : templateGroups(planned.context())) {
    for (const TemplateView view :
         {TemplateView::Usual, TemplateView::Mirrored, TemplateView::Turned}) {
      const Figure figure = templateFigure(planned.context(), group, view);
      checkInside(figure);
      samples::checkTextsApart(figure);
    }
  }
}
