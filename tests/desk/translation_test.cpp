// SPDX-License-Identifier: MIT
// The translations themselves: complete, true to what stands for something, and fitting the window.
#include <QComboBox>
#include <QLineEdit>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTranslator>
#include <QXmlStreamReader>
#include <algorithm>
#include <vector>

#include "desk/message_bar.h"
#include "desk/order_model.h"
#include "desk_fixture.h"
#include "words.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

struct Message {
  QString context;
  QString source;
  QString comment;
  bool finished = true;
  bool counted = false;
  QStringList translations;  // of a counted text, one for each form
};

Message readMessage(QXmlStreamReader& xml, const QString& context) {
  Message message;
  message.context = context;
  message.counted = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
  while (xml.readNextStartElement()) {
    if (xml.name() == QLatin1String("source")) {
      message.source = xml.readElementText();
    } else if (xml.name() == QLatin1String("comment")) {
      message.comment = xml.readElementText();
    } else if (xml.name() != QLatin1String("translation")) {
      xml.skipCurrentElement();
    } else {
      message.finished = !xml.attributes().hasAttribute(QLatin1String("type"));
      if (!message.counted) {
        message.translations.append(xml.readElementText());
        continue;
      }
      while (xml.readNextStartElement()) {
        message.translations.append(xml.readElementText());
      }
    }
  }
  return message;
}

