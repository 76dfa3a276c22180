// SPDX-License-Identifier: MIT
// Which files a save writes, and that they are still the ones that were read.
#include "creaseline/catalogue/save.h"

#include "catalogue/writers.h"
#include "creaseline/base/digest.h"
#include "creaseline/base/error.h"

namespace creaseline {

namespace {

namespace fs = std::filesystem;

Writing writingOf(const OriginalFile& original, const SaveStyle& style) {
  const fs::path from = original.file.parent_path();
  return {style.lengths, from, style.folder.empty() ? from : style.folder};
}

JsonNode nodeOf(const Order& order, const Original<Order>& original, const Writing& writing) {
  return orderNode(order, original, writing, false);
}
JsonNode nodeOf(const Shop& shop, const Original<Shop>& original, const Writing& writing) {
  return shopNode(shop, original.text.get(), writing);
}
JsonNode nodeOf(const Blank& blank, const Original<Blank>& original, const Writing& writing) {
  return blankNode(blank, {original.text.get(), original.value.get()}, writing, true);
}
JsonNode nodeOf(const Design& design, const Original<Design>& original, const Writing& writing) {
  return designNode(design, {original.text.get(), original.value.get()}, writing, true);
}

// One file to be written.
struct Page {
  fs::path file;
  JsonNode node;
  std::string text;
  FileStamp expected;
  [[nodiscard]] bool changes() const { return contentDigest(text) != expected.digest; }
};

template <class T>
Page pageOf(const fs::path& file, const T& value, const Original<T>& original,
            const SaveStyle& style, const FileStamp& replaced) {
  Writing writing = writingOf(original, style);
  writing.to = file.parent_path();
  JsonNode node = nodeOf(value, original, writing);
  std::string text = jsonText(node);
  std::error_code error;
  const bool ownFile = original.text != nullptr &&
                       (original.file == file || fs::equivalent(original.file, file, error));
  return {file, std::move(node), std::move(text), ownFile ? original.stamp : replaced};
}

void requireUnchanged(const Page& page) {
  if (!stillSays(page.file, page.expected)) {
    throw ChangedOutside(page.file.string());
  }
}

void write(const Page& page, std::vector<fs::path>& written) {
  if (page.changes()) {
    writeFileIfUnchanged(page.file, page.text, page.expected);
    written.push_back(page.file);
  }
}

template <class T>
Original<T> originalOfPage(Page page, T value) {
  Original<T> original;
  original.file = std::move(page.file);
  original.stamp = {contentDigest(page.text)};
  original.text = std::make_shared<const JsonNode>(std::move(page.node));
  original.value = std::make_shared<const T>(std::move(value));
  return original;
}

// The design of a file that moves from one folder to another.
Design moved(Design design, const fs::path& from, const fs::path& to) {
  if (!design.outlineFile.empty()) {
    design.outlineFile = Writing{{}, from, to}.reference(design.outlineFile);
  }
  return design;
}
template <class T>
T moved(T value, const fs::path& /*from*/, const fs::path& /*to*/) {
  return value;
}

template <class T>
Saved<T> save(const fs::path& file, const T& value, const Original<T>& original,
              const SaveStyle& style, const FileStamp& replaced) {
  Page page = pageOf(file, value, original, style, replaced);
  requireUnchanged(page);
  Saved<T> saved;
  write(page, saved.written);
  const fs::path from = writingOf(original, style).from;
  saved.value = original.text == nullptr ? value : moved(value, from, file.parent_path());
  saved.original = originalOfPage(std::move(page), saved.value);
  return saved;
}

// A blank or design in a file of its own, with what it is now.
struct OwnFile {
  std::size_t index = 0;  // in the order
  Page page;
};

template <class Entry>
std::vector<OwnFile> ownFiles(const std::vector<Entry>& entries,
                              const std::vector<Original<Entry>>& originals,
                              const std::vector<Entry>* before, const SaveStyle& style) {
  std::vector<OwnFile> files;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const Original<Entry>* original = originalOf(originals, entries, entries[i], before);
    if (original != nullptr) {
      files.push_back({i, *original->value == entries[i]
                              ? Page{original->file, *original->text, {}, original->stamp}
                              : pageOf(original->file, entries[i], *original, style, {})});
    }
  }
  return files;
}

// Those that have no text are as they were.
template <class Entry>
void writeOwnFiles(std::vector<OwnFile>& files, const std::vector<Entry>& entries,
                   std::vector<fs::path>& written, std::vector<Original<Entry>>& originals) {
  for (OwnFile& file : files) {
    if (file.page.text.empty()) {
      Original<Entry> same;
      same.file = file.page.file;
      same.stamp = file.page.expected;
      same.text = std::make_shared<const JsonNode>(std::move(file.page.node));
      same.value = std::make_shared<const Entry>(entries[file.index]);
      originals.push_back(std::move(same));
    } else {
      write(file.page, written);
      originals.push_back(originalOfPage(std::move(file.page), entries[file.index]));
    }
  }
}

void addIfChanged(const OriginalFile& original, std::vector<fs::path>& changed) {
  if (original.text != nullptr && !stillSays(original.file, original.stamp)) {
    changed.push_back(original.file);
  }
}

}  // namespace

