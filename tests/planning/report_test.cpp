// SPDX-License-Identifier: MIT
// The text and the JSON of a small plan made by hand.
#include "creaseline/planning/report.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <sstream>

#include "plan_samples.h"
#include "planning/text_layout.h"

using namespace creaseline;
using namespace creaseline::literals;
using Catch::Matchers::Contains;
using nlohmann::json;

namespace {

struct Sample {
  Order order = samples::order();
  Shop shop = samples::shop();
  Rules rules = samples::rules();
  Plan plan = samples::plan(rules);

  [[nodiscard]] std::string text(const UnitChoice& units = samples::kInches) const {
    return textReport(plan, {order, shop, rules}, units);
  }
  [[nodiscard]] json asJson() const { return json::parse(jsonReport(plan, {order, shop, rules})); }
};

std::vector<std::string> textLines(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) {
    lines.push_back(line);
  }
  return lines;
}

// All white space as single spaces, for sentences that may be wrapped anywhere.
std::string unwrapped(const std::string& text) {
  std::istringstream stream(text);
  std::string all;
  for (std::string word; stream >> word;) {
    all += word + ' ';
  }
  return all;
}

}  // namespace

TEST_CASE("the text leads with order, counts and findings", "[report]") {
  const std::string text = Sample().text();
  CHECK_THAT(text, Catch::Matchers::StartsWith("Order 2026-007: Spring kit\n"));
  CHECK_THAT(text, Contains("6 garments, 6 hoopings. 1 stop, 1 watch, 0 notes."));
  const std::size_t stop = text.find("Stops: cannot be sewn as asked");
  const std::size_t watch = text.find("Watches: can be sewn, with care");
  const std::size_t line = text.find("Line 1: Harbour hoodie, navy, 6 garments");
  REQUIRE(stop != std::string::npos);
  CHECK(stop < watch);
  CHECK(watch < line);
}

TEST_CASE("a finding shows place, numbers and checked remedies", "[report]") {
  const std::string text = Sample().text();
  CHECK_THAT(text, Contains("  1. line 1, Harbour hoodie, centre chest, size 2XL\n"
                            "     The design is too large for every frame of the shop. "
                            "[too-large-for-every-frame]\n"
                            "     too wide by 1/2 in\n"
                            "     Remedy: sew it at 94 %; Large magnetic holds it "
                            "(checked by planning it)\n"));
}

TEST_CASE("sizes that agree share one part of the text with all their numbers", "[report]") {
  const std::string text = Sample().text();
  CHECK_THAT(text, Contains("Centre chest, sizes S M\n"));
  CHECK_THAT(text, Contains("  Garments     5: 2 × S, 3 × M\n"));
  CHECK_THAT(text,
             Contains("  Drop         3 in below the collar seam to the top of the design\n"));
  CHECK_THAT(text, Contains("  Centre       6 in below the collar seam\n"));
  CHECK_THAT(text, Contains("  Sideways     on the centre crease\n"));
  CHECK_THAT(text, Contains("  Turn         none, top of the design towards the collar seam\n"));
  // 200 mm are 7.874 in, which are not 7 7/8.
  CHECK_THAT(text, Contains("  Frame        Large magnetic (7 3/4 × 9 in window)\n"));
  CHECK_THAT(text, Contains("turned 2.1°"));
  CHECK_THAT(text, Contains("cut-away, at least 85 g/m², 1 layer, floated"));
  CHECK_THAT(text, Contains("  Needle       75 ball point\n"));
  CHECK_THAT(text, Contains(" 2. trim the backing (by hand)"));
  CHECK_THAT(unwrapped(text), Contains("[chest-adult; common practice, no source]"));
  CHECK_THAT(unwrapped(text),
             Contains("knit cloth needs a support that stays [knit-cut-away; house rule]"));
  CHECK_THAT(text, Contains("  Assumed      neck width; not in the size chart"));
  CHECK_THAT(text, Contains("left side seam 5 7/8 in (assumed)"));
  // The caution is that of one size only; the group shows it once.
  CHECK_THAT(text, Contains("  Caution      - Magnets snap together"));
}

TEST_CASE("a size without a frame says why, and by how much", "[report]") {
  const std::string text = Sample().text();
  CHECK_THAT(text, Contains("Centre chest, size 2XL\n"));
  CHECK_THAT(text, Contains("  Frame        none on hand serves here\n"));
  // 94.159 % is rounded down.
  CHECK_THAT(text, Contains("the frames hold the design at up to 94 % of this size"));
  CHECK_THAT(text, Contains("Large magnetic: 12 mm too narrow [holds-design, by 1/2 in]"));
}

TEST_CASE("a placement without a rule claims nothing", "[report]") {
  Sample sample;
  for (PlacementPlan& placement : sample.plan.placements) {
    placement.hasRule = false;
  }
  const std::string text = sample.text();
  CHECK_THAT(text, Contains("no rule serves here"));
  CHECK_THAT(text, !Contains("Drop "));
  const json first = sample.asJson()["placements"][0];
  CHECK(first["has-rule"] == false);
  CHECK_FALSE(first.contains("placed"));
}

TEST_CASE("no line of the text is longer than 100 columns", "[report]") {
  Sample sample;
  sample.plan.findings[0].text =
      "The design, which was drawn for the full back of a large garment and is now asked for on "
      "the chest of a youth size, is wider than the panel by far and meets both side seams 3 1/2 "
      "in";
  for (const UnitChoice& units : {samples::kInches, samples::kMillimetres}) {
    for (const std::string& line : textLines(sample.text(units))) {
      INFO(line);
      CHECK(columnsOf(line) <= 100);
      CHECK_THAT(line, !Catch::Matchers::EndsWith(" "));
    }
  }
}

