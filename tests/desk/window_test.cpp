// SPDX-License-Identifier: MIT
// The window as a person uses it: clicks and keys, nothing else.
#include <QClipboard>
#include <QFileDialog>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTextBrowser>
#include <QTimer>
#include <QToolButton>
#include <QUndoStack>

#include "desk/changed_parts.h"
#include "desk/finding_model.h"
#include "desk/order_model.h"
#include "desk/table_canvas.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

QString reasons(DeskOnDemo& desk) {
  return desk.find<QTextBrowser>("reasons").toPlainText();
}

QModelIndex cell(DeskOnDemo& desk, int line, int placement, const QString& size) {
  const auto* model = qobject_cast<OrderModel*>(desk.order().model());
  REQUIRE(model != nullptr);
  return model->indexOf(static_cast<std::size_t>(line), static_cast<std::size_t>(placement),
                        model->sizeColumn(SizeName(toUtf8(size))));
}

}  // namespace

TEST_CASE("An empty desk offers a way on and opens the demo by its button", "[desk][window]") {
  DeskOnDemo desk;
  auto& demo = desk.find<QPushButton>("startDemo");
  REQUIRE(demo.isVisible());
  CHECK(desk.find<QPushButton>("startOrder").isVisible());
  QTest::mouseClick(&demo, Qt::LeftButton);
  REQUIRE(desk.waitForPlan());
  CHECK(desk.order().isVisible());
  CHECK_FALSE(demo.isVisible());
  CHECK(desk.window->windowTitle().contains(QStringLiteral("2026-118")));
}

TEST_CASE("Clicking a size's cell shows that place and size everywhere", "[desk][window]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), cell(desk, 0, 1, QStringLiteral("2XL")));
  CHECK(reasons(desk).startsWith(QStringLiteral("Hood back, size 2XL")));
  CHECK(desk.sizes().currentIndex().data().toString() == QStringLiteral("2XL"));
  clickItem(desk.order(), cell(desk, 1, 0, QStringLiteral("YS")));
  CHECK(reasons(desk).contains(QStringLiteral("size YS")));
  CHECK(desk.sizes().model()->rowCount() == 3);
}

TEST_CASE("Sizes are chosen on the rail by click and by arrow keys", "[desk][window]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), cell(desk, 0, 0, QStringLiteral("M")));
  clickItem(desk.sizes(), desk.sizes().model()->index(0, 0));
  CHECK(reasons(desk).contains(QStringLiteral("size S")));
  QTest::keyClick(&desk.sizes(), Qt::Key_Right);
  CHECK(reasons(desk).contains(QStringLiteral("size M")));
  QTest::keyClick(&desk.sizes(), Qt::Key_End);
  CHECK(reasons(desk).contains(QStringLiteral("size 4XL")));
  CHECK(desk.order().currentIndex() == cell(desk, 0, 0, QStringLiteral("4XL")));
}

TEST_CASE("The order is walked with arrow keys along the sizes and down the places",
          "[desk][window]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), cell(desk, 0, 0, QStringLiteral("L")));
  QTest::keyClick(&desk.order(), Qt::Key_Right);
  CHECK(reasons(desk).contains(QStringLiteral("size XL")));
  QTest::keyClick(&desk.order(), Qt::Key_Down);
  CHECK(reasons(desk).startsWith(QStringLiteral("Hood back, size XL")));
}

TEST_CASE("A finding takes you to its place, by click and by Enter", "[desk][window]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto* model = qobject_cast<FindingModel*>(desk.findings().model());
  REQUIRE(model != nullptr);
  REQUIRE(model->rowCount() > 1);
  for (const int row : {model->rowCount() - 1, 0}) {
    const Finding finding = *model->finding(row);
    CAPTURE(row, finding.place);
    if (row == 0) {
      desk.findings().setFocus();
      QTest::keyClick(&desk.findings(), Qt::Key_Home);
      QTest::keyClick(&desk.findings(), Qt::Key_Return);
    } else {
      clickItem(desk.findings(), model->index(row, 0));
    }
    const QModelIndex current = desk.order().currentIndex();
    CHECK(current.data(OrderModel::LineRole).toInt() == static_cast<int>(finding.line));
    CHECK(current.data(OrderModel::PlacementRole).toInt() == static_cast<int>(finding.placement));
    if (!finding.wholeOrder) {
      CHECK(reasons(desk).contains(QStringLiteral("size ") +
                                   toQString(finding.sizes.front().text())));
    }
  }
}

