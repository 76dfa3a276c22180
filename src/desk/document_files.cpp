// SPDX-License-Identifier: MIT
// How the document goes to disk.
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <utility>

#include "desk/document.h"
#include "desk/document_saving.h"
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

// What was added since `before`, as it is `now`.
template <class Entry>
void keepAdded(const std::vector<Original<Entry>>& before, const std::vector<Original<Entry>>& now,
               std::vector<Original<Entry>>& kept) {
  for (const Original<Entry>& each : now) {
    const bool known = std::any_of(before.begin(), before.end(), [&](const Original<Entry>& other) {
      return other.value == each.value;
    });
    if (!known && each.value) {
      putReference(kept, each);
    }
  }
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

SaveStyle Document::styleFor(const std::filesystem::path& file) const {
  SaveStyle style;
  style.lengths = units_.length;
  style.folder = file.parent_path();
  return style;
}

void Document::concludeSaving(SaveResult result, const QString& problem) {
  saveResult_ = result;
  saveProblem_ = problem;
  if (result == SaveResult::ChangedOutside) {
    reload();
  } else if (result == SaveResult::Saved) {
    watchFiles();
    tellModified();
    Q_EMIT filesChanged();
  }
}

void Document::startSaving() {
  startSavingAs(original_.file, original_.stamp);
}

void Document::startSavingAs(const std::filesystem::path& file, const FileStamp& replaced) {
  finishSaving();  // the next one starts from what that one wrote
  unsavedSince_ = false;
  write<Order>(
      [file, replaced, order = order_, original = original_, style = styleFor(file)] {
        return saveOrder(file, *order, savedAnew(original, file, replaced), style, replaced);
      },
      [this, file, mine = state(), before = original_](Saved<Order> saved) {
        takeSaved(file, mine, before, std::move(saved));
      },
      &Document::saved);
}

SaveResult Document::save() {
  startSaving();
  finishSaving();
  return saveResult_;
}

SaveResult Document::saveAs(const std::filesystem::path& file, const FileStamp& replaced) {
  startSavingAs(file, replaced);
  finishSaving();
  return saveResult_;
}

// `mine` and `before` are what was in hand when the save began; both may have changed since.
void Document::takeSaved(const std::filesystem::path& file, const OrderState& mine,
                         const Original<Order>& before, Saved<Order> saved) {
  const OrderState now = state();
  keepAdded(before.blanks, original_.blanks, saved.original.blanks);
  keepAdded(before.designs, original_.designs, saved.original.designs);
  original_ = std::move(saved.original);
  const bool moved = !(saved.value == *mine.order);
  orderAsRead_ = std::make_shared<const Order>(std::move(saved.value));
  if (now.order == mine.order) {
    order_ = orderAsRead_;
  } else if (moved) {
    order_ = movedOrder(now, folder(), original_);
  }
  if (moved) {
    planned_ = std::make_shared<PlannedOrder>(planned_->withOrder(order_));
  }
  const QString written = QFileInfo(pathText(file)).absoluteFilePath();
  if (wantedOrder_ == orderFile_) {
    wantedOrder_ = written;
  }
  orderFile_ = written;
  unsaved_ = std::exchange(unsavedSince_, false);
  settings_.addRecentOrder(orderFile_);
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
  unsavedSince_ = unsavedSince_ || unsaved;
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
