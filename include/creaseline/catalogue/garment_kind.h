// SPDX-License-Identifier: MIT
// A garment kind: how a hoodie is put together, as data (resources/kinds/*.json). The outline of
// a size is drawn from it and the points of measure (garment_shape.h).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/catalogue/identifiers.h"
#include "creaseline/catalogue/size_chart.h"

namespace creaseline {

enum class PanelName { Front, Back, LeftSleeve, RightSleeve, Hood };
enum class NeckForm { Crew, Collar, Hood };          // what sits on the collar seam
enum class FrontOpening { None, Placket, FullZip };  // what runs down the centre front
enum class PocketForm { None, Kangaroo, SplitKangaroo };
enum class SleeveForm { Short, Long };

// Fills a measure that a chart lacks: value = factor * of + plus, and never shorter than zero.
// Rules are tried in order; the first whose `of` is known (given or already filled) is used.
// Without `of` the value is `plus` alone.
struct ProportionRule {
  RuleId id;
  Measure measure{};
  std::optional<Measure> of;
  double factor = 0.0;
  Length plus;
  std::vector<SizeBand> bands;  // empty: all
  std::string basis;
  bool operator==(const ProportionRule&) const = default;
};

struct GarmentKind {
  KindId id;
  std::string name;
  std::vector<PanelName> panels;
  NeckForm neck = NeckForm::Crew;
  FrontOpening opening = FrontOpening::None;
  PocketForm pocket = PocketForm::None;
  SleeveForm sleeve = SleeveForm::Short;
  bool hemRib = false;
  // Panels whose inside is seen when worn, so that a backing left there would show.
  std::vector<PanelName> insideSeen;
  std::vector<ProportionRule> proportions;
  [[nodiscard]] bool has(PanelName panel) const;
  [[nodiscard]] bool showsInside(PanelName panel) const;
  bool operator==(const GarmentKind&) const = default;
};

template <>
struct EnumNames<PanelName> {
  static constexpr std::pair<PanelName, std::string_view> names[] = {
      {PanelName::Front, "front"},
      {PanelName::Back, "back"},
      {PanelName::LeftSleeve, "left-sleeve"},
      {PanelName::RightSleeve, "right-sleeve"},
      {PanelName::Hood, "hood"}};
};
template <>
struct EnumNames<NeckForm> {
  static constexpr std::pair<NeckForm, std::string_view> names[] = {
      {NeckForm::Crew, "crew"}, {NeckForm::Collar, "collar"}, {NeckForm::Hood, "hood"}};
};
template <>
struct EnumNames<FrontOpening> {
  static constexpr std::pair<FrontOpening, std::string_view> names[] = {
      {FrontOpening::None, "none"},
      {FrontOpening::Placket, "placket"},
      {FrontOpening::FullZip, "full-zip"}};
};
template <>
struct EnumNames<PocketForm> {
  static constexpr std::pair<PocketForm, std::string_view> names[] = {
      {PocketForm::None, "none"},
      {PocketForm::Kangaroo, "kangaroo"},
      {PocketForm::SplitKangaroo, "split-kangaroo"}};
};
template <>
struct EnumNames<SleeveForm> {
  static constexpr std::pair<SleeveForm, std::string_view> names[] = {{SleeveForm::Short, "short"},
                                                                      {SleeveForm::Long, "long"}};
};

}  // namespace creaseline
