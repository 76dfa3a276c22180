// SPDX-License-Identifier: MIT
// Each finding on a case made for it; and every remedy tried again through the public planner.
#include <algorithm>
#include <catch2/catch.hpp>

#include "creaseline/planning/change.h"
#include "creaseline/planning/planner.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using sample::findingOf;
using sample::hasFinding;

namespace {

Plan plan(const Order& order, const Shop& shop) {
  return planOrder(order, shop, sample::shippedRules());
}

Order orderOf(const std::string& kind, Length width, Length height, const std::string& location,
              const std::vector<std::string>& sizes) {
  return sample::order(sample::blank(kind), sample::design("d", width, height), location, sizes);
}

// The order with the change made to the sizes of the finding, and these sizes alone; nothing if the
// change is to buy or to measure.
std::optional<Order> changed(const Order& order, const Finding& finding, const Change& change) {
  Order tried = order;
  if (const auto* stitches = std::get_if<StitchesChange>(&change)) {
    for (Design& design : tried.designs) {
      design.stitches = stitches->stitches;
      design.blocks.clear();
    }
  } else if (const auto made = orderWith(order, finding, change)) {
    tried = *made;
  } else {
    return std::nullopt;
  }
  for (OrderLine& line : tried.lines) {
    std::erase_if(line.sizes, [&finding](const SizeQuantity& entry) {
      return std::find(finding.sizes.begin(), finding.sizes.end(), entry.size) ==
             finding.sizes.end();
    });
  }
  std::erase_if(tried.lines, [](const OrderLine& line) { return line.sizes.empty(); });
  return tried;
}

void checkRemedies(const Order& order, const Shop& shop) {
  const Plan before = plan(order, shop);
  for (const Finding& finding : before.findings) {
    for (const Remedy& remedy : finding.remedies) {
      CAPTURE(nameOf(finding.code), finding.text, remedy.text);
      const std::optional<Order> tried = changed(order, finding, remedy.change);
      if (!tried) {
        continue;
      }
      const Plan after = plan(*tried, shop);
      CHECK(after.counts.stops == 0);
      CHECK(std::none_of(after.findings.begin(), after.findings.end(), [&](const Finding& left) {
        return left.code == finding.code && left.severity <= finding.severity;
      }));
    }
  }
}

}  // namespace

TEST_CASE("a design larger than every frame stops, with a size that works", "[findings]") {
  const Order order = orderOf("full-zip-hoodie", 290_mm, 250_mm, "full-back", {"XL", "2XL"});
  const Shop shop = sample::shop({sample::frame("A", 200_mm, 230_mm)});
  const Plan made = plan(order, shop);
  const Finding& finding = findingOf(made, FindingCode::TooLargeForEveryFrame);
  CHECK(finding.severity == Severity::Stop);
  CHECK(finding.sizes.size() == 2);
  REQUIRE_FALSE(finding.remedies.empty());
  const auto scale =
      std::find_if(finding.remedies.begin(), finding.remedies.end(),
                   [](const Remedy& r) { return std::holds_alternative<ScaleChange>(r.change); });
  REQUIRE(scale != finding.remedies.end());
  // 180 x 210 mm are left, turned 210 x 180: 290 x 250 goes in at 72 % turned, 62 % upright, and
  // leaves half of the shop's 3 mm on each side at 70 %.
  CHECK(std::get<ScaleChange>(scale->change).factor == Approx(0.70));
  // The corners of a design that hangs from its upper side come down and in by 30 %.
  CHECK(scale->moves->mm() == Approx(0.30 * std::hypot(145.0, 250.0)));
  checkRemedies(order, shop);
}

TEST_CASE("a frame body that meets the pocket is named with its millimetres", "[findings]") {
  const Order order = orderOf("pullover-hoodie", 180_mm, 200_mm, "centre-chest", {"YM", "2XL"});
  const Shop shop = sample::shop({sample::frame("A", 220_mm, 240_mm, 25_mm)});
  const Plan made = plan(order, shop);
  const Finding& finding = findingOf(made, FindingCode::FrameMeetsGarment);
  CHECK(finding.severity == Severity::Stop);
  CHECK(finding.sizes == std::vector<SizeName>{SizeName("YM")});
  CHECK(finding.text.find("pocket") != std::string::npos);
  REQUIRE(finding.numbers.size() == 1);
  CHECK(finding.numbers[0].value > 0_mm);
  // However small the design, this frame's body stays as large.
  CHECK_FALSE(hasFinding(made, FindingCode::OneSizeDoesNotServeAll));
  checkRemedies(order, shop);
}

