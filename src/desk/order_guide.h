// SPDX-License-Identifier: MIT
// The way to a first order, step by step: what is done is ticked by itself, each step leads to
// where it is done, and none has to come before another. Knows no document; desk_guide.cpp asks for
// both.
#pragma once

#include <QToolButton>
#include <QWidget>
#include <vector>

namespace creaseline::desk {

class OrderGuide : public QWidget {
  Q_OBJECT

 public:
  enum Step { Shop, Garment, Design, Line, Place, Quantities, Sheets, StepCount };

  explicit OrderGuide(QWidget* parent = nullptr);

  void setDone(Step step, bool done);
  [[nodiscard]] bool isDone(Step step) const { return done_[step]; }
  // The first that is not done, or StepCount.
  [[nodiscard]] Step next() const;

 Q_SIGNALS:
  void stepChosen(creaseline::desk::OrderGuide::Step step);
  void closed();

 protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void showSteps();

  std::vector<bool> done_;
  std::vector<QToolButton*> steps_;
  int fullHeight_ = 0;
  bool brief_ = false;
};

}  // namespace creaseline::desk
