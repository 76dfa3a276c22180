// SPDX-License-Identifier: MIT
// The document behind the window: files, order, shop, plan, undo stack. Knows no widget.
//
// The *order in hand* is what edits change at once. What is shown is a PlannedOrder, replaced as a
// whole by every edit and by every new plan; if a file breaks, the last good one stays and is
// marked stale. Whatever changes the order is a step on the undo stack, another's change of the
// file included.
#pragma once

#include <QObject>
#include <QStringList>
#include <QUndoStack>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/merge.h"
#include "creaseline/catalogue/save.h"
#include "creaseline/desk/desk_rules.h"
#include "desk/file_watch.h"
#include "desk/ordered_jobs.h"
#include "desk/plan_runner.h"
#include "desk/planned_order.h"
#include "desk/settings.h"

namespace creaseline::desk {

// What went wrong with a file, and whether the plan on screen suffers from it.
struct Problem {
  InputError::Details details;
  PlanStage stage{};
};

// An order as it was at one moment. The paths in it (pictures of designs) lead from `folder`.
struct OrderState {
  std::shared_ptr<const Order> order;
  std::filesystem::path folder;
};

// The same order with its paths leading from the folder `to`; from the root if that is empty. The
// paths of designs that lie in files of their own lead from there and stay.
[[nodiscard]] std::shared_ptr<const Order> movedOrder(const OrderState& state,
                                                      const std::filesystem::path& to,
                                                      const Original<Order>& original);

// Another changed the order's file, and the order was changed here as well.
struct OutsideChange {
  std::shared_ptr<const Order> base, mine, theirs;
  std::vector<MergeConflict> conflicts;  // mine was taken
  std::vector<std::string> toMend;
};

enum class SaveResult {
  Saved,
  ChangedOutside,  // nothing was written; the file is being read again and merged
  NotWritten       // the disk refused; saveProblem() says why
};

class Document : public QObject {
  Q_OBJECT

 public:
  Document(const DeskRules& rules, Settings& settings, QObject* parent = nullptr);
  ~Document() override;

  // The file as it is, whatever was edited since, even if it is the one that is open.
  void openOrder(const std::filesystem::path& file);
  // Starts an order that is in no file yet. `original` names the files that it refers to.
  void startOrder(Order order, const Original<Order>& original = {});
  // What an earlier session left: drafts, and the files that they are of, each of which may be
  // empty.
  struct Left {
    QString orderFile;
    std::filesystem::path orderDraft;
    QString shopFile;
    std::filesystem::path shopDraft;
  };
  // Opens the order's file again and lays the draft over it, as a step; without a file of its own
  // that can be read, the draft becomes an order that is in no file. The shop likewise. Throws
  // InputError if a draft cannot be read.
  void recover(const Left& left);
  void openShop(const std::filesystem::path& file);
  // Reads both files again and plans.
  void reload();
  // Saving returns at once; saved() tells what came of it. What is edited meanwhile is not in the
  // file and stays unsaved. A save that is asked for during another waits for that one's end.
  // To the file that it was read from; only with one.
  void startSaving();
  // To another file; one that is there already must say what `replaced` stands for.
  // Also where its own file was, if that is gone.
  void startSavingAs(const std::filesystem::path& file, const FileStamp& replaced);
  // Waits for what is being written, order or shop, and tells of it.
  void finishSaving() { saver_.finish(); }
  // The same, returning when it is done.
  SaveResult save();
  SaveResult saveAs(const std::filesystem::path& file, const FileStamp& replaced);
  [[nodiscard]] bool saving() const { return saver_.running(); }
  // Of the last save that ended, order or shop.
  [[nodiscard]] SaveResult saveResult() const { return saveResult_; }
  [[nodiscard]] const QString& saveProblem() const { return saveProblem_; }
  [[nodiscard]] const Original<Order>& original() const { return original_; }
  // The same for the shop; a new one is in no file yet.
  void startShop(Shop shop);
  void startSavingShop();
  void startSavingShopAs(const std::filesystem::path& file, const FileStamp& replaced);
  SaveResult saveShop();
  SaveResult saveShopAs(const std::filesystem::path& file, const FileStamp& replaced);
  [[nodiscard]] const Original<Shop>& shopOriginal() const { return shopOriginal_; }
  // A file of a blank or a design that the order has, or that the next edit puts into it: from the
  // next saving on it is referred to.
  void referTo(const Original<Blank>& blank);
  void referTo(const Original<Design>& design);

  // Stops planning; what is on screen stays and is marked stale if it is not up to date.
  void cancelPlanning();

  // Never null; empty before anything is open.
  [[nodiscard]] std::shared_ptr<const PlannedOrder> planned() const { return planned_; }
  [[nodiscard]] bool stale() const { return stale_; }
  [[nodiscard]] bool busy() const { return runner_.busy(); }
  [[nodiscard]] const std::optional<Problem>& problem() const { return problem_; }
  [[nodiscard]] const QString& orderFile() const { return orderFile_; }
  [[nodiscard]] const QString& shopFile() const { return shopFile_; }
  [[nodiscard]] const std::vector<LoadNote>& orderNotes() const { return orderNotes_; }
  [[nodiscard]] const std::vector<LoadNote>& shopNotes() const { return shopNotes_; }

  [[nodiscard]] const UnitChoice& units() const { return units_; }
  void setUnits(const UnitChoice& units);

