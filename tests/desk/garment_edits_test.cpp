// SPDX-License-Identifier: MIT
#include "desk/garment_edits.h"

#include "creaseline/catalogue/save.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;
using namespace creaseline::literals;

namespace {

GarmentEdits demoEdits(const Order& order = demoOrder()) {
  return {order, shippedRules(), {LengthUnit::Inch, RulerMark::Sixteenth, {}}};
}

std::size_t sizeOf(const Blank& blank, const char* name) {
  for (std::size_t i = 0; i < blank.chart.sizes.size(); ++i) {
    if (blank.chart.sizes[i].name == SizeName(name)) {
      return i;
    }
  }
  FAIL("no such size");
  return 0;
}

std::size_t ofKind(const char* kind) {
  const auto& blanks = demoOrder().blanks;
  for (std::size_t i = 0; i < blanks.size(); ++i) {
    if (blanks[i].kind == KindId(kind)) {
      return i;
    }
  }
  FAIL("no such kind");
  return 0;
}

std::size_t blankOf(std::size_t line) {
  const auto& blanks = demoOrder().blanks;
  return static_cast<std::size_t>(demoOrder().blank(demoOrder().lines[line].blank) - blanks.data());
}

}  // namespace

TEST_CASE("Steps on a size chart are named by measure, size and length", "[desk][garments]") {
  const std::size_t tee = ofKind("t-shirt");
  const std::size_t m = sizeOf(demoOrder().blanks[tee], "M");
  CHECK(demoEdits().measure(tee, m, Measure::BodyWidth, 22_in).name ==
        QStringLiteral("Pit to pit of M: 22 in"));
  CHECK(demoEdits().measure(tee, m, Measure::NeckWidth, std::nullopt).name ==
        QStringLiteral("Neck width of M not in the chart"));
}

TEST_CASE("A garment cannot go while lines use it, and says which", "[desk][garments]") {
  const auto problem = demoEdits().removeProblem(blankOf(0));
  REQUIRE(problem);
  CHECK(problem->contains(toQString(demoOrder().lines[0].id)));
  const Order order = demoEdits().add().order;
  CHECK_FALSE(demoEdits(order).removeProblem(order.blanks.size() - 1));
  CHECK(demoEdits(order).remove(order.blanks.size() - 1).order == demoOrder());
}

TEST_CASE("Lines follow the id, the colours and the sizes of their garment", "[desk][garments]") {
  const std::size_t blank = blankOf(1);
  const OrderLine& line = demoOrder().lines[1];
  CHECK(demoEdits().id(blank, "other").order.lines[1].blank == BlankId("other"));
  const Blank& shown = demoOrder().blanks[blank];
  const SizeName first = line.sizes[0].size;
  const std::size_t size = sizeOf(shown, first.text().c_str());
  const OrderEdit renamed = demoEdits().sizeName(blank, size, "Renamed");
  CHECK(renamed.order.lines[1].sizes[0].size == SizeName("Renamed"));
  REQUIRE(!line.colour.empty());
  for (std::size_t i = 0; i < shown.colours.size(); ++i) {
    if (shown.colours[i].name == line.colour) {
      CHECK(demoEdits().colourName(blank, i, "dusk").order.lines[1].colour == "dusk");
      const OrderEdit gone = demoEdits().removeColour(blank, i);
      CHECK(gone.order.lines[1].colour.empty());
      CHECK(gone.name.contains(QStringLiteral("without a colour")));
    }
  }
}

TEST_CASE("A size that is ordered stays, and so does the last one", "[desk][garments]") {
  const std::size_t blank = blankOf(1);
  const std::size_t size =
      sizeOf(demoOrder().blanks[blank], demoOrder().lines[1].sizes[0].size.text().c_str());
  CHECK(demoEdits().removeSizeProblem(blank, size));
  Order order = demoEdits().add().order;
  const std::size_t last = order.blanks.size() - 1;
  while (order.blanks[last].chart.sizes.size() > 1) {
    REQUIRE_FALSE(demoEdits(order).removeSizeProblem(last, 0));
    order = demoEdits(order).removeSize(last, 0).order;
  }
  CHECK(demoEdits(order).removeSizeProblem(last, 0));
}

