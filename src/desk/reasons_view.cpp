// SPDX-License-Identifier: MIT
// Reasons as rich text in the palette's colours.
#include "desk/reasons_view.h"

#include <QEvent>
#include <QScrollBar>
#include <QToolTip>
#include <utility>

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

const QString kWordScheme = QStringLiteral("word");

QString span(const QColor& colour, const QString& html) {
  return QStringLiteral("<span style='color:%1'>%2</span>").arg(colour.name(), html);
}

QString stateText(Severity severity, const QString& word, const QPalette& palette) {
  return span(stateColour(severity, palette),
              QStringLiteral("<b>%1&nbsp;%2</b>").arg(stateShape(severity), word.toHtmlEscaped()));
}

}  // namespace

ReasonsView::ReasonsView(QWidget* parent) : QTextBrowser(parent) {
  setObjectName(QStringLiteral("reasons"));
  setAccessibleName(tr("Reasons for the selected placement"));
  setOpenLinks(false);
  setFrameShape(QFrame::NoFrame);
  document()->setDocumentMargin(10);
  // Tab must leave the panel; nothing in it can be edited.
  setTabChangesFocus(true);
  connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
    if (const auto word = wordOf(link)) {
      Q_EMIT wordAsked(*word);
    }
  });
  connect(this, &QTextBrowser::highlighted, this, [this](const QUrl& link) {
    const auto word = wordOf(link);
    QToolTip::showText(QCursor::pos(), word ? toQString(words_[*word].meaning) : QString(), this);
  });
}

void ReasonsView::setWords(std::vector<TradeWord> words) {
  words_ = std::move(words);
  render();
}

std::optional<std::size_t> ReasonsView::wordOf(const QUrl& link) const {
  bool isNumber = false;
  const auto word = static_cast<std::size_t>(link.path().toULongLong(&isNumber));
  return isNumber && link.scheme() == kWordScheme && word < words_.size() ? std::optional(word)
                                                                          : std::nullopt;
}

// Each word is underlined once: a page full of lines would be no help.
QString ReasonsView::explained(const QString& text, QSet<std::size_t>& done) const {
  const std::string bytes = toUtf8(text);
  QString out;
  std::size_t at = 0;
  for (const FoundWord& found : wordsIn(bytes, words_)) {
    if (done.contains(found.word)) {
      continue;
    }
    done.insert(found.word);
    out += toQString(bytes.substr(at, found.from - at)).toHtmlEscaped();
    out += QStringLiteral("<a href='%1:%2' style='color:%3'>%4</a>")
               .arg(kWordScheme)
               .arg(found.word)
               .arg(palette().color(QPalette::Text).name(),
                    toQString(bytes.substr(found.from, found.length)).toHtmlEscaped());
    at = found.from + found.length;
  }
  return out + toQString(bytes.substr(at)).toHtmlEscaped();
}

void ReasonsView::show(const PlacementReasons& reasons) {
  reasons_ = reasons;
  render();
  verticalScrollBar()->setValue(0);
}

void ReasonsView::showNothing(const QString& why) {
  reasons_.reset();
  nothing_ = why;
  render();
}

void ReasonsView::changeEvent(QEvent* event) {
  QTextBrowser::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    render();
  }
}

void ReasonsView::render() {
  setHtml(reasons_ ? html() : span(mutedText(palette()), nothing_.toHtmlEscaped()));
}

QString ReasonsView::html() const {
  const QColor muted = mutedText(palette());
  QSet<std::size_t> done;
  QString out = QStringLiteral("<p style='margin:0'><b style='font-size:large'>%1</b>&nbsp; %2</p>")
                    .arg(reasons_->title.toHtmlEscaped(),
                         stateText(reasons_->state, garmentWord(reasons_->state), palette()));
  out += QStringLiteral("<p style='margin:2px 0 0 0'>%1</p>")
             .arg(span(muted, reasons_->subtitle.toHtmlEscaped()));
  for (const ReasonSection& section : reasons_->sections) {
    out += QStringLiteral("<p style='margin:12px 0 1px 0'><b>%1</b></p>")
               .arg(section.heading.toHtmlEscaped());
    for (const QString& answer : section.answers) {
      out += QStringLiteral("<p style='margin:0'>%1</p>").arg(explained(answer, done));
    }
    for (std::size_t i = 0; i < section.lines.size(); ++i) {
      const ReasonLine& line = section.lines[i];
      // Said once for neighbours that share it.
      const bool sourceFollows =
          i + 1 < section.lines.size() && section.lines[i + 1].source == line.source;
      QString body = explained(line.text, done);
      if (line.state) {
        body = stateText(*line.state, findingWord(*line.state), palette()) +
               QStringLiteral("&nbsp; ") + body;
      }
      if (line.assumed) {
        body += QStringLiteral(" <b>%1</b>").arg(tr("(assumed)").toHtmlEscaped());
      }
      if (!line.source.isEmpty() && !sourceFollows) {
        body += QStringLiteral("<br/>") +
                span(muted, QStringLiteral("<small>%1</small>").arg(line.source.toHtmlEscaped()));
      }
      out += QStringLiteral("<p style='margin:3px 0 0 12px'>%1</p>").arg(body);
    }
  }
  return out;
}

}  // namespace creaseline::desk
