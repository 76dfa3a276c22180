// SPDX-License-Identifier: MIT
// Forms say every length in the unit chosen, whatever it was given in, and files keep what they
// had until it is typed over.
#include <QCheckBox>
#include <QLineEdit>
#include <QListWidget>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTabWidget>

#include "desk/desk_fixture.h"
#include "desk/shop_window.h"
#include "desk/table_canvas.h"

namespace creaseline::desk {
namespace {

// Names, notes and bases are a person's own words, and rolls are told as they are sold: a roll of
// 25 m is asked for as one of 25 m.
bool hasWordsOfItsOwn(const QString& field) {
  static const QRegularExpression kOwn(
      QStringLiteral("(Name|Id|Note|Basis|Title|Length|Price|Blanks|Sizes)$|^rate"));
  return kOwn.match(field).hasMatch();
}

// What the line edits of a widget show or propose that has one of these units.
QStringList shownIn(const QWidget& widget, const QString& units) {
  const QRegularExpression unit(QStringLiteral("[0-9] ?(%1)\\b").arg(units));
  QStringList found;
  for (const QLineEdit* edit : widget.findChildren<QLineEdit*>()) {
    for (const QString& text : {edit->text(), edit->placeholderText()}) {
      if (!hasWordsOfItsOwn(edit->objectName()) && unit.match(text).hasMatch()) {
        found.append(edit->objectName() + QStringLiteral(": ") + text);
      }
    }
  }
  return found;
}

// On each tab each entry in turn.
QStringList shownInShop(DeskOnDemo& desk, const QString& units) {
  QStringList found;
  auto& tabs = desk.find<QTabWidget>("shopTabs");
  for (int tab = 0; tab < tabs.count(); ++tab) {
    tabs.setCurrentIndex(tab);
    auto* entries = tabs.currentWidget()->findChild<QListWidget*>(QStringLiteral("entries"));
    for (int row = 0; row < (entries == nullptr ? 1 : entries->count()); ++row) {
      if (entries != nullptr) {
        entries->setCurrentRow(row);
      }
      found += shownIn(*tabs.currentWidget(), units);
    }
  }
  return found;
}

ShopWindow& openShop(DeskOnDemo& desk) {
  desk.action("editShop").trigger();
  auto& shop = desk.find<ShopWindow>("shopWindow");
  activate(shop);
  return shop;
}

QLineEdit& openFrame(DeskOnDemo& desk, const char* field) {
  openShop(desk);
  desk.find<QTabWidget>("shopTabs").setCurrentIndex(1);
  auto& edit = desk.find<QLineEdit>(field);
  edit.setFocus();
  return edit;
}

void typeOver(QLineEdit& edit, const QString& text) {
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, text);
}

void undoAll(DeskOnDemo& desk) {
  while (desk.action("undo").isEnabled()) {
    desk.action("undo").trigger();
  }
}

}  // namespace

TEST_CASE("In a shop of inches no field says millimetres, and the other way round",
          "[desk][shop][units]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("unitInch").trigger();
  REQUIRE(desk.waitForPlan());
  openShop(desk);
  CHECK(shownInShop(desk, QStringLiteral("mm|cm")) == QStringList());
  desk.action("unitMillimetre").trigger();
  REQUIRE(desk.waitForPlan());
  CHECK(shownInShop(desk, QStringLiteral("in|cm")) == QStringList());
  desk.action("unitCentimetre").trigger();
  REQUIRE(desk.waitForPlan());
  CHECK(shownInShop(desk, QStringLiteral("in|mm")) == QStringList());
}

TEST_CASE("The forms of an order say every length in the unit chosen", "[desk][units]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("unitInch").trigger();
  REQUIRE(desk.waitForPlan());
  auto& table = desk.find<TableCanvas>("table");
  table.setFocus();
  QTest::keyClick(&table, Qt::Key_Down);
  REQUIRE(desk.waitForPlan());
  auto& down = desk.find<QLineEdit>("placeMoveDown");
  typeOver(down, QStringLiteral("8,8 mm"));
  QTest::keyClick(&down, Qt::Key_Return);
  CHECK(down.text() == QStringLiteral("11/32 in"));
  CHECK(undoText(desk).contains(QStringLiteral("in")));
  CHECK_FALSE(undoText(desk).contains(QStringLiteral("mm")));
  for (const char* action : {"editDesigns", "editGarments"}) {
    if (auto* found = desk.window->findChild<QAction*>(QString::fromLatin1(action))) {
      found->trigger();
    }
  }
  CHECK(shownIn(*desk.window, QStringLiteral("mm|cm")) == QStringList());
  undoAll(desk);
}

