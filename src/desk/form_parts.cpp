// SPDX-License-Identifier: MIT
#include "desk/form_parts.h"

namespace creaseline::desk {

QString withoutMnemonic(QString name) {
  return name.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

QComboBox* makeChoice(const char* name, const QString& words, QWidget* parent) {
  auto* made = new QComboBox(parent);
  made->setObjectName(QString::fromLatin1(name));
  made->setAccessibleName(words);
  made->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  made->setMinimumContentsLength(12);
  return made;
}

}  // namespace creaseline::desk
