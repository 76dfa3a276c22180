// SPDX-License-Identifier: MIT
// Loading of whole files.
#include "creaseline/catalogue/load.h"

#include <algorithm>

#include "catalogue/blank_reader.h"
#include "catalogue/design_reader.h"
#include "catalogue/file_kind.h"
#include "catalogue/json_writer.h"
#include "catalogue/order_reader.h"
#include "catalogue/shop_reader.h"

namespace creaseline {

namespace {

template <class T, class Read>
Loaded<T> load(const std::filesystem::path& file, FileKind kind, Reading& reading, Read read) {
  const JsonDocument document(file, reading);
  JsonObject top = document.root().object();
  requireHead(top, kind);
  Loaded<T> loaded{read(top), {}, {}, {}};
  top.finish();
  loaded.notes = std::move(reading.notes);
  loaded.files = std::move(reading.files);
  static_cast<OriginalFile&>(loaded.original) = reading.documents.front();
  loaded.original.value = std::make_shared<const T>(loaded.value);
  return loaded;
}

template <class T, class Read>
Loaded<T> load(const std::filesystem::path& file, FileKind kind, Read read) {
  Reading reading;
  return load<T>(file, kind, reading, read);
}

// The entries of a list that lie in files of their own. A file is the one that was read under the
// path in the list; the reader read it.
template <class Entry>
std::vector<Original<Entry>> originalsOf(const JsonNode* list, const std::vector<Entry>& entries,
                                         const std::vector<OriginalFile>& documents) {
  std::vector<Original<Entry>> originals;
  const std::filesystem::path folder = documents.front().file.parent_path();
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const auto* reference = std::get_if<std::string>(&arrayOf(list)->at(i).content);
    if (reference == nullptr) {
      continue;
    }
    const std::filesystem::path path = (folder / *reference).lexically_normal();
    const auto read = std::find_if(documents.begin(), documents.end(),
                                   [&](const OriginalFile& each) { return each.file == path; });
    Original<Entry> original;
    static_cast<OriginalFile&>(original) = *read;
    original.value = std::make_shared<const Entry>(entries[i]);
    originals.push_back(std::move(original));
  }
  return originals;
}

Loaded<Order> loadOrder(const std::filesystem::path& file, const Rules& rules, bool draft) {
  Reading reading;
  reading.draft = draft;
  Loaded<Order> loaded = load<Order>(file, FileKind::Order, reading,
                                     [&](JsonObject& top) { return readOrder(top, rules); });
  const JsonNode* top = loaded.original.text.get();
  loaded.original.blanks =
      originalsOf(memberOf(top, "blanks"), loaded.value.blanks, reading.documents);
  loaded.original.designs =
      originalsOf(memberOf(top, "designs"), loaded.value.designs, reading.documents);
  return loaded;
}

}  // namespace

Loaded<Order> loadOrder(const std::filesystem::path& file, const Rules& rules) {
  return loadOrder(file, rules, false);
}

Loaded<Order> loadOrderDraft(const std::filesystem::path& file, const Rules& rules) {
  return loadOrder(file, rules, true);
}

Loaded<Shop> loadShop(const std::filesystem::path& file, const Rules& rules) {
  return load<Shop>(file, FileKind::Shop, [&](JsonObject& top) { return readShop(top, rules); });
}

Loaded<Blank> loadBlank(const std::filesystem::path& file, const Rules& rules) {
  return load<Blank>(file, FileKind::Blank, [&](JsonObject& top) { return readBlank(top, rules); });
}

Loaded<Design> loadDesign(const std::filesystem::path& file) {
  return load<Design>(file, FileKind::Design, readDesign);
}

}  // namespace creaseline
