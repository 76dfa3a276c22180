// SPDX-License-Identifier: MIT
#include "desk/work_html.h"

#include <QCoreApplication>
#include <QStringList>

#include "creaseline/planning/wording.h"
#include "desk/money_words.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

class WorkText {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::WorkText)
};

QString html(const std::string& text) {
  return toQString(text).toHtmlEscaped();
}

QString heading(const QString& words) {
  return QStringLiteral("<p style='margin:12px 0 2px 0'><b>%1</b></p>").arg(words.toHtmlEscaped());
}

QString paragraph(const QString& content) {
  return QStringLiteral("<p style='margin:2px 0 0 0'>%1</p>").arg(content);
}

QString row(const QStringList& cells) {
  return QStringLiteral("<tr><td style='padding-right:14px'>%1</td></tr>")
      .arg(cells.join(QStringLiteral("</td><td style='padding-right:14px'>")));
}

QString table(const QStringList& rows) {
  return QStringLiteral("<table cellspacing='0' cellpadding='1'>%1</table>")
      .arg(rows.join(QString()));
}

// The colour as a patch, its name beside it.
QString thread(const std::string& name, const Colour& colour) {
  return QStringLiteral("<span style='background-color:%1'>&nbsp;&nbsp;&nbsp;&nbsp;</span> %2")
      .arg(QColor(colour.red, colour.green, colour.blue).name(), html(name));
}

QString size(Length width, Length height, const UnitChoice& units) {
  return html(sizePhrase(width, height, units));
}

QString pieces(int count) {
  return WorkText::tr("%n piece(s)", nullptr, count);
}

}  // namespace

QString runText(const RunCard& card, const QPalette& palette, const UnitChoice& units) {
  QString out = paragraph(
      QStringLiteral("<b>%1</b>, %2, %3")
          .arg(html(card.machine), html(card.frame), size(card.width, card.height, units)));
  out +=
      paragraph(WorkText::tr("Loading: %1. Start: %2.").arg(html(card.loading), html(card.start)));
  out += heading(WorkText::tr("Before the first garment"));
  for (const std::string& each : card.setUp) {
    out += paragraph(html(each));
  }
  out += heading(WorkText::tr("Each garment"));
  int number = 0;
  for (const RunStep& step : card.steps) {
    const QString words = html(step.text);
    out += paragraph(QStringLiteral("%1. %2").arg(++number).arg(
        step.byHand
            ? QStringLiteral("<b>%1</b>").arg(words)
            : QStringLiteral("%1 (%2)").arg(
                  words, WorkText::tr("needle %1, %2").arg(step.needle).arg(html(step.thread)))));
  }
  out += heading(WorkText::tr("Time"));
  QStringList rows;
  for (const TimeShare& share : card.time.once) {
    rows.append(row({html(share.text), WorkText::tr("once"), html(formatDuration(share.time))}));
  }
  for (const TimeShare& share : card.time.each) {
    rows.append(row({html(share.text), WorkText::tr("each"), html(formatDuration(share.time))}));
  }
  rows.append(row({QStringLiteral("<b>%1</b>").arg(WorkText::tr("In all")),
                   WorkText::tr("%n garment(s)", nullptr, card.garments),
                   QStringLiteral("<b>%1</b>").arg(html(formatDuration(card.time.total)))}));
  out += table(rows);
  for (const std::string& watch : card.watches) {
    out += paragraph(QStringLiteral("<span style='color:%1'>%2 %3</span>")
                         .arg(stateColour(Severity::Watch, palette).name(),
                              stateShape(Severity::Watch), html(watch)));
  }
  for (const Caution* caution : card.cautions) {
    out += paragraph(html(caution->text));
  }
  return out;
}

