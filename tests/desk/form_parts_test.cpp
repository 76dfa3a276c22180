// SPDX-License-Identifier: MIT
#include "desk/form_parts.h"

#include <QWheelEvent>

#include "desk/appearance.h"
#include "desk/theme.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

void turnWheel(QWidget& over) {
  const QPointF at = over.rect().center();
  QWheelEvent down(at, over.mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                   Qt::NoScrollPhase, false);
  QApplication::sendEvent(&over, &down);
}

}  // namespace

// W3C SVG 1.1, section 4.4, recognized color keyword names.
TEST_CASE("A colour is typed by its name or its digits", "[desk][forms]") {
  const auto typed = [](const char* text) { return typedColour(QString::fromUtf8(text)); };
  CHECK(colourText(*typed("navy")) == "#000080");
  CHECK(colourText(*typed(" ForestGreen ")) == "#228b22");
  CHECK(colourText(*typed("#1A2b3c")) == "#1a2b3c");
  for (const char* wrong : {"", "navvy", "transparent", "#12", "#12345678", "12 34"}) {
    CAPTURE(wrong);
    const auto refused = typed(wrong);
    REQUIRE_FALSE(refused);
    CHECK(refused.message().find("navy") != std::string::npos);
  }
}

TEST_CASE("A note keeps to the colours of the appearance chosen", "[desk][forms]") {
  const QPalette before = QApplication::palette();
  QWidget parent;
  NoteLabel note(&parent);
  note.say(QStringLiteral("said"));
  parent.show();
  for (const Appearance appearance : {Appearance::Dark, Appearance::Light}) {
    QApplication::setPalette(paletteOf(appearance));
    QCoreApplication::processEvents();
    CHECK(note.palette().color(QPalette::WindowText) == mutedText(paletteOf(appearance)));
    note.say(QStringLiteral("wrong"), Severity::Stop);
    CHECK(note.palette().color(QPalette::WindowText) ==
          stateColour(Severity::Stop, paletteOf(appearance)));
    CHECK(note.text() == stateShape(Severity::Stop) + QStringLiteral(" wrong"));
    note.say(QStringLiteral("said"));
  }
  QApplication::setPalette(before);
}

TEST_CASE("The wheel over a choice changes nothing, in any window", "[desk][forms]") {
  DeskOnDemo desk(1);
  desk.openDemo();
  for (const char* opener : {"editShop", "editGarments", "editDesigns"}) {
    desk.action(opener).trigger();
  }
  int seen = 0;
  for (QWidget* top : QApplication::topLevelWidgets()) {
    for (QComboBox* choice : top->findChildren<QComboBox*>()) {
      CAPTURE(choice->objectName());
      const int before = choice->currentIndex();
      turnWheel(*choice);
      CHECK(choice->currentIndex() == before);
      seen += choice->count() > 1 ? 1 : 0;
    }
  }
  CHECK(seen > 8);
  CHECK_FALSE(desk.window->isWindowModified());
}
