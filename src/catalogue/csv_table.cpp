// SPDX-License-Identifier: MIT
// A small state machine over the characters of a CSV text.
#include "catalogue/csv_table.h"

#include <algorithm>

#include "base/worded.h"
#include "catalogue/text_check.h"
#include "creaseline/base/error.h"

namespace creaseline {

namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

char delimiterOf(std::string_view text) {
  bool quoteOpen = false;
  bool tab = false;
  for (const char c : text) {
    if (c == '"') {
      quoteOpen = !quoteOpen;
    } else if (!quoteOpen && c == ';') {
      return ';';
    } else if (!quoteOpen && c == '\t') {
      tab = true;
    } else if (!quoteOpen && (c == '\n' || c == '\r')) {
      break;
    }
  }
  return tab ? '\t' : ',';
}

class Splitter {
 public:
  Splitter(std::string_view text, const std::string& file, char separator)
      : text_(text), file_(file), separator_(separator) {}

  std::vector<CsvRecord> split() {
    record_.line = 1;
    while (at_ < text_.size()) {
      step(text_[at_++]);
    }
    if (inQuotes_) {
      fail(quoteLine_, worded("a quote that is never closed"), worded("a second double quote"));
    }
    if (!cell_.empty() || wasQuoted_ || !record_.cells.empty()) {
      endRecord();
    }
    return std::move(records_);
  }

 private:
  void step(char c) {
    if (inQuotes_) {
      quotedStep(c);
    } else if (c == '"' && cell_.find_first_not_of(' ') == std::string::npos && !wasQuoted_) {
      cell_.clear();
      inQuotes_ = wasQuoted_ = true;
      quoteLine_ = line_;
    } else if (c == separator_) {
      endCell();
    } else if (c == '\n' || c == '\r') {
      if (c == '\r' && at_ < text_.size() && text_[at_] == '\n') {
        ++at_;
      }
      endRecord();
      record_.line = ++line_;
    } else if (static_cast<unsigned char>(c) < 0x20U || c == 0x7F) {
      fail(line_, worded("the control character {}", inQuotes({&c, 1})),
           worded("a plain text table"));
    } else {
      cell_ += c;
    }
  }
  void quotedStep(char c) {
    if (c != '"') {
      line_ += c == '\n' ? 1 : 0;
      cell_ += c == '\n' || c == '\r' || c == '\t' ? ' ' : c;
    } else if (at_ < text_.size() && text_[at_] == '"') {
      cell_ += c;
      ++at_;
    } else {
      inQuotes_ = false;
    }
  }
  void endCell() {
    const std::size_t first = cell_.find_first_not_of(' ');
    const std::size_t last = cell_.find_last_not_of(' ');
    record_.cells.push_back(first == std::string::npos ? std::string()
                                                       : cell_.substr(first, last - first + 1));
    cell_.clear();
    wasQuoted_ = false;
  }
  void endRecord() {
    endCell();
    records_.push_back(std::move(record_));
    record_ = {};
  }
  [[noreturn]] void fail(std::size_t line, std::string found, std::string expected) const {
    throw InputError({file_, worded("line {}", line), std::move(found), std::move(expected)});
  }

  std::string_view text_;
  const std::string& file_;
  char separator_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
  std::size_t quoteLine_ = 1;
  bool inQuotes_ = false;
  bool wasQuoted_ = false;
  std::string cell_;
  CsvRecord record_;
  std::vector<CsvRecord> records_;
};

}  // namespace

bool CsvRecord::blank() const {
  return std::all_of(cells.begin(), cells.end(),
                     [](const std::string& cell) { return cell.empty(); });
}

std::vector<CsvRecord> splitCsv(std::string_view text, const std::string& file) {
  return splitCsv(text, file, delimiterOf(text));
}

std::vector<CsvRecord> splitCsv(std::string_view text, const std::string& file, char separator) {
  if (text.substr(0, kByteOrderMark.size()) == kByteOrderMark) {
    text.remove_prefix(kByteOrderMark.size());
  }
  if (!isUtf8(text)) {
    throw InputError(
        {file, "", worded("bytes that are not UTF-8"), worded("a table saved as CSV in UTF-8")});
  }
  return Splitter(text, file, separator).split();
}

}  // namespace creaseline
