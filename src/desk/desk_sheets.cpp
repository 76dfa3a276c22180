// SPDX-License-Identifier: MIT
// The window's way to paper: the window "Sheets", where to save, the printer, and what came of it.
#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPrintDialog>
#include <QStatusBar>
#include <QUrl>

#include "desk/desk_parts.h"
#include "desk/text.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

namespace {

constexpr int kStatusMs = 8000;
constexpr int kMostPages = 9999;  // offered while the pages are still being counted

}  // namespace

void DeskWindow::Parts::connectOutput() {
  QObject::connect(&output_, &SheetOutput::saved, &window_,
                   [this](const QString& target, int pages, const QStringList& notes) {
                     const QString name = QDir::toNativeSeparators(target);
                     const auto open = [](const QString& what) {
                       return [what] { QDesktopServices::openUrl(QUrl::fromLocalFile(what)); };
                     };
                     const QFileInfo file(target);
                     std::vector<MessageBar::Answer> answers;
                     if (!file.isDir()) {
                       answers.push_back({tr("&Open it"), open(target)});
                     }
                     answers.push_back({tr("Open its &folder"),
                                        open(file.isDir() ? target : file.absolutePath())});
                     messageBar_->say(Severity::Note, tr("%n sheet(s) saved", nullptr, pages),
                                      (QStringList{name} + notes).join(QLatin1Char('\n')), answers);
                     showBusy();
                   });
  QObject::connect(&output_, &SheetOutput::printed, &window_, [this](int pages) {
    showPrinted(pages);
    showBusy();
  });
  QObject::connect(&output_, &SheetOutput::failed, &window_, [this](const QString& why) {
    messageBar_->say(Severity::Stop,
                     output_.form() == SheetOutput::Form::Paper ? tr("The sheets were not printed")
                                                                : tr("The sheets were not saved"),
                     why);
    showBusy();
  });
  QObject::connect(&output_, &SheetOutput::cancelled, &window_, [this] {
    window_.statusBar()->showMessage(output_.form() == SheetOutput::Form::Paper
                                         ? tr("Printing stopped")
                                         : tr("Saving stopped; no file was written"),
                                     kStatusMs);
    showBusy();
  });
}

void DeskWindow::Parts::showSheets(SheetsDialog::Purpose purpose) {
  if (sheetsDialog_ == nullptr) {
    sheetsDialog_ = new SheetsDialog(settings_, &window_);
    const auto on = [this](auto signal, void (Parts::*what)()) {
      QObject::connect(sheetsDialog_, signal, &window_, [this, what] { (this->*what)(); });
    };
    on(&SheetsDialog::pdfRequested, &Parts::askToSavePdf);
    on(&SheetsDialog::picturesRequested, &Parts::askToSavePictures);
    on(&SheetsDialog::printRequested, &Parts::askToPrint);
    updateEnabled();
  }
  sheetsDialog_->showFor(purpose);
}

// Beside the order: "regatta-sheets".
QString DeskWindow::Parts::proposedSheets() const {
  const QFileInfo order(document_.orderFile());
  return order.absoluteDir().filePath(order.fileName().section(QLatin1Char('.'), 0, 0) +
                                      QStringLiteral("-sheets"));
}

// The sheets are those that were on show when the button was pressed, whatever happens to the files
// while the question is open.
void DeskWindow::Parts::askToSavePdf() {
  const SheetJob job = sheetsDialog_->job();
  QFileDialog dialog(sheetsDialog_, tr("Save the sheets as a PDF"), proposedSheets(),
                     tr("PDF files (*.pdf)"));
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(QStringLiteral("pdf"));
  dialog.selectFile(QFileInfo(proposedSheets()).fileName() + QStringLiteral(".pdf"));
  if (dialog.exec() == QDialog::Accepted && !dialog.selectedFiles().isEmpty() &&
      output_.savePdf(job, dialog.selectedFiles().constFirst())) {
    leaveSheets();
  }
}

