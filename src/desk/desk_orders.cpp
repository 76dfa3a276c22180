// SPDX-License-Identifier: MIT
// Orders beside the one that is open: found again, copied, started from a pattern, opened in a
// window of their own; and the plan as text and JSON.
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QStatusBar>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/order_library.h"
#include "creaseline/planning/report.h"
#include "desk/desk_parts.h"
#include "desk/file_questions.h"
#include "desk/text.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

namespace {

const QString kPatternEnding = QStringLiteral("-pattern");

}  // namespace

// The number after `last` that no order of the folder has, nor the one that is open.
std::string DeskWindow::Parts::nextNumber(const std::string& last, const QString& folder) const {
  std::vector<std::string> taken;
  if (const auto open = document_.orderInHand()) {
    taken.push_back(open->id);
  }
  if (!folder.isEmpty()) {
    for (const OrderHead& head : findOrders(toPath(folder), {}).orders) {
      taken.push_back(head.id);
    }
  }
  return nextOrderId(last, taken);
}

QString DeskWindow::Parts::orderFolder() const {
  return document_.orderFile().isEmpty() ? QString()
                                         : QFileInfo(document_.orderFile()).absolutePath();
}

// Where a file is proposed to be saved: beside the order, else beside the shop, else among the
// user's documents.
QString DeskWindow::Parts::proposed(const QString& fileName) const {
  const QString beside =
      document_.orderFile().isEmpty() ? document_.shopFile() : document_.orderFile();
  const QDir folder =
      beside.isEmpty() ? QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
                       : QFileInfo(beside).absoluteDir();
  return folder.absoluteFilePath(fileName);
}

// Empty if the user thinks better of it.
QString DeskWindow::Parts::askWhereToSave(const QString& title, const QString& fileName,
                                          const QString& filter, const QString& ending) {
  // Over the window from which it is asked, which is in front again afterwards.
  QWidget* asking = QApplication::activeWindow();
  return desk::askWhereToSave(asking == nullptr ? &window_ : asking, title, proposed(fileName),
                              filter, ending);
}

void DeskWindow::Parts::connectOrders() {
  const auto on = [this](QAction* action, void (Parts::*what)()) {
    QObject::connect(action, &QAction::triggered, &window_, [this, what] { (this->*what)(); });
  };
  on(actions_.findOrder, &Parts::findOrder);
  on(actions_.newWindow, &Parts::openNewWindow);
  on(actions_.duplicateOrder, &Parts::duplicateOrder);
  on(actions_.savePattern, &Parts::savePattern);
  on(actions_.copyPlan, &Parts::copyPlan);
  on(actions_.exportPlan, &Parts::exportPlan);
}

void DeskWindow::Parts::findOrder() {
  if (ordersWindow_ == nullptr) {
    ordersWindow_ = new OrdersWindow(settings_, &window_);
    QObject::connect(
        ordersWindow_, &OrdersWindow::chosen, &window_,
        [this](const std::filesystem::path& file, OrdersWindow::Use use) { useOrder(file, use); });
  }
  ordersWindow_->present();
  ordersWindow_->lookIn(QFileInfo(proposed(QStringLiteral("any"))).absolutePath());
}

void DeskWindow::Parts::useOrder(const std::filesystem::path& file, OrdersWindow::Use use) {
  switch (use) {
    case OrdersWindow::Use::Open:
      openOrder(file);
      return;
    case OrdersWindow::Use::OpenInNewWindow:
      newWindow().openOrder(file);
      return;
    case OrdersWindow::Use::Copy:
    case OrdersWindow::Use::Pattern:
      break;
  }
  if (!mayLeaveOrder()) {
    return;
  }
  try {
    const Loaded<Order> loaded = loadOrderDraft(file, *rules_.get());
    QString last = toQString(loaded.value.id);
    if (last.endsWith(kPatternEnding)) {
      last.chop(kPatternEnding.size());
    }
    const std::string id = nextNumber(toUtf8(last), pathText(file.parent_path()));
    settings_.setGuided(true);  // who has an order to copy knows the way
    document_.startOrder(use == OrdersWindow::Use::Copy
                             ? creaseline::duplicateOrder(loaded.value, id)
                             : orderFromTemplate(orderTemplate(loaded.value, id), id),
                         loaded.original);
    details_->setCurrentIndex(DetailsPanel::OrderTab);
  } catch (const InputError& error) {
    messageBar_->say(Severity::Stop, tr("That order cannot be used"), toQString(error.what()));
  }
}

