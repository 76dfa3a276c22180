// SPDX-License-Identifier: MIT
// Sheets from the desk: saved as a PDF on a thread of its own, or printed through the driver.
#pragma once

#include <QObject>
#include <QPrinter>
#include <QStringList>
#include <QThreadPool>
#include <atomic>
#include <memory>

#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_pager.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

// The chosen sheets of what is shown. `planned` has order, shop and plan and must outlive the
// result.
[[nodiscard]] SheetDocument sheetsOf(const PlannedOrder& planned, const SheetChoice& choice);

class SheetSaver : public QObject {
  Q_OBJECT

 public:
  explicit SheetSaver(QObject* parent = nullptr);
  ~SheetSaver() override;  // cancels and waits; no half file stays

  // One at a time: false if one is under way.
  bool save(std::shared_ptr<const PlannedOrder> planned, const SheetChoice& choice,
            const QString& file);
  [[nodiscard]] bool busy() const { return busy_; }
  void cancel() { cancel_ = true; }

 Q_SIGNALS:
  void progressed(double share);
  void saved(const QString& file, int pages, const QStringList& notes);
  void failed(const QString& why);
  void cancelled();

 private:
  QThreadPool pool_;
  std::atomic<bool> cancel_{false};
  bool busy_ = false;
};

// Full page, no margins of the driver's: the sheets keep their own.
void prepare(QPrinter& printer, Paper paper);
// Why the printed sheets would not be in true scale or not complete; empty if nothing is known to
// be against it. Asked after the print dialog, which may have changed the paper.
[[nodiscard]] QStringList printWarnings(const QPrinter& printer, Paper paper);
// Prints the pages of the printer's range, or all. Returns how many; 0 if the printer refused.
int printSheets(QPrinter& printer, SheetPager& sheets);

}  // namespace creaseline::desk
