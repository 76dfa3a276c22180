// SPDX-License-Identifier: MIT
// JSON as people read it, and the merging with what was read before.
#include "catalogue/json_writer.h"

#include <fmt/format.h>

#include <algorithm>
#include <deque>

namespace creaseline {

namespace {

constexpr std::size_t kColumns = 100;
constexpr std::size_t kIndent = 2;

// RFC 8259, section 7: what must be escaped, and nothing else.
std::string escaped(std::string_view text) {
  std::string result = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') {
      result += '\\';
      result += c;
    } else if (c == '\n') {
      result += "\\n";
    } else if (c == '\t') {
      result += "\\t";
    } else if (static_cast<unsigned char>(c) < 0x20U) {
      result += fmt::format("\\u{:04x}", static_cast<unsigned>(c));
    } else {
      result += c;
    }
  }
  return result + '"';
}

class Printer {
 public:
  std::string print(const JsonNode& top) {
    const auto* object = std::get_if<JsonNode::Object>(&top.content);
    if (object != nullptr && !object->empty()) {
      broken(*object, 0);  // a file is never a single line
    } else {
      value(top, 0, 0);
    }
    return std::move(text_) + "\n";
  }

 private:
  static std::string onOneLine(const JsonNode& node) {
    struct Line {
      std::string operator()(std::monostate) const { return "null"; }
      std::string operator()(bool value) const { return value ? "true" : "false"; }
      std::string operator()(const JsonNumber& value) const { return value.text; }
      std::string operator()(const std::string& value) const { return escaped(value); }
      std::string operator()(const JsonNode::Array& list) const {
        std::string line = "[";
        for (const JsonNode& item : list) {
          line += (line.size() > 1 ? ", " : "") + onOneLine(item);
        }
        return line + "]";
      }
      std::string operator()(const JsonNode::Object& object) const {
        std::string line = "{";
        for (const JsonMember& member : object) {
          line +=
              (line.size() > 1 ? ", " : "") + escaped(member.key) + ": " + onOneLine(member.value);
        }
        return line + "}";
      }
    };
    return std::visit(Line{}, node.content);
  }

  // Fewer columns than the text on one line has for sure; spares building lines that cannot fit.
  static bool mayFit(const JsonNode& node) {
    if (const auto* list = std::get_if<JsonNode::Array>(&node.content)) {
      return list->size() * 3 < kColumns;
    }
    const auto* object = std::get_if<JsonNode::Object>(&node.content);
    return object == nullptr || object->size() * 6 < kColumns;
  }

  // `before`: columns already on the line; one more follows for a comma.
  void value(const JsonNode& node, std::size_t depth, std::size_t before) {
    const auto* list = std::get_if<JsonNode::Array>(&node.content);
    const auto* object = std::get_if<JsonNode::Object>(&node.content);
    if (mayFit(node) || (list == nullptr && object == nullptr)) {
      const std::string line = onOneLine(node);
      if ((list == nullptr && object == nullptr) || before + characterCount(line) + 1 <= kColumns) {
        text_ += line;
        return;
      }
    }
    if (list != nullptr) {
      broken(*list, depth);
    } else {
      broken(*object, depth);
    }
  }
  void newLine(std::size_t depth) { text_ += "\n" + std::string(depth * kIndent, ' '); }
  void broken(const JsonNode::Array& list, std::size_t depth) {
    text_ += '[';
    for (std::size_t i = 0; i < list.size(); ++i) {
      text_ += i > 0 ? "," : "";
      newLine(depth + 1);
      value(list[i], depth + 1, (depth + 1) * kIndent);
    }
    newLine(depth);
    text_ += ']';
  }
  void broken(const JsonNode::Object& object, std::size_t depth) {
    text_ += '{';
    for (std::size_t i = 0; i < object.size(); ++i) {
      text_ += i > 0 ? "," : "";
      newLine(depth + 1);
      const std::string key = escaped(object[i].key) + ": ";
      text_ += key;
      value(object[i].value, depth + 1, (depth + 1) * kIndent + characterCount(key));
    }
    newLine(depth);
    text_ += '}';
  }

  std::string text_;
};

constexpr Length kAnyLength = Length::fromMm(Length::kLimitMm);

}  // namespace

std::string jsonText(const JsonNode& top) {
  return Printer().print(top);
}

JsonNode textNode(std::string text) {
  return JsonNode{std::move(text)};
}

JsonNode numberNode(double value) {
  return JsonNode{JsonNumber{value, fmt::format("{}", value)}};
}

JsonNode numberNode(int value) {
  return JsonNode{JsonNumber{static_cast<double>(value), fmt::format("{}", value)}};
}

bool sameNode(const JsonNode& a, const JsonNode& b) {
  if (a.content.index() != b.content.index()) {
    return false;
  }
  if (const auto* list = std::get_if<JsonNode::Array>(&a.content)) {
    const auto& other = std::get<JsonNode::Array>(b.content);
    return std::equal(list->begin(), list->end(), other.begin(), other.end(), sameNode);
  }
  if (const auto* object = std::get_if<JsonNode::Object>(&a.content)) {
    const auto& other = std::get<JsonNode::Object>(b.content);
    return std::equal(object->begin(), object->end(), other.begin(), other.end(),
                      [](const JsonMember& one, const JsonMember& two) {
                        return one.key == two.key && sameNode(one.value, two.value);
                      });
  }
  if (const auto* text = std::get_if<std::string>(&a.content)) {
    return *text == std::get<std::string>(b.content);
  }
  if (const auto* number = std::get_if<JsonNumber>(&a.content)) {
    return *number == std::get<JsonNumber>(b.content);
  }
  const auto* boolean = std::get_if<bool>(&a.content);
  return boolean == nullptr || *boolean == std::get<bool>(b.content);
}

