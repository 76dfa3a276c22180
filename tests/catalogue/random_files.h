// SPDX-License-Identifier: MIT
// Orders and shops at random, as a reader could have given them.
#pragma once

#include <algorithm>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/shop.h"
#include "support/sample.h"

namespace creaseline::testing {

class RandomFiles {
 public:
  explicit RandomFiles(unsigned seed) : random_(seed) {}

  [[nodiscard]] int between(int least, int most) {
    return std::uniform_int_distribution<int>(least, most)(random_);
  }
  [[nodiscard]] bool chance(int percent) { return between(1, 100) <= percent; }
  template <class T>
  [[nodiscard]] const T& oneOf(const std::vector<T>& values) {
    return values[static_cast<std::size_t>(between(0, static_cast<int>(values.size()) - 1))];
  }
  template <class E>
  [[nodiscard]] E enumerator() {
    const auto& names = EnumNames<E>::names;
    return names[static_cast<std::size_t>(between(0, static_cast<int>(std::size(names)) - 1))]
        .first;
  }

  // To the nanometre, or a ruler fraction, or whole tenths of a millimetre.
  [[nodiscard]] Length length(int leastMm, int mostMm) {
    const int whole = between(leastMm, mostMm - 1);
    switch (between(0, 2)) {
      case 0:
        return Length::fromNanometres(whole * 1'000'000LL + between(0, 999'999));
      case 1:
        return Length::fromNanometres((whole * 1'000'000LL / 396'875 + 1) * 396'875);
      default:
        return Length::fromNanometres((whole * 10LL + between(0, 9)) * 100'000);
    }
  }
  [[nodiscard]] Angle angle() { return Angle::fromMillidegrees(between(-179'999, 180'000)); }
  [[nodiscard]] Colour colour() {
    const auto channel = [&] { return static_cast<std::uint8_t>(between(0, 255)); };
    return {channel(), channel(), channel()};
  }
  [[nodiscard]] std::string label() {
    static const std::vector<std::string> kParts = {"Regatta", "año",   "\"quoted\"", "back\\slash",
                                                    "Größe",   "7",     "{x}",        "日本",
                                                    "é",       "a/b~c", "'"};
    std::string text = oneOf(kParts);
    for (int i = between(0, 3); i > 0; --i) {
      text += ' ' + oneOf(kParts);
    }
    return text;
  }
  [[nodiscard]] std::string prose() {
    return chance(50) ? std::string() : label() + "\n\t" + label() + " ";
  }
  [[nodiscard]] std::string name(const std::string& start, int number) {
    return start + std::to_string(number) + (chance(20) ? " " + label() : "");
  }

  [[nodiscard]] Order order() {
    Order order;
    order.id = label();
    order.title = chance(80) ? label() : "";
    order.customer = chance(80) ? label() : "";
    order.due =
        chance(50) ? "2026-0" + std::to_string(between(1, 9)) + "-2" + std::to_string(between(0, 8))
                   : "";
    order.note = prose();
    for (int i = chance(50) ? 0 : between(1, 3); i > 0; --i) {
      order.frames.emplace_back(name("frame", i));
    }
    for (int i = chance(20) ? 2 : 1; i > 0; --i) {
      order.blanks.push_back(blank(i));
    }
    for (int i = between(1, 4); i > 0; --i) {
      order.designs.push_back(design(i));
    }
    for (int i = between(1, 6); i > 0; --i) {
      order.lines.push_back(line(order, i));
    }
    return order;
  }

  [[nodiscard]] Shop shop() {
    Shop shop;
    shop.name = label();
    shop.units = {
        oneOf(std::vector{LengthUnit::Inch, LengthUnit::Centimetre}),
        oneOf(std::vector{RulerMark::Eighth, RulerMark::Sixteenth}),
        oneOf(std::vector{WeightUnit::GramsPerSquareMetre, WeightUnit::OuncesPerSquareYard})};
    if (chance(60)) {
      shop.rates = rates();
    }
    for (int i = between(1, 2); i > 0; --i) {
      shop.machines.push_back(Machine{MachineId(name("m", i)), label(), between(1, 20),
                                      window(300, 400), between(100, 1200)});
    }
    for (int i = between(1, 4); i > 0; --i) {
      shop.frames.push_back(frame(i));
    }
    for (int i = between(0, 3); i > 0; --i) {
      shop.backings.push_back(backing(i));
      if (shop.rates && chance(50)) {
        const bool roll = shop.backings.back().form == BackingForm::Roll;
        shop.backings.back().price =
            BackingPrice{money(), roll ? length(1, 90'000) : Length(), roll ? 0 : between(1, 500)};
      }
    }
    shop.toppingFilm = chance(50);
    for (int i = between(0, 2); i > 0; --i) {
      shop.needles.push_back({between(40, 200), enumerator<NeedlePoint>()});
    }
    if (chance(50)) {
      shop.creaseError = length(0, 9);
      shop.clothGive = length(0, 9);
      shop.measuredHoopings.push_back({length(-9, 9), length(-9, 9), angle(), label()});
      shop.measuredHoopings.push_back({length(-9, 9), length(-9, 9), angle(), ""});
      shop.hoopingError = HoopingError{length(0, 9), length(0, 9),
                                       Angle::fromMillidegrees(between(0, 9'000)), label()};
    }
    for (int i = between(0, 2); i > 0; --i) {
      shop.houseRules.push_back(rule(i));
    }
    return shop;
  }

  [[nodiscard]] Blank blank(int number) {
    Blank blank =
        sample::blank(oneOf(std::vector<std::string>{"t-shirt", "polo", "crew-sweatshirt"}));
    blank.id = BlankId(name("blank", number));
    blank.name = label();
    blank.fabric = {label(),
                    enumerator<Construction>(),
                    {{"cotton", 33.3}, {"polyester \"x\"", 66.7}},
                    ArealWeight::fromGramsPerSquareMetre(between(50'000, 500'000) / 1000.0),
                    enumerator<Pile>(),
                    enumerator<Stretch>(),
                    chance(50),
                    chance(50)};
    blank.colours.clear();
    if (chance(50)) {
      blank.price = Price{money(), currency()};
    }
    for (int i = between(0, 3); i > 0; --i) {
      blank.colours.push_back({name("colour", i), colour()});
    }
    // Every size is drawn when it is loaded, which takes most of the time.
    std::shuffle(blank.chart.sizes.begin(), blank.chart.sizes.end(), random_);
    blank.chart.sizes.resize(chance(20) ? 2 : 1);
    for (ChartSize& size : blank.chart.sizes) {
      for (auto& [measure, value] : size.measures) {
        value += Length::fromNanometres(between(-500'000, 500'000));
        if (chance(10)) {
          size.proposed.insert(measure);
        }
      }
      if (chance(30)) {
        size.bandGiven = false;
        size.band = *bandFromName(size.name);
      }
    }
    return blank;
  }

  [[nodiscard]] Design design(int number) {
    Design design = sample::design(name("design", number), length(20, 200), length(20, 200));
    design.name = label();
    for (int i = between(0, 2); i > 0; --i) {
      design.pieces.push_back({name("piece", i), label(), length(10, 90), length(10, 90)});
    }
    design.blocks.clear();
    int sum = 0;
    for (int i = between(0, 4); i > 0; --i) {
      ThreadBlock block{label(), colour(), between(1, 9'000), BlockKind::Sew, {}};
      if (!design.pieces.empty() && chance(60)) {
        block.kind = enumerator<BlockKind>();
        block.piece = chance(70) ? design.pieces.front().name : "";
      }
      sum += block.stitches;
      design.blocks.push_back(std::move(block));
    }
    design.stitches = design.blocks.empty() ? between(1, 90'000) : sum;
    if (chance(50)) {
      givePolygons(design);
    }
    if (chance(30)) {
      design.monogram = Monogram{label(), label(), label(), enumerator<MonogramStyle>(),
                                 chance(50) ? label() : ""};
    }
    return design;
  }

 private:
  [[nodiscard]] double coordinate(double range) {
    return std::uniform_real_distribution<double>(-range, range)(random_);
  }
  // Triangles anywhere, some with a hole.
  void givePolygons(Design& design) {
    design.outline.pieces.clear();
    for (int i = between(1, 3); i > 0; --i) {
      const Point at{coordinate(80.0), coordinate(80.0)};
      Piece piece{{at + Point{-10, -10}, at + Point{11, -9}, at + Point{coordinate(5.0), 12}}, {}};
      if (chance(40)) {
        piece.holes.push_back({at + Point{-1, -1}, at + Point{1, -1}, at + Point{0, 1}});
      }
      design.outline.pieces.push_back(std::move(piece));
    }
    design.outline = design.outline.centred();
    design.outlineSource = OutlineSource::Polygon;
    const Box bounds = design.outline.bounds();
    design.width = Length::fromMm(bounds.width());
    design.height = Length::fromMm(bounds.height());
  }

  [[nodiscard]] OrderLine line(const Order& order, int number) {
    OrderLine line;
    const Blank& blank = oneOf(order.blanks);
    line.id = name("line", number);
    line.blank = blank.id;
    line.colour = blank.colours.empty() || chance(40) ? "" : oneOf(blank.colours).name;
    for (const ChartSize& size : blank.chart.sizes) {
      if (line.sizes.empty() || chance(50)) {
        line.sizes.push_back({size.name, between(1, 100'000)});
      }
    }
    line.supplied = chance(30);
    std::shuffle(line.sizes.begin(), line.sizes.end(), random_);
    for (int i = between(1, 3); i > 0; --i) {
      OrderPlacement placement;
      placement.location = LocationId(oneOf(std::vector<std::string>{
          "centre-chest", "left-chest", "upper-back", "left-sleeve", "full-back"}));
      placement.design = oneOf(order.designs).id;
      placement.scale = chance(50) ? 1.0 : between(300, 3000) / 1000.0;
      placement.moveDown = chance(50) ? Length() : length(-100, 100);
      placement.moveRight = chance(50) ? Length() : length(-100, 100);
      placement.turn = chance(50) ? Angle() : angle();
      placement.frameTurn = chance(50) ? Angle() : angle();
      placement.split = chance(50);
      placement.note = prose();
      line.placements.push_back(std::move(placement));
    }
    line.note = prose();
    return line;
  }

  [[nodiscard]] Window window(int leastMm, int mostMm) {
    const Length width = length(leastMm, mostMm);
    const Length height = length(leastMm, mostMm);
    switch (between(0, 3)) {
      case 0:
        return *Window::ellipse(width, height);
      case 2:
        return *Window::rounded(width, height, between(200, 2000) / 100.0);
      case 1: {
        const double x = width.mm() / 2.0;
        const double y = height.mm() / 2.0;
        return *Window::polygon({{-x, -y * 0.7}, {x * 0.6, -y}, {x, y * 0.9}, {-x * 0.5, y}});
      }
      default:
        return *Window::rectangle(width, height, chance(50) ? Length() : length(1, 20));
    }
  }
  [[nodiscard]] Frame frame(int number) {
    Frame frame{FrameId(name("frame", number)),
                label(),
                enumerator<FrameKind>(),
                window(60, 150),
                *Window::rectangle(Length::fromMm(250.0), Length::fromMm(260.0)),
                {},
                {},
                enumerator<BracketSide>(),
                {Angle()},
                {},
                between(1, 4),
                {}};
    if (chance(50)) {
      frame.sewingField = window(50, 100);
      frame.clearance = length(0, 15);
      frame.clothMargin = length(0, 40);
      frame.turns = {angle(), Angle::fromDegrees(180.0)};
      frame.panels = {PanelName::Back, PanelName::Front};
    }
    return frame;
  }
  [[nodiscard]] BackingStock backing(int number) {
    BackingStock stock{StockId(name("stock", number)),
                       label(),
                       enumerator<BackingKind>(),
                       ArealWeight::fromGramsPerSquareMetre(between(20, 200)),
                       BackingForm::Roll,
                       length(100, 900),
                       chance(50) ? Length::fromMm(914.4 * between(1, 900)) : length(0, 90'000),
                       0};
    if (chance(50)) {
      stock.form = BackingForm::Sheets;
      stock.length = length(100, 900);
      stock.sheets = between(0, 500);
    }
    return stock;
  }
  [[nodiscard]] Currency currency() { return oneOf(sample::shippedRules().currencies); }
  [[nodiscard]] Money money() { return Money::fromMinorUnits(between(0, 2'000'000'000)); }
  [[nodiscard]] RollPrice rollPrice() { return {money(), length(1, 900), length(1, 90'000)}; }
  // Each is there or not for itself.
  [[nodiscard]] Rates rates() {
    Rates rates;
    rates.currency = currency();
    rates.labour = chance(50) ? std::optional(money()) : std::nullopt;
    rates.machine = chance(50) ? std::optional(money()) : std::nullopt;
    rates.attendance =
        chance(50) ? std::optional(Percent::fromHundredths(between(0, 10'000))) : std::nullopt;
    rates.thread =
        chance(50) ? std::optional(StitchPrice{money(), between(1, 9'999'999)}) : std::nullopt;
    rates.topping = chance(50) ? std::optional(rollPrice()) : std::nullopt;
    rates.applique = chance(50) ? std::optional(rollPrice()) : std::nullopt;
    rates.setUp = chance(50) ? std::optional(money()) : std::nullopt;
    rates.markup =
        chance(50) ? std::optional(Percent::fromHundredths(between(0, 900'000))) : std::nullopt;
    return rates;
  }
  [[nodiscard]] PlacementRule rule(int number) {
    PlacementRule rule;
    rule.house = true;
    rule.id = RuleId(name("rule", number));
    const Location& location = oneOf(sample::shippedRules().locations);
    rule.location = location.id;
    do {
      rule.from = enumerator<Landmark>();
    } while (!liesOn(rule.from, location.panel));
    rule.anchor = enumerator<Anchor>();
    rule.sideways = enumerator<Sideways>();
    rule.least = length(10, 50);
    rule.distance = rule.least + length(10, 50);
    rule.most = rule.distance + length(10, 50);
    rule.basis = label();
    rule.note = prose();
    if (chance(50)) {
      rule.kinds = {KindId("polo")};
      rule.bands = {SizeBand::Youth, SizeBand::Adult};
      rule.sizes = {SizeName("XL"), SizeName("S")};
      rule.blanks = {BlankId(label())};
      rule.sidewaysDistance = length(10, 50);
      rule.turn = angle();
      rule.turnReason = "because";
      rule.leastWidth = length(10, 50);
      rule.mostWidth = length(60, 90);
      rule.leastHeight = length(10, 50);
      rule.mostHeight = length(60, 90);
    }
    return rule;
  }

  std::mt19937 random_;
};

}  // namespace creaseline::testing
