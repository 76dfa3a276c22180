// SPDX-License-Identifier: MIT
// Fibres as text, so that several shares, which must add up, change in one step.
#include <QRegularExpression>
#include <QStringList>

#include "creaseline/catalogue/field_check.h"
#include "desk/garment_edits.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

Refusal unreadable(const QString& part) {
  return Refusal{toUtf8(QCoreApplication::translate("creaseline::desk::GarmentEdits",
                                                    "“%1” is no share of a fibre; write 80 % "
                                                    "cotton, 20 % polyester")
                            .arg(part))};
}

}  // namespace

Result<std::vector<FibreShare>> parseFibres(std::string_view text) {
  // A comma between figures is a decimal one.
  static const QRegularExpression between(QStringLiteral("\\s*(?:;|,(?![0-9])|(?<![0-9]),)\\s*"));
  static const QRegularExpression before(
      QStringLiteral("^([0-9]+(?:[.,][0-9]+)?)\\s*%?\\s*([^0-9%].*)$"));
  static const QRegularExpression behind(
      QStringLiteral("^(.*[^0-9\\s])\\s+([0-9]+(?:[.,][0-9]+)?)\\s*%?$"));
  std::vector<FibreShare> fibres;
  for (const QString& part : toQString(text).trimmed().split(between, Qt::SkipEmptyParts)) {
    const QString each = part.trimmed();
    QRegularExpressionMatch match = before.match(each);
    int number = 1, name = 2;
    if (!match.hasMatch()) {
      match = behind.match(each);
      number = 2;
      name = 1;
    }
    // One fibre alone is all of it.
    if (!match.hasMatch() && fibres.empty() && each.size() == toQString(text).trimmed().size() &&
        !each.contains(QRegularExpression(QStringLiteral("[0-9%]")))) {
      fibres.push_back({toUtf8(each), 100.0});
      continue;
    }
    if (!match.hasMatch()) {
      return unreadable(each);
    }
    const double percent =
        match.captured(number).replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
    fibres.push_back({toUtf8(match.captured(name).trimmed()), percent});
  }
  if (const auto problem = fibresProblem(fibres)) {
    return Refusal{*problem};
  }
  return fibres;
}

std::string fibresText(const std::vector<FibreShare>& fibres) {
  QStringList shares;
  for (const FibreShare& share : fibres) {
    shares.append(QStringLiteral("%1 % %2").arg(QString::number(share.percent, 'g', 10),
                                                toQString(share.fibre)));
  }
  return toUtf8(shares.join(QStringLiteral(", ")));
}

}  // namespace creaseline::desk
