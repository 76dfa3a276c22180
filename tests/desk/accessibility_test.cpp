// SPDX-License-Identifier: MIT
// Names for screen readers and the keyboard's way round the window.
#include <QAbstractButton>
#include <QAccessible>
#include <QCheckBox>
#include <QGroupBox>
#include <QMenuBar>
#include <QSet>

#include "library_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

QList<QWidget*> focusable(const QWidget& window) {
  QList<QWidget*> found;
  for (auto* widget : window.findChildren<QWidget*>()) {
    const bool byTab = (widget->focusPolicy() & Qt::TabFocus) != 0;
    // One that hands the focus on is a part of another control.
    const bool own = widget->focusProxy() == nullptr && widget->window() == &window;
    if (byTab && own && widget->isVisible() && widget->isEnabled()) {
      found.append(widget);
    }
  }
  return found;
}

QString nameOf(QWidget* widget) {
  QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(widget);
  REQUIRE(interface != nullptr);
  return interface->text(QAccessible::Name);
}

void checkNames(const QWidget& window) {
  QSet<QString> names;
  for (QWidget* widget : focusable(window)) {
    const QString name = nameOf(widget);
    CAPTURE(widget->metaObject()->className(), widget->objectName(), name);
    CHECK_FALSE(name.trimmed().isEmpty());
    CHECK_FALSE(names.contains(name));
    names.insert(name);
  }
  CHECK(names.size() >= 3);
}

// Where Tab leads from the given widget until it comes round.
QSet<QWidget*> tabbed(QWidget& window) {
  QSet<QWidget*> reached;
  for (int i = 0; i < 200; ++i) {
    QWidget* at = QApplication::focusWidget();
    if (at != nullptr && reached.contains(at)) {
      break;
    }
    if (at != nullptr) {
      reached.insert(at);
    }
    QTest::keyClick(at == nullptr ? &window : at, Qt::Key_Tab);
  }
  return reached;
}

}  // namespace

TEST_CASE("Every control of the empty desk has a name of its own in every language",
          "[desk][accessibility][translation]") {
  DeskOnDemo desk(DemoCopy::kFewLines, GENERATE(Language::English, Language::Spanish));
  checkNames(*desk.window);
}

TEST_CASE("Every control of the desk at work has a name of its own in every language",
          "[desk][accessibility][translation]") {
  DeskOnDemo desk(DemoCopy::kFewLines, GENERATE(Language::English, Language::Spanish));
  desk.openDemo();
  // With the remedies of a finding on screen as well.
  for (int row = 0; row < desk.findings().model()->rowCount(); ++row) {
    clickItem(desk.findings(), desk.findings().model()->index(row, 0));
    CAPTURE(row);
    checkNames(*desk.window);
  }
}

TEST_CASE("Tab reaches every control", "[desk][accessibility]") {
  DeskOnDemo desk;
  SECTION("on the empty desk") {
  }
  SECTION("on the desk at work") {
    desk.openDemo();
    clickItem(desk.findings(), desk.findings().model()->index(0, 0));
  }
  desk.window->activateWindow();
  const QSet<QWidget*> reached = tabbed(*desk.window);
  for (QWidget* widget : focusable(*desk.window)) {
    CAPTURE(widget->metaObject()->className(), widget->objectName(), nameOf(widget));
    CHECK(reached.contains(widget));
  }
}

TEST_CASE("Every control of the window Sheets has a name and is reached by Tab",
          "[desk][accessibility][sheets]") {
  DeskOnDemo desk;
  desk.openDemo();
  QWidget& sheets = desk.openSheets("saveSheets");
  checkNames(sheets);
  const QSet<QWidget*> reached = tabbed(sheets);
  for (QWidget* widget : focusable(sheets)) {
    CAPTURE(widget->metaObject()->className(), widget->objectName(), nameOf(widget));
    CHECK(reached.contains(widget));
  }
  // The page is told as well as shown.
  CHECK(nameOf(&desk.find<QWidget>("sheetPreview"))
            .startsWith(QStringLiteral("Preview of page 1 of")));
}

TEST_CASE("Mnemonics of the window Sheets do not clash", "[desk][accessibility][sheets]") {
  DeskOnDemo desk;
  desk.openDemo();
  const QWidget& sheets = desk.openSheets("printSheets");
  QStringList texts;
  for (const auto* button : sheets.findChildren<QAbstractButton*>()) {
    if (!button->text().isEmpty()) {
      texts.append(button->text());
    }
  }
  for (const auto* label : sheets.findChildren<QLabel*>()) {
    if (label->buddy() != nullptr) {
      texts.append(label->text());
    }
  }
  CHECK(texts.size() > 10);
  QSet<QChar> used;
  for (const QString& text : texts) {
    const qsizetype at = text.indexOf(QLatin1Char('&'));
    CAPTURE(text);
    REQUIRE(at >= 0);
    const QChar letter = text.at(at + 1).toLower();
    CHECK_FALSE(used.contains(letter));
    used.insert(letter);
  }
}

