// SPDX-License-Identifier: MIT
// Filling of measures that a chart lacks, and refusal of measures that contradict each other.
#include <catch2/catch.hpp>

#include "catalogue/garment_sizes.h"
#include "creaseline/base/error.h"
#include "support/spoken.h"

using namespace creaseline;
using namespace creaseline::garment_test;

namespace {

GarmentKind plainKind(std::vector<ProportionRule> proportions) {
  GarmentKind kind = kindNamed("t-shirt");
  kind.proportions.insert(kind.proportions.begin(), proportions.begin(), proportions.end());
  return kind;
}

ProportionRule ratio(const std::string& id, Measure measure, Measure of, double factor) {
  ProportionRule rule;
  rule.id = RuleId(id);
  rule.measure = measure;
  rule.of = of;
  rule.factor = factor;
  rule.basis = "test";
  return rule;
}

ChartSize mediumSize() {
  return chartSize("M", SizeBand::Adult, 56, 70);
}

std::string refusal(const GarmentKind& kind, const ChartSize& size) {
  try {
    static_cast<void>(drawn(kind, size));
  } catch (const InputError& error) {
    CHECK(error.details().file == "chart.csv");
    CHECK(error.details().where == "size " + size.name.text());
    CHECK_FALSE(error.details().expected.empty());
    return error.what();
  }
  return {};
}

}  // namespace

TEST_CASE("body width and body length are never made up", "[garment][bad-input]") {
  for (const GarmentKind& kind : shippedRules().kinds) {
    for (const Measure measure : {Measure::BodyWidth, Measure::BodyLength}) {
      ChartSize size = mediumSize();
      size.measures.erase(measure);
      CAPTURE(kind.id.text(), nameOf(measure));
      CHECK_THAT(refusal(kind, size), Catch::Contains(std::string(nameOf(measure))));
    }
  }
}

TEST_CASE("measures are said by their names in files, in another language by words",
          "[garment][bad-input]") {
  const GarmentKind kind = kindNamed("t-shirt");
  ChartSize size = mediumSize();
  size.measures.erase(Measure::BodyLength);
  CHECK(refusal(kind, size) ==
        "chart.csv: size M: found no body-length for size M, expected body-length in the size "
        "chart");
  Phrasebook::Content content;
  content.phrases = {{"body length", "largo del cuerpo"},
                     {"no {} for size {}", "la talla {1} sin {0}"},
                     {"{} in the size chart", "{} en la tabla de tallas"},
                     {"found {}, expected {}", "encontrado: {}; esperado: {}"}};
  const Phrasebook book(content);
  const Speaking speaking(book);
  CHECK(refusal(kind, size) ==
        "chart.csv: size M: encontrado: la talla M sin largo del cuerpo; esperado: largo del "
        "cuerpo en la tabla de tallas");
}

TEST_CASE("a filled measure says so, with its rule and basis; a given one does not",
          "[garment][assumed]") {
  for (const GarmentKind& kind : shippedRules().kinds) {
    const GarmentShape shape = drawn(kind, mediumSize());
    CAPTURE(kind.id.text());
    for (const auto& [measure, value] : shape.measures) {
      CAPTURE(nameOf(measure));
      const bool given = measure == Measure::BodyWidth || measure == Measure::BodyLength;
      CHECK(value.assumed != given);
      CHECK(value.rule.empty() == given);
      CHECK_FALSE(value.basis.empty());
    }
    // The same garment with every measure given is the same shape, and nothing is assumed.
    ChartSize full = mediumSize();
    for (const auto& [measure, value] : shape.measures) {
      full.measures[measure] = value.value;
    }
    const GarmentShape measured = drawn(kind, full);
    for (const auto& [measure, value] : measured.measures) {
      CHECK_FALSE(value.assumed);
    }
    for (const auto& [name, panel] : measured.panels) {
      CHECK(panel.outline == shape.panel(name)->outline);
      for (const KeepOut& keepOut : panel.keepOuts) {
        CHECK_FALSE(keepOut.assumed);
      }
      for (const KeepOut& keepOut : shape.panel(name)->keepOuts) {
        CHECK(keepOut.assumed);
      }
    }
  }
}

