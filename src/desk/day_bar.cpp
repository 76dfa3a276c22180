// SPDX-License-Identifier: MIT
#include "desk/day_bar.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kBarHeight = 34;
constexpr double kHour = 3600.0;

// Hours between two marks, so that they stand apart.
double hoursApart(double hours, double pixels, double least) {
  for (const double each : {0.25, 0.5, 1.0, 2.0, 4.0, 8.0, 24.0}) {
    if (pixels * each / hours >= least) {
      return each;
    }
  }
  return std::ceil(hours);
}

}  // namespace

DayBar::DayBar(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("dayBar"));
  setAccessibleName(tr("Runs in order, as long as they take"));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DayBar::show(const RunPlan& runs) {
  runs_.clear();
  double at = 0.0;
  QStringList words;
  for (const RunCard& card : runs.cards) {
    const double total = card.time.total.seconds();
    runs_.push_back(
        {at, card.time.setUp.seconds(), total,
         tr("%1  %2", "number of a run, place").arg(card.number).arg(toQString(card.location))});
    words.append(tr("run %1, %2: %3", "number, place, time")
                     .arg(card.number)
                     .arg(toQString(card.location), toQString(formatDuration(card.time.total))));
    at += total;
  }
  setAccessibleDescription(words.join(QStringLiteral("; ")));
  chosen_ = std::min(chosen_, static_cast<int>(runs_.size()) - 1);
  update();
}

void DayBar::choose(int run) {
  if (chosen_ != run) {
    chosen_ = run;
    update();
  }
}

QSize DayBar::sizeHint() const {
  return {560, kBarHeight + fontMetrics().height() + 14};
}

double DayBar::seconds() const {
  return runs_.empty() ? 0.0 : runs_.back().start + runs_.back().total;
}

QRectF DayBar::bar() const {
  return {2.0, 4.0, width() - 4.0, static_cast<double>(kBarHeight)};
}

QRectF DayBar::place(int run) const {
  const Run& each = runs_.at(static_cast<std::size_t>(run));
  const double scale = bar().width() / std::max(seconds(), 1.0);
  return {bar().left() + each.start * scale, bar().top(), each.total * scale, bar().height()};
}

void DayBar::paintEvent(QPaintEvent*) {
  if (runs_.empty()) {
    return;
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor text = palette().color(QPalette::Text);
  const double scale = bar().width() / std::max(seconds(), 1.0);
  for (int i = 0; i < static_cast<int>(runs_.size()); ++i) {
    const Run& run = runs_[static_cast<std::size_t>(i)];
    const QRectF box = place(i).adjusted(0.5, 0.0, -0.5, 0.0);
    const bool chosen = i == chosen_;
    painter.setPen(QPen(chosen ? palette().color(QPalette::Highlight) : mutedText(palette()),
                        chosen ? 2.0 : 1.0));
    painter.setBrush(i % 2 == 0 ? palette().color(QPalette::Base)
                                : palette().color(QPalette::AlternateBase));
    painter.drawRect(box);
    // Setting up is hatched, sewing is plain.
    painter.fillRect(QRectF(box.left(), box.top(), run.setUp * scale, box.height()),
                     QBrush(mutedText(palette()), Qt::BDiagPattern));
    painter.setPen(text);
    const QRectF words = box.adjusted(run.setUp * scale + 4.0, 0.0, -4.0, 0.0);
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                     fontMetrics().elidedText(run.name, Qt::ElideRight,
                                              static_cast<int>(std::max(0.0, words.width()))));
  }
  const double hours = seconds() / kHour;
  const double apart =
      hoursApart(hours, bar().width(), fontMetrics().horizontalAdvance(tr("%1 h").arg(8.25)) + 16);
  painter.setPen(mutedText(palette()));
  const double below = bar().bottom();
  for (double hour = 0.0; hour <= hours + 1e-9; hour += apart) {
    const double x = bar().left() + hour * kHour * scale;
    painter.drawLine(QPointF(x, below), QPointF(x, below + 4.0));
    const QString words = tr("%1 h", "hours since the start").arg(hour);
    const int wide = fontMetrics().horizontalAdvance(words);
    const double left = std::clamp(x - wide / 2.0, 0.0, std::max(0.0, width() - 1.0 * wide));
    painter.drawText(QPointF(left, below + 6.0 + fontMetrics().ascent()), words);
  }
  if (hasFocus()) {
    painter.setPen(QPen(text, 1, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
  }
}

void DayBar::mousePressEvent(QMouseEvent* event) {
  for (int i = 0; i < static_cast<int>(runs_.size()); ++i) {
    if (place(i).contains(event->position())) {
      choose(i);
      Q_EMIT chosen(i);
      return;
    }
  }
}

void DayBar::keyPressEvent(QKeyEvent* event) {
  const int by = event->key() == Qt::Key_Right ? 1 : event->key() == Qt::Key_Left ? -1 : 0;
  const int next = chosen_ + by;
  if (by == 0 || next < 0 || next >= static_cast<int>(runs_.size())) {
    QWidget::keyPressEvent(event);
    return;
  }
  choose(next);
  Q_EMIT chosen(next);
}

}  // namespace creaseline::desk
