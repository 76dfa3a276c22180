// SPDX-License-Identifier: MIT
// Reading of all files. Every function throws InputError with file and JSON path (or line and
// column) at the first thing that is wrong, and never writes, fetches or follows a link out of
// the text it reads.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/original.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

inline constexpr int kFileVersion = 1;

// Remarks that do not stop the reading, such as an unknown key.
struct LoadNote {
  std::string file;
  std::string where;
  std::string text;
  bool operator==(const LoadNote&) const = default;
};

template <class T>
struct Loaded {
  T value;
  std::vector<LoadNote> notes;
  std::vector<std::filesystem::path> files;  // all files read, the first is the one asked for
  Original<T> original;                      // what saving needs to know of these files
};

// The shipped rules from a folder laid out like resources/.
[[nodiscard]] Rules loadRules(const std::filesystem::path& resources);
// The folder of the shipped rules: environment variable CREASELINE_RESOURCES, else beside the
// program (../share/creaseline, ../resources), else the source tree. Throws InputError if none.
[[nodiscard]] std::filesystem::path findResources(const std::filesystem::path& program);

// The order with all blanks and designs it refers to. A path in any file is relative to the folder
// of that file; it may climb with "..", so that orders can share a folder of blanks, but absolute
// paths, addresses and backslashes are refused.
// Checks every reference, size, colour and location against `rules`, and that each size's
// measures make a garment.
[[nodiscard]] Loaded<Order> loadOrder(const std::filesystem::path& file, const Rules& rules);
// The same for an order in the making or a template, which may still lack blanks, designs, lines,
// sizes and placements.
[[nodiscard]] Loaded<Order> loadOrderDraft(const std::filesystem::path& file, const Rules& rules);
[[nodiscard]] Loaded<Shop> loadShop(const std::filesystem::path& file, const Rules& rules);
[[nodiscard]] Loaded<Blank> loadBlank(const std::filesystem::path& file, const Rules& rules);
[[nodiscard]] Loaded<Design> loadDesign(const std::filesystem::path& file);

// A size chart as CSV: first column the size, a header that names each point of measure and its
// unit ("body-width (cm)"), or one unit for all in the first header cell ("size (in)"). Comma,
// semicolon or tab; decimal point or comma; with or without a byte-order mark; an optional
// column "band". Empty cells are measures not given.
[[nodiscard]] SizeChart parseSizeChartCsv(const std::string& text, const std::string& file);

}  // namespace creaseline
