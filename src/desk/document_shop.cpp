// SPDX-License-Identifier: MIT
// The document's shop: edited like the order, and in a file of its own.
#include <QFileInfo>
#include <utility>

#include "desk/document.h"
#include "desk/edit_commands.h"
#include "desk/text.h"

namespace creaseline::desk {

bool Document::shopModified() const {
  return shop_ &&
         (shopUnsaved_ || (shop_ != shopAsRead_ && !(shopAsRead_ && *shop_ == *shopAsRead_)));
}

void Document::startShop(Shop shop) {
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
  if (sameFile && changedHere && !sameContent) {
    undoStack_.push(makeShopStep(*this, tr("Take over what the shop's file says"), outcome.shop));
    Q_EMIT shopReplaced();
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

SaveResult Document::saveShop() {
  return writeShop(shopOriginal_.file, {});
}

SaveResult Document::saveShopAs(const std::filesystem::path& file, const FileStamp& replaced) {
  return writeShop(file, replaced);
}

SaveResult Document::writeShop(const std::filesystem::path& file, const FileStamp& replaced) {
  return tryToSave(file, [&](const SaveStyle& style) {
    Saved<Shop> saved = creaseline::saveShop(file, *shop_, shopOriginal_, style, replaced);
    shopOriginal_ = std::move(saved.original);
    shopAsRead_ = shop_;
    wantedShop_ = shopFile_ = QFileInfo(pathText(file)).absoluteFilePath();
    shopFiles_ = {file};
    shopUnsaved_ = false;
    settings_.setLastShop(shopFile_);
  });
}

}  // namespace creaseline::desk
