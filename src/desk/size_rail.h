// SPDX-License-Identifier: MIT
// The size rail: all sizes of the selected placement hang side by side, to one scale, each with
// its design, frame and state.
#pragma once

#include <QListView>

#include "desk/selection.h"
#include "desk/size_model.h"

namespace creaseline::desk {

class SizeRail : public QListView {
  Q_OBJECT

 public:
  // Both must outlive the view.
  SizeRail(SizeModel& model, Selection& selection, QWidget* parent = nullptr);

  // Pixels of the widget for one millimetre of garment; the same for all sizes shown.
  [[nodiscard]] double pixelsPerMm() const { return pixelsPerMm_; }
  [[nodiscard]] bool isCompared(const SizeName& size) const;
  QSize minimumSizeHint() const override;
  QSize sizeHint() const override;

 protected:
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void compareWith(const QModelIndex& index);
  void followSelection();
  void fitScale();

  SizeModel& model_;
  Selection& selection_;
  double pixelsPerMm_ = 0.1;
  bool following_ = false;
};

}  // namespace creaseline::desk