TEST_CASE("A measure typed in another unit is shown in the one chosen, and kept exactly",
          "[desk][shop][units]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("unitInch").trigger();
  REQUIRE(desk.waitForPlan());
  auto& width = openFrame(desk, "frameBodyWidth");
  const QString before = width.text();
  CHECK(before.endsWith(QStringLiteral(" in")));
  const QString step = undoText(desk);
  // Looked at and left, with Enter or with Tab: nothing was typed over.
  QTest::keyClick(&width, Qt::Key_Return);
  QTest::keyClick(&width, Qt::Key_Tab);
  CHECK(undoText(desk) == step);
  typeOver(width, QStringLiteral("35 cm"));
  QTest::keyClick(&width, Qt::Key_Return);
  CHECK(width.text() == QStringLiteral("13 25/32 in"));
  CHECK(undoText(desk).contains(QStringLiteral("13 25/32 in")));
  QTest::keyClick(&desk.find<ShopWindow>("shopWindow"), Qt::Key_S, Qt::ControlModifier);
  auto& save = desk.find<QPushButton>("saveShop");
  REQUIRE(waitFor([&] { return !save.isEnabled(); }));
  const Shop saved = loadShop(desk.demo.shop(), shippedRules()).value;
  CHECK(saved.frames[0].body.width() == Length::fromMm(350.0));
  undoAll(desk);
  QTest::keyClick(&desk.find<ShopWindow>("shopWindow"), Qt::Key_S, Qt::ControlModifier);
  REQUIRE(waitFor([&] { return !save.isEnabled(); }));
}

TEST_CASE("A window that does not fit its body is told beside the field as a person would",
          "[desk][shop][units]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("unitInch").trigger();
  REQUIRE(desk.waitForPlan());
  auto& shop = openShop(desk);
  shop.resize(760, 420);
  auto& width = openFrame(desk, "frameWindowWidth");
  typeOver(width, QStringLiteral("40 in"));
  const QString said = width.accessibleDescription();
  CAPTURE(said);
  CHECK(said.startsWith(QStringLiteral("Window of frame \"8 × 9 in magnetic\": ")));
  CHECK(said.contains(QStringLiteral("40 × ")));
  CHECK_FALSE(said.contains(QStringLiteral(" mm")));
  CHECK_FALSE(said.contains(QStringLiteral("/frames")));
  // Beside the field, and not below the edge of what is in view.
  const auto problems = width.parentWidget()->findChildren<QLabel*>();
  REQUIRE(problems.size() == 1);
  QScrollArea* area = nullptr;
  for (QWidget* each = &width; each != nullptr && area == nullptr; each = each->parentWidget()) {
    area = qobject_cast<QScrollArea*>(each);
  }
  REQUIRE(area != nullptr);
  REQUIRE(waitFor([&] {
    const QRect seen(problems.first()->mapTo(area->viewport(), QPoint()), problems.first()->size());
    return area->viewport()->rect().contains(seen);
  }));
  CHECK(shop.grab().save(
      QStringLiteral("%1/window-refused.png").arg(QStringLiteral(SCREENSHOT_FOLDER))));
  QTest::keyClick(&width, Qt::Key_Escape);
}

TEST_CASE("A choice that could not be saved says why", "[desk][shop][units]") {
  DeskOnDemo desk;
  desk.openDemo();
  openShop(desk);
  desk.find<QTabWidget>("shopTabs").setCurrentIndex(1);
  // A window that as an ellipse lies in its body may reach beyond it as a rectangle.
  auto& shape = desk.find<QComboBox>("frameBodyShape");
  const int before = shape.currentIndex();
  const int ellipse = shape.findData(QStringLiteral("ellipse"));
  REQUIRE(ellipse >= 0);
  REQUIRE(before != ellipse);
  shape.setCurrentIndex(ellipse);
  Q_EMIT shape.activated(ellipse);
  CHECK(shape.currentIndex() == before);
  const auto said = shape.parentWidget()->findChildren<QLabel*>();
  REQUIRE(said.size() == 1);
  CHECK(said.first()->isVisible());
  CHECK(said.first()->text().contains(QStringLiteral("of frame")));
  desk.find<QTabWidget>("shopTabs").setCurrentIndex(3);
  CHECK(desk.find<QCheckBox>("shopTopping").isVisible());
  QCoreApplication::processEvents();
  CHECK(desk.find<ShopWindow>("shopWindow")
            .grab()
            .save(QStringLiteral("%1/backing-tab.png").arg(QStringLiteral(SCREENSHOT_FOLDER))));
}

}  // namespace creaseline::desk