void DeskWindow::Parts::askToSavePictures() {
  const SheetJob job = sheetsDialog_->job();
  const QString folder =
      QFileDialog::getExistingDirectory(sheetsDialog_, tr("Choose the folder for the pictures"),
                                        QFileInfo(document_.orderFile()).absolutePath());
  if (folder.isEmpty() || !mayReplacePictures(folder)) {
    return;
  }
  if (output_.savePictures(job, folder)) {
    leaveSheets();
  }
}

bool DeskWindow::Parts::mayReplacePictures(const QString& folder) {
  const int pictures = static_cast<int>(pagePictures(folder).size());
  if (pictures == 0) {
    return true;
  }
  QMessageBox box(
      QMessageBox::Warning, tr("Pictures of pages are there already"),
      tr("%n picture(s) of pages in this folder will be removed. Go on?", nullptr, pictures),
      QMessageBox::NoButton, sheetsDialog_);
  box.setObjectName(QStringLiteral("replacePictures"));
  box.setInformativeText(QDir::toNativeSeparators(folder));
  QAbstractButton* replace = box.addButton(tr("&Replace them"), QMessageBox::DestructiveRole);
  QPushButton* keep = box.addButton(tr("&Keep them"), QMessageBox::RejectRole);
  box.setDefaultButton(keep);
  box.setEscapeButton(keep);
  box.exec();
  return box.clickedButton() == replace;
}

void DeskWindow::Parts::askToPrint() {
  const SheetJob job = sheetsDialog_->job();
  const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  prepare(*printer, job.choice.paper);
  QPrintDialog dialog(printer.get(), sheetsDialog_);
  dialog.setWindowTitle(tr("Print the sheets"));
  dialog.setOption(QAbstractPrintDialog::PrintPageRange);
  const int pages = sheetsDialog_->pageCount();
  dialog.setMinMax(1, pages > 0 ? pages : kMostPages);
  if (job.firstPage > 0) {
    dialog.setPrintRange(QAbstractPrintDialog::PageRange);
    dialog.setFromTo(job.firstPage, job.lastPage);
  }
  if (dialog.exec() == QDialog::Accepted && mayPrint(*printer, job.choice.paper) &&
      output_.print(job, printer)) {
    leaveSheets();
  }
}

bool DeskWindow::Parts::mayPrint(const QPrinter& printer, Paper paper) {
  const QStringList warnings = printWarnings(printer, paper);
  if (warnings.isEmpty()) {
    return true;
  }
  QMessageBox box(QMessageBox::Warning, tr("Not in true scale"),
                  warnings.join(QStringLiteral("\n\n")), QMessageBox::NoButton, sheetsDialog_);
  box.setObjectName(QStringLiteral("notTrueScale"));
  box.setInformativeText(
      tr("The written numbers hold, the drawings' scale does not. Templates and gauges printed so "
         "are worthless."));
  QAbstractButton* anyway = box.addButton(tr("&Print anyway"), QMessageBox::DestructiveRole);
  QPushButton* back = box.addButton(tr("&Back"), QMessageBox::RejectRole);
  box.setDefaultButton(back);
  box.setEscapeButton(back);
  box.exec();
  return box.clickedButton() == anyway;
}

// What comes of it is told in the window itself, which has progress and cancelling.
void DeskWindow::Parts::leaveSheets() {
  sheetsDialog_->hide();
  showBusy();
}

void DeskWindow::Parts::showPrinted(int pages) {
  if (pages == 0) {
    messageBar_->say(Severity::Stop, tr("Nothing was printed"),
                     tr("The printer did not accept the sheets. Save them as a PDF instead."));
    return;
  }
  messageBar_->say(Severity::Note, tr("%n sheet(s) sent to the printer", nullptr, pages),
                   tr("Measure the bar at the foot of the first sheet: it must be 100 mm long."));
}

}  // namespace creaseline
