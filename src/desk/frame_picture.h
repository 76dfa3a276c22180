// SPDX-License-Identifier: MIT
// A frame as it lies on the table: body, window, what the needle may reach, bracket.
#pragma once

#include <QWidget>
#include <optional>

#include "creaseline/catalogue/shop.h"

namespace creaseline::desk {

class FramePicture : public QWidget {
  Q_OBJECT

 public:
  explicit FramePicture(QWidget* parent = nullptr);

  // `clearance`: between the window's edge and the needle; `field`: that the machine reaches.
  void show(const Frame& frame, Length clearance, const Window& field);

  QSize sizeHint() const override { return {220, 190}; }
  QSize minimumSizeHint() const override { return {120, 120}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Shown {
    Frame frame;
    Length clearance;
    Window field;
  };
  std::optional<Shown> shown_;
};

}  // namespace creaseline::desk
