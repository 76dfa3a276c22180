// SPDX-License-Identifier: MIT
// A bar above the work that says what went wrong, where, and what to do; never a dialog.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <functional>
#include <vector>

#include "creaseline/planning/finding.h"

namespace creaseline::desk {

class MessageBar : public QWidget {
  Q_OBJECT

 public:
  explicit MessageBar(QWidget* parent = nullptr);

  struct Answer {
    QString label;  // of the button
    std::function<void()> run;
  };

  // `severity` chooses shape and colour. Up to two answers, each hides the message and runs.
  void say(Severity severity, const QString& headline, const QString& detail,
           const std::vector<Answer>& answers = {});
  [[nodiscard]] QString headline() const { return headline_->text(); }
  [[nodiscard]] QString detail() const { return detail_->text(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QLabel* headline_ = nullptr;
  QLabel* detail_ = nullptr;
  void answer(std::size_t index);

  QPushButton* actions_[2] = {};
  std::vector<Answer> answers_;
  QPushButton* close_ = nullptr;
  Severity severity_ = Severity::Note;
};

}  // namespace creaseline::desk
