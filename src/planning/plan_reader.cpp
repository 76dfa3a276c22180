// SPDX-License-Identifier: MIT
#include "creaseline/planning/plan_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "creaseline/base/error.h"
#include "creaseline/planning/report.h"
#include "planning/parts.h"
#include "planning/plan_reader_parts.h"

namespace creaseline {

namespace {

constexpr int kMostCounted = 2'000'000'000;
// Some 500 values a placement: a plan of any order that can be loaded.
constexpr std::size_t kMostPlanValues = 2'000'000'000;

// What placements share: drawn and scaled once.
class Catalogue {
 public:
  explicit Catalogue(const PlanSource& source) : source_(source) {
    for (const Blank& blank : source.order.blanks) {
      blanks_.emplace(blank.id, &blank);
    }
    for (const Design& design : source.order.designs) {
      designs_.emplace(design.id, &design);
    }
    for (const Caution& caution : source.rules.cautions) {
      cautions_.emplace(caution.id, &caution);
    }
  }

  [[nodiscard]] const Blank& blank(const BlankId& id, const JsonCursor& at) const {
    const auto found = blanks_.find(id);
    if (found == blanks_.end()) {
      at.fail("the unknown blank " + inQuotes(id.text()), "a blank of the order");
    }
    return *found->second;
  }

  [[nodiscard]] const Caution* caution(const JsonCursor& at) const {
    const auto found = cautions_.find(RuleId(at.anyText()));
    if (found == cautions_.end()) {
      at.fail("the unknown caution " + at.shown(), "a caution of the rules");
    }
    return found->second;
  }

  std::shared_ptr<const GarmentShape> garment(const Blank& blank, const SizeName& size,
                                              SizeBand band, const JsonCursor& at) {
    auto& known = garments_[{blank.id, size, band}];
    if (!known) {
      const GarmentKind* kind = source_.rules.kind(blank.kind);
      if (kind == nullptr) {
        at.fail("a blank of the unknown kind " + inQuotes(blank.kind.text()),
                "a kind that the rules describe");
      }
      ChartSize charted = *blank.chart.find(size);
      charted.band = band;
      known = std::make_shared<const GarmentShape>(
          garmentShape(*kind, charted, blank.id.text(), "size " + size.text()));
    }
    return known;
  }

  const Design& design(const OrderPlacement& asked, const JsonCursor& at) {
    const auto known = scaled_.find({asked.design, asked.scale});
    if (known != scaled_.end()) {
      return known->second;
    }
    const auto drawn = designs_.find(asked.design);
    if (drawn == designs_.end()) {
      at.fail("the unknown design " + inQuotes(asked.design.text()), "a design of the order");
    }
    const Design& design = *drawn->second;
    return scaled_
        .emplace(std::make_pair(asked.design, asked.scale),
                 asked.scale == 1.0 ? design : design.scaled(asked.scale))
        .first->second;
  }

 private:
  const PlanSource& source_;
  std::map<BlankId, const Blank*> blanks_;
  std::map<DesignId, const Design*> designs_;
  std::map<RuleId, const Caution*> cautions_;
  std::map<std::tuple<BlankId, SizeName, SizeBand>, std::shared_ptr<const GarmentShape>> garments_;
  std::map<std::pair<DesignId, double>, Design> scaled_;
};

// What the plan repeats of the order, shop and rules must be what they say.
void requireSame(const JsonCursor& at, bool same, const std::string& said) {
  if (!same) {
    at.failShown(said + ": plan again");
  }
}
void requireSameText(const JsonCursor& at, const std::string& text, std::string_view whose) {
  requireSame(at, at.anyText() == text, fmt::format("{}, as {} says now", inQuotes(text), whose));
}

class PlacementReader {
 public:
  PlacementReader(const PlanSource& source, Catalogue& catalogue)
      : source_(source), catalogue_(catalogue) {}

  PlacementPlan read(const JsonCursor& at) {
    JsonObject object = at.object();
    PlacementPlan plan;
    ordered(plan, object);
    plan.worst = object.at("worst").enumerator<Severity>();
    plan.hasRule = object.at("has-rule").boolean();
    if (plan.hasRule) {
      const OrderLine& line = source_.order.lines[plan.line];
      decided(plan, object, line.placements[plan.placement]);
    }
    return plan;
  }

 private:
  // What follows from the order.
  void ordered(PlacementPlan& plan, JsonObject& object) {
    const JsonCursor lineAt = object.at("line");
    plan.line = readLineIndex(lineAt, source_);
    const OrderLine& line = source_.order.lines[plan.line];
    const Blank& blank = catalogue_.blank(line.blank, lineAt);
    requireSameText(object.at("blank"), line.blank.text(), "the order");
    requireSameText(object.at("colour"), line.colour, "the order");
    plan.placement = readPlacementIndex(object.at("placement"), line);
    const OrderPlacement& asked = line.placements[plan.placement];
    const JsonCursor locationAt = object.at("location");
    plan.location = readPlanLocation(locationAt, source_.rules);
    requireSameText(locationAt, asked.location.text(), "the order");
    sizeOf(plan, object, line, blank);
    plan.panel = object.at("panel").enumerator<PanelName>();
    if (const auto part = object.find("part")) {
      plan.part = readDesignPart(*part);
    }
    design(plan, object.at("design"), asked);
  }

