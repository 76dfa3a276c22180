// SPDX-License-Identifier: MIT
// Contrast, clipped words, and pictures to look at: light and dark, at the ratio of this run.
#include <QFileInfo>
#include <QImage>
#include <QSet>

#include "creaseline/base/colour.h"
#include "desk/appearance.h"
#include "desk/order_model.h"
#include "desk/theme.h"
#include "library_fixture.h"
#include "words.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

QPalette lightPalette() {
  return paletteOf(Appearance::Light);
}

QPalette darkPalette() {
  return paletteOf(Appearance::Dark);
}

class PaletteGuard {
 public:
  explicit PaletteGuard(const QPalette& palette) : before_(QApplication::palette()) {
    QApplication::setPalette(palette);
  }
  ~PaletteGuard() { QApplication::setPalette(before_); }
  PaletteGuard(const PaletteGuard&) = delete;
  PaletteGuard& operator=(const PaletteGuard&) = delete;

 private:
  QPalette before_;
};

Colour toColour(const QColor& colour) {
  return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
          static_cast<std::uint8_t>(colour.blue())};
}

// Saves the window's picture and looks whether there is anything on it.
void picture(QWidget& window, const QString& name) {
  QCoreApplication::processEvents();
  const QPixmap shot = window.grab();
  const double ratio = shot.devicePixelRatio();
  CHECK(shot.width() == qRound(window.width() * ratio));
  QDir().mkpath(QStringLiteral(SCREENSHOT_FOLDER));
  const QString file =
      QStringLiteral("%1/%2-%3x.png").arg(QStringLiteral(SCREENSHOT_FOLDER), name).arg(ratio);
  REQUIRE(shot.save(file));
  const QImage image = shot.toImage();
  QSet<QRgb> colours;
  for (int y = 0; y < image.height(); y += 3) {
    for (int x = 0; x < image.width(); x += 3) {
      colours.insert(image.pixel(x, y));
    }
  }
  CHECK(colours.size() > 50);
}

}  // namespace

// W3C WCAG 2.2, success criterion 1.4.3: at least 4.5 to 1 for text.
TEST_CASE("States and secondary text can be read in light and in dark", "[desk][appearance]") {
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    const Colour ground = toColour(palette.color(QPalette::Base));
    CAPTURE(isDark(palette));
    for (const Severity severity : {Severity::Stop, Severity::Watch, Severity::Note}) {
      CHECK(contrastRatio(toColour(stateColour(severity, palette)), ground) >= 4.5);
      CHECK(contrastRatio(toColour(stateColour(severity, palette)),
                          toColour(palette.color(QPalette::Window))) >= 4.5);
    }
    CHECK(contrastRatio(toColour(mutedText(palette)), ground) >= 4.5);
  }
}

// W3C WCAG 2.2, success criterion 1.4.3.
TEST_CASE("Texts of both palettes can be read on what they stand on", "[desk][appearance]") {
  using Pair = std::pair<QPalette::ColorRole, QPalette::ColorRole>;
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    CAPTURE(isDark(palette));
    for (const auto& [text, ground] :
         {Pair{QPalette::WindowText, QPalette::Window}, Pair{QPalette::Text, QPalette::Base},
          Pair{QPalette::Text, QPalette::AlternateBase},
          Pair{QPalette::ButtonText, QPalette::Button},
          Pair{QPalette::PlaceholderText, QPalette::Base},
          Pair{QPalette::HighlightedText, QPalette::Highlight},
          Pair{QPalette::Link, QPalette::Base}, Pair{QPalette::LinkVisited, QPalette::Base},
          Pair{QPalette::ToolTipText, QPalette::ToolTipBase}}) {
      CAPTURE(static_cast<int>(text), static_cast<int>(ground));
      CHECK(contrastRatio(toColour(palette.color(text)), toColour(palette.color(ground))) >= 4.5);
    }
  }
}

TEST_CASE("The appearance is chosen in the menu, counts at once, and is there the next day",
          "[desk][appearance][settings]") {
  const QPalette system = QApplication::palette();
  DeskOnDemo desk;
  desk.openDemo();
  CHECK(desk.action("appearanceSystem").isChecked());
  const auto ground = [&desk] {
    QCoreApplication::processEvents();  // by which the windows hear of it
    return desk.order().palette().color(QPalette::Base);
  };
  desk.action("appearanceDark").trigger();
  CHECK(isDark(QApplication::palette()));
  CHECK(ground() == darkPalette().color(QPalette::Base));
  picture(*desk.window, QStringLiteral("appearance-dark"));
  desk.action("appearanceLight").trigger();
  CHECK(ground() == lightPalette().color(QPalette::Base));
  picture(*desk.window, QStringLiteral("appearance-light"));
  desk.action("appearanceDark").trigger();
  CHECK(Settings(desk.demo.settings()).appearance() == Appearance::Dark);
  QApplication::setPalette(QPalette());
  {
    DeskWindow next(shippedRules(), resourcesFolder(), desk.demo.settings());
    CHECK(isDark(QApplication::palette()));
    CHECK(next.findChild<QAction*>(QStringLiteral("appearanceDark"))->isChecked());
  }
  desk.action("appearanceSystem").trigger();
  CHECK(QApplication::palette().color(QPalette::Base) == system.color(QPalette::Base));
  CHECK(ground() == system.color(QPalette::Base));
}

