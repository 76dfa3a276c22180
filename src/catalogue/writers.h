// SPDX-License-Identifier: MIT
// The writers of all files that the program also reads: from a struct, and from what the file said
// before, to JSON. Keys stand in the order of docs/file-formats.md.
#pragma once

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "catalogue/file_kind.h"
#include "catalogue/json_writer.h"
#include "creaseline/catalogue/original.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

// How to write a new value, and where paths in the text start.
struct Writing {
  LengthUnit lengths = LengthUnit::Millimetre;
  std::filesystem::path from;  // folder that paths in the text before are relative to
  std::filesystem::path to;    // folder of the file to be written
  // A path of the text before, as it must stand in the file to be written.
  [[nodiscard]] std::string reference(const std::string& text) const;
};

// What stood there: its text and what was read from it. Both null for something new.
template <class T>
struct Before {
  const JsonNode* text = nullptr;
  const T* value = nullptr;
};

[[nodiscard]] JsonNode blankNode(const Blank& blank, const Before<Blank>& before,
                                 const Writing& writing, bool ownFile);
[[nodiscard]] JsonNode designNode(const Design& design, const Before<Design>& before,
                                  const Writing& writing, bool ownFile);
[[nodiscard]] JsonNode shopNode(const Shop& shop, const JsonNode* before, const Writing& writing);
// `changedInPlace`: a blank or design that differs from its file is written into the order.
[[nodiscard]] JsonNode orderNode(const Order& order, const Original<Order>& before,
                                 const Writing& writing, bool changedInPlace);

[[nodiscard]] JsonNode windowNode(const JsonNode* before, const Window& window, LengthUnit unit);
[[nodiscard]] JsonNode placementRuleNode(const JsonNode* before, const PlacementRule& rule,
                                         LengthUnit unit);
// [[x, y], ...] in millimetres.
[[nodiscard]] JsonNode ringNode(const Ring& ring);
[[nodiscard]] JsonNode sizeChartNode(const JsonNode* before, const SizeChart& chart,
                                     LengthUnit unit);

// In the currency's own words, "18.50 EUR".
[[nodiscard]] JsonNode moneyNode(const JsonNode* before, Money amount, const Currency& currency);
[[nodiscard]] JsonNode ratesNode(const JsonNode* before, const Rates& rates, LengthUnit unit);
[[nodiscard]] JsonNode backingPriceNode(const JsonNode* before, const BackingPrice& price,
                                        BackingForm form, const Currency& currency,
                                        LengthUnit unit);

// The entry of that id, or null.
template <class Entry>
[[nodiscard]] const Entry* entryOfId(const std::vector<Entry>* entries, const std::string& id) {
  if (entries == nullptr) {
    return nullptr;
  }
  const auto found = std::find_if(entries->begin(), entries->end(),
                                  [&](const Entry& entry) { return entry.id.text() == id; });
  return found == entries->end() ? nullptr : &*found;
}

// The file in which an entry of an order lies, or null: the one that was read with its id, or, if
// none was, the one whose entry stood in its place before and has gone since, so that a new id
// does not part an entry from its file. `entry` is one of `entries`.
template <class Entry>
[[nodiscard]] const Original<Entry>* originalOf(const std::vector<Original<Entry>>& originals,
                                                const std::vector<Entry>& entries,
                                                const Entry& entry,
                                                const std::vector<Entry>* before) {
  const auto ofId = [&](const std::string& id) -> const Original<Entry>* {
    const auto found = std::find_if(
        originals.begin(), originals.end(),
        [&](const Original<Entry>& original) { return original.value->id.text() == id; });
    return found == originals.end() ? nullptr : &*found;
  };
  if (const Original<Entry>* same = ofId(entry.id.text())) {
    return same;
  }
  const auto index = static_cast<std::size_t>(&entry - entries.data());
  if (before == nullptr || before->size() != entries.size() ||
      entryOfId(before, entry.id.text()) != nullptr) {
    return nullptr;
  }
  const std::string idBefore = (*before)[index].id.text();
  return entryOfId(&entries, idBefore) == nullptr ? ofId(idBefore) : nullptr;
}

// "format" and "version": always in a file of its own, else only if they stood there.
void putHead(JsonObjectWriter& object, FileKind kind, bool ownFile);

}  // namespace creaseline