  void sizeOf(PlacementPlan& plan, JsonObject& object, const OrderLine& line, const Blank& blank) {
    const JsonCursor sizeAt = object.at("size");
    plan.size = readChartSize(sizeAt, blank);
    const SizeQuantity* entry = line.find(plan.size);
    if (entry == nullptr) {
      sizeAt.failShown("a size that this line orders");
    }
    const JsonCursor quantityAt = object.at("quantity");
    plan.quantity = quantityAt.integer(0, kMostCounted);
    requireSame(quantityAt, plan.quantity == entry->quantity,
                fmt::format("{}, as the order says now", entry->quantity));
    plan.band = object.at("band").enumerator<SizeBand>();
    plan.garment = catalogue_.garment(blank, plan.size, plan.band, sizeAt);
  }

  void design(PlacementPlan& plan, const JsonCursor& at, const OrderPlacement& asked) {
    JsonObject object = at.object();
    plan.design = catalogue_.design(asked, at);
    if (plan.part) {
      const Box& section = plan.part->section;
      if (section.empty() || clipped(plan.design.outline, section).empty()) {
        at.fail("a part in whose section nothing of the design lies", "a part of the design");
      }
      plan.design = partOf(plan.design, plan.part->section, plan.part->number, plan.part->of);
    }
    const std::string whose = "the order";
    requireSameText(object.at("id"), plan.design.id.text(), whose);
    requireSameText(object.at("name"), plan.design.name, whose);
    requireSameText(object.at("width"), exactText(plan.design.width), whose);
    requireSameText(object.at("height"), exactText(plan.design.height), whose);
    const JsonCursor stitchesAt = object.at("stitches");
    requireSame(stitchesAt, stitchesAt.integer(0, kMostCounted) == plan.design.stitches,
                fmt::format("{}, as {} says now", plan.design.stitches, whose));
  }

  void decided(PlacementPlan& plan, JsonObject& object, const OrderPlacement& asked) const {
    plan.letters = object.at("letters").anyText();
    plan.letterReasons = readReasons(object.at("letter-reasons"));
    plan.placed = placed(object.at("placed"));
    plan.outlineOnPanel =
        plan.design.outline.transformed(plan.placed.panelTurn, 1.0, plan.placed.centre);
    if (plan.part) {
      plan.part->wholeOnPanel =
          catalogue_.design(asked, object.at("placed"))
              .outline.transformed(plan.placed.panelTurn, 1.0, plan.part->wholeCentre);
    }
    plan.cloth = readList(object.at("cloth"), "checks", clothCheck);
    const Outline framed = framedOutline(plan);
    const Held held{framed, plan.placed.centre};
    const JsonCursor frame = object.at("frame");
    if (!frame.isNull()) {
      plan.frame = readFrameChoice(frame, source_, held);
    }
    plan.onlyTurned = object.at("only-turned").boolean();
    plan.alternatives = readList(object.at("alternatives"), "frames", [&](const JsonCursor& item) {
      return readFrameChoice(item, source_, held);
    });
    plan.rejections = readList(object.at("rejections"), "frames",
                               [this](const JsonCursor& item) { return rejection(item); });
    plan.largestScale = readFactor(object.at("largest-scale"));
    plan.backing = backing(object.at("backing"));
    plan.steps = readList(object.at("steps"), "steps", [](const JsonCursor& item) {
      JsonObject step = item.object();
      return Step{step.at("text").anyText(), step.at("by-hand").boolean()};
    });
    plan.cautions = readList(object.at("cautions"), "cautions",
                             [this](const JsonCursor& item) { return caution(item); });
    plan.assumed = object.at("assumed").enumerators<Measure>(0);
  }

  static Placed placed(const JsonCursor& at) {
    JsonObject object = at.object();
    Placed placed;
    placed.from = object.at("from").enumerator<Landmark>();
    placed.drop = readAnyLength(object.at("drop"));
    placed.centreOffset = readAnyLength(object.at("centre-offset"));
    placed.centreBelowDatum = readAnyLength(object.at("centre-below-datum"));
    placed.lateral = readAnyLength(object.at("lateral"));
    placed.turn = object.at("turn").angle();
    placed.panelTurn = object.at("panel-turn").angle();
    placed.centre = readPoint(object.at("centre"));
    if (const auto bounds = object.find("bounds")) {
      placed.bounds = readBox(*bounds);
    }
    placed.rule = readIdOrEmpty<RuleId>(object.at("rule"));
    placed.dropReasons = readReasons(object.at("drop-reasons"));
    placed.lateralReasons = readReasons(object.at("lateral-reasons"));
    placed.turnReasons = readReasons(object.at("turn-reasons"));
    return placed;
  }

