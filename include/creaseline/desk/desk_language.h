// SPDX-License-Identifier: MIT
// The language in which the desk speaks: the one chosen in its settings, else the system's.
#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "creaseline/base/phrasebook.h"

namespace creaseline {

// Texts are translated, and numbers and dates written as that language's speakers write them, while
// it lives. The window has one of its own, so a main needs it only for
// what is said before the window is there and without it. Files are written alike in every
// language.
class DeskLanguage {
 public:
  // `settingsFile`: as for the window. Needs the application.
  explicit DeskLanguage(const QString& settingsFile);
  // The core speaks as before again.
  ~DeskLanguage();
  DeskLanguage(const DeskLanguage&) = delete;
  DeskLanguage& operator=(const DeskLanguage&) = delete;

  // From now on the core and the sheets speak the language as well. To be called before rules are
  // read. Throws InputError if the language's phrases cannot be read.
  void readPhrases(const std::filesystem::path& resources);

 private:
  void install(std::unique_ptr<QTranslator> translator);

  std::string code_;  // ISO 639-1
  const Phrasebook* before_;
  QLocale formatsBefore_;
  std::vector<std::unique_ptr<QTranslator>> translators_;
};

}  // namespace creaseline
