// SPDX-License-Identifier: MIT
// A design that several lines of an order sew, through the public planner; the fewest sizes of it
// against every set of whole percentages.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <numeric>
#include <random>
#include <set>
#include <tuple>

#include "creaseline/base/error.h"
#include "creaseline/planning/change.h"
#include "creaseline/planning/plan_reader.h"
#include "creaseline/planning/planner.h"
#include "creaseline/planning/report.h"
#include "support/case_count.h"
#include "support/sample.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

constexpr int kLeastPercent = 30;  // the planner tries no smaller ones

Plan quietPlan(const Order& order, const Shop& shop) {
  PlanOptions options;
  options.threads = 1;
  options.checkRemedies = false;
  return planOrder(order, shop, sample::shippedRules(), options);
}

Plan planLines(const Order& order, const Shop& shop) {
  return planOrder(order, shop, sample::shippedRules());
}

void addLine(Order& order, const std::string& kind, const std::vector<std::string>& sizes,
             const std::string& location = "centre-chest") {
  const Blank blank = sample::blank(kind);
  if (order.blank(blank.id) == nullptr) {
    order.blanks.push_back(blank);
  }
  OrderLine line = sample::order(blank, order.designs.front(), location, sizes).lines.front();
  line.id = std::to_string(order.lines.size() + 1);
  order.lines.push_back(line);
}

Order orderFor(const Design& design) {
  Order order;
  order.id = "sample";
  order.designs = {design};
  return order;
}

Shop fiveFrames() {
  return sample::shop({sample::frame("A", 130_mm, 130_mm), sample::frame("B", 160_mm, 170_mm),
                       sample::frame("C", 200_mm, 190_mm), sample::frame("D", 240_mm, 250_mm),
                       sample::frame("E", 330_mm, 340_mm, 20_mm)});
}

const Finding* wholeOrderFinding(const Plan& plan) {
  const auto found =
      std::find_if(plan.findings.begin(), plan.findings.end(), [](const Finding& finding) {
        return finding.code == FindingCode::OneSizeDoesNotServeAll && finding.wholeOrder;
      });
  return found == plan.findings.end() ? nullptr : &*found;
}

std::size_t findingsOfLines(const Plan& plan) {
  return static_cast<std::size_t>(
      std::count_if(plan.findings.begin(), plan.findings.end(), [](const Finding& finding) {
        return finding.code == FindingCode::OneSizeDoesNotServeAll && !finding.wholeOrder;
      }));
}

// A garment and the whole percentages that serve it.
struct Garment {
  std::size_t line = 0;
  SizeName size;
  int least = 0, most = 0;  // 0: none
  // One in between does not: the top of a smaller design stays where it is, so its middle moves up,
  // and the frame with it, towards the collar.
  bool gap = false;
};

// Asks the planner for every whole percentage, from above.
class Scales {
 public:
  explicit Scales(const Shop& shop) : shop_(shop) {}

  std::vector<Garment> of(const Order& order) {
    std::vector<Garment> garments;
    for (std::size_t line = 0; line < order.lines.size(); ++line) {
      for (const SizeQuantity& entry : order.lines[line].sizes) {
        garments.push_back(of(order, line, entry.size));
      }
    }
    return garments;
  }

 private:
  Garment of(const Order& order, std::size_t line, const SizeName& size) {
    const OrderLine& asked = order.lines[line];
    const OrderPlacement& at = asked.placements.front();
    const Design& design = *order.design(at.design);
    const auto key = std::tuple(asked.blank.text(), size.text(), at.location.text(),
                                design.width.nanometres(), design.height.nanometres());
    auto [entry, fresh] = known_.try_emplace(key);
    if (fresh) {
      entry->second = searched(order, line, size);
    }
    return {line, size, entry->second.least, entry->second.most, entry->second.gap};
  }

  struct Found {
    int least = 0, most = 0;
    bool gap = false;
  };

  [[nodiscard]] Found searched(const Order& order, std::size_t line, const SizeName& size) const {
    Order one = order;
    one.lines = {order.lines[line]};
    one.lines[0].sizes = {{size, 1}};
    Found found;
    for (int percent = 100; percent >= std::max(kLeastPercent, found.least); --percent) {
      one.lines[0].placements[0].scale = percent / 100.0;
      const Plan made = quietPlan(one, shop_);
      if (made.counts.stops == 0 && found.most == 0) {
        found.most = percent;
        found.least = leastOf(percent, *one.design(one.lines[0].placements[0].design),
                              made.placements.front().placed.rule);
      }
      found.gap = found.gap || (made.counts.stops != 0 && found.most != 0);
    }
    return found;
  }

