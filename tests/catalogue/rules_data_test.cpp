// SPDX-License-Identifier: MIT
// The shipped rules as data: complete, ordered, each with its basis; and the facts of the trade
// that they must carry.
#include <catch2/catch.hpp>
#include <optional>
#include <set>

#include "catalogue/garment_sizes.h"
#include "creaseline/base/duration.h"
#include "creaseline/base/units.h"

using namespace creaseline;
using namespace creaseline::garment_test;

namespace {

constexpr SizeBand kBands[] = {SizeBand::Infant, SizeBand::Youth, SizeBand::Adult,
                               SizeBand::AdultAboveXl};

Length inches(double value) {
  return Length::fromInches(value);
}

template <class T>
bool allows(const std::vector<T>& wanted, const T& value) {
  return wanted.empty() || std::find(wanted.begin(), wanted.end(), value) != wanted.end();
}

// The rule that a size of that band gets: the first that matches.
const PlacementRule* ruleFor(const std::string& location, const std::string& kind, SizeBand band) {
  for (const PlacementRule& rule : shippedRules().placement) {
    if (rule.location == LocationId(location) && allows(rule.kinds, KindId(kind)) &&
        allows(rule.bands, band) && rule.sizes.empty() && rule.blanks.empty()) {
      return &rule;
    }
  }
  return nullptr;
}

// One case of cloth, panel and density, answered by the last rule that fires and names the answer.
struct Case {
  Construction construction = Construction::Knit;
  Stretch stretch = Stretch::Some;
  Pile pile = Pile::None;
  double gramsPerSquareMetre = 180.0;
  PanelName panel = PanelName::Front;
  SizeBand band = SizeBand::Adult;
  bool insideSeen = false, sheer = false, magnetic = false;
  double density = 0.5;
};

bool fires(const BackingConditions& when, const Case& asked) {
  const auto weight = ArealWeight::fromGramsPerSquareMetre(asked.gramsPerSquareMetre);
  return allows(when.construction, asked.construction) && allows(when.stretch, asked.stretch) &&
         allows(when.pile, asked.pile) && allows(when.panels, asked.panel) &&
         allows(when.bands, asked.band) &&
         when.insideSeen.value_or(asked.insideSeen) == asked.insideSeen &&
         when.sheer.value_or(asked.sheer) == asked.sheer &&
         when.magneticFrame.value_or(asked.magnetic) == asked.magnetic &&
         weight >= when.weightFrom.value_or(weight) &&
         (!when.weightBelow || weight < *when.weightBelow) &&
         asked.density >= when.densityFrom.value_or(asked.density) &&
         (!when.densityBelow || asked.density < *when.densityBelow);
}

template <class T>
std::optional<T> answer(std::optional<T> BackingRule::*field, const Case& asked) {
  std::optional<T> last;
  for (const BackingRule& rule : shippedRules().backing) {
    if ((rule.*field) && fires(rule.when, asked)) {
      last = rule.*field;
    }
  }
  return last;
}

Case heavyFleece(const std::string& kindId, PanelName panel) {
  // 50/50 brushed fleece, as heavy hoodies are made of.
  Case asked;
  asked.pile = Pile::BrushedInside;
  asked.gramsPerSquareMetre = 300.0;
  asked.panel = panel;
  asked.insideSeen = kindNamed(kindId).showsInside(panel);
  return asked;
}

template <class Entry>
void checkBasis(const std::vector<Entry>& entries, std::set<std::string>& ids) {
  for (const Entry& entry : entries) {
    CAPTURE(entry.id.text());
    CHECK(entry.basis.size() >= 11);  // "from memory" is the shortest there is
    CHECK(ids.insert(entry.id.text()).second);
  }
}

}  // namespace

TEST_CASE("every rule has a basis and an id of its own", "[rules]") {
  std::set<std::string> ids;
  checkBasis(shippedRules().placement, ids);
  checkBasis(shippedRules().backing, ids);
  checkBasis(shippedRules().cautions, ids);
  for (const GarmentKind& kind : shippedRules().kinds) {
    checkBasis(kind.proportions, ids);
  }
  const std::vector<const DefaultValue*> defaults = shippedRules().defaults.all();
  CHECK(defaults.size() == 37);
  for (const DefaultValue* value : defaults) {
    CAPTURE(value->id);
    CHECK_FALSE(value->text.empty());
    CHECK(value->basis.size() >= 11);
  }
}

