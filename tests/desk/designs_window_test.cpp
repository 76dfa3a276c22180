// SPDX-License-Identifier: MIT
// The window "Designs", as a person uses it.
#include "desk/designs_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QImage>

#include "library_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

void openFresh(DeskOnDemo& desk) {
  desk.openDemo();
  desk.action("unitMillimetre").trigger();
  openLibrary(desk, "editDesigns", "designs");
  desk.find<QMenu>("designsAddMenu").actions().first()->trigger();
}

QTableView& blocks(DeskOnDemo& desk) {
  return desk.find<QTableView>("designBlocks");
}

QString text(DeskOnDemo& desk, const char* field) {
  return desk.find<QLineEdit>(field).text();
}

void chooseCell(QTableView& table, int row, int column, const QString& choice) {
  auto* editor = &openCell<QComboBox>(table, row, column);
  editor->setCurrentText(choice);
  REQUIRE(editor->currentText() == choice);
  Q_EMIT editor->activated(editor->currentIndex());
  QCoreApplication::processEvents();
}

}  // namespace

TEST_CASE("A design is made with blocks, whose sum is its total, and saved in the order",
          "[desk][designs][save]") {
  DeskOnDemo desk;
  openFresh(desk);
  typeField(desk, "designName", QStringLiteral("Anchor"));
  typeField(desk, "designId", QStringLiteral("anchor"));
  typeField(desk, "designWidth", QStringLiteral("60"));
  CHECK(text(desk, "designHeight").startsWith(QStringLiteral("60")));
  typeCell(blocks(desk), 0, 0, QStringLiteral("navy"), Qt::Key_Tab);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
  typeCell(blocks(desk), 0, 2, QStringLiteral("3000"), Qt::Key_Return);
  press(desk, "designBlocksAdd");
  typeCell(blocks(desk), 1, 2, QStringLiteral("1500"), Qt::Key_Return);
  CHECK(text(desk, "designStitches") == QStringLiteral("4500"));
  CHECK_FALSE(desk.find<QLineEdit>("designStitches").isEnabled());
  CHECK(desk.label("designBlocksNote").contains(QStringLiteral("4500")));
  press(desk, "designBlocksUp");
  CHECK(blocks(desk).currentIndex().row() == 0);
  CHECK(blocks(desk).model()->index(0, 2).data().toString() == QStringLiteral("1500"));
  typeCell(blocks(desk), 0, 2, QStringLiteral("many"), Qt::Key_Return);
  CHECK(desk.label("designBlocksNote").startsWith(QStringLiteral("■")));
  QTest::keyClick(blocks(desk).viewport()->findChild<QLineEdit*>(), Qt::Key_Escape);
  desk.save();
  const Order saved = loadOrder(desk.demo.order(), shippedRules()).value;
  const Design* design = saved.design(DesignId("anchor"));
  REQUIRE(design != nullptr);
  CHECK(design->stitches == 4500);
  CHECK(design->blocks[1].thread == "navy");
  press(desk, "designBlocksRemove");
  press(desk, "designBlocksRemove");
  CHECK(desk.find<QLineEdit>("designStitches").isEnabled());
}

TEST_CASE("Appliqué steps ask for a piece, and the last piece stays while they are there",
          "[desk][designs]") {
  DeskOnDemo desk;
  openFresh(desk);
  press(desk, "designPiecesAdd");
  auto& pieces = desk.find<QTableView>("designPieces");
  typeCell(pieces, 0, 0, QStringLiteral("K"), Qt::Key_Return);
  typeCell(pieces, 0, 2, QStringLiteral("4 cm"), Qt::Key_Return);
  CHECK(pieces.model()->index(0, 2).data().toString() == QStringLiteral("40 mm"));
  chooseCell(blocks(desk), 0, 3, QStringLiteral("Tack-down"));
  CHECK(blocks(desk).model()->index(0, 4).data().toString() == QStringLiteral("every"));
  chooseCell(blocks(desk), 0, 4, QStringLiteral("K"));
  CHECK(undoText(desk).contains(QStringLiteral("K")));
  press(desk, "designPiecesRemove");
  CHECK(pieces.model()->rowCount() == 1);
  CHECK(desk.label("designPiecesNote").contains(QStringLiteral("last piece")));
}

TEST_CASE("A design that places sew is not removed, and says where it is", "[desk][designs]") {
  DeskOnDemo desk;
  desk.openDemo();
  openLibrary(desk, "editDesigns", "designs");
  auto& list = desk.find<QListWidget>("designsList");
  const int count = list.count();
  bool refused = false;
  for (int row = 0; row < count && !refused; ++row) {
    list.setCurrentRow(row);
    press(desk, "designsRemove");
    refused = list.count() == count;
    if (!refused) {
      desk.action("undo").trigger();
    }
  }
  CHECK(refused);
  CHECK(desk.find<MessageBar>("designsMessage").detail().contains(QStringLiteral("is sewn on")));
}

