// SPDX-License-Identifier: MIT
// The window "Garments", as a person uses it.
#include "desk/garments_window.h"

#include <QComboBox>
#include <QTableWidget>

#include "creaseline/catalogue/load.h"
#include "library_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

QTableView& chart(DeskOnDemo& desk) {
  return desk.find<QTableView>("chart");
}

int columnOf(DeskOnDemo& desk, const QString& name) {
  const auto& model = *chart(desk).model();
  for (int column = 0; column < model.columnCount(); ++column) {
    if (model.headerData(column, Qt::Horizontal).toString().simplified() == name) {
      return column;
    }
  }
  CAPTURE(name);
  FAIL("no such column");
  return -1;
}

int rowOf(DeskOnDemo& desk, const QString& size) {
  const auto& model = *chart(desk).model();
  for (int row = 0; row < model.rowCount(); ++row) {
    if (model.headerData(row, Qt::Vertical).toString() == size) {
      return row;
    }
  }
  CAPTURE(size);
  FAIL("no such size");
  return -1;
}

QString cell(DeskOnDemo& desk, const QString& size, const QString& measure) {
  return chart(desk).model()->index(rowOf(desk, size), columnOf(desk, measure)).data().toString();
}

void openTee(DeskOnDemo& desk) {
  desk.openDemo();
  desk.action("unitInch").trigger();
  openLibrary(desk, "editGarments", "garments");
  chooseInList(desk, "garmentsList", QStringLiteral("T-shirt"));
}

}  // namespace

TEST_CASE("A measure is typed in the chart, checked while typed, and undone", "[desk][garments]") {
  DeskOnDemo desk;
  openTee(desk);
  const int row = rowOf(desk, QStringLiteral("M"));
  const int column = columnOf(desk, QStringLiteral("Pit to pit"));
  const QString before = cell(desk, QStringLiteral("M"), QStringLiteral("Pit to pit"));
  QLineEdit& editor = typeCell(chart(desk), row, column, QStringLiteral("22 q"));
  CHECK(desk.label("chartNote").startsWith(QStringLiteral("■")));
  CHECK_FALSE(editor.accessibleDescription().isEmpty());
  // What will not do stays in the cell.
  QTest::keyClick(&editor, Qt::Key_Return);
  CHECK(editor.isVisible());
  CHECK_FALSE(desk.window->isWindowModified());
  QTest::keyClick(&editor, Qt::Key_Escape);
  CHECK_FALSE(desk.label("chartNote").startsWith(QStringLiteral("■")));
  typeCell(chart(desk), row, column, QStringLiteral("56 cm"), Qt::Key_Return);
  CHECK(undoText(desk).contains(QStringLiteral("Pit to pit of M: 22 3/64 in")));
  typeCell(chart(desk), row, column, QStringLiteral("21 3/4"), Qt::Key_Return);
  CHECK(cell(desk, QStringLiteral("M"), QStringLiteral("Pit to pit")) ==
        QStringLiteral("21 3/4 in"));
  CHECK(undoText(desk).contains(QStringLiteral("Pit to pit of M: 21 3/4 in")));
  CHECK(desk.window->isWindowModified());
  // By its keys, in this window.
  QTest::keySequence(&desk.find<QWidget>("garments"), QKeySequence(QKeySequence::Undo));
  QTest::keySequence(&desk.find<QWidget>("garments"), QKeySequence(QKeySequence::Undo));
  CHECK(cell(desk, QStringLiteral("M"), QStringLiteral("Pit to pit")) == before);
  CHECK_FALSE(desk.window->isWindowModified());
  desk.action("unitCentimetre").trigger();
  CHECK(
      cell(desk, QStringLiteral("M"), QStringLiteral("Pit to pit")).endsWith(QStringLiteral("cm")));
}

TEST_CASE("What is being typed in a cell stays when a plan arrives or units change",
          "[desk][garments]") {
  DeskOnDemo desk;
  openTee(desk);
  typeCell(chart(desk), 0, 0, QStringLiteral("19"), Qt::Key_Return);
  QLineEdit& editor = typeCell(chart(desk), 1, 0, QStringLiteral("21 1/"));
  REQUIRE(desk.waitForPlan());
  desk.action("unitCentimetre").trigger();
  REQUIRE(desk.waitForPlan());
  CHECK(editor.isVisible());
  CHECK(editor.text() == QStringLiteral("21 1/"));
}

