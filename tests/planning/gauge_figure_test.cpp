// SPDX-License-Identifier: MIT
// Gauges against the plan and the garment they were made from. GEOS judges what lies in what.
#include "creaseline/planning/gauge_figure.h"

#include <set>

#include "catalogue/outline_oracle.h"
#include "planning/figure_samples.h"
#include "support/spoken.h"

using namespace creaseline;
using namespace creaseline::literals;
using Catch::Contains;
using creaseline::samples::linesOf;
using creaseline::samples::Planned;
using creaseline::samples::textOf;
using creaseline::test::OutlineOracle;

namespace {

Planned planned(const std::string& kind, const std::vector<std::string>& locations,
                const Blank* blank = nullptr) {
  Order order =
      sample::order(blank != nullptr ? *blank : sample::blank(kind),
                    sample::design("d", 60_mm, 40_mm), locations.front(), samples::allSizes());
  if (blank != nullptr) {
    order.lines[0].sizes.clear();
    for (const ChartSize& size : blank->chart.sizes) {
      order.lines[0].sizes.push_back({size.name, 1});
    }
  }
  for (std::size_t i = 1; i < locations.size(); ++i) {
    OrderPlacement placement = order.lines[0].placements.front();
    placement.location = LocationId(locations[i]);
    order.lines[0].placements.push_back(placement);
  }
  return {order, sample::shop({sample::frame("f", 90_mm, 90_mm)})};
}

// Where the plan wants the cross, from the words of the plan alone.
Point wanted(const PlacementPlan& plan, EdgeName edge) {
  const double lateral = plan.placed.lateral.mm();
  if (edge == EdgeName::CuffEdge) {
    return {-lateral, -plan.placed.centreBelowDatum.mm()};  // hangs, cuff at the bottom
  }
  if (edge == EdgeName::Armhole) {
    return {-lateral, plan.placed.centreOffset.mm()};
  }
  return {lateral, plan.placed.centreBelowDatum.mm()};
}

// The cross of that placement, by its words.
const FigureCross* crossNear(const Figure& figure, Point at, double within) {
  for (const FigureCross& cross : figure.crosses) {
    if (norm(cross.at - at) <= within) {
      return &cross;
    }
  }
  return nullptr;
}

// A chart whose sizes have these necks.
Blank necks(const std::vector<std::pair<double, double>>& widthsAndDrops) {
  Blank blank = sample::blank("t-shirt");
  const ChartSize model = blank.chart.sizes[1];
  blank.chart.sizes.clear();
  int number = 1;
  for (const auto& [width, drop] : widthsAndDrops) {
    ChartSize size = model;
    size.name = SizeName("N" + std::to_string(number++));
    size.measures[Measure::NeckWidth] = Length::fromMm(width);
    size.measures[Measure::FrontNeckDrop] = Length::fromMm(drop);
    blank.chart.sizes.push_back(size);
  }
  return blank;
}

struct Place {
  const char* kind;
  std::vector<std::string> locations;
};
const std::vector<Place>& places() {
  static const std::vector<Place> all = {
      {"t-shirt", {"centre-chest", "full-back", "left-sleeve"}},
      {"t-shirt", {"left-chest", "right-chest", "upper-back"}},
      {"polo", {"left-chest", "right-sleeve"}},
      {"crew-sweatshirt", {"left-sleeve", "right-sleeve", "centre-chest"}},
      {"pullover-hoodie", {"hood-back", "centre-chest", "full-back"}},
      {"full-zip-hoodie", {"left-chest", "right-chest", "hood-back"}}};
  return all;
}

}  // namespace

TEST_CASE("each cross lies from edge and centre line as the plan says", "[gauge]") {
  for (const Place& place : places()) {
    const Planned planned = ::planned(place.kind, place.locations);
    const FigureContext context = planned.context();
    std::set<std::size_t> seen;
    for (const GaugeStrip& strip : gaugeStrips(context)) {
      const Figure figure = gaugeFigure(context, strip);
      for (const std::size_t index : strip.placements) {
        const PlacementPlan& plan = planned.plan.placements[index];
        CAPTURE(place.kind, plan.location.text(), plan.size.text());
        CHECK(plan.panel == strip.panel);
        CHECK(seen.insert(index).second);
        const bool alone = strip.placements.size() == 1;
        const FigureCross* cross =
            crossNear(figure, wanted(plan, strip.edge), alone ? 1e-5 : kSameMark);
        REQUIRE(cross != nullptr);
        const Location* location = context.rules.location(plan.location);
        CHECK_THAT(cross->text, Contains(location->name));
      }
      samples::checkTextsApart(figure);
    }
    for (std::size_t index = 0; index < planned.plan.placements.size(); ++index) {
      const PlacementPlan& plan = planned.plan.placements[index];
      CAPTURE(place.kind, plan.location.text(), plan.size.text());
      CHECK((seen.count(index) == 1) == !plan.stops());
    }
    CHECK_FALSE(seen.empty());
  }
}

