// SPDX-License-Identifier: MIT
// The shop: its window, its file, and leaving it.
#include <QDir>
#include <QFileInfo>
#include <QStatusBar>

#include "creaseline/base/file.h"
#include "desk/desk_parts.h"
#include "desk/text.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

void DeskWindow::Parts::connectShop() {
  QObject::connect(actions_.newShop, &QAction::triggered, &window_, [this] { startShop(); });
  QObject::connect(actions_.editShop, &QAction::triggered, &window_, [this] { showShop(); });
  QObject::connect(&document_, &Document::shopEdited, &window_, [this] { updateEditing(); });
  QObject::connect(&document_, &Document::shopReplaced, &window_, [this] {
    messageBar_->say(Severity::Watch, tr("Somebody else changed the shop, too"),
                     tr("What its file says counts now. Undo brings yours back."));
  });
}

void DeskWindow::Parts::showShop() {
  if (!document_.shopInHand()) {
    return;
  }
  if (shopWindow_ == nullptr) {
    shopWindow_ = new ShopWindow(document_, rules_, settings_, &window_);
    QObject::connect(shopWindow_, &ShopWindow::saveRequested, &window_, [this] { saveShop(); });
    QObject::connect(shopWindow_, &ShopWindow::saveAsRequested, &window_, [this] { saveShopAs(); });
  }
  shopWindow_->present();
}

void DeskWindow::Parts::startShop() {
  if (mayLeaveShop()) {
    document_.startShop(ShopEdits::firstShop());
    showShop();
  }
}

bool DeskWindow::Parts::mayLeaveShop() {
  finishTyping();
  if (!document_.shopModified()) {
    return true;
  }
  const auto save = askWhetherToSave(QStringLiteral("leaveShop"),
                                     tr("The shop has changes that are not saved. Save them?"));
  return save && (!*save || saveShop());
}

bool DeskWindow::Parts::saveShop() {
  finishTyping();
  return document_.shopOriginal().file.empty() ? saveShopAs() : toldOfShop(document_.saveShop());
}

bool DeskWindow::Parts::saveShopAs() {
  finishTyping();
  const QString file =
      askWhereToSave(tr("Save the shop"),
                     document_.shopFile().isEmpty() ? tr("workshop") + QStringLiteral(".shop.json")
                                                    : QFileInfo(document_.shopFile()).fileName(),
                     tr("Shops (*.shop.json)"), QStringLiteral(".shop.json"));
  if (file.isEmpty()) {
    return false;
  }
  try {
    // The dialog has asked whether a file that is there may go.
    return toldOfShop(document_.saveShopAs(toPath(file), stampOf(toPath(file))));
  } catch (const InputError& error) {
    messageBar_->say(Severity::Stop, tr("The shop was not saved"), toQString(error.what()));
    return false;
  }
}

bool DeskWindow::Parts::toldOfShop(SaveResult result) {
  switch (result) {
    case SaveResult::Saved:
      window_.statusBar()->showMessage(
          tr("Saved as %1").arg(QDir::toNativeSeparators(document_.shopFile())), 5000);
      return true;
    case SaveResult::ChangedOutside:
      messageBar_->say(Severity::Watch, tr("Not saved yet: somebody else saved this shop"),
                       tr("%1. It is being read again; look at it, then save again.")
                           .arg(document_.saveProblem()));
      return false;
    case SaveResult::NotWritten:
      messageBar_->say(
          Severity::Stop, tr("The shop was not saved"),
          tr("%1. The file is as it was; save it in another place.").arg(document_.saveProblem()),
          {{tr("Save &as…"), [this] { saveShopAs(); }}});
      return false;
  }
  return false;
}

}  // namespace creaseline
