// SPDX-License-Identifier: MIT
// The table with the strip above it: the places of the selected line to choose from, and zoom.
#pragma once

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QWidget>

#include "desk/selection.h"
#include "desk/table_canvas.h"

namespace creaseline::desk {

class TablePanel : public QWidget {
  Q_OBJECT

 public:
  // The actions' buttons are shown at the right end of the strip.
  TablePanel(Selection& selection, const QList<QAction*>& zoomActions, QWidget* parent = nullptr);

  [[nodiscard]] TableCanvas& canvas() { return *canvas_; }
  // Shows what is selected in this plan; where that is not planned, of `laid` the selected size.
  // A part that is looked at comes before both.
  void showSelection(const std::shared_ptr<const PlannedOrder>& planned,
                     const std::shared_ptr<const Laid>& laid);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fillPlaces(const PlannedOrder& planned);
  void fillOtherPanels();
  void fillHoopings(const PlannedOrder& planned);
  [[nodiscard]] static QString zoomWords(int percent);
  void showZoom();
  [[nodiscard]] static QString emptyText(const PlannedOrder& planned);

  Selection& selection_;
  std::shared_ptr<const PlannedOrder> planned_;
  TableCanvas* canvas_ = nullptr;
  QHBoxLayout* places_ = nullptr;
  QButtonGroup* placeButtons_ = nullptr;
  QToolButton* otherPanels_ = nullptr;
  QMenu* otherPanelsMenu_ = nullptr;
  QHBoxLayout* hoopings_ = nullptr;
  QButtonGroup* hoopingButtons_ = nullptr;
  QLabel* zoom_ = nullptr;
};

}  // namespace creaseline::desk
