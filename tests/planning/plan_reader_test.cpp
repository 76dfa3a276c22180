// SPDX-License-Identifier: MIT
// Plans that are written and read back, and plan files that are damaged.
#include "creaseline/planning/plan_reader.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <random>
#include <set>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/report.h"
#include "plan_samples.h"
#include "support/case_count.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;
using nlohmann::ordered_json;
using Pointer = ordered_json::json_pointer;

namespace {

void checkSame(const PlacementPlan& read, const PlacementPlan& made) {
  CHECK(read.line == made.line);
  CHECK(read.placement == made.placement);
  CHECK(read.size == made.size);
  CHECK(read.band == made.band);
  CHECK(read.quantity == made.quantity);
  CHECK(read.location == made.location);
  CHECK(*read.garment == *made.garment);
  CHECK(read.panel == made.panel);
  CHECK(read.design == made.design);
  CHECK(read.outlineOnPanel == made.outlineOnPanel);
  CHECK(read.part == made.part);
  CHECK(read.hasRule == made.hasRule);
  CHECK(read.placed == made.placed);
  CHECK(read.cloth == made.cloth);
  CHECK(read.frame == made.frame);
  CHECK(read.onlyTurned == made.onlyTurned);
  CHECK(read.alternatives == made.alternatives);
  CHECK(read.rejections == made.rejections);
  CHECK(read.largestScale == made.largestScale);
  CHECK(read.backing == made.backing);
  CHECK(read.steps == made.steps);
  CHECK(read.cautions == made.cautions);
  CHECK(read.assumed == made.assumed);
  CHECK(read.worst == made.worst);
}

void checkRoundTrip(const Order& order, const Shop& shop) {
  const Rules& rules = sample::shippedRules();
  const ReportContext context{order, shop, rules};
  const Plan made = planOrder(order, shop, rules);
  const std::string written = jsonReport(made, context);
  const Plan read = readPlan(written, "plan.json", order, shop, rules);
  CHECK(read.orderId == made.orderId);
  CHECK(read.counts == made.counts);
  CHECK(read.findings == made.findings);
  REQUIRE(read.placements.size() == made.placements.size());
  for (std::size_t i = 0; i < made.placements.size(); ++i) {
    CAPTURE(i);
    checkSame(read.placements[i], made.placements[i]);
  }
  CHECK(jsonReport(read, context) == written);
  for (const UnitChoice& units : {samples::kInches, samples::kMillimetres}) {
    CHECK(textReport(read, context, units) == textReport(made, context, units));
  }
}

class RandomOrders {
 public:
  explicit RandomOrders(unsigned seed) : random_(seed) {}

  Shop shop() {
    std::vector<Frame> frames;
    const int count = whole(1, 4);
    for (int i = 0; i < count; ++i) {
      Frame frame = sample::frame("frame " + std::to_string(i), millimetres(80.0, 360.0),
                                  millimetres(80.0, 360.0));
      if (whole(0, 2) == 0) {
        frame.window = *Window::ellipse(frame.window.width(), frame.window.height());
      } else if (whole(0, 1) == 0) {
        frame.window =
            *Window::rectangle(frame.window.width(), frame.window.height(), millimetres(1.0, 39.0));
      }
      if (whole(0, 1) == 0) {
        frame.turns.push_back(90_deg);
      }
      frames.push_back(frame);
    }
    Shop shop = sample::shop(std::move(frames));
    shop.units = whole(0, 1) == 0 ? samples::kInches : samples::kMillimetres;
    return shop;
  }

