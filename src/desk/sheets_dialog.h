// SPDX-License-Identifier: MIT
// The window "Sheets": which kinds, on what paper, which pages; what they look like; and the ways
// out, as PDF, as pictures, on paper. What is chosen is remembered.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>
#include <QTimer>
#include <memory>
#include <optional>
#include <string>

#include "desk/page_range_box.h"
#include "desk/settings.h"
#include "desk/sheet_output.h"
#include "desk/sheet_preparer.h"
#include "desk/sheet_preview.h"
#include "desk/sheet_tick_list.h"
#include "desk/sheet_tick_model.h"

namespace creaseline::desk {

// "A4, 210 × 297 mm", "Letter, 8 1/2 × 11 in".
[[nodiscard]] QString paperWords(Paper paper);

class SheetsDialog : public QDialog {
  Q_OBJECT

 public:
  enum class Purpose { Save, Print };

  explicit SheetsDialog(Settings& settings, QWidget* parent = nullptr);

  // Shows it with the button for that purpose ready to be pressed.
  void showFor(Purpose purpose);
  // `current`: what is planned is up to date, so that it may go to paper.
  void setPlanned(std::shared_ptr<const PlannedOrder> planned, bool current);

  // What is chosen; `planned` is what was set last.
  [[nodiscard]] SheetJob job() const;
  // 0 while it is not known.
  [[nodiscard]] int pageCount() const { return contents_ ? contents_->pages : 0; }

 Q_SIGNALS:
  void pdfRequested();
  void picturesRequested();
  void printRequested();

 protected:
  void hideEvent(QHideEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  // In sheets_dialog_layout.cpp.
  void build();
  QLayout* buildChoices();
  QLayout* buildPaper();
  QLayout* buildPreview();
  QLayout* buildOutputs();
  QPushButton* button(const char* name, const QString& text);
  void orderTabs();

  void connectChoices();
  void connectPreview();
  void connectPreparer();
  [[nodiscard]] SheetChoice choice() const;
  void recount();
  void showContents(const SheetContents& contents);
  [[nodiscard]] int pageAfterChange() const;
  void showKind(int row);
  void showPage(int page);
  void askForPicture();
  void showPicture(int page, const QString& title, const QImage& picture);
  void showBusy(bool busy);
  void showTotal();
  void updateEnabled();

  Settings& settings_;
  SheetTickModel model_;
  SheetPreparer preparer_;
  std::shared_ptr<const PlannedOrder> planned_;
  bool current_ = false;
  std::optional<SheetContents> contents_;
  int page_ = 1;
  // Where the page is in its kind, so that it stays on show when kinds before it come or go.
  std::string kindOnShow_;
  int pageInKind_ = 0;
  QTimer pictureDelay_;  // while the window is being resized
  QTimer busyDelay_;     // a bar that flashes for 50 ms says nothing

  SheetTickList* kinds_ = nullptr;
  QLabel* total_ = nullptr;
  QProgressBar* busy_ = nullptr;
  QComboBox* paper_ = nullptr;
  QCheckBox *mirrored_ = nullptr, *turned_ = nullptr, *prices_ = nullptr;
  PageRangeBox* range_ = nullptr;
  SheetPreview* preview_ = nullptr;
  QPushButton *previous_ = nullptr, *next_ = nullptr;
  QSpinBox* pageNumber_ = nullptr;
  QRadioButton *fit_ = nullptr, *actual_ = nullptr;
  QLabel* scale_ = nullptr;
  QLabel* hint_ = nullptr;
  QPushButton *pdf_ = nullptr, *pictures_ = nullptr, *print_ = nullptr, *close_ = nullptr;
};

}  // namespace creaseline::desk
