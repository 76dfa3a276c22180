// SPDX-License-Identifier: MIT
// How the document goes to disk.
#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "desk/document.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

// In place of another file of the same entry.
template <class Entry>
void putReference(std::vector<Original<Entry>>& references, const Original<Entry>& fresh) {
  std::erase_if(references, [&](const Original<Entry>& each) {
    return each.value && each.value->id == fresh.value->id;
  });
  references.push_back(fresh);
}

}  // namespace

std::shared_ptr<const Order> movedOrder(const OrderState& state, const std::filesystem::path& to,
                                        const Original<Order>& original) {
  const auto ownFile = [&](const Design& design) {
    return std::any_of(
        original.designs.begin(), original.designs.end(),
        [&](const Original<Design>& each) { return each.value && each.value->id == design.id; });
  };
  auto moved = std::make_shared<Order>(*state.order);
  for (Design& design : moved->designs) {
    if (!design.outlineFile.empty() && !ownFile(design)) {
      const std::filesystem::path file =
          (state.folder / toPath(toQString(design.outlineFile))).lexically_normal();
      design.outlineFile = toUtf8(pathText(to.empty() ? std::filesystem::absolute(file)
                                                      : std::filesystem::relative(file, to)));
    }
  }
  return moved;
}

SaveResult Document::save() {
  return write(original_.file, {});
}

SaveResult Document::saveAs(const std::filesystem::path& file, const FileStamp& replaced) {
  return write(file, replaced);
}

// `save` writes the file and takes over what stands in it then.
SaveResult Document::tryToSave(const std::filesystem::path& file,
                               const std::function<void(const SaveStyle&)>& save) {
  saveProblem_.clear();
  SaveStyle style;
  style.lengths = units_.length;
  style.folder = file.parent_path();
  try {
    save(style);
  } catch (const ChangedOutside& error) {
    saveProblem_ = toQString(error.what());
    reload();
    return SaveResult::ChangedOutside;
  } catch (const std::exception& error) {
    saveProblem_ = toQString(error.what());
    return SaveResult::NotWritten;
  }
  watchFiles();
  tellModified();
  Q_EMIT filesChanged();
  return SaveResult::Saved;
}

SaveResult Document::write(const std::filesystem::path& file, const FileStamp& replaced) {
  return tryToSave(file, [&](const SaveStyle& style) {
    Saved<Order> saved = saveOrder(file, *order_, original_, style, replaced);
    original_ = std::move(saved.original);
    const bool moved = !(saved.value == *order_);
    orderAsRead_ = order_ = std::make_shared<const Order>(std::move(saved.value));
    wantedOrder_ = orderFile_ = QFileInfo(pathText(file)).absoluteFilePath();
    if (moved) {
      planned_ = std::make_shared<PlannedOrder>(planned_->withOrder(order_));
    }
    unsaved_ = false;
    settings_.addRecentOrder(orderFile_);
  });
}

void Document::referTo(const Original<Blank>& blank) {
  putReference(original_.blanks, blank);
  tellUnsaved(order_ && order_->blank(blank.value->id) != nullptr);
}

void Document::referTo(const Original<Design>& design) {
  putReference(original_.designs, design);
  tellUnsaved(order_ && order_->design(design.value->id) != nullptr);
}

// What the order has already lies in that file only once the order's own file says so.
void Document::tellUnsaved(bool unsaved) {
  unsaved_ = unsaved_ || unsaved;
  tellModified();
}

std::filesystem::path Document::folder() const {
  return original_.file.parent_path();
}

bool Document::modified() const {
  return order_ && (unsaved_ || (order_ != orderAsRead_ && !(*order_ == *orderAsRead_)));
}

void Document::tellModified() {
  if (toldModified_ != modified()) {
    toldModified_ = !toldModified_;
    Q_EMIT modifiedChanged(toldModified_);
  }
  if (toldShopModified_ != shopModified()) {
    toldShopModified_ = !toldShopModified_;
    Q_EMIT shopModifiedChanged(toldShopModified_);
  }
}

}  // namespace creaseline::desk