  Order order() {
    const char* kinds[] = {"t-shirt", "polo", "crew-sweatshirt", "pullover-hoodie",
                           "full-zip-hoodie"};
    Design design = sample::design("design", millimetres(20.0, 330.0), millimetres(20.0, 330.0));
    if (whole(0, 1) == 0) {
      design.outline = blob(design.width.mm(), design.height.mm());
    }
    Order order = sample::order(sample::blank(kinds[whole(0, 4)]), design, location(),
                                {"YM", "M", "XL", "2XL"});
    OrderLine& line = order.lines.front();
    line.sizes[1].quantity = whole(1, 40);
    line.placements.push_back(line.placements.front());
    line.placements.back().location = LocationId(location());
    for (OrderPlacement& placement : line.placements) {
      placement.scale = whole(0, 1) == 0 ? 1.0 : real(0.3, 1.3);
      placement.moveDown = whole(0, 2) == 0 ? millimetres(-30.0, 30.0) : Length();
      placement.moveRight = whole(0, 2) == 0 ? millimetres(-30.0, 30.0) : Length();
      placement.turn = whole(0, 2) == 0 ? Angle::fromDegrees(real(-180.0, 180.0)) : Angle();
      placement.split = whole(0, 1) == 0;
    }
    return order;
  }

 private:
  int whole(int least, int most) { return std::uniform_int_distribution<>(least, most)(random_); }
  double real(double least, double most) {
    return std::uniform_real_distribution<>(least, most)(random_);
  }
  Length millimetres(double least, double most) { return Length::fromMm(real(least, most)); }
  std::string location() {
    const auto& all = sample::shippedRules().locations;
    return all[static_cast<std::size_t>(whole(0, static_cast<int>(all.size()) - 1))].id.text();
  }
  // A star of random points with the bounds asked for.
  Outline blob(double width, double height) {
    Ring ring;
    for (int i = 0; i < 24; ++i) {
      const double far = real(0.4, 1.0);
      ring.push_back(turned({far, 0.0}, Angle::fromDegrees(15.0 * i)));
    }
    const Box box = ringBounds(ring);
    for (Point& point : ring) {
      point = {(point.x - box.centre().x) * width / box.width(),
               (point.y - box.centre().y) * height / box.height()};
    }
    return Outline{{Piece{ring, {}}}};
  }

  std::mt19937 random_;
};

// A plan with a stop, remedies, frames, rejections, cautions and a rounded window, as JSON.
struct SmallPlan {
  Order order = sample::order(sample::blank("pullover-hoodie"), sample::design("d", 190_mm, 150_mm),
                              "centre-chest", {"YM", "2XL"});
  Shop shop = roundedShop();
  ordered_json json = ordered_json::parse(jsonReport(planOrder(order, shop, sample::shippedRules()),
                                                     {order, shop, sample::shippedRules()}));

  static Shop roundedShop() {
    Frame magnetic = sample::frame("B", 230_mm, 200_mm);
    magnetic.kind = FrameKind::Magnetic;
    magnetic.window = *Window::rectangle(230_mm, 200_mm, 30_mm);
    return sample::shop({sample::frame("A", 130_mm, 130_mm), magnetic});
  }
  [[nodiscard]] Plan read(const std::string& text) const {
    return readPlan(text, "plan.json", order, shop, sample::shippedRules());
  }
  // What the error says; fails the test if there is none.
  [[nodiscard]] InputError::Details errorOf(const ordered_json& damaged) const {
    try {
      static_cast<void>(read(damaged.dump()));
    } catch (const InputError& error) {
      return error.details();
    }
    FAIL("the plan was read");
    return {};
  }
};

// Pointers to every value of a document; of lists, to two entries only.
void listPointers(const ordered_json& value, const Pointer& at, std::vector<Pointer>& all) {
  if (value.is_object()) {
    for (const auto& [key, member] : value.items()) {
      all.push_back(at / key);
      listPointers(member, at / key, all);
    }
  } else if (value.is_array()) {
    for (std::size_t i = 0; i < std::min<std::size_t>(2, value.size()); ++i) {
      all.push_back(at / i);
      listPointers(value[i], at / i, all);
    }
  }
}

// Read from the order, not from the plan; bounds may be left out where there are none.
bool mayBeAbsent(const Pointer& at) {
  const std::set<std::string> keys = {"title", "customer", "due", "bounds"};
  return keys.count(at.back()) != 0;
}

}  // namespace

