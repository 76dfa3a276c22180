// SPDX-License-Identifier: MIT
// The runs of an order one after the other, as long as they take: how the day goes.
#pragma once

#include <QWidget>
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
  // Where a run is drawn.
  [[nodiscard]] QRectF place(int run) const;

 Q_SIGNALS:
  void chosen(int run);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Run {
    double start = 0.0, setUp = 0.0, total = 0.0;  // seconds
    QString name;
  };
  [[nodiscard]] double seconds() const;
  [[nodiscard]] QRectF bar() const;

  std::vector<Run> runs_;
  int chosen_ = -1;
};

}  // namespace creaseline::desk