TEST_CASE("the strip's edge is the size's own neck", "[gauge]") {
  const Blank blank = necks({{170.0, 90.0}, {176.0, 94.0}});
  for (const std::string location : {"centre-chest", "upper-back"}) {
    const Planned planned = ::planned("t-shirt", {location}, &blank);
    const FigureContext context = planned.context();
    const auto strips = gaugeStrips(context);
    CAPTURE(location);
    REQUIRE(strips.size() == 2);  // too like to nest, so that each has its curve to itself
    for (const GaugeStrip& strip : strips) {
      const PlacementPlan& plan = planned.plan.placements[strip.placements.front()];
      const auto curves = linesOf(gaugeFigure(context, strip), StrokeKind::Collar);
      REQUIRE(curves.size() == 1);
      // On the panel's outline all along, with the collar seam's middle at the origin.
      for (const Point point : curves.front()) {
        CHECK(nearestSide(plan.garment->panel(plan.panel)->outline, point).distance < 1e-6);
      }
      CHECK(curves.front().front().x == Approx(-kSeat));
      CHECK(curves.front().back().x == Approx(kSeat));
      CHECK(curves.front().back().y < 0.0);
    }
  }
}

TEST_CASE("a neck curve runs through the middle of the collar seam towards the shoulder point",
          "[gauge]") {
  // A neck so narrow that the seat takes four fifths of it.
  const Blank blank = necks({{120.0, 70.0}});
  const Planned planned = ::planned("t-shirt", {"centre-chest"}, &blank);
  const auto strips = gaugeStrips(planned.context());
  REQUIRE(strips.size() == 1);
  const auto curves = linesOf(gaugeFigure(planned.context(), strips.front()), StrokeKind::Collar);
  REQUIRE(curves.size() == 1);
  const Polyline& curve = curves.front();
  CHECK(curve.back().x == Approx(0.8 * 60.0));
  bool throughMiddle = false;
  for (std::size_t i = 0; i < curve.size(); ++i) {
    throughMiddle = throughMiddle || norm(curve[i]) < 1e-9;
    CHECK(curve[i].y <= 0.0);
    CHECK(curve[i].y > -70.0);                                   // below the shoulder point
    CHECK(curve[i].y == Approx(curve[curve.size() - 1 - i].y));  // both sides alike
    // The garment's neck is a hollow: above the chord from the middle to the shoulder point there
    // is no cloth.
    CHECK(-curve[i].y <= 70.0 / 60.0 * std::abs(curve[i].x) + 1e-9);
  }
  CHECK(throughMiddle);
}

TEST_CASE("necks that differ by less than a pencil line share a curve", "[gauge]") {
  const Blank blank = necks({{180.0, 90.0}, {180.0, 90.0}, {180.5, 90.0}});
  const Planned planned = ::planned("t-shirt", {"centre-chest"}, &blank);
  const auto strips = gaugeStrips(planned.context());
  REQUIRE(strips.size() == 1);
  const Figure figure = gaugeFigure(planned.context(), strips.front());
  CHECK(linesOf(figure, StrokeKind::Collar).size() == 1);
  CHECK(figure.crosses.size() == 1);
  CHECK(figure.crosses.front().text == "Centre chest: N1 N2 N3");
  CHECK_THAT(textOf(figure), !Contains("cut here"));
}

TEST_CASE("necks that differ too little to cut apart go on strips of their own", "[gauge]") {
  // At the same width, 2 mm of drop move the curve at 60 mm by about one.
  const Blank blank = necks({{180.0, 90.0}, {180.0, 94.0}});
  const Planned planned = ::planned("t-shirt", {"centre-chest"}, &blank);
  CHECK(gaugeStrips(planned.context()).size() == 2);
}