  QUndoStack& undoStack() { return undoStack_; }
  // The order in hand, with all edits; null before one is open.
  [[nodiscard]] std::shared_ptr<const Order> orderInHand() const { return order_; }
  [[nodiscard]] OrderState state() const;
  // The shop likewise. What is shown as planned keeps the shop that it was planned for.
  [[nodiscard]] std::shared_ptr<const Shop> shopInHand() const { return shop_; }
  // Whether the order or the shop has what no file has.
  [[nodiscard]] bool modified() const;
  [[nodiscard]] bool shopModified() const;
  // For undo commands only: replaces the order in hand and plans again.
  void setState(const OrderState& state);
  void setShop(std::shared_ptr<const Shop> shop);
  // The last change from outside that met changes made here.
  [[nodiscard]] const OutsideChange& outsideChange() const { return outside_; }
  // Where both had changed the same, what the other wrote counts after all: everywhere, or as
  // chosen by place. One more step; none if nothing is theirs.
  void takeTheirs();
  void takeTheirs(const std::map<std::string, MergeSide>& choices);

 Q_SIGNALS:
  void plannedChanged();
  void staleChanged(bool stale);
  void busyChanged(bool busy);
  void progressed(double share);
  void problemChanged();
  void filesChanged();
  void unitsChanged();
  void modifiedChanged(bool modified);
  void shopModifiedChanged(bool modified);
  void saved(creaseline::desk::SaveResult result);
  void shopSaved(creaseline::desk::SaveResult result);
  // The order or the shop in hand has another content.
  void edited();
  void shopEdited();
  // The shop's file changed on disk and the shop here, too: what the file says was taken, as a
  // step that can be undone.
  void shopReplaced();
  // What recover() took up is in hand, or was let go because planning was stopped or another order
  // opened before its file was read.
  void recoveryEnded(bool inHand);
  // A file changed on disk and nothing was changed here: what it says was taken, as a step that can
  // be undone. `parts`: what that changed.
  void outsideTaken(const QString& file, const QStringList& parts);
  // The order file changed on disk, and what both changed was merged; see outsideChange().
  void merged();

 private:
  void read(const std::filesystem::path& orderFile);
  void letDraftGo();
  void request(bool readOrder, bool readShop);
  void take(const PlanOutcome& outcome);
  // False if the plan is not for the order in hand, because edits made since reading are kept.
  bool takeFiles(const PlanOutcome& outcome);
  bool takeOrder(const PlanOutcome& outcome);
  bool takeShop(const PlanOutcome& outcome);
  void recoverShop(const QString& file, Shop left);
  void takeNewOrder(const PlanOutcome& outcome);
  void takeRecovered();
  void takeOutsideChange(const PlanOutcome& outcome);
  void keepReferences(Original<Order> fresh);
  [[nodiscard]] SaveStyle styleFor(const std::filesystem::path& file) const;
  void takeSaved(const std::filesystem::path& file, const OrderState& mine,
                 const Original<Order>& originalBefore, Saved<Order> saved);
  void takeSavedShop(const std::filesystem::path& file, std::shared_ptr<const Shop> mine,
                     Saved<Shop> saved);
  // In document_saving.h: `save` runs elsewhere; then, here, `take` goes on with what was written,
  // if it was, and `tell` is emitted.
  template <class T>
  struct Written;
  template <class T>
  static Written<T> tryTo(const std::function<Saved<T>()>& save);
  template <class T>
  void write(std::function<Saved<T>()> save, std::function<void(Saved<T>)> take,
             void (Document::*tell)(SaveResult));
  void concludeSaving(SaveResult result, const QString& problem);
  // The order in hand, which no plan is there for yet.
  [[nodiscard]] std::shared_ptr<const PlannedOrder> unplanned() const;
  void showEdited();
  void showPlanned(std::shared_ptr<const PlannedOrder> planned);
  void tellModified();
  void tellUnsaved(bool unsaved);
  [[nodiscard]] std::filesystem::path folder() const;
  void fail(const PlanOutcome& outcome);
  void watchFiles();
  void setStale(bool stale);
  [[nodiscard]] QString shopFor(const QString& orderFile) const;

  DeskRules rules_;
  Settings& settings_;
  PlanRunner runner_;
  FileWatch watch_;
  QUndoStack undoStack_;

  QString orderFile_, shopFile_;      // of what is in hand
  QString wantedOrder_, wantedShop_;  // being read; become the above when reading succeeds
  bool readingOrder_ = false;         // the request under way reads it
  bool openingOrder_ = false;         // not only again
  bool readingShop_ = false;
  std::shared_ptr<const Order> orderAsRead_;
  Original<Order> original_;
  bool unsaved_ = false;       // the order was never in a file
  bool unsavedSince_ = false;  // it would be even if the save under way succeeds
  bool toldModified_ = false, toldShopModified_ = false;
  QString saveProblem_;
  SaveResult saveResult_{};  // of the last save
  int saves_ = 0;            // begun so far
  int savesAtRequest_ = 0;   // -1: the files may have been read while one was written
  OutsideChange outside_;
  // Until the files that they are of are read.
  std::optional<Loaded<Order>> recovered_;
  std::optional<Shop> recoveredShop_;
  std::shared_ptr<const Order> order_;  // in hand
  std::shared_ptr<const Shop> shop_, shopAsRead_;
  Original<Shop> shopOriginal_;
  bool shopUnsaved_ = false;  // it was never in a file
  bool shopSteps_ = false;    // the undo stack may hold some of this shop
  std::vector<LoadNote> orderNotes_, shopNotes_;
  std::vector<std::filesystem::path> orderFiles_, shopFiles_;
  std::shared_ptr<const PlannedOrder> planned_;
  std::optional<Problem> problem_;
  UnitChoice units_;
  bool stale_ = false;
  OrderedJobs saver_;
};

}  // namespace creaseline::desk
