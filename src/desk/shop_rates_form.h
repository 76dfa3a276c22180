// SPDX-License-Identifier: MIT
// What work and material cost the shop. Prices of backing are on the page of backing, prices of
// garments in the window of garments.
#pragma once

#include "creaseline/planning/cost.h"
#include "desk/shop_form.h"

namespace creaseline::desk {

class ShopRatesForm : public ShopForm {
  Q_OBJECT

 public:
  explicit ShopRatesForm(QWidget* parent = nullptr);

  // Name of the line edit where that can be given; empty for what stands elsewhere. Nothing: the
  // currency, with which rates begin.
  [[nodiscard]] static QString fieldOf(std::optional<CostField> field);

 protected:
  [[nodiscard]] QString subject() const override { return tr("Rates"); }
  void shown() override;

 private:
  void addCurrency();
  void openFields();
  void addMoney(const char* name, const QString& label, const QString& words,
                std::optional<Money> Rates::*amount);
  void addShare(const char* name, const QString& label, const QString& words,
                std::optional<Percent> Rates::*share, Percent most);
  void addThread();
  void addRoll(const char* name, const QString& label, const QString& words,
               std::optional<RollPrice> Rates::*price);
  // lupdate loses a template's class, so that its words are said outside of it.
  [[nodiscard]] static QString currencyFirst();
  [[nodiscard]] static QString notCounted();
  // A field that may be empty, for what is not given. `read` is asked for what is typed.
  template <class Value, class Read, class Text>
  FieldEdit* addRate(const char* name, const QString& label, const QString& words,
                     std::optional<Value> Rates::*value, Read read, Text text);

  FieldEdit* currency_ = nullptr;
  std::vector<FieldEdit*> rates_;  // of use only where there is a currency
};

}  // namespace creaseline::desk
