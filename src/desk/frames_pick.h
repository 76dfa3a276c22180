// SPDX-License-Identifier: MIT
// Which of the shop's frames an order is sewn in: any, or those that are ticked in a menu.
#pragma once

#include <QToolButton>
#include <vector>

#include "creaseline/catalogue/shop.h"

class QMenu;

namespace creaseline::desk {

class FramesPick : public QToolButton {
  Q_OBJECT

 public:
  explicit FramesPick(QWidget* parent = nullptr);
  // `shop` may be null: then only the frames that are named already can be offered.
  void show(const std::vector<FrameId>& named, const Shop* shop);

 Q_SIGNALS:
  // Empty: any.
  void picked(const std::vector<creaseline::FrameId>& frames);

 private:
  void addFrame(const FrameId& frame, const QString& name);

  QMenu* menu_ = nullptr;
  std::vector<FrameId> named_;
};

}  // namespace creaseline::desk
