// SPDX-License-Identifier: MIT
// What a garment is and what it is made of: name, id, kind, fabric, colours.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QWidget>
#include <memory>

#include "desk/entry_table.h"
#include "desk/field_edit.h"
#include "desk/garment_edits.h"

namespace creaseline::desk {

class GarmentForm : public QWidget {
  Q_OBJECT

 public:
  explicit GarmentForm(QWidget* parent = nullptr);
  void show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t blank);

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);
  // Why a choice was not taken.
  void refused(const QString& problem);

 private:
  QWidget* buildGarment();
  QWidget* buildFabric();
  QWidget* buildProposed(QWidget* parent);
  EntryTable* buildColours();
  FieldEdit* buildPrice(QWidget* parent);
  void fillKinds();
  [[nodiscard]] GarmentEdits edits() const;
  [[nodiscard]] Result<Price> readPrice(const QString& text) const;
  [[nodiscard]] const Blank& blank() const { return planned_->order()->blanks.at(blank_); }
  [[nodiscard]] const ClothColour& colour(int row) const {
    return blank().colours.at(static_cast<std::size_t>(row));
  }
  template <class E>
  QComboBox* enumChoice(const char* name, const QString& words, QString (*word)(E),
                        OrderEdit (GarmentEdits::*make)(std::size_t, E) const, QWidget* parent);

  std::shared_ptr<const PlannedOrder> planned_;
  std::size_t blank_ = 0;
  FieldEdit *name_ = nullptr, *id_ = nullptr, *price_ = nullptr, *fabric_ = nullptr,
            *weight_ = nullptr, *fibres_ = nullptr;
  QComboBox *kind_ = nullptr, *construction_ = nullptr, *pile_ = nullptr, *stretch_ = nullptr;
  QCheckBox* sheer_ = nullptr;
  QWidget* proposed_ = nullptr;
  EntryTable* colours_ = nullptr;
};

}  // namespace creaseline::desk
