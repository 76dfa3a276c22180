// SPDX-License-Identifier: MIT
// Parts of the placement sheet that flow: findings, assumed measures, frame and backing, threads,
// steps.
#include <algorithm>

#include "sheets/placement_parts.h"
#include "sheets/text.h"
#include "sheets/typography.h"

namespace creaseline {

using sheets::printed;
using typography::kStrong;
using typography::kText;

namespace {

constexpr double kLeastLabel = 25.0;
constexpr double kLabelGap = 1.0;
constexpr double kAfter = 0.7;
constexpr double kTick = 3.0;
constexpr double kMarkIndent = 6.0;

QString withSeverity(Severity severity, const QString& text) {
  switch (severity) {
    case Severity::Stop:
      return printed("Stop: %1", text);
    case Severity::Watch:
      return printed("Watch: %1", text);
    case Severity::Note:
      return printed("Note: %1", text);
  }
  return {};
}

void addFinding(FlowRows& rows, const FindingText& finding, double width) {
  const Severity severity = finding.severity;
  QString text = withSeverity(severity, finding.text);
  if (!finding.numbers.isEmpty()) {
    text += QStringLiteral(" (") + finding.numbers.join(QStringLiteral("; ")) + u')';
  }
  addText(rows, text, severity == Severity::Note ? kText : kStrong, width, kMarkIndent,
          finding.remedies.isEmpty() ? kAfter : 0.0, [severity](QPainter& painter, QPointF at) {
            paintSeverity(painter, at + QPointF(0.3, 0.4), severity, 2.8);
          });
  for (qsizetype i = 0; i < finding.remedies.size(); ++i) {
    addText(rows, QStringLiteral("→ ") + finding.remedies[i], kText, width, kMarkIndent,
            i + 1 == finding.remedies.size() ? kAfter : 0.0);
  }
}

// Wide enough for each word of the labels, so that none is split.
double labelWidth(const std::vector<FactRow>& facts) {
  double width = kLeastLabel;
  for (const FactRow& fact : facts) {
    width = std::max(width, lettering::widestWord(fact.label, kStrong) + kLabelGap);
  }
  return width;
}

void addFact(FlowRows& rows, const FactRow& fact, double width, double label) {
  const QStringList lines = lettering::wrapped(fact.label, kStrong, label - kLabelGap);
  const std::size_t first = rows.size();
  addText(rows, fact.value, kText, width, label, kAfter, [lines](QPainter& painter, QPointF at) {
    for (const QString& line : lines) {
      lettering::draw(painter, at, line, kStrong, Qt::black);
      at.ry() += lettering::lineHeight(kStrong);
    }
  });
  // The label is painted with the first row: the others beside it stay with that, and what follows
  // begins below it.
  const auto needed = static_cast<std::size_t>(lines.size());
  const std::size_t used = rows.size() - first;
  for (std::size_t row = 0; row + 1 < std::min(needed, used); ++row) {
    rows[first + row].keepWithNext = true;
  }
  if (needed > used) {
    rows.back().height += static_cast<double>(needed - used) * lettering::lineHeight(kStrong);
  }
}

// Number, swatch, thread and use, stitches at the right.
void addThread(FlowRows& rows, const ThreadText& thread, std::size_t number, double width) {
  constexpr double kNumber = 7.0;
  constexpr double kSwatch = 7.0;
  const double stitchesWidth = lettering::textWidth(QStringLiteral("000,000"), kText) + 2.0;
  const QString name =
      thread.use.isEmpty() ? thread.name : thread.name + QStringLiteral(" · ") + thread.use;
  addText(rows, name, kText, width - stitchesWidth, kNumber + kSwatch, 0.5,
          [thread, number, width](QPainter& painter, QPointF at) {
            const QString count = QString::number(number);
            lettering::draw(painter, at, count, kStrong, Qt::black);
            painter.setPen(QPen(Qt::black, 0.2));
            painter.setBrush(thread.colour);
            painter.drawRect(QRectF(at + QPointF(kNumber, 0.8), QSizeF(5.0, 2.6)));
            painter.setBrush(Qt::NoBrush);
            const double x = width - lettering::textWidth(thread.stitches, kText);
            lettering::draw(painter, at + QPointF(x, 0.0), thread.stitches, kText, Qt::black);
          });
}

void addStep(FlowRows& rows, const StepText& step, double width) {
  addText(rows, step.text, step.byHand ? kStrong : kText, width, kMarkIndent, 0.9,
          [](QPainter& painter, QPointF at) {
            painter.setPen(QPen(Qt::black, 0.3));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(QRectF(at + QPointF(0.2, 0.4), QSizeF(kTick, kTick)));
          });
}

}  // namespace

FlowRows factRows(const PlacementFacts& facts, const PartChoice& choice, double width) {
  FlowRows rows;
  if (choice.findingsFlow && !facts.stops.empty()) {
    rows.push_back(headingRow(printed("Stop"), width));
    for (const FindingText& finding : facts.stops) {
      addFinding(rows, finding, width);
    }
  }
  if (!facts.assumed.empty()) {
    rows.push_back(headingRow(printed("Assumed: measure before hooping"), width));
    for (const FactRow& fact : facts.assumed) {
      addText(rows, fact.label + QStringLiteral(": ") + fact.value, kText, width, kMarkIndent,
              kAfter, [](QPainter& painter, QPointF at) {
                painter.setPen(QPen(Qt::black, 0.3));
                painter.setBrush(Qt::NoBrush);
                painter.drawRect(QRectF(at + QPointF(0.2, 0.4), QSizeF(kTick, kTick)));
              });
    }
  }
  if (!facts.remarks.empty()) {
    rows.push_back(headingRow(printed("Findings"), width));
    for (const FindingText& finding : facts.remarks) {
      addFinding(rows, finding, width);
    }
  }
  rows.push_back(headingRow(printed("Frame, backing, needle"), width));
  const double label = labelWidth(facts.rows);
  for (const FactRow& fact : facts.rows) {
    addFact(rows, fact, width, label);
  }
  // What must not be sewn needs no thread.
  if (!facts.stop && !facts.threads.empty()) {
    rows.push_back(headingRow(printed("Thread, in sewing order; stitches"), width));
    for (std::size_t i = 0; i < facts.threads.size(); ++i) {
      addThread(rows, facts.threads[i], i + 1, width);
    }
  }
  if (!facts.steps.empty()) {
    rows.push_back(headingRow(printed("Steps; bold ones by hand"), width));
    for (const StepText& step : facts.steps) {
      addStep(rows, step, width);
    }
  }
  if (choice.cautionsFlow) {
    rows.push_back(headingRow(printed("Cautions"), width));
    for (const QString& caution : facts.cautions) {
      addText(rows, caution, kText, width, 0.0, kAfter);
    }
  }
  return rows;
}

}  // namespace creaseline
