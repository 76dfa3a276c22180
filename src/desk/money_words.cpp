// SPDX-License-Identifier: MIT
#include "desk/money_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

class MoneyText {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::MoneyText)
};

}  // namespace

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

QString costWords(CostKind kind) {
  switch (kind) {
    case CostKind::Labour:
      return MoneyText::tr("Work");
    case CostKind::Machine:
      return MoneyText::tr("Machine");
    case CostKind::Backing:
      return MoneyText::tr("Backing");
    case CostKind::Topping:
      return MoneyText::tr("Topping film");
    case CostKind::Applique:
      return MoneyText::tr("Appliqué fabric");
    case CostKind::Thread:
      return MoneyText::tr("Thread");
    case CostKind::Blanks:
      return MoneyText::tr("Blanks");
    case CostKind::SetUp:
      return MoneyText::tr("Set-up of designs");
    case CostKind::Markup:
      return MoneyText::tr("Markup");
  }
  return {};
}

}  // namespace creaseline::desk
