// SPDX-License-Identifier: MIT
// A garment kind: how a hoodie is put together, as data (resources/kinds/*.json). The outline of
// a size is drawn from it and the points of measure (garment_shape.h).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/catalogue/edge_name.h"
#include "creaseline/catalogue/fabric.h"
#include "creaseline/catalogue/identifiers.h"
#include "creaseline/catalogue/size_chart.h"

namespace creaseline {

enum class PanelName { Front, Back, LeftSleeve, RightSleeve, Hood, Flat, LeftLeg, RightLeg };
[[nodiscard]] constexpr bool isSleeve(PanelName panel) {
  return panel == PanelName::LeftSleeve || panel == PanelName::RightSleeve;
}
[[nodiscard]] constexpr bool isLeg(PanelName panel) {
  return panel == PanelName::LeftLeg || panel == PanelName::RightLeg;
}
// What the kind is made of: a body with what hangs on it, one flat piece (towel, bag, bib, a panel
// before it is assembled), or two legs.
enum class KindForm { Body, Flat, Legs };
// What sits on the collar seam. Stand: a collar that stands up; collar on stand: one that folds
// down over a stand, as on a shirt.
enum class NeckForm { None, Crew, Collar, Hood, Vee, Stand, CollarOnStand };
// What runs down the centre front. Placket and quarter zip end on the chest; the others go through
// to the hem. Wrap: two fronts with a band each, one over the other.
enum class FrontOpening { None, Placket, FullZip, QuarterZip, Buttons, Wrap };
// Chest: one patch pocket on the wearer's left. Side: two pockets with slanted openings.
enum class PocketForm { None, Kangaroo, SplitKangaroo, Chest, Side };
enum class SleeveForm { None, Short, Long };
// What ends a sleeve: a rib (or a turned hem where the cuff height is 0), or a band that is sewn on
// flat and buttoned.
enum class CuffForm { Rib, Band };
// Legs: cut out at both sides for the legs and closed in the crotch, as a bodysuit.
enum class HemForm { Straight, Legs };

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

// How a flat piece ends, and what is on it.
struct FlatParts {
  EdgeName sides = EdgeName::SideEdge;  // an open edge, a side seam, or a fold
  EdgeName bottom = EdgeName::Hem;      // a hem, a bottom seam, or the fold of a turned-up cuff
  bool border = false;                  // a woven band near the bottom, as on towels
  bool straps = false;                  // two straps sewn on at the top
  bool domed = false;  // narrower on top in a dome, as a cap's front; else cut in, as a bib
  bool operator==(const FlatParts&) const = default;
};

// What a pair of legs has in front.
struct LegParts {
  bool fly = false;          // a zip down the crotch seam, under a flap
  bool sidePockets = false;  // openings that slant from the waist seam to the side seams
  bool operator==(const LegParts&) const = default;
};

// What lies behind a panel and must not be sewn in, and what is done about it at the table.
struct LayerBehind {
  std::string name;  // "the lining"
  std::vector<PanelName> panels;
  std::vector<LocationId> locations;  // where on them it lies behind; empty: everywhere
  std::string step;                   // "Open the lining at the hem and hoop the outer cloth alone"
  bool watch = false;                 // worth a finding; else a step of the checklist is enough
  std::string basis;
  bool operator==(const LayerBehind&) const = default;
};

// Where the ring of a frame is put into a garment that is sewn to a tube. A panel without any is
// open. One that leads into a pocket serves the locations that it names, and nothing else serves
// there: the pocket's cloth is hooped alone, within its stitching.
struct Opening {
  std::string name;  // "the hem"
  std::vector<PanelName> panels;
  std::vector<LocationId> intoPocketAt;  // empty: it leads behind the panel
  std::optional<Measure> width;  // across, laid flat; nothing: it opens to lie flat, as a full zip
  std::string otherwise;         // what can be done where no ring goes in; may be empty
  std::string basis;
  bool operator==(const Opening&) const = default;
};

// What is done to the garment before it is hooped, so that the side that is sewn lies on top.
struct Preparation {
  std::vector<PanelName> panels;
  std::string step;  // "Fold the cuff out and turn the beanie inside out"
  std::string basis;
  bool operator==(const Preparation&) const = default;
};

// What garments of a kind are mostly made of, to begin with.
struct UsualFabric {
  Fabric fabric;  // proposed
  std::string basis;
  bool operator==(const UsualFabric&) const = default;
};

struct GarmentKind {
  KindId id;
  std::string name;
  KindForm form = KindForm::Body;
  std::vector<PanelName> panels;
  NeckForm neck = NeckForm::Crew;
  FrontOpening opening = FrontOpening::None;
  PocketForm pocket = PocketForm::None;
  SleeveForm sleeve = SleeveForm::Short;
  CuffForm cuff = CuffForm::Rib;
  HemForm hem = HemForm::Straight;
  bool hemRib = false;
  bool yoke = false;      // a seam across the back below the collar
  FlatParts flat;         // of a flat piece
  LegParts legs;          // of legs
  bool drawcord = false;  // of a hood: a cord in the tunnel of the face edge, and its eyelets
  // Panels whose inside is seen when worn, so that a backing left there would show.
  std::vector<PanelName> insideSeen;
  std::vector<Preparation> preparations;
  std::vector<LayerBehind> layers;
  std::vector<Opening> openings;
  std::vector<ProportionRule> proportions;
  UsualFabric usualFabric;
  [[nodiscard]] bool has(PanelName panel) const;
  [[nodiscard]] bool showsInside(PanelName panel) const;
  [[nodiscard]] std::vector<const LayerBehind*> layersBehind(PanelName panel,
                                                             const LocationId& location) const;
  // The opening into the pocket that is hooped alone at that location; null for all others.
  [[nodiscard]] const Opening* pocketOpening(PanelName panel, const LocationId& location) const;
  bool operator==(const GarmentKind&) const = default;
};

template <>
struct EnumNames<PanelName> {
  static constexpr std::pair<PanelName, std::string_view> names[] = {
      {PanelName::Front, "front"},
      {PanelName::Back, "back"},
      {PanelName::LeftSleeve, "left-sleeve"},
      {PanelName::RightSleeve, "right-sleeve"},
      {PanelName::Hood, "hood"},
      {PanelName::Flat, "flat-piece"},
      {PanelName::LeftLeg, "left-leg"},
      {PanelName::RightLeg, "right-leg"}};
};
template <>
struct EnumNames<KindForm> {
  static constexpr std::pair<KindForm, std::string_view> names[] = {
      {KindForm::Body, "body"}, {KindForm::Flat, "flat"}, {KindForm::Legs, "legs"}};
};
template <>
struct EnumNames<NeckForm> {
  static constexpr std::pair<NeckForm, std::string_view> names[] = {
      {NeckForm::None, "none"},
      {NeckForm::Crew, "crew"},
      {NeckForm::Collar, "collar"},
      {NeckForm::Hood, "hood"},
      {NeckForm::Vee, "v"},
      {NeckForm::Stand, "stand"},
      {NeckForm::CollarOnStand, "collar-on-stand"}};
};
template <>
struct EnumNames<FrontOpening> {
  static constexpr std::pair<FrontOpening, std::string_view> names[] = {
      {FrontOpening::None, "none"},        {FrontOpening::Placket, "placket"},
      {FrontOpening::FullZip, "full-zip"}, {FrontOpening::QuarterZip, "quarter-zip"},
      {FrontOpening::Buttons, "buttons"},  {FrontOpening::Wrap, "wrap"}};
};
template <>
struct EnumNames<PocketForm> {
  static constexpr std::pair<PocketForm, std::string_view> names[] = {
      {PocketForm::None, "none"},
      {PocketForm::Kangaroo, "kangaroo"},
      {PocketForm::SplitKangaroo, "split-kangaroo"},
      {PocketForm::Chest, "chest"},
      {PocketForm::Side, "side"}};
};
template <>
struct EnumNames<SleeveForm> {
  static constexpr std::pair<SleeveForm, std::string_view> names[] = {
      {SleeveForm::None, "none"}, {SleeveForm::Short, "short"}, {SleeveForm::Long, "long"}};
};
template <>
struct EnumNames<CuffForm> {
  static constexpr std::pair<CuffForm, std::string_view> names[] = {{CuffForm::Rib, "rib"},
                                                                    {CuffForm::Band, "band"}};
};
template <>
struct EnumNames<HemForm> {
  static constexpr std::pair<HemForm, std::string_view> names[] = {{HemForm::Straight, "straight"},
                                                                   {HemForm::Legs, "legs"}};
};

}  // namespace creaseline