TEST_CASE("What a new garment's chart proposes counts as assumed until it is typed over",
          "[desk][garments]") {
  const Order made = demoEdits().add().order;
  const std::size_t at = made.blanks.size() - 1;
  const std::size_t m = sizeOf(made.blanks[at], "M");
  const auto shapeOf = [](const Order& order, std::size_t blank, std::size_t size) {
    const Blank& garment = order.blanks[blank];
    return garmentShape(*shippedRules().kind(garment.kind), garment.chart.sizes[size], {}, {});
  };
  const auto assumed = [&](const Order& order, std::size_t size, Measure measure) {
    return shapeOf(order, at, size).measures.at(measure).assumed;
  };
  CHECK(assumed(made, m, Measure::BodyWidth));
  CHECK(assumed(made, m, Measure::BodyLength));
  // Typed over, even by the same length, it is measured.
  const Length proposed = made.blanks[at].chart.sizes[m].measures.at(Measure::BodyWidth);
  const Order typed = demoEdits(made).measure(at, m, Measure::BodyWidth, proposed).order;
  CHECK_FALSE(assumed(typed, m, Measure::BodyWidth));
  CHECK(assumed(typed, m, Measure::BodyLength));
  CHECK(assumed(typed, m + 1, Measure::BodyWidth));
  // A size that is added has what it copies as a proposal.
  const Order more = demoEdits(typed).addSize(at, m).order;
  CHECK(assumed(more, m + 1, Measure::BodyWidth));
  // In the file and back.
  const DemoCopy demo;
  const auto file = demo.folder() / "made.order.json";
  Order alone = typed;
  alone.lines.clear();
  alone.designs.clear();  // whose drawings lie elsewhere
  static_cast<void>(saveOrder(file, alone, {}, {}));
  CHECK(loadOrderDraft(file, shippedRules()).value.blanks[at].chart == typed.blanks[at].chart);
  // The plan says so.
  Order ordered = made;
  OrderLine& line = ordered.lines.front();
  line.blank = made.blanks[at].id;
  line.colour.clear();
  line.sizes = {{SizeName("M"), 3}};
  line.placements.resize(1);
  line.placements.front().location = LocationId("centre-chest");
  ordered.lines.resize(1);
  const Plan plan = planOrder(ordered, *plannedDemo()->shop(), shippedRules());
  const auto& measures = plan.placements.front().assumed;
  CHECK(std::find(measures.begin(), measures.end(), Measure::BodyWidth) != measures.end());
  const auto finding = std::find_if(plan.findings.begin(), plan.findings.end(), [](const auto& f) {
    return f.code == FindingCode::MeasureAssumed;
  });
  REQUIRE(finding != plan.findings.end());
  CHECK(finding->text.find("nobody has measured") != std::string::npos);
}

TEST_CASE("What makes no garment is refused with the reason", "[desk][garments]") {
  const std::size_t tee = ofKind("t-shirt");
  const std::size_t m = sizeOf(demoOrder().blanks[tee], "M");
  CHECK_FALSE(demoEdits().measureProblem(tee, m, Measure::BodyWidth, 22_in));
  const auto problem = demoEdits().measureProblem(tee, m, Measure::NeckWidth, 40_in);
  REQUIRE(problem);
  CHECK(problem->contains(QStringLiteral("M")));
  CHECK(demoEdits().measureProblem(tee, m, Measure::BodyWidth, std::nullopt));
}

TEST_CASE("Another kind keeps the places that it has, and says what was left out",
          "[desk][garments]") {
  const std::size_t hoodie = blankOf(0);
  REQUIRE_FALSE(demoEdits().kindProblem(hoodie, KindId("t-shirt")));
  const OrderEdit edit = demoEdits().kind(hoodie, KindId("t-shirt"));
  CHECK(edit.order.lines[0].placements.size() < demoOrder().lines[0].placements.size());
  CHECK(edit.name.contains(QStringLiteral("left out")));
}