  // As the method's notes say: a shipped share of the largest, and no narrower than the rule says.
  static int leastOf(int most, const Design& design, const RuleId& id) {
    const Rules& rules = sample::shippedRules();
    double least = most * std::stod(rules.defaults.leastDesignShare.text) / 100.0;
    for (const PlacementRule& rule : rules.placement) {
      if (rule.id == id && rule.leastWidth) {
        least = std::max(least, 100.0 * rule.leastWidth->mm() / design.width.mm());
      }
    }
    return std::min(most, static_cast<int>(std::ceil(least)));
  }

  const Shop& shop_;
  std::map<std::tuple<std::string, std::string, std::string, std::int64_t, std::int64_t>, Found>
      known_;
};

// Every set of whole percentages, the smaller sets first; of the smallest that serve all, the one
// with the largest sizes. Of percentages that serve the same garments the largest stands for all.
class SmallestSet {
 public:
  explicit SmallestSet(const std::vector<Garment>& garments) {
    for (const Garment& garment : garments) {
      if (garment.most != 0) {
        garments_.push_back(garment);
      }
    }
    std::map<std::vector<bool>, int> largest;
    for (int percent = kLeastPercent; percent <= 100; ++percent) {
      std::vector<bool> served;
      for (const Garment& garment : garments_) {
        served.push_back(garment.least <= percent && percent <= garment.most);
      }
      largest[served] = percent;
    }
    for (const auto& [served, percent] : largest) {
      percents_.push_back(percent);
    }
  }

  std::set<int> find() {
    for (std::size_t count = garments_.empty() ? 0 : 1; best_.empty() && count > 0; ++count) {
      tryFrom(0, count);
    }
    return {best_.begin(), best_.end()};
  }

 private:
  void tryFrom(std::size_t next, std::size_t left) {
    if (left == 0) {
      const int sum = std::accumulate(chosen_.begin(), chosen_.end(), 0);
      if (sum > bestSum_ && servesAll()) {
        best_ = chosen_;
        bestSum_ = sum;
      }
      return;
    }
    for (; next < percents_.size(); ++next) {
      chosen_.push_back(percents_[next]);
      tryFrom(next + 1, left - 1);
      chosen_.pop_back();
    }
  }

  [[nodiscard]] bool servesAll() const {
    return std::all_of(garments_.begin(), garments_.end(), [this](const Garment& garment) {
      return std::any_of(chosen_.begin(), chosen_.end(), [&garment](int percent) {
        return garment.least <= percent && percent <= garment.most;
      });
    });
  }

  std::vector<Garment> garments_;
  std::vector<int> percents_, chosen_, best_;
  int bestSum_ = 0;
};

std::set<int> smallestSet(const std::vector<Garment>& garments) {
  return SmallestSet(garments).find();
}

// The different sizes if each line has its own smallest set.
std::set<int> lineByLine(const std::vector<Garment>& garments, std::size_t lines) {
  std::set<int> all;
  for (std::size_t line = 0; line < lines; ++line) {
    std::vector<Garment> own;
    std::copy_if(garments.begin(), garments.end(), std::back_inserter(own),
                 [line](const Garment& garment) { return garment.line == line; });
    const std::set<int> set = smallestSet(own);
    all.insert(set.begin(), set.end());
  }
  return all;
}

// The different sizes in which the order sews its design, in nanometres of width, but for garments
// that no size serves.
std::set<std::int64_t> widths(const Plan& plan) {
  std::set<std::int64_t> widths;
  for (const PlacementPlan& placement : plan.placements) {
    if (placement.worst != Severity::Stop) {
      widths.insert(placement.design.width.nanometres());
    }
  }
  return widths;
}

Order changedBy(const Order& order, const Finding& finding, const Remedy& remedy) {
  REQUIRE(std::holds_alternative<DesignSizesOfLinesChange>(remedy.change));
  const auto changed = orderWith(order, finding, remedy.change);
  REQUIRE(changed.has_value());
  CHECK(changed->garments() == order.garments());
  return *changed;
}