// The order as it is here, saved or not; the other stays in its file.
void DeskWindow::Parts::duplicateOrder() {
  const auto order = document_.orderInHand();
  if (!order || !mayLeaveOrder()) {
    return;
  }
  const Original<Order> original = document_.original();
  settings_.setGuided(true);
  document_.startOrder(creaseline::duplicateOrder(*order, nextNumber(order->id, orderFolder())),
                       original);
  details_->setCurrentIndex(DetailsPanel::OrderTab);
}

DeskWindow& DeskWindow::Parts::newWindow() {
  auto* window = new DeskWindow(rules_, resources_, settings_.file());
  window->setAttribute(Qt::WA_DeleteOnClose);
  window->resize(window_.size());
  if (!document_.shopFile().isEmpty()) {
    window->openShop(toPath(document_.shopFile()));
  }
  window->show();
  return *window;
}

void DeskWindow::Parts::openNewWindow() {
  newWindow();
}

// Garments, places and designs that recur, as an order without customer and quantities.
void DeskWindow::Parts::savePattern() {
  finishTyping();
  const auto order = document_.orderInHand();
  if (!order) {
    return;
  }
  const Order pattern = orderTemplate(*order, order->id + toUtf8(kPatternEnding));
  const QString file = askWhereToSave(tr("Save a pattern for orders"),
                                      fileNameFor(pattern.id, QStringLiteral(".order.json")),
                                      tr("Orders (*.order.json)"), QStringLiteral(".order.json"));
  if (file.isEmpty()) {
    return;
  }
  try {
    SaveStyle style;
    style.lengths = document_.units().length;
    style.folder = toPath(file).parent_path();
    static_cast<void>(creaseline::saveOrder(toPath(file), pattern, document_.original(), style,
                                            stampOf(toPath(file))));
    window_.statusBar()->showMessage(tr("Saved as %1").arg(QDir::toNativeSeparators(file)), 5000);
  } catch (const std::exception& error) {
    messageBar_->say(Severity::Stop, tr("The pattern was not saved"), toQString(error.what()));
  }
}

void DeskWindow::Parts::copyPlan() {
  const auto planned = document_.planned();
  if (planned->plan() != nullptr) {
    QApplication::clipboard()->setText(toQString(
        textReport(*planned->plan(), {*planned->plannedFor(), *planned->shop(), planned->rules()},
                   planned->units())));
    window_.statusBar()->showMessage(tr("The plan is on the clipboard as text"), 5000);
  }
}

void DeskWindow::Parts::exportPlan() {
  const auto planned = document_.planned();
  if (planned->plan() == nullptr) {
    return;
  }
  const QString file = askWhereToSave(
      tr("Export the plan"), fileNameFor(planned->order()->id, QStringLiteral(".plan.json")),
      tr("Plans (*.plan.json)"), QStringLiteral(".plan.json"));
  if (file.isEmpty()) {
    return;
  }
  try {
    writeFileAtomically(
        toPath(file),
        jsonReport(*planned->plan(), {*planned->plannedFor(), *planned->shop(), planned->rules()}));
    window_.statusBar()->showMessage(tr("Saved as %1").arg(QDir::toNativeSeparators(file)), 5000);
  } catch (const std::exception& error) {
    messageBar_->say(Severity::Stop, tr("The plan was not exported"), toQString(error.what()));
  }
}

}  // namespace creaseline
