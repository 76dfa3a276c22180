// SPDX-License-Identifier: MIT
// The bridge between the core's UTF-8 text and Qt's strings.
#pragma once

#include <QString>
#include <concepts>
#include <string>
#include <string_view>

#include "creaseline/base/phrasebook.h"

namespace creaseline::sheets {

inline QString toQString(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
// A phrase of the program in the language spoken; it may hold places for QString::arg().
// tests/house/phrases.py finds phrases by this name.
inline QString printed(std::string_view english) {
  return toQString(inLanguage(english));
}

inline QString asPrinted(const QString& part) {
  return part;
}
inline QString asPrinted(std::string_view part) {
  return toQString(part);
}
inline QString asPrinted(std::integral auto part) {
  return QString::number(part);
}
// "2.5", with the decimal separator of the language.
inline QString decimalText(double number) {
  return QString::number(number).replace(u'.', QLatin1Char(spokenDecimalSeparator()));
}
// The same with its places "%1", "%2" filled, all at once: a name may hold a percent sign. Words
// that meet grow together as the language has it.
template <class First, class... Others>
QString printed(std::string_view english, const First& first, const Others&... others) {
  const QString filled = printed(english).arg(asPrinted(first), asPrinted(others)...);
  const Phrasebook* book = spokenBook();
  return book == nullptr ? filled : toQString(book->joined(filled.toStdString()));
}
// First letter as a capital, for the core's phrases at the head of a line.
inline QString capitalised(const QString& text) {
  return text.isEmpty() ? text : text.left(1).toUpper() + text.mid(1);
}

}  // namespace creaseline::sheets