TEST_CASE("Switching units changes the numbers on screen", "[desk][window][units]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("unitInch").trigger();
  REQUIRE(desk.waitForPlan());
  const QString inInches = reasons(desk);
  desk.action("unitMillimetre").trigger();
  CHECK(desk.action("unitMillimetre").isChecked());
  REQUIRE(desk.waitForPlan());
  const QString inMm = reasons(desk);
  CHECK(inInches.contains(QStringLiteral(" in ")));
  CHECK(inMm.contains(QStringLiteral(" mm")));
  CHECK(inMm != inInches);
  CHECK_FALSE(desk.action("markEighth").isEnabled());
}

TEST_CASE("A file changed on disk is read again and the selection stays", "[desk][window][watch]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), cell(desk, 1, 0, QStringLiteral("YM")));
  DemoCopy::edit(desk.demo.order(), "\"YM\": 3", "\"YM\": 17");
  REQUIRE(waitFor([&] { return reasons(desk).contains(QStringLiteral("17 ×")); }));
  CHECK(reasons(desk).contains(QStringLiteral("size YM")));
  CHECK(desk.order().currentIndex() == cell(desk, 1, 0, QStringLiteral("YM")));
  // The status bar says what was taken, and that it can be undone.
  const QString said = desk.window->statusBar()->currentMessage();
  CHECK(said.contains(QStringLiteral("regatta.order.json")));
  CHECK(said.contains(QStringLiteral("line 2")));
  CHECK(said.contains(QStringLiteral("Undo")));
  CHECK_FALSE(said.contains(QStringLiteral("line 1")));
  desk.action("undo").trigger();
  CHECK(cell(desk, 1, 0, QStringLiteral("YM"))
            .parent()
            .siblingAtColumn(desk.order().currentIndex().column())
            .data()
            .toInt() == 3);
}

TEST_CASE("A shop changed on disk is taken with a word in the status bar, and can be undone",
          "[desk][window][watch]") {
  DeskOnDemo desk;
  desk.openDemo();
  DemoCopy::edit(desk.demo.shop(), "\"name\": \"Millrace Stitchroom\"",
                 "\"name\": \"Lock Stitchroom\"");
  REQUIRE(waitFor([&] { return desk.label("orderDetail").contains(QStringLiteral("Lock")); }));
  const QString said = desk.window->statusBar()->currentMessage();
  CHECK(said.contains(QStringLiteral("workshop.shop.json")));
  CHECK(said.contains(QStringLiteral("name")));
  REQUIRE(desk.action("undo").isEnabled());
  desk.action("undo").trigger();
  CHECK(waitFor([&] { return desk.label("orderDetail").contains(QStringLiteral("Millrace")); }));
  // The file's is the saved one, so that the desk asks before it is left.
  desk.action("redo").trigger();
  REQUIRE(desk.waitForPlan());
  // Writing the same again is no change and says nothing.
  desk.window->statusBar()->clearMessage();
  DemoCopy::replace(desk.demo.shop(), DemoCopy::read(desk.demo.shop()) + "\n");
  QTest::qWait(400);
  CHECK(desk.window->statusBar()->currentMessage().isEmpty());
}

