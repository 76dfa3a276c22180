// SPDX-License-Identifier: MIT
// Findings: what the planner has to say about one placement, and remedies that it has checked.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "creaseline/base/angle.h"
#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/catalogue/identifiers.h"
#include "creaseline/planning/reason.h"

namespace creaseline {

enum class Severity {
  Stop,
  Watch,
  Note
};  // cannot be sewn as asked; can, with care; for information

enum class FindingCode {
  TooLargeForEveryFrame,
  NoFrameSuits,  // the design fits windows, but no frame can sit on the garment there
  FitsOnlyTurned,
  FrameMeetsGarment,  // the best window's body meets a pocket, zip, collar, seam
  LittleRoom,         // slack below the shop's hooping error
  BelowLeastDrop,
  BeyondMostDrop,
  OutsidePanel,
  MeetsKeepOut,  // design on a zip, placket, pocket edge, collar seam
  NearSeam,
  WiderThanPanel,
  BeyondUsualSize,  // wider, narrower or higher than the rule's design limits
  NoRule,           // no placement rule for this kind, location and size
  MeasureAssumed,
  BackingNotInStock,
  NeedleNotInStock,
  ToppingNotInStock,
  TooDense,
  OneSizeDoesNotServeAll,
  SewnInParts,             // in several hoopings, aligned on register marks
  LayerBehindPanel,        // something behind the cloth must not be sewn in
  MonogramDrawnOtherwise,  // the middle letter is drawn larger, or not, against what is said
  FewerFramesWouldDo,      // the order is planned in more frames than it needs
  OverlapsOtherPlace       // two places of a line are sewn over each other
};

// A change to the order that can be tried by planning again.
struct TurnChange {
  Angle turn;
  bool operator==(const TurnChange&) const = default;
};  // turn the design on the garment
struct ScaleChange {
  double factor = 1.0;
  bool operator==(const ScaleChange&) const = default;
};  // sew the design smaller (or larger)
struct MoveChange {
  Length down;
  bool operator==(const MoveChange&) const = default;
};  // along the rule's axis, within its tolerance
struct LocationChange {
  LocationId location;
  bool operator==(const LocationChange&) const = default;
};  // put it somewhere else
// Have several sizes of the design made: sew these garment sizes with the design at that scale,
// each at one only; those not named as they are.
struct SizeScale {
  double factor = 1.0;
  std::vector<SizeName> sizes;
  bool operator==(const SizeScale&) const = default;
};
struct DesignSizesChange {
  std::vector<SizeScale> scales;
  bool operator==(const DesignSizesChange&) const = default;
};
// The same for placements of several lines that sew one design, each placement once.
struct PlacementScales {
  std::size_t line = 0;       // index into Order::lines
  std::size_t placement = 0;  // index into OrderLine::placements
  std::vector<SizeScale> scales;
  bool operator==(const PlacementScales&) const = default;
};
struct DesignSizesOfLinesChange {
  std::vector<PlacementScales> placements;
  bool operator==(const DesignSizesOfLinesChange&) const = default;
};
// Have the design made with fewer stitches on the same area.
struct StitchesChange {
  int stitches = 0;
  bool operator==(const StitchesChange&) const = default;
};
// Sew the design in several hoopings.
struct SplitChange {
  int parts = 2;  // as planned; the order only allows it
  bool operator==(const SplitChange&) const = default;
};
// Let frames lie turned on the garment by so much; the design reads as before.
struct FrameTurnChange {
  Angle turn;
  bool operator==(const FrameTurnChange&) const = default;
};
// Sew the whole order in these frames alone; none named: in any that the shop has.
struct FramesChange {
  std::vector<FrameId> frames;
  bool operator==(const FramesChange&) const = default;
};
// For what is not a change of the order: buy, stock, measure. Checked by planning with it done.
struct ShopChange {
  std::string what;
  bool operator==(const ShopChange&) const = default;
};
using Change = std::variant<TurnChange, ScaleChange, MoveChange, LocationChange, DesignSizesChange,
                            DesignSizesOfLinesChange, StitchesChange, SplitChange, FrameTurnChange,
                            FramesChange, ShopChange>;

// Offered only after the planner has planned with it and the finding was gone without a new stop.
struct Remedy {
  Change change;
  std::string text;    // "sew it at 92 % (7 3/8 in wide)"
  std::string result;  // what the new plan says, "frame B holds it with 4 mm of room"
  // The furthest that any stitch comes to lie from where it was asked for; nothing where it goes to
  // another part of the garment.
  std::optional<Length> moves;
  bool operator==(const Remedy&) const = default;
};

struct Number {
  std::string name;  // "too wide by"
  Length value;
  bool operator==(const Number&) const = default;
};

struct Finding {
  Severity severity{};
  FindingCode code{};
  std::size_t line = 0;       // index into Order::lines
  std::size_t placement = 0;  // index into OrderLine::placements
  bool wholeOrder = false;  // about all lines together; line and placement are where to look first
  std::vector<SizeName> sizes;
  std::string place;  // "line 3, pullover hoodie, centre chest, sizes YS YM"
  std::string text;   // one sentence
  std::vector<Number> numbers;
  // Where the limit is from that is not kept: rule, basis, measure, what would change it. Nothing
  // where no single limit is behind the finding.
  std::optional<Reason> reason;
  std::vector<Remedy> remedies;  // the one that changes least first
  bool operator==(const Finding&) const = default;
};

template <>
struct EnumNames<Severity> {
  static constexpr std::pair<Severity, std::string_view> names[] = {
      {Severity::Stop, "stop"}, {Severity::Watch, "watch"}, {Severity::Note, "note"}};
};
template <>
struct EnumNames<FindingCode> {
  static constexpr std::pair<FindingCode, std::string_view> names[] = {
      {FindingCode::TooLargeForEveryFrame, "too-large-for-every-frame"},
      {FindingCode::NoFrameSuits, "no-frame-suits"},
      {FindingCode::FitsOnlyTurned, "fits-only-turned"},
      {FindingCode::FrameMeetsGarment, "frame-meets-garment"},
      {FindingCode::LittleRoom, "little-room"},
      {FindingCode::BelowLeastDrop, "below-least-drop"},
      {FindingCode::BeyondMostDrop, "beyond-most-drop"},
      {FindingCode::OutsidePanel, "outside-panel"},
      {FindingCode::MeetsKeepOut, "meets-keep-out"},
      {FindingCode::NearSeam, "near-seam"},
      {FindingCode::WiderThanPanel, "wider-than-panel"},
      {FindingCode::BeyondUsualSize, "beyond-usual-size"},
      {FindingCode::NoRule, "no-rule"},
      {FindingCode::MeasureAssumed, "measure-assumed"},
      {FindingCode::BackingNotInStock, "backing-not-in-stock"},
      {FindingCode::NeedleNotInStock, "needle-not-in-stock"},
      {FindingCode::ToppingNotInStock, "topping-not-in-stock"},
      {FindingCode::TooDense, "too-dense"},
      {FindingCode::OneSizeDoesNotServeAll, "one-size-does-not-serve-all"},
      {FindingCode::SewnInParts, "sewn-in-parts"},
      {FindingCode::LayerBehindPanel, "layer-behind-panel"},
      {FindingCode::MonogramDrawnOtherwise, "monogram-drawn-otherwise"},
      {FindingCode::FewerFramesWouldDo, "fewer-frames-would-do"},
      {FindingCode::OverlapsOtherPlace, "overlaps-other-place"}};
};

}  // namespace creaseline
