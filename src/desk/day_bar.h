// SPDX-License-Identifier: MIT
// The runs of an order one after the other, as long as they take, in hours at the machine: the shop
// says nothing of its working hours, so that no time of day is told.
#pragma once

#include <QPainter>
#include <QWidget>
#include <optional>
#include <vector>

#include "creaseline/planning/run_card.h"

namespace creaseline::desk {

class DayBar : public QWidget {
  Q_OBJECT

 public:
  explicit DayBar(QWidget* parent = nullptr);

  void show(const RunPlan& runs);
  void choose(int run);  // index, or -1

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {160, sizeHint().height()}; }
  // Where a run is drawn, and where its number stands: on it, or above it where it is too narrow.
  [[nodiscard]] QRectF place(int run) const;
  [[nodiscard]] QRectF numberPlace(int run) const;
  // Hours between two marks that bear a number; each hour has a mark.
  [[nodiscard]] double hoursApart() const;

 Q_SIGNALS:
  void chosen(int run);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Run {
    double start = 0.0, setUp = 0.0, total = 0.0;  // seconds
    QString number, name;
    QString words;  // all of it, for the tool tip and screen readers
  };
  [[nodiscard]] double seconds() const;
  [[nodiscard]] double scale() const;
  [[nodiscard]] int numberRow() const;
  [[nodiscard]] std::optional<int> runAt(QPointF at) const;
  [[nodiscard]] std::vector<QRectF> numberPlaces() const;
  void paintRun(QPainter& painter, int run, const QRectF& number) const;
  void paintHours(QPainter& painter) const;
  void describe();
  [[nodiscard]] QRectF bar() const;

  std::vector<Run> runs_;
  int chosen_ = -1;
};

}  // namespace creaseline::desk