TEST_CASE("a keep-out is assumed only if one of its own measures is", "[garment][assumed]") {
  ChartSize size = mediumSize();
  size.measures[Measure::PocketWidth] = Length::fromMm(340.0);
  size.measures[Measure::PocketTopWidth] = Length::fromMm(210.0);
  size.measures[Measure::PocketHeight] = Length::fromMm(200.0);
  const auto pocketAssumed = [&size] {
    const GarmentShape shape = drawn(kindNamed("pullover-hoodie"), size);
    for (const KeepOut& keepOut : shape.panel(PanelName::Front)->keepOuts) {
      if (keepOut.name == KeepOutName::PocketEdge) {
        return keepOut.assumed;
      }
    }
    FAIL("no pocket");
    return false;
  };
  CHECK(pocketAssumed());  // its place above the hem is not given
  size.measures[Measure::PocketAboveHem] = Length::fromMm(65.0);
  CHECK_FALSE(pocketAssumed());
}

TEST_CASE("the first rule whose source is known fills, and a source may be filled itself",
          "[garment][assumed]") {
  // Sleeve width from hood height (unknown to a T-shirt), then from the filled shoulder width.
  const GarmentKind kind =
      plainKind({ratio("from-hood", Measure::SleeveWidth, Measure::HoodHeight, 0.5),
                 ratio("from-shoulder", Measure::SleeveWidth, Measure::ShoulderWidth, 0.5),
                 ratio("from-width", Measure::ShoulderWidth, Measure::BodyWidth, 0.75)});
  ChartSize size = chartSize("M", SizeBand::Adult, 52, 70);
  GarmentShape shape = drawn(kind, size);
  CHECK(millimetres(shape, Measure::ShoulderWidth) == Approx(390.0));
  CHECK(millimetres(shape, Measure::SleeveWidth) == Approx(195.0));
  CHECK(shape.measures.at(Measure::SleeveWidth).rule == RuleId("from-shoulder"));
  // A chart may give a measure that the kind itself does not need.
  size.measures[Measure::HoodHeight] = Length::fromMm(360.0);
  shape = drawn(kind, size);
  CHECK(millimetres(shape, Measure::SleeveWidth) == Approx(180.0));
  CHECK(shape.measures.count(Measure::HoodHeight) == 0);
}

TEST_CASE("rules of another band do not fill", "[garment][assumed]") {
  ProportionRule infantOnly = ratio("infant-only", Measure::NeckWidth, Measure::BodyWidth, 0.3);
  infantOnly.bands = {SizeBand::Infant};
  const GarmentKind kind = plainKind({infantOnly});
  CHECK(drawn(kind, mediumSize()).measures.at(Measure::NeckWidth).rule != RuleId("infant-only"));
  CHECK(drawn(kind, chartSize("12M", SizeBand::Infant, 30, 34))
            .measures.at(Measure::NeckWidth)
            .rule == RuleId("infant-only"));
}

TEST_CASE("rules that go round in a circle fill nothing", "[garment][bad-input]") {
  GarmentKind kind = kindNamed("t-shirt");
  kind.proportions = {ratio("a", Measure::NeckWidth, Measure::ShoulderWidth, 0.4),
                      ratio("b", Measure::ShoulderWidth, Measure::NeckWidth, 2.5)};
  CHECK_THAT(refusal(kind, mediumSize()), Catch::Contains("neck-width"));
}