TEST_CASE("every kind says what such garments are mostly made of", "[rules]") {
  for (const GarmentKind& kind : shippedRules().kinds) {
    CAPTURE(kind.id.text());
    CHECK(kind.usualFabric.fabric.proposed);
    CHECK_FALSE(kind.usualFabric.basis.empty());
    CHECK_FALSE(kind.usualFabric.fabric.fibres.empty());
  }
}

TEST_CASE("every location has rules for whole kinds: for each size band or for none", "[rules]") {
  REQUIRE(shippedRules().locations.size() == 37);
  for (const Location& location : shippedRules().locations) {
    bool anyKind = false;
    for (const GarmentKind& kind : shippedRules().kinds) {
      const bool adult = ruleFor(location.id.text(), kind.id.text(), SizeBand::Adult) != nullptr;
      anyKind = anyKind || adult;
      for (const SizeBand band : kBands) {
        CAPTURE(location.id.text(), kind.id.text(), nameOf(band));
        // Practice leaves the hood of infants' garments plain (common practice, no source).
        const bool plain = location.panel == PanelName::Hood && band == SizeBand::Infant;
        if (kind.has(location.panel)) {
          CHECK((ruleFor(location.id.text(), kind.id.text(), band) != nullptr) ==
                (adult && !plain));
        }
      }
    }
    CHECK(anyKind);
  }
}

TEST_CASE("a location is offered exactly where the kind has the part that it needs", "[rules]") {
  struct Row {
    std::vector<const char*> locations;
    bool (*needs)(const GarmentKind&);
  };
  const Row rows[] = {
      {{"centre-chest", "left-chest", "right-chest"},
       [](const GarmentKind& kind) { return kind.has(PanelName::Front); }},
      {{"upper-back", "full-back"},
       [](const GarmentKind& kind) { return kind.has(PanelName::Back); }},
      {{"left-sleeve", "right-sleeve"},
       [](const GarmentKind& kind) { return kind.has(PanelName::LeftSleeve); }},
      {{"hood-back", "hood-left", "hood-right", "hood-edge"},
       [](const GarmentKind& kind) { return kind.has(PanelName::Hood); }},
      // A hood that lies back covers the nape.
      {{"nape"},
       [](const GarmentKind& kind) {
         return kind.has(PanelName::Back) && !kind.has(PanelName::Hood);
       }},
      {{"yoke"}, [](const GarmentKind& kind) { return kind.yoke; }},
      {{"left-cuff", "right-cuff"},
       [](const GarmentKind& kind) { return kind.cuff == CuffForm::Band; }},
      {{"left-forearm", "right-forearm"},
       [](const GarmentKind& kind) { return kind.sleeve == SleeveForm::Long; }},
      {{"above-pocket", "on-pocket"},
       [](const GarmentKind& kind) { return kind.pocket == PocketForm::Chest; }},
      {{"towel-end", "towel-border"}, [](const GarmentKind& kind) { return kind.flat.border; }},
      {{"tote-centre", "tote-top"},  // a bag; an apron's straps are its neck loop
       [](const GarmentKind& kind) {
         return kind.flat.straps && kind.flat.bottom == EdgeName::BottomSeam;
       }},
      {{"left-hip", "right-thigh", "left-leg-hem"},
       [](const GarmentKind& kind) { return kind.form == KindForm::Legs; }}};
  for (const Row& row : rows) {
    for (const char* location : row.locations) {
      for (const GarmentKind& kind : shippedRules().kinds) {
        CAPTURE(location, kind.id.text());
        const bool found = kind.has(shippedRules().location(LocationId(location))->panel) &&
                           ruleFor(location, kind.id.text(), SizeBand::Adult) != nullptr;
        CHECK(found == row.needs(kind));
      }
    }
  }
}