TEST_CASE("An outline comes from a drawing or a picture, and goes back to the rectangle",
          "[desk][designs]") {
  DeskOnDemo desk;
  openFresh(desk);
  answerFileDialog(desk, desk.demo.folder() / "designs" / "kite.svg");
  press(desk, "designOutlineDrawing");
  CHECK(desk.label("designOutlineSource").contains(QStringLiteral("designs/kite.svg")));
  CHECK_FALSE(desk.find<QLineEdit>("designWidth").isEnabled());
  CHECK(desk.label("designSizeNote").contains(QStringLiteral("outline")));
  press(desk, "designOutlineBox");
  CHECK(desk.find<QLineEdit>("designWidth").isEnabled());
  QImage image(300, 150, QImage::Format_ARGB32);
  image.fill(Qt::black);
  const std::filesystem::path picture = desk.demo.folder() / "mark.png";
  REQUIRE(image.save(pathText(picture)));
  typeField(desk, "designDots", QStringLiteral("300"));
  answerFileDialog(desk, picture);
  press(desk, "designOutlinePicture");
  CHECK(text(desk, "designWidth") == QStringLiteral("25.4 mm"));
  typeField(desk, "designDots", QStringLiteral("150"));
  CHECK(text(desk, "designWidth") == QStringLiteral("50.8 mm"));
  desk.save();
  CHECK_FALSE(desk.window->isWindowModified());
  CHECK(loadOrder(desk.demo.order(), shippedRules()).value.designs.back().outlineDotsPerInch ==
        150.0);
  // A file without a shape changes nothing.
  DemoCopy::replace(desk.demo.folder() / "empty.svg", "<svg/>");
  answerFileDialog(desk, desk.demo.folder() / "empty.svg");
  press(desk, "designOutlineDrawing");
  CHECK(desk.find<MessageBar>("designsMessage").isVisible());
  CHECK_FALSE(desk.window->isWindowModified());
}

TEST_CASE("A picture that does not say how large it is asks for its width", "[desk][designs]") {
  DeskOnDemo desk;
  openFresh(desk);
  auto& width = desk.find<QLineEdit>("designPictureWidth");
  CHECK_FALSE(width.isVisible());
  QImage image(300, 150, QImage::Format_ARGB32);
  image.fill(Qt::transparent);
  for (int x = 50; x < 250; ++x) {
    for (int y = 25; y < 125; ++y) {
      image.setPixelColor(x, y, Qt::black);
    }
  }
  const std::filesystem::path picture = desk.demo.folder() / "mark.png";
  REQUIRE(image.save(pathText(picture)));
  // Without its pHYs chunk: length, name, nine bytes, checksum.
  QByteArray bytes = DemoCopy::read(picture);
  const qsizetype chunk = bytes.indexOf("pHYs");
  REQUIRE(chunk > 4);
  DemoCopy::replace(picture, bytes.remove(chunk - 4, 4 + 4 + 9 + 4));
  const QString before = text(desk, "designWidth");
  answerFileDialog(desk, picture);
  press(desk, "designOutlinePicture");
  REQUIRE(width.isVisible());
  CHECK(width.window()->focusWidget() == &width);
  CHECK(desk.label("designPictureWords").contains(QStringLiteral("mark.png")));
  CHECK_FALSE(desk.find<MessageBar>("designsMessage").isVisible());
  CHECK(text(desk, "designWidth") == before);
  typeField(desk, "designPictureWidth", QStringLiteral("wide"));
  CHECK_FALSE(width.accessibleDescription().isEmpty());
  CHECK(width.isVisible());
  typeField(desk, "designPictureWidth", QStringLiteral("76.2 mm"));
  // The opaque part is twice as wide as high.
  CHECK(text(desk, "designWidth") == QStringLiteral("76.2 mm"));
  CHECK(text(desk, "designHeight") == QStringLiteral("38.1 mm"));
  CHECK_FALSE(width.isVisible());
  CHECK(desk.label("designOutlineSource").contains(QStringLiteral("mark.png")));
  desk.save();
  const Design saved = loadOrder(desk.demo.order(), shippedRules()).value.designs.back();
  CHECK(saved.outlineDotsPerInch == Approx(200.0 / 3.0));
  CHECK(saved.width == Length::fromMm(76.2));
  desk.action("undo").trigger();
  CHECK(text(desk, "designWidth") == before);
}

