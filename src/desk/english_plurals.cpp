// SPDX-License-Identifier: MIT
#include "desk/english_plurals.h"

namespace creaseline::desk {

// A null text means: not known here, ask the next.
QString EnglishPlurals::translate(const char*, const char* sourceText, const char*,
                                  int count) const {
  QString text = QString::fromUtf8(sourceText);
  if (count < 0 || !text.contains(QLatin1Char('('))) {
    return {};
  }
  for (const QString& ending : {QStringLiteral("s"), QStringLiteral("es")}) {
    text.replace(QLatin1Char('(') + ending + QLatin1Char(')'), count == 1 ? QString() : ending);
  }
  return text;
}

}  // namespace creaseline::desk
