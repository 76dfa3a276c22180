// SPDX-License-Identifier: MIT
// The language in which the desk speaks: the one chosen in its settings, else the system's.
#pragma once

#include <QString>
#include <QTranslator>
#include <memory>
#include <vector>

namespace creaseline {

// Texts are translated while it lives. The window has one of its own, so a main needs it only for
// what is said before the window is there and without it. Text of the core and all files stay as
// they are in every language.
class DeskLanguage {
 public:
  // `settingsFile`: as for the window. Needs the application.
  explicit DeskLanguage(const QString& settingsFile);
  ~DeskLanguage();
  DeskLanguage(const DeskLanguage&) = delete;
  DeskLanguage& operator=(const DeskLanguage&) = delete;

 private:
  void install(std::unique_ptr<QTranslator> translator);

  std::vector<std::unique_ptr<QTranslator>> translators_;
};

}  // namespace creaseline
