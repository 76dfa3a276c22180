// SPDX-License-Identifier: MIT
// A second size over the one on the table: found, told and seen.
#include <QMenu>
#include <QToolButton>

#include "creaseline/planning/wording.h"
#include "desk/desk_fixture.h"
#include "desk/size_rail.h"
#include "desk/table_canvas.h"
#include "desk/theme.h"

namespace creaseline::desk {
namespace {

double contrast(const QColor& a, const QColor& b) {
  const auto colour = [](const QColor& each) {
    return Colour{static_cast<std::uint8_t>(each.red()), static_cast<std::uint8_t>(each.green()),
                  static_cast<std::uint8_t>(each.blue())};
  };
  return contrastRatio(colour(a), colour(b));
}

}  // namespace

TEST_CASE("The compared size tells how far down its design goes", "[desk][table][compare]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto& rail = desk.find<SizeRail>("sizes");
  auto& table = desk.find<TableCanvas>("table");
  REQUIRE(rail.model()->rowCount() > 1);
  CHECK_FALSE(table.comparedDrop());
  const int other = rail.currentIndex().row() == 0 ? rail.model()->rowCount() - 1 : 0;
  const QModelIndex index = rail.model()->index(other, 0);
  rail.scrollTo(index);
  QTest::mouseClick(rail.viewport(), Qt::LeftButton, Qt::ControlModifier,
                    rail.visualRect(index).center());
  const auto drop = table.comparedDrop();
  REQUIRE(drop);
  const QString size = index.data().toString();
  const PlacementPlan* plan = nullptr;
  for (const PlacementPlan& each : plannedDemo()->plan()->placements) {
    if (plan == nullptr && toQString(each.size.text()) == size) {
      plan = &each;
    }
  }
  REQUIRE(plan != nullptr);
  const QString length = toQString(formatLength(plan->placed.drop, plannedDemo()->units()));
  CHECK(drop->label == size + QStringLiteral(": ") + length);
  CHECK(table.accessibleDescription().contains(drop->text));
  CHECK(QRectF(table.rect()).contains(drop->plate));
  CHECK(desk.window->grab().save(
      QStringLiteral("%1/compared.png").arg(QStringLiteral(SCREENSHOT_FOLDER))));
  // To the scale of the garment on the table: both ends lie on one upright line.
  CHECK(drop->line.dx() == Approx(0.0).margin(1e-6));
  CHECK(std::abs(drop->line.dy()) > 1.0);
}

TEST_CASE("How to compare is said on screen, and done from a menu", "[desk][table][compare]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto& rail = desk.find<SizeRail>("sizes");
  CHECK(rail.toolTip().contains(QStringLiteral("Ctrl+click")));
  auto& button = desk.find<QToolButton>("compareSizesButton");
  CHECK(button.isVisible());
  CHECK(button.toolTip() == rail.toolTip());
  QMenu& menu = *button.menu();
  Q_EMIT menu.aboutToShow();
  REQUIRE(menu.actions().size() == rail.model()->rowCount() - 1);
  QAction* size = menu.actions().first();
  CHECK_FALSE(size->isChecked());
  size->trigger();
  CHECK(rail.isCompared(SizeName(toUtf8(size->text()))));
  CHECK(desk.find<TableCanvas>("table").comparedDrop());
  Q_EMIT menu.aboutToShow();
  CHECK(menu.actions().first()->isChecked());
  menu.actions().first()->trigger();
  CHECK_FALSE(desk.find<TableCanvas>("table").comparedDrop());
}

TEST_CASE("The second size is seen on cloth of any colour", "[desk][table][compare]") {
  QPalette light;
  light.setColor(QPalette::Base, Qt::white);
  light.setColor(QPalette::Text, Qt::black);
  QPalette dark;
  dark.setColor(QPalette::Base, QColor(0x20, 0x20, 0x20));
  dark.setColor(QPalette::Text, Qt::white);
  for (const QPalette& palette : {light, dark}) {
    for (int red = 0; red < 256; red += 51) {
      for (int green = 0; green < 256; green += 51) {
        for (int blue = 0; blue < 256; blue += 51) {
          const QColor cloth(red, green, blue);
          const Colour colour{static_cast<std::uint8_t>(red), static_cast<std::uint8_t>(green),
                              static_cast<std::uint8_t>(blue)};
          CAPTURE(cloth.name(), isDark(palette));
          // W3C WCAG 2.2, success criterion 1.4.11
          REQUIRE(contrast(comparedColour(palette, colour), cloth) >= 3.0);
        }
      }
    }
    CHECK(comparedColour(palette, std::nullopt) == comparedColour(palette));
  }
}

}  // namespace creaseline::desk
