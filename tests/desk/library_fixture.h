// SPDX-License-Identifier: MIT
// What the tests of the windows "Garments" and "Designs" share: opening them, typing, dialogs.
#pragma once

#include <QAbstractButton>
#include <QClipboard>
#include <QFileDialog>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QTableView>
#include <QTimer>

#include "desk_fixture.h"

namespace creaseline::desk {

// Opens a window by its action and waits until it is in front.
inline QWidget& openLibrary(DeskOnDemo& desk, const char* action, const char* window) {
  desk.action(action).trigger();
  auto& found = desk.find<QWidget>(window);
  // A window counts as active already when its parent is.
  REQUIRE(waitFor([&] { return QApplication::activeWindow() == &found; }));
  return found;
}

inline void chooseInList(DeskOnDemo& desk, const char* list, const QString& name) {
  auto& entries = desk.find<QListWidget>(list);
  const QList<QListWidgetItem*> found = entries.findItems(name, Qt::MatchContains);
  CAPTURE(name);
  REQUIRE(!found.isEmpty());
  clickItem(entries, entries.indexFromItem(found.first()));
}

inline void typeField(DeskOnDemo& desk, const char* field, const QString& text) {
  auto& edit = desk.find<QLineEdit>(field);
  CAPTURE(field);
  REQUIRE(edit.isEnabled());
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, text);
  QTest::keyClick(&edit, Qt::Key_Return);
}

inline void press(DeskOnDemo& desk, const char* button) {
  auto& found = desk.find<QAbstractButton>(button);
  CAPTURE(button);
  REQUIRE(found.isVisible());
  REQUIRE(found.isEnabled());
  QTest::mouseClick(&found, Qt::LeftButton);
}

// The editor of the cell that was clicked; those of cells before are gone.
template <class Editor>
Editor& openCell(QTableView& table, int row, int column) {
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  clickItem(table, table.model()->index(row, column));
  QTest::keyClick(&table, Qt::Key_F2);
  auto* editor = table.viewport()->findChild<Editor*>();
  REQUIRE(editor != nullptr);
  return *editor;
}

// Types over a cell as a person does: click, then F2 opens the editor. It is left open; `end` ends
// the typing.
inline QLineEdit& typeCell(QTableView& table, int row, int column, const QString& text) {
  auto& editor = openCell<QLineEdit>(table, row, column);
  editor.selectAll();
  QTest::keyClicks(&editor, text);
  return editor;
}

inline void typeCell(QTableView& table, int row, int column, const QString& text, Qt::Key end) {
  QTest::keyClick(&typeCell(table, row, column, text), end);
  QCoreApplication::processEvents();
}

}  // namespace creaseline::desk