TEST_CASE("A new garment is of what its kind is usually of, until somebody says what it is of",
          "[desk][garments]") {
  const OrderEdit fresh = demoEdits().add();
  const std::size_t last = fresh.order.blanks.size() - 1;
  const GarmentKind& tee = *shippedRules().kind(fresh.order.blanks[last].kind);
  CHECK(fresh.order.blanks[last].fabric == tee.usualFabric.fabric);
  CHECK(fresh.order.blanks[last].fabric.proposed);
  const GarmentEdits edits = demoEdits(fresh.order);
  const OrderEdit hoodie = edits.kind(last, KindId("pullover-hoodie"));
  CHECK(hoodie.order.blanks[last].fabric ==
        shippedRules().kind(KindId("pullover-hoodie"))->usualFabric.fabric);
  // What was said stays, whatever the kind; to say that it is so is enough.
  for (const OrderEdit& said : {edits.fabricConfirmed(last),
                                edits.weight(last, ArealWeight::fromGramsPerSquareMetre(210.0))}) {
    CHECK_FALSE(said.order.blanks[last].fabric.proposed);
    const OrderEdit other = demoEdits(said.order).kind(last, KindId("pullover-hoodie"));
    CHECK(other.order.blanks[last].fabric == said.order.blanks[last].fabric);
  }
}

TEST_CASE("A new garment can be drawn as each kind that there is", "[desk][garments]") {
  const Order order = demoEdits().add().order;
  for (const GarmentKind& kind : shippedRules().kinds) {
    CAPTURE(kind.id.text());
    CHECK_FALSE(demoEdits(order).kindProblem(order.blanks.size() - 1, kind.id));
  }
}

TEST_CASE("The band follows the name or the width, unless the chart gives it", "[desk][garments]") {
  Order order = demoEdits().add().order;
  const std::size_t blank = order.blanks.size() - 1;
  const auto band = [&] { return order.blanks[blank].chart.sizes[1].band; };
  CHECK(band() == SizeBand::Adult);
  order = demoEdits(order).sizeName(blank, 1, "YM").order;
  CHECK(band() == SizeBand::Youth);
  order = demoEdits(order).sizeName(blank, 1, "wide").order;
  order = demoEdits(order).measure(blank, 1, Measure::BodyWidth, 30_in).order;
  CHECK(band() == SizeBand::AdultAboveXl);
  order = demoEdits(order).band(blank, 1, SizeBand::Infant).order;
  order = demoEdits(order).sizeName(blank, 1, "XL2").order;
  CHECK(band() == SizeBand::Infant);
  order = demoEdits(order).band(blank, 1, std::nullopt).order;
  CHECK(band() == SizeBand::AdultAboveXl);
}

TEST_CASE("A chart that lacks ordered sizes takes them off the lines and says so",
          "[desk][garments]") {
  const std::size_t blank = blankOf(1);
  SizeChart chart = demoOrder().blanks[blank].chart;
  std::erase_if(chart.sizes, [](const ChartSize& size) {
    return size.name == demoOrder().lines[1].sizes[0].size;
  });
  CHECK(demoEdits().sizesLost(blank, chart).size() == 1);
  const OrderEdit edit = demoEdits().chart(blank, chart);
  CHECK(edit.order.lines[1].sizes.size() == demoOrder().lines[1].sizes.size() - 1);
  CHECK(edit.name.contains(QStringLiteral("left out")));
}

TEST_CASE("Fibres are read as a label says them", "[desk][garments]") {
  const std::vector<FibreShare> blend{{"cotton", 80}, {"polyester", 20}};
  for (const char* text : {"80 % cotton, 20 % polyester", "80% cotton,20% polyester",
                           "cotton 80 %; polyester 20 %", "80 cotton, 20 polyester"}) {
    CAPTURE(text);
    const auto fibres = parseFibres(text);
    REQUIRE(fibres);
    CHECK(*fibres == blend);
  }
  CHECK(*parseFibres("62,5 % cotton, 37.5 % linen") ==
        std::vector<FibreShare>{{"cotton", 62.5}, {"linen", 37.5}});
  CHECK(*parseFibres("cotton") == std::vector<FibreShare>{{"cotton", 100}});
  CHECK(*parseFibres(fibresText(blend)) == blend);
  for (const char* text : {"", "80 % cotton", "80 % cotton, 30 % polyester", "cotton, polyester",
                           "80 %", "50 % cotton, 50 % cotton", "% cotton"}) {
    CAPTURE(text);
    CHECK_FALSE(parseFibres(text));
  }
}
