// SPDX-License-Identifier: MIT
#include "creaseline/base/phrasebook.h"

#include <atomic>
#include <cstddef>
#include <utility>

#include "base/whole_word.h"
#include "base/worded.h"

namespace creaseline {
namespace {

// The language of a process, like its time zone, is one for all that it says.
std::atomic<const Phrasebook*> spoken{nullptr};

class Decimals : public std::numpunct<char> {
 public:
  explicit Decimals(char separator) : separator_(separator) {}

 protected:
  [[nodiscard]] char do_decimal_point() const override { return separator_; }

 private:
  char separator_;
};

}  // namespace

Phrasebook::Phrasebook(Content content)
    : content_(std::move(content)),
      // The locale owns the facet.
      locale_(std::locale::classic(), new Decimals(content_.decimalSeparator)) {
}

Phrasebook Phrasebook::withDecimalSeparator(char separator) const {
  Content content = content_;
  content.decimalSeparator = separator;
  return Phrasebook(std::move(content));
}

std::string_view Phrasebook::phrase(std::string_view english) const {
  const auto known = content_.phrases.find(english);
  return known == content_.phrases.end() ? english : std::string_view(known->second);
}

std::string Phrasebook::joined(std::string text) const {
  for (const Joint& joint : content_.joints) {
    for (std::size_t at = text.find(joint.apart); at != std::string::npos;
         at = text.find(joint.apart, at)) {
      if (isWholeWord(text, at, joint.apart.size())) {
        text.replace(at, joint.apart.size(), joint.joined);
        at += joint.joined.size();
      } else {
        ++at;
      }
    }
  }
  return text;
}

void speakBy(const Phrasebook* book) {
  spoken.store(book, std::memory_order_release);
}

const Phrasebook* spokenBook() {
  return spoken.load(std::memory_order_acquire);
}

char spokenDecimalSeparator() {
  const Phrasebook* book = spokenBook();
  return book == nullptr ? '.' : book->decimalSeparator();
}

std::string spokenLanguage() {
  const Phrasebook* book = spokenBook();
  return book == nullptr ? "en" : book->language();
}

std::string inLanguage(std::string_view english) {
  const Phrasebook* book = spokenBook();
  return std::string(book == nullptr ? english : book->phrase(english));
}

std::string wordedFrom(fmt::string_view english, fmt::format_args arguments) {
  const Phrasebook* book = spokenBook();
  if (book == nullptr) {
    return fmt::vformat(english, arguments);
  }
  const std::string_view pattern = book->phrase({english.data(), english.size()});
  return book->joined(
      fmt::vformat(book->locale(), fmt::string_view(pattern.data(), pattern.size()), arguments));
}

}  // namespace creaseline
