// SPDX-License-Identifier: MIT
#include "desk/form_parts.h"

#include <QWheelEvent>

namespace creaseline::desk {

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

void showUnlessTyped(QLineEdit& editor, const QString& text) {
  if (!editor.isModified() && editor.text() != text) {
    editor.setText(text);
    editor.selectAll();
  }
}

}  // namespace creaseline::desk