std::string orderText(const Order& order, const Original<Order>& original, const SaveStyle& style) {
  return jsonText(nodeOf(order, original, writingOf(original, style)));
}

std::string shopText(const Shop& shop, const Original<Shop>& original, const SaveStyle& style) {
  return jsonText(nodeOf(shop, original, writingOf(original, style)));
}

std::string blankText(const Blank& blank, const Original<Blank>& original, const SaveStyle& style) {
  return jsonText(nodeOf(blank, original, writingOf(original, style)));
}

std::string designText(const Design& design, const Original<Design>& original,
                       const SaveStyle& style) {
  return jsonText(nodeOf(design, original, writingOf(original, style)));
}

std::string recoveryText(const Order& order, const Original<Order>& original,
                         const SaveStyle& style) {
  return jsonText(orderNode(order, original, writingOf(original, style), true));
}

Saved<Order> saveOrder(const fs::path& file, const Order& order, const Original<Order>& original,
                       const SaveStyle& style, const FileStamp& replaced) {
  const Order* before = original.value.get();
  std::vector<OwnFile> blanks =
      ownFiles(order.blanks, original.blanks, before == nullptr ? nullptr : &before->blanks, style);
  std::vector<OwnFile> designs = ownFiles(order.designs, original.designs,
                                          before == nullptr ? nullptr : &before->designs, style);
  Page page = pageOf(file, order, original, style, replaced);
  requireUnchanged(page);
  for (const auto* files : {&blanks, &designs}) {
    for (const OwnFile& each : *files) {
      if (!each.page.text.empty()) {
        requireUnchanged(each.page);
      }
    }
  }
  Saved<Order> saved;
  std::vector<bool> inPlace(order.designs.size(), true);
  for (const OwnFile& each : designs) {
    inPlace[each.index] = false;
  }
  Original<Order> after;
  writeOwnFiles(blanks, order.blanks, saved.written, after.blanks);
  writeOwnFiles(designs, order.designs, saved.written, after.designs);
  write(page, saved.written);
  saved.value = order;
  for (std::size_t i = 0; original.text != nullptr && i < inPlace.size(); ++i) {
    if (inPlace[i]) {
      saved.value.designs[i] =
          moved(order.designs[i], original.file.parent_path(), file.parent_path());
    }
  }
  static_cast<OriginalFile&>(after) = {page.file,
                                       {contentDigest(page.text)},
                                       std::make_shared<const JsonNode>(std::move(page.node))};
  after.value = std::make_shared<const Order>(saved.value);
  saved.original = std::move(after);
  return saved;
}

Saved<Shop> saveShop(const fs::path& file, const Shop& shop, const Original<Shop>& original,
                     const SaveStyle& style, const FileStamp& replaced) {
  return save(file, shop, original, style, replaced);
}

Saved<Blank> saveBlank(const fs::path& file, const Blank& blank, const Original<Blank>& original,
                       const SaveStyle& style, const FileStamp& replaced) {
  return save(file, blank, original, style, replaced);
}

Saved<Design> saveDesign(const fs::path& file, const Design& design,
                         const Original<Design>& original, const SaveStyle& style,
                         const FileStamp& replaced) {
  return save(file, design, original, style, replaced);
}

std::vector<fs::path> changedOutside(const OriginalFile& original) {
  std::vector<fs::path> changed;
  addIfChanged(original, changed);
  return changed;
}

std::vector<fs::path> changedOutside(const Original<Order>& original) {
  std::vector<fs::path> changed;
  addIfChanged(original, changed);
  for (const Original<Blank>& blank : original.blanks) {
    addIfChanged(blank, changed);
  }
  for (const Original<Design>& design : original.designs) {
    addIfChanged(design, changed);
  }
  return changed;
}

}  // namespace creaseline