// A youth size that stops on one line, and a line that would be sewn as asked.
Order hoodiesAndShirts() {
  Order order = orderFor(sample::design("crest", 220_mm, 200_mm));
  addLine(order, "pullover-hoodie", {"YM", "2XL"});
  addLine(order, "t-shirt", {"M", "XL"});
  return order;
}

}  // namespace

TEST_CASE("the fewest sizes over all lines are as few as any set of whole percentages",
          "[fewest-sizes]") {
  const Shop shop = fiveFrames();
  Scales scales(shop);
  const unsigned seed = 20260707;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const auto upTo = [&random](int count) { return static_cast<int>(random() % unsigned(count)); };
  const char* kinds[] = {"t-shirt", "polo", "crew-sweatshirt", "pullover-hoodie"};
  const char* locations[] = {"centre-chest", "full-back", "upper-back"};
  const char* sizes[] = {"YM", "M", "XL", "2XL"};
  const std::pair<Length, Length> designs[] = {
      {220_mm, 200_mm}, {260_mm, 150_mm}, {180_mm, 260_mm}, {310_mm, 290_mm}};
  int offered = 0;
  int notNeeded = 0;
  int gaps = 0;
  const int orders = std::max(1, test::caseCount(400) / 2);  // each is planned many times over
  for (int i = 0; i < orders; ++i) {
    const auto& [width, height] = designs[upTo(4)];
    Order order = orderFor(sample::design("crest", width, height));
    const int lines = 2 + upTo(3);
    for (int line = 0; line < lines; ++line) {
      std::vector<std::string> chosen;
      for (const char* size : sizes) {
        if (upTo(2) == 0) {
          chosen.emplace_back(size);
        }
      }
      if (chosen.empty()) {
        chosen.emplace_back(sizes[upTo(4)]);
      }
      addLine(order, kinds[upTo(4)], chosen, locations[std::max(0, upTo(5) - 2)]);
    }
    CAPTURE(i, width.mm(), height.mm());
    const std::vector<Garment> garments = scales.of(order);
    const std::set<int> together = smallestSet(garments);
    const std::set<int> apart = lineByLine(garments, order.lines.size());
    const bool stops = std::any_of(garments.begin(), garments.end(), [](const Garment& garment) {
      return garment.most != 0 && garment.most != 100;
    });
    CAPTURE(together, apart);
    const Plan made = planLines(order, shop);
    const Finding* finding = wholeOrderFinding(made);
    // The planner asks for the largest percentage and takes it that smaller ones serve too; where
    // one does not, what it offers holds all the same, but fewer sizes may be missed.
    const bool gap = std::any_of(garments.begin(), garments.end(),
                                 [](const Garment& garment) { return garment.gap; });
    gaps += gap ? 1 : 0;
    REQUIRE((gap || (finding != nullptr) == (stops && together.size() < apart.size())));
    if (finding == nullptr) {
      ++notNeeded;
      continue;
    }
    ++offered;
    CHECK(findingsOfLines(made) == 0);
    std::size_t fewest = 100;
    for (const Remedy& remedy : finding->remedies) {
      const Plan again = quietPlan(changedBy(order, *finding, remedy), shop);
      CAPTURE(remedy.text);
      fewest = std::min(fewest, widths(again).size());
      // What still stops is what stops at every percentage.
      CHECK(std::count_if(again.placements.begin(), again.placements.end(),
                          [](const PlacementPlan& placement) {
                            return placement.worst == Severity::Stop;
                          }) == std::count_if(garments.begin(), garments.end(),
                                              [](const Garment& each) { return each.most == 0; }));
    }
    CHECK((fewest == together.size() || (gap && fewest > together.size())));
  }
  CHECK(gaps < orders / 4);
  CHECK(offered > orders / 20);
  CHECK(notNeeded > orders / 20);
}