QString materialsText(const PickList& picks, const RunPlan& runs, const QPalette& palette,
                      const UnitChoice& units) {
  QString out;
  for (const std::string& shortage : picks.shortages) {
    out += paragraph(QStringLiteral("<span style='color:%1'>%2 %3</span>")
                         .arg(stateColour(Severity::Watch, palette).name(),
                              stateShape(Severity::Watch), html(shortage)));
  }
  QStringList rows;
  const auto section = [&](const QString& words) {
    if (!rows.isEmpty()) {
      out += heading(words) + table(rows);
      rows.clear();
    }
  };
  for (const BlankPick& blank : picks.blanks) {
    QStringList sizes;
    for (const SizePick& each : blank.sizes) {
      sizes.append(QStringLiteral("%1 × %2").arg(html(each.size.text())).arg(each.count));
    }
    rows.append(row({html(blank.blank), html(blank.colour), sizes.join(QStringLiteral(", ")),
                     QString::number(blank.garments)}));
  }
  section(WorkText::tr("Garments"));
  for (const FramePick& frame : picks.frames) {
    rows.append(row({html(frame.frame), WorkText::tr("%n hooping(s)", nullptr, frame.hoopings),
                     WorkText::tr("%1 on hand").arg(frame.onHand)}));
  }
  section(WorkText::tr("Frames"));
  for (const BackingPick& each : picks.backing) {
    rows.append(row({each.stock.empty() ? html(each.kind) : html(each.stock),
                     size(each.width, each.height, units), pieces(each.pieces)}));
  }
  section(WorkText::tr("Backing to cut"));
  for (const BackingTotal& total : picks.backingTotals) {
    rows.append(
        row({html(total.stock), html(total.need), WorkText::tr("of %1").arg(html(total.onHand)),
             total.enough ? WorkText::tr("enough")
                          : QStringLiteral("<b>%1</b>").arg(WorkText::tr("not enough"))}));
  }
  section(WorkText::tr("Backing in all"));
  for (const ToppingPick& each : picks.topping) {
    rows.append(row({size(each.width, each.height, units), pieces(each.pieces)}));
  }
  section(WorkText::tr("Topping to cut"));
  for (const FabricPick& each : picks.fabrics) {
    rows.append(row({html(each.fabric), html(each.design + ", " + each.piece),
                     size(each.width, each.height, units), pieces(each.pieces)}));
  }
  section(WorkText::tr("Appliqué fabric to cut"));
  for (const ThreadPick& each : picks.threads) {
    QStringList needles;
    for (const std::string& needle : each.needles) {
      needles.append(html(needle));
    }
    rows.append(
        row({thread(each.thread, each.colour), WorkText::tr("%1 stitches").arg(each.stitches),
             needles.join(QStringLiteral("; "))}));
  }
  section(WorkText::tr("Threads"));
  for (const NeedlePick& each : picks.needles) {
    rows.append(row({html(each.needle), html(each.machine), QString::number(each.count),
                     each.listed ? QString() : WorkText::tr("not in stock")}));
  }
  section(WorkText::tr("Needles"));
  for (const HeldGarments& held : runs.held) {
    QStringList reasons;
    for (const std::string& reason : held.reasons) {
      reasons.append(html(reason));
    }
    rows.append(row({html(held.blank), html(held.location), html(held.sizes),
                     QString::number(held.garments), reasons.join(QStringLiteral("; "))}));
  }
  section(WorkText::tr("Held: not to be sewn as ordered"));
  return out.isEmpty() ? paragraph(WorkText::tr("Nothing is needed.")) : out;
}

QString costText(const OrderCost& cost) {
  const auto money = [&](Money amount) {
    return moneyWords(amount, cost.currency).toHtmlEscaped();
  };
  const auto right = [](const QString& text) {
    return QStringLiteral("<div align='right'>%1</div>").arg(text);
  };
  QStringList rows;
  for (const CostItem& item : cost.items) {
    rows.append(row({html(costPhrase(item.kind)), right(money(item.amount)), html(item.measure)}));
  }
  rows.append(
      row({QStringLiteral("<b>%1</b>").arg(WorkText::tr("In all")),
           right(QStringLiteral("<b>%1</b>").arg(money(cost.total))), QStringLiteral("&nbsp;")}));
  QString out = heading(WorkText::tr("By kind")) + table(rows);
  rows = {row({WorkText::tr("Line"), WorkText::tr("Garments"), right(WorkText::tr("In all")),
               right(WorkText::tr("Each"))})};
  for (const CostLine& line : cost.lines) {
    const std::string what =
        line.id + ": " + line.blank + (line.colour.empty() ? "" : ", " + line.colour);
    rows.append(row({html(what), QString::number(line.garments), right(money(line.total)),
                     right(money(line.perGarment))}));
  }
  out += heading(WorkText::tr("By line")) + table(rows);
  rows = {row({WorkText::tr("Run"), WorkText::tr("Garments"), right(WorkText::tr("In all")),
               right(WorkText::tr("Each"))})};
  for (const CostRun& run : cost.runs) {
    rows.append(row({QStringLiteral("%1 %2").arg(run.number).arg(html(run.title)),
                     QString::number(run.garments), right(money(run.total)),
                     right(money(run.perGarment))}));
  }
  out += heading(WorkText::tr("By run: work, machine and material")) + table(rows);
  out += heading(WorkText::tr("Why"));
  for (const CostItem& item : cost.items) {
    for (const Reason& reason : item.reasons) {
      out += paragraph(QStringLiteral("%1: %2 (%3)")
                           .arg(html(costPhrase(item.kind)), html(reason.text),
                                WorkText::tr("would change with: %1").arg(html(reason.changedBy))));
    }
  }
  out += paragraph(html(leftOutOfCost()));
  return out;
}

}  // namespace creaseline::desk