TEST_CASE("What an order or a shop has otherwise is named in a few words",
          "[desk][window][watch]") {
  const Order& before = *plannedDemo()->order();
  CHECK(changedParts(before, before).isEmpty());
  Order after = before;
  after.title = "Another";
  after.lines[1].note = "rush";
  after.lines.pop_back();
  after.blanks.front().name = "Quay hoodie";
  const QStringList parts = changedParts(before, after);
  CHECK(parts == QStringList{QStringLiteral("head of the order"), QStringLiteral("line 2"),
                             QStringLiteral("line 3"), QStringLiteral("garment Quay hoodie")});
  CHECK(fewOf(parts) == QStringLiteral("head of the order, line 2 and 2 more"));
  after = before;
  std::swap(after.lines[0], after.lines[1]);
  CHECK(changedParts(before, after).size() == 1);
  Shop shop = *plannedDemo()->shop();
  shop.frames.pop_back();
  shop.rates.reset();
  CHECK(changedParts(*plannedDemo()->shop(), shop) ==
        QStringList{QStringLiteral("frames"), QStringLiteral("rates")});
}

TEST_CASE("A broken file shows file, place, found and expected, and keeps the plan",
          "[desk][window][watch]") {
  DeskOnDemo desk;
  desk.openDemo();
  const QString before = reasons(desk);
  auto& bar = desk.find<QWidget>("messageBar");
  REQUIRE_FALSE(bar.isVisible());
  DemoCopy::edit(desk.demo.order(), "\"YM\": 3", "\"YM\": -3");
  REQUIRE(waitFor([&] { return bar.isVisible(); }));
  const QString detail = desk.label("messageDetail");
  CHECK(desk.label("messageHeadline").contains(QStringLiteral("regatta.order.json")));
  CHECK(detail.contains(QStringLiteral("File: ")));
  CHECK(detail.contains(QStringLiteral("Place: /lines/1/sizes/YM")));
  CHECK(detail.contains(QStringLiteral("Found: ")));
  CHECK(detail.contains(QStringLiteral("Expected: ")));
  CHECK(reasons(desk) == before);
  CHECK(desk.find<TableCanvas>("table").accessibleDescription().startsWith(
      QStringLiteral("Last good plan")));
  CHECK_FALSE(desk.action("saveSheets").isEnabled());
  DemoCopy::edit(desk.demo.order(), "\"YM\": -3", "\"YM\": 3");
  CHECK(waitFor([&] { return !bar.isVisible(); }));
  CHECK(desk.waitForPlan());
}

TEST_CASE("An order that is not there is said plainly and the start page stays", "[desk][window]") {
  DeskOnDemo desk;
  desk.window->openOrder(desk.demo.folder() / "missing.order.json");
  auto& bar = desk.find<QWidget>("messageBar");
  REQUIRE(waitFor([&] { return bar.isVisible(); }));
  CHECK(desk.label("messageHeadline").contains(QStringLiteral("missing.order.json")));
  CHECK(desk.find<QPushButton>("startOrder").isVisible());
}

TEST_CASE("A remedy is tried, undone and redone, and closing asks before it is lost",
          "[desk][window][undo]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto* model = qobject_cast<FindingModel*>(desk.findings().model());
  QPushButton* button = nullptr;
  for (int row = 0; row < model->rowCount() && button == nullptr; ++row) {
    clickItem(desk.findings(), model->index(row, 0));
    for (auto* candidate :
         desk.find<QWidget>("remedies").findChildren<QPushButton*>(QStringLiteral("tryIt"))) {
      button = candidate->isVisible() ? candidate : button;
    }
  }
  REQUIRE(button != nullptr);
  const int findings = model->rowCount();
  const QString name = button->accessibleName();
  QTest::mouseClick(button, Qt::LeftButton);
  REQUIRE(desk.waitForPlan());
  CHECK(desk.window->isWindowModified());
  const int after = model->rowCount();
  CHECK(after != findings);
  CHECK(desk.action("undo").text().contains(name.mid(name.indexOf(QLatin1Char(' ')) + 1)));
  QTest::keySequence(desk.window.get(), QKeySequence(QKeySequence::Undo));
  REQUIRE(desk.waitForPlan());
  CHECK_FALSE(desk.window->isWindowModified());
  CHECK(model->rowCount() == findings);
  QTest::keySequence(desk.window.get(), QKeySequence(QKeySequence::Redo));
  REQUIRE(desk.waitForPlan());
  CHECK(model->rowCount() == after);

  QString asked;
  const auto answer = [&asked](int key) {
    return [&asked, key] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      if (box != nullptr) {
        asked = box->text();
        QTest::keyClick(box, static_cast<Qt::Key>(key));
      }
    };
  };
  QTimer::singleShot(200, desk.window.get(), answer(Qt::Key_Escape));
  CHECK_FALSE(desk.window->close());
  CHECK(asked.contains(QStringLiteral("not saved")));
  CHECK(desk.window->isVisible());
  desk.action("undo").trigger();
  CHECK(desk.window->close());
}