TEST_CASE("nested curves are cut in their order: each leaves paper that holds the next",
          "[gauge]") {
  const Blank blank = necks({{160.0, 80.0}, {190.0, 80.0}, {230.0, 80.0}, {280.0, 80.0}});
  const Planned planned = ::planned("t-shirt", {"centre-chest"}, &blank);
  const auto strips = gaugeStrips(planned.context());
  REQUIRE(strips.size() == 1);
  const Figure figure = gaugeFigure(planned.context(), strips.front());
  const auto curves = linesOf(figure, StrokeKind::Collar);
  const auto cuts = linesOf(figure, StrokeKind::Cut);
  REQUIRE(curves.size() == 4);
  REQUIRE(cuts.size() == 2 * 4 + 1);  // a run to each side, then sides and bottom
  const OutlineOracle geos;
  std::vector<OutlineOracle::Geometry> papers;
  for (std::size_t i = 0; i < curves.size(); ++i) {
    const Polyline& left = cuts[2 * i];
    const Polyline& right = cuts[2 * i + 1];
    Piece paper;
    paper.outer.assign(left.rbegin(), left.rend());
    paper.outer.insert(paper.outer.end(), curves[i].begin() + 1, curves[i].end());
    paper.outer.insert(paper.outer.end(), right.begin() + 1, right.end());
    paper.outer.push_back(cuts.back()[2]);
    paper.outer.push_back(cuts.back()[1]);
    // The level of a later run lies below: no point twice.
    paper.outer.erase(std::unique(paper.outer.begin(), paper.outer.end()), paper.outer.end());
    papers.push_back(geos.polygon(paper));
    CHECK(geos.valid(papers.back()));
  }
  for (std::size_t i = 1; i < papers.size(); ++i) {
    CHECK(geos.area(geos.unionOf(papers[i - 1], papers[i])) == Approx(geos.area(papers[i - 1])));
    CHECK(geos.area(papers[i]) < geos.area(papers[i - 1]));
    // Told apart by the eye where they end.
    const auto ends = [](const Polyline& curve) { return curve.back().y; };
    CHECK(ends(curves[i]) - ends(curves[i - 1]) >= kCurvesApart);
  }
  for (const char* label :
       {"cut here for N1", "cut here for N2", "cut here for N3", "cut here for N4"}) {
    CHECK_THAT(textOf(figure), Contains(label));
  }
  samples::checkTextsApart(figure);
}

TEST_CASE("curves that cross never share a strip", "[gauge]") {
  const Blank blank = necks({{180.0, 90.0}, {180.0, 90.0}});
  Planned planned = ::planned("t-shirt", {"centre-chest"}, &blank);
  // No two necks of one form cross by more than a pencil line, so the second is bent by hand: lower
  // near the middle, higher at the ends.
  auto bent = std::make_shared<GarmentShape>(*planned.plan.placements[1].garment);
  for (Point& point : bent->panels.at(PanelName::Front).outline) {
    const double x = std::abs(point.x);
    if (point.y <= 0.0 && x < 80.0) {
      point.y += x < 30.0 ? 0.1 * x : 3.0 - 0.3 * (x - 30.0);
    }
  }
  planned.plan.placements[1].garment = bent;
  const FigureContext context = planned.context();
  const auto strips = gaugeStrips(context);
  REQUIRE(strips.size() == 2);
  std::vector<Polyline> curves;
  for (const GaugeStrip& strip : strips) {
    curves.push_back(linesOf(gaugeFigure(context, strip), StrokeKind::Collar).front());
  }
  // They do cross: each has points on either side of the other.
  Ring under = curves[0];
  under.push_back({curves[0].back().x, 500.0});
  under.push_back({curves[0].front().x, 500.0});
  int inside = 0;
  int outside = 0;
  for (const Point point : curves[1]) {
    if (nearestSide(under, point).distance > kSameMark / 10.0) {
      ++(contains(under, point) ? inside : outside);
    }
  }
  CHECK(inside > 0);
  CHECK(outside > 0);
}

TEST_CASE("holes on one strip are one or have card between them", "[gauge]") {
  for (const Place& place : places()) {
    const Planned planned = ::planned(place.kind, place.locations);
    for (const GaugeStrip& strip : gaugeStrips(planned.context())) {
      const Figure figure = gaugeFigure(planned.context(), strip);
      for (std::size_t i = 0; i < figure.crosses.size(); ++i) {
        for (std::size_t k = i + 1; k < figure.crosses.size(); ++k) {
          CHECK(norm(figure.crosses[i].at - figure.crosses[k].at) >= kCrossesApart);
        }
      }
    }
  }
}

