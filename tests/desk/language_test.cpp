// SPDX-License-Identifier: MIT
// Which language the desk speaks, and what stays the same in every language.
#include "desk/language.h"

#include <QComboBox>
#include <QLibraryInfo>
#include <QLineEdit>
#include <QLocale>
#include <QMenuBar>
#include <QTabWidget>
#include <QTranslator>
#include <clocale>

#include "creaseline/desk/desk_language.h"
#include "desk/message_bar.h"
#include "desk/order_model.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

QStringList menuTitles(const DeskWindow& window) {
  QStringList titles;
  for (const QAction* top : window.findChild<QMenuBar*>()->actions()) {
    titles.append(top->text().remove(QLatin1Char('&')));
  }
  return titles;
}

const QStringList kEnglishTitles{QStringLiteral("File"), QStringLiteral("Edit"),
                                 QStringLiteral("View"), QStringLiteral("Help")};
const QStringList kSpanishTitles{QStringLiteral("Archivo"), QStringLiteral("Edición"),
                                 QStringLiteral("Ver"), QStringLiteral("Ayuda")};

// Numbers as they are written in Spain, for Qt and, where the system knows them, for the C library.
class SpanishNumbers {
 public:
  SpanishNumbers() : numbers_(std::setlocale(LC_NUMERIC, nullptr)) {
    QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Spain));
    std::setlocale(LC_NUMERIC, "es_ES.UTF-8");
  }
  ~SpanishNumbers() {
    QLocale::setDefault(before_);
    std::setlocale(LC_NUMERIC, numbers_.c_str());
  }
  SpanishNumbers(const SpanishNumbers&) = delete;
  SpanishNumbers& operator=(const SpanishNumbers&) = delete;

 private:
  QLocale before_;
  std::string numbers_;
};

}  // namespace

TEST_CASE("The language is the chosen one, else the system's first that is known, else English",
          "[desk][translation]") {
  const auto [system, chosen, language] =
      GENERATE(table<const char*, std::optional<Language>, Language>({
          {"es", {}, Language::Spanish},
          {"es-MX", {}, Language::Spanish},
          {"es_ES", {}, Language::Spanish},
          {"es-Latn-ES,en", {}, Language::Spanish},
          {"ca-ES,es-ES,en-GB", {}, Language::Spanish},
          {"en-US,es-US", {}, Language::English},
          {"de-DE,est,eu", {}, Language::English},
          {"C", {}, Language::English},
          {"", {}, Language::English},
          {"es-ES", Language::English, Language::English},
          {"en-GB", Language::Spanish, Language::Spanish},
      }));
  CAPTURE(system);
  CHECK(spoken(chosen, QString::fromLatin1(system).split(QLatin1Char(','))) == language);
}

TEST_CASE("Numbers are written as the language's speakers write them, where they live if known",
          "[desk][translation]") {
  // Unicode CLDR: a decimal comma in Spain, a point in Mexico and where English is
  // usual, a comma in Germany.
  const auto point = [](Language language, const char* system) {
    return formatsOf(language, QLocale(QString::fromLatin1(system))).decimalPoint();
  };
  CHECK(point(Language::Spanish, "es_ES") == QStringLiteral(","));
  CHECK(point(Language::Spanish, "es_MX") == QStringLiteral("."));
  CHECK(point(Language::Spanish, "en_US") == QStringLiteral(","));
  CHECK(point(Language::English, "de_DE") == QStringLiteral("."));
  CHECK(formatsOf(Language::English, QLocale(QStringLiteral("en_GB"))) ==
        QLocale(QStringLiteral("en_GB")));
  CHECK(formatsOf(Language::English, QLocale::c()) == QLocale::c());
}

TEST_CASE("The desk, the core and Qt write decimals alike, and as before when it is gone",
          "[desk][translation]") {
  const QLocale before;
  {
    const DeskOnDemo desk(1, Language::Spanish);
    CHECK(QLocale().language() == QLocale::Spanish);
    CHECK(QLocale().decimalPoint() == QString(QLatin1Char(spokenDecimalSeparator())));
  }
  CHECK(QLocale() == before);
  CHECK(spokenDecimalSeparator() == '.');
}

TEST_CASE("The window speaks Spanish where that is chosen, and English after it",
          "[desk][translation]") {
  {
    const DeskOnDemo desk(DemoCopy::kFewLines, Language::Spanish);
    CHECK(menuTitles(*desk.window) == kSpanishTitles);
  }
  const DeskOnDemo desk;
  CHECK(menuTitles(*desk.window) == kEnglishTitles);
}