TEST_CASE("the demo's plan is the same when it is read back", "[plan-reader]") {
  const Rules& rules = sample::shippedRules();
  checkRoundTrip(loadOrder(SOURCE_DIR "/demo/regatta.order.json", rules).value,
                 loadShop(SOURCE_DIR "/demo/workshop.shop.json", rules).value);
}

TEST_CASE("plans of random orders are the same when they are read back", "[plan-reader]") {
  const auto orders = static_cast<unsigned>(std::max(1, test::caseCount(250) / 10));
  for (unsigned seed = 1; seed <= orders; ++seed) {
    CAPTURE(seed);
    RandomOrders random(seed);
    const Shop shop = random.shop();
    checkRoundTrip(random.order(), shop);
  }
}

TEST_CASE("every kind of remedy is the same when it is read back", "[plan-reader]") {
  SmallPlan small;
  Plan plan = small.read(small.json.dump());
  REQUIRE_FALSE(plan.findings.empty());
  plan.findings[0].remedies.clear();
  for (const Change& change :
       {Change(TurnChange{90_deg}), Change(ScaleChange{0.92}), Change(MoveChange{-5_mm}),
        Change(LocationChange{LocationId("upper-back")}),
        Change(DesignSizesChange{{{0.8, {SizeName("YM")}}, {0.9, {SizeName("2XL")}}}}),
        Change(DesignSizesOfLinesChange{{{0, 0, {{0.8, {SizeName("YM")}}}},
                                         {0, 0, {{0.9, {SizeName("2XL"), SizeName("M")}}}}}}),
        Change(FrameTurnChange{12_deg}), Change(FramesChange{{small.shop.frames[0].id}}),
        Change(StitchesChange{9000}), Change(ShopChange{"buy a larger frame"})}) {
    plan.findings[0].remedies.push_back({change, "text", "result", 4_mm});
  }
  plan.findings[0].remedies.back().moves.reset();
  plan.findings[0].wholeOrder = true;
  const std::string text = jsonReport(plan, {small.order, small.shop, sample::shippedRules()});
  CHECK(small.read(text).findings == plan.findings);
}

TEST_CASE("coordinates are read to the last bit", "[plan-reader]") {
  SmallPlan small;
  Plan plan = small.read(small.json.dump());
  plan.placements[0].frame.reset();  // which would not hold a design so far off
  plan.placements[0].alternatives.clear();
  Point& centre = plan.placements[0].placed.centre;
  for (const double x : {1.0 / 3.0, -0.1, 1e-17, 123456.78901234567, -0.0, 5e-324}) {
    CAPTURE(x);
    centre.x = x;
    const std::string text = jsonReport(plan, {small.order, small.shop, sample::shippedRules()});
    CHECK(small.read(text).placements[0].placed.centre.x == x);
  }
}

TEST_CASE("a plan without one of its keys is refused with the place", "[plan-reader]") {
  const SmallPlan small;
  std::vector<Pointer> pointers;
  listPointers(small.json, Pointer(), pointers);
  REQUIRE(pointers.size() > 300);
  for (const Pointer& at : pointers) {
    ordered_json damaged = small.json;
    ordered_json& parent = damaged[at.parent_pointer()];
    if (!parent.is_object() || mayBeAbsent(at)) {
      continue;
    }
    CAPTURE(at.to_string());
    parent.erase(at.back());
    const InputError::Details error = small.errorOf(damaged);
    CHECK(error.file == "plan.json");
    CHECK(error.where.find(at.parent_pointer().empty()
                               ? "top level"
                               : at.parent_pointer().to_string()) != std::string::npos);
    CHECK_FALSE(error.found.empty());
    CHECK_FALSE(error.expected.empty());
  }
}