namespace {

// Two letters under Alt that mean different things would only move the focus between them.
void checkMnemonics(const QWidget& window) {
  QSet<QChar> used;
  const auto take = [&](const QString& text) {
    const qsizetype at = text.indexOf(QLatin1Char('&'));
    if (at >= 0) {
      CAPTURE(text);
      CHECK_FALSE(used.contains(text.at(at + 1).toLower()));
      used.insert(text.at(at + 1).toLower());
    }
  };
  for (const auto* button : window.findChildren<QAbstractButton*>()) {
    take(button->text());
  }
  for (const auto* label : window.findChildren<QLabel*>()) {
    take(label->buddy() == nullptr ? QString() : label->text());
  }
  for (const auto* group : window.findChildren<QGroupBox*>()) {
    take(group->title());
  }
  CHECK(used.size() > 3);
}

void checkWindow(QWidget& window) {
  checkNames(window);
  checkMnemonics(window);
  QWidget* first = window.findChild<QListWidget*>();
  first->setFocus();
  const QSet<QWidget*> reached = tabbed(window);
  for (QWidget* widget : focusable(window)) {
    CAPTURE(widget->metaObject()->className(), widget->objectName(), nameOf(widget));
    CHECK(reached.contains(widget));
    CHECK_FALSE(widget->objectName().isEmpty());
  }
}

}  // namespace

TEST_CASE("Every control of the windows Garments and Designs has a name and is reached by Tab",
          "[desk][accessibility][garments][designs]") {
  DeskOnDemo desk;
  desk.openDemo();
  checkWindow(openLibrary(desk, "editGarments", "garments"));
  QWidget& designs = openLibrary(desk, "editDesigns", "designs");
  desk.find<QMenu>("designsAddMenu").actions().first()->trigger();
  checkWindow(designs);
  desk.find<QCheckBox>("designMonogram").setFocus();
  QTest::keyClick(&desk.find<QCheckBox>("designMonogram"), Qt::Key_Space);
  checkWindow(designs);
}

TEST_CASE("Every control of the preview of a chart has a name and is reached by Tab",
          "[desk][accessibility][garments][import]") {
  DeskOnDemo desk;
  desk.openDemo();
  openLibrary(desk, "editGarments", "garments");
  QApplication::clipboard()->setText(QStringLiteral("Size\tChest width\tRemark\nS\t46\tx\n"));
  press(desk, "chartPaste");
  auto& preview = desk.find<QDialog>("chartPreview");
  REQUIRE(waitFor([&] { return QApplication::activeWindow() == &preview; }));
  checkWindow(preview);
}

TEST_CASE("Ctrl and a digit lead to each part of the desk", "[desk][accessibility]") {
  DeskOnDemo desk;
  desk.openDemo();
  const std::vector<std::pair<Qt::Key, const char*>> parts{{Qt::Key_1, "order"},
                                                           {Qt::Key_2, "table"},
                                                           {Qt::Key_3, "sizes"},
                                                           {Qt::Key_4, "reasons"},
                                                           {Qt::Key_5, "findings"}};
  for (const auto& [key, name] : parts) {
    QTest::keyClick(desk.window.get(), key, Qt::ControlModifier);
    CAPTURE(name);
    REQUIRE(QApplication::focusWidget() != nullptr);
    CHECK(QApplication::focusWidget()->objectName() == QString::fromLatin1(name));
  }
}

TEST_CASE("Every menu and every entry has a mnemonic or is a bare unit", "[desk][accessibility]") {
  DeskOnDemo desk;
  int entries = 0;
  for (const QAction* top : desk.window->menuBar()->actions()) {
    CHECK(top->text().contains(QLatin1Char('&')));
    QSet<QChar> used;
    for (const QAction* entry : top->menu()->actions()) {
      if (entry->isSeparator()) {
        continue;
      }
      const qsizetype at = entry->text().indexOf(QLatin1Char('&'));
      CAPTURE(entry->text());
      REQUIRE(at >= 0);
      const QChar letter = entry->text().at(at + 1).toLower();
      CHECK_FALSE(used.contains(letter));
      used.insert(letter);
      ++entries;
    }
  }
  CHECK(entries > 10);
}

TEST_CASE("No two actions share a shortcut", "[desk][accessibility]") {
  DeskOnDemo desk;
  QSet<QKeySequence> used;
  for (const QAction* action : desk.window->findChildren<QAction*>()) {
    for (const QKeySequence& sequence : action->shortcuts()) {
      CAPTURE(action->text(), sequence.toString());
      CHECK_FALSE(used.contains(sequence));
      used.insert(sequence);
    }
  }
  CHECK(used.size() > 10);
}