TEST_CASE("placement rules are sound in themselves", "[rules]") {
  for (const PlacementRule& rule : shippedRules().placement) {
    CAPTURE(rule.id.text());
    const Location* location = shippedRules().location(rule.location);
    REQUIRE(location != nullptr);
    CHECK(rule.least <= rule.distance);
    CHECK(rule.distance <= rule.most);
    const bool middle = rule.from == Landmark::PieceMiddle || rule.from == Landmark::BorderMiddle;
    CHECK((rule.least > Length()) != middle);
    CHECK_FALSE(rule.note.empty());
    CHECK_FALSE(rule.house);
    CHECK(rule.turnReason.empty() == (rule.turn == Angle()));
    CHECK((rule.sidewaysDistance > Length()) ==
          (rule.sideways == Sideways::FromCentreLine || rule.sideways == Sideways::FromSide));
    CHECK((location->viewerSide == Side::Centre || rule.sideways != Sideways::CentreLine ||
           isSleeve(location->panel) || isLeg(location->panel)));
    REQUIRE(rule.leastWidth);  // every one says how large a design looks right there
    REQUIRE(rule.mostWidth);
    CHECK(*rule.leastWidth < *rule.mostWidth);
    CHECK_FALSE(rule.basis.empty());
    for (const KindId& id : rule.kinds) {
      const GarmentKind* kind = shippedRules().kind(id);
      REQUIRE(kind != nullptr);
      CHECK(kind->has(location->panel));
    }
  }
}

TEST_CASE("no placement rule is hidden behind an earlier one", "[rules]") {
  std::set<RuleId> reached;
  for (const Location& location : shippedRules().locations) {
    for (const GarmentKind& kind : shippedRules().kinds) {
      for (const SizeBand band : kBands) {
        if (const auto* rule = ruleFor(location.id.text(), kind.id.text(), band)) {
          reached.insert(rule->id);
        }
      }
    }
  }
  for (const PlacementRule& rule : shippedRules().placement) {
    CAPTURE(rule.id.text());
    CHECK(reached.count(rule.id) == 1);
  }
}

TEST_CASE("a chest design starts 3 in below the collar seam up to XL and 4 in above",
          "[rules][trade]") {
  // Common practice, no source.
  for (const GarmentKind& kind : shippedRules().kinds) {
    CAPTURE(kind.id.text());
    const PlacementRule* adult = ruleFor("centre-chest", kind.id.text(), SizeBand::Adult);
    REQUIRE(adult != nullptr);
    CHECK(adult->from == Landmark::CollarSeam);
    CHECK(adult->anchor == Anchor::NearEdge);
    CHECK(adult->sideways == Sideways::CentreLine);
    CHECK(adult->distance == inches(3));
    CHECK(adult->least == inches(3));
    const PlacementRule* above = ruleFor("centre-chest", kind.id.text(), SizeBand::AdultAboveXl);
    REQUIRE(above != nullptr);
    CHECK(above->from == Landmark::CollarSeam);
    CHECK(above->anchor == Anchor::NearEdge);
    CHECK(above->distance == inches(4));
    const PlacementRule* youth = ruleFor("centre-chest", kind.id.text(), SizeBand::Youth);
    REQUIRE(youth != nullptr);
    CHECK(youth->distance == inches(3));
  }
}

TEST_CASE("a hood design reads upright when the hood lies back", "[rules][trade]") {
  // Common practice, no source.
  for (const char* kind : {"pullover-hoodie", "full-zip-hoodie"}) {
    for (const SizeBand band : {SizeBand::Youth, SizeBand::Adult, SizeBand::AdultAboveXl}) {
      const PlacementRule* rule = ruleFor("hood-back", kind, band);
      REQUIRE(rule != nullptr);
      CHECK(rule->from == Landmark::FaceEdge);
      CHECK(rule->anchor == Anchor::NearEdge);
      CHECK(rule->sideways == Sideways::CentreLine);
      CHECK(rule->turn == Angle::fromDegrees(180.0));
      CHECK_THAT(rule->turnReason, Catch::Contains("when the hood lies back"));
    }
  }
}

TEST_CASE("a sleeve design clears the cuff rib of a polo", "[rules]") {
  for (const ChartSize& size : usualSizes()) {
    const PlacementRule* rule = ruleFor("left-sleeve", "polo", size.band);
    REQUIRE(rule != nullptr);
    CHECK(rule->from == Landmark::CuffEdge);
    const GarmentShape polo = drawn(kindNamed("polo"), size);
    CHECK(rule->distance > polo.measures.at(Measure::CuffHeight).value);
  }
}

