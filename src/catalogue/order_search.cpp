// SPDX-License-Identifier: MIT
// Search over order files. What is wrong in a file is no error here but a note.
#include <algorithm>
#include <map>

#include "base/system_reason.h"
#include "base/worded.h"
#include "catalogue/file_kind.h"
#include "catalogue/folded_text.h"
#include "catalogue/json_writer.h"
#include "creaseline/base/file.h"
#include "creaseline/catalogue/order_library.h"

namespace creaseline {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view kOrderEnding = ".order.json";
constexpr int kDeepestFolder = 8;
constexpr std::size_t kMostFiles = 20'000;

struct BlankHead {
  std::string name, kind;
};

class Search {
 public:
  explicit Search(std::vector<std::string> words) : words_(std::move(words)) {}

  FoundOrders run(const fs::path& folder) {
    std::vector<fs::path> files = orderFiles(folder);
    std::sort(files.begin(), files.end());
    for (const fs::path& file : files) {
      try {
        OrderHead head = headOf(file);
        if (matches(head)) {
          found_.orders.push_back(std::move(head));
        }
      } catch (const InputError& error) {
        const InputError::Details& details = error.details();
        note(file, details.where,
             worded("not read: found {}, expected {}", details.found, details.expected));
      }
    }
    return std::move(found_);
  }

  OrderHead headOf(const fs::path& file) {
    Reading reading;
    const JsonDocument document(file, reading);
    JsonObject top = document.root().object();
    requireHead(top, FileKind::Order);
    OrderHead head;
    head.file = file;
    head.id = top.at("id").label();
    head.title = top.labelOrEmpty("title");
    head.customer = top.labelOrEmpty("customer");
    head.due = top.labelOrEmpty("due");
    const JsonNode* root = reading.documents.front().text.get();
    const JsonNode::Array* blanks = arrayOf(memberOf(root, "blanks"));
    for (const JsonNode& blank : blanks == nullptr ? JsonNode::Array() : *blanks) {
      addGarment(head, blankHead(blank, file));
    }
    head.quantity = quantityOf(root);
    return head;
  }

 private:
  void note(const fs::path& file, const std::string& where, std::string text) {
    found_.notes.push_back({file.string(), where, std::move(text)});
  }

  std::vector<fs::path> orderFiles(const fs::path& folder) {
    std::vector<fs::path> files;
    std::error_code error;
    fs::recursive_directory_iterator entry(folder, fs::directory_options::skip_permission_denied,
                                           error);
    for (const fs::recursive_directory_iterator end; !error && entry != end;
         entry.increment(error)) {
      const std::string name = entry->path().filename().string();
      std::error_code ignored;
      const bool isFolder = entry->is_directory(ignored);
      if (isFolder && (name.front() == '.' || entry.depth() + 1 >= kDeepestFolder)) {
        entry.disable_recursion_pending();
      }
      if (isFolder || name.size() <= kOrderEnding.size() ||
          name.substr(name.size() - kOrderEnding.size()) != kOrderEnding) {
        continue;
      }
      if (files.size() == kMostFiles) {
        note(folder, "", worded("more orders than are searched"));
        break;
      }
      files.push_back(entry->path());
    }
    if (error) {
      note(folder, "", worded("not searched to the end: {}", systemReason(error)));
    }
    return files;
  }

  static void addGarment(OrderHead& head, const BlankHead& blank) {
    if (!blank.name.empty()) {
      head.garments.push_back(blank.name);
    }
    if (!blank.kind.empty() &&
        std::find(head.kinds.begin(), head.kinds.end(), blank.kind) == head.kinds.end()) {
      head.kinds.push_back(blank.kind);
    }
  }

  // Many orders share a blank, so its file is read once.
  const BlankHead& blankHead(const JsonNode& blank, const fs::path& order) {
    const auto* reference = std::get_if<std::string>(&blank.content);
    if (reference == nullptr) {
      inPlace_ = {textOf(&blank, "name"), textOf(&blank, "kind")};
      return inPlace_;
    }
    const fs::path file = (order.parent_path() / *reference).lexically_normal();
    const auto known = blanks_.find(file);
    if (known != blanks_.end()) {
      return known->second;
    }
    BlankHead head;
    try {
      const JsonNode root = parseJson(readFile(file), file.string());
      head = {textOf(&root, "name"), textOf(&root, "kind")};
    } catch (const InputError&) {
      note(order, "", worded("the blank {} cannot be read", inQuotes(*reference)));
    }
    return blanks_.emplace(file, std::move(head)).first->second;
  }

  static int quantityOf(const JsonNode* root) {
    double sum = 0.0;
    const JsonNode::Array* lines = arrayOf(memberOf(root, "lines"));
    for (const JsonNode& line : lines == nullptr ? JsonNode::Array() : *lines) {
      const JsonNode* sizes = memberOf(&line, "sizes");
      const auto* members =
          sizes == nullptr ? nullptr : std::get_if<JsonNode::Object>(&sizes->content);
      for (const JsonMember& size : members == nullptr ? JsonNode::Object() : *members) {
        const auto* number = std::get_if<JsonNumber>(&size.value.content);
        sum += number == nullptr ? 0.0 : std::clamp(number->value, 0.0, 1.0e6);
      }
    }
    return static_cast<int>(std::min(sum, 1.0e9));
  }

  [[nodiscard]] bool matches(const OrderHead& head) const {
    std::string text = head.id + '\n' + head.title + '\n' + head.customer;
    for (const auto* more : {&head.garments, &head.kinds}) {
      for (const std::string& each : *more) {
        text += '\n' + each;
      }
    }
    const std::string folded = foldedText(text);
    return std::all_of(words_.begin(), words_.end(), [&](const std::string& word) {
      return folded.find(word) != std::string::npos;
    });
  }

  std::vector<std::string> words_;
  std::map<fs::path, BlankHead> blanks_;
  BlankHead inPlace_;
  FoundOrders found_;
};

// Parted by spaces only: "2026-118" and "t-shirt" are one word.
std::vector<std::string> wordsOf(const std::string& text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : foldedText(text) + ' ') {
    if (c != ' ' && c != '\t' && c != '\n') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  return words;
}

}  // namespace

FoundOrders findOrders(const fs::path& folder, const std::string& words) {
  return Search(wordsOf(words)).run(folder);
}

std::optional<OrderHead> readOrderHead(const fs::path& file) {
  try {
    return Search({}).headOf(file);
  } catch (const InputError&) {
    return std::nullopt;
  }
}

}  // namespace creaseline