TEST_CASE("A language chosen in the menu holds from the next start on, and the desk says so",
          "[desk][translation]") {
  DeskOnDemo desk;
  REQUIRE(desk.action("languageSystem").isChecked());
  desk.action("languageSpanish").trigger();
  CHECK(desk.action("languageSpanish").isChecked());
  CHECK_FALSE(desk.action("languageSystem").isChecked());
  CHECK(desk.find<QWidget>("messageBar").isVisible());
  CHECK(desk.label("messageHeadline").contains(QStringLiteral("next start")));
  CHECK(desk.label("messageHeadline").contains(ownName(Language::Spanish)));
  CHECK(menuTitles(*desk.window) == kEnglishTitles);

  desk.window =
      std::make_unique<DeskWindow>(shippedRules(), resourcesFolder(), desk.demo.settings());
  CHECK(menuTitles(*desk.window) == kSpanishTitles);
  CHECK(desk.action("languageSpanish").isChecked());
  // Who does not read it finds the way back.
  CHECK(desk.action("languageEnglish").text() == QStringLiteral("&English"));
  desk.action("languageEnglish").trigger();
  CHECK(desk.label("messageHeadline").contains(ownName(Language::English)));
  CHECK(Settings(desk.demo.settings()).language() == Language::English);
  desk.action("languageSystem").trigger();
  CHECK_FALSE(Settings(desk.demo.settings()).language().has_value());
}

TEST_CASE("What is counted has the right form in Spanish", "[desk][translation]") {
  const DemoCopy demo;
  Settings(demo.settings()).setLanguage(Language::Spanish);
  const DeskLanguage language(demo.settings());
  const auto garments = [](int count) {
    return QCoreApplication::translate("creaseline::DeskWindow", "%n garment(s)", nullptr, count);
  };
  CHECK(garments(0) == QStringLiteral("0 prendas"));
  CHECK(garments(1) == QStringLiteral("1 prenda"));
  CHECK(garments(2) == QStringLiteral("2 prendas"));
}

TEST_CASE("Qt's own dialogs speak Spanish too, where Qt's texts are installed",
          "[desk][translation]") {
  const DemoCopy demo;
  Settings(demo.settings()).setLanguage(Language::Spanish);
  const DeskLanguage language(demo.settings());
  const QDir folder(QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  if (!folder.exists(QStringLiteral("qtbase_es.qm"))) {
    WARN("skipped: qtbase_es.qm is not installed");
    return;
  }
  CHECK(QCoreApplication::translate("QPlatformTheme", "Cancel") == QStringLiteral("Cancelar"));
}

TEST_CASE("A file written in Spanish has decimal points", "[desk][translation][save]") {
  const SpanishNumbers numbers;
  DeskOnDemo desk(DemoCopy::kFewLines, Language::Spanish);
  desk.openDemo();
  const auto* model = qobject_cast<OrderModel*>(desk.order().model());
  clickItem(desk.order(), model->indexOf(0, 0, 0));
  desk.find<QTabWidget>("details").setCurrentIndex(2);
  auto& scale = desk.find<QLineEdit>("placeScale");
  scale.setFocus();
  scale.selectAll();
  QTest::keyClicks(&scale, QStringLiteral("97,5 %"));
  QTest::keyClick(&scale, Qt::Key_Return);
  REQUIRE(desk.window->isWindowModified());
  // On screen as in the core's texts beside it.
  CHECK(waitFor([&] { return scale.text() == QStringLiteral("97.5 %"); }));
  CHECK(desk.action("undo").text().contains(QStringLiteral("97.5 %")));
  desk.save();
  CHECK_FALSE(desk.window->isWindowModified());
  const QByteArray written = DemoCopy::read(desk.demo.order());
  CHECK(written.contains("0.975"));
  CHECK_FALSE(written.contains("0,975"));
  CHECK(loadOrder(desk.demo.order(), shippedRules()).value.lines[0].placements[0].scale ==
        Approx(0.975));
}

TEST_CASE("Texts of the core are English in every language", "[desk][translation]") {
  const auto places = [](Language language) {
    DeskOnDemo desk(DemoCopy::kFewLines, language);
    desk.openDemo();
    const auto* model = qobject_cast<OrderModel*>(desk.order().model());
    clickItem(desk.order(), model->indexOf(0, 0, 0));
    QStringList names;
    for (int i = 0; i < desk.find<QComboBox>("placeLocation").count(); ++i) {
      names.append(desk.find<QComboBox>("placeLocation").itemText(i));
    }
    return names;
  };
  const QStringList english = places(Language::English);
  REQUIRE(english.size() > 3);
  CHECK(places(Language::Spanish) == english);
}
