// SPDX-License-Identifier: MIT
// What people read, in the language they chose. The code and the rules are written in English,
// which is the key to every other language; files that the program writes are the same in all of
// them.
#pragma once

#include <locale>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace creaseline {

// One language. It never changes once made, so that every thread may ask it.
class Phrasebook {
 public:
  // Two words that grow together where they meet: "de el" is "del".
  struct Joint {
    std::string apart, joined;
  };
  struct Content {
    std::string language;  // ISO 639-1: "es"
    char decimalSeparator = '.';
    std::vector<Joint> joints;  // whole words only, tried in this order
    std::map<std::string, std::string, std::less<>> phrases;  // by English
  };

  explicit Phrasebook(Content content);

  [[nodiscard]] const std::string& language() const { return content_.language; }
  [[nodiscard]] char decimalSeparator() const { return content_.decimalSeparator; }
  // Knows the decimal separator, for what a phrase asks by `{:.1Lf}`.
  [[nodiscard]] const std::locale& locale() const { return locale_; }
  // The same language as some of its speakers write numbers: Mexico has the point, Spain the comma.
  [[nodiscard]] Phrasebook withDecimalSeparator(char separator) const;
  // The phrase for an English one, or that itself if the book lacks it. As long-lived as the book
  // or the argument.
  [[nodiscard]] std::string_view phrase(std::string_view english) const;
  [[nodiscard]] const std::map<std::string, std::string, std::less<>>& phrases() const {
    return content_.phrases;
  }
  // With all joints made.
  [[nodiscard]] std::string joined(std::string text) const;

 private:
  Content content_;
  std::locale locale_;
};

// From now on all threads speak by this book, which must outlive whatever is said; null: English.
// To be called before planning begins: rules are read, and plans made, in the language of the time.
void speakBy(const Phrasebook* book);
// The book spoken by, or null.
[[nodiscard]] const Phrasebook* spokenBook();

// Between a number's whole and its decimals, in the language spoken; files have the point.
[[nodiscard]] char spokenDecimalSeparator();
// ISO 639-1: "en" without a book.
[[nodiscard]] std::string spokenLanguage();

// A text of the program's data in the language spoken, itself if there is none.
[[nodiscard]] std::string inLanguage(std::string_view english);

}  // namespace creaseline
