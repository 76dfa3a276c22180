// SPDX-License-Identifier: MIT
// Editing as a person does: keys and clicks in table and forms.
#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QTabWidget>
#include <QTimer>
#include <QToolButton>

#include "desk/field_edit.h"
#include "desk/finding_model.h"
#include "desk/order_model.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

OrderModel& model(DeskOnDemo& desk) {
  return *qobject_cast<OrderModel*>(desk.order().model());
}

QModelIndex lineCell(DeskOnDemo& desk, int line, const char* size) {
  return model(desk).index(line, model(desk).sizeColumn(SizeName(size)));
}

// The cell that Tab has opened.
QLineEdit* focusedEditor() {
  auto* editor = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  REQUIRE(editor != nullptr);
  return editor;
}

void typeInto(QLineEdit& edit, const QString& text) {
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, text);
}

}  // namespace

TEST_CASE("A quantity is typed over in the table, Tab goes on, and undo takes it back",
          "[desk][editing]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), lineCell(desk, 1, "YS"));
  QTest::keyClick(&desk.order(), Qt::Key_7);
  auto* editor = desk.order().viewport()->findChild<QLineEdit*>();
  REQUIRE(editor != nullptr);
  QTest::keyClick(editor, Qt::Key_Tab);
  CHECK(lineCell(desk, 1, "YS").data().toString() == QStringLiteral("7"));
  CHECK(desk.order().currentIndex() == lineCell(desk, 1, "YM"));
  editor = focusedEditor();
  QTest::keyClicks(editor, QStringLiteral("12"));
  QTest::keyClick(editor, Qt::Key_Return);
  // Return is taken by the editor first, the table hears of it afterwards.
  CHECK(waitFor([&] { return lineCell(desk, 1, "YM").data().toString() == QStringLiteral("12"); }));
  CHECK(desk.window->isWindowModified());
  REQUIRE(desk.waitForPlan());
  CHECK(desk.order().currentIndex() == lineCell(desk, 1, "YM"));
  desk.action("undo").trigger();
  desk.action("undo").trigger();
  CHECK(lineCell(desk, 1, "YS").data().toString() == QStringLiteral("2"));
  CHECK_FALSE(desk.window->isWindowModified());
}

TEST_CASE("A plan that comes while quantities are typed neither loses nor adds to them",
          "[desk][editing]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), lineCell(desk, 1, "YS"));
  QTest::keyClick(&desk.order(), Qt::Key_7);
  QTest::keyClick(desk.order().viewport()->findChild<QLineEdit*>(), Qt::Key_Tab);
  REQUIRE(desk.waitForPlan());
  auto* editor = focusedEditor();
  QTest::keyClicks(editor, QStringLiteral("12"));
  CHECK(editor->text() == QStringLiteral("12"));
  QTest::keyClick(editor, Qt::Key_Tab);
  editor = focusedEditor();
  QTest::keyClick(editor, Qt::Key_3);
  REQUIRE(desk.waitForPlan());
  QTest::keyClick(editor, Qt::Key_4);
  CHECK(editor->text() == QStringLiteral("34"));
  QTest::keyClick(editor, Qt::Key_Return);
  CHECK(waitFor([&] { return lineCell(desk, 1, "YL").data().toString() == QStringLiteral("34"); }));
  CHECK(lineCell(desk, 1, "YM").data().toString() == QStringLiteral("12"));
}

TEST_CASE("A field says beside it what is wrong, and takes what is right in any unit",
          "[desk][editing]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("unitInch").trigger();
  REQUIRE(desk.waitForPlan());
  clickItem(desk.order(), model(desk).indexOf(0, 0, 0));
  desk.find<QTabWidget>("details").setCurrentIndex(2);
  auto& moveDown = desk.find<QLineEdit>("placeMoveDown");
  typeInto(moveDown, QStringLiteral("1/4 q"));
  auto* field = qobject_cast<FieldEdit*>(moveDown.parentWidget());
  REQUIRE(field != nullptr);
  CHECK_FALSE(field->problem().isEmpty());
  CHECK_FALSE(moveDown.accessibleDescription().isEmpty());
  QTest::keyClick(&moveDown, Qt::Key_Return);
  CHECK_FALSE(desk.window->isWindowModified());
  typeInto(moveDown, QStringLiteral("1/4"));
  CHECK(field->problem().isEmpty());
  QTest::keyClick(&moveDown, Qt::Key_Return);
  CHECK(desk.window->isWindowModified());
  CHECK(desk.action("undo").text().contains(QStringLiteral("1/4 in down")));
  REQUIRE(desk.waitForPlan());
  typeInto(moveDown, QStringLiteral("-3 mm"));
  QTest::keyClick(&moveDown, Qt::Key_Return);
  CHECK(desk.action("undo").text().contains(QStringLiteral("up of the rule")));
  // Escape gives back what was there.
  typeInto(moveDown, QStringLiteral("99"));
  QTest::keyClick(&moveDown, Qt::Key_Escape);
  CHECK(moveDown.text() == QStringLiteral("-1/8 in"));
}

