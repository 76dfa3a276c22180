// SPDX-License-Identifier: MIT
// The bridge between the core's UTF-8 text and Qt's strings.
#pragma once

#include <QString>
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
// First letter as a capital, for the core's phrases at the head of a line.
inline QString capitalised(const QString& text) {
  return text.isEmpty() ? text : text.left(1).toUpper() + text.mid(1);
}

}  // namespace creaseline::sheets
