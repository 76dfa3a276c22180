// SPDX-License-Identifier: MIT
#include "desk/day_bar.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <algorithm>
#include <array>
#include <cmath>

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kBarHeight = 34;
constexpr double kHour = 3600.0;
constexpr double kInset = 4.0;  // of words from the edge of their run

}  // namespace

DayBar::DayBar(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("dayBar"));
  setAccessibleName(tr("Runs in order, as long as they take, in hours at the machine"));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DayBar::show(const RunPlan& runs) {
  runs_.clear();
  double at = 0.0;
  for (const RunCard& card : runs.cards) {
    const double total = card.time.total.seconds();
    runs_.push_back(
        {at, card.time.setUp.seconds(), total, QString::number(card.number),
         tr("%1  %2", "number of a run, place").arg(card.number).arg(toQString(card.location)),
         tr("run %1, %2: %3", "number, place, time")
             .arg(card.number)
             .arg(toQString(card.location), toQString(formatDuration(card.time.total)))});
    at += total;
  }
  chosen_ = std::min(chosen_, static_cast<int>(runs_.size()) - 1);
  describe();
  update();
}

// All runs in order, the chosen one first.
void DayBar::describe() {
  QStringList words;
  for (const Run& run : runs_) {
    words.append(run.words);
  }
  if (chosen_ >= 0) {
    words.prepend(tr("chosen: %1", "a run").arg(runs_[static_cast<std::size_t>(chosen_)].words));
  }
  setAccessibleDescription(words.join(QStringLiteral("; ")));
  QAccessibleEvent event(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&event);
}

void DayBar::choose(int run) {
  if (chosen_ != run) {
    chosen_ = run;
    describe();
    update();
  }
}

QSize DayBar::sizeHint() const {
  return {560, 2 * numberRow() + kBarHeight + 2 * fontMetrics().height() + 16};
}

// Above the bar there are two, for the numbers of runs that are too narrow for theirs.
int DayBar::numberRow() const {
  return fontMetrics().height();
}

double DayBar::seconds() const {
  return runs_.empty() ? 0.0 : runs_.back().start + runs_.back().total;
}

double DayBar::scale() const {
  return bar().width() / std::max(seconds(), 1.0);
}

QRectF DayBar::bar() const {
  return {2.0, 4.0 + 2 * numberRow(), width() - 4.0, static_cast<double>(kBarHeight)};
}

QRectF DayBar::place(int run) const {
  const Run& each = runs_.at(static_cast<std::size_t>(run));
  return {bar().left() + each.start * scale(), bar().top(), each.total * scale(), bar().height()};
}

QRectF DayBar::numberPlace(int run) const {
  return numberPlaces().at(static_cast<std::size_t>(run));
}

// Those without room on their run share two rows above, each in the row where it can stand nearest
// to its run. What is pushed over the right edge pushes back to the left.
std::vector<QRectF> DayBar::numberPlaces() const {
  std::vector<QRectF> places(runs_.size());
  std::array<std::vector<std::size_t>, 2> rows;
  const auto end = [&places](const std::vector<std::size_t>& row) {
    return row.empty() ? 0.0 : places[row.back()].right() + kInset;
  };
  for (std::size_t i = 0; i < runs_.size(); ++i) {
    const QRectF box = place(static_cast<int>(i));
    const double wide = fontMetrics().horizontalAdvance(runs_[i].number) + 2.0;
    const double hatched = runs_[i].setUp * scale();
    if (box.width() - hatched >= wide + 2 * kInset) {
      places[i] = {box.left() + hatched + kInset, box.top(), wide, box.height()};
      continue;
    }
    const double wanted = std::max(0.0, box.center().x() - wide / 2.0);
    const bool lower = std::max(wanted, end(rows[1])) <= std::max(wanted, end(rows[0]));
    std::vector<std::size_t>& row = rows[lower ? 1 : 0];
    const double top = 2.0 + (lower ? numberRow() : 0.0);
    places[i] = {std::max(wanted, end(row)), top, wide, static_cast<double>(numberRow())};
    row.push_back(i);
  }
  for (const std::vector<std::size_t>& row : rows) {
    double most = width();
    for (auto each = row.rbegin(); each != row.rend(); ++each) {
      places[*each].moveRight(std::min(places[*each].right(), most));
      most = places[*each].left() - kInset;
    }
  }
  return places;
}

