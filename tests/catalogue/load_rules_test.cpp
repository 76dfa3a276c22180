// SPDX-License-Identifier: MIT
// The shipped rules are whole, a wrong one is refused, and their folder is found.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <optional>

#include "catalogue/catalogue_data.h"
#include "creaseline/base/units.h"

using namespace creaseline;
using namespace creaseline::literals;
using namespace creaseline::testing;

namespace {

const std::filesystem::path kShipped = std::filesystem::path(SOURCE_DIR) / "resources";

// A copy of the shipped rules that a test may spoil.
class RulesCopy {
 public:
  RulesCopy() {
    for (const char* part : {"rules", "kinds"}) {
      std::filesystem::copy(kShipped / part, folder_.path() / part);
    }
  }
  // The message that loading gives after one replacement in one file.
  std::string messageAfter(const std::string& file, std::string_view from, std::string_view to) {
    const std::string before = contentOf(kShipped / file);
    static_cast<void>(folder_.write(file, replaced(before, from, to)));
    const std::string message = inputErrorOf([&] { return loadRules(folder_.path()); });
    static_cast<void>(folder_.write(file, before));
    return message;
  }
  [[nodiscard]] const std::filesystem::path& path() const { return folder_.path(); }

 private:
  TemporaryFolder folder_;
};

// Sets an environment variable for one test.
class Environment {
 public:
  Environment(const char* name, const std::string& value) : name_(name) {
    if (const char* old = std::getenv(name)) {
      old_ = old;
    }
    setenv(name, value.c_str(), 1);
  }
  Environment(const Environment&) = delete;
  Environment& operator=(const Environment&) = delete;
  ~Environment() { old_ ? setenv(name_, old_->c_str(), 1) : unsetenv(name_); }

 private:
  const char* name_;
  std::optional<std::string> old_;
};

}  // namespace

TEST_CASE("the shipped rules hold the kinds and locations that the program is for", "[catalogue]") {
  const Rules& rules = shippedRules();
  for (const char* id : {"t-shirt",
                         "polo",
                         "crew-sweatshirt",
                         "pullover-hoodie",
                         "full-zip-hoodie",
                         "long-sleeve-tee",
                         "sleepwear-top",
                         "button-up-shirt",
                         "quarter-zip",
                         "soft-jacket",
                         "vest",
                         "scrub-top",
                         "infant-bodysuit",
                         "robe",
                         "apron",
                         "tote-bag",
                         "bath-towel",
                         "hand-towel",
                         "blanket",
                         "cap-front",
                         "beanie",
                         "trousers",
                         "shorts"}) {
    CAPTURE(id);
    CHECK(rules.kind(KindId(id)) != nullptr);
  }
  for (const char* id : {"centre-chest",
                         "left-chest",
                         "right-chest",
                         "upper-back",
                         "full-back",
                         "left-sleeve",
                         "right-sleeve",
                         "hood-back",
                         "nape",
                         "yoke",
                         "lower-back",
                         "left-cuff",
                         "right-cuff",
                         "left-forearm",
                         "right-forearm",
                         "above-pocket",
                         "on-pocket",
                         "hem-left",
                         "hem-right",
                         "hood-left",
                         "hood-right",
                         "hood-edge",
                         "apron-bib",
                         "tote-centre",
                         "tote-top",
                         "towel-end",
                         "towel-border",
                         "blanket-centre",
                         "blanket-right-corner",
                         "cap-front",
                         "beanie-cuff",
                         "left-hip",
                         "right-hip",
                         "left-thigh",
                         "right-thigh",
                         "left-leg-hem",
                         "right-leg-hem"}) {
    CAPTURE(id);
    CHECK(rules.location(LocationId(id)) != nullptr);
  }
  CHECK(rules.kind(KindId("cape")) == nullptr);
  CHECK(rules.location(LocationId("elbow")) == nullptr);
  const GarmentKind& hoodie = *rules.kind(KindId("pullover-hoodie"));
  CHECK(hoodie.pocket == PocketForm::Kangaroo);
  CHECK(hoodie.has(PanelName::Hood));
  CHECK(hoodie.showsInside(PanelName::Hood));
  CHECK_FALSE(hoodie.showsInside(PanelName::Front));
}

