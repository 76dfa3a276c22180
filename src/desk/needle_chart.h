// SPDX-License-Identifier: MIT
// The machine's needles from 1 on, each with the thread that it carries in a run.
#pragma once

#include <QWidget>
#include <vector>

#include "creaseline/planning/run_card.h"

namespace creaseline::desk {

class NeedleChart : public QWidget {
  Q_OBJECT

 public:
  explicit NeedleChart(QWidget* parent = nullptr);

  void show(const RunCard& card);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {120, sizeHint().height()}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  int needles_ = 0;
  std::vector<RunThread> threads_;
};

}  // namespace creaseline::desk
