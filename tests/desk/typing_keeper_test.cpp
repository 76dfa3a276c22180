// SPDX-License-Identifier: MIT
#include "desk/typing_keeper.h"

#include <QPlainTextEdit>
#include <QUndoStack>

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

TEST_CASE("Words count while they are typed, and are one step when the field is left",
          "[desk][editing][recovery]") {
  DeskOnDemo desk(1);
  desk.openDemo();
  const QString name = GENERATE(QStringLiteral("orderCustomer"), QStringLiteral("orderNote"));
  CAPTURE(name);
  auto* field = desk.window->findChild<QWidget*>(name);
  REQUIRE(field != nullptr);
  const auto text = [field] {
    const auto* line = qobject_cast<QLineEdit*>(field);
    return line != nullptr ? line->text() : qobject_cast<QPlainTextEdit*>(field)->toPlainText();
  };
  desk.action("goToDetails").trigger();
  field->setFocus();
  REQUIRE(field->hasFocus());
  QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(field, QStringLiteral("Rowing "));
  CHECK(waitFor([&] { return desk.window->isWindowModified(); }));
  // The blank stays, and the next word goes on behind it.
  QTest::keyClicks(field, QStringLiteral("club"));
  CHECK(text() == QStringLiteral("Rowing club"));
  QTest::qWait(2 * TypingKeeper::kMostMs);
  CHECK(text() == QStringLiteral("Rowing club"));
  QTest::keyClick(field, Qt::Key_Tab);
  CHECK(text() == QStringLiteral("Rowing club"));
  desk.action("undo").trigger();
  CHECK_FALSE(desk.window->isWindowModified());
  CHECK(text() != QStringLiteral("Rowing club"));
}