TEST_CASE("Tab goes on along the chart, and Delete leaves a measure to the kind",
          "[desk][garments]") {
  DeskOnDemo desk;
  openTee(desk);
  const int row = rowOf(desk, QStringLiteral("M"));
  const int column = columnOf(desk, QStringLiteral("Neck width"));
  typeCell(chart(desk), row, column, QStringLiteral("7"), Qt::Key_Tab);
  CHECK(chart(desk).currentIndex().column() == column + 1);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
  clickItem(chart(desk), chart(desk).model()->index(row, column));
  QTest::keyClick(&chart(desk), Qt::Key_Delete);
  CHECK(cell(desk, QStringLiteral("M"), QStringLiteral("Neck width")).startsWith(QLatin1Char('(')));
  // Not so what every chart needs.
  clickItem(chart(desk),
            chart(desk).model()->index(row, columnOf(desk, QStringLiteral("Pit to pit"))));
  QTest::keyClick(&chart(desk), Qt::Key_Delete);
  CHECK(desk.label("chartNote").contains(QStringLiteral("Every chart needs this measure")));
}

TEST_CASE("Sizes are added, named, moved and removed; ordered ones stay", "[desk][garments]") {
  DeskOnDemo desk;
  desk.openDemo();
  openLibrary(desk, "editGarments", "garments");
  press(desk, "garmentsDuplicate");
  const int sizes = chart(desk).model()->rowCount();
  clickItem(chart(desk), chart(desk).model()->index(0, 0));
  press(desk, "chartSizeAdd");
  REQUIRE(chart(desk).model()->rowCount() == sizes + 1);
  CHECK(chart(desk).currentIndex().row() == 1);
  typeField(desk, "chartSizeName", QStringLiteral("Tall"));
  CHECK(rowOf(desk, QStringLiteral("Tall")) == 1);
  press(desk, "chartSizeDown");
  CHECK(rowOf(desk, QStringLiteral("Tall")) == 2);
  auto& band = desk.find<QComboBox>("chartSizeBand");
  band.setFocus();
  QTest::keyClick(&band, Qt::Key_End);
  Q_EMIT band.activated(band.currentIndex());
  CHECK(undoText(desk).contains(QStringLiteral("Size Tall counts as adult above XL")));
  press(desk, "chartSizeRemove");
  CHECK(chart(desk).model()->rowCount() == sizes);
  // Of the garment that lines use.
  desk.find<QListWidget>("garmentsList").setCurrentRow(0);
  QString problem;
  for (int row = 0; row < chart(desk).model()->rowCount() && problem.isEmpty(); ++row) {
    clickItem(chart(desk), chart(desk).model()->index(row, 0));
    const int before = chart(desk).model()->rowCount();
    press(desk, "chartSizeRemove");
    if (chart(desk).model()->rowCount() == before) {
      problem = desk.label("chartNote");
    } else {
      desk.action("undo").trigger();
    }
  }
  CHECK(problem.contains(QStringLiteral("is ordered on")));
}

TEST_CASE("A garment that lines use is not removed, and one that none uses is",
          "[desk][garments]") {
  DeskOnDemo desk;
  desk.openDemo();
  openLibrary(desk, "editGarments", "garments");
  auto& list = desk.find<QListWidget>("garmentsList");
  const int count = list.count();
  list.setCurrentRow(0);
  press(desk, "garmentsRemove");
  CHECK(list.count() == count);
  auto& message = desk.find<MessageBar>("garmentsMessage");
  CHECK(message.isVisible());
  CHECK(message.detail().contains(QStringLiteral("is used on line 1 of")));
  auto* add = desk.find<QMenu>("garmentsAddMenu").actions().first();
  add->trigger();
  CHECK(list.count() == count + 1);
  CHECK(list.currentRow() == count);
  CHECK_FALSE(message.isVisible());
  press(desk, "garmentsRemove");
  CHECK(list.count() == count);
  desk.action("undo").trigger();
  desk.action("undo").trigger();
  CHECK_FALSE(desk.window->isWindowModified());
}

