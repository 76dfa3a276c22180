// SPDX-License-Identifier: MIT
// The shop: machines, frames, stock, and how well it hoops.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "creaseline/base/angle.h"
#include "creaseline/base/areal_weight.h"
#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/base/result.h"
#include "creaseline/base/units.h"
#include "creaseline/catalogue/garment_kind.h"
#include "creaseline/catalogue/identifiers.h"
#include "creaseline/catalogue/rates.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/shape/window.h"

namespace creaseline {

enum class FrameKind { Magnetic, Screw, Clamp };
// Side of the frame where its bracket meets the machine's arm, in the frame's own view.
enum class BracketSide { Top, Bottom, Left, Right, Both };

struct Frame {
  FrameId id;
  std::string name;
  FrameKind kind = FrameKind::Screw;
  Window window;                      // open inside
  Window body;                        // outside edge of both rings
  std::optional<Window> sewingField;  // that the machine can reach with this frame
  std::optional<Length> clearance;    // foot clearance; the shop's default where absent
  BracketSide bracket = BracketSide::Top;
  std::vector<Angle> turns;       // how the frame may lie on the garment; {0} at least
  std::vector<PanelName> panels;  // it is meant for; empty: any
  int quantity = 1;
  // How far cloth must go on to be held: beyond the body at an edge that the rings stay inside,
  // beyond the window at one that they may overhang (EdgeCrossing). Absent: it need not go on.
  std::optional<Length> clothMargin = {};
  bool operator==(const Frame&) const = default;
};

struct Machine {
  MachineId id;
  std::string name;
  int needles = 1;
  Window sewingField;  // for frames that name none
  int stitchesPerMinute = 700;
  bool operator==(const Machine&) const = default;
};

enum class BackingForm { Roll, Sheets };
struct BackingStock {
  StockId id;
  std::string name;
  BackingKind kind = BackingKind::CutAway;
  ArealWeight weight;
  BackingForm form = BackingForm::Roll;
  Length width;   // of the roll or sheet
  Length length;  // left on the roll, or of one sheet
  int sheets = 0;
  std::optional<BackingPrice> price = {};  // only where the shop has rates
  bool operator==(const BackingStock&) const = default;
};

struct NeedleStock {
  int size = 75;  // hundredths of a millimetre of blade
  NeedlePoint point = NeedlePoint::LightBall;
  bool operator==(const NeedleStock&) const = default;
};

// How far off a hooped garment may be. Defaults come from resources/rules/defaults.json.
struct HoopingError {
  Length sideways, along;
  Angle turn;
  std::string basis;
  bool operator==(const HoopingError&) const = default;
};

// How far off one hooped garment was found to be at the machine, before it was corrected; + is the
// viewer's right, down, clockwise.
struct MeasuredHooping {
  Length sideways, along;
  Angle turn;
  std::string note;  // "2026-10-02, polo", or empty
  bool operator==(const MeasuredHooping&) const = default;
};

struct Shop {
  std::string name;
  UnitChoice units;
  std::vector<Machine> machines;  // at least one
  std::vector<Frame> frames;      // at least one
  std::vector<BackingStock> backings;
  bool toppingFilm = false;
  std::vector<NeedleStock> needles;  // empty: not listed, nothing is said about needles in stock
  // As judged by the shop; else it follows from what was measured, if that is enough; else the
  // shipped default holds.
  std::optional<HoopingError> hoopingError;
  std::vector<MeasuredHooping> measuredHoopings;
  // What the steps before the machine may add; the shipped defaults where absent.
  std::optional<Length> creaseError, rulerError, clothGive;
  std::vector<PlacementRule> houseRules;  // win over the shipped rules
  std::optional<Rates> rates;             // absent: costs are not reckoned
  bool operator==(const Shop&) const = default;
  [[nodiscard]] const Frame* frame(const FrameId& id) const;
};

inline constexpr Length kLongestRoll = Length::fromMm(1.0e6);
// Length left on a roll, which may also be said in metres ("50 m") and yards ("20 yd"), as rolls
// are sold; the range is that of a shop's file.
[[nodiscard]] Result<Length> parseRollLength(std::string_view text);
// The same as text: whole metres, or whole yards for who measures in inches, else millimetres.
[[nodiscard]] std::string rollLengthText(Length length, LengthUnit unit);

template <>
struct EnumNames<FrameKind> {
  static constexpr std::pair<FrameKind, std::string_view> names[] = {
      {FrameKind::Magnetic, "magnetic"}, {FrameKind::Screw, "screw"}, {FrameKind::Clamp, "clamp"}};
};
template <>
struct EnumNames<BracketSide> {
  static constexpr std::pair<BracketSide, std::string_view> names[] = {
      {BracketSide::Top, "top"},
      {BracketSide::Bottom, "bottom"},
      {BracketSide::Left, "left"},
      {BracketSide::Right, "right"},
      {BracketSide::Both, "left-and-right"}};
};
template <>
struct EnumNames<BackingForm> {
  static constexpr std::pair<BackingForm, std::string_view> names[] = {
      {BackingForm::Roll, "roll"}, {BackingForm::Sheets, "sheets"}};
};

}  // namespace creaseline
