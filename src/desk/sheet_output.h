// SPDX-License-Identifier: MIT
// Sheets from the desk: saved as a PDF or as pictures, or printed through the driver, on a thread
// of its own.
#pragma once

#include <QObject>
#include <QPrinter>
#include <QStringList>
#include <QThreadPool>
#include <atomic>
#include <functional>
#include <memory>

#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_pager.h"
#include "creaseline/sheets/sheet_set.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

// The chosen sheets of what is shown. `planned` has order, shop and plan and must outlive the
// result.
[[nodiscard]] SheetDocument sheetsOf(const PlannedOrder& planned, const SheetChoice& choice);

// What to put out, whatever the form.
struct SheetJob {
  std::shared_ptr<const PlannedOrder> planned;
  SheetChoice choice;
  int firstPage = 0, lastPage = 0;  // counted from 1; 0: from the first, to the last
};

class SheetOutput : public QObject {
  Q_OBJECT

 public:
  enum class Form { Pdf, Pictures, Paper };

  explicit SheetOutput(QObject* parent = nullptr);
  ~SheetOutput() override;  // cancels and waits; no half file stays

  // One at a time: false if one is under way.
  bool savePdf(const SheetJob& job, const QString& file);
  bool savePictures(const SheetJob& job, const QString& folder);
  // The pages of the printer's own range; those of the job do not count.
  bool print(const SheetJob& job, std::shared_ptr<QPrinter> printer);
  [[nodiscard]] bool busy() const { return busy_; }
  // Of what is under way, or was last.
  [[nodiscard]] Form form() const { return form_; }
  void cancel() { cancel_ = true; }

 Q_SIGNALS:
  void progressed(double share);
  void saved(const QString& target, int pages, const QStringList& notes);
  void printed(int pages);  // 0 if the printer refused
  void failed(const QString& why);
  void cancelled();

 private:
  // `write` runs on the worker; what it returns is called in this object's thread.
  bool start(Form form, std::function<std::function<void()>(const SheetOptions&)> write);
  std::function<void()> tellSaved(const QString& target, const WrittenSheets& written);

  QThreadPool pool_;
  std::atomic<bool> cancel_{false};
  bool busy_ = false;
  Form form_ = Form::Pdf;
};

// The page pictures in a folder, which saving pictures there would remove.
[[nodiscard]] QStringList pagePictures(const QString& folder);

// Full page, no margins of the driver's: the sheets keep their own.
void prepare(QPrinter& printer, Paper paper);
// Why the printed sheets would not be in true scale or not complete, and what to do; empty if
// nothing is known to be against it. Asked after the print dialog, which may have changed the
// paper.
[[nodiscard]] QStringList printWarnings(const QPrinter& printer, Paper paper);
// Prints the pages of the printer's range, or all. Returns how many; 0 if the printer refused. Of
// the options progress and cancelling count; cancelled, it throws Cancelled and the printer's job
// is aborted.
int printSheets(QPrinter& printer, SheetPager& sheets, const SheetOptions& options = {});

}  // namespace creaseline::desk