TEST_CASE("a plan with a value of the wrong type is refused with the place", "[plan-reader]") {
  const unsigned seed = 20;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const SmallPlan small;
  std::vector<Pointer> pointers;
  listPointers(small.json, Pointer(), pointers);
  const std::vector<ordered_json> wrong = {
      nullptr, true, -7, 1e308, ordered_json::array({"?"}), ordered_json::object({{"?", "?"}})};
  int tried = 0;
  for (const Pointer& at : pointers) {
    ordered_json damaged = small.json;
    ordered_json& value = damaged[at];
    const ordered_json& other =
        wrong[std::uniform_int_distribution<std::size_t>(0, wrong.size() - 1)(random)];
    const bool sameType = value.type() == other.type() || (value.is_number() && other.is_number());
    // A frame and a density may be null; what the order says is not read from the plan.
    if (sameType || other.is_null() || at.back() == "title" || at.back() == "customer" ||
        at.back() == "due") {
      continue;
    }
    CAPTURE(at.to_string(), other.dump());
    value = other;
    const InputError::Details error = small.errorOf(damaged);
    CHECK(error.where.find(at.to_string()) == 0);
    CHECK_FALSE(error.expected.empty());
    ++tried;
  }
  CHECK(tried > 200);
}

TEST_CASE("a plan that names what is not there is refused", "[plan-reader]") {
  const SmallPlan small;
  const auto pointer = [](const char* text) { return Pointer(text); };
  const std::string placement = "/placements/0";
  const std::pair<std::string, ordered_json> cases[] = {
      {"/order", "another order"},
      {"/shop", "another shop"},
      {"/format", "creaseline-order"},
      {"/version", 2},
      {"/findings/0/line", "17"},
      {"/findings/0/placement", 1},
      {"/findings/0/sizes/0", "S"},
      {"/findings/0/code", "too-blue"},
      {placement + "/line", "17"},
      {placement + "/blank", "another"},
      {placement + "/placement", 3},
      {placement + "/location", "left-knee"},
      {placement + "/location", "left-chest"},
      {placement + "/size", "S"},
      {placement + "/size", "XL"},
      {placement + "/quantity", 2},
      {placement + "/design/stitches", 3},
      {placement + "/design/width", "191 mm"},
      {placement + "/frame/frame", "Z"},
      {placement + "/frame/centre/x", "1e999 mm"},
      {placement + "/frame/centre/x", "nan mm"},
      {placement + "/frame/centre/x", "12"},
      {placement + "/frame/turn", "45 deg"},
      {placement + "/frame/slack/left", "900 mm"},
      {placement + "/frame/centre/x", "1000 mm"},
      {placement + "/rejections/0/frame", "Z"},
      {placement + "/backing/stock", "gold leaf"},
      {placement + "/cautions/0/rule", "unheard-of"},
      {placement + "/cautions/0/text", "All is well"},
      {placement + "/placed/drop", "80 furlongs"}};
  for (const auto& [at, value] : cases) {
    CAPTURE(at, value.dump());
    REQUIRE(small.json.contains(pointer(at.c_str())));
    ordered_json damaged = small.json;
    damaged[pointer(at.c_str())] = value;
    CHECK_FALSE(small.errorOf(damaged).found.empty());
  }
}

TEST_CASE("a plan that ends early or has lost bytes never does more than raise one error",
          "[plan-reader]") {
  const unsigned seed = 77;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const SmallPlan small;
  const std::string whole = small.json.dump();
  const auto place = [&random](std::size_t end) {
    return std::uniform_int_distribution<std::size_t>(0, end)(random);
  };
  int refused = 0;
  for (int i = 0; i < 120; ++i) {
    std::string text = whole.substr(0, place(whole.size() - 1));
    if (i % 2 == 0) {
      text = whole;
      text[place(text.size() - 1)] = static_cast<char>(place(127));
    }
    CAPTURE(i);
    try {
      static_cast<void>(small.read(text));
    } catch (const InputError& error) {
      CHECK(error.details().file == "plan.json");
      ++refused;
    }
  }
  CHECK(refused >= 60);
}
