// SPDX-License-Identifier: MIT
// A window beside the desk: Escape closes it, and it opens again where it was left.
#pragma once

#include <QWidget>

#include "desk/settings.h"

namespace creaseline::desk {

class SideWindow : public QWidget {
  Q_OBJECT

 public:
  // Opens it, or brings it to the front.
  void present();

 protected:
  // `name`: object name, by which the settings, which must outlive the window, keep its place.
  // `firstSize`: as long as none is kept; no more than the screen has room for.
  SideWindow(const QString& name, QSize firstSize, Settings& settings, QWidget* parent);
  [[nodiscard]] Settings& settings() const { return settings_; }

  void hideEvent(QHideEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  Settings& settings_;
};

}  // namespace creaseline::desk
