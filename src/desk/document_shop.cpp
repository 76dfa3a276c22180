// SPDX-License-Identifier: MIT
// The document's shop: edited like the order, and in a file of its own.
#include <QFileInfo>
#include <utility>

#include "desk/changed_parts.h"
#include "desk/document.h"
#include "desk/document_saving.h"
#include "desk/edit_commands.h"
#include "desk/text.h"

namespace creaseline::desk {

bool Document::shopModified() const {
  return shop_ &&
         (shopUnsaved_ || (shop_ != shopAsRead_ && !(shopAsRead_ && *shop_ == *shopAsRead_)));
}

void Document::startShop(Shop shop) {
  finishSaving();
  if (std::exchange(shopSteps_, false)) {
    undoStack_.clear();
  }
  shopFile_.clear();
  wantedShop_.clear();
  shopNotes_.clear();
  shopFiles_.clear();
  readingShop_ = false;
  shopOriginal_ = {};
  shopAsRead_.reset();
  shopUnsaved_ = true;
  watchFiles();
  setShop(std::make_shared<const Shop>(std::move(shop)));
  Q_EMIT filesChanged();
}

// The plan on screen names frames of the shop that it was made for; it is replaced together with
// that shop.
void Document::setShop(std::shared_ptr<const Shop> shop) {
  shop_ = std::move(shop);
  shopSteps_ = true;
  tellModified();
  Q_EMIT shopEdited();
  request(false, false);
}

// True if the plan of this outcome is for the shop in hand.
bool Document::takeShop(const PlanOutcome& outcome) {
  const bool sameFile = shop_ && !shopFile_.isEmpty() && wantedShop_ == shopFile_;
  const bool changedHere = shopModified();
  const bool sameContent = sameFile && shopAsRead_ && *shopAsRead_ == *outcome.shop;
  shopNotes_ = outcome.shopNotes;
  shopFiles_ = outcome.shopFiles;
  shopFile_ = wantedShop_;
  shopOriginal_ = outcome.shopOriginal;
  shopUnsaved_ = false;
  settings_.setLastShop(shopFile_);
  shopAsRead_ = outcome.shop;
  if (!sameFile && std::exchange(shopSteps_, false)) {
    undoStack_.clear();  // its steps are of another shop
  }
  if (sameFile && !sameContent) {
    const QStringList parts = changedParts(*shop_, *outcome.shop);
    undoStack_.push(makeShopStep(*this, tr("Take over what the shop's file says"), outcome.shop));
    if (changedHere) {
      Q_EMIT shopReplaced();
    } else {
      Q_EMIT outsideTaken(shopFile_, parts);
    }
  } else if (!sameContent) {
    shop_ = outcome.shop;
    Q_EMIT shopEdited();
  }
  if (recoveredShop_) {
    auto left = std::make_shared<const Shop>(*std::exchange(recoveredShop_, std::nullopt));
    undoStack_.push(makeShopStep(*this, tr("Take up what was not saved"), std::move(left)));
  }
  tellModified();
  return *shop_ == *outcome.shop;
}

void Document::recoverShop(const QString& file, Shop left) {
  if (file.isEmpty() || !QFileInfo::exists(file)) {
    startShop(std::move(left));
    return;
  }
  openShop(toPath(file));
  recoveredShop_ = std::move(left);
}

void Document::startSavingShop() {
  startSavingShopAs(shopOriginal_.file, shopOriginal_.stamp);
}

void Document::startSavingShopAs(const std::filesystem::path& file, const FileStamp& replaced) {
  finishSaving();  // the next one starts from what that one wrote
  write<Shop>(
      [file, replaced, shop = shop_, original = shopOriginal_, style = styleFor(file)] {
        return creaseline::saveShop(file, *shop, savedAnew(original, file, replaced), style,
                                    replaced);
      },
      [this, file, mine = shop_](Saved<Shop> saved) {
        takeSavedShop(file, mine, std::move(saved));
      },
      &Document::shopSaved);
}

SaveResult Document::saveShop() {
  startSavingShop();
  finishSaving();
  return saveResult_;
}

SaveResult Document::saveShopAs(const std::filesystem::path& file, const FileStamp& replaced) {
  startSavingShopAs(file, replaced);
  finishSaving();
  return saveResult_;
}

// `mine` is what was in hand when the save began; what was edited since is not in the file.
void Document::takeSavedShop(const std::filesystem::path& file, std::shared_ptr<const Shop> mine,
                             Saved<Shop> saved) {
  shopOriginal_ = std::move(saved.original);
  shopAsRead_ = std::move(mine);
  const QString written = QFileInfo(pathText(file)).absoluteFilePath();
  if (wantedShop_ == shopFile_) {
    wantedShop_ = written;
  }
  shopFile_ = written;
  shopFiles_ = {file};
  shopUnsaved_ = false;
  settings_.setLastShop(shopFile_);
}

}  // namespace creaseline::desk
