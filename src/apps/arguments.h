// SPDX-License-Identifier: MIT
// What the user asked for on the command line, read and checked; nothing is opened here.
#pragma once

#include <filesystem>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_set.h"

namespace creaseline {

// Wrong usage, in one line that says what is wrong and what to do.
class UsageError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

enum class Verb { Show, Plan, Sheets, Check, Rules };

struct Arguments {
  Verb verb = Verb::Show;
  std::string text;                          // of Verb::Show: help or version
  std::filesystem::path order, shop;         // plan, sheets
  std::vector<std::filesystem::path> files;  // check
  std::string output = "-";                  // "-": standard output
  bool json = false;
  SheetChoice sheets;
  SheetOptions pages;     // the range alone
  bool pictures = false;  // SVG pictures in a folder instead of one PDF
  bool force = false;
  bool quiet = false;
  bool prices = true;           // false: no money in plan and sheets
  unsigned threads = 0;         // 0: as many as the machine has
  std::string language = "en";  // of reports and sheets, as ISO 639-1 names it
  std::optional<LengthUnit> unit;
  std::optional<RulerMark> mark;
};

// Throws UsageError.
[[nodiscard]] Arguments parseArguments(int count, const char* const* words);

}  // namespace creaseline
