// SPDX-License-Identifier: MIT
// The one writer of JSON files that are read again. It writes what it is told in the order it is
// told, and takes over from the text that was read before: keys that nobody asked about, and the
// user's way of writing a value that has not changed ("1/4 in").
#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "catalogue/json_reader.h"
#include "creaseline/base/units.h"

namespace creaseline {

// Two spaces a level; a list or object stands on one line where that has at most 100 columns; ends
// with a line break.
[[nodiscard]] std::string jsonText(const JsonNode& top);

[[nodiscard]] JsonNode textNode(std::string text);
[[nodiscard]] JsonNode numberNode(double value);  // shortest digits that give the same value
[[nodiscard]] JsonNode numberNode(int value);
[[nodiscard]] bool sameNode(const JsonNode& a, const JsonNode& b);

// The member of that key, or null; null for what is no object, and for null itself.
[[nodiscard]] const JsonNode* memberOf(const JsonNode* object, std::string_view key);
[[nodiscard]] const JsonNode::Array* arrayOf(const JsonNode* node);
// The text of that member, or "".
[[nodiscard]] std::string textOf(const JsonNode* object, std::string_view key);

// True if the old text is there and `read` takes `value` from it.
template <class T, class Read>
[[nodiscard]] bool readsAs(const JsonNode* before, const T& value, Read read) {
  if (before == nullptr) {
    return false;
  }
  Reading scratch;
  const JsonCursor::Source source{"", &scratch};
  try {
    return read(JsonCursor(source, *before, "")) == value;
  } catch (const InputError&) {
    return false;
  }
}
// The old text if it reads as `value`, else a new one.
template <class T, class Read, class Make>
[[nodiscard]] JsonNode keptOr(const JsonNode* before, const T& value, Read read, Make make) {
  return readsAs(before, value, read) ? *before : make();
}

[[nodiscard]] JsonNode lengthNode(const JsonNode* before, Length value, LengthUnit unit);
[[nodiscard]] JsonNode angleNode(const JsonNode* before, Angle value);
[[nodiscard]] JsonNode weightNode(const JsonNode* before, ArealWeight value);
[[nodiscard]] JsonNode colourNode(const JsonNode* before, Colour value);
[[nodiscard]] JsonNode amountNode(const JsonNode* before, double value);
[[nodiscard]] JsonNode amountNode(const JsonNode* before, int value);

// An object with fixed keys. Every key that the reader knows must be put or left out; all others
// of the old object are kept, each behind the key that it stood behind.
class JsonObjectWriter {
 public:
  explicit JsonObjectWriter(const JsonNode* before) : before_(before) {}
  [[nodiscard]] const JsonNode* before() const { return before_; }
  [[nodiscard]] const JsonNode* before(std::string_view key) const {
    return memberOf(before_, key);
  }

  void put(std::string_view key, JsonNode value);
  void leaveOut(std::string_view key) { known_.emplace_back(key); }
  // Left out where it says nothing, unless the old text said the same.
  void putUnless(bool saysNothing, std::string_view key, JsonNode value);

  void text(std::string_view key, const std::string& value) { put(key, textNode(value)); }
  void textIfAny(std::string_view key, const std::string& value) {
    putUnless(value.empty(), key, textNode(value));
  }
  template <class E>
  void enumerator(std::string_view key, E value) {
    text(key, std::string(nameOf(value)));
  }
  template <class E>
  void enumerators(std::string_view key, const std::vector<E>& values) {
    JsonNode::Array names;
    for (const E value : values) {
      names.push_back(textNode(std::string(nameOf(value))));
    }
    putUnless(values.empty(), key, JsonNode{std::move(names)});
  }
  template <class Id>
  void identifiers(std::string_view key, const std::vector<Id>& values) {
    JsonNode::Array names;
    for (const Id& value : values) {
      names.push_back(textNode(value.text()));
    }
    putUnless(values.empty(), key, JsonNode{std::move(names)});
  }

  [[nodiscard]] JsonNode take();

 private:
  const JsonNode* before_;
  JsonNode::Object members_;
  std::vector<std::string> known_;
};

// Finds for each entry of a list the object that it was before, so that what is kept moves with
// it. `names` tell entries apart, the surest name first; entries that no name finds are taken to
// be the ones in their place if the list is as long as before.
using EntryNames = std::vector<std::string>;
[[nodiscard]] std::vector<const JsonNode*> entriesBefore(
    const JsonNode* list, const std::vector<EntryNames>& names,
    const std::function<EntryNames(const JsonNode&)>& namesBefore);

// A list of objects: each entry is written over the one that it was before.
template <class Entry, class Names, class Write>
[[nodiscard]] JsonNode listNode(const JsonNode* before, const std::vector<Entry>& entries,
                                Names namesOfEntry,
                                const std::function<EntryNames(const JsonNode&)>& namesBefore,
                                Write write) {
  std::vector<EntryNames> names;
  names.reserve(entries.size());
  for (const Entry& entry : entries) {
    names.push_back(namesOfEntry(entry));
  }
  const std::vector<const JsonNode*> old = entriesBefore(before, names, namesBefore);
  JsonNode::Array list;
  list.reserve(entries.size());
  for (std::size_t i = 0; i < entries.size(); ++i) {
    list.push_back(write(entries[i], old[i]));
  }
  return JsonNode{std::move(list)};
}

}  // namespace creaseline
