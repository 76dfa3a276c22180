// SPDX-License-Identifier: MIT
// What a design is: name, id, size, stitches, outline, monogram.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <memory>

#include "desk/design_edits.h"
#include "desk/field_edit.h"
#include "desk/form_parts.h"
#include "desk/outline_view.h"

namespace creaseline::desk {

class DesignForm : public QWidget {
  Q_OBJECT

 public:
  explicit DesignForm(QWidget* parent = nullptr);
  void show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t design);
  // Of a picture whose file says none; 0: its own.
  [[nodiscard]] double dotsPerInch() const;
  // A picture was chosen that does not say how large it is: asks for its width, with the focus in
  // the field, until it is given, another outline is taken, or another design is shown.
  void askPictureWidth(const QString& file);
  void forgetPicture();
  [[nodiscard]] bool asksPictureWidth() const { return !pictureRow_->isHidden(); }

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);
  // Why a choice was not taken.
  void refused(const QString& problem);
  void drawingAsked();  // an outline from an SVG file
  void pictureAsked();  // from a PNG file
  void dotsPerInchAsked(double dotsPerInch);
  void pictureWidthGiven(creaseline::Length width);

 private:
  QWidget* buildDesign();
  QWidget* buildOutline();
  QWidget* buildPictureRow(QWidget* parent);
  QWidget* buildMonogram();
  void showSize();
  FieldEdit* sideField(const char* name, const QString& words, DesignEdits::Side side,
                       QWidget* parent);
  FieldEdit* nameField(const char* name, const QString& words, std::string Monogram::*part,
                       QWidget* parent);
  QPushButton* button(const char* name, const QString& text, const QString& words);
  void showMonogram();
  void setMonogram(const Monogram& monogram);
  [[nodiscard]] Monogram monogramFor(const Design& design) const;
  [[nodiscard]] DesignEdits edits() const;
  [[nodiscard]] const Design& design() const { return planned_->order()->designs.at(design_); }

  std::shared_ptr<const PlannedOrder> planned_;
  std::size_t design_ = 0;
  FieldEdit *name_ = nullptr, *id_ = nullptr, *width_ = nullptr, *height_ = nullptr,
            *stitches_ = nullptr;
  QCheckBox* proportional_ = nullptr;
  NoteLabel *sizeNote_ = nullptr, *stitchNote_ = nullptr;
  QLabel* source_ = nullptr;
  OutlineView* outline_ = nullptr;
  QPushButton *box_ = nullptr, *drawing_ = nullptr, *picture_ = nullptr;
  FieldEdit* dots_ = nullptr;
  QWidget* pictureRow_ = nullptr;
  QLabel* pictureWords_ = nullptr;
  FieldEdit* pictureWidth_ = nullptr;
  QCheckBox* monogram_ = nullptr;
  QWidget* names_ = nullptr;  // of the monogram
  FieldEdit *first_ = nullptr, *middle_ = nullptr, *surname_ = nullptr, *wish_ = nullptr;
  QComboBox* style_ = nullptr;
};

}  // namespace creaseline::desk
