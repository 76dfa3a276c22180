// SPDX-License-Identifier: MIT
#include "desk/desk_library.h"

#include <QLineEdit>
#include <QTableView>
#include <utility>

namespace creaseline::desk {

DeskLibrary::DeskLibrary(QWidget& window, Settings& settings, Document& document,
                         std::filesystem::path resources)
    : window_(window), settings_(settings), document_(document), resources_(std::move(resources)) {
}

DeskLibrary::~DeskLibrary() {
  delete garments_;
  delete designs_;
}

void DeskLibrary::showGarments() {
  if (garments_ == nullptr) {
    garments_ = new GarmentsWindow(settings_, document_, resources_, &window_);
    QObject::connect(garments_, &LibraryWindow::saveAsked, &window_, save_);
  }
  garments_->present();
}

void DeskLibrary::showDesigns() {
  if (designs_ == nullptr) {
    designs_ = new DesignsWindow(settings_, document_, &window_);
    QObject::connect(designs_, &LibraryWindow::saveAsked, &window_, save_);
  }
  designs_->present();
}

void DeskLibrary::newGarment() {
  showGarments();
  garments_->addNew();
}

void DeskLibrary::showGarment(const std::string& blank) {
  showGarments();
  const auto order = document_.planned()->order();
  for (std::size_t i = 0; order && i < order->blanks.size(); ++i) {
    if (order->blanks[i].id.text() == blank) {
      garments_->chooseEntry(static_cast<int>(i));
    }
  }
}

void DeskLibrary::showChartOf(const std::string& blank) {
  showGarment(blank);
  if (auto* chart = garments_->findChild<QTableView*>(QStringLiteral("chart"))) {
    chart->setFocus(Qt::OtherFocusReason);
  }
}

void DeskLibrary::showPriceOf(const std::string& blank) {
  showGarment(blank);
  if (auto* price = garments_->findChild<QLineEdit*>(QStringLiteral("garmentPrice"))) {
    price->setFocus(Qt::OtherFocusReason);
    price->selectAll();
  }
}

void DeskLibrary::newDesign() {
  showDesigns();
  designs_->addNew();
}

void DeskLibrary::connectActions(QAction& garments, QAction& designs,
                                 const std::function<void()>& save) {
  save_ = save;
  QObject::connect(&garments, &QAction::triggered, &window_, [this] { showGarments(); });
  QObject::connect(&designs, &QAction::triggered, &window_, [this] { showDesigns(); });
  // There is nothing to show before an order is open.
  const auto update = [this, &garments, &designs] {
    const bool some = document_.planned()->order() != nullptr;
    garments.setEnabled(some);
    designs.setEnabled(some);
  };
  QObject::connect(&document_, &Document::plannedChanged, &window_, update);
  update();
}

}  // namespace creaseline::desk
