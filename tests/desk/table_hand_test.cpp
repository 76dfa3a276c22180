// SPDX-License-Identifier: MIT
// The design on the table in a person's hand: mouse, keys, typed lengths, and undo of all of it.
#include <QLineEdit>
#include <QUndoStack>

#include "desk/desk_fixture.h"
#include "desk/document.h"
#include "desk/selection.h"
#include "desk/table_canvas.h"

namespace creaseline::desk {
namespace {

using namespace creaseline::literals;

// The place on the table as the order has it, read from what the form shows.
QString shown(DeskOnDemo& desk, const char* field) {
  return desk.find<QLineEdit>(field).text();
}

TableCanvas& tableOf(DeskOnDemo& desk) {
  auto& table = desk.find<TableCanvas>("table");
  table.setFocus();
  REQUIRE(table.designAt().has_value());
  return table;
}

// Let go only after a pause in which the picture is painted, as a person does.
void drag(QWidget& widget, QPointF from, QPointF to, Qt::KeyboardModifiers modifiers = {}) {
  QTest::mousePress(&widget, Qt::LeftButton, modifiers, from.toPoint());
  const QPointF half = (from + to) / 2.0;
  for (const QPointF at : {half, to}) {
    QMouseEvent move(QEvent::MouseMove, at.toPoint(), widget.mapToGlobal(at.toPoint()),
                     Qt::NoButton, Qt::LeftButton, modifiers);
    QApplication::sendEvent(&widget, &move);
    QCoreApplication::processEvents();
  }
  QTest::mouseRelease(&widget, Qt::LeftButton, modifiers, to.toPoint());
}

}  // namespace

TEST_CASE("A design is dragged on the table, and undone in one step", "[desk][table][hand]") {
  DeskOnDemo desk;
  desk.openDemo();
  TableCanvas& table = tableOf(desk);
  const QString before = shown(desk, "placeMoveDown");
  const QPointF at = *table.designAt();
  drag(table, at, at + QPointF(0.0, 60.0));
  CHECK(shown(desk, "placeMoveDown") != before);
  CHECK(undoText(desk).contains(QStringLiteral("down of the rule")));
  // It lies where it was let go, before and after the plan is made again.
  CHECK((*table.designAt() - at).y() == Approx(60.0).margin(3.0));
  REQUIRE(desk.waitForPlan());
  CHECK((*table.designAt() - at).y() == Approx(60.0).margin(3.0));
  desk.action("undo").trigger();
  REQUIRE(desk.waitForPlan());
  CHECK(shown(desk, "placeMoveDown") == before);
  CHECK(table.designAt()->y() == Approx(at.y()).margin(0.01));
}

TEST_CASE("With Control a drag leaves out the ruler's marks; Escape gives a drag up",
          "[desk][table][hand]") {
  DeskOnDemo desk;
  desk.openDemo();
  TableCanvas& table = tableOf(desk);
  const QPointF at = *table.designAt();
  drag(table, at, at + QPointF(37.0, 41.0), Qt::ControlModifier);
  REQUIRE(desk.waitForPlan());
  CHECK((*table.designAt() - at - QPointF(37.0, 41.0)).manhattanLength() < 0.1);
  CHECK(shown(desk, "placeMoveRight") != QStringLiteral("0 mm"));
  const QString moved = shown(desk, "placeMoveDown");
  QTest::mousePress(&table, Qt::LeftButton, {}, table.designAt()->toPoint());
  QMouseEvent move(QEvent::MouseMove, QPointF(30.0, 30.0), table.mapToGlobal(QPointF(30.0, 30.0)),
                   Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&table, &move);
  CHECK((*table.designAt() - at).manhattanLength() > 100.0);
  QTest::keyClick(&table, Qt::Key_Escape);
  QTest::mouseRelease(&table, Qt::LeftButton, {}, {30, 30});
  CHECK((*table.designAt() - at - QPointF(37.0, 41.0)).manhattanLength() < 0.1);
  CHECK(shown(desk, "placeMoveDown") == moved);
}

TEST_CASE("Arrow keys go by ruler marks and make one step", "[desk][table][hand]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("unitMillimetre").trigger();
  REQUIRE(desk.waitForPlan());
  TableCanvas& table = tableOf(desk);
  const QString before = shown(desk, "placeMoveDown");
  QTest::keyClick(&table, Qt::Key_Down);
  const QString one = shown(desk, "placeMoveDown");
  CHECK(one != before);
  // Quicker than any plan can be made.
  QTest::keyClick(&table, Qt::Key_Down);
  QTest::keyClick(&table, Qt::Key_Down, Qt::ShiftModifier);
  QTest::keyClick(&table, Qt::Key_Right);
  REQUIRE(desk.waitForPlan());
  const auto mm = [](const QString& text) { return parseLength(toUtf8(text))->mm(); };
  CHECK(mm(shown(desk, "placeMoveDown")) == Approx(mm(one) + 5.0));
  CHECK(mm(shown(desk, "placeMoveRight")) != 0.0);
  desk.action("undo").trigger();
  CHECK(shown(desk, "placeMoveDown") == before);
  CHECK(shown(desk, "placeMoveRight") == QStringLiteral("0 mm"));
}

TEST_CASE("The grip turns the design, and keys do", "[desk][table][hand]") {
  DeskOnDemo desk;
  desk.openDemo();
  TableCanvas& table = tableOf(desk);
  REQUIRE(shown(desk, "placeTurn") == QStringLiteral("0°"));
  const QPointF centre = *table.designAt();
  const QPointF reach = *table.turnGripAt() - centre;
  drag(table, centre + reach, centre + QPointF(-reach.y(), reach.x()));
  CHECK(shown(desk, "placeTurn") == QStringLiteral("90°"));
  CHECK(undoText(desk).contains(QStringLiteral("Turn")));
  REQUIRE(desk.waitForPlan());
  QTest::keyClick(&table, Qt::Key_Comma);
  CHECK(shown(desk, "placeTurn") == QStringLiteral("89°"));
  REQUIRE(desk.waitForPlan());
  desk.action("byRule").trigger();
  CHECK(shown(desk, "placeTurn") == QStringLiteral("0°"));
  REQUIRE(desk.waitForPlan());
  CHECK_FALSE(desk.action("byRule").isEnabled());
}

TEST_CASE("A dimension is clicked and typed", "[desk][table][hand]") {
  DeskOnDemo desk;
  desk.openDemo();
  TableCanvas& table = tableOf(desk);
  const auto plate = table.dimensionAt(Dimension::Drop);
  REQUIRE(plate.has_value());
  QTest::mouseClick(&table, Qt::LeftButton, {}, plate->center().toPoint());
  auto* editor = table.findChild<QLineEdit*>(QStringLiteral("dimension"));
  REQUIRE(editor != nullptr);
  CHECK(editor->hasFocus());
  QTest::keyClicks(editor, QStringLiteral("4 1/x in"));
  QTest::keyClick(editor, Qt::Key_Return);
  CHECK(editor->isVisible());  // no length: it says so and stays
  CHECK_FALSE(editor->accessibleDescription().isEmpty());
  editor->selectAll();
  QTest::keyClicks(editor, QStringLiteral("4 1/4 in"));
  QTest::keyClick(editor, Qt::Key_Return);
  REQUIRE(desk.waitForPlan());
  CHECK(table.hasFocus());
  CHECK(table.accessibleDescription().contains(QStringLiteral("4 1/4 in")));
  // The same by keys, and Escape leaves all as it is.
  QTest::keyClick(&table, Qt::Key_F2);
  editor = table.findChild<QLineEdit*>(QStringLiteral("dimension"));
  REQUIRE(editor != nullptr);
  CHECK(editor->text() == QStringLiteral("4 1/4 in"));
  const QString step = undoText(desk);
  QTest::keyClick(editor, Qt::Key_Escape);
  CHECK(undoText(desk) == step);
  CHECK(table.hasFocus());
}

TEST_CASE("A second size is laid over the first", "[desk][table][sizes]") {
  DeskOnDemo desk;
  desk.openDemo();
  TableCanvas& table = tableOf(desk);
  QListView& sizes = desk.sizes();
  sizes.setFocus();
  const QImage alone = table.grab().toImage();
  const int other = sizes.currentIndex().row() == 0 ? 1 : 0;
  const QModelIndex index = sizes.model()->index(other, 0);
  QTest::mouseClick(sizes.viewport(), Qt::LeftButton, Qt::ControlModifier,
                    sizes.visualRect(index).center());
  CHECK(sizes.currentIndex().row() != other);
  CHECK(table.accessibleDescription().contains(
      QStringLiteral("size %1 drawn over it").arg(index.data().toString())));
  CHECK(table.grab().toImage() != alone);
  // The same again takes it away.
  QTest::mouseClick(sizes.viewport(), Qt::LeftButton, Qt::ControlModifier,
                    sizes.visualRect(index).center());
  CHECK(table.grab().toImage() == alone);
  QTest::keyClick(&desk.sizes(), Qt::Key_Right, Qt::ControlModifier);
  CHECK(table.accessibleDescription().contains(QStringLiteral("drawn over it")));
}

}  // namespace creaseline::desk