std::vector<Message> spanishMessages() {
  QFile file(QStringLiteral(SOURCE_DIR "/resources/translations/creaseline_es.ts"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  std::vector<Message> messages;
  REQUIRE(xml.readNextStartElement());
  while (xml.readNextStartElement()) {
    QString context;
    while (xml.readNextStartElement()) {
      if (xml.name() == QLatin1String("name")) {
        context = xml.readElementText();
      } else {
        messages.push_back(readMessage(xml, context));
      }
    }
  }
  REQUIRE_FALSE(xml.hasError());
  REQUIRE(messages.size() > 300);
  return messages;
}

// All that the pattern matches, in an order of its own: a translation may turn the words round.
QStringList matches(const QString& text, const QString& pattern) {
  QStringList found;
  QRegularExpressionMatchIterator at = QRegularExpression(pattern).globalMatch(text);
  while (at.hasNext()) {
    found.append(at.next().captured());
  }
  found.sort();
  return found;
}

// What ends a label or an entry and tells what comes after it.
QString ending(const QString& text) {
  for (const char* end : {"…", ":", "?", "."}) {
    if (text.endsWith(QString::fromUtf8(end))) {
      return QString::fromUtf8(end);
    }
  }
  return {};
}

QString spaceAround(const QString& text) {
  const QString trimmed = text.trimmed();
  const qsizetype at = text.indexOf(trimmed);
  return text.left(at) + QLatin1Char('|') + text.mid(at + trimmed.size());
}

// Marks all that is asked of it, so that what was never asked shows.
class MarkingTranslator : public QTranslator {
 public:
  [[nodiscard]] QString translate(const char*, const char* source, const char*,
                                  int) const override {
    return QStringLiteral("«%1»").arg(QString::fromUtf8(source));
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

QStringList textsOf(const QWidget& top) {
  QStringList texts{top.windowTitle()};
  for (const auto* action : top.findChildren<QAction*>()) {
    if (!action->isSeparator()) {
      texts << action->text() << action->toolTip() << action->iconText();
    }
  }
  for (const auto* widget : top.findChildren<QWidget*>()) {
    texts << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription();
  }
  for (const auto* label : top.findChildren<QLabel*>()) {
    texts << label->text();
  }
  for (const auto* button : top.findChildren<QAbstractButton*>()) {
    texts << button->text();
  }
  for (const auto* choice : top.findChildren<QComboBox*>()) {
    for (int item = 0; item < choice->count(); ++item) {
      texts << choice->itemText(item);
    }
  }
  for (const auto* edit : top.findChildren<QLineEdit*>()) {
    texts << edit->placeholderText();
  }
  for (const auto* tabs : top.findChildren<QTabWidget*>()) {
    for (int tab = 0; tab < tabs->count(); ++tab) {
      texts << tabs->tabText(tab);
    }
  }
  for (const auto* menu : top.findChildren<QMenu*>()) {
    texts << menu->title();
  }
  return texts;
}

// Names of languages stand in their own language.
const QStringList kInNoLanguage{QStringLiteral("&English"), QStringLiteral("English"),
                                QStringLiteral("E&spañol"), QStringLiteral("Español")};

void checkMarked(const QStringList& texts) {
  int marked = 0;
  for (const QString& text : texts) {
    const bool words = std::any_of(text.begin(), text.end(), [](QChar c) { return c.isLetter(); });
    if (words && !kInNoLanguage.contains(text)) {
      CAPTURE(text);
      CHECK(text.contains(QStringLiteral("«")));
      ++marked;
    }
  }
  CHECK(marked > 20);
}

}  // namespace

TEST_CASE("Every text is translated, counted ones in both forms", "[desk][translation]") {
  for (const Message& message : spanishMessages()) {
    CAPTURE(message.context, message.source);
    CHECK(message.finished);
    CHECK(message.translations.size() == (message.counted ? 2 : 1));
    for (const QString& translation : message.translations) {
      CHECK_FALSE(translation.trimmed().isEmpty());
    }
  }
}

TEST_CASE("A translation keeps all that stands for something", "[desk][translation]") {
  // Placeholders; the mark of changes; tags; patterns of files, and what parts them; mnemonics.
  const QStringList patterns{QStringLiteral("%[0-9n]"),           QStringLiteral("%"),
                             QStringLiteral("\\[\\*\\]"),         QStringLiteral("</?[a-z]+>"),
                             QStringLiteral("\\(\\*[^)]*\\)|;;"), QStringLiteral("&(?=\\w)")};
  for (const Message& message : spanishMessages()) {
    for (const QString& translation : message.translations) {
      CAPTURE(message.context, message.source, translation);
      for (const QString& pattern : patterns) {
        CAPTURE(pattern);
        CHECK(matches(translation, pattern) == matches(message.source, pattern));
      }
      CHECK(ending(translation) == ending(message.source));
      CHECK(spaceAround(translation) == spaceAround(message.source));
      // One character, as everywhere on the desk.
      CHECK_FALSE(translation.contains(QStringLiteral("...")));
    }
  }
}

TEST_CASE("The program carries every translation along", "[desk][translation]") {
  QTranslator translator;
  REQUIRE(translator.load(QStringLiteral(":/creaseline/translations/creaseline_es.qm")));
  for (const Message& message : spanishMessages()) {
    CAPTURE(message.context, message.source);
    const auto said = [&](int count) {
      return translator.translate(message.context.toUtf8().constData(),
                                  message.source.toUtf8().constData(),
                                  message.comment.toUtf8().constData(), count);
    };
    if (message.counted) {
      CHECK(said(1) == message.translations.value(0));
      CHECK(said(2) == message.translations.value(1));
    } else {
      CHECK(said(-1) == message.translations.value(0));
    }
  }
}

TEST_CASE("All that the desk says of its own can be translated", "[desk][translation]") {
  MarkingTranslator marking;
  SECTION("in the window") {
    // Empty, as texts of the core would stand between its own; the forms are there already.
    QCoreApplication::installTranslator(&marking);
    const DeskOnDemo desk;
    checkMarked(textsOf(*desk.window));
  }
  SECTION("in the window Sheets") {
    DeskOnDemo desk;
    desk.openDemo();
    QCoreApplication::installTranslator(&marking);
    checkMarked(textsOf(desk.openSheets("saveSheets")));
  }
}

TEST_CASE("Mnemonics do not clash within a menu, in any language", "[desk][translation]") {
  const Language language = GENERATE(Language::English, Language::Spanish);
  CAPTURE(nameOf(language));
  DeskOnDemo desk(DemoCopy::kFewLines, language);
  desk.openDemo();
  checkMenuMnemonics(desk.window->menuBar()->actions());
}

TEST_CASE(
    "Mnemonics of forms, start page and messages clash neither with each other nor with the "
    "menu bar, in any language",
    "[desk][translation]") {
  const Language language = GENERATE(Language::English, Language::Spanish);
  CAPTURE(nameOf(language));
  DeskOnDemo desk(DemoCopy::kFewLines, language);
  QStringList titles;
  for (const QAction* top : desk.window->menuBar()->actions()) {
    titles.append(top->text());
  }
  const QSet<QString> menus = checkMnemonics(titles);
  CHECK(menus.size() == titles.size());
  desk.window->openOrder(desk.demo.order());  // with which its forms are made
  for (const char* form : {"orderForm", "lineForm", "placeForm", "startPage"}) {
    CAPTURE(form);
    const QStringList texts = textsWithMnemonics(desk.find<QWidget>(form));
    CHECK(texts.size() >= 4);
    checkMnemonics(texts, menus);
  }
}

TEST_CASE("Mnemonics of the window Sheets do not clash in Spanish", "[desk][translation][sheets]") {
  DeskOnDemo desk(DemoCopy::kFewLines, Language::Spanish);
  desk.openDemo();
  const QWidget& sheets = desk.openSheets("printSheets");
  CHECK(sheets.windowTitle() == QStringLiteral("Hojas"));
  const QStringList texts = textsWithMnemonics(sheets);
  CHECK(texts.size() > 10);
  CHECK(checkMnemonics(texts).size() == texts.size());
  checkNothingClipped(sheets);
}

TEST_CASE("Nothing is cut off in Spanish, on the empty desk and in each form",
          "[desk][translation]") {
  DeskOnDemo desk(DemoCopy::kFewLines, Language::Spanish);
  checkNothingClipped(*desk.window);
  desk.openDemo();
  const auto* model = qobject_cast<OrderModel*>(desk.order().model());
  clickItem(desk.order(), model->indexOf(0, 0, 0));
  auto& details = desk.find<QTabWidget>("details");
  for (const int width : {1440, 1100}) {
    desk.window->resize(width, 900);
    for (int tab = 0; tab < details.count(); ++tab) {
      details.setCurrentIndex(tab);
      QCoreApplication::processEvents();
      CAPTURE(width, tab);
      checkNothingClipped(*desk.window);
    }
  }
  clickItem(desk.findings(), desk.findings().model()->index(0, 0));
  QCoreApplication::processEvents();
  checkNothingClipped(*desk.window);
}
