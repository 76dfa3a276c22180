// SPDX-License-Identifier: MIT
// Reads what makers call the points of measure.
#include "base/worded.h"
#include "catalogue/file_kind.h"
#include "creaseline/catalogue/chart_import.h"

namespace creaseline {

namespace {

std::vector<std::string> readNames(const JsonCursor& at) {
  std::vector<std::string> names;
  for (const JsonCursor& item : at.items(1, 200, toBeWorded("names"))) {
    requireDistinct(names, item.label(), item, toBeWorded("name"));
    names.push_back(item.label());
  }
  return names;
}

MeasureWords::Entry readEntry(const JsonCursor& at) {
  JsonObject object = at.object();
  MeasureWords::Entry entry;
  entry.measure = object.at("measure").enumerator<Measure>();
  entry.names = readNames(object.at("names"));
  if (const auto girths = object.find("girths")) {
    entry.girths = readNames(*girths);
  }
  entry.basis = object.at("basis").label();
  object.finish();
  return entry;
}

}  // namespace

MeasureWords loadMeasureWords(const std::filesystem::path& resources) {
  Reading reading;
  reading.strict = true;
  const JsonDocument document(resources / "import" / "measure-words.json", reading);
  JsonObject top = document.root().object();
  requireHead(top, FileKind::MeasureWords);
  MeasureWords words;
  words.sizeColumn = readNames(top.at("size-column"));
  words.bandColumn = readNames(top.at("band-column"));
  for (const JsonCursor& item : top.at("words").items(1, 200, toBeWorded("measures"))) {
    words.entries.push_back(readEntry(item));
  }
  top.finish();
  return words;
}

}  // namespace creaseline
