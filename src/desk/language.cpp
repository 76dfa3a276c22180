// SPDX-License-Identifier: MIT
// Which language, and the translators that bring it.
#include "desk/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <map>
#include <utility>

#include "creaseline/catalogue/load_phrasebook.h"
#include "creaseline/desk/desk_language.h"
#include "desk/english_plurals.h"
#include "desk/settings.h"
#include "desk/text.h"

namespace creaseline {

namespace desk {

Language spoken(std::optional<Language> chosen, const QStringList& systemLanguages) {
  if (chosen) {
    return *chosen;
  }
  for (const QString& each : systemLanguages) {
    // "es-MX" and "es_ES" are Spanish, "est" is not.
    const QString code = each.section(QLatin1Char('-'), 0, 0).section(QLatin1Char('_'), 0, 0);
    if (const auto known = enumFromName<Language>(toUtf8(code.toLower()))) {
      return *known;
    }
  }
  return Language::English;
}

QLocale formatsOf(Language language, const QLocale& system) {
  const auto speaks = language == Language::Spanish ? QLocale::Spanish : QLocale::English;
  // A system without a language of its own writes as English does.
  const bool same = system.language() == speaks ||
                    (speaks == QLocale::English && system.language() == QLocale::C);
  return same ? system : QLocale(speaks);
}

QString ownName(Language language) {
  switch (language) {
    case Language::English:
      return QStringLiteral("English");
    case Language::Spanish:
      return QStringLiteral("español");
  }
  return {};
}

}  // namespace desk

DeskLanguage::DeskLanguage(const QString& settingsFile) : before_(spokenBook()), formatsBefore_() {
  using desk::Language;
  const Language language =
      desk::spoken(desk::Settings(settingsFile).language(), QLocale::system().uiLanguages());
  // Asked last: what a translation lacks is at least said in right English.
  install(std::make_unique<desk::EnglishPlurals>());
  QLocale::setDefault(desk::formatsOf(language, QLocale::system()));
  code_ = std::string(nameOf(language));
  if (language == Language::English) {
    return;
  }
  const QString code = desk::toQString(code_);
  // What Qt itself says, as in its dialogs; not every system has it installed.
  auto dialogs = std::make_unique<QTranslator>();
  if (dialogs->load(QStringLiteral("qtbase_") + code,
                    QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
    install(std::move(dialogs));
  }
  auto own = std::make_unique<QTranslator>();
  if (own->load(QStringLiteral(":/creaseline/translations/creaseline_%1.qm").arg(code))) {
    install(std::move(own));
  }
}

// Each translator takes itself out of the application.
DeskLanguage::~DeskLanguage() {
  QLocale::setDefault(formatsBefore_);
  speakBy(before_);
}

void DeskLanguage::readPhrases(const std::filesystem::path& resources) {
  if (code_ == nameOf(desk::Language::English)) {
    speakBy(nullptr);
    return;
  }
  // Kept for good: a plan in the making may still speak by it when the window is gone.
  static std::map<std::pair<std::string, char>, Phrasebook> books;
  const char separator = QLocale().decimalPoint().front().toLatin1();
  auto known = books.find({code_, separator});
  if (known == books.end()) {
    known = books
                .emplace(std::pair(code_, separator),
                         loadPhrasebook(resources, code_).withDecimalSeparator(separator))
                .first;
  }
  speakBy(&known->second);
}

void DeskLanguage::install(std::unique_ptr<QTranslator> translator) {
  QCoreApplication::installTranslator(translator.get());
  translators_.push_back(std::move(translator));
}

}  // namespace creaseline
