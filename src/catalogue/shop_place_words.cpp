// SPDX-License-Identifier: MIT
// What people call the part of a shop that a JSON pointer leads to.
#include <fmt/format.h>

#include <charconv>
#include <utility>
#include <vector>

#include "base/worded.h"
#include "catalogue/text_check.h"
#include "creaseline/catalogue/shop_check.h"

namespace creaseline {

namespace {

std::vector<std::string_view> stepsOf(std::string_view pointer) {
  std::vector<std::string_view> steps;
  while (!pointer.empty() && pointer.front() == '/') {
    pointer.remove_prefix(1);
    const std::size_t end = std::min(pointer.find('/'), pointer.size());
    steps.push_back(pointer.substr(0, end));
    pointer.remove_prefix(end);
  }
  return steps;
}

// Keys of the file that a form shows as a field.
constexpr std::pair<std::string_view, std::string_view> kFields[] = {
    {"window", toBeWorded("window")},
    {"body", toBeWorded("body")},
    {"sewing-field", toBeWorded("sewing field")},
    {"clearance", toBeWorded("clearance")},
    {"cloth-margin", toBeWorded("margin of cloth")},
    {"turns", toBeWorded("turns")},
    {"turn", toBeWorded("turn")},
    {"quantity", toBeWorded("number on hand")},
    {"id", toBeWorded("id")},
    {"name", toBeWorded("name")},
    {"needles", toBeWorded("needles")},
    {"stitches-per-minute", toBeWorded("stitches a minute")},
    {"weight", toBeWorded("weight")},
    {"width", toBeWorded("width")},
    {"length", toBeWorded("length")},
    {"sheets", toBeWorded("sheets")},
    {"price", toBeWorded("price")},
    {"size", toBeWorded("size")},
    {"sideways", toBeWorded("sideways")},
    {"along", toBeWorded("along")},
    {"basis", toBeWorded("basis")},
    {"note", toBeWorded("note")},
    {"distance", toBeWorded("distance")},
    {"least", toBeWorded("least distance")},
    {"most", toBeWorded("most distance")},
    {"sideways-distance", toBeWorded("distance sideways")},
    {"least-width", toBeWorded("least width")},
    {"most-width", toBeWorded("most width")},
    {"least-height", toBeWorded("least height")},
    {"most-height", toBeWorded("most height")},
    {"machines", toBeWorded("machines")},
    {"frames", toBeWorded("frames")},
    {"backings", toBeWorded("backings")},
    {"hooping-error", toBeWorded("hooping error")},
    {"measured-hoopings", toBeWorded("measured hoopings")},
    {"house-rules", toBeWorded("house rules")},
    {"crease-error", toBeWorded("crease")},
    {"ruler-error", toBeWorded("ruler")},
    {"cloth-give", toBeWorded("give of the cloth")},
    {"rates", toBeWorded("rates")},
};

constexpr std::pair<std::string_view, std::string_view> kRates[] = {
    {"currency", toBeWorded("currency")},
    {"labour", toBeWorded("an hour of work")},
    {"machine", toBeWorded("an hour of the machine")},
    {"attendance", toBeWorded("share of standing by")},
    {"thread", toBeWorded("thread")},
    {"topping", toBeWorded("topping film")},
    {"applique-fabric", toBeWorded("appliqué fabric")},
    {"set-up", toBeWorded("set-up of a design")},
    {"markup", toBeWorded("markup")},
};

template <std::size_t n>
std::string wordsFor(std::string_view key,
                     const std::pair<std::string_view, std::string_view> (&fields)[n]) {
  for (const auto& [known, words] : fields) {
    if (known == key) {
      return inLanguage(words);
    }
  }
  return {};
}

template <class Entry>
std::string nameAt(const std::vector<Entry>& entries, std::size_t index) {
  return inQuotes(index < entries.size() ? entries[index].name : std::string());
}

std::string entryWords(const Shop& shop, std::string_view list, std::size_t index) {
  if (list == "machines") {
    return worded("machine {}", nameAt(shop.machines, index));
  }
  if (list == "frames") {
    return worded("frame {}", nameAt(shop.frames, index));
  }
  if (list == "backings") {
    return worded("backing {}", nameAt(shop.backings, index));
  }
  if (list == "needles") {
    return worded("needle {}", index + 1);
  }
  if (list == "measured-hoopings") {
    return worded("measured hooping {}", index + 1);
  }
  if (list == "house-rules" && index < shop.houseRules.size()) {
    return worded("house rule {}", inQuotes(shop.houseRules[index].id.text()));
  }
  return {};
}

}  // namespace

std::string shopPlaceWords(const Shop& shop, std::string_view pointer) {
  const std::vector<std::string_view> steps = stepsOf(pointer);
  std::string entry;
  std::size_t next = 0;  // of the steps, behind those that led to the entry
  if (steps.size() > 1) {
    std::size_t index = 0;
    const std::string_view digits = steps[1];
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), index);
    if (read.ec == std::errc()) {
      entry = entryWords(shop, steps[0], index);
      next = 2;
    }
  }
  if (steps.size() > 1 && steps[0] == "rates") {
    const std::string rate = wordsFor(steps[1], kRates);
    return rate.empty() ? wordsFor("rates", kFields) : worded("rates, {}", rate);
  }
  const std::string field = next < steps.size() ? wordsFor(steps[next], kFields) : std::string();
  if (entry.empty() || field.empty()) {
    return entry.empty() ? field : entry;
  }
  return worded("{} of {}", field, entry);
}

}  // namespace creaseline