TEST_CASE("a heavy fleece hoodie gets cut-away on the body and tear-away in the hood",
          "[rules][trade]") {
  // Common practice, no source: the inside of the body is hidden, that of the hood is seen.
  for (const char* kind : {"pullover-hoodie", "full-zip-hoodie"}) {
    CAPTURE(kind);
    for (const bool magnetic : {false, true}) {
      for (const double density : {0.1, 0.5, 1.0, 1.5}) {
        for (const Stretch stretch : {Stretch::None, Stretch::Some}) {
          Case body = heavyFleece(kind, PanelName::Front);
          body.magnetic = magnetic;
          body.density = density;
          body.stretch = stretch;
          CHECK(answer(&BackingRule::kind, body) == BackingKind::CutAway);
          Case hood = heavyFleece(kind, PanelName::Hood);
          hood.magnetic = magnetic;
          hood.density = density;
          hood.stretch = stretch;
          CHECK(answer(&BackingRule::kind, hood) == BackingKind::TearAway);
        }
      }
    }
  }
}

TEST_CASE("cloth that stretches never gets less than cut-away on the body", "[rules][trade]") {
  // Common practice, no source.
  for (const auto& construction : EnumNames<Construction>::names) {
    for (const auto& pile : EnumNames<Pile>::names) {
      for (const Stretch stretch : {Stretch::Some, Stretch::High}) {
        for (const double density : {0.1, 0.5, 1.0, 1.5}) {
          for (const double weight : {100.0, 200.0, 300.0, 400.0}) {
            for (const bool sheer : {false, true}) {
              Case asked;
              asked.construction = construction.first;
              asked.pile = pile.first;
              asked.stretch = stretch;
              asked.density = density;
              asked.gramsPerSquareMetre = weight;
              asked.sheer = sheer;
              CHECK(answer(&BackingRule::kind, asked) == BackingKind::CutAway);
            }
          }
        }
      }
    }
  }
}

TEST_CASE("backing follows cloth and density as practice says", "[rules][trade]") {
  // All common practice, no source; class edges of density are a proposal of this program.
  Case woven;
  woven.construction = Construction::Woven;
  woven.stretch = Stretch::None;
  CHECK(answer(&BackingRule::kind, woven) == BackingKind::TearAway);
  CHECK(answer(&BackingRule::needlePoint, woven) == NeedlePoint::Sharp);
  CHECK(answer(&BackingRule::hold, woven) == HoldMethod::Hooped);

  Case jersey;
  CHECK(answer(&BackingRule::kind, jersey) == BackingKind::CutAway);
  CHECK(answer(&BackingRule::needlePoint, jersey) == NeedlePoint::Ball);
  CHECK(answer(&BackingRule::needleSize, jersey) == 75);
  CHECK(answer(&BackingRule::topping, jersey) == false);
  CHECK(answer(&BackingRule::skinCover, jersey) == false);
  CHECK(answer(&BackingRule::layers, jersey) == 1);
  CHECK(answer(&BackingRule::leastWeight, jersey) == ArealWeight::fromGramsPerSquareMetre(68.0));
  jersey.density = 1.0;
  CHECK(answer(&BackingRule::layers, jersey) == 2);
  jersey.band = SizeBand::Infant;
  CHECK(answer(&BackingRule::skinCover, jersey) == true);

  for (const Pile pile : {Pile::Textured, Pile::Loop, Pile::High}) {
    Case napped;
    napped.pile = pile;
    CHECK(answer(&BackingRule::topping, napped) == true);
  }
  CHECK(answer(&BackingRule::hold, heavyFleece("pullover-hoodie", PanelName::Front)) ==
        HoldMethod::Floated);
}

TEST_CASE("every case of cloth, panel and density gets a whole answer", "[rules]") {
  for (const auto& construction : EnumNames<Construction>::names) {
    for (const auto& panel : EnumNames<PanelName>::names) {
      for (const double density : {0.0, 0.35, 0.8, 1.3, 9.0}) {
        Case asked;
        asked.construction = construction.first;
        asked.panel = panel.first;
        asked.density = density;
        CHECK(answer(&BackingRule::kind, asked).has_value());
        CHECK(answer(&BackingRule::leastWeight, asked).has_value());
        CHECK(answer(&BackingRule::layers, asked).has_value());
        CHECK(answer(&BackingRule::hold, asked).has_value());
        CHECK(answer(&BackingRule::topping, asked).has_value());
        CHECK(answer(&BackingRule::needleSize, asked).has_value());
        CHECK(answer(&BackingRule::needlePoint, asked).has_value());
        CHECK(answer(&BackingRule::skinCover, asked).has_value());
        CHECK(answer(&BackingRule::mostDensity, asked).has_value());
      }
    }
  }
}