TEST_CASE("States differ in shape and word, not in colour alone", "[desk][appearance]") {
  QSet<QString> shapes;
  QSet<QString> words;
  QSet<QByteArray> drawn;
  for (const Severity severity : {Severity::Stop, Severity::Watch, Severity::Note}) {
    shapes.insert(stateShape(severity));
    words.insert(garmentWord(severity));
    QImage image(24, 24, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintState(painter, QRectF(0, 0, 24, 24), severity, Qt::black);
    painter.end();
    drawn.insert(QByteArray(reinterpret_cast<const char*>(image.constBits()), image.sizeInBytes()));
  }
  CHECK(shapes.size() == 3);
  CHECK(words.size() == 3);
  CHECK(drawn.size() == 3);
}

TEST_CASE("Every icon can be drawn at every size", "[desk][appearance]") {
  for (const char* name : {"desk", "fit", "open-order", "open-shop", "print", "redo", "reload",
                           "save-sheets", "undo", "zoom-in", "zoom-out"}) {
    for (const int side : {16, 20, 36, 64}) {
      const QImage image = deskIcon(QString::fromLatin1(name)).pixmap(side).toImage();
      CAPTURE(name, side);
      int inked = 0;
      for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
          inked += qAlpha(image.pixel(x, y)) > 128 ? 1 : 0;
        }
      }
      CHECK(inked > side);
    }
  }
}

TEST_CASE("The desk looks right in light and in dark", "[desk][appearance][screenshots]") {
  const bool dark = GENERATE(false, true);
  const PaletteGuard palette(dark ? darkPalette() : lightPalette());
  const QString tone = dark ? QStringLiteral("dark") : QStringLiteral("light");
  // Where points are finer, words need the same room: a few lines show what there is to see.
  constexpr qsizetype kAllLines = 100;
  DeskOnDemo desk(qApp->devicePixelRatio() == 1.0 ? kAllLines : DemoCopy::kFewLines);
  picture(*desk.window, QStringLiteral("start-") + tone);
  checkNothingClipped(*desk.window);
  desk.openDemo();
  auto* model = qobject_cast<OrderModel*>(desk.order().model());
  for (int line = 0; line < model->rowCount(); ++line) {
    for (int place = 0; place < model->rowCount(model->index(line, 0)); ++place) {
      clickItem(desk.order(), model->index(place, 0, model->index(line, 0)));
      picture(*desk.window,
              QStringLiteral("desk-line%1-place%2-%3").arg(line + 1).arg(place + 1).arg(tone));
      checkNothingClipped(*desk.window);
    }
  }
  clickItem(desk.findings(), desk.findings().model()->index(0, 0));
  picture(*desk.window, QStringLiteral("finding-") + tone);
  checkNothingClipped(*desk.window);
  DemoCopy::edit(desk.demo.order(), "\"YM\": 3", "\"YM\": -3");
  REQUIRE(waitFor([&] { return desk.find<QWidget>("messageBar").isVisible(); }));
  picture(*desk.window, QStringLiteral("broken-") + tone);
  checkNothingClipped(*desk.window);
}

TEST_CASE("The window Sheets looks right in light and in dark", "[desk][appearance][screenshots]") {
  const bool dark = GENERATE(false, true);
  const PaletteGuard palette(dark ? darkPalette() : lightPalette());
  DeskOnDemo desk;
  desk.openDemo();
  SheetsDialog& sheets = desk.openSheets("saveSheets");
  const QString tone = dark ? QStringLiteral("dark") : QStringLiteral("light");
  picture(sheets, QStringLiteral("sheets-") + tone);
  checkNothingClipped(sheets);
  const qint64 whole = desk.find<SheetPreview>("sheetPreview").picture().cacheKey();
  desk.find<QRadioButton>("zoomActual").click();
  REQUIRE(waitFor(
      [&] { return desk.find<SheetPreview>("sheetPreview").picture().cacheKey() != whole; }));
  desk.find<QRadioButton>("pagesSome").click();
  picture(sheets, QStringLiteral("sheets-actual-size-") + tone);
  checkNothingClipped(sheets);
}