TEST_CASE("A monogram's names are typed; a larger centre letter asks for three",
          "[desk][designs]") {
  DeskOnDemo desk;
  openFresh(desk);
  auto& monogram = desk.find<QCheckBox>("designMonogram");
  REQUIRE_FALSE(monogram.isChecked());
  monogram.setFocus();
  QTest::keyClick(&monogram, Qt::Key_Space);
  REQUIRE(monogram.isChecked());
  typeField(desk, "monogramFirst", QStringLiteral("Ada"));
  typeField(desk, "monogramSurname", QStringLiteral("King"));
  auto& style = desk.find<QComboBox>("monogramStyle");
  style.setCurrentIndex(0);
  Q_EMIT style.activated(0);
  CHECK(desk.find<MessageBar>("designsMessage").detail().contains(QStringLiteral("middle name")));
  CHECK(style.currentIndex() == 1);
  typeField(desk, "monogramMiddle", QStringLiteral("Byron"));
  style.setCurrentIndex(0);
  Q_EMIT style.activated(0);
  CHECK(style.currentIndex() == 0);
  CHECK(undoText(desk).contains(QStringLiteral("Ada Byron King")));
}

TEST_CASE("A design goes into a file of its own, to which the saved order refers",
          "[desk][designs][save]") {
  DeskOnDemo desk;
  openFresh(desk);
  typeField(desk, "designId", QStringLiteral("own"));
  const std::filesystem::path file = desk.demo.folder() / "designs" / "own.design.json";
  answerFileDialog(desk, file);
  press(desk, "designsOwnFile");
  CHECK(loadDesign(file).value.id == DesignId("own"));
  desk.save();
  CHECK(DemoCopy::read(desk.demo.order()).contains("designs/own.design.json"));
  // From now on the outline's path leads from that file.
  answerFileDialog(desk, desk.demo.folder() / "designs" / "kite.svg");
  press(desk, "designOutlineDrawing");
  desk.save();
  CHECK(DemoCopy::read(file).contains("\"kite.svg\""));
  CHECK_FALSE(desk.window->isWindowModified());
  CHECK(loadOrder(desk.demo.order(), shippedRules()).value.design(DesignId("own"))->outlineSource ==
        OutlineSource::Svg);
}

TEST_CASE("A place with a new design is added from the order's own menu", "[desk][designs]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.order().setCurrentIndex(desk.order().model()->index(0, 0));
  auto& places = desk.find<QMenu>("addPlace");
  Q_EMIT places.aboutToShow();
  const auto actions = places.actions();
  actions[actions.size() - 2]->trigger();
  CHECK(desk.find<QWidget>("designs").isVisible());
  CHECK(text(desk, "designName") == QStringLiteral("New design"));
  desk.action("undo").trigger();
  CHECK(desk.window->isWindowModified());
  desk.action("undo").trigger();
  CHECK_FALSE(desk.window->isWindowModified());
}

TEST_CASE("An order is built without any file: garment, design, line, place",
          "[desk][designs][garments]") {
  DeskOnDemo desk;
  desk.window->openShop(desk.demo.shop());
  auto& start = desk.find<QPushButton>("startNew");
  REQUIRE(waitFor([&] { return start.isVisible(); }));
  QTest::mouseClick(&start, Qt::LeftButton);
  REQUIRE(waitFor([&] { return desk.order().isVisible(); }));
  openLibrary(desk, "editGarments", "garments");
  CHECK(desk.find<QLabel>("garmentsNothing").isVisible());
  desk.find<QMenu>("garmentsAddMenu").actions().first()->trigger();
  openLibrary(desk, "editDesigns", "designs");
  desk.find<QMenu>("designsAddMenu").actions().first()->trigger();
  auto& garments = desk.find<QMenu>("addGarment");
  Q_EMIT garments.aboutToShow();
  garments.actions().first()->trigger();
  auto& quantity = desk.find<QLineEdit>("quantity-M");
  typeField(desk, "quantity-M", QStringLiteral("6"));
  CHECK(quantity.text() == QStringLiteral("6"));
  auto& places = desk.find<QMenu>("addPlace");
  Q_EMIT places.aboutToShow();
  places.actions().first()->trigger();
  REQUIRE(desk.waitForPlan());
  const std::filesystem::path file = desk.demo.folder() / "first.order.json";
  answerFileDialog(desk, file);
  desk.save();
  const Order saved = loadOrder(file, shippedRules()).value;
  CHECK(saved.garments() == 6);
  CHECK(saved.blanks.size() == 1);
}