TEST_CASE("the ruler has its marks and numbers where a ruler has them", "[gauge]") {
  Planned planned = ::planned("t-shirt", {"full-back"});
  const auto marks = [&](LengthUnit unit) {
    planned.units.length = unit;
    const auto strips = gaugeStrips(planned.context());
    const Figure figure = gaugeFigure(planned.context(), strips.front());
    std::pair<std::vector<Polyline>, std::vector<FigureText>> found{
        linesOf(figure, StrokeKind::Ruler), {}};
    for (const FigureText& text : figure.texts) {
      if (text.text.find_first_not_of("0123456789") == std::string::npos) {
        found.second.push_back(text);
      }
    }
    return found;
  };
  const auto [eighths, inches] = marks(LengthUnit::Inch);
  REQUIRE(eighths.size() > 24);
  CHECK(eighths[0].back() == Point{0.0, 25.4 / 8.0});
  CHECK(eighths[23].back().y == Approx(3.0 * 25.4));
  REQUIRE(inches.size() >= 3);
  CHECK(inches[2].text == "3");
  CHECK(inches[2].at.y == Approx(3.0 * 25.4));
  // Whole inches stand out from halves, these from the rest.
  CHECK(eighths[7].front().x < eighths[3].front().x);
  CHECK(eighths[3].front().x < eighths[0].front().x);

  const auto [millimetres, centimetres] = marks(LengthUnit::Centimetre);
  CHECK(millimetres[49].back().y == Approx(50.0));
  CHECK(centimetres[4].text == "5");
  CHECK(centimetres[4].at.y == Approx(50.0));
  const auto [again, tens] = marks(LengthUnit::Millimetre);
  CHECK(again.size() == millimetres.size());
  CHECK(tens[4].text == "50");
  CHECK(tens[4].at.y == Approx(50.0));
}

TEST_CASE("a gauge says what it rests on that nobody measured", "[gauge]") {
  Blank blank = sample::blank("t-shirt");
  blank.chart.sizes = {blank.chart.sizes[1]};
  blank.chart.sizes[0].measures.erase(Measure::NeckWidth);
  const Planned planned = ::planned("t-shirt", {"centre-chest"}, &blank);
  const auto strips = gaugeStrips(planned.context());
  REQUIRE(strips.size() == 1);
  CHECK(gaugeAssumptions(planned.context(), strips.front()) ==
        std::vector<std::string>{"neck width assumed (M): check against the garment"});
  CHECK_THAT(textOf(gaugeFigure(planned.context(), strips.front())),
             Contains("neck width assumed (M)"));
  const Planned measured = ::planned("t-shirt", {"centre-chest"});
  CHECK(gaugeAssumptions(measured.context(), gaugeStrips(measured.context()).front()).empty());
}

TEST_CASE("a gauge names its middle line in the language spoken, in whole words", "[gauge]") {
  Phrasebook::Content content;
  content.language = "es";
  content.phrases = {{"centre crease", "pliegue central"},
                     {"the centre crease", "el pliegue central"}};
  const Phrasebook book(content);
  const Speaking speaking(book);
  const Planned planned = ::planned("t-shirt", {"centre-chest"});
  const auto strips = gaugeStrips(planned.context());
  REQUIRE_FALSE(strips.empty());
  const Figure figure = gaugeFigure(planned.context(), strips.front());
  CHECK(std::any_of(figure.texts.begin(), figure.texts.end(),
                    [](const FigureText& text) { return text.text == "pliegue central"; }));
}

TEST_CASE("words keep off crosses on both sides, whatever the length of names", "[gauge]") {
  Blank blank = sample::blank("polo");
  blank.name = std::string(60, 'W');
  for (ChartSize& size : blank.chart.sizes) {
    size.measures.erase(Measure::NeckWidth);
    size.measures.erase(Measure::FrontNeckDrop);
  }
  const Planned planned = ::planned("polo", {"left-chest", "right-chest"}, &blank);
  const auto strips = gaugeStrips(planned.context());
  REQUIRE_FALSE(strips.empty());
  for (const GaugeStrip& strip : strips) {
    const Figure figure = gaugeFigure(planned.context(), strip);
    samples::checkTextsApart(figure);
    for (const FigureText& text : figure.texts) {
      for (const FigureCross& cross : figure.crosses) {
        INFO("\"" << text.text << "\" and the cross of " << cross.text);
        const Box arms = Box{cross.at, cross.at}.grown(kCrossArm);
        CHECK(gapBetween(figure::textBox(text), arms) > 0.0);
      }
    }
  }
}

TEST_CASE("each strip says whose it is, on card alone", "[gauge]") {
  const Planned planned = ::planned("pullover-hoodie", {"hood-back"});
  const auto strips = gaugeStrips(planned.context());
  REQUIRE_FALSE(strips.empty());
  CHECK_THAT(gaugeTitle(planned.context(), strips.front()), Contains("Hood gauge"));
  const std::string words = textOf(gaugeFigure(planned.context(), strips.front()));
  for (const char* part :
       {"order sample", "line 1", "sample pullover-hoodie", "face edge", "card"}) {
    CHECK_THAT(words, Contains(part));
  }
}
