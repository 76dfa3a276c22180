// SPDX-License-Identifier: MIT
// The plan: what the planner answers for every line, size and location. Pure data; sheets, desk
// and reports draw from it and compute nothing of their own.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/base/areal_weight.h"
#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/finding.h"
#include "creaseline/planning/reason.h"
#include "creaseline/shape/cut.h"
#include "creaseline/shape/fit.h"
#include "creaseline/shape/region.h"

namespace creaseline {

// Where the design goes. Lengths are in panel coordinates unless said otherwise.
struct Placed {
  Landmark from{};      // the mark on cloth from which `drop` is measured
  Length drop;          // landmark to the nearest side of the design
  Length centreOffset;  // landmark to the design's centre
  // On front and back also from the collar seam at the centre line, whatever the landmark.
  Length centreBelowDatum;  // datum to the design's centre
  Length lateral;   // centre line (crease, fold) to the design's centre; + is viewer's right
  Angle turn;       // against the direction that reads upright when worn
  Angle panelTurn;  // in panel coordinates: wornUp + turn
  Point centre;     // millimetres, panel coordinates
  Box bounds;       // of the design on the panel
  Reasons dropReasons, lateralReasons, turnReasons;
  RuleId rule;
  bool operator==(const Placed&) const = default;
};

// One check of the cloth under the design.
struct ClothCheck {
  std::string against;  // "left side seam", "pocket edge", "collar seam", "inside the front"
  Length room;          // negative: over it by so much
  Length least;         // room below this is a watch
  bool assumed = false;
  bool outside = false;  // it is the panel itself that the design reaches beyond
  bool operator==(const ClothCheck&) const = default;
};

// The tests a frame must pass, in the order in which they are made.
enum class FrameTest {
  NamedByOrder,   // the order names other frames
  MeantForPanel,  // the shop lists other panels for it
  HoldsDesign,    // window less foot clearance, and sewing field
  ClearOfKeepOut,
  OnThePanel,     // body beyond collar seam, side seam, armhole, hem
  HeldByCloth,    // cloth goes on beyond it as far as the shop says that the frame needs
  PassesOpening,  // its ring through an opening of the garment
  ArmReachesIn    // the machine's arm through an opening on the bracket's side
};

struct FrameRejection {
  FrameId frame;
  Angle turn;  // of the frame on the garment
  FrameTest test{};
  Length missing;             // by how much it fails
  std::string what;           // "12 mm too narrow", "body meets the pocket edge by 14 mm"
  double largestScale = 0.0;  // of the design that this frame would hold; 0 if not asked
  bool operator==(const FrameRejection&) const = default;
};

struct FrameChoice {
  FrameId frame;
  Angle turn;    // of the frame against the panel; the design is turned by its negative in it
  Point centre;  // frame centre, panel coordinates
  Slack slack;   // along the panel's axes, at this centre
  Region room;   // where the design's centre may lie, panel coordinates; follows from the rest
  // Hooped as badly as the shop's own error, sideways, along and turned at once, the design can
  // still be brought true.
  bool bearsError = false;
  Length bodyRoom;          // least distance of the body to a keep-out or panel edge
  std::string bodyNearest;  // what that is
  Reasons reasons;
  bool operator==(const FrameChoice&) const = default;
};

struct BackingChoice {
  BackingKind kind{};
  ArealWeight leastWeight;
  int layers = 1;
  HoldMethod hold{};
  bool topping = false;
  bool skinCover = false;
  int needleSize = 75;
  NeedlePoint needlePoint{};
  std::optional<double> mostDensity;  // stitches per mm² that the cloth bears
  Length cutWidth, cutHeight;         // frame body and clamp margin; zero if no frame was found
  StockId stock;                      // the stock entry that serves, empty if none
  std::string stockName;
  std::vector<Reason> fired;  // rules that fired, in order
  bool operator==(const BackingChoice&) const = default;
};

// A block or hand step of sewing, in order: what the checklist shows.
struct Step {
  std::string text;
  bool byHand = false;
  bool operator==(const Step&) const = default;
};

// A small cross sewn beside the design in one hooping, on which the needle is set in the next.
struct RegisterMark {
  std::string name;   // "A", distinct within the design
  Point at;           // panel coordinates
  Length extent;      // from tip to tip of an arm
  int sewnBy = 0;     // number of the part that sews it, counted from 1
  int alignedBy = 0;  // number of the part that is aligned on it
  bool operator==(const RegisterMark&) const = default;
};

// Where a part meets its neighbour: a straight cut through the design, or the stretch of one that
// both share.
struct PartJoin {
  int neighbour = 0;  // number of the other part
  Point from, to;     // of the cut, panel coordinates
  Length crossed;     // sewing that the cut crosses
  Length overlap;     // by which the two parts overlap there, where sewing meets at the cut
  bool operator==(const PartJoin&) const = default;
};

// Where a part lies in a design that is cut both ways: into strips first, then these across.
struct GridCell {
  CutDirection firstCuts{};
  int strip = 1;  // as the design reads: from the left where first cuts are upright, else from top
  int place = 1;  // in its strip, from the top or from the left
  bool operator==(const GridCell&) const = default;
};

// One hooping of a design that is sewn in several.
struct DesignPart {
  int number = 1;  // in the order of sewing
  int of = 1;
  Box section;                   // of the whole design, in its own coordinates: what this part sews
  std::optional<GridCell> cell;  // nothing where all cuts are parallel
  std::vector<PartJoin> joins;
  std::vector<RegisterMark> marks;  // on its joins
  Point wholeCentre;                // of the whole design, panel coordinates
  Outline wholeOnPanel;             // the whole design there; follows from the rest
  Reasons reasons;
  bool operator==(const DesignPart&) const = default;
};

// The answer for one line, one location, one size. A design that is sewn in several hoopings has
// one for each of its parts, one after the other; `placed`, `cloth` and all else are the part's
// own.
struct PlacementPlan {
  std::size_t line = 0;
  std::size_t placement = 0;
  SizeName size;
  SizeBand band{};
  int quantity = 0;
  LocationId location;
  std::shared_ptr<const GarmentShape> garment;
  PanelName panel{};
  Design design;        // as it will be sewn (scaled)
  std::string letters;  // of a monogram, from the left as read: "A L M"; else empty
  Reasons letterReasons;
  Outline outlineOnPanel;          // the design's outline in panel coordinates
  std::optional<DesignPart> part;  // nothing where one hooping sews the whole design
  bool hasRule = false;            // false: nothing below is decided
  Placed placed;
  std::vector<ClothCheck> cloth;
  std::optional<FrameChoice> frame;
  bool onlyTurned = false;                // no frame holds it without a quarter turn
  std::vector<FrameChoice> alternatives;  // next best frames, in order
  std::vector<FrameRejection> rejections;
  double largestScale = 0.0;  // of the design that any frame on hand would hold here
  BackingChoice backing;
  std::vector<Step> steps;
  std::vector<const Caution*> cautions;  // owned by the rules
  std::vector<Measure> assumed;          // measures that this answer rests on and nobody measured
  Severity worst = Severity::Note;       // of its findings
  bool stops() const { return worst == Severity::Stop; }
  // Whether its garments are to be counted: those of further parts are the same ones again.
  bool countsGarments() const { return !part || part->number == 1; }
};

struct PlanCounts {
  int garments = 0;
  int placements = 0;  // garments times locations: hoopings
  int stops = 0, watches = 0, notes = 0;
  bool operator==(const PlanCounts&) const = default;
};

struct Plan {
  std::string orderId;
  std::vector<PlacementPlan> placements;  // by line, then location, then size as ordered
  std::vector<Finding> findings;          // stops first, then watches, then notes; then by line
  PlanCounts counts;
};

template <>
struct EnumNames<CutDirection> {
  static constexpr std::pair<CutDirection, std::string_view> names[] = {
      {CutDirection::Upright, "upright"}, {CutDirection::Level, "level"}};
};

template <>
struct EnumNames<FrameTest> {
  static constexpr std::pair<FrameTest, std::string_view> names[] = {
      {FrameTest::NamedByOrder, "named-by-order"},
      {FrameTest::MeantForPanel, "meant-for-panel"},
      {FrameTest::HoldsDesign, "holds-design"},
      {FrameTest::ClearOfKeepOut, "clear-of-keep-out"},
      {FrameTest::OnThePanel, "on-the-panel"},
      {FrameTest::HeldByCloth, "held-by-cloth"},
      {FrameTest::PassesOpening, "passes-opening"},
      {FrameTest::ArmReachesIn, "arm-reaches-in"}};
};

}  // namespace creaseline