TEST_CASE("The key of a label leads to its field", "[desk][editing][access]") {
  DeskOnDemo desk;
  desk.openDemo();
  for (const auto& [key, field] :
       {std::pair(Qt::Key_U, "orderNumber"), std::pair(Qt::Key_I, "orderTitleEdit"),
        std::pair(Qt::Key_C, "orderCustomer")}) {
    QTest::keyClick(desk.window.get(), key, Qt::AltModifier);
    CAPTURE(field);
    CHECK(QApplication::focusWidget() == &desk.find<QLineEdit>(field));
  }
}

TEST_CASE("Several hoopings are allowed by a tick, and each part is shown by its button",
          "[desk][editing]") {
  DeskOnDemo desk(7);
  desk.openDemo();
  // The banner on the full back of line 7.
  desk.order().setCurrentIndex(model(desk).indexOf(6, 0, 0));
  desk.find<QTabWidget>("details").setCurrentIndex(2);
  auto& split = desk.find<QCheckBox>("placeSplit");
  REQUIRE(split.isChecked());
  const auto partButton = [&](int number) -> QToolButton* {
    for (auto* button : desk.window->findChildren<QToolButton*>()) {
      if (button->accessibleName() == QStringLiteral("Part %1 of 2 of the design").arg(number)) {
        return button;
      }
    }
    return nullptr;
  };
  REQUIRE(partButton(2) != nullptr);
  CHECK(partButton(1)->isChecked());
  QTest::mouseClick(partButton(2), Qt::LeftButton);
  CHECK(partButton(2)->isChecked());
  split.setFocus();
  QTest::keyClick(&split, Qt::Key_Space);
  CHECK(desk.window->isWindowModified());
  CHECK(desk.action("undo").text().contains(QStringLiteral("One hooping")));
  REQUIRE(desk.waitForPlan());
  CHECK(partButton(1) == nullptr);
  desk.action("undo").trigger();
  REQUIRE(desk.waitForPlan());
  CHECK(partButton(1) != nullptr);
}

TEST_CASE("The order's frames are ticked in a menu, and a tick is a step that can be undone",
          "[desk][editing]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.find<QTabWidget>("details").setCurrentIndex(0);
  auto& pick = desk.find<QToolButton>("orderFrames");
  CHECK(pick.text() == QStringLiteral("Any frame"));
  const auto frame = [&](const QString& part) {
    const QList<QAction*> actions = desk.find<QMenu>("orderFramesMenu").actions();
    const auto found = std::find_if(actions.begin(), actions.end(), [&](const QAction* action) {
      return action->text().contains(part);
    });
    REQUIRE(found != actions.end());
    return *found;
  };
  frame(QStringLiteral("octagon"))->trigger();
  CHECK(desk.window->isWindowModified());
  CHECK(desk.action("undo").text().contains(QStringLiteral("Sew the order in 19 cm octagon")));
  REQUIRE(desk.waitForPlan());
  CHECK(pick.text() == QStringLiteral("19 cm octagon"));
  CHECK(frame(QStringLiteral("octagon"))->isChecked());
  // The octagon is too small for most: what the order leaves out is offered again.
  bool offered = false;
  auto* findings = qobject_cast<FindingModel*>(desk.findings().model());
  for (int row = 0; row < findings->rowCount(); ++row) {
    for (const Remedy& remedy : findings->finding(row)->remedies) {
      offered = offered || std::holds_alternative<FramesChange>(remedy.change);
    }
  }
  CHECK(offered);
  frame(QStringLiteral("Any frame"))->trigger();
  REQUIRE(desk.waitForPlan());
  CHECK(pick.text() == QStringLiteral("Any frame"));
  desk.action("undo").trigger();
  desk.action("undo").trigger();
  CHECK_FALSE(desk.window->isWindowModified());
}

