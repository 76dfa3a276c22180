// SPDX-License-Identifier: MIT
#include "desk/form_parts.h"

#include <QColor>
#include <QCoreApplication>
#include <QRegularExpression>
#include <QWheelEvent>

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
  auto colour = parseColour(toUtf8(named ? QColor(typed).name() : typed));
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

ProblemLabel::ProblemLabel(QWidget* parent) : QLabel(parent) {
  setWordWrap(true);
  setTextFormat(Qt::PlainText);
  hide();
}

void ProblemLabel::say(const std::optional<QString>& problem) {
  QPalette colours = parentWidget()->palette();
  if (problem) {
    colours.setColor(QPalette::WindowText, stateColour(Severity::Stop, parentWidget()->palette()));
  }
  setPalette(colours);
  // The shape says it without the colour.
  setText(problem ? stateShape(Severity::Stop) + QLatin1Char(' ') + *problem : QString());
  setVisible(problem.has_value());
}

void showUnlessTyped(QLineEdit& editor, const QString& text) {
  if (!editor.isModified() && editor.text() != text) {
    editor.setText(text);
    editor.selectAll();
  }
}

}  // namespace creaseline::desk
