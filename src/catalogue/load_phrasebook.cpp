// SPDX-License-Identifier: MIT
#include "creaseline/catalogue/load_phrasebook.h"

#include <utility>

#include "base/worded.h"
#include "catalogue/file_kind.h"

namespace creaseline {

namespace {

constexpr std::size_t kMostPhrases = 10'000;
constexpr std::size_t kMostJoints = 20;

char readDecimalSeparator(const JsonCursor& at) {
  const std::string text = at.label();
  if (text != "." && text != ",") {
    at.failShown(worded("{} or {}", inQuotes("."), inQuotes(",")));
  }
  return text.front();
}

Phrasebook::Joint readJoint(const JsonCursor& at) {
  JsonObject object = at.object();
  Phrasebook::Joint joint{object.at("apart").label(), object.at("joined").label()};
  object.finish();
  return joint;
}

void readPhrase(const JsonCursor& at, Phrasebook::Content& content) {
  JsonObject object = at.object();
  const JsonCursor english = object.at("english");
  if (!content.phrases.emplace(english.label(), object.at("said").label()).second) {
    english.failShown(worded("each English text once"));
  }
  object.finish();
}

}  // namespace

std::filesystem::path phrasebookFile(const std::filesystem::path& resources,
                                     const std::string& language) {
  return resources / "translations" / (language + ".phrases.json");
}

Phrasebook loadPhrasebook(const std::filesystem::path& resources, const std::string& language) {
  Reading reading;
  reading.strict = true;
  const JsonDocument document(phrasebookFile(resources, language), reading);
  JsonObject top = document.root().object();
  requireHead(top, FileKind::Phrases);
  Phrasebook::Content content;
  const JsonCursor name = top.at("language");
  content.language = name.label();
  if (content.language != language) {
    name.failShown(inQuotes(language));
  }
  content.decimalSeparator = readDecimalSeparator(top.at("decimal-separator"));
  for (const JsonCursor& item : top.at("joints").items(0, kMostJoints, toBeWorded("joints"))) {
    content.joints.push_back(readJoint(item));
  }
  for (const JsonCursor& item : top.at("phrases").items(1, kMostPhrases, toBeWorded("phrases"))) {
    readPhrase(item, content);
  }
  top.finish();
  return Phrasebook(std::move(content));
}

}  // namespace creaseline