double DayBar::hoursApart() const {
  const double pixels = kHour * scale();
  const double least = fontMetrics().horizontalAdvance(tr("%1 h").arg(88)) + 16;
  for (const double each : {1.0, 2.0, 4.0, 8.0, 12.0, 24.0, 48.0}) {
    if (pixels * each >= least) {
      return each;
    }
  }
  return std::ceil(least / pixels);
}

void DayBar::paintRun(QPainter& painter, int index, const QRectF& number) const {
  const Run& run = runs_[static_cast<std::size_t>(index)];
  const QRectF box = place(index).adjusted(0.5, 0.0, -0.5, 0.0);
  const bool chosen = index == chosen_;
  painter.setPen(QPen(chosen ? palette().color(QPalette::Highlight) : mutedText(palette()),
                      chosen ? 2.0 : 1.0));
  painter.setBrush(index % 2 == 0 ? palette().color(QPalette::Base)
                                  : palette().color(QPalette::AlternateBase));
  painter.drawRect(box);
  // Setting up is hatched, sewing is plain.
  painter.fillRect(QRectF(box.left(), box.top(), run.setUp * scale(), box.height()),
                   QBrush(mutedText(palette()), Qt::BDiagPattern));
  if (number.bottom() <= bar().top()) {
    painter.setPen(mutedText(palette()));
    painter.drawLine(QPointF(number.center().x(), number.bottom() - 1.0),
                     QPointF(box.center().x(), bar().top()));
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(number, Qt::AlignCenter, run.number);
    return;
  }
  painter.setPen(palette().color(QPalette::Text));
  const QRectF words(number.left(), box.top(), box.right() - kInset - number.left(), box.height());
  const QString elided =
      fontMetrics().elidedText(run.name, Qt::ElideRight, static_cast<int>(words.width()));
  // The number at least, never the three dots alone.
  painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                   elided.startsWith(run.number) ? elided : run.number);
}

// A mark at each hour, longer where its number stands.
void DayBar::paintHours(QPainter& painter) const {
  painter.setPen(mutedText(palette()));
  const double below = bar().bottom();
  const double apart = hoursApart();
  const int hours = static_cast<int>(seconds() / kHour + 1e-9);
  for (int hour = 0; hour <= hours; ++hour) {
    const double x = bar().left() + hour * kHour * scale();
    const bool told = std::fmod(hour, apart) < 1e-9;
    painter.drawLine(QPointF(x, below), QPointF(x, below + (told ? 5.0 : 3.0)));
    if (told) {
      const QString words = tr("%1 h", "hours at the machine since the start").arg(hour);
      const int wide = fontMetrics().horizontalAdvance(words);
      const double left = std::clamp(x - wide / 2.0, 0.0, std::max(0.0, width() - 1.0 * wide));
      painter.drawText(QPointF(left, below + 6.0 + fontMetrics().ascent()), words);
    }
  }
  painter.drawText(
      QRectF(2.0, below + 8.0 + fontMetrics().height(), width() - 4.0, fontMetrics().height()),
      Qt::AlignLeft | Qt::AlignVCenter,
      fontMetrics().elidedText(
          tr("hours at the machine, one run after the other; hatched: setting up"), Qt::ElideRight,
          width() - 4));
}

void DayBar::paintEvent(QPaintEvent*) {
  if (runs_.empty()) {
    return;
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const std::vector<QRectF> numbers = numberPlaces();
  for (int i = 0; i < static_cast<int>(runs_.size()); ++i) {
    paintRun(painter, i, numbers[static_cast<std::size_t>(i)]);
  }
  paintHours(painter);
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Text), 1, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
  }
}

// A run is meant by its number, too.
std::optional<int> DayBar::runAt(QPointF at) const {
  const std::vector<QRectF> numbers = numberPlaces();
  for (int i = 0; i < static_cast<int>(runs_.size()); ++i) {
    if (place(i).contains(at) || numbers[static_cast<std::size_t>(i)].contains(at)) {
      return i;
    }
  }
  return std::nullopt;
}

bool DayBar::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    if (const auto run = runAt(help->pos())) {
      QToolTip::showText(help->globalPos(),
                         capitalised(runs_[static_cast<std::size_t>(*run)].words), this);
    } else {
      QToolTip::hideText();
    }
    return true;
  }
  return QWidget::event(event);
}

void DayBar::mousePressEvent(QMouseEvent* event) {
  if (const auto run = runAt(event->position())) {
    choose(*run);
    Q_EMIT chosen(*run);
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