TEST_CASE("measures that contradict each other are refused by name", "[garment][bad-input]") {
  struct Contradiction {
    const char* kind;
    Measure measure;
    double mm;
    const char* against;
  };
  const Contradiction contradictions[] = {
      {"t-shirt", Measure::NeckWidth, 500, "shoulder-width"},
      {"t-shirt", Measure::ShoulderWidth, 600, "body-width"},
      {"t-shirt", Measure::ShoulderWidth, 150, "neck-width"},
      {"t-shirt", Measure::ShoulderDrop, 260, "armhole-depth"},
      {"t-shirt", Measure::ArmholeDepth, 700, "body-length"},
      {"t-shirt", Measure::BodyLength, 200, "armhole-depth"},
      {"t-shirt", Measure::FrontNeckDrop, 700, "body-length"},
      {"t-shirt", Measure::BackNeckDrop, 700, "body-length"},
      {"t-shirt", Measure::CuffWidth, 260, "sleeve-width"},
      {"crew-sweatshirt", Measure::CuffHeight, 650, "sleeve-length"},
      {"crew-sweatshirt", Measure::RibHeight, 450, "body-length"},
      {"pullover-hoodie", Measure::PocketWidth, 580, "body-width"},
      {"pullover-hoodie", Measure::PocketTopWidth, 400, "pocket-width"},
      {"pullover-hoodie", Measure::PocketHeight, 600, "body-length"},
      {"full-zip-hoodie", Measure::ZipWidth, 200, "neck-width"},
      {"full-zip-hoodie", Measure::PocketTopWidth, 30, "zip-width"},
      {"polo", Measure::PlacketLength, 690, "body-length"},
      {"polo", Measure::PlacketWidth, 200, "neck-width"},
      {"button-up-shirt", Measure::PlacketWidth, 200, "neck-width"},
      {"button-up-shirt", Measure::YokeDepth, 260, "armhole-depth"},
      {"button-up-shirt", Measure::PocketFromCentre, 250, "body-width"},
      {"button-up-shirt", Measure::PocketFromCentre, 50, "pocket-width"},
      {"button-up-shirt", Measure::PocketBelowHps, 650, "body-length"},
      {"quarter-zip", Measure::ZipLength, 620, "body-length"},
      {"soft-jacket", Measure::PocketWidth, 290, "body-width"},
      {"soft-jacket", Measure::PocketAboveHem, 400, "body-length"},
      {"infant-bodysuit", Measure::LegRise, 500, "body-length"},
      {"infant-bodysuit", Measure::CrotchWidth, 570, "body-width"},
      {"apron", Measure::TopWidth, 570, "body-width"},
      {"apron", Measure::ShapedDepth, 710, "body-length"},
      {"bath-towel", Measure::BorderAboveHem, 650, "body-length"},
      {"tote-bag", Measure::StrapFromCentre, 290, "top-width"},
      {"trousers", Measure::WaistWidth, 700, "thigh-width"},
      {"shorts", Measure::LegHemWidth, 400, "thigh-width"},
      {"shorts", Measure::FrontRise, 710, "body-length"}};
  for (const Contradiction& contradiction : contradictions) {
    ChartSize size = mediumSize();
    size.measures[contradiction.measure] = Length::fromMm(contradiction.mm);
    const std::string text = refusal(kindNamed(contradiction.kind), size);
    CAPTURE(contradiction.kind, contradiction.mm);
    CHECK_THAT(text, Catch::Contains(std::string(nameOf(contradiction.measure))));
    CHECK_THAT(text, Catch::Contains(contradiction.against));
  }
}

TEST_CASE("a measure of nothing, below nothing or beyond any garment is refused",
          "[garment][bad-input]") {
  for (const double mm : {0.0, -10.0, 3001.0, 900000.0}) {
    for (const Measure measure : {Measure::BodyWidth, Measure::NeckWidth, Measure::SleeveLength}) {
      ChartSize size = mediumSize();
      size.measures[measure] = Length::fromMm(mm);
      CAPTURE(mm, nameOf(measure));
      CHECK_THAT(refusal(kindNamed("t-shirt"), size),
                 Catch::Contains(std::string(nameOf(measure))));
    }
  }
}

TEST_CASE("a garment without ribs, with straight neck and square shoulders is drawn", "[garment]") {
  ChartSize size = mediumSize();
  for (const Measure measure : {Measure::RibHeight, Measure::CuffHeight, Measure::PocketAboveHem,
                                Measure::BackNeckDrop, Measure::ShoulderDrop}) {
    size.measures[measure] = Length();
  }
  const GarmentShape shape = drawn(kindNamed("pullover-hoodie"), size);
  for (const auto& [name, panel] : shape.panels) {
    CAPTURE(nameOf(name));
    CHECK_FALSE(selfCrossing(panel.outline).has_value());
    for (const KeepOut& keepOut : panel.keepOuts) {
      CHECK(keepOut.name != KeepOutName::HemRib);
      CHECK(keepOut.name != KeepOutName::CuffRib);
      CHECK(isConvex(keepOut.area));
    }
  }
}
