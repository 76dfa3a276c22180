// SPDX-License-Identifier: MIT
// Covers and piercing points against GLPK, which solves the same integer programs by its own branch
// and cut (GNU Linear Programming Kit, glp_intopt).
#include "planning/set_cover.h"

#include <glpk.h>
#include <algorithm>
#include <catch2/catch.hpp>
#include <random>
#include <string>

#include "support/case_count.h"

using namespace creaseline;

namespace {

using ServedBy = std::vector<std::vector<std::size_t>>;

// Number of sets in a smallest cover: minimise the sum of binaries, each element in one at least.
int smallestByGlpk(const ServedBy& servedBy, std::size_t sets) {
  glp_term_out(GLP_OFF);
  glp_prob* problem = glp_create_prob();
  glp_set_obj_dir(problem, GLP_MIN);
  glp_add_cols(problem, static_cast<int>(sets));
  for (int set = 1; set <= static_cast<int>(sets); ++set) {
    glp_set_col_kind(problem, set, GLP_BV);
    glp_set_obj_coef(problem, set, 1.0);
  }
  for (const auto& serving : servedBy) {
    const int row = glp_add_rows(problem, 1);
    glp_set_row_bnds(problem, row, GLP_LO, 1.0, 0.0);
    std::vector<int> columns{0};
    std::vector<double> ones{0.0};
    for (const std::size_t set : serving) {
      columns.push_back(static_cast<int>(set) + 1);
      ones.push_back(1.0);
    }
    glp_set_mat_row(problem, row, static_cast<int>(serving.size()), columns.data(), ones.data());
  }
  glp_iocp control;
  glp_init_iocp(&control);
  control.presolve = GLP_ON;
  REQUIRE(glp_intopt(problem, &control) == 0);
  REQUIRE(glp_mip_status(problem) == GLP_OPT);
  const int best = static_cast<int>(glp_mip_obj_val(problem) + 0.5);
  glp_delete_prob(problem);
  return best;
}

bool covers(const SetCover& cover, const ServedBy& servedBy) {
  return std::all_of(servedBy.begin(), servedBy.end(), [&](const auto& serving) {
    return std::any_of(serving.begin(), serving.end(), [&](std::size_t set) {
      return std::binary_search(cover.chosen.begin(), cover.chosen.end(), set);
    });
  });
}

ServedBy randomCase(std::mt19937& random, std::size_t elements, std::size_t sets) {
  std::uniform_int_distribution<std::size_t> one(0, sets - 1);
  std::uniform_int_distribution<int> many(1, 4);
  ServedBy servedBy(elements);
  for (auto& serving : servedBy) {
    for (int i = many(random); i > 0; --i) {
      const std::size_t set = one(random);
      if (std::find(serving.begin(), serving.end(), set) == serving.end()) {
        serving.push_back(set);
      }
    }
  }
  return servedBy;
}

}  // namespace

TEST_CASE("up to 40 placements and 20 frames the cover is proved as small as GLPK's",
          "[set-cover]") {
  std::mt19937 random(7);
  for (int i = 0; i < test::caseCount(300); ++i) {
    const std::size_t elements = 1 + random() % 40;
    const std::size_t sets = 2 + random() % 19;
    const ServedBy servedBy = randomCase(random, elements, sets);
    const auto cover = fewestSets(servedBy);
    CAPTURE(i, elements, sets);
    REQUIRE(cover.has_value());
    CHECK(covers(*cover, servedBy));
    CHECK(cover->proved());
    CHECK(static_cast<int>(cover->chosen.size()) == smallestByGlpk(servedBy, sets));
  }
}

TEST_CASE("a search that is cut short covers all and bounds from below", "[set-cover]") {
  std::mt19937 random(11);
  for (int i = 0; i < 30; ++i) {
    const ServedBy servedBy = randomCase(random, 60, 40);
    const auto cover = fewestSets(servedBy, 3);
    REQUIRE(cover.has_value());
    CHECK(covers(*cover, servedBy));
    const int best = smallestByGlpk(servedBy, 40);
    CAPTURE(i, best, cover->chosen.size(), cover->atLeast);
    CHECK(static_cast<int>(cover->atLeast) <= best);
    CHECK(static_cast<int>(cover->chosen.size()) >= best);
  }
}

TEST_CASE("what no set holds has no cover and nothing needs none", "[set-cover]") {
  CHECK_FALSE(fewestSets({{0}, {}}).has_value());
  const auto none = fewestSets({});
  REQUIRE(none.has_value());
  CHECK(none->chosen.empty());
  CHECK(none->proved());
}

TEST_CASE("the fewest points that pierce intervals are as few as GLPK's", "[set-cover]") {
  std::mt19937 random(3);
  std::uniform_int_distribution<int> ends(30, 100);
  for (int i = 0; i < test::caseCount(300); ++i) {
    std::vector<WholeInterval> intervals(1 + random() % 12);
    for (WholeInterval& interval : intervals) {
      const int a = ends(random);
      const int b = ends(random);
      interval = {std::min(a, b), std::max(a, b)};
    }
    const std::vector<int> points = fewestPoints(intervals);
    ServedBy servedBy;
    for (const WholeInterval& interval : intervals) {
      servedBy.emplace_back();
      for (int point = interval.low; point <= interval.high; ++point) {
        servedBy.back().push_back(static_cast<std::size_t>(point - 30));
      }
      CHECK(std::any_of(points.begin(), points.end(), [&](int point) {
        return point >= interval.low && point <= interval.high;
      }));
    }
    CHECK(static_cast<int>(points.size()) == smallestByGlpk(servedBy, 71));
    CHECK(std::is_sorted(points.begin(), points.end()));
  }
}
