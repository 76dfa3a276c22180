// SPDX-License-Identifier: MIT
// The window's own events.
#include "creaseline/desk/desk_window.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QUrl>

#include "desk/desk_parts.h"
#include "desk/text.h"

namespace creaseline {

DeskWindow::DeskWindow(const DeskRules& rules, const std::filesystem::path& resources,
                       const QString& settingsFile, QWidget* parent)
    : QMainWindow(parent), parts_(std::make_unique<Parts>(*this, rules, resources, settingsFile)) {
}

// The views look at models that the parts own, so they go first.
DeskWindow::~DeskWindow() {
  delete takeCentralWidget();
}

void DeskWindow::openOrder(const std::filesystem::path& file) {
  parts_->openOrder(file);
}

void DeskWindow::openShop(const std::filesystem::path& file) {
  parts_->openShop(file);
}

void DeskWindow::openFile(const std::filesystem::path& file) {
  parts_->openFile(file);
}

void DeskWindow::closeEvent(QCloseEvent* event) {
  if (!parts_->mayLeave()) {
    event->ignore();
    return;
  }
  parts_->keepWindowPlace();
  event->accept();
}

void DeskWindow::dragEnterEvent(QDragEnterEvent* event) {
  for (const QUrl& url : event->mimeData()->urls()) {
    if (url.isLocalFile()) {
      event->acceptProposedAction();
      return;
    }
  }
}

void DeskWindow::dropEvent(QDropEvent* event) {
  for (const QUrl& url : event->mimeData()->urls()) {
    if (url.isLocalFile()) {
      parts_->openFile(desk::toPath(url.toLocalFile()));
    }
  }
  event->acceptProposedAction();
}

void DeskWindow::showEvent(QShowEvent* event) {
  QMainWindow::showEvent(event);
  parts_->finishLater();
}

void DeskWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && parts_) {
    parts_->refreshColours();
  }
}

}  // namespace creaseline