TEST_CASE("Name, fabric and colours are typed, each a step of its own", "[desk][garments]") {
  DeskOnDemo desk;
  openTee(desk);
  typeField(desk, "garmentName", QStringLiteral("Summer shirt"));
  typeField(desk, "fabricWeight", QStringLiteral("6 oz"));
  typeField(desk, "fabricFibres", QStringLiteral("60 % cotton, 40 % polyester"));
  typeField(desk, "fabricFibres", QStringLiteral("60 % cotton, 50 % polyester"));
  auto* fibres = qobject_cast<FieldEdit*>(desk.find<QLineEdit>("fabricFibres").parentWidget());
  CHECK(fibres->problem().contains(QStringLiteral("110 %")));
  QTest::keyClick(&fibres->edit(), Qt::Key_Escape);
  auto& colours = desk.find<QTableView>("garmentColours");
  typeCell(colours, 0, 0, QStringLiteral("storm"), Qt::Key_Return);
  typeCell(colours, 0, 1, QStringLiteral("#12345"), Qt::Key_Return);
  CHECK(desk.label("garmentColoursNote").startsWith(QStringLiteral("■")));
  QTest::keyClick(colours.viewport()->findChild<QLineEdit*>(), Qt::Key_Escape);
  typeCell(colours, 0, 1, QStringLiteral("#123456"), Qt::Key_Return);
  CHECK(undoText(desk).contains(QStringLiteral("#123456")));
  press(desk, "garmentColoursAdd");
  REQUIRE(desk.waitForPlan());
  desk.save();
  CHECK_FALSE(desk.window->isWindowModified());
  const Order saved = loadOrder(desk.demo.order(), shippedRules()).value;
  const auto found = std::find_if(saved.blanks.begin(), saved.blanks.end(),
                                  [](const Blank& blank) { return blank.name == "Summer shirt"; });
  REQUIRE(found != saved.blanks.end());
  CHECK(found->fabric.fibres.size() == 2);
  CHECK(found->colours.front() == ClothColour{"storm", {0x12, 0x34, 0x56}});
}

TEST_CASE("A chart is pasted from a spreadsheet, its columns put right, and taken as one step",
          "[desk][garments][import]") {
  DeskOnDemo desk;
  openTee(desk);
  press(desk, "garmentsDuplicate");
  QApplication::clipboard()->setText(
      QStringLiteral("Size\tChest width\tOver here\tRemark\nS\t46\t70\tx\nM\t51\t72,5\t\n"
                     "L\t56\t7q\t\n"));
  clickItem(chart(desk), chart(desk).model()->index(0, 0));
  QTest::keySequence(&chart(desk), QKeySequence(QKeySequence::Paste));
  auto& dialog = desk.find<QDialog>("chartPreview");
  REQUIRE(QTest::qWaitForWindowActive(&dialog));
  auto& problems = desk.find<QListWidget>("importProblems");
  CHECK(problems.count() > 0);
  CHECK_FALSE(desk.find<QPushButton>("importTake").isEnabled());
  const auto choose = [&](const char* name, const QString& text) {
    auto& choice = desk.find<QComboBox>(name);
    choice.setCurrentText(text);
    REQUIRE(choice.currentText() == text);
    Q_EMIT choice.activated(choice.currentIndex());
  };
  choose("importRole3", QStringLiteral("Body length"));
  choose("importUnitOfAll", QStringLiteral("centimetres"));
  REQUIRE(problems.count() == 1);
  CHECK(problems.item(0)->text().contains(QStringLiteral("Line 4, column 3")));
  // The cell that is wrong is shown.
  problems.setCurrentRow(0);
  CHECK(desk.find<QTableWidget>("importTable").currentItem()->text() == QStringLiteral("7q"));
  choose("importRole3", QStringLiteral("Leave out"));
  CHECK(problems.item(0)->text().contains(QStringLiteral("“Body length”")));
  QTest::keyClick(&dialog, Qt::Key_Escape);
  REQUIRE(waitFor(
      [&] { return desk.window->findChild<QDialog*>(QStringLiteral("chartPreview")) == nullptr; }));
  QApplication::clipboard()->setText(
      QStringLiteral("Size\tChest width (in)\tBody length (in)\nS\t18\t28\nM\t20 1/2\t29\n"));
  const QString before = undoText(desk);
  press(desk, "chartPaste");
  auto& again = desk.find<QDialog>("chartPreview");
  REQUIRE(QTest::qWaitForWindowActive(&again));
  CHECK(desk.label("importSummary").contains(QStringLiteral("2 sizes can be taken")));
  press(desk, "importTake");
  CHECK(chart(desk).model()->rowCount() == 2);
  CHECK(cell(desk, QStringLiteral("M"), QStringLiteral("Pit to pit")) ==
        QStringLiteral("20 1/2 in"));
  CHECK(undoText(desk).contains(QStringLiteral("Size chart of")));
  desk.action("undo").trigger();
  CHECK(undoText(desk) == before);
}

