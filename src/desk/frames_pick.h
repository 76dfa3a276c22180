// SPDX-License-Identifier: MIT
// The frames in which an order is sewn: ticked in a menu; none ticked is any.
#pragma once

#include <vector>

#include "creaseline/catalogue/shop.h"
#include "desk/tick_menu.h"

namespace creaseline::desk {

class FramesPick : public TickMenu {
  Q_OBJECT

 public:
  explicit FramesPick(QWidget* parent = nullptr);
  // `shop` may be null; a frame that it lacks stays ticked and says so.
  void showFrames(const std::vector<FrameId>& named, const Shop* shop);

 Q_SIGNALS:
  void framesPicked(const std::vector<creaseline::FrameId>& frames);
};

}  // namespace creaseline::desk
