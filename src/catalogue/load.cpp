// SPDX-License-Identifier: MIT
// Loading of whole files.
#include "creaseline/catalogue/load.h"

#include "catalogue/blank_reader.h"
#include "catalogue/design_reader.h"
#include "catalogue/file_kind.h"
#include "catalogue/order_reader.h"
#include "catalogue/shop_reader.h"

namespace creaseline {

namespace {

template <class T, class Read>
Loaded<T> load(const std::filesystem::path& file, FileKind kind, Read read) {
  Reading reading;
  const JsonDocument document(file, reading);
  JsonObject top = document.root().object();
  requireHead(top, kind);
  T value = read(top);
  top.finish();
  return {std::move(value), std::move(reading.notes), std::move(reading.files)};
}

}  // namespace

Loaded<Order> loadOrder(const std::filesystem::path& file, const Rules& rules) {
  return load<Order>(file, FileKind::Order, [&](JsonObject& top) { return readOrder(top, rules); });
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
