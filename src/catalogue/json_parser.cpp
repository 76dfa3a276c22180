// SPDX-License-Identifier: MIT
// Parses JSON text into JsonNode. The only file that includes the JSON library, which is used as
// an event parser: its tree would keep the last of two equal keys without a word.
#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>

#include "base/worded.h"
#include "catalogue/json_reader.h"

namespace creaseline {

namespace {

std::string lineAndColumn(std::string_view text, std::size_t position) {
  const std::string_view before = text.substr(0, std::min(position, text.size()));
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const std::size_t lastBreak = before.rfind('\n');
  const std::string_view lineStart =
      lastBreak == std::string_view::npos ? before : before.substr(lastBreak + 1);
  return worded("line {}, column {}", line, std::max<std::size_t>(1, characterCount(lineStart)));
}

// The library's message is "[id] parse error at line 1, column 5: syntax error while parsing
// object - unexpected '}'; expected string literal": only its last two parts are for people.
struct SyntaxMessage {
  std::string found;
  std::string expected;
};

// Names of tokens and problems as the library words them; others stay in its words.
constexpr std::string_view kLibraryWords[] = {
    toBeWorded("true literal"),
    toBeWorded("false literal"),
    toBeWorded("null literal"),
    toBeWorded("string literal"),
    toBeWorded("number literal"),
    toBeWorded("end of input"),
    toBeWorded("'[', '{', or a literal"),
    toBeWorded("object key"),
    toBeWorded("invalid literal"),
    toBeWorded("invalid string: missing closing quote"),
    toBeWorded("invalid string: forbidden character after backslash"),
    toBeWorded("invalid string: ill-formed UTF-8 byte"),
};

std::string saidByLibrary(std::string_view text) {
  const bool known = std::find(std::begin(kLibraryWords), std::end(kLibraryWords), text) !=
                     std::end(kLibraryWords);
  return known ? inLanguage(text) : std::string(text);
}

// "unexpected '}'", "invalid literal; last read: 'nul}'".
std::string problemByLibrary(const std::string& message) {
  constexpr std::string_view kUnexpected = "unexpected ";
  constexpr std::string_view kLastRead = "; last read: ";
  if (const std::size_t at = message.find(kLastRead); at != std::string::npos) {
    return worded("{}; last read: {}", saidByLibrary(message.substr(0, at)),
                  message.substr(at + kLastRead.size()));
  }
  if (message.starts_with(kUnexpected)) {
    return worded("unexpected {}", saidByLibrary(message.substr(kUnexpected.size())));
  }
  return saidByLibrary(message);
}

SyntaxMessage syntaxMessage(std::string message) {
  const auto dropThrough = [&](std::string_view mark) {
    if (const std::size_t at = message.find(mark); at != std::string::npos) {
      message.erase(0, at + mark.size());
    }
  };
  dropThrough("] ");
  if (message.rfind("parse error", 0) == 0) {
    dropThrough(": ");
  }
  if (message.rfind("syntax error", 0) == 0) {
    dropThrough(" - ");
  }
  SyntaxMessage result{{}, worded("JSON as RFC 8259 has it")};
  constexpr std::string_view kExpected = "; expected ";
  if (const std::size_t at = message.rfind(kExpected); at != std::string::npos) {
    result.expected = worded("{} here", saidByLibrary(message.substr(at + kExpected.size())));
    message.erase(at);
  }
  result.found = printable(problemByLibrary(message), 120);
  return result;
}

class TreeBuilder : public nlohmann::json::json_sax_t {
 public:
  TreeBuilder(std::string_view text, const std::string& file, std::size_t mostValues)
      : text_(text), file_(file), mostValues_(mostValues) {}

