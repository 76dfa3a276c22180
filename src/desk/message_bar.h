// SPDX-License-Identifier: MIT
// A bar above the work that says what went wrong, where, and what to do; never a dialog.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "creaseline/planning/finding.h"

namespace creaseline::desk {

class MessageBar : public QWidget {
  Q_OBJECT

 public:
  explicit MessageBar(QWidget* parent = nullptr);

  // `severity` chooses shape and colour. `action` is the label of the button, empty for none.
  void say(Severity severity, const QString& headline, const QString& detail,
           const QString& action);
  [[nodiscard]] QString headline() const { return headline_->text(); }
  [[nodiscard]] QString detail() const { return detail_->text(); }

 Q_SIGNALS:
  void actionRequested();

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QLabel* headline_ = nullptr;
  QLabel* detail_ = nullptr;
  QPushButton* action_ = nullptr;
  QPushButton* close_ = nullptr;
  Severity severity_ = Severity::Note;
};

}  // namespace creaseline::desk