TEST_CASE("The window Sheets fits a small screen with large letters",
          "[desk][appearance][sheets]") {
  const QFont before = QApplication::font();
  QFont large = before;
  large.setPointSizeF(before.pointSizeF() * 1.5);
  QApplication::setFont(large);
  {
    DeskOnDemo desk;
    desk.openDemo();
    SheetsDialog& sheets = desk.openSheets("printSheets");
    desk.find<QRadioButton>("pagesSome").click();
    QCoreApplication::processEvents();
    CHECK(sheets.minimumSizeHint().width() <= 1024);
    CHECK(sheets.minimumSizeHint().height() <= 700);
    sheets.resize(1024, 700);
    picture(sheets, QStringLiteral("sheets-small-large-letters"));
    checkNothingClipped(sheets);
  }
  QApplication::setFont(before);
}

TEST_CASE("A small window cuts no words", "[desk][appearance][screenshots]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.window->resize(desk.window->minimumSizeHint().expandedTo({1024, 640}));
  picture(*desk.window, QStringLiteral("small"));
  checkNothingClipped(*desk.window);
}

// 1500 by 950 dots at 1.5 dots a unit, with room for a bar of the desktop.
TEST_CASE("The desk fits a screen of 1000 by 600 with any line on the table, in both languages",
          "[desk][appearance]") {
  constexpr qsizetype kAllLines = 100;
  DeskOnDemo desk(kAllLines, GENERATE(Language::English, Language::Spanish));
  desk.openDemo();
  auto* model = qobject_cast<OrderModel*>(desk.order().model());
  for (int line = 0; line < model->rowCount(); ++line) {
    clickItem(desk.order(), model->index(line, 0));
    QCoreApplication::processEvents();
    CAPTURE(line);
    CHECK(desk.window->minimumSizeHint().width() <= 1000);
    CHECK(desk.window->minimumSizeHint().height() <= 600);
  }
  desk.window->resize(1000, 600);
  picture(*desk.window, QStringLiteral("least-") + QLocale().bcp47Name());
}

TEST_CASE("The windows Garments and Designs look right in light and in dark",
          "[desk][appearance][screenshots][garments][designs]") {
  const bool dark = GENERATE(false, true);
  const PaletteGuard palette(dark ? darkPalette() : lightPalette());
  const QString tone = dark ? QStringLiteral("dark") : QStringLiteral("light");
  DeskOnDemo desk;
  desk.openDemo();
  QWidget& garments = openLibrary(desk, "editGarments", "garments");
  garments.resize(1180, 800);
  picture(garments, QStringLiteral("garments-") + tone);
  checkNothingClipped(garments);
  typeCell(desk.find<QTableView>("chart"), 1, 1, QStringLiteral("22 q"));
  press(desk, "garmentsRemove");
  picture(garments, QStringLiteral("garments-problems-") + tone);
  checkNothingClipped(garments);
  QApplication::clipboard()->setText(
      QStringLiteral("Size\tChest (all round), in\tFull body length in\tSleeve\tColour\n"
                     "S\t40\t27\t33\tred\nM\t44\t28 1/2\t34\tred\nL\t48\t29q\t35\tred\n"
                     "Measured flat by hand\n"));
  press(desk, "chartPaste");
  auto& preview = desk.find<QDialog>("chartPreview");
  REQUIRE(QTest::qWaitForWindowActive(&preview));
  preview.resize(980, 640);
  picture(preview, QStringLiteral("chart-import-") + tone);
  checkNothingClipped(preview);
  preview.reject();
  QWidget& designs = openLibrary(desk, "editDesigns", "designs");
  designs.resize(1180, 800);
  for (int row = 0; row < 3; ++row) {
    desk.find<QListWidget>("designsList").setCurrentRow(row);
    picture(designs, QStringLiteral("designs-%1-%2").arg(row).arg(tone));
    checkNothingClipped(designs);
  }
  desk.find<QMenu>("designsAddMenu").actions().first()->trigger();
  press(desk, "designPiecesAdd");
  picture(designs, QStringLiteral("designs-new-") + tone);
  checkNothingClipped(designs);
}

TEST_CASE("The windows Garments and Designs fit a small screen with large letters",
          "[desk][appearance][garments][designs]") {
  const QFont before = QApplication::font();
  QFont large = before;
  large.setPointSizeF(before.pointSizeF() * 1.3);
  QApplication::setFont(large);
  {
    DeskOnDemo desk;
    desk.openDemo();
    const std::pair<const char*, const char*> windows[] = {{"editGarments", "garments"},
                                                           {"editDesigns", "designs"}};
    for (const auto& [action, name] : windows) {
      QWidget& window = openLibrary(desk, action, name);
      CAPTURE(name);
      CHECK(window.minimumSizeHint().width() <= 1280);
      CHECK(window.minimumSizeHint().height() <= 760);
      window.resize(1280, 760);
      picture(window, QString::fromLatin1(name) + QStringLiteral("-small-large-letters"));
      checkNothingClipped(window);
    }
  }
  QApplication::setFont(before);
}