  bool null() override { return add(JsonNode{}); }
  bool boolean(bool value) override { return add(JsonNode{value}); }
  bool number_integer(number_integer_t value) override {
    return add(JsonNode{JsonNumber{static_cast<double>(value), std::to_string(value)}});
  }
  bool number_unsigned(number_unsigned_t value) override {
    return add(JsonNode{JsonNumber{static_cast<double>(value), std::to_string(value)}});
  }
  bool number_float(number_float_t value, const string_t& text) override {
    return add(JsonNode{JsonNumber{value, text}});
  }
  bool string(string_t& value) override { return add(JsonNode{std::move(value)}); }
  bool binary(binary_t& /*value*/) override { return false; }  // not part of JSON text
  bool start_object(std::size_t /*size*/) override { return open(JsonNode{JsonNode::Object{}}); }
  bool start_array(std::size_t /*size*/) override { return open(JsonNode{JsonNode::Array{}}); }
  bool end_array() override {
    open_.pop_back();
    return true;
  }
  bool end_object() override {
    refuseDuplicateKeys(std::get<JsonNode::Object>(open_.back()->content));
    open_.pop_back();
    return true;
  }
  bool key(string_t& name) override {
    std::get<JsonNode::Object>(open_.back()->content).push_back({std::move(name), {}});
    return true;
  }
  bool parse_error(std::size_t position, const std::string& /*token*/,
                   const nlohmann::detail::exception& error) override {
    SyntaxMessage message = syntaxMessage(error.what());
    throw InputError({file_, lineAndColumn(text_, position), std::move(message.found),
                      std::move(message.expected)});
  }

  JsonNode take() { return std::move(root_); }

 private:
  // Containers are filled in place; a parent does not grow while a child is open, so the
  // pointers on the stack stay good.
  JsonNode* place(JsonNode&& node) {
    if (++count_ > mostValues_) {
      throw InputError(
          {file_, pointer(), worded("more than {} values", mostValues_), worded("a smaller file")});
    }
    if (open_.empty()) {
      root_ = std::move(node);
      return &root_;
    }
    if (auto* array = std::get_if<JsonNode::Array>(&open_.back()->content)) {
      array->push_back(std::move(node));
      return &array->back();
    }
    JsonNode& value = std::get<JsonNode::Object>(open_.back()->content).back().value;
    value = std::move(node);
    return &value;
  }
  bool add(JsonNode&& node) {
    place(std::move(node));
    return true;
  }
  bool open(JsonNode&& node) {
    if (open_.size() == kDeepestNesting) {
      throw InputError({file_, printable(pointer(), 200),
                        worded("nesting deeper than {} levels", kDeepestNesting),
                        worded("a file as the format describes it")});
    }
    open_.push_back(place(std::move(node)));
    return true;
  }

  // Pointer to the innermost open container.
  [[nodiscard]] std::string pointer() const {
    std::string result;
    for (std::size_t i = 0; i + 1 < open_.size(); ++i) {
      if (const auto* array = std::get_if<JsonNode::Array>(&open_[i]->content)) {
        result += fmt::format("/{}", array->size() - 1);
      } else {
        result += "/" + printable(std::get<JsonNode::Object>(open_[i]->content).back().key);
      }
    }
    return result.empty() ? worded("top level") : result;
  }

  void refuseDuplicateKeys(const JsonNode::Object& members) const {
    std::vector<std::string_view> keys;
    keys.reserve(members.size());
    for (const JsonMember& member : members) {
      keys.emplace_back(member.key);
    }
    std::sort(keys.begin(), keys.end());
    const auto twice = std::adjacent_find(keys.begin(), keys.end());
    if (twice != keys.end()) {
      throw InputError({file_, pointer(), worded("the key {} twice", inQuotes(*twice)),
                        worded("every key once in an object")});
    }
  }

  std::string_view text_;
  const std::string& file_;
  std::size_t mostValues_;
  JsonNode root_;
  std::vector<JsonNode*> open_;
  std::size_t count_ = 0;
};

}  // namespace

JsonNode parseJson(std::string_view text, const std::string& file, std::size_t mostValues) {
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) {
    throw InputError(
        {file, lineAndColumn(text, 0), worded("an empty file"), worded("a JSON object in braces")});
  }
  TreeBuilder builder(text, file, mostValues);
  if (!nlohmann::json::sax_parse(text.begin(), text.end(), &builder)) {
    throw InputError(
        {file, lineAndColumn(text, 0), worded("text that is not JSON"), worded("a JSON object")});
  }
  return builder.take();
}

}  // namespace creaseline
