// SPDX-License-Identifier: MIT
// A design's outline as the planner sees it, with its size.
#pragma once

#include <QWidget>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/design.h"

namespace creaseline::desk {

class OutlineView : public QWidget {
  Q_OBJECT

 public:
  explicit OutlineView(QWidget* parent = nullptr);
  void show(const Design& design, const UnitChoice& units);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Outline outline_;
  QString size_;
};

}  // namespace creaseline::desk