  static ClothCheck clothCheck(const JsonCursor& at) {
    JsonObject object = at.object();
    return {object.at("against").anyText(), readAnyLength(object.at("room")),
            readAnyLength(object.at("least")), object.at("assumed").boolean(),
            object.at("outside").boolean()};
  }

  [[nodiscard]] FrameRejection rejection(const JsonCursor& at) const {
    JsonObject object = at.object();
    return {readFrameId(object.at("frame"), source_.shop),
            object.at("turn").angle(),
            object.at("test").enumerator<FrameTest>(),
            readAnyLength(object.at("missing")),
            object.at("what").anyText(),
            readFactor(object.at("largest-scale"))};
  }

  [[nodiscard]] BackingChoice backing(const JsonCursor& at) const {
    JsonObject object = at.object();
    BackingChoice backing;
    backing.kind = object.at("kind").enumerator<BackingKind>();
    backing.leastWeight = weight(object.at("least-weight"));
    backing.layers = object.at("layers").integer(0, kMostCounted);
    backing.hold = object.at("hold").enumerator<HoldMethod>();
    backing.topping = object.at("topping").boolean();
    backing.skinCover = object.at("skin-cover").boolean();
    backing.needleSize = object.at("needle-size").integer(0, kMostCounted);
    backing.needlePoint = object.at("needle-point").enumerator<NeedlePoint>();
    if (const JsonCursor density = object.at("most-density"); !density.isNull()) {
      backing.mostDensity = readFactor(density);
    }
    backing.cutWidth = readAnyLength(object.at("cut-width"));
    backing.cutHeight = readAnyLength(object.at("cut-height"));
    backing.stock = stock(object.at("stock"));
    backing.stockName = object.at("stock-name").anyText();
    backing.fired = readReasons(object.at("fired"));
    return backing;
  }

  // Nothing is a weight too: that of a backing that no rule chose.
  static ArealWeight weight(const JsonCursor& at) {
    return at.anyText() == exactText(ArealWeight()) ? ArealWeight() : at.weight();
  }

  [[nodiscard]] StockId stock(const JsonCursor& at) const {
    StockId id(at.anyText());
    const bool known = std::any_of(source_.shop.backings.begin(), source_.shop.backings.end(),
                                   [&id](const BackingStock& entry) { return entry.id == id; });
    if (!id.empty() && !known) {
      at.fail("the unknown backing " + at.shown(), "a backing of the shop");
    }
    return id;
  }

  [[nodiscard]] const Caution* caution(const JsonCursor& at) const {
    JsonObject object = at.object();
    const Caution* caution = catalogue_.caution(object.at("rule"));
    requireSameText(object.at("text"), caution->text, "the rule");
    requireSameText(object.at("basis"), caution->basis, "the rule");
    return caution;
  }

  const PlanSource& source_;
  Catalogue& catalogue_;
};

PlanCounts readCounts(const JsonCursor& at) {
  JsonObject object = at.object();
  PlanCounts counts;
  counts.garments = object.at("garments").integer(0, kMostCounted);
  counts.placements = object.at("placements").integer(0, kMostCounted);
  counts.stops = object.at("stops").integer(0, kMostCounted);
  counts.watches = object.at("watches").integer(0, kMostCounted);
  counts.notes = object.at("notes").integer(0, kMostCounted);
  return counts;
}

void requireHead(JsonObject& top) {
  const JsonCursor format = top.at("format");
  if (format.anyText() != "creaseline-plan") {
    format.failShown("\"creaseline-plan\"");
  }
  const JsonCursor version = top.at("version");
  if (version.integer(1, kMostCounted) != kPlanVersion) {
    version.failShown(fmt::format("version {}; this file needs a newer program", kPlanVersion));
  }
}

}  // namespace

Plan readPlan(const std::string& text, const std::string& file, const Order& order,
              const Shop& shop, const Rules& rules) {
  const JsonNode document = parseJson(text, file, kMostPlanValues);
  Reading reading;
  const JsonCursor::Source origin{file, &reading};
  JsonObject top = JsonCursor(origin, document, "").object();
  requireHead(top);
  requireSameText(top.at("order"), order.id, "the order");
  requireSameText(top.at("shop"), shop.name, "the shop");

  const PlanSource source(order, shop, rules);
  Catalogue catalogue(source);
  PlacementReader placements(source, catalogue);
  Plan plan;
  plan.orderId = order.id;
  plan.counts = readCounts(top.at("counts"));
  plan.findings = readFindings(top.at("findings"), source);
  plan.placements = readList(top.at("placements"), "placements",
                             [&](const JsonCursor& item) { return placements.read(item); });
  return plan;
}

}  // namespace creaseline
