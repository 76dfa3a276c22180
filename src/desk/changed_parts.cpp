// SPDX-License-Identifier: MIT
#include "desk/changed_parts.h"

#include <QCoreApplication>
#include <algorithm>
#include <tuple>
#include <vector>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr qsizetype kMostNamed = 3;

struct ChangedParts {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::ChangedParts)
};

// Calls `say` with each entry that one list has and the other has not, or has otherwise.
template <class Entry, class Say>
void tellDifferences(const std::vector<Entry>& before, const std::vector<Entry>& after, Say say) {
  const auto lacks = [](const std::vector<Entry>& list, const Entry& sought, bool same) {
    return std::none_of(list.begin(), list.end(), [&](const Entry& each) {
      return each.id == sought.id && (!same || each == sought);
    });
  };
  for (const Entry& each : after) {
    if (lacks(before, each, true)) {
      say(each);
    }
  }
  for (const Entry& each : before) {
    if (lacks(after, each, false)) {
      say(each);
    }
  }
}

}  // namespace

QStringList changedParts(const Order& before, const Order& after) {
  QStringList parts;
  const auto head = [](const Order& order) {
    return std::tie(order.id, order.title, order.customer, order.due, order.note, order.frames);
  };
  if (head(before) != head(after)) {
    parts.append(ChangedParts::tr("head of the order"));
  }
  tellDifferences(before.lines, after.lines, [&parts](const OrderLine& line) {
    parts.append(ChangedParts::tr("line %1").arg(toQString(line.id)));
  });
  tellDifferences(before.blanks, after.blanks, [&parts](const Blank& blank) {
    parts.append(ChangedParts::tr("garment %1").arg(toQString(blank.name)));
  });
  tellDifferences(before.designs, after.designs, [&parts](const Design& design) {
    parts.append(ChangedParts::tr("design %1").arg(toQString(design.name)));
  });
  if (parts.isEmpty() && !(before == after)) {
    parts.append(ChangedParts::tr("the sequence"));
  }
  return parts;
}

QStringList changedParts(const Shop& before, const Shop& after) {
  QStringList parts;
  const auto add = [&parts](bool differs, const QString& what) {
    if (differs) {
      parts.append(what);
    }
  };
  add(before.name != after.name || !(before.units == after.units),
      ChangedParts::tr("name or units"));
  add(before.frames != after.frames, ChangedParts::tr("frames"));
  add(before.machines != after.machines, ChangedParts::tr("machines"));
  add(before.backings != after.backings || before.toppingFilm != after.toppingFilm,
      ChangedParts::tr("backing"));
  add(before.needles != after.needles, ChangedParts::tr("needles"));
  add(before.hoopingError != after.hoopingError ||
          before.measuredHoopings != after.measuredHoopings ||
          before.creaseError != after.creaseError || before.rulerError != after.rulerError ||
          before.clothGive != after.clothGive,
      ChangedParts::tr("hooping errors"));
  add(before.houseRules != after.houseRules, ChangedParts::tr("house rules"));
  add(before.rates != after.rates, ChangedParts::tr("rates"));
  return parts;
}

QString fewOf(const QStringList& parts) {
  if (parts.size() <= kMostNamed) {
    return parts.join(QStringLiteral(", "));
  }
  return ChangedParts::tr("%1 and %n more", "parts",
                          static_cast<int>(parts.size() - kMostNamed + 1))
      .arg(parts.mid(0, kMostNamed - 1).join(QStringLiteral(", ")));
}

}  // namespace creaseline::desk
