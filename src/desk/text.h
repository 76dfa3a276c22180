// SPDX-License-Identifier: MIT
// The one bridge between the core's UTF-8 text, file paths and Qt's strings.
#pragma once

#include <QString>
#include <filesystem>
#include <string>
#include <string_view>

namespace creaseline::desk {

inline QString toQString(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
inline std::string toUtf8(const QString& text) {
  return text.toUtf8().toStdString();
}
inline QString pathText(const std::filesystem::path& path) {
  return QString::fromStdU16String(path.u16string());
}
inline std::filesystem::path toPath(const QString& text) {
  return std::filesystem::path(text.toStdU16String());
}
// A name within a sentence.
inline QString quoted(const std::string& text) {
  return QStringLiteral("“%1”").arg(toQString(text));
}
// Cut between words to at most so many characters, with "…" at the end of what was cut.
inline QString shortened(const QString& text, qsizetype most) {
  if (text.size() <= most) {
    return text;
  }
  const qsizetype end = text.lastIndexOf(u' ', most - 1);
  return text.left(end > 0 ? end : most - 1) + u'…';
}
// First letter as a capital, for the core's phrases at the head of a line.
inline QString capitalised(const QString& text) {
  return text.isEmpty() ? text : text.left(1).toUpper() + text.mid(1);
}

}  // namespace creaseline::desk
