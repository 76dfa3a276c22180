// SPDX-License-Identifier: MIT
// Forms for what is selected: the order's head, the line, the place, each on a tab.
#pragma once

#include <QTabWidget>
#include <memory>

#include "desk/line_form.h"
#include "desk/order_form.h"
#include "desk/place_form.h"

namespace creaseline::desk {

class DetailsPanel : public QTabWidget {
  Q_OBJECT

 public:
  enum Tab { OrderTab, LineTab, PlaceTab };

  explicit DetailsPanel(QWidget* parent = nullptr);
  // Shows a line and a place of it, if it has one.
  void show(const std::shared_ptr<const PlannedOrder>& planned, const std::optional<Spot>& spot);

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);

 private:
  OrderForm* order_ = nullptr;
  LineForm* line_ = nullptr;
  PlaceForm* place_ = nullptr;
};

}  // namespace creaseline::desk
