// SPDX-License-Identifier: MIT
// Fills the measures that a size chart lacks, and finds measures that contradict each other.
#include <algorithm>
#include <optional>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "base/worded.h"
#include "catalogue/garment_shape_parts.h"
#include "catalogue/said_name.h"
#include "creaseline/base/error.h"
#include "creaseline/base/spoken_units.h"
#include "creaseline/base/units.h"

namespace creaseline::garment {
namespace {

// Far beyond any garment; keeps a slip of the unit from becoming a drawing of a million points.
constexpr Length kLongest = Length::fromMm(3000.0);

// One size being filled. A measure may be filled from another filled one.
class Filling {
 public:
  Filling(const GarmentKind& kind, const ChartSize& size) : kind_(&kind), size_(&size) {}

  std::optional<MeasureValue> value(Measure measure) {
    const auto given = size_->measures.find(measure);
    if (given != size_->measures.end()) {
      return size_->proposed.count(measure) > 0
                 ? MeasureValue{given->second, true, RuleId(),
                                worded("proposed in the size chart, measured by nobody yet")}
                 : MeasureValue{given->second, false, RuleId(), inLanguage("size chart")};
    }
    if (!underway_.insert(measure).second) {
      return std::nullopt;  // rules that go round in a circle fill nothing
    }
    std::optional<MeasureValue> filled = byRule(measure);
    underway_.erase(measure);
    return filled;
  }

 private:
  std::optional<MeasureValue> byRule(Measure measure) {
    for (const ProportionRule& rule : kind_->proportions) {
      if (rule.measure != measure || !appliesTo(rule)) {
        continue;
      }
      Length base;
      if (rule.of) {
        const auto of = value(*rule.of);
        if (!of) {
          continue;
        }
        base = of->value * rule.factor;
      }
      return MeasureValue{std::max(base + rule.plus, Length()), true, rule.id, rule.basis};
    }
    return std::nullopt;
  }

  bool appliesTo(const ProportionRule& rule) const {
    return rule.bands.empty() ||
           std::find(rule.bands.begin(), rule.bands.end(), size_->band) != rule.bands.end();
  }

  const GarmentKind* kind_;
  const ChartSize* size_;
  std::set<Measure> underway_;
};

// Measures that may be zero: a garment without rib, a pocket at the hem, a straight back neck.
bool mayVanish(Measure measure) {
  switch (measure) {
    case Measure::RibHeight:
    case Measure::CuffHeight:
    case Measure::PocketAboveHem:
    case Measure::BackNeckDrop:
    case Measure::ShoulderDrop:
    case Measure::ShapedDepth:
      return true;
    default:
      return false;
  }
}

// Compares sums of measures and says which of them were assumed.
class Comparison {
 public:
  Comparison(const MeasureTable& table, const std::string& file, const std::string& where)
      : table_(&table), file_(&file), where_(&where) {}

  void requireBelow(const std::vector<Measure>& lesser, const std::vector<Measure>& greater) const {
    if (!(sum(lesser) < sum(greater))) {
      refuse(lesser, greater, worded("{} less than {}", list(lesser, false), list(greater, false)));
    }
  }
  void requireNotAbove(const std::vector<Measure>& lesser,
                       const std::vector<Measure>& greater) const {
    if (sum(lesser) > sum(greater)) {
      refuse(lesser, greater,
             worded("{} not more than {}", list(lesser, false), list(greater, false)));
    }
  }

 private:
  Length sum(const std::vector<Measure>& measures) const {
    Length total;
    for (const Measure measure : measures) {
      total += table_->at(measure).value;
    }
    return total;
  }

  [[noreturn]] void refuse(const std::vector<Measure>& lesser, const std::vector<Measure>& greater,
                           std::string expected) const {
    throw InputError({*file_, *where_,
                      worded("{} against {}", list(lesser, true), list(greater, true)),
                      std::move(expected)});
  }

  std::string list(const std::vector<Measure>& measures, bool values) const {
    std::string text;
    for (const Measure measure : measures) {
      const std::string name = values ? withValue(measure) : saidName(measure);
      text = text.empty() ? name : worded("{} and {}", text, name);
    }
    return text;
  }

  std::string withValue(Measure measure) const {
    const MeasureValue& value = table_->at(measure);
    const std::string length = spokenLength(value.value);
    return value.assumed ? worded("{} {} (assumed)", saidName(measure), length)
                         : fmt::format("{} {}", saidName(measure), length);
  }