TEST_CASE("the chest rules are three inches, and four above XL", "[catalogue]") {
  // Common practice, no source.
  const auto distance = [](SizeBand band) -> std::optional<Length> {
    for (const PlacementRule& rule : shippedRules().placement) {
      const bool thisBand =
          std::find(rule.bands.begin(), rule.bands.end(), band) != rule.bands.end();
      if (rule.location == LocationId("centre-chest") && thisBand && rule.kinds.empty()) {
        return rule.distance;
      }
    }
    return std::nullopt;
  };
  CHECK(distance(SizeBand::Adult) == 3_in);
  CHECK(distance(SizeBand::AdultAboveXl) == 4_in);
}

TEST_CASE("every shipped rule states its basis", "[catalogue]") {
  const Rules& rules = shippedRules();
  for (const PlacementRule& rule : rules.placement) {
    CHECK_FALSE(rule.basis.empty());
    CHECK_FALSE(rule.house);
  }
  for (const BackingRule& rule : rules.backing) {
    CHECK_FALSE(rule.basis.empty());
    CHECK_FALSE(rule.because.empty());
  }
  for (const GarmentKind& kind : rules.kinds) {
    for (const ProportionRule& rule : kind.proportions) {
      CHECK_FALSE(rule.basis.empty());
    }
  }
  CHECK(rules.frameEdges.size() == std::size(EnumNames<EdgeName>::names));
  CHECK(parseLength(rules.defaults.footClearance.text).ok());
}

TEST_CASE("a wrong rule is refused with file and place", "[catalogue]") {
  struct Row {
    const char* file;
    const char* from;
    const char* to;
    std::vector<std::string> expected;
  };
  const Row rows[] = {
      {"rules/placement.json",
       "\"location\": \"centre-chest\"",
       "\"location\": \"center-chest\"",
       {"placement.json", "/rules/0/location", "did you mean \"centre-chest\"?"}},
      {"rules/placement.json",
       "\"anchor\": \"near-edge\"",
       "\"anchor\": \"middle\"",
       {"/rules/0/anchor", "near-edge, centre"}},
      {"rules/placement.json", "\"note\":", "\"remark\":", {"/rules/0", "no key \"note\""}},
      {"rules/placement.json",
       "\"from\": \"collar-seam\"",
       "\"from\": \"cuff-edge\"",
       {"/rules/0/from", "a mark of the front: collar-seam, shoulder-point, placket-end"}},
      {"rules/placement.json",
       "\"least\": \"3 in\"",
       "\"least\": \"9 in\"",
       {"/rules/0/distance", "\"least\" 228.6 mm"}},
      {"rules/backing.json",
       "\"because\":",
       "\"colour\": 1, \"because\":",
       {"backing.json", "/rules/0", "the unknown key \"colour\""}},
      {"rules/frame-edges.json",
       "\"edge\": \"hem\"",
       "\"edge\": \"fold\"",
       {"frame-edges.json", "rules for the edge", "one rule for every edge"}},
      {"rules/defaults.json",
       "\"foot-clearance\"",
       "\"foot-clearing\"",
       {"defaults.json", "/values/0/id", "did you mean \"foot-clearance\"?"}},
      {"rules/defaults.json", "\"10 mm\"", "\"10 deg\"", {"/values/0/value", "\"10 deg\""}},
      {"rules/defaults.json",
       "\"8 s\"",
       "\"8 mm\"",
       {"/values/21/value", "\"8 mm\"", "s, min or h"}},
      {"rules/cautions.json",
       "\"when\": \"always\"",
       "\"when\": \"never\"",
       {"cautions.json", "/cautions/0/when", "always"}},
      {"rules/locations.json",
       "\"wearer-side\": \"centre\"",
       "\"wearer-side\": \"middle\"",
       {"locations.json", "/locations/0/wearer-side", "left, centre, right"}},
      {"kinds/polo.kind.json",
       "\"neck\": \"collar\"",
       "\"neck\": \"hood\"",
       {"polo.kind.json", "/neck", "exactly where"}},
      {"kinds/tote-bag.kind.json",
       "\"form\": \"flat\"",
       "\"form\": \"legs\"",
       {"tote-bag.kind.json", "/panels", "the panel \"flat-piece\""}},
      {"kinds/tote-bag.kind.json",
       "\"bottom\": \"bottom-seam\"",
       "\"bottom\": \"collar-seam\"",
       {"/flat/bottom", "one of hem, bottom-seam, turn-up-fold"}},
      {"kinds/shorts.kind.json",
       "\"neck\": \"none\"",
       "\"neck\": \"crew\"",
       {"shorts.kind.json", "/neck", "not \"body\""}},
      {"kinds/vest.kind.json",
       "\"sleeve\": \"none\"",
       "\"sleeve\": \"long\"",
       {"vest.kind.json", "/sleeve", "exactly where"}},
      {"kinds/polo.kind.json",
       "\"inside-seen\": []",
       "\"inside-seen\": [\"hood\"]",
       {"polo.kind.json", "/inside-seen", "\"hood\""}},
      {"kinds/polo.kind.json",
       "\"factor\":",
       "\"ratio\":",
       {"polo.kind.json", "/proportions/0", "no key \"factor\""}},
      {"kinds/polo.kind.json",
       "\"id\": \"polo\"",
       "\"id\": \"t-shirt\"",
       {"t-shirt.kind.json", "the kind \"t-shirt\" a second time"}},
  };
  RulesCopy copy;
  REQUIRE(inputErrorOf([&] { return loadRules(copy.path()); }).empty());
  for (const Row& row : rows) {
    const std::string message = copy.messageAfter(row.file, row.from, row.to);
    CAPTURE(row.file, row.to, message);
    for (const std::string& fragment : row.expected) {
      CAPTURE(fragment);
      CHECK(message.find(fragment) != std::string::npos);
    }
  }
}