TEST_CASE("a zip, a collar and a side seam stop a frame as well", "[findings]") {
  const Shop shop = sample::shop({sample::frame("A", 200_mm, 200_mm, 30_mm)});
  const auto whatFails = [&shop](const Order& order) {
    const Plan made = plan(order, shop);
    return findingOf(made, FindingCode::FrameMeetsGarment).text;
  };
  CHECK(whatFails(orderOf("full-zip-hoodie", 100_mm, 100_mm, "left-chest", {"M"})).find("zip") !=
        std::string::npos);
  Order nearCollar = orderOf("t-shirt", 170_mm, 170_mm, "centre-chest", {"M"});
  nearCollar.lines[0].placements[0].moveDown = -60_mm;
  CHECK(whatFails(nearCollar).find("collar") != std::string::npos);
  const Shop wide = sample::shop({sample::frame("W", 400_mm, 120_mm, 30_mm)});
  const Plan made = plan(orderOf("t-shirt", 370_mm, 60_mm, "full-back", {"YM"}), wide);
  CHECK(findingOf(made, FindingCode::FrameMeetsGarment).text.find("side seam") !=
        std::string::npos);
}

TEST_CASE("a design nearer than its least drop stops and can be moved", "[findings]") {
  Order order = orderOf("t-shirt", 100_mm, 60_mm, "centre-chest", {"M"});
  order.lines[0].placements[0].moveDown = -(1_in);
  const Shop shop = sample::shop({sample::frame("A", 200_mm, 130_mm)});
  const Plan made = plan(order, shop);
  const Finding& finding = findingOf(made, FindingCode::BelowLeastDrop);
  CHECK(finding.severity == Severity::Stop);
  CHECK(finding.numbers.front().value == 1_in);
  REQUIRE(std::holds_alternative<MoveChange>(finding.remedies.front().change));
  CHECK(std::get<MoveChange>(finding.remedies.front().change).down == 1_in);
  checkRemedies(order, shop);
}

TEST_CASE("a design wider than the panel stops", "[findings]") {
  const Order order = orderOf("t-shirt", 480_mm, 60_mm, "full-back", {"YM", "2XL"});
  const Shop shop = sample::shop({sample::frame("A", 600_mm, 150_mm)});
  const Plan made = plan(order, shop);
  const Finding& finding = findingOf(made, FindingCode::WiderThanPanel);
  CHECK(finding.severity == Severity::Stop);
  CHECK(std::count(finding.sizes.begin(), finding.sizes.end(), SizeName("YM")) == 1);
  CHECK(finding.numbers.front().value > 0_mm);
}

TEST_CASE("little room is a watch against the shop's own hooping error", "[findings]") {
  const Order order = orderOf("t-shirt", 100_mm, 60_mm, "centre-chest", {"M"});
  Shop shop = sample::shop({sample::frame("A", 124_mm, 84_mm)});
  CHECK(hasFinding(plan(order, shop), FindingCode::LittleRoom));
  checkRemedies(order, shop);
  shop.hoopingError = HoopingError{1_mm, 1_mm, 1_deg, "measured"};
  CHECK_FALSE(hasFinding(plan(order, shop), FindingCode::LittleRoom));
}

TEST_CASE("a measure that the chart lacks is assumed aloud", "[findings]") {
  Order order = orderOf("t-shirt", 100_mm, 60_mm, "centre-chest", {"M"});
  const Shop shop = sample::shop({sample::frame("A", 200_mm, 130_mm)});
  for (ChartSize& size : order.blanks[0].chart.sizes) {
    size.measures.erase(Measure::FrontNeckDrop);
  }
  const Plan made = plan(order, shop);
  const Finding& finding = findingOf(made, FindingCode::MeasureAssumed);
  CHECK(finding.text.find("front neck drop") != std::string::npos);
  REQUIRE_FALSE(finding.remedies.empty());
  const auto& assumed = made.placements.front().assumed;
  CHECK(std::count(assumed.begin(), assumed.end(), Measure::FrontNeckDrop) == 1);
}

TEST_CASE("stitches too dense for the cloth are a watch with a number that works", "[findings]") {
  Order order = orderOf("t-shirt", 100_mm, 60_mm, "centre-chest", {"M"});
  order.designs[0].blocks.clear();
  order.designs[0].stitches = 12'000;  // 2 a square millimetre
  const Shop shop = sample::shop({sample::frame("A", 200_mm, 130_mm)});
  const Plan made = plan(order, shop);
  const Finding& finding = findingOf(made, FindingCode::TooDense);
  CHECK(finding.severity == Severity::Watch);
  REQUIRE_FALSE(finding.remedies.empty());
  CHECK(std::holds_alternative<StitchesChange>(finding.remedies.front().change));
  checkRemedies(order, shop);
}

