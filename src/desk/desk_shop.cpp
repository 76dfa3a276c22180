// SPDX-License-Identifier: MIT
// The shop: its window, its file, and leaving it.
#include <QFileInfo>

#include "creaseline/base/file.h"
#include "desk/desk_parts.h"
#include "desk/file_questions.h"
#include "desk/text.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

void DeskWindow::Parts::connectShop() {
  QObject::connect(actions_.newShop, &QAction::triggered, &window_, [this] { startShop(); });
  QObject::connect(actions_.editShop, &QAction::triggered, &window_, [this] { showShop(); });
  QObject::connect(&document_, &Document::shopEdited, &window_, [this] { updateEditing(); });
  QObject::connect(&document_, &Document::shopReplaced, &window_, [this] {
    messageBar_->say(Severity::Watch, tr("Somebody else changed the shop, too"),
                     tr("What its file says counts now. Undo brings yours back."),
                     {{tr("&Bring mine back"), [this] { document_.undoStack().undo(); }}});
  });
}

ShopWindow* DeskWindow::Parts::showShop() {
  if (!document_.shopInHand()) {
    return nullptr;
  }
  if (shopWindow_ == nullptr) {
    shopWindow_ = new ShopWindow(document_, rules_.get(), settings_, &window_);
    QObject::connect(shopWindow_, &ShopWindow::saveRequested, &window_,
                     [this] { saveShop(Wait::No); });
    QObject::connect(shopWindow_, &ShopWindow::saveAsRequested, &window_,
                     [this] { saveShopAs(Wait::No); });
  }
  shopWindow_->present();
  return shopWindow_;
}

void DeskWindow::Parts::showFrames() {
  if (ShopWindow* shop = showShop()) {
    shop->goTo(ShopList::Frames);
  }
}

// To where what the order cannot change is entered: stock, frames, the measures of the garment.
void DeskWindow::Parts::leadTo(const Finding& finding, const ShopChange& change) {
  if (change.what == "measure") {
    const auto spot = document_.planned()->spotOf(finding);
    if (spot) {
      library_.showChartOf(document_.planned()->order()->lines[spot->line].blank.text());
    }
    return;
  }
  ShopWindow* shop = showShop();
  if (shop == nullptr) {
    return;
  }
  switch (finding.code) {
    case FindingCode::BackingNotInStock:
      shop->goTo(ShopList::Backings);
      return;
    case FindingCode::NeedleNotInStock:
      shop->goTo(ShopList::Needles);
      return;
    case FindingCode::ToppingNotInStock:
      shop->goToTopping();
      return;
    default:
      shop->goTo(ShopList::Frames);
  }
}

void DeskWindow::Parts::startShop() {
  if (mayLeaveShop()) {
    document_.startShop(ShopEdits::firstShop(document_.units()));
    showShop();
  }
}

bool DeskWindow::Parts::mayLeaveShop() {
  finishTyping();
  document_.finishSaving();
  if (!document_.shopModified()) {
    return true;
  }
  const auto save = askWhetherToSave(QStringLiteral("leaveShop"),
                                     tr("The shop has changes that are not saved. Save them?"));
  return save && (!*save || saveShop(Wait::ForDisk));
}

bool DeskWindow::Parts::saveShop(Wait wait) {
  finishTyping();
  if (document_.shopOriginal().file.empty()) {
    return saveShopAs(wait);
  }
  document_.startSavingShop();
  return begun(wait);
}

bool DeskWindow::Parts::saveShopAs(Wait wait) {
  finishTyping();
  const QString file =
      askWhereToSave(tr("Save the shop"),
                     document_.shopFile().isEmpty()
                         ? fileNameFor(document_.shopInHand()->name, QStringLiteral(".shop.json"))
                         : QFileInfo(document_.shopFile()).fileName(),
                     tr("Shops (*.shop.json)"), QStringLiteral(".shop.json"));
  if (file.isEmpty()) {
    return false;
  }
  try {
    // The dialog has asked whether a file that is there may go.
    document_.startSavingShopAs(toPath(file), stampOf(toPath(file)));
    return begun(wait);
  } catch (const InputError& error) {
    messageBar_->say(Severity::Stop, tr("The shop was not saved"), toQString(error.what()));
    return false;
  }
}

}  // namespace creaseline