TEST_CASE("A new order in which nothing was entered goes without a question", "[desk][window]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("newOrder").trigger();
  REQUIRE(waitFor([&] { return desk.order().model()->rowCount() == 0; }));
  desk.openDemo();  // a question would hold this up
  CHECK(desk.order().model()->rowCount() > 0);
}

TEST_CASE("Files dropped on the window are opened, whichever comes first", "[desk][window]") {
  DeskOnDemo desk;
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(pathText(desk.demo.order())),
                QUrl::fromLocalFile(pathText(desk.demo.shop()))});
  const QPoint middle = desk.window->rect().center();
  QDragEnterEvent enter(middle, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(desk.window.get(), &enter);
  REQUIRE(enter.isAccepted());
  QDropEvent drop(middle, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(desk.window.get(), &drop);
  CHECK(desk.waitForPlan());
}

TEST_CASE("The table zooms at the pointer, pans, and fits again", "[desk][window][table]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto& table = desk.find<TableCanvas>("table");
  const double fitted = table.pixelsPerMm();
  const QPointF centre = table.centre();
  table.setFocus();
  QTest::keyClick(&table, Qt::Key_Plus);
  CHECK(table.pixelsPerMm() > fitted);
  QTest::keyClick(&table, Qt::Key_Right, Qt::ControlModifier);
  CHECK(table.centre().x() > centre.x());
  const QPointF before = table.centre();
  QTest::mousePress(&table, Qt::LeftButton, Qt::NoModifier, {20, 400});
  QTest::mouseMove(&table, {80, 430});
  QTest::mouseRelease(&table, Qt::LeftButton, Qt::NoModifier, {80, 430});
  CHECK(table.centre().x() < before.x());
  CHECK(table.centre().y() < before.y());
  QTest::keyClick(&table, Qt::Key_0);
  CHECK(table.pixelsPerMm() == fitted);
  CHECK(table.centre() == centre);
  const QPointF at(50.0, 60.0);
  const QPointF middle = QRectF(table.rect()).center();
  const QPointF held = table.centre() + (at - middle) / table.pixelsPerMm();
  QWheelEvent wheel(at, table.mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(&table, &wheel);
  const QPointF heldAfter = table.centre() + (at - middle) / table.pixelsPerMm();
  CHECK(heldAfter.x() == Approx(held.x()));
  CHECK(heldAfter.y() == Approx(held.y()));
  CHECK(table.pixelsPerMm() > fitted);
}

TEST_CASE("The place is switched above the table, front to hood", "[desk][window][table]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), cell(desk, 0, 0, QStringLiteral("M")));
  QToolButton* hood = nullptr;
  for (auto* button : desk.window->findChildren<QToolButton*>()) {
    hood = button->text().contains(QStringLiteral("Hood back")) ? button : hood;
  }
  REQUIRE(hood != nullptr);
  QTest::mouseClick(hood, Qt::LeftButton);
  CHECK(reasons(desk).startsWith(QStringLiteral("Hood back, size M")));
  CHECK(hood->isChecked());
}

TEST_CASE("A part of the garment without a place is looked at from above the table",
          "[desk][window][table]") {
  DeskOnDemo desk;
  desk.openDemo();
  clickItem(desk.order(), cell(desk, 0, 0, QStringLiteral("M")));
  auto& table = desk.find<TableCanvas>("table");
  const QString sewn = table.accessibleDescription();
  auto& menu = *desk.find<QToolButton>("otherPanels").menu();
  Q_EMIT menu.aboutToShow();
  // The demo's first line is sewn on the front and on the hood.
  QStringList parts;
  for (const QAction* action : menu.actions()) {
    parts.append(action->text());
  }
  CHECK(parts == QStringList{QStringLiteral("Back"), QStringLiteral("Left sleeve"),
                             QStringLiteral("Right sleeve")});
  menu.actions().first()->trigger();
  CHECK(table.accessibleDescription().startsWith(QStringLiteral("Nothing is sewn here")));
  CHECK(desk.find<QToolButton>("otherPanels").text() == QStringLiteral("Back"));
  CHECK_FALSE(table.designAt());
  QCoreApplication::processEvents();
  QDir().mkpath(QStringLiteral(SCREENSHOT_FOLDER));
  CHECK(desk.window->grab().save(QStringLiteral(SCREENSHOT_FOLDER) + QStringLiteral("/part.png")));
  // Sizes go along; a place leads back to what is sewn.
  const QImage middle = table.grab().toImage();
  clickItem(desk.sizes(), desk.sizes().model()->index(0, 0));
  CHECK(table.accessibleDescription().startsWith(QStringLiteral("Nothing is sewn here")));
  CHECK(table.grab().toImage() != middle);
  clickItem(desk.order(), cell(desk, 0, 0, QStringLiteral("M")));
  CHECK(table.accessibleDescription() == sewn);
  CHECK(desk.find<QToolButton>("otherPanels").text() == QStringLiteral("Other panels"));
}

TEST_CASE("The garments that a remedy mends are on show after it", "[desk][window]") {
  constexpr qsizetype kAllLines = 100;
  DeskOnDemo desk(kAllLines);
  desk.openDemo();
  auto* model = qobject_cast<FindingModel*>(desk.findings().model());
  int tried = 0;
  for (int row = 0; row < model->rowCount(); ++row) {
    const Finding* finding = model->finding(row);
    if (finding == nullptr || finding->wholeOrder || finding->sizes.empty() ||
        finding->remedies.empty() ||
        !std::holds_alternative<ScaleChange>(finding->remedies.front().change)) {
      continue;
    }
    const SizeName size = finding->sizes.front();
    const QString text = toQString(finding->text);
    CAPTURE(text);
    clickItem(desk.findings(), model->index(row, 0));
    auto* button = desk.find<QWidget>("remedies").findChild<QPushButton*>(QStringLiteral("tryIt"));
    REQUIRE(button != nullptr);
    button->click();
    REQUIRE(desk.waitForPlan());
    ++tried;
    CHECK(reasons(desk).contains(QStringLiteral("size ") + toQString(size.text())));
    // The scale that the place was given is what the form shows.
    CHECK(desk.find<QLineEdit>("placeScale").text() != QStringLiteral("100 %"));
    desk.action("undo").trigger();
    REQUIRE(desk.waitForPlan());
  }
  CHECK(tried > 0);
}

TEST_CASE("The window's file, units and place come back the next day", "[desk][window]") {
  const DemoCopy demo;
  {
    DeskWindow window(shippedRules(), resourcesFolder(), demo.settings());
    window.show();
    window.openOrder(demo.order());
    auto* save = window.findChild<QAction*>(QStringLiteral("saveSheets"));
    REQUIRE(waitFor([&] { return save->isEnabled(); }));
    window.findChild<QAction*>(QStringLiteral("unitCentimetre"))->trigger();
    REQUIRE(waitFor([&] { return save->isEnabled(); }));
    window.resize(1200, 800);
    CHECK(window.close());
  }
  DeskWindow window(shippedRules(), resourcesFolder(), demo.settings());
  CHECK(window.findChild<QAction*>(QStringLiteral("unitCentimetre"))->isChecked());
  CHECK(window.size() == QSize(1200, 800));
  const auto* recent = window.findChild<QMenu*>(QStringLiteral("recentOrders"));
  CHECK(recent->actions().first()->text() == QDir::toNativeSeparators(pathText(demo.order())));
}
