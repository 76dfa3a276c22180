// SPDX-License-Identifier: MIT
#include "desk/money_words.h"

#include <QLocale>

#include "desk/text.h"

namespace creaseline::desk {

QString moneyWords(Money amount, const Currency& currency) {
  // From the exact text: a double would not hold it.
  QString text = toQString(moneyText(amount, currency));
  const QLocale locale;
  const qsizetype point = text.indexOf(QLatin1Char('.'));
  const qsizetype end = point >= 0 ? point : text.indexOf(QLatin1Char(' '));
  const QString whole = locale.toString(text.left(end).toLongLong());
  return whole + (point >= 0 ? locale.decimalPoint() + text.mid(point + 1) : text.mid(end));
}

QString priceWords(const std::string& text) {
  QString words = toQString(text);
  const qsizetype point = words.indexOf(QLatin1Char('.'));
  const qsizetype stroke = words.indexOf(QLatin1Char('/'));
  if (point >= 0 && (stroke < 0 || point < stroke)) {
    words.replace(point, 1, QLocale().decimalPoint());
  }
  return words;
}

}  // namespace creaseline::desk