const JsonNode* memberOf(const JsonNode* object, std::string_view key) {
  const auto* members =
      object == nullptr ? nullptr : std::get_if<JsonNode::Object>(&object->content);
  if (members == nullptr) {
    return nullptr;
  }
  const auto found = std::find_if(members->begin(), members->end(),
                                  [&](const JsonMember& member) { return member.key == key; });
  return found == members->end() ? nullptr : &found->value;
}

const JsonNode::Array* arrayOf(const JsonNode* node) {
  return node == nullptr ? nullptr : std::get_if<JsonNode::Array>(&node->content);
}

std::string textOf(const JsonNode* object, std::string_view key) {
  const JsonNode* member = memberOf(object, key);
  const auto* text = member == nullptr ? nullptr : std::get_if<std::string>(&member->content);
  return text == nullptr ? std::string() : *text;
}

JsonNode lengthNode(const JsonNode* before, Length value, LengthUnit unit) {
  return keptOr(
      before, value, [](const JsonCursor& at) { return at.length(-kAnyLength, kAnyLength); },
      [&] { return textNode(exactText(value, unit)); });
}

JsonNode angleNode(const JsonNode* before, Angle value) {
  return keptOr(
      before, value, [](const JsonCursor& at) { return at.angle(); },
      [&] { return textNode(exactText(value)); });
}

JsonNode weightNode(const JsonNode* before, ArealWeight value) {
  return keptOr(
      before, value, [](const JsonCursor& at) { return at.weight(); },
      [&] { return textNode(exactText(value)); });
}

JsonNode colourNode(const JsonNode* before, Colour value) {
  return keptOr(
      before, value, [](const JsonCursor& at) { return at.colour(); },
      [&] { return textNode(colourText(value)); });
}

JsonNode amountNode(const JsonNode* before, double value) {
  return keptOr(
      before, value, [&](const JsonCursor& at) { return at.number(value, value); },
      [&] { return numberNode(value); });
}

JsonNode amountNode(const JsonNode* before, int value) {
  return keptOr(
      before, value, [&](const JsonCursor& at) { return at.integer(value, value); },
      [&] { return numberNode(value); });
}

void JsonObjectWriter::put(std::string_view key, JsonNode value) {
  known_.emplace_back(key);
  members_.push_back({std::string(key), std::move(value)});
}

void JsonObjectWriter::putUnless(bool saysNothing, std::string_view key, JsonNode value) {
  const JsonNode* old = before(key);
  if (saysNothing && (old == nullptr || !sameNode(*old, value))) {
    leaveOut(key);
  } else {
    put(key, std::move(value));
  }
}

JsonNode JsonObjectWriter::take() {
  const auto* old = before_ == nullptr ? nullptr : std::get_if<JsonNode::Object>(&before_->content);
  if (old == nullptr) {
    return JsonNode{std::move(members_)};
  }
  const auto isKnown = [&](const std::string& key) {
    return std::find(known_.begin(), known_.end(), key) != known_.end();
  };
  JsonNode::Object merged;
  std::map<std::string, JsonNode::Object> behind;  // key, and what is kept behind it
  std::string last;                                // known key in front; "": none
  for (const JsonMember& member : *old) {
    if (!isKnown(member.key)) {
      behind[last].push_back(member);
    } else if (std::any_of(members_.begin(), members_.end(),
                           [&](const JsonMember& each) { return each.key == member.key; })) {
      last = member.key;
    }
  }
  merged = std::move(behind[""]);
  for (JsonMember& member : members_) {
    JsonNode::Object kept = std::move(behind[member.key]);
    merged.push_back(std::move(member));
    std::move(kept.begin(), kept.end(), std::back_inserter(merged));
  }
  return JsonNode{std::move(merged)};
}

std::vector<const JsonNode*> entriesBefore(
    const JsonNode* list, const std::vector<EntryNames>& names,
    const std::function<EntryNames(const JsonNode&)>& namesBefore) {
  std::vector<const JsonNode*> result(names.size(), nullptr);
  const JsonNode::Array* old = arrayOf(list);
  if (old == nullptr || names.empty()) {
    return result;
  }
  std::vector<EntryNames> oldNames;
  oldNames.reserve(old->size());
  std::transform(old->begin(), old->end(), std::back_inserter(oldNames), namesBefore);
  std::vector<bool> used(old->size(), false);
  for (std::size_t level = 0; level < names.front().size(); ++level) {
    std::map<std::string, std::deque<std::size_t>> free;
    for (std::size_t j = 0; j < old->size(); ++j) {
      if (!used[j] && !oldNames[j][level].empty()) {
        free[oldNames[j][level]].push_back(j);
      }
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
      const auto found = result[i] == nullptr ? free.find(names[i][level]) : free.end();
      if (found != free.end() && !found->second.empty()) {
        result[i] = &(*old)[found->second.front()];
        used[found->second.front()] = true;
        found->second.pop_front();
      }
    }
  }
  for (std::size_t i = 0; i < names.size() && names.size() == old->size(); ++i) {
    if (result[i] == nullptr && !used[i]) {
      result[i] = &(*old)[i];
    }
  }
  return result;
}

}  // namespace creaseline