TEST_CASE("cautions cover every occasion and put makers and law first", "[rules]") {
  for (const auto& [occasion, name] : EnumNames<CautionOccasion>::names) {
    CAPTURE(name);
    const auto& cautions = shippedRules().cautions;
    CHECK(std::any_of(cautions.begin(), cautions.end(),
                      [wanted = occasion](const Caution& c) { return c.when == wanted; }));
  }
  const Caution& last = shippedRules().cautions.back();
  CHECK(last.when == CautionOccasion::Always);
  CHECK_THAT(last.text, Catch::Contains("makers") && Catch::Contains("local law"));
}

TEST_CASE("published distances for people with implants are stated", "[rules][outside]") {
  // US FDA advice on consumer magnets, May 2021, as reported: 6 in (15 cm).
  const auto& cautions = shippedRules().cautions;
  CHECK(std::any_of(cautions.begin(), cautions.end(), [](const Caution& caution) {
    return caution.when == CautionOccasion::MagneticFrame &&
           caution.text.find("15 cm (6 in)") != std::string::npos;
  }));
}

TEST_CASE("the default times lie within what the trade says", "[rules]") {
  const Defaults& defaults = shippedRules().defaults;
  struct Row {
    const DefaultValue& value;
    double least, most;  // seconds; common practice, no source
  };
  const Row rows[] = {{defaults.hoopingTime, 60.0, 180.0},
                      {defaults.colourChange, 5.0, 10.0},
                      {defaults.rethreading, 60.0, 120.0},
                      {defaults.threadTrim, 5.0, 7.0}};
  for (const Row& row : rows) {
    CAPTURE(row.value.id);
    CHECK(row.value.basis.starts_with("common practice, no source"));
    CHECK(parseDuration(row.value.text).value().seconds() >= row.least);
    CHECK(parseDuration(row.value.text).value().seconds() <= row.most);
  }
  for (const DefaultValue* estimate : {&defaults.fabricLaying, &defaults.fabricTrimming}) {
    CAPTURE(estimate->id);
    CHECK(estimate->basis.find("from memory") != std::string::npos);
    CHECK(parseDuration(estimate->text).value() > Duration());
  }
}

TEST_CASE("the default figures read as lengths, angle and weight", "[rules]") {
  const Defaults& defaults = shippedRules().defaults;
  // 10 to 12 mm inside the frame's inner edge, 25 mm of backing beyond it: common practice, no
  // source.
  CHECK(parseLength(defaults.footClearance.text).value() == Length::fromMm(10.0));
  CHECK(parseLength(defaults.clampMargin.text).value() == Length::fromMm(25.0));
  CHECK(parseAngle(defaults.hoopingTurn.text).value() == Angle::fromDegrees(2.0));
  // Wider than half the chest of a child of two years, 54 cm (W. Aldrich, Metric Pattern Cutting
  // for Children's Wear and Babywear, as transcribed).
  CHECK(parseLength(defaults.infantBodyWidth.text).value() > Length::fromMm(270.0));
  CHECK(parseLength(defaults.infantBodyWidth.text).value() <
        parseLength(defaults.youthBodyWidth.text).value());
  CHECK(parseLength(defaults.youthBodyWidth.text).value() <
        parseLength(defaults.adultXlBodyWidth.text).value());
  // More than a T-shirt weighs, 150 to 200 g (from memory), less than a bath towel, 400 g and more.
  CHECK(std::stoi(defaults.heavyGarment.text) > 200);
  CHECK(std::stoi(defaults.heavyGarment.text) < 400);
  // Half of men's XL, 118 cm (EN 13402-3:2004, as transcribed), with regular ease of 8 to 16 cm.
  const Length xl = parseLength(defaults.adultXlBodyWidth.text).value();
  CHECK(xl >= Length::fromMm((1180.0 + 80.0) / 2.0));
  CHECK(xl <= Length::fromMm((1180.0 + 160.0) / 2.0));
}