  const MeasureTable* table_;
  const std::string* file_;
  const std::string* where_;
};

void checkRange(const MeasureTable& table, const std::string& file, const std::string& where) {
  for (const auto& [measure, value] : table) {
    const bool zeroAllowed = mayVanish(measure);
    if (value.value < Length() || (value.value == Length() && !zeroAllowed) ||
        value.value > kLongest) {
      throw InputError({file, where,
                        fmt::format("{} {}", saidName(measure), spokenLength(value.value)),
                        zeroAllowed ? worded("a length of at least {} and at most {}",
                                             spokenLength(Length()), spokenLength(kLongest))
                                    : worded("a length above {} and at most {}",
                                             spokenLength(Length()), spokenLength(kLongest))});
    }
  }
}

std::vector<Measure> openingMeasures(FrontOpening opening) {
  switch (opening) {
    case FrontOpening::None:
      return {};
    case FrontOpening::Placket:
      return {Measure::PlacketLength, Measure::PlacketWidth};
    case FrontOpening::FullZip:
      return {Measure::ZipWidth};
    case FrontOpening::QuarterZip:
      return {Measure::ZipLength, Measure::ZipWidth};
    case FrontOpening::Buttons:
    case FrontOpening::Wrap:
      return {Measure::PlacketWidth};
  }
  return {};
}

void checkPocket(const Comparison& compare, const GarmentKind& kind) {
  switch (kind.pocket) {
    case PocketForm::None:
      return;
    case PocketForm::Kangaroo:
    case PocketForm::SplitKangaroo:
      compare.requireNotAbove({Measure::PocketWidth}, {Measure::BodyWidth});
      compare.requireNotAbove({Measure::PocketTopWidth}, {Measure::PocketWidth});
      compare.requireBelow({Measure::PocketHeight, Measure::PocketAboveHem, Measure::FrontNeckDrop},
                           {Measure::BodyLength});
      return;
    case PocketForm::Chest:
      // Half of it lies beside its middle, the other side of the centre line is as wide.
      compare.requireBelow(
          {Measure::PocketFromCentre, Measure::PocketFromCentre, Measure::PocketWidth},
          {Measure::BodyWidth});
      compare.requireBelow({Measure::PocketWidth},
                           {Measure::PocketFromCentre, Measure::PocketFromCentre});
      compare.requireBelow({Measure::PocketBelowHps, Measure::PocketHeight}, {Measure::BodyLength});
      return;
    case PocketForm::Side:
      compare.requireBelow({Measure::PocketWidth, Measure::PocketWidth}, {Measure::BodyWidth});
      compare.requireBelow({Measure::PocketHeight, Measure::PocketAboveHem, Measure::ArmholeDepth},
                           {Measure::BodyLength});
      return;
  }
}

// `hem`: measures that the opening must leave free at the bottom.
void checkOpening(const Comparison& compare, const GarmentKind& kind,
                  const std::vector<Measure>& hem) {
  const auto endsOnTheChest = [&](Measure length) {
    std::vector<Measure> used = {length, Measure::FrontNeckDrop};
    used.insert(used.end(), hem.begin(), hem.end());
    compare.requireBelow(used, {Measure::BodyLength});
  };
  for (const Measure measure : openingMeasures(kind.opening)) {
    if (measure == Measure::PlacketWidth || measure == Measure::ZipWidth) {
      compare.requireBelow({measure}, {Measure::NeckWidth});
    } else {
      endsOnTheChest(measure);
    }
  }
  const bool kangaroo =
      kind.pocket == PocketForm::Kangaroo || kind.pocket == PocketForm::SplitKangaroo;
  if (kind.opening == FrontOpening::FullZip && kangaroo) {
    compare.requireBelow({Measure::ZipWidth}, {Measure::PocketTopWidth});
  }
}

}  // namespace

std::vector<Measure> pocketMeasures(PocketForm pocket) {
  switch (pocket) {
    case PocketForm::None:
      return {};
    case PocketForm::Kangaroo:
    case PocketForm::SplitKangaroo:
      return {Measure::PocketWidth, Measure::PocketTopWidth, Measure::PocketHeight,
              Measure::PocketAboveHem};
    case PocketForm::Chest:
      return {Measure::PocketWidth, Measure::PocketHeight, Measure::PocketFromCentre,
              Measure::PocketBelowHps, Measure::FrontNeckDrop};
    case PocketForm::Side:
      return {Measure::PocketWidth, Measure::PocketHeight, Measure::PocketAboveHem};
  }
  return {};
}

bool Measures::anyAssumed(const std::vector<Measure>& measures) const {
  return std::any_of(measures.begin(), measures.end(),
                     [this](Measure measure) { return table_->at(measure).assumed; });
}

namespace {

std::vector<Measure> bodyMeasures(const GarmentKind& kind) {
  std::vector<Measure> needed = {
      Measure::BodyWidth,    Measure::BodyLength,    Measure::NeckWidth,    Measure::FrontNeckDrop,
      Measure::BackNeckDrop, Measure::ShoulderWidth, Measure::ShoulderDrop, Measure::ArmholeDepth};
  const auto add = [&needed](std::initializer_list<Measure> more) {
    needed.insert(needed.end(), more);
  };
  if (kind.sleeve != SleeveForm::None) {
    add({Measure::SleeveLength, Measure::SleeveWidth, Measure::CuffWidth, Measure::CuffHeight});
  }
  if (kind.hemRib) {
    add({Measure::RibHeight});
  }
  if (kind.hem == HemForm::Legs) {
    add({Measure::LegRise, Measure::CrotchWidth});
  }
  if (kind.yoke) {
    add({Measure::YokeDepth});
  }
  if (kind.neck == NeckForm::Hood || kind.has(PanelName::Hood)) {
    add({Measure::HoodHeight, Measure::HoodDepth});
  }
  if (kind.neck != NeckForm::Hood) {
    add({Measure::CollarHeight});
  }
  for (const std::vector<Measure>& more :
       {pocketMeasures(kind.pocket), openingMeasures(kind.opening)}) {
    needed.insert(needed.end(), more.begin(), more.end());
  }
  return needed;
}

std::vector<Measure> flatMeasures(const FlatParts& parts) {
  std::vector<Measure> needed = {Measure::BodyWidth, Measure::BodyLength, Measure::TopWidth,
                                 Measure::ShapedDepth};
  if (parts.border) {
    needed.insert(needed.end(), {Measure::BorderHeight, Measure::BorderAboveHem});
  }
  if (parts.straps) {
    needed.push_back(Measure::StrapFromCentre);
  }
  return needed;
}

void checkFlat(const Comparison& compare, const FlatParts& parts) {
  compare.requireNotAbove({Measure::TopWidth}, {Measure::BodyWidth});
  compare.requireBelow({Measure::ShapedDepth}, {Measure::BodyLength});
  if (parts.border) {
    compare.requireBelow({Measure::BorderHeight, Measure::BorderAboveHem, Measure::ShapedDepth},
                         {Measure::BodyLength});
  }
  if (parts.straps) {
    compare.requireBelow({Measure::StrapFromCentre, Measure::StrapFromCentre}, {Measure::TopWidth});
  }
}

void checkLegs(const Comparison& compare) {
  compare.requireNotAbove({Measure::WaistWidth}, {Measure::ThighWidth, Measure::ThighWidth});
  compare.requireNotAbove({Measure::LegHemWidth}, {Measure::ThighWidth});
  compare.requireBelow({Measure::FrontRise}, {Measure::BodyLength});
}

}  // namespace

std::vector<Measure> neededMeasures(const GarmentKind& kind) {
  switch (kind.form) {
    case KindForm::Body:
      return bodyMeasures(kind);
    case KindForm::Flat:
      return flatMeasures(kind.flat);
    case KindForm::Legs:
      return {Measure::BodyWidth,      Measure::BodyLength, Measure::WaistWidth,
              Measure::FrontRise,      Measure::ThighWidth, Measure::LegHemWidth,
              Measure::WaistbandHeight};
  }
  return {};
}

MeasureTable filledMeasures(const GarmentKind& kind, const ChartSize& size, const std::string& file,
                            const std::string& where) {
  Filling filling(kind, size);
  MeasureTable table;
  for (const Measure measure : neededMeasures(kind)) {
    const auto value = filling.value(measure);
    if (!value) {
      throw InputError({file, where,
                        worded("no {} for size {}", saidName(measure), size.name.text()),
                        worded("{} in the size chart", saidName(measure))});
    }
    table.emplace(measure, *value);
  }
  return table;
}

void checkMeasures(const GarmentKind& kind, const MeasureTable& table, const std::string& file,
                   const std::string& where) {
  checkRange(table, file, where);
  const Comparison compare(table, file, where);
  if (kind.form == KindForm::Flat) {
    checkFlat(compare, kind.flat);
    return;
  }
  if (kind.form == KindForm::Legs) {
    checkLegs(compare);
    return;
  }
  std::vector<Measure> atHem;
  if (kind.hemRib) {
    atHem = {Measure::RibHeight};
  }
  const auto withHem = [&atHem](std::vector<Measure> measures) {
    measures.insert(measures.end(), atHem.begin(), atHem.end());
    return measures;
  };
  compare.requireBelow({Measure::NeckWidth}, {Measure::ShoulderWidth});
  compare.requireNotAbove({Measure::ShoulderWidth}, {Measure::BodyWidth});
  compare.requireBelow({Measure::ShoulderDrop}, {Measure::ArmholeDepth});
  compare.requireBelow(withHem({Measure::ArmholeDepth}), {Measure::BodyLength});
  compare.requireBelow(withHem({Measure::FrontNeckDrop}), {Measure::BodyLength});
  compare.requireBelow(withHem({Measure::BackNeckDrop}), {Measure::BodyLength});
  if (kind.sleeve != SleeveForm::None) {
    compare.requireNotAbove({Measure::CuffWidth}, {Measure::SleeveWidth});
    compare.requireBelow({Measure::CuffHeight}, {Measure::SleeveLength});
  }
  if (kind.hem == HemForm::Legs) {
    compare.requireBelow({Measure::LegRise, Measure::ArmholeDepth}, {Measure::BodyLength});
    compare.requireBelow({Measure::CrotchWidth}, {Measure::BodyWidth});
  }
  if (kind.yoke) {
    compare.requireBelow({Measure::YokeDepth, Measure::BackNeckDrop}, {Measure::ArmholeDepth});
  }
  checkPocket(compare, kind);
  checkOpening(compare, kind, withHem({}));
}

}  // namespace creaseline::garment