TEST_CASE("a folder without garment kinds or with a missing file is refused", "[catalogue]") {
  const TemporaryFolder empty;
  CHECK_THAT(inputErrorOf([&] { return loadRules(empty.path()); }),
             Catch::Contains("no garment kinds"));
  RulesCopy copy;
  std::filesystem::remove(copy.path() / "rules" / "backing.json");
  CHECK_THAT(inputErrorOf([&] { return loadRules(copy.path()); }), Catch::Contains("backing.json"));
}

TEST_CASE("the environment names the folder of the rules before anything else", "[catalogue]") {
  const RulesCopy copy;
  {
    const Environment set("CREASELINE_RESOURCES", copy.path().string());
    CHECK(findResources("/nowhere/bin/creaseline") == copy.path());
  }
  const TemporaryFolder empty;
  const Environment wrong("CREASELINE_RESOURCES", empty.path().string());
  CHECK_THAT(inputErrorOf([] { static_cast<void>(findResources("/nowhere/bin/creaseline")); }),
             Catch::Contains("CREASELINE_RESOURCES") && Catch::Contains("rules/locations.json"));
}

TEST_CASE("the rules are found beside an installed program, else in the source tree",
          "[catalogue]") {
  const Environment unset("CREASELINE_RESOURCES", "");
  const TemporaryFolder folder;
  static_cast<void>(folder.write("bin/creaseline", ""));
  CHECK(std::filesystem::equivalent(findResources(folder.path() / "bin" / "creaseline"), kShipped));
  static_cast<void>(folder.write("share/creaseline/rules/locations.json", "{}"));
  CHECK(std::filesystem::equivalent(findResources(folder.path() / "bin" / "creaseline"),
                                    folder.path() / "share" / "creaseline"));
}
