// SPDX-License-Identifier: MIT
// The rules of the trade as data: placement, backing, cautions, and defaults, each with its basis.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "creaseline/base/angle.h"
#include "creaseline/base/areal_weight.h"
#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/catalogue/design.h"
#include "creaseline/catalogue/fabric.h"
#include "creaseline/catalogue/garment_kind.h"
#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/catalogue/identifiers.h"
#include "creaseline/catalogue/rates.h"
#include "creaseline/catalogue/size_chart.h"

namespace creaseline {

// ---- Locations ---------------------------------------------------------------------------------

enum class Side { Left, Centre, Right };

// A place on a garment that a customer can order, "left-chest" (resources/rules/locations.json).
struct Location {
  LocationId id;
  std::string name;  // "Left chest"
  PanelName panel{};
  Side wearerSide = Side::Centre;
  Side viewerSide = Side::Centre;  // of one who looks at the panel from outside
  bool operator==(const Location&) const = default;
};

// ---- Placement ---------------------------------------------------------------------------------

// The mark on cloth from which a placement is measured along y, and its y in panel coordinates.
enum class Landmark {
  CollarSeam,     // front, back: y = 0
  ShoulderPoint,  // HPS: front y = -front neck drop, back y = -back neck drop
  FaceEdge,       // hood: y = 0
  CuffEdge,       // sleeve: y = 0
  CuffSeam,       // sleeve: top of the cuff rib or hem
  ShoulderSeam,   // sleeve: outer end of the shoulder seam, y = sleeve length
  PlacketEnd,     // front: y = placket length
  HemEdge,        // the hem at the centre line, measured upwards
  PocketTop,      // front: a chest pocket's opening, measured up from it
  PocketOpening,  // front: the same line, measured down into the pocket
  YokeSeam,       // back: y = yoke depth
  TopEdge,        // flat piece: y = 0
  PieceMiddle,    // flat piece: half way down
  BorderTop,      // flat piece: upper edge of the woven band, measured up from it
  BorderMiddle,   // flat piece: middle of the woven band, measured up from it
  WaistSeam       // leg: y = 0
};
// Whether a panel of that name can have the mark at all.
[[nodiscard]] bool liesOn(Landmark landmark, PanelName panel);
// Whether one measures from the mark towards the panel's datum, not away from it.
[[nodiscard]] bool leadsTowardsDatum(Landmark landmark);

// Which part of the design is put at that distance. "Near" is the side nearest the landmark.
enum class Anchor { NearEdge, Centre };
// Where the design's centre goes sideways.
enum class Sideways {
  CentreLine,        // crease, fold
  FromCentreLine,    // by `sidewaysDistance`, to the location's side
  PlacketToArmhole,  // midway between placket edge (or centre line) and armhole seam
  PocketMiddle,      // over the middle of a chest pocket
  FromSide  // the design's outer side `sidewaysDistance` in from the panel's side at that height
};

struct PlacementRule {
  RuleId id;
  LocationId location;
  std::vector<KindId> kinds;    // empty: all kinds
  std::vector<SizeBand> bands;  // empty: all bands
  std::vector<SizeName> sizes;  // empty: all sizes
  std::vector<BlankId> blanks;  // empty: all blanks
  Landmark from{};
  Anchor anchor = Anchor::NearEdge;
  Length distance;     // away from the landmark, into the panel
  Length least, most;  // of `distance`; never nearer than least
  Sideways sideways = Sideways::CentreLine;
  Length sidewaysDistance;
  // Against the direction that reads upright when worn (PanelShape::wornUp).
  Angle turn;
  std::string turnReason;                                                // empty if turn is 0
  std::optional<Length> leastWidth, mostWidth, leastHeight, mostHeight;  // of the design
  std::string basis;   // "common practice, no source", or the document by name
  std::string note;    // one sentence for the reasons list
  bool house = false;  // a shop's own rule
  bool operator==(const PlacementRule&) const = default;
};

// ---- Backing -----------------------------------------------------------------------------------

enum class BackingKind { CutAway, TearAway, WashAway };
enum class HoldMethod { Hooped, Floated };
enum class NeedlePoint { Sharp, LightBall, Ball };

// Everything a backing rule may ask about one placement. An absent condition is always true.
struct BackingConditions {
  std::vector<Construction> construction;
  std::vector<Stretch> stretch;
  std::vector<Pile> pile;
  std::vector<PanelName> panels;
  std::vector<SizeBand> bands;
  std::optional<bool> insideSeen, sheer, magneticFrame;
  std::optional<ArealWeight> weightFrom, weightBelow;  // from <= weight < below
  std::optional<double> densityFrom, densityBelow;     // stitches per mm², likewise
  bool operator==(const BackingConditions&) const = default;
};
// Sets each named answer. Rules run in order; a later rule that fires replaces what it names.
struct BackingRule {
  RuleId id;
  BackingConditions when;
  std::optional<BackingKind> kind;
  std::optional<ArealWeight> leastWeight;
  std::optional<int> layers;
  std::optional<HoldMethod> hold;
  std::optional<bool> topping;
  std::optional<int> needleSize;
  std::optional<NeedlePoint> needlePoint;
  std::optional<bool> skinCover;      // soft cover over the back, against skin
  std::optional<double> mostDensity;  // stitches per mm² that the cloth bears
  std::string because;                // "stretch cloth needs a support that stays"
  std::string basis;
  bool operator==(const BackingRule&) const = default;
};

// ---- Frame against garment edges ---------------------------------------------------------------

// Whether the body of a frame may lie across an edge of a panel.
enum class EdgeCrossing {
  Never,        // no cloth or too thick a seam beyond it: a rejection
  WindowStays,  // an open edge: the body may overhang, the window must stay on the cloth
  May           // a seam with cloth beyond it: allowed
};
struct FrameEdgeRule {
  RuleId id;
  EdgeName edge{};
  EdgeCrossing crossing{};
  // The opening through which the machine's arm reaches into the garment at this edge, "the hem";
  // empty: closed to it.
  std::string armThrough;
  std::string because;
  std::string basis;
  bool operator==(const FrameEdgeRule&) const = default;
};

// ---- Cautions ----------------------------------------------------------------------------------

// A warning for paper and screen, with the occasion on which it is shown.
enum class CautionOccasion {
  Always,
  MagneticFrame,
  Press,
  Applique,
  Infant,
  Youth,
  ChildHood,
  HeavyGarment,
  Topping
};
struct Caution {
  RuleId id;
  CautionOccasion when{};
  std::string text;
  std::string basis;
  bool operator==(const Caution&) const = default;
};

// ---- Monograms ---------------------------------------------------------------------------------

enum class NamePart { First, Middle, Surname };

// Whose letter stands where, from the left as read.
struct MonogramRule {
  RuleId id;
  MonogramStyle style{};
  std::vector<NamePart> letters;  // all three
  std::string basis;
  bool operator==(const MonogramRule&) const = default;
};

// ---- Defaults ----------------------------------------------------------------------------------

// Single figures, each with its basis (resources/rules/defaults.json).
struct DefaultValue {
  std::string id;
  std::string text;  // as written: "10 mm", "2 deg", "64 cm"
  std::string basis;
  bool operator==(const DefaultValue&) const = default;
};
struct Defaults {
  DefaultValue footClearance;    // between needle and the window's edge
  DefaultValue hoopingSideways;  // hooping error
  DefaultValue hoopingAlong;
  DefaultValue hoopingTurn;
  DefaultValue creaseError;         // of the pressed crease against the garment's true middle
  DefaultValue rulerError;          // of a length laid off on cloth
  DefaultValue clothGive;           // how far cloth moves between marking and clamping
  DefaultValue clampMargin;         // backing beyond the frame body on each side
  DefaultValue seamClearance;       // design to side seam, armhole, fold: watch below this
  DefaultValue adultXlBodyWidth;    // body width up to which an unnamed size counts as up to XL
  DefaultValue youthBodyWidth;      // body width below which an unnamed size counts as youth
  DefaultValue infantBodyWidth;     // body width below which an unnamed size counts as infant
  DefaultValue heavyGarment;        // grams beside the frame from which they are supported
  DefaultValue armReach;            // between the bracket's direction and an opening for the arm
  DefaultValue placementTolerance;  // of drop and sideways offset, as sewn
  // A design that is sewn in several hoopings.
  DefaultValue mostParts;
  DefaultValue partOverlap;            // of two parts where the cut between them crosses sewing
  DefaultValue registerMark;           // extent of a register mark
  DefaultValue registerMarkClearance;  // between a register mark and any sewing
  DefaultValue registerMarksApart;     // least distance of the two marks of a cut
  // Times of a run, besides the machine's own speed.
  DefaultValue hoopingTime;     // one garment into the frame and out of it
  DefaultValue colourChange;    // the machine goes to another needle
  DefaultValue rethreading;     // the hands put another thread on a needle
  DefaultValue threadTrim;      // by the machine, at the end of a block
  DefaultValue fabricLaying;    // a piece of appliqué fabric over its placement line
  DefaultValue fabricTrimming;  // round a tacked piece, in the frame
  // What a remedy asks of the shop besides moving stitches, as the move that it weighs as much as:
  // remedies are offered in that order.
  DefaultValue furtherHoopingWeighs;
  DefaultValue turnedFrameWeighs;
  DefaultValue furtherDesignWeighs;
  DefaultValue boughtFrameWeighs;
  DefaultValue narrowestRim;  // of a frame's body round its window, as frames are sold
  // The shop's own hooping error, from hoopings that it measured.
  DefaultValue hoopingCoverage;        // share of all hoopings that the error is to hold
  DefaultValue hoopingConfidence;      // with which it does
  DefaultValue leastHoopingsMeasured;  // fewer say too little
  DefaultValue stopShareOfError;       // a frame that does not bear this share of it is a stop
  // The least share of the largest design that a garment would take which still looks right on it.
  DefaultValue leastDesignShare;
  // By how much a monogram's middle letter is higher than the others where it counts as larger.
  DefaultValue largerLetter;
  bool operator==(const Defaults&) const = default;
  // Every one, in the order of the file.
  [[nodiscard]] std::vector<const DefaultValue*> all() const;
};

// Body widths that part what an unnamed size counts as.
struct BandWidths {
  Length infant, youth, adultXl;
  [[nodiscard]] SizeBand band(Length bodyWidth) const;
};
[[nodiscard]] BandWidths bandWidths(const Defaults& defaults);

// What a size counts as: what the chart says, else what its name tells, else by the body width.
[[nodiscard]] SizeBand bandOf(const ChartSize& size, const Defaults& defaults);

// All shipped rules.
struct Rules {
  std::vector<GarmentKind> kinds;
  std::vector<Location> locations;
  std::vector<PlacementRule> placement;
  std::vector<BackingRule> backing;
  std::vector<FrameEdgeRule> frameEdges;  // one for each EdgeName
  std::vector<Caution> cautions;
  std::vector<MonogramRule> monograms;  // one for each style
  std::vector<Currency> currencies;     // of ISO 4217
  Defaults defaults;
  [[nodiscard]] const GarmentKind* kind(const KindId& id) const;
  [[nodiscard]] const Location* location(const LocationId& id) const;
  [[nodiscard]] const Currency* currency(std::string_view code) const;
};

template <>
struct EnumNames<Side> {
  static constexpr std::pair<Side, std::string_view> names[] = {
      {Side::Left, "left"}, {Side::Centre, "centre"}, {Side::Right, "right"}};
};
template <>
struct EnumNames<Landmark> {
  static constexpr std::pair<Landmark, std::string_view> names[] = {
      {Landmark::CollarSeam, "collar-seam"},     {Landmark::ShoulderPoint, "shoulder-point"},
      {Landmark::FaceEdge, "face-edge"},         {Landmark::CuffEdge, "cuff-edge"},
      {Landmark::CuffSeam, "cuff-seam"},         {Landmark::ShoulderSeam, "shoulder-seam"},
      {Landmark::PlacketEnd, "placket-end"},     {Landmark::HemEdge, "hem-edge"},
      {Landmark::PocketTop, "pocket-top"},       {Landmark::PocketOpening, "pocket-opening"},
      {Landmark::YokeSeam, "yoke-seam"},         {Landmark::TopEdge, "top-edge"},
      {Landmark::PieceMiddle, "piece-middle"},   {Landmark::BorderTop, "border-top"},
      {Landmark::BorderMiddle, "border-middle"}, {Landmark::WaistSeam, "waist-seam"}};
};
template <>
struct EnumNames<Anchor> {
  static constexpr std::pair<Anchor, std::string_view> names[] = {{Anchor::NearEdge, "near-edge"},
                                                                  {Anchor::Centre, "centre"}};
};
template <>
struct EnumNames<Sideways> {
  static constexpr std::pair<Sideways, std::string_view> names[] = {
      {Sideways::CentreLine, "centre-line"},
      {Sideways::FromCentreLine, "from-centre-line"},
      {Sideways::PlacketToArmhole, "placket-to-armhole"},
      {Sideways::PocketMiddle, "pocket-middle"},
      {Sideways::FromSide, "from-side"}};
};
template <>
struct EnumNames<BackingKind> {
  static constexpr std::pair<BackingKind, std::string_view> names[] = {
      {BackingKind::CutAway, "cut-away"},
      {BackingKind::TearAway, "tear-away"},
      {BackingKind::WashAway, "wash-away"}};
};
template <>
struct EnumNames<HoldMethod> {
  static constexpr std::pair<HoldMethod, std::string_view> names[] = {
      {HoldMethod::Hooped, "hooped"}, {HoldMethod::Floated, "floated"}};
};
template <>
struct EnumNames<NeedlePoint> {
  static constexpr std::pair<NeedlePoint, std::string_view> names[] = {
      {NeedlePoint::Sharp, "sharp"},
      {NeedlePoint::LightBall, "light-ball"},
      {NeedlePoint::Ball, "ball"}};
};
template <>
struct EnumNames<EdgeCrossing> {
  static constexpr std::pair<EdgeCrossing, std::string_view> names[] = {
      {EdgeCrossing::Never, "never"},
      {EdgeCrossing::WindowStays, "window-stays"},
      {EdgeCrossing::May, "may"}};
};
template <>
struct EnumNames<NamePart> {
  static constexpr std::pair<NamePart, std::string_view> names[] = {
      {NamePart::First, "first"}, {NamePart::Middle, "middle"}, {NamePart::Surname, "surname"}};
};
template <>
struct EnumNames<CautionOccasion> {
  static constexpr std::pair<CautionOccasion, std::string_view> names[] = {
      {CautionOccasion::Always, "always"},
      {CautionOccasion::MagneticFrame, "magnetic-frame"},
      {CautionOccasion::Press, "press"},
      {CautionOccasion::Applique, "applique"},
      {CautionOccasion::Infant, "infant"},
      {CautionOccasion::Youth, "youth"},
      {CautionOccasion::ChildHood, "child-hood"},
      {CautionOccasion::HeavyGarment, "heavy-garment"},
      {CautionOccasion::Topping, "topping"}};
};

}  // namespace creaseline
