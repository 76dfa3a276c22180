// SPDX-License-Identifier: MIT
// The flat shape of one size of a blank: panels with named edges, keep-outs and drawing lines,
// drawn from the points of measure.
//
// Panel coordinates (binding): the panel lies flat, outside up, millimetres. Origin at the
// panel's datum: front and back, the collar seam (its lower edge) at centre front or back; hood,
// the centre of the face edge; sleeve, the centre of the cuff edge. +x to the viewer's right,
// +y away from the datum. So on the front the wearer's left is +x, on the back it is -x.
// The hood panel is the hood spread flat and seen from behind, as it shows when the hood lies
// back: face edge on top, neck seam at the bottom. The sleeve panel is the outer half of the
// sleeve laid on its fold (the fold from shoulder point to cuff is x = 0), cuff edge on top in
// panel coordinates; drawings turn it cuff down (see PanelShape::wornUp). A flat piece (towel, bag,
// bib) has its origin at the middle of its top edge, top as it is used. A leg is its front half,
// laid on the crease (x = 0), waist seam on top; on the left leg the outer side is at +x.
//
// Body outlines are the points of measure joined by curves of the trade's usual form. Some panels
// are models, since what they show is no flat measure:
// - sleeve: half the tube, as wide as the sleeve measures flat, both sides folds; the height of
//   the cap follows by Pythagoras from the armhole seam and the sleeve width.
// - hood: as wide at the face edge as the hood is high (half of the edge's girth, the other half
//   lies underneath), narrowing in a curve to the neck width, both sides folds; as long on the
//   centre crease as hood depth and hood height together, less what the round of the crown saves.
//   No cloth beyond this lies flat without pushing.
// - leg: symmetric about its crease, from its share of the waist over the thigh to the hem.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/base/angle.h"
#include "creaseline/catalogue/edge_name.h"
#include "creaseline/catalogue/garment_kind.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// Where a frame or a needle must not go.
enum class KeepOutName {
  Zip,
  Placket,
  PocketEdge,
  CollarSeam,
  HemRib,
  CuffRib,
  CuffSeam,  // of a cuff band
  YokeSeam,
  Snaps,       // of a bodysuit's crotch
  BorderEdge,  // of a towel's woven border band
  Strap,       // of a bag or an apron, as far as it is sewn on
  Waistband,
  DrawcordTunnel,  // of a hood's face edge, with the cord in it
  Eyelet,          // of the drawcord
  Fly,             // of trousers: its zip and the stitching beside it
  PocketOpening    // slanted, in the front of a leg
};

struct PanelSide {
  EdgeName name{};
  bool viewerRight = false;  // which of the two side seams, shoulders, folds
  bool operator==(const PanelSide&) const = default;
};

struct KeepOut {
  KeepOutName name{};
  Ring area;             // convex
  bool needle = true;    // sewing here is forbidden
  bool frame = true;     // a frame body must not lie here
  bool assumed = false;  // drawn from a measure that the chart lacks
  bool operator==(const KeepOut&) const = default;
};

// Lines that make the drawing read as a garment. Not used by any check. Neighbours lie under the
// panel, all others on top of it, in their order.
enum class DetailKind { Seam, Rib, PocketLine, ZipLine, PlacketLine, CollarLine, Neighbour };
struct Detail {
  DetailKind kind{};
  Polyline line;
  bool closed = false;  // fill it as cloth (a neighbouring sleeve, the hood behind the front)
  bool operator==(const Detail&) const = default;
};

// A measure as used: given by the chart, or filled by a rule.
struct MeasureValue {
  Length value;
  bool assumed = false;
  RuleId rule;        // of the proportion, if assumed
  std::string basis;  // of the rule, or "size chart"
  bool operator==(const MeasureValue&) const = default;
};
using MeasureTable = std::map<Measure, MeasureValue>;

// An opening that leads behind the panel, in this size.
struct PanelOpening {
  std::string name;
  std::optional<Length> width;  // flat; nothing: no limit
  std::string basis = {};       // of the kind's opening
  bool operator==(const PanelOpening&) const = default;
};

struct PanelShape {
  PanelName name{};
  Ring outline;                  // starts anywhere; clockwise to the viewer
  std::vector<PanelSide> sides;  // sides[i] is the side from outline[i] to outline[i + 1]
  std::vector<KeepOut> keepOuts;
  std::vector<Detail> details;
  std::vector<PanelOpening> openings;  // none: the panel is open on a side
  std::vector<Measure> measures;       // that shaped this panel
  // Direction that is up when the garment is worn and seen in the panel's usual view, as a turn
  // from "towards the datum": 0 for front and back, 180 for a sleeve (up is away from the cuff)
  // and for a hood (worn up and seen from in front, up is away from the face edge).
  Angle wornUp;
  bool insideSeen = false;
  Length centreBackOrFront;  // panel length along the centre line, datum to hem or neck seam
  [[nodiscard]] bool has(EdgeName edge) const;
  bool operator==(const PanelShape&) const = default;
};

struct GarmentShape {
  KindId kind;
  SizeName size;
  SizeBand band{};
  MeasureTable measures;
  std::map<PanelName, PanelShape> panels;
  // The front as a ring in its pocket meets it, for each location where a pocket is hooped alone:
  // only the pocket's opening leads in, and the ring must stay within the pocket's stitching.
  std::map<LocationId, PanelShape> pocketAlone;
  [[nodiscard]] const PanelShape* panel(PanelName name) const;
  // The panel as it is hooped at the location; null if the garment lacks it.
  [[nodiscard]] const PanelShape* hooped(PanelName name, const LocationId& location) const;
  bool operator==(const GarmentShape&) const = default;
};

// Fills the measures by the kind's proportion rules and draws every panel.
// Throws InputError if a measure is neither given nor filled, or if the measures contradict each
// other (a neck wider than the shoulders, a pocket taller than the body) or are beyond any garment
// (3 m); `file` and `where` are used in that message. Only measures that the kind needs are taken;
// others in the chart are left aside. Outlines are symmetric and do not cross themselves; curves
// are drawn in chords of at most 4 mm.
[[nodiscard]] GarmentShape garmentShape(const GarmentKind& kind, const ChartSize& size,
                                        const std::string& file, const std::string& where);

template <>
struct EnumNames<KeepOutName> {
  static constexpr std::pair<KeepOutName, std::string_view> names[] = {
      {KeepOutName::Zip, "zip"},
      {KeepOutName::Placket, "placket"},
      {KeepOutName::PocketEdge, "pocket-edge"},
      {KeepOutName::CollarSeam, "collar-seam"},
      {KeepOutName::HemRib, "hem-rib"},
      {KeepOutName::CuffRib, "cuff-rib"},
      {KeepOutName::CuffSeam, "cuff-seam"},
      {KeepOutName::YokeSeam, "yoke-seam"},
      {KeepOutName::Snaps, "snaps"},
      {KeepOutName::BorderEdge, "border-edge"},
      {KeepOutName::Strap, "strap"},
      {KeepOutName::Waistband, "waistband"},
      {KeepOutName::DrawcordTunnel, "drawcord-tunnel"},
      {KeepOutName::Eyelet, "eyelet"},
      {KeepOutName::Fly, "fly"},
      {KeepOutName::PocketOpening, "pocket-opening"}};
};

}  // namespace creaseline