TEST_CASE("A garment and a place are added, filled in and removed by keyboard and menu",
          "[desk][editing]") {
  DeskOnDemo desk;
  desk.openDemo();
  const int lines = model(desk).rowCount();
  auto& garments = desk.find<QMenu>("addGarment");
  Q_EMIT garments.aboutToShow();
  garments.actions().first()->trigger();
  REQUIRE(model(desk).rowCount() == lines + 1);
  CHECK(desk.find<QTabWidget>("details").currentIndex() == 1);
  auto& quantity = desk.find<QLineEdit>("quantity-L");
  typeInto(quantity, QStringLiteral("5"));
  QTest::keyClick(&quantity, Qt::Key_Return);
  CHECK(lineCell(desk, lines, "L").data().toString() == QStringLiteral("5"));
  auto& places = desk.find<QMenu>("addPlace");
  Q_EMIT places.aboutToShow();
  places.actions().first()->trigger();
  CHECK(model(desk).rowCount(model(desk).index(lines, 0)) == 1);
  auto& location = desk.find<QComboBox>("placeLocation");
  REQUIRE(location.isEnabled());
  CHECK(location.count() > 3);
  REQUIRE(desk.waitForPlan());
  CHECK(model(desk)
            .indexOf(static_cast<std::size_t>(lines), 0, model(desk).sizeColumn(SizeName("L")))
            .data(OrderModel::StateRole)
            .isValid());
  desk.action("remove").trigger();
  CHECK(model(desk).rowCount(model(desk).index(lines, 0)) == 0);
  clickItem(desk.order(), model(desk).index(lines, 0));
  desk.action("remove").trigger();
  CHECK(model(desk).rowCount() == lines);
  for (int i = 0; i < 5; ++i) {
    desk.action("undo").trigger();
  }
  CHECK_FALSE(desk.window->isWindowModified());
}

TEST_CASE("An order is renamed, saved, and the file says so", "[desk][editing][save]") {
  DeskOnDemo desk;
  desk.openDemo();
  CHECK_FALSE(desk.action("saveOrder").isEnabled());
  auto& title = desk.find<QLineEdit>("orderTitleEdit");
  typeInto(title, QStringLiteral("Autumn regatta"));
  // Saving takes what is still being typed.
  desk.action("saveOrderAs").setEnabled(true);
  QTest::keyClick(&title, Qt::Key_Tab);
  CHECK(desk.window->windowTitle().contains(QStringLiteral("Autumn regatta")));
  QTest::keySequence(desk.window.get(), QKeySequence(QKeySequence::Save));
  CHECK(waitFor([&] { return !desk.window->isWindowModified(); }));
  CHECK(DemoCopy::read(desk.demo.order()).contains("\"title\": \"Autumn regatta\""));
  REQUIRE(desk.waitForPlan());
}

TEST_CASE("From an empty desk to a new order with a garment from a file, saved under a new name",
          "[desk][editing][save]") {
  DeskOnDemo desk;
  desk.window->openShop(desk.demo.shop());
  auto& start = desk.find<QPushButton>("startNew");
  REQUIRE(start.isVisible());
  QTest::mouseClick(&start, Qt::LeftButton);
  REQUIRE(waitFor([&] { return desk.order().isVisible(); }));
  auto& number = desk.find<QLineEdit>("orderNumber");
  typeInto(number, QStringLiteral("2026-200"));
  QTest::keyClick(&number, Qt::Key_Tab);
  auto& garments = desk.find<QMenu>("addGarment");
  Q_EMIT garments.aboutToShow();
  answerFileDialog(desk, desk.demo.folder() / "blanks" / "quayside-crew.blank.json");
  garments.actions().last()->trigger();
  REQUIRE(model(desk).rowCount() == 1);
  auto& quantity = desk.find<QLineEdit>("quantity-M");
  typeInto(quantity, QStringLiteral("6"));
  QTest::keyClick(&quantity, Qt::Key_Return);
  auto& places = desk.find<QMenu>("addPlace");
  Q_EMIT places.aboutToShow();
  answerFileDialog(desk, desk.demo.folder() / "designs" / "crest.design.json");
  places.actions().last()->trigger();
  REQUIRE(desk.waitForPlan());
  const std::filesystem::path file = desk.demo.folder() / "first.order.json";
  answerFileDialog(desk, file);
  desk.save();
  CHECK_FALSE(desk.window->isWindowModified());
  const Order saved = loadOrder(file, shippedRules()).value;
  CHECK(saved.id == "2026-200");
  CHECK(saved.garments() == 6);
  CHECK(DemoCopy::read(file).contains("quayside-crew.blank.json"));
}
