// SPDX-License-Identifier: MIT
#include "desk/settings.h"

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

TEST_CASE("Settings come back from their file", "[desk][settings]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("desk.ini"));
  const UnitChoice units{LengthUnit::Centimetre, RulerMark::Sixteenth,
                         WeightUnit::OuncesPerSquareYard};
  {
    Settings settings(file);
    CHECK_FALSE(settings.units().has_value());
    CHECK_FALSE(settings.language().has_value());
    settings.setLanguage(Language::Spanish);
    settings.setUnits(units);
    CHECK(settings.appearance() == Appearance::System);
    settings.setAppearance(Appearance::Dark);
    settings.setPaper(Paper::AnsiC);
    settings.setSheetTicked("run-cards", false);
    settings.setSheetTicked("gauges", true);
    settings.setTemplateVariants({false, true});
    CHECK(settings.pricesOnSheets());
    settings.setPricesOnSheets(false);
    settings.setGeometryOf(QStringLiteral("sheets"), "somewhere");
    settings.setLastShop(QStringLiteral("a.shop.json"));
  }
  const Settings again(file);
  CHECK(again.language() == Language::Spanish);
  CHECK(again.units() == units);
  CHECK(again.appearance() == Appearance::Dark);
  CHECK(again.paper() == Paper::AnsiC);
  CHECK(again.sheetTicked("run-cards") == false);
  CHECK(again.sheetTicked("gauges") == true);
  CHECK_FALSE(again.sheetTicked("placement").has_value());
  CHECK_FALSE(again.templateVariants().mirrored);
  CHECK(again.templateVariants().turned);
  CHECK_FALSE(again.pricesOnSheets());
  CHECK(again.geometryOf(QStringLiteral("sheets")) == "somewhere");
  CHECK(again.lastShop() == QStringLiteral("a.shop.json"));
}

TEST_CASE("Papers that an older desk kept as numbers are still known", "[desk][settings]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("desk.ini"));
  const auto [stored, paper] = GENERATE(table<QByteArray, Paper>(
      {{"0", Paper::A4}, {"1", Paper::Letter}, {"tabloid", Paper::Tabloid}}));
  QFile out(file);
  REQUIRE(out.open(QIODevice::WriteOnly));
  out.write("[sheets]\npaper=" + stored + "\n");
  out.close();
  CHECK(Settings(file).paper() == paper);
}

TEST_CASE("Recent orders are few, distinct and newest first", "[desk][settings]") {
  const QTemporaryDir folder;
  Settings settings(folder.filePath(QStringLiteral("desk.ini")));
  for (int i = 0; i < 2 * Settings::kRecentFiles; ++i) {
    settings.addRecentOrder(QString::number(i));
  }
  settings.addRecentOrder(QStringLiteral("10"));
  const QStringList recent = settings.recentOrders();
  CHECK(recent.size() == Settings::kRecentFiles);
  CHECK(recent.first() == QStringLiteral("10"));
  CHECK(recent.count(QStringLiteral("10")) == 1);
  settings.clearRecentOrders();
  CHECK(settings.recentOrders().isEmpty());
}

TEST_CASE("Nonsense in the settings file counts as never chosen", "[desk][settings]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("desk.ini"));
  QFile out(file);
  REQUIRE(out.open(QIODevice::WriteOnly));
  out.write(
      "[units]\nlength=77\nruler-mark=inch\nweight=-1\n[window]\ngeometry=@@@\nlanguage=tlh\n"
      "[sheets]\npaper=5\nkind-placement=maybe\n");
  out.close();
  const Settings settings(file);
  CHECK_FALSE(settings.language().has_value());
  CHECK_FALSE(settings.sheetTicked("placement").has_value());
  CHECK((settings.paper() == Paper::A4 || settings.paper() == Paper::Letter));
  CHECK_FALSE(settings.units().has_value());
}

TEST_CASE("Each window has a place of its own", "[desk][settings]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("desk.ini"));
  {
    Settings settings(file);
    CHECK(settings.geometryOf(QStringLiteral("garments")).isEmpty());
    settings.setGeometryOf(QStringLiteral("garments"), "here");
    settings.setGeometryOf(QStringLiteral("designs"), "there");
  }
  const Settings settings(file);
  CHECK(settings.geometryOf(QStringLiteral("garments")) == "here");
  CHECK(settings.geometryOf(QStringLiteral("designs")) == "there");
}
