// SPDX-License-Identifier: MIT
#include "support/sample.h"

#include <algorithm>
#include <stdexcept>

#include "creaseline/catalogue/load.h"

namespace creaseline::sample {
namespace {

using namespace creaseline::literals;

ChartSize size(const std::string& name, SizeBand band, Length bodyWidth, Length bodyLength) {
  ChartSize entry;
  entry.name = SizeName(name);
  entry.band = band;
  entry.bandGiven = true;
  entry.measures = {{Measure::BodyWidth, bodyWidth},
                    {Measure::BodyLength, bodyLength},
                    {Measure::NeckWidth, bodyWidth * 0.32},
                    {Measure::FrontNeckDrop, bodyWidth * 0.16},
                    {Measure::BackNeckDrop, 25_mm}};
  return entry;
}

}  // namespace

const Rules& shippedRules() {
  static const Rules rules = loadRules(std::string(SOURCE_DIR) + "/resources");
  return rules;
}

Blank blank(const std::string& kind) {
  Blank blank;
  blank.id = BlankId("sample-" + kind);
  blank.name = "sample " + kind;
  blank.kind = KindId(kind);
  const bool fleece = kind != "t-shirt" && kind != "polo";
  blank.fabric.name = fleece ? "fleece" : "jersey";
  blank.fabric.construction = Construction::Knit;
  blank.fabric.fibres = {{"cotton", 50.0}, {"polyester", 50.0}};
  blank.fabric.weight = ArealWeight::fromGramsPerSquareMetre(fleece ? 280.0 : 180.0);
  blank.fabric.pile = fleece ? Pile::BrushedInside : Pile::None;
  blank.fabric.stretch = Stretch::Some;
  blank.colours = {{"navy", {20, 30, 70}}};
  blank.chart.sizes = {size("YM", SizeBand::Youth, 430_mm, 560_mm),
                       size("M", SizeBand::Adult, 550_mm, 710_mm),
                       size("XL", SizeBand::Adult, 640_mm, 760_mm),
                       size("2XL", SizeBand::AdultAboveXl, 690_mm, 790_mm)};
  return blank;
}

Design design(const std::string& id, Length width, Length height) {
  Design design;
  design.id = DesignId(id);
  design.name = id;
  design.width = width;
  design.height = height;
  design.stitches = static_cast<int>((width * height).squareMm() * 0.6);
  design.blocks = {{"white", {255, 255, 255}, design.stitches, BlockKind::Sew, {}}};
  design.outline = Outline::rectangle(width, height);
  return design;
}

Frame frame(const std::string& id, Length width, Length height, Length rim) {
  return Frame{FrameId(id),
               "frame " + id,
               FrameKind::Screw,
               *Window::rectangle(width, height),
               *Window::rectangle(width + rim * 2.0, height + rim * 2.0),
               std::nullopt,
               10_mm,
               BracketSide::Both,
               {Angle(), Angle::fromDegrees(90.0)},
               {},
               1,
               {}};
}

Shop shop(std::vector<Frame> frames) {
  Shop shop;
  shop.name = "sample shop";
  shop.machines = {
      Machine{MachineId("m"), "machine", 10, *Window::rectangle(2000_mm, 2000_mm), 700}};
  shop.frames = std::move(frames);
  const auto roll = [](const std::string& id, BackingKind kind, double weight) {
    return BackingStock{
        StockId(id),       id,      kind,      ArealWeight::fromGramsPerSquareMetre(weight),
        BackingForm::Roll, 1000_mm, 50'000_mm, 0};
  };
  shop.backings = {roll("cut-away", BackingKind::CutAway, 90.0),
                   roll("tear-away", BackingKind::TearAway, 60.0),
                   roll("wash-away", BackingKind::WashAway, 60.0)};
  shop.toppingFilm = true;
  return shop;
}

Order order(const Blank& blank, const Design& design, const std::string& location,
            const std::vector<std::string>& sizes) {
  Order order;
  order.id = "sample";
  order.title = "sample order";
  order.blanks = {blank};
  order.designs = {design};
  OrderLine line;
  line.id = "1";
  line.blank = blank.id;
  line.colour = "navy";
  for (const std::string& name : sizes) {
    line.sizes.push_back({SizeName(name), 1});
  }
  OrderPlacement placement;
  placement.location = LocationId(location);
  placement.design = design.id;
  line.placements = {placement};
  order.lines = {line};
  return order;
}

const PlacementPlan& planFor(const Plan& plan, const std::string& size) {
  const auto found =
      std::find_if(plan.placements.begin(), plan.placements.end(),
                   [&size](const PlacementPlan& p) { return p.size.text() == size; });
  if (found == plan.placements.end()) {
    throw std::runtime_error("no placement of size " + size);
  }
  return *found;
}

bool hasFinding(const Plan& plan, FindingCode code) {
  return std::any_of(plan.findings.begin(), plan.findings.end(),
                     [code](const Finding& finding) { return finding.code == code; });
}

const Finding& findingOf(const Plan& plan, FindingCode code) {
  const auto found = std::find_if(plan.findings.begin(), plan.findings.end(),
                                  [code](const Finding& finding) { return finding.code == code; });
  if (found == plan.findings.end()) {
    throw std::runtime_error("no finding " + std::string(nameOf(code)));
  }
  if (!found->reason) {
    throw std::runtime_error("no reason for finding " + std::string(nameOf(code)));
  }
  return *found;
}

}  // namespace creaseline::sample
