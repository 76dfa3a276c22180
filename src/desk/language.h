// SPDX-License-Identifier: MIT
// The languages of the desk, and which of them it speaks.
#pragma once

#include <QLocale>
#include <QStringList>
#include <optional>
#include <string_view>
#include <utility>

#include "creaseline/base/named_enum.h"

namespace creaseline {

namespace desk {

enum class Language { English, Spanish };

// `chosen` if there is one; else the first of the system's languages, best first as QLocale lists
// them, that the desk speaks; else English.
[[nodiscard]] Language spoken(std::optional<Language> chosen, const QStringList& systemLanguages);

// How numbers and dates are written: as the system does if it speaks that language, else as the
// language usually does.
[[nodiscard]] QLocale formatsOf(Language language, const QLocale& system);

// In the language itself, so that who reads only that one finds it in every language.
[[nodiscard]] QString ownName(Language language);

}  // namespace desk

// Codes of ISO 639, as they stand in the settings.
template <>
struct EnumNames<desk::Language> {
  static constexpr std::pair<desk::Language, std::string_view> names[] = {
      {desk::Language::English, "en"}, {desk::Language::Spanish, "es"}};
};

}  // namespace creaseline
