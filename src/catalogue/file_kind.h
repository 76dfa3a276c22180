// SPDX-License-Identifier: MIT
// The head of every file: which kind of file it is and which version of the format it has.
#pragma once

#include "catalogue/json_reader.h"

namespace creaseline {

enum class FileKind {
  Order,
  Shop,
  Blank,
  Design,
  Kind,
  Locations,
  PlacementRules,
  BackingRules,
  FrameEdgeRules,
  Cautions,
  MonogramRules,
  Currencies,
  Defaults,
  MeasureWords,
  TradeWords,
  Phrases
};

// Checks "format" and "version" of a file of its own. A newer version and a file of another kind
// are refused by name.
void requireHead(JsonObject& top, FileKind kind);
// The same for an object inside another file, where both keys may be left out.
void checkHead(JsonObject& top, FileKind kind);

// A path in a file, relative to the folder of the file that names it. Refuses absolute paths,
// addresses ("https:..."), drive letters and backslashes, and a file that is not there. Climbing
// with ".." is allowed: orders share a folder of blanks beside their own, and the reader only ever
// reads.
[[nodiscard]] std::filesystem::path referredFile(const JsonCursor& at);

template <>
struct EnumNames<FileKind> {
  static constexpr std::pair<FileKind, std::string_view> names[] = {
      {FileKind::Order, "creaseline-order"},
      {FileKind::Shop, "creaseline-shop"},
      {FileKind::Blank, "creaseline-blank"},
      {FileKind::Design, "creaseline-design"},
      {FileKind::Kind, "creaseline-kind"},
      {FileKind::Locations, "creaseline-locations"},
      {FileKind::PlacementRules, "creaseline-placement-rules"},
      {FileKind::BackingRules, "creaseline-backing-rules"},
      {FileKind::FrameEdgeRules, "creaseline-frame-edge-rules"},
      {FileKind::Cautions, "creaseline-cautions"},
      {FileKind::MonogramRules, "creaseline-monogram-rules"},
      {FileKind::Currencies, "creaseline-currencies"},
      {FileKind::Defaults, "creaseline-defaults"},
      {FileKind::MeasureWords, "creaseline-measure-words"},
      {FileKind::TradeWords, "creaseline-trade-words"},
      {FileKind::Phrases, "creaseline-phrases"}};
};

}  // namespace creaseline
