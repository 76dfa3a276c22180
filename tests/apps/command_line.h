// SPDX-License-Identifier: MIT
// The built command line under test, and the demo data in a folder that a test may spoil.
#pragma once

#include <string>
#include <vector>

#include "support/program.h"

namespace creaseline::support {

// Runs creaseline in that working folder (empty: the test's own).
inline ProgramResult runCreaseline(std::vector<std::string> arguments,
                                   const std::filesystem::path& folder = {}) {
  return runProgram({CREASELINE_PROGRAM, std::move(arguments), folder});
}

inline std::size_t linesIn(const std::string& text) {
  std::size_t lines = 0;
  for (const char c : text) {
    lines += c == '\n' ? 1U : 0U;
  }
  return lines;
}

// A copy of an order, its shop and what they refer to, in a folder that a test may spoil.
class OrderCopy {
 public:
  OrderCopy(const std::filesystem::path& source, std::string order, std::string shop)
      : order_(std::move(order)), shop_(std::move(shop)) {
    std::filesystem::copy(source, path(), std::filesystem::copy_options::recursive);
  }
  [[nodiscard]] const std::filesystem::path& path() const { return folder_.path(); }
  std::filesystem::path operator/(const std::string& name) const { return folder_ / name; }
  // Runs creaseline inside the copy.
  [[nodiscard]] ProgramResult run(std::vector<std::string> arguments) const {
    return runCreaseline(std::move(arguments), path());
  }
  // Runs `verb ORDER --shop SHOP` and more.
  [[nodiscard]] ProgramResult runOrder(const std::string& verb,
                                       const std::vector<std::string>& more = {}) const {
    std::vector<std::string> arguments = {verb, order_, "--shop", shop_};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return run(arguments);
  }

 private:
  TemporaryFolder folder_;
  std::string order_, shop_;
};

// The demo: regatta.order.json for workshop.shop.json.
struct DemoCopy : OrderCopy {
  DemoCopy()
      : OrderCopy(std::filesystem::path(SOURCE_DIR) / "demo", "regatta.order.json",
                  "workshop.shop.json") {}
};

// A small order that plans in no time: team.order.json with one stop for team.shop.json, and
// easy.order.json without any.
struct TeamCopy : OrderCopy {
  TeamCopy()
      : OrderCopy(std::filesystem::path(TEST_DATA) / "plan", "team.order.json", "team.shop.json") {}
};

// One error in the documented form, and nothing else on standard error.
inline bool isOneError(const std::string& err) {
  return linesIn(err) == 1 && err.starts_with("creaseline: error: ");
}

}  // namespace creaseline::support
