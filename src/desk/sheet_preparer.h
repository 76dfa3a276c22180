// SPDX-License-Identifier: MIT
// Makes a set of sheets ready to be looked at, on a thread of its own: counts its pages and paints
// single ones into pictures. The newest request wins; nothing of an older one is reported after it.
#pragma once

#include <QImage>
#include <QObject>
#include <QSizeF>
#include <QThreadPool>
#include <atomic>
#include <memory>
#include <string>
#include <vector>

#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_pager.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

// Where the pages of each chosen kind are; pages count from 1.
struct SheetContents {
  struct Kind {
    std::string id;
    int first = 1, count = 0;
  };
  std::vector<Kind> kinds;
  int pages = 0;
  Paper paper = Paper::A4;

  // Null where the kind is not in the set, or the page in no kind.
  [[nodiscard]] const Kind* find(const std::string& id) const;
  [[nodiscard]] const Kind* at(int page) const;
};

// The page as the pager paints it, on white. `pixelsPerMm` of the screen's logical pixels.
[[nodiscard]] QImage sheetPicture(SheetPager& sheets, int page, double pixelsPerMm,
                                  double devicePixelRatio);

class SheetPreparer : public QObject {
  Q_OBJECT

 public:
  explicit SheetPreparer(QObject* parent = nullptr);
  ~SheetPreparer() override;  // cancels and waits

  // Makes the set and counts its pages; `counted` or `failed` follows, unless cancelled. An empty
  // choice of kinds is a set without pages here.
  void prepare(std::shared_ptr<const PlannedOrder> planned, const SheetChoice& choice);
  // A page of the set prepared last; `painted` follows unless the page is not there.
  void paint(int page, double pixelsPerMm, double devicePixelRatio);
  // Forgets set and requests.
  void cancel();
  [[nodiscard]] bool counting() const { return counting_; }

 Q_SIGNALS:
  void counted(const creaseline::desk::SheetContents& contents);
  void painted(int page, const QString& title, const QImage& picture);
  void failed(const QString& why);

 private:
  // What the worker alone touches.
  struct Made;
  using Flag = std::shared_ptr<std::atomic<bool>>;

  // Runs on the worker; what it returns is called in this object's thread if the flag is still
  // down by then.
  template <class Work>
  void start(Flag cancel, Work work);

  std::shared_ptr<Made> made_;
  QThreadPool pool_;
  Flag cancelSet_, cancelPicture_;
  bool counting_ = false;
};

}  // namespace creaseline::desk
