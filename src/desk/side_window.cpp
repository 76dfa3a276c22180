// SPDX-License-Identifier: MIT
#include "desk/side_window.h"

#include <QHideEvent>
#include <QKeyEvent>
#include <QScreen>
#include <algorithm>

namespace creaseline::desk {

namespace {

// For the frame that the desktop puts around a window.
constexpr QSize kFrameRoom{40, 60};

}  // namespace

SideWindow::SideWindow(const QString& name, QSize firstSize, Settings& settings, QWidget* parent)
    : QWidget(parent, Qt::Window), settings_(settings) {
  setObjectName(name);
  resize(firstSize.boundedTo(screen()->availableSize() - kFrameRoom));
  if (const QByteArray place = settings_.geometryOf(name); !place.isEmpty()) {
    restoreGeometry(place);
  } else if (parent != nullptr) {
    // Over what it belongs to: where a desktop would put it may be far from there.
    const QPoint middle = parent->window()->frameGeometry().center() - rect().center();
    const QRect room = screen()->availableGeometry();
    move(std::clamp(middle.x(), room.left(), std::max(room.left(), room.right() - width())),
         std::clamp(middle.y(), room.top(), std::max(room.top(), room.bottom() - height())));
  }
}

void SideWindow::present() {
  show();
  raise();
  activateWindow();
}

// One that is only minimised or on another desktop comes back by itself.
void SideWindow::hideEvent(QHideEvent* event) {
  if (!event->spontaneous()) {
    settings_.setGeometryOf(objectName(), saveGeometry());
  }
  QWidget::hideEvent(event);
}

void SideWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace creaseline::desk