TEST_CASE("text from a file cannot steer a terminal or break a line", "[report]") {
  Sample sample;
  sample.order.title = "Spring\x1b[31m\nkit\x07";
  const std::string text = sample.text();
  CHECK_THAT(text, Catch::Matchers::StartsWith("Order 2026-007: Spring [31m kit\n"));
  CHECK(text.find('\x1b') == std::string::npos);
}

TEST_CASE("wrapping keeps a number with its fraction and unit", "[report]") {
  TextLayout layout(20);
  layout.paragraph(2, "- ", "the top lies at 3 1/2 in below");
  CHECK(layout.text() == "  - the top lies at\n    3 1/2 in below\n");
}

TEST_CASE("the JSON holds every decision as exact text", "[report]") {
  const json plan = Sample().asJson();
  CHECK(plan["format"] == "creaseline-plan");
  CHECK(plan["version"] == 1);
  CHECK(plan["order"] == "2026-007");
  CHECK(plan["counts"] ==
        json({{"garments", 6}, {"placements", 6}, {"stops", 1}, {"watches", 1}, {"notes", 0}}));
  REQUIRE(plan["placements"].size() == 3);
  const json& medium = plan["placements"][1];
  CHECK(medium["size"] == "M");
  CHECK(medium["placed"]["drop"] == "77.2 mm");
  CHECK(medium["placed"]["from"] == "collar-seam");
  CHECK(medium["placed"]["centre"]["y"] == "152.4 mm");
  CHECK(medium["frame"]["slack"]["down"] == "3 mm");
  CHECK(medium["backing"]["kind"] == "cut-away");
  CHECK(medium["backing"]["fired"][0]["rule"] == "knit-cut-away");
  CHECK(medium["steps"][1]["by-hand"] == true);
  CHECK(medium["assumed"] == json({"neck-width"}));
  CHECK(medium["cautions"][0]["rule"] == "magnet-pinch");
  const json& large = plan["placements"][2];
  CHECK(large["frame"].is_null());
  CHECK(large["worst"] == "stop");
  CHECK(large["rejections"][0]["test"] == "holds-design");
  CHECK(large["rejections"][0]["missing"] == "12 mm");
  CHECK(large["largest-scale"] == 0.94159);
}

TEST_CASE("lengths of the JSON read back as the same lengths", "[report]") {
  Sample sample;
  sample.plan.placements[0].placed.drop = Length::fromNanometres(76'200'001);
  const json drop = sample.asJson()["placements"][0]["placed"]["drop"];
  CHECK(parseLength(drop.get<std::string>()).value() == Length::fromNanometres(76'200'001));
}

TEST_CASE("each kind of remedy has its own key in the JSON", "[report]") {
  Sample sample;
  Finding& finding = sample.plan.findings[0];
  finding.remedies.clear();
  for (const Change& change :
       {Change(TurnChange{90_deg}), Change(ScaleChange{0.92}), Change(MoveChange{5_mm}),
        Change(LocationChange{LocationId("upper-back")}),
        Change(DesignSizesChange{{{0.8, {SizeName("YS"), SizeName("YM")}}}}),
        Change(FrameTurnChange{12_deg}), Change(FramesChange{{FrameId("A"), FrameId("B")}}),
        Change(StitchesChange{9000}), Change(ShopChange{"buy a larger frame"}),
        Change(DesignSizesOfLinesChange{{{0, 0, {{0.8, {SizeName("YS")}}}}}})}) {
    finding.remedies.push_back({change, "text", "result", 4_mm});
  }
  const json remedies = sample.asJson()["findings"][0]["remedies"];
  CHECK(remedies[0]["change"] == json({{"turn", exactText(90_deg)}}));
  CHECK(remedies[1]["change"] == json({{"scale", 0.92}}));
  CHECK(remedies[2]["change"] == json({{"move-down", "5 mm"}}));
  CHECK(remedies[3]["change"] == json({{"location", "upper-back"}}));
  CHECK(remedies[4]["change"] ==
        json({{"design-sizes", {{{"scale", 0.8}, {"sizes", {"YS", "YM"}}}}}}));
  CHECK(remedies[5]["change"] == json({{"frame-turn", "12 deg"}}));
  CHECK(remedies[6]["change"] == json({{"frames", {"A", "B"}}}));
  CHECK(remedies[7]["change"] == json({{"stitches", 9000}}));
  CHECK(remedies[7]["moves"] == "4 mm");
  CHECK(remedies[8]["change"] == json({{"shop", "buy a larger frame"}}));
  CHECK(remedies[9]["change"] == json::parse(R"({"design-sizes-of-lines": [{
      "line": "1", "placement": 0, "sizes": [{"scale": 0.8, "sizes": ["YS"]}]}]})"));
}

TEST_CASE("both reports are the same bytes every time", "[report]") {
  const Sample a;
  const Sample b;
  CHECK(a.text() == b.text());
  CHECK(jsonReport(a.plan, {a.order, a.shop, a.rules}) ==
        jsonReport(b.plan, {b.order, b.shop, b.rules}));
}

TEST_CASE("JSON stays valid where a name is not UTF-8", "[report]") {
  Sample sample;
  sample.plan.placements[0].size = SizeName("S\xff");
  CHECK(sample.asJson()["placements"].size() == 3);
}