TEST_CASE("A chart is imported from a CSV file; sizes that lines lose are said before",
          "[desk][garments][import]") {
  DeskOnDemo desk;
  desk.openDemo();
  openLibrary(desk, "editGarments", "garments");
  desk.find<QListWidget>("garmentsList").setCurrentRow(0);
  const std::filesystem::path file = desk.demo.folder() / "chart.csv";
  DemoCopy::replace(file, "size (in),body-width,body-length\nOne,20,28\n");
  answerFileDialog(desk, file);
  press(desk, "chartImport");
  REQUIRE(QTest::qWaitForWindowActive(&desk.find<QDialog>("chartPreview")));
  CHECK(desk.label("importSummary").contains(QStringLiteral("Lines of the order lose")));
  press(desk, "importTake");
  CHECK(chart(desk).model()->rowCount() == 1);
  CHECK(undoText(desk).contains(QStringLiteral("left out")));
}

TEST_CASE("Nothing on the clipboard is said, not ignored", "[desk][garments][import]") {
  DeskOnDemo desk;
  desk.openDemo();
  openLibrary(desk, "editGarments", "garments");
  QApplication::clipboard()->clear();
  press(desk, "chartPaste");
  CHECK(desk.find<MessageBar>("garmentsMessage")
            .headline()
            .contains(QStringLiteral("no table on the clipboard")));
}

TEST_CASE("A new garment goes into a file of its own, to which the saved order refers",
          "[desk][garments][save]") {
  DeskOnDemo desk;
  desk.openDemo();
  openLibrary(desk, "editGarments", "garments");
  desk.find<QMenu>("garmentsAddMenu").actions().first()->trigger();
  typeField(desk, "garmentId", QStringLiteral("own-shirt"));
  desk.save();
  REQUIRE_FALSE(desk.window->isWindowModified());
  CHECK(DemoCopy::read(desk.demo.order()).contains("\"own-shirt\""));
  const std::filesystem::path file = desk.demo.folder() / "own-shirt.blank.json";
  answerFileDialog(desk, file);
  press(desk, "garmentsOwnFile");
  CHECK(loadBlank(file, shippedRules()).value.id == BlankId("own-shirt"));
  // The order does not say so yet.
  CHECK(desk.window->isWindowModified());
  desk.save();
  CHECK_FALSE(desk.window->isWindowModified());
  CHECK(DemoCopy::read(desk.demo.order()).contains("own-shirt.blank.json"));
  CHECK(loadOrder(desk.demo.order(), shippedRules()).value.blank(BlankId("own-shirt")) != nullptr);
}

TEST_CASE("The window remembers its place, closes on Escape, and goes with the order",
          "[desk][garments]") {
  DeskOnDemo desk;
  desk.openDemo();
  QWidget& garments = openLibrary(desk, "editGarments", "garments");
  garments.resize(garments.width(), 700);
  QTest::keyClick(&garments, Qt::Key_Escape);
  CHECK_FALSE(garments.isVisible());
  desk.window =
      std::make_unique<DeskWindow>(shippedRules(), resourcesFolder(), desk.demo.settings());
  desk.window->show();
  REQUIRE(QTest::qWaitForWindowActive(desk.window.get()));
  CHECK_FALSE(desk.action("editGarments").isEnabled());
  desk.openDemo();
  CHECK(openLibrary(desk, "editGarments", "garments").height() == 700);
}
