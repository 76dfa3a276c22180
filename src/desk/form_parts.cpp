// SPDX-License-Identifier: MIT
#include "desk/form_parts.h"

#include <QColor>
#include <QCoreApplication>
#include <QEvent>
#include <QRegularExpression>
#include <QWheelEvent>

#include "creaseline/catalogue/field_check.h"
#include "creaseline/planning/finding.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

struct FormWords {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::FormParts)
};

}  // namespace

Result<Colour> typedColour(const QString& text) {
  static const QRegularExpression kName(QStringLiteral("^[A-Za-z]+$"));
  const QString typed = text.trimmed();
  const bool named =
      kName.match(typed).hasMatch() && QColor::isValidColor(typed) && QColor(typed).alpha() == 255;
  auto colour = checkColour(toUtf8(named ? QColor(typed).name() : typed));
  if (!colour) {
    return Refusal{toUtf8(FormWords::tr("“%1” is not a colour; write # and six hexadecimal digits, "
                                        "or an English name such as navy")
                              .arg(typed))};
  }
  return colour;
}

QString withoutMnemonic(QString name) {
  return name.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

void StillChoice::wheelEvent(QWheelEvent* event) {
  event->ignore();
}

QComboBox* makeChoice(const char* name, const QString& words, QWidget* parent) {
  auto* made = new StillChoice(parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setAccessibleName(words);
  made->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  made->setMinimumContentsLength(12);
  return made;
}

NoteLabel::NoteLabel(QWidget* parent) : QLabel(parent) {
  setTextFormat(Qt::PlainText);
}

void NoteLabel::say(const QString& text, std::optional<Severity> severity) {
  severity_ = severity;
  colour();
  setText(severity ? stateShape(*severity) + QLatin1Char(' ') + text : text);
}

void NoteLabel::colour() {
  const QPalette base = parentWidget()->palette();
  QPalette colours = base;
  colours.setColor(QPalette::WindowText,
                   severity_ ? stateColour(*severity_, base) : mutedText(base));
  colouring_ = true;
  setPalette(colours);
  colouring_ = false;
}

void NoteLabel::changeEvent(QEvent* event) {
  QLabel::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && !colouring_) {
    colour();
  }
}

ProblemLabel::ProblemLabel(QWidget* parent) : NoteLabel(parent) {
  setWordWrap(true);
  hide();
}

void ProblemLabel::say(const std::optional<QString>& problem) {
  // The shape says it without the colour.
  NoteLabel::say(problem.value_or(QString()),
                 problem ? std::optional(Severity::Stop) : std::nullopt);
  setVisible(problem.has_value());
}

void showUnlessTyped(QLineEdit& editor, const QString& text) {
  if (!editor.isModified() && editor.text() != text) {
    editor.setText(text);
    editor.selectAll();
  }
}

}  // namespace creaseline::desk
