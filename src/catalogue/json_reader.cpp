// SPDX-License-Identifier: MIT
// Typed, located access to a parsed JSON document.
#include "catalogue/json_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/worded.h"
#include "creaseline/base/digest.h"
#include "creaseline/base/file.h"
#include "creaseline/base/spoken_units.h"
#include "creaseline/base/units.h"

namespace creaseline {

namespace {

constexpr std::size_t kUnknownKeysNamed = 20;  // in one object

// RFC 6901: "~" and "/" inside a key are written "~0" and "~1".
std::string pointerTo(const std::string& parent, std::string_view key) {
  std::string pointer = parent + '/';
  for (const char c : printable(key, kLongestLabel)) {
    if (c == '~' || c == '/') {
      pointer += c == '~' ? "~0" : "~1";
    } else {
      pointer += c;
    }
  }
  return pointer;
}

// Upper bounds of lengths are round metric figures; the lower ones are zero or one step above it.
std::string rangeText(Length least, Length most) {
  if (least == Length::fromNanometres(1)) {
    return worded("a length more than 0 and at most {}", spokenLength(most));
  }
  return worded("a length from {} to {}", spokenLength(least), spokenLength(most));
}

// "one or more lines", "at most 50 lines", "2 lines".
std::string countText(std::size_t least, std::size_t most, bool tooFew, const std::string& lines) {
  if (least == most) {
    return fmt::format("{} {}", least, lines);
  }
  if (!tooFew) {
    return worded("at most {} {}", most, lines);
  }
  return least == 1 ? worded("one or more {}", lines) : worded("at least {} {}", least, lines);
}

}  // namespace

bool JsonCursor::isEmptyText() const {
  const auto* text = std::get_if<std::string>(&node_->content);
  return text != nullptr && text->empty();
}

bool JsonCursor::isObject() const {
  return std::holds_alternative<JsonNode::Object>(node_->content);
}

std::string JsonCursor::shown() const {
  struct Describe {
    std::string operator()(std::monostate) const { return "null"; }
    std::string operator()(bool value) const { return value ? "true" : "false"; }
    std::string operator()(const JsonNumber& number) const {
      return worded("the number {}", number.value);
    }
    std::string operator()(const std::string& value) const { return inQuotes(value); }
    std::string operator()(const JsonNode::Array& value) const {
      return worded("a list of {}", value.size());
    }
    std::string operator()(const JsonNode::Object& value) const {
      return worded("an object with {} keys", value.size());
    }
  };
  return std::visit(Describe{}, node_->content);
}

void JsonCursor::fail(std::string found, std::string expected) const {
  throw InputError({file(), where(), std::move(found), std::move(expected)});
}

void JsonCursor::note(std::string text) const {
  reading().notes.push_back({file(), where(), std::move(text)});
}

std::string JsonCursor::label() const {
  const auto* text = std::get_if<std::string>(&node_->content);
  if (text == nullptr) {
    failShown(worded("a text in double quotes"));
  }
  if (text->find_first_not_of(' ') == std::string::npos) {
    fail(worded("an empty text"), worded("a text that is not empty"));
  }
  if (hasControlCharacter(*text, false)) {
    failShown(worded("a text on one line without control characters"));
  }
  if (text->front() == ' ' || text->back() == ' ') {
    failShown(worded("a text without spaces before or after it"));
  }
  if (const std::size_t count = characterCount(*text); count > kLongestLabel) {
    fail(worded("a text of {} characters", count), worded("at most {} characters", kLongestLabel));
  }
  return *text;
}

std::string JsonCursor::ownLabel() const {
  return reading().strict ? inLanguage(label()) : label();
}

std::string JsonCursor::prose() const {
  const auto* text = std::get_if<std::string>(&node_->content);
  if (text == nullptr) {
    failShown(worded("a text in double quotes"));
  }
  if (hasControlCharacter(*text, true)) {
    failShown(worded("a text without control characters"));
  }
  if (const std::size_t count = characterCount(*text); count > kLongestProse) {
    fail(worded("a text of {} characters", count), worded("at most {} characters", kLongestProse));
  }
  return *text;
}

std::string JsonCursor::anyText() const {
  const auto* text = std::get_if<std::string>(&node_->content);
  if (text == nullptr) {
    failShown(worded("a text in double quotes"));
  }
  return *text;
}

bool JsonCursor::boolean() const {
  const auto* value = std::get_if<bool>(&node_->content);
  if (value == nullptr) {
    failShown(worded("true or false"));
  }
  return *value;
}

double JsonCursor::number(double least, double most) const {
  const auto* number = std::get_if<JsonNumber>(&node_->content);
  if (number == nullptr || !(number->value >= least && number->value <= most)) {
    failShown(worded("a number from {} to {}", least, most));
  }
  return number->value;
}

int JsonCursor::integer(int least, int most) const {
  const auto* number = std::get_if<JsonNumber>(&node_->content);
  if (number == nullptr || !(number->value >= least && number->value <= most) ||
      std::floor(number->value) != number->value) {
    failShown(worded("a whole number from {} to {}", least, most));
  }
  return static_cast<int>(number->value);
}

void JsonCursor::failLength(Length found, std::string expected) const {
  fail(spokenUnits() ? spokenLength(found) : shown(), std::move(expected));
}

Length JsonCursor::length(Length least, Length most) const {
  const auto* text = std::get_if<std::string>(&node_->content);
  if (text == nullptr) {
    failShown(worded("a length as text with its unit, such as \"3 1/2 in\" or \"89 mm\""));
  }
  const Result<Length> value = parseLength(*text);
  if (!value) {
    failShown(worded("a length such as \"3 1/2 in\" or \"89 mm\": {}", value.message()));
  }
  if (*value < least || *value > most) {
    failLength(*value, rangeText(least, most));
  }
  return *value;
}

Length JsonCursor::positiveLength(Length most) const {
  return length(Length::fromNanometres(1), most);
}

Angle JsonCursor::angle() const {
  const auto* text = std::get_if<std::string>(&node_->content);
  if (text == nullptr) {
    failShown(worded("an angle as text, such as \"90 deg\""));
  }
  const Result<Angle> value = parseAngle(*text);
  if (!value) {
    failShown(worded("an angle such as \"90 deg\": {}", value.message()));
  }
  return *value;
}

ArealWeight JsonCursor::weight() const {
  const auto* text = std::get_if<std::string>(&node_->content);
  if (text == nullptr) {
    failShown(worded("a weight as text with its unit, such as \"280 g/m2\" or \"8 oz/yd2\""));
  }
  const Result<ArealWeight> value = parseArealWeight(*text);
  if (!value) {
    failShown(worded("a weight such as \"280 g/m2\" or \"8 oz/yd2\": {}", value.message()));
  }
  if (*value == ArealWeight() ||
      value->gramsPerSquareMetre() > kHeaviestFabricGramsPerSquareMetre) {
    failShown(
        worded("a weight of more than 0 and at most {} g/m2", kHeaviestFabricGramsPerSquareMetre));
  }
  return *value;
}

Colour JsonCursor::colour() const {
  const std::string text = label();
  const Result<Colour> value = parseColour(text);
  if (!value) {
    failShown(worded("a colour such as \"#1f3a5f\": {}", value.message()));
  }
  return *value;
}

std::vector<JsonCursor> JsonCursor::items(std::size_t least, std::size_t most,
                                          std::string_view ofWhat) const {
  const auto* array = std::get_if<JsonNode::Array>(&node_->content);
  if (array == nullptr) {
    failShown(worded("a list of {} in square brackets", inLanguage(ofWhat)));
  }
  if (array->size() < least || array->size() > most) {
    fail(array->empty() ? worded("an empty list") : worded("a list of {}", array->size()),
         countText(least, most, array->size() < least, inLanguage(ofWhat)));
  }
  std::vector<JsonCursor> cursors;
  cursors.reserve(array->size());
  for (std::size_t i = 0; i < array->size(); ++i) {
    cursors.emplace_back(*source_, (*array)[i], fmt::format("{}/{}", where_, i));
  }
  return cursors;
}

JsonObject JsonCursor::object() const {
  const auto* members = std::get_if<JsonNode::Object>(&node_->content);
  if (members == nullptr) {
    failShown(worded("an object in braces"));
  }
  return JsonObject(*this, *members);
}

std::vector<std::pair<std::string, JsonCursor>> JsonCursor::members(std::size_t most,
                                                                    std::string_view ofWhat,
                                                                    std::size_t least) const {
  const auto* object = std::get_if<JsonNode::Object>(&node_->content);
  if (object == nullptr) {
    failShown(worded("an object of {} in braces", inLanguage(ofWhat)));
  }
  if (object->size() < least || object->size() > most) {
    fail(object->empty() ? worded("an empty object") : worded("an object of {}", object->size()),
         worded("from {} to {} {}", least, most, inLanguage(ofWhat)));
  }
  std::vector<std::pair<std::string, JsonCursor>> result;
  for (const JsonMember& member : *object) {
    const JsonCursor value(*source_, member.value, pointerTo(where_, member.key));
    // The key is data, so it must be as good a name as any other.
    const JsonNode key{member.key};
    result.emplace_back(JsonCursor(*source_, key, value.where_).label(), value);
  }
  return result;
}

JsonCursor JsonObject::at(std::string_view key) {
  if (std::optional<JsonCursor> value = find(key)) {
    return *value;
  }
  std::vector<std::string> present;
  for (const JsonMember& member : *members_) {
    present.push_back(member.key);
  }
  const std::string near = nearestName(key, present);
  cursor_.fail(worded("no key {}", inQuotes(key)),
               near.empty() ? worded("that key in this object")
                            : worded("that key; is {} meant for it?", inQuotes(near)));
}

std::optional<JsonCursor> JsonObject::find(std::string_view key) {
  asked_.emplace_back(key);
  for (const JsonMember& member : *members_) {
    if (member.key == key) {
      return JsonCursor(*cursor_.source_, member.value, pointerTo(cursor_.where_, key));
    }
  }
  return std::nullopt;
}

std::string JsonObject::labelOrEmpty(std::string_view key) {
  const std::optional<JsonCursor> value = find(key);
  return value && !value->isEmptyText() ? value->label() : std::string();
}

std::string JsonObject::proseOrEmpty(std::string_view key) {
  const std::optional<JsonCursor> value = find(key);
  return value ? value->prose() : std::string();
}

void JsonObject::finish() const {
  std::size_t unknown = 0;
  for (const JsonMember& member : *members_) {
    if (std::find(asked_.begin(), asked_.end(), member.key) != asked_.end()) {
      continue;
    }
    if (cursor_.reading().strict) {
      cursor_.fail(worded("the unknown key {}", inQuotes(member.key)), offer(member.key, asked_));
    }
    if (++unknown > kUnknownKeysNamed) {
      cursor_.note(worded("more unknown keys are ignored"));
      return;
    }
    const std::string near = nearestName(member.key, asked_);
    cursor_.note(near.empty() ? worded("the unknown key {} is ignored", inQuotes(member.key))
                              : worded("the unknown key {} is ignored; did you mean {}?",
                                       inQuotes(member.key), inQuotes(near)));
  }
}

JsonDocument::JsonDocument(const std::filesystem::path& path, Reading& reading)
    : source_(std::make_unique<JsonCursor::Source>(JsonCursor::Source{path, &reading})) {
  const std::string text = readFile(path);
  root_ = std::make_shared<const JsonNode>(parseJson(text, path.string()));
  reading.files.push_back(path);
  reading.documents.push_back({path, {contentDigest(text)}, root_});
}

void requireDistinct(const std::vector<std::string>& before, const std::string& name,
                     const JsonCursor& at, std::string_view whatIsIt) {
  if (std::find(before.begin(), before.end(), name) != before.end()) {
    at.fail(worded("the {} {} a second time", inLanguage(whatIsIt), inQuotes(name)),
            worded("every {} once", inLanguage(whatIsIt)));
  }
}

}  // namespace creaseline
