// SPDX-License-Identifier: MIT
#include "desk/details_panel.h"

#include <QScrollArea>

namespace creaseline::desk {

DetailsPanel::DetailsPanel(QWidget* parent) : QTabWidget(parent) {
  setObjectName(QStringLiteral("details"));
  setAccessibleName(tr("Details to edit"));
  setDocumentMode(true);
  order_ = new OrderForm;
  line_ = new LineForm;
  place_ = new PlaceForm;
  const auto tab = [this](QWidget* form, const QString& words) {
    auto* area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(form);
    addTab(area, words);
  };
  tab(order_, tr("Order"));
  tab(line_, tr("Garment"));
  tab(place_, tr("Place"));
  connect(order_, &OrderForm::edited, this, &DetailsPanel::edited);
  connect(line_, &LineForm::edited, this, &DetailsPanel::edited);
  connect(place_, &PlaceForm::edited, this, &DetailsPanel::edited);
}

void DetailsPanel::show(const std::shared_ptr<const PlannedOrder>& planned,
                        const std::optional<Spot>& spot) {
  order_->show(planned);
  const Order* order = planned->order();
  if (order == nullptr || !spot || spot->line >= order->lines.size()) {
    line_->showNothing();
    place_->showNothing();
    return;
  }
  line_->show(planned, spot->line);
  if (spot->placement && *spot->placement < order->lines[spot->line].placements.size()) {
    place_->show(planned, spot->line, *spot->placement);
  } else {
    place_->showNothing();
  }
  // The tab goes along from garments to places, but never away from the order's head.
  if (currentIndex() != OrderTab) {
    setCurrentIndex(spot->placement ? PlaceTab : LineTab);
  }
}

}  // namespace creaseline::desk
