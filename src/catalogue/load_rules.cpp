// SPDX-License-Identifier: MIT
// Loads all shipped rules, and finds the folder that holds them.

#include <algorithm>
#include <cstdlib>

#include "base/worded.h"
#include "catalogue/file_kind.h"
#include "catalogue/rates_reader.h"
#include "catalogue/rules_reader.h"
#include "creaseline/base/duration.h"
#include "creaseline/base/units.h"
#include "creaseline/catalogue/load.h"

namespace creaseline {

namespace {

constexpr const char* kEnvironmentVariable = "CREASELINE_RESOURCES";
constexpr std::string_view kKindEnding = ".kind.json";

// Opens a file of one list, hands the list to `read` and checks that nothing else is in it.
template <class Read>
auto readList(const std::filesystem::path& file, FileKind kind, std::string_view key,
              Reading& reading, Read read) {
  const JsonDocument document(file, reading);
  JsonObject top = document.root().object();
  requireHead(top, kind);
  auto result = read(top.at(key));
  top.finish();
  return result;
}

// A list of objects with distinct ids.
template <class Entry, class ReadEntry>
std::vector<Entry> readEntries(const JsonCursor& at, std::string_view ofWhat, ReadEntry readEntry) {
  std::vector<Entry> entries;
  std::vector<std::string> ids;
  for (const JsonCursor& item : at.items(1, 1'000, ofWhat)) {
    JsonObject object = item.object();
    const JsonCursor id = object.at("id");
    requireDistinct(ids, id.label(), id, toBeWorded("id"));
    ids.push_back(id.label());
    entries.push_back(readEntry(object));
    object.finish();
  }
  return entries;
}

Location readLocation(JsonObject& object) {
  Location location;
  location.id = object.at("id").identifier<LocationId>();
  location.name = object.at("name").ownLabel();
  location.panel = object.at("panel").enumerator<PanelName>();
  location.wearerSide = object.at("wearer-side").enumerator<Side>();
  location.viewerSide = object.at("viewer-side").enumerator<Side>();
  return location;
}

FrameEdgeRule readFrameEdgeRule(JsonObject& object) {
  FrameEdgeRule rule;
  rule.id = object.at("id").identifier<RuleId>();
  rule.edge = object.at("edge").enumerator<EdgeName>();
  rule.crossing = object.at("crossing").enumerator<EdgeCrossing>();
  if (const auto arm = object.find("arm-through")) {
    rule.armThrough = arm->ownLabel();
  }
  rule.because = object.at("because").ownLabel();
  rule.basis = object.at("basis").ownLabel();
  return rule;
}

std::vector<FrameEdgeRule> readFrameEdgeRules(const JsonCursor& at) {
  std::vector<FrameEdgeRule> rules =
      readEntries<FrameEdgeRule>(at, toBeWorded("rules"), readFrameEdgeRule);
  for (const auto& [edge, name] : EnumNames<EdgeName>::names) {
    const auto count =
        std::count_if(rules.begin(), rules.end(),
                      [wanted = edge](const FrameEdgeRule& rule) { return rule.edge == wanted; });
    if (count != 1) {
      at.fail(worded("{} rules for the edge {}", count, name), worded("one rule for every edge"));
    }
  }
  return rules;
}

Caution readCaution(JsonObject& object) {
  Caution caution;
  caution.id = object.at("id").identifier<RuleId>();
  caution.when = object.at("when").enumerator<CautionOccasion>();
  caution.text = object.at("text").ownLabel();
  caution.basis = object.at("basis").ownLabel();
  return caution;
}

std::vector<MonogramRule> readMonogramRules(const JsonCursor& at) {
  std::vector<MonogramRule> rules =
      readEntries<MonogramRule>(at, toBeWorded("rules"), [](JsonObject& object) {
        MonogramRule rule;
        rule.id = object.at("id").identifier<RuleId>();
        rule.style = object.at("style").enumerator<MonogramStyle>();
        const JsonCursor letters = object.at("letters");
        rule.letters = letters.enumerators<NamePart>();
        if (rule.letters.size() != std::size(EnumNames<NamePart>::names)) {
          letters.failShown(worded("every part of a name once"));
        }
        rule.basis = object.at("basis").ownLabel();
        return rule;
      });
  for (const auto& [style, name] : EnumNames<MonogramStyle>::names) {
    const auto count =
        std::count_if(rules.begin(), rules.end(),
                      [style = style](const MonogramRule& rule) { return rule.style == style; });
    if (count != 1) {
      at.fail(worded("{} rules for the style {}", count, name), worded("one rule for every style"));
    }
  }
  return rules;
}

// Each default figure: its id, where it goes, and how its text is checked.
using CheckText = void (*)(const JsonCursor&);
struct DefaultSlot {
  const char* id;
  DefaultValue Defaults::*value;
  CheckText check;
};
void checkLength(const JsonCursor& at) {
  static_cast<void>(at.length({}, kLargestPart));
}
void checkAngle(const JsonCursor& at) {
  static_cast<void>(at.angle());
}
// A mass, "300 g": up to five digits, the first not nought.
void checkGrams(const JsonCursor& at) {
  const std::string text = at.label();
  const std::size_t digits = text.find_first_not_of("0123456789");
  if (digits == 0 || digits == std::string::npos || digits > 5 || text.front() == '0' ||
      text.substr(digits) != " g") {
    at.failShown(worded("whole grams from \"1 g\" to \"99999 g\""));
  }
}
void checkDuration(const JsonCursor& at) {
  if (const Result<Duration> value = parseDuration(at.label()); !value) {
    at.failShown(worded("a time such as \"8 s\" or \"2 min\": {}", value.message()));
  }
}
void checkDigit(const JsonCursor& at) {
  const std::string text = at.label();
  if (text.size() != 1 || text[0] < '2' || text[0] > '9') {
    at.failShown(worded("a number from \"2\" to \"9\""));
  }
}
void checkPercent(const JsonCursor& at) {
  const std::string text = at.label();
  const bool digits = text.size() == 4 && text.substr(2) == " %" && text[0] >= '1' &&
                      text[0] <= '9' && text[1] >= '0' && text[1] <= '9';
  if (!digits) {
    at.failShown(worded("a share from \"10 %\" to \"99 %\""));
  }
}
constexpr DefaultSlot kDefaultSlots[] = {
    {"foot-clearance", &Defaults::footClearance, checkLength},
    {"hooping-sideways", &Defaults::hoopingSideways, checkLength},
    {"hooping-along", &Defaults::hoopingAlong, checkLength},
    {"hooping-turn", &Defaults::hoopingTurn, checkAngle},
    {"crease-error", &Defaults::creaseError, checkLength},
    {"ruler-error", &Defaults::rulerError, checkLength},
    {"cloth-give", &Defaults::clothGive, checkLength},
    {"clamp-margin", &Defaults::clampMargin, checkLength},
    {"seam-clearance", &Defaults::seamClearance, checkLength},
    {"adult-xl-body-width", &Defaults::adultXlBodyWidth, checkLength},
    {"youth-body-width", &Defaults::youthBodyWidth, checkLength},
    {"infant-body-width", &Defaults::infantBodyWidth, checkLength},
    {"heavy-garment", &Defaults::heavyGarment, checkGrams},
    {"arm-reach", &Defaults::armReach, checkAngle},
    {"placement-tolerance", &Defaults::placementTolerance, checkLength},
    {"most-parts", &Defaults::mostParts, checkDigit},
    {"part-overlap", &Defaults::partOverlap, checkLength},
    {"register-mark", &Defaults::registerMark, checkLength},
    {"register-mark-clearance", &Defaults::registerMarkClearance, checkLength},
    {"register-marks-apart", &Defaults::registerMarksApart, checkLength},
    {"hooping-time", &Defaults::hoopingTime, checkDuration},
    {"colour-change", &Defaults::colourChange, checkDuration},
    {"rethreading", &Defaults::rethreading, checkDuration},
    {"thread-trim", &Defaults::threadTrim, checkDuration},
    {"fabric-laying", &Defaults::fabricLaying, checkDuration},
    {"fabric-trimming", &Defaults::fabricTrimming, checkDuration},
    {"further-hooping-weighs", &Defaults::furtherHoopingWeighs, checkLength},
    {"turned-frame-weighs", &Defaults::turnedFrameWeighs, checkLength},
    {"further-design-weighs", &Defaults::furtherDesignWeighs, checkLength},
    {"bought-frame-weighs", &Defaults::boughtFrameWeighs, checkLength},
    {"narrowest-rim", &Defaults::narrowestRim, checkLength},
    {"hooping-coverage", &Defaults::hoopingCoverage, checkPercent},
    {"hooping-confidence", &Defaults::hoopingConfidence, checkPercent},
    {"least-hoopings-measured", &Defaults::leastHoopingsMeasured, checkDigit},
    {"stop-share-of-error", &Defaults::stopShareOfError, checkPercent},
    {"least-design-share", &Defaults::leastDesignShare, checkPercent},
    {"larger-letter", &Defaults::largerLetter, checkPercent}};

Defaults readDefaults(const JsonCursor& at) {
  Defaults defaults;
  std::vector<std::string> known;
  for (const DefaultSlot& slot : kDefaultSlots) {
    known.emplace_back(slot.id);
  }
  readEntries<bool>(at, toBeWorded("values"), [&](JsonObject& object) {
    const JsonCursor id = object.at("id");
    const auto slot = std::find_if(std::begin(kDefaultSlots), std::end(kDefaultSlots),
                                   [&](const DefaultSlot& each) { return each.id == id.label(); });
    if (slot == std::end(kDefaultSlots)) {
      id.failShown(offer(id.label(), known));
    }
    const JsonCursor value = object.at("value");
    slot->check(value);
    defaults.*(slot->value) = {id.label(), value.label(), object.at("basis").ownLabel()};
    return true;
  });
  for (const DefaultSlot& slot : kDefaultSlots) {
    if ((defaults.*(slot.value)).id.empty()) {
      at.fail(worded("no value {}", inQuotes(slot.id)), worded("all default values"));
    }
  }
  return defaults;
}

// One basis holds for the whole table.
std::vector<Currency> readCurrencyFile(const std::filesystem::path& file, Reading& reading) {
  const JsonDocument document(file, reading);
  JsonObject top = document.root().object();
  requireHead(top, FileKind::Currencies);
  static_cast<void>(top.at("basis").label());
  std::vector<Currency> currencies = readCurrencies(top.at("currencies"));
  top.finish();
  return currencies;
}

std::vector<std::filesystem::path> kindFiles(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  std::error_code error;
  for (std::filesystem::directory_iterator entry(folder, error), end; !error && entry != end;
       entry.increment(error)) {
    const std::string name = entry->path().filename().string();
    if (name.size() > kKindEnding.size() &&
        name.substr(name.size() - kKindEnding.size()) == kKindEnding) {
      files.push_back(entry->path());
    }
  }
  if (files.empty()) {
    throw InputError(
        {folder.string(), "", worded("no garment kinds"), worded("files *.kind.json")});
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::vector<GarmentKind> readKindFiles(const std::filesystem::path& folder, Reading& reading) {
  std::vector<GarmentKind> kinds;
  std::vector<std::string> ids;
  for (const std::filesystem::path& file : kindFiles(folder)) {
    const JsonDocument document(file, reading);
    JsonObject top = document.root().object();
    requireHead(top, FileKind::Kind);
    kinds.push_back(readKind(top));
    requireDistinct(ids, kinds.back().id.text(), document.root(), toBeWorded("kind"));
    ids.push_back(kinds.back().id.text());
  }
  return kinds;
}

bool holdsRules(const std::filesystem::path& folder) {
  std::error_code error;
  return std::filesystem::exists(folder / "rules" / "locations.json", error);
}

}  // namespace

std::vector<const DefaultValue*> Defaults::all() const {
  std::vector<const DefaultValue*> values;
  for (const DefaultSlot& slot : kDefaultSlots) {
    values.push_back(&(this->*(slot.value)));
  }
  return values;
}

Rules loadRules(const std::filesystem::path& resources) {
  Reading reading;
  reading.strict = true;
  const std::filesystem::path folder = resources / "rules";
  Rules rules;
  rules.kinds = readKindFiles(resources / "kinds", reading);
  rules.locations =
      readList(folder / "locations.json", FileKind::Locations, "locations", reading,
               [](const JsonCursor& at) {
                 return readEntries<Location>(at, toBeWorded("locations"), readLocation);
               });
  rules.placement =
      readList(folder / "placement.json", FileKind::PlacementRules, "rules", reading,
               [&](const JsonCursor& at) { return readPlacementRules(at, rules, false); });
  rules.backing =
      readList(folder / "backing.json", FileKind::BackingRules, "rules", reading, readBackingRules);
  rules.frameEdges = readList(folder / "frame-edges.json", FileKind::FrameEdgeRules, "rules",
                              reading, readFrameEdgeRules);
  rules.cautions = readList(folder / "cautions.json", FileKind::Cautions, "cautions", reading,
                            [](const JsonCursor& at) {
                              return readEntries<Caution>(at, toBeWorded("cautions"), readCaution);
                            });
  rules.monograms = readList(folder / "monograms.json", FileKind::MonogramRules, "rules", reading,
                             readMonogramRules);
  rules.currencies = readCurrencyFile(folder / "currencies.json", reading);
  rules.defaults =
      readList(folder / "defaults.json", FileKind::Defaults, "values", reading, readDefaults);
  return rules;
}

std::filesystem::path findResources(const std::filesystem::path& program) {
  if (const char* named = std::getenv(kEnvironmentVariable); named != nullptr && *named != '\0') {
    if (!holdsRules(named)) {
      throw InputError({named, "",
                        worded("no rules in the folder that {} names", kEnvironmentVariable),
                        worded("a folder with rules/locations.json")});
    }
    return named;
  }
  std::error_code error;
  const std::filesystem::path folder =
      std::filesystem::weakly_canonical(program, error).parent_path();
  const std::filesystem::path candidates[] = {folder / ".." / "share" / "creaseline",
                                              folder / ".." / "resources",
                                              CREASELINE_SOURCE_RESOURCES};
  for (const std::filesystem::path& candidate : candidates) {
    if (holdsRules(candidate)) {
      return candidate.lexically_normal();
    }
  }
  throw InputError({program.string(), "", worded("no rules beside the program"),
                    worded("the rules in ../share/creaseline, or their folder in the "
                           "environment variable {}",
                           kEnvironmentVariable)});
}

}  // namespace creaseline
