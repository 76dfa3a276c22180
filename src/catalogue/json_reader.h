// SPDX-License-Identifier: MIT
// The one reader of JSON: a parsed document, and a cursor over it that knows its file and JSON
// pointer (RFC 6901). Every getter checks type and range and throws InputError with the place.
// This header knows nothing of the parser behind it (json_parser.cpp).
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/worded.h"
#include "catalogue/text_check.h"
#include "creaseline/base/angle.h"
#include "creaseline/base/areal_weight.h"
#include "creaseline/base/colour.h"
#include "creaseline/base/error.h"
#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/catalogue/load.h"

namespace creaseline {

// ---- Limits ------------------------------------------------------------------------------------

inline constexpr std::size_t kDeepestNesting = 64;
inline constexpr std::size_t kMostValues = 2'000'000;  // values in one document
inline constexpr std::size_t kLongestLabel = 500;      // characters of a name or identifier
inline constexpr std::size_t kLongestProse = 5'000;    // characters of a note
inline constexpr double kHeaviestFabricGramsPerSquareMetre = 5'000.0;
inline constexpr Length kLargestPart = Length::fromMm(5'000.0);  // garment, frame, design

// ---- The parsed document -----------------------------------------------------------------------

// A number with its digits, which may be more than a double holds: unknown keys are kept on saving.
struct JsonNumber {
  double value = 0.0;
  std::string text;
  bool operator==(const JsonNumber&) const = default;
};
struct JsonMember;
struct JsonNode {
  using Array = std::vector<JsonNode>;
  using Object = std::vector<JsonMember>;  // in file order, keys distinct
  std::variant<std::monostate, bool, JsonNumber, std::string, Array, Object> content;
};
struct JsonMember {
  std::string key;
  JsonNode value;
};

// Parses RFC 8259 JSON. Throws InputError with line and column for syntax errors, malformed
// UTF-8, too deep nesting and too many values, and with the pointer for a key that occurs twice.
[[nodiscard]] JsonNode parseJson(std::string_view text, const std::string& file,
                                 std::size_t mostValues = kMostValues);

// ---- Reading -----------------------------------------------------------------------------------

// What one load gathers over all files it reads.
struct Reading {
  std::vector<LoadNote> notes;
  std::vector<std::filesystem::path> files;
  // Unknown keys are errors instead of notes: for shipped rules, where a note would be lost.
  bool strict = false;
  // What an order in the making may still lack: blanks, designs, lines, sizes, placements.
  bool draft = false;
  // Every document read, in that order: what a saved file is compared and merged with.
  std::vector<OriginalFile> documents;
  [[nodiscard]] std::size_t least() const { return draft ? 0 : 1; }
};

class JsonObject;

// One value of a document. Cheap to copy apart from its pointer text; valid while the document is.
class JsonCursor {
 public:
  struct Source {
    std::filesystem::path path;
    Reading* reading = nullptr;
  };

  JsonCursor(const Source& source, const JsonNode& node, std::string where)
      : source_(&source), node_(&node), where_(std::move(where)) {}

  [[nodiscard]] std::string file() const { return source_->path.string(); }
  [[nodiscard]] std::filesystem::path folder() const { return source_->path.parent_path(); }
  // The JSON pointer; "top level" for the whole document.
  [[nodiscard]] std::string where() const { return where_.empty() ? worded("top level") : where_; }
  [[nodiscard]] Reading& reading() const { return *source_->reading; }

  [[nodiscard]] bool isText() const { return std::holds_alternative<std::string>(node_->content); }
  [[nodiscard]] bool isNumber() const { return std::holds_alternative<JsonNumber>(node_->content); }
  [[nodiscard]] bool isNull() const {
    return std::holds_alternative<std::monostate>(node_->content);
  }
  [[nodiscard]] bool isEmptyText() const;
  [[nodiscard]] bool isObject() const;
  // The value as a message shows it.
  [[nodiscard]] std::string shown() const;

  [[nodiscard]] std::string label() const;  // one line, not empty, at most kLongestLabel
  // label(), in the language spoken if the file is one of the program's own.
  [[nodiscard]] std::string ownLabel() const;
  [[nodiscard]] std::string prose() const;  // may be empty, may hold line breaks
  // Any text of any length, for files that the program itself writes.
  [[nodiscard]] std::string anyText() const;
  [[nodiscard]] bool boolean() const;
  [[nodiscard]] double number(double least, double most) const;  // both ends included
  [[nodiscard]] int integer(int least, int most) const;          // both ends included
  [[nodiscard]] Length length(Length least, Length most) const;  // both ends included
  [[nodiscard]] Length positiveLength(Length most = kLargestPart) const;
  [[nodiscard]] Angle angle() const;
  [[nodiscard]] ArealWeight weight() const;  // more than nothing
  [[nodiscard]] Colour colour() const;
  template <class E>
  [[nodiscard]] E enumerator() const;
  template <class Id>
  [[nodiscard]] Id identifier() const {
    return Id(label());
  }

  // The elements of a list of at least `least` and at most `most`; `ofWhat` names them in the
  // plural for the message, toBeWorded().
  [[nodiscard]] std::vector<JsonCursor> items(std::size_t least, std::size_t most,
                                              std::string_view ofWhat) const;
  [[nodiscard]] JsonObject object() const;
  // All members of an object whose keys are data, such as sizes; the key is the last part of the
  // cursor's pointer.
  [[nodiscard]] std::vector<std::pair<std::string, JsonCursor>> members(
      std::size_t most, std::string_view ofWhat, std::size_t least = 1) const;

  // A list of distinct enumerators, names or identifiers.
  template <class E>
  [[nodiscard]] std::vector<E> enumerators(std::size_t least = 1) const;
  template <class Id>
  [[nodiscard]] std::vector<Id> identifiers() const;

  [[noreturn]] void fail(std::string found, std::string expected) const;
  // The value itself is what was found.
  [[noreturn]] void failShown(std::string expected) const { fail(shown(), std::move(expected)); }
  // The length is what was found: said in the units that spokenUnits() ask for, else as it stands.
  [[noreturn]] void failLength(Length found, std::string expected) const;
  void note(std::string text) const;

 private:
  friend class JsonObject;
  const Source* source_;
  const JsonNode* node_;
  std::string where_;
};

// An object whose keys are fixed. It remembers which keys were asked for; finish() remarks on the
// others.
class JsonObject {
 public:
  explicit JsonObject(const JsonCursor& cursor, const JsonNode::Object& members)
      : cursor_(cursor), members_(&members) {}
  [[nodiscard]] const JsonCursor& cursor() const { return cursor_; }
  [[nodiscard]] JsonCursor at(std::string_view key);                   // must be there
  [[nodiscard]] std::optional<JsonCursor> find(std::string_view key);  // may be absent
  // Text that may be absent, and is empty then.
  [[nodiscard]] std::string labelOrEmpty(std::string_view key);
  [[nodiscard]] std::string proseOrEmpty(std::string_view key);
  // A note for each key that nobody asked for (an error where reading is strict).
  void finish() const;

 private:
  JsonCursor cursor_;
  const JsonNode::Object* members_;
  std::vector<std::string> asked_;
};

// Reads and parses a file and adds it to the reading's list.
class JsonDocument {
 public:
  JsonDocument(const std::filesystem::path& path, Reading& reading);
  [[nodiscard]] JsonCursor root() const { return {*source_, *root_, ""}; }

 private:
  std::unique_ptr<JsonCursor::Source> source_;
  std::shared_ptr<const JsonNode> root_;
};

// Refuses the second of two equal names; `whatIsIt` as in "frame id", toBeWorded().
void requireDistinct(const std::vector<std::string>& before, const std::string& name,
                     const JsonCursor& at, std::string_view whatIsIt);

// ---- Templates ---------------------------------------------------------------------------------

template <class E>
std::vector<std::string> namesOf() {
  std::vector<std::string> names;
  for (const auto& entry : EnumNames<E>::names) {
    names.emplace_back(entry.second);
  }
  return names;
}

template <class E>
E JsonCursor::enumerator() const {
  const std::string text = label();
  if (const std::optional<E> value = enumFromName<E>(text)) {
    return *value;
  }
  failShown(offer(text, namesOf<E>()));
}

template <class E>
std::vector<E> JsonCursor::enumerators(std::size_t least) const {
  std::vector<E> values;
  std::vector<std::string> names;
  for (const JsonCursor& item : items(least, 100, toBeWorded("names"))) {
    values.push_back(item.enumerator<E>());
    requireDistinct(names, item.label(), item, toBeWorded("name"));
    names.push_back(item.label());
  }
  return values;
}

template <class Id>
std::vector<Id> JsonCursor::identifiers() const {
  std::vector<Id> values;
  std::vector<std::string> names;
  for (const JsonCursor& item : items(1, 1'000, toBeWorded("names"))) {
    values.push_back(item.identifier<Id>());
    requireDistinct(names, item.label(), item, toBeWorded("name"));
    names.push_back(item.label());
  }
  return values;
}

}  // namespace creaseline