TEST_CASE("one finding about all lines takes the place of one about each", "[fewest-sizes]") {
  const Shop shop = fiveFrames();
  const Order order = hoodiesAndShirts();
  const Plan made = planLines(order, shop);
  const Finding* finding = wholeOrderFinding(made);
  REQUIRE(finding != nullptr);
  CHECK(findingsOfLines(made) == 0);
  CHECK(finding->severity == Severity::Watch);
  CHECK(finding->place == "lines 1, 2, design crest");
  CHECK_THAT(finding->text, Catch::Contains("line by line they need 2 sizes of it, together 1"));
  CHECK_THAT(finding->text, Catch::Contains("YM (line 1)"));
  REQUIRE(finding->remedies.size() == 2);
  // What is changed least comes first: the size that stops, and nothing else.
  const auto& first = std::get<DesignSizesOfLinesChange>(finding->remedies[0].change);
  REQUIRE(first.placements.size() == 1);
  CHECK(first.placements[0].line == 0);
  CHECK(first.placements[0].scales[0].sizes == std::vector<SizeName>{SizeName("YM")});
  CHECK_THAT(finding->remedies[1].text,
             Catch::StartsWith("have 1 size of the design made, where line by line it would be 2"));
  for (const Remedy& remedy : finding->remedies) {
    const Plan again = planLines(changedBy(order, *finding, remedy), shop);
    CHECK(again.counts.stops == 0);
    CHECK(wholeOrderFinding(again) == nullptr);
    CHECK(findingsOfLines(again) == 0);
  }
}

TEST_CASE("a design on one line, and lines of different designs or widths, are as before",
          "[fewest-sizes]") {
  const Shop shop = fiveFrames();
  Order order = hoodiesAndShirts();
  SECTION("one line") {
    order.lines.pop_back();
  }
  SECTION("another width") {
    order.lines[1].placements[0].scale = 0.97;
  }
  SECTION("other stitches") {
    Design other = order.designs[0];
    other.id = DesignId("other");
    other.stitches += 1;
    order.designs.push_back(other);
    order.lines[1].placements[0].design = other.id;
  }
  const Plan made = planLines(order, shop);
  CHECK(wholeOrderFinding(made) == nullptr);
  REQUIRE(findingsOfLines(made) == 1);
  const auto alone = std::find_if(made.findings.begin(), made.findings.end(), [](const auto& f) {
    return f.code == FindingCode::OneSizeDoesNotServeAll;
  });
  CHECK(std::holds_alternative<DesignSizesChange>(alone->remedies.front().change));
  CHECK_THAT(alone->place, Catch::StartsWith("line 1, "));
}

TEST_CASE("the same design under another id is the same, and a place turned otherwise too",
          "[fewest-sizes]") {
  const Shop shop = fiveFrames();
  Order order = hoodiesAndShirts();
  Design other = order.designs[0];
  other.id = DesignId("from another file");
  order.designs.push_back(other);
  order.lines[1].placements[0].design = other.id;
  order.lines[1].placements[0].frameTurn = 15_deg;
  CHECK(wholeOrderFinding(planLines(order, shop)) != nullptr);
}

TEST_CASE("lines that ask the same are named together, and beyond eight counted",
          "[fewest-sizes]") {
  const Shop shop = fiveFrames();
  Order order = hoodiesAndShirts();
  for (int i = 0; i < 10; ++i) {
    addLine(order, "t-shirt", {"M", "XL"});
  }
  const Plan made = planLines(order, shop);
  const Finding* finding = wholeOrderFinding(made);
  REQUIRE(finding != nullptr);
  CHECK(finding->place == "lines 1, 2, 3, 4, 5, 6, 7, 8 and 4 more, design crest");
  const auto& all = std::get<DesignSizesOfLinesChange>(finding->remedies.back().change);
  CHECK(all.placements.size() == 12);
  CHECK(planLines(changedBy(order, *finding, finding->remedies.back()), shop).counts.stops == 0);
}

TEST_CASE("sizes of all lines are the same when the plan is read back", "[fewest-sizes]") {
  const Shop shop = fiveFrames();
  const Order order = hoodiesAndShirts();
  const Plan made = planLines(order, shop);
  REQUIRE(wholeOrderFinding(made) != nullptr);
  const ReportContext context{order, shop, sample::shippedRules()};
  const std::string written = jsonReport(made, context);
  const Plan read = readPlan(written, "plan.json", order, shop, sample::shippedRules());
  CHECK(read.findings == made.findings);
  CHECK(jsonReport(read, context) == written);
  auto json = nlohmann::ordered_json::parse(written);
  for (auto& finding : json["findings"]) {
    if (finding["whole-order"] == true && finding["code"] == "one-size-does-not-serve-all") {
      finding["remedies"][0]["change"]["design-sizes-of-lines"][0]["line"] = "9";
    }
  }
  try {
    static_cast<void>(readPlan(json.dump(), "plan.json", order, shop, sample::shippedRules()));
    FAIL("the plan was read");
  } catch (const InputError& error) {
    CHECK_THAT(error.details().where, Catch::EndsWith("/design-sizes-of-lines/0/line"));
  }
}
