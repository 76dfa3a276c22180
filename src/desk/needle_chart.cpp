// SPDX-License-Identifier: MIT
#include "desk/needle_chart.h"

#include <QPainter>
#include <algorithm>

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr double kSpool = 22.0;  // pixels across

}  // namespace

NeedleChart::NeedleChart(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("needleChart"));
  setAccessibleName(tr("Threads on the needles"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void NeedleChart::show(const RunCard& card) {
  needles_ = card.needles;
  threads_ = card.threads;
  QStringList words;
  for (const RunThread& thread : threads_) {
    words.append(tr("needle %1: %2").arg(thread.needle).arg(toQString(thread.name)) +
                 (thread.putOn ? tr(", put on by hand") : QString()));
  }
  setAccessibleDescription(words.join(QStringLiteral("; ")));
  setToolTip(words.join(QLatin1Char('\n')));
  update();
}

QSize NeedleChart::sizeHint() const {
  return {420, static_cast<int>(kSpool) + 2 * fontMetrics().height() + 14};
}

// A spool in the thread's colour for each needle; one that is put on by hand has a ring round it.
void NeedleChart::paintEvent(QPaintEvent*) {
  if (needles_ == 0) {
    return;
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor text = palette().color(QPalette::Text);
  const double step = std::min(width() / static_cast<double>(needles_), 96.0);
  for (int needle = 1; needle <= needles_; ++needle) {
    const QRectF cell((needle - 1) * step, 0.0, step, height());
    QRectF spool(0.0, 0.0, kSpool, kSpool);
    spool.moveCenter({cell.center().x(), fontMetrics().height() + kSpool / 2.0 + 5.0});
    painter.setPen(text);
    painter.drawText(QRectF(cell.left(), 0.0, cell.width(), fontMetrics().height()),
                     Qt::AlignCenter, QString::number(needle));
    std::vector<const RunThread*> carried;
    for (const RunThread& thread : threads_) {
      if (thread.needle == needle) {
        carried.push_back(&thread);
      }
    }
    if (carried.empty()) {
      painter.setPen(QPen(mutedText(palette()), 1.0, Qt::DotLine));
      painter.setBrush(Qt::NoBrush);
      painter.drawEllipse(spool);
      continue;
    }
    // Threads that take turns on one needle share its spool.
    const int slice = 360 * 16 / static_cast<int>(carried.size());
    for (std::size_t i = 0; i < carried.size(); ++i) {
      const Colour& colour = carried[i]->colour;
      painter.setPen(QPen(text, 1.0));
      painter.setBrush(QColor(colour.red, colour.green, colour.blue));
      if (carried.size() == 1) {
        painter.drawEllipse(spool);
      } else {
        painter.drawPie(spool, static_cast<int>(i) * slice, slice);
      }
    }
    const bool byHand = std::any_of(carried.begin(), carried.end(),
                                    [](const RunThread* thread) { return thread->putOn; });
    if (byHand) {
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(text, 1.4));
      painter.drawEllipse(spool.adjusted(-3.5, -3.5, 3.5, 3.5));
    }
    const QRectF words(cell.left() + 2.0, spool.bottom() + 5.0, cell.width() - 4.0,
                       fontMetrics().height());
    painter.setPen(text);
    painter.drawText(words, Qt::AlignCenter,
                     fontMetrics().elidedText(toQString(carried.front()->name), Qt::ElideRight,
                                              static_cast<int>(words.width())));
  }
}

}  // namespace creaseline::desk
