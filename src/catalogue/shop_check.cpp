// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/shop_check.h"

#include <fmt/format.h>

#include "base/worded.h"
#include "catalogue/json_reader.h"
#include "catalogue/shop_reader.h"
#include "catalogue/writers.h"
#include "creaseline/base/error.h"

namespace creaseline {

std::optional<std::string> shopProblem(const Shop& shop, const Rules& rules) {
  const JsonNode written = shopNode(shop, nullptr, {});
  Reading reading;
  const JsonCursor::Source source{{}, &reading};
  try {
    JsonObject top = JsonCursor(source, written, {}).object();
    static_cast<void>(readShop(top, rules));
  } catch (const InputError& error) {
    const InputError::Details& details = error.details();
    return fmt::format("{}: {}", details.where,
                       worded("found {}, expected {}", details.found, details.expected));
  }
  return std::nullopt;
}

}  // namespace creaseline