TEST_CASE("what is not in stock is said with what to buy", "[findings]") {
  const Order order = orderOf("polo", 80_mm, 60_mm, "left-chest", {"M"});
  Shop shop = sample::shop({sample::frame("A", 130_mm, 100_mm)});
  shop.backings.clear();
  shop.needles = {{90, NeedlePoint::Sharp}};
  const Plan made = plan(order, shop);
  CHECK_FALSE(findingOf(made, FindingCode::BackingNotInStock).remedies.empty());
  CHECK_FALSE(findingOf(made, FindingCode::NeedleNotInStock).remedies.empty());
  Order textured = order;
  textured.blanks[0].fabric.pile = Pile::Textured;
  shop.toppingFilm = false;
  CHECK_FALSE(findingOf(plan(textured, shop), FindingCode::ToppingNotInStock).remedies.empty());
}

TEST_CASE("one size of a design that does not serve all sizes is said with those it serves",
          "[findings]") {
  const Order order =
      orderOf("pullover-hoodie", 200_mm, 200_mm, "centre-chest", {"YM", "M", "XL", "2XL"});
  const Shop shop =
      sample::shop({sample::frame("A", 240_mm, 240_mm, 20_mm), sample::frame("B", 130_mm, 130_mm)});
  const Plan made = plan(order, shop);
  const Finding& finding = findingOf(made, FindingCode::OneSizeDoesNotServeAll);
  CHECK(std::count(finding.sizes.begin(), finding.sizes.end(), SizeName("YM")) == 1);
  CHECK(finding.text.find("serves") != std::string::npos);
  REQUIRE(std::holds_alternative<DesignSizesChange>(finding.remedies.front().change));
  checkRemedies(order, shop);
}

TEST_CASE("every stop carries a remedy that was planned before it was offered", "[findings]") {
  const Shop shop =
      sample::shop({sample::frame("A", 130_mm, 130_mm), sample::frame("B", 220_mm, 240_mm, 25_mm)});
  for (const char* kind : {"t-shirt", "polo", "pullover-hoodie", "full-zip-hoodie"}) {
    for (const char* location : {"centre-chest", "left-chest", "upper-back", "full-back"}) {
      for (const auto& [width, height] :
           {std::pair{60_mm, 40_mm}, {110_mm, 90_mm}, {200_mm, 200_mm}, {350_mm, 120_mm}}) {
        const Order order = orderOf(kind, width, height, location, {"YM", "M", "2XL"});
        CAPTURE(kind, location, width.mm(), height.mm());
        checkRemedies(order, shop);
      }
    }
  }
}

TEST_CASE("findings come stops first and name their place", "[findings]") {
  const Order order = orderOf("pullover-hoodie", 200_mm, 230_mm, "centre-chest", {"YM", "M"});
  const Plan made = plan(order, sample::shop({sample::frame("A", 240_mm, 270_mm, 25_mm)}));
  REQUIRE(made.findings.size() >= 2);
  CHECK(std::is_sorted(made.findings.begin(), made.findings.end(),
                       [](const Finding& a, const Finding& b) { return a.severity < b.severity; }));
  for (const Finding& finding : made.findings) {
    CHECK(finding.place.find("line 1, sample pullover-hoodie, Centre chest") == 0);
  }
}

TEST_CASE("a lining behind the cloth is a watch and what hangs behind it a step", "[findings]") {
  const Shop shop = sample::shop({sample::frame("A", 130_mm, 100_mm)});
  const Plan lined = plan(orderOf("soft-jacket", 60_mm, 40_mm, "upper-back", {"M"}), shop);
  CHECK(findingOf(lined, FindingCode::LayerBehindPanel).text.find("lining") != std::string::npos);
  const Plan plain = plan(orderOf("t-shirt", 60_mm, 40_mm, "upper-back", {"M"}), shop);
  CHECK_FALSE(hasFinding(plain, FindingCode::LayerBehindPanel));
  const auto warns = [](const Plan& made) {
    const std::vector<Step>& steps = made.placements[0].steps;
    const auto closed = std::find_if(steps.begin(), steps.end(), [](const Step& step) {
      return step.text.find("Close the frame") == 0;
    });
    return std::any_of(closed, steps.end(), [](const Step& step) {
      return step.byHand && step.text.find("the front must hang clear") != std::string::npos;
    });
  };
  CHECK(warns(lined));
  CHECK(warns(plain));
  // A towel has nothing behind it.
  CHECK_FALSE(warns(plan(orderOf("bath-towel", 60_mm, 40_mm, "towel-end", {"M"}), shop)));
}
