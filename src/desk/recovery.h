// SPDX-License-Identifier: MIT
// Keeps what is not saved yet in a folder of its own, every few seconds, so that a crash or a power
// cut loses no more than these; and finds what an earlier session left there.
#pragma once

#include <QDateTime>
#include <QObject>
#include <QString>
#include <QTimer>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include "desk/document.h"
#include "desk/ordered_jobs.h"

namespace creaseline::desk {

// Unsaved work of a session that did not end by itself.
struct LeftWork {
  std::filesystem::path folder;  // of this work alone
  std::filesystem::path draft;   // an order that loadOrderDraft() reads; empty: it was saved
  QString orderFile;             // the order's own file; empty: it was never saved
  QString orderName;
  std::filesystem::path shopDraft;  // the same for the shop
  QString shopFile;
  QDateTime kept;
};

class Recovery : public QObject {
  Q_OBJECT

 public:
  // After the last edit, and at the latest after the first one that is not kept.
  static constexpr int kQuietMs = 800;
  static constexpr int kMostMs = 4000;

  // `folder` is made when there is something to keep. The document must outlive this.
  Recovery(const QString& folder, Document& document, QObject* parent = nullptr);
  ~Recovery() override;

  // Left by sessions that are not alive any more, newest first.
  [[nodiscard]] std::vector<LeftWork> leftWork() const;
  static void drop(const LeftWork& work);
  // Puts it into the document. It is dropped as soon as it is in hand there and this session has
  // kept it itself; if the document lets it go, it stays. Throws InputError if it cannot be read.
  void takeUp(const LeftWork& work);

  // Begins to write what is not saved; nothing if all is. What is edited after the call is not in
  // it.
  void keep();
  // Waits until all that was begun lies on the disk.
  void finish() { jobs_.finish(); }
  // The work is saved, or the user lets it go.
  void clear();

 Q_SIGNALS:
  // It could not be kept, with the reason; said once until it works again.
  void notKept(const QString& reason);

 private:
  struct Place;
  struct Drafts;

  void schedule();
  [[nodiscard]] Drafts drafts() const;
  void told(const std::optional<LeftWork>& replaced, const QString& problem);

  QString folder_;
  Document& document_;
  std::shared_ptr<Place> mine_;        // null: this session has nothing to keep
  std::optional<LeftWork> awaited_;    // being read by the document
  std::optional<LeftWork> takenOver_;  // in hand
  QTimer quiet_, most_;
  bool complained_ = false;
  OrderedJobs jobs_;  // all that touches the place on disk, in order
};

}  // namespace creaseline::desk
