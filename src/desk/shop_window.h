// SPDX-License-Identifier: MIT
// The shop in a window beside the desk: what is changed here counts at once, and the order that is
// open is planned again with it.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <vector>

#include "desk/document.h"
#include "desk/entry_page.h"
#include "desk/shop_forms.h"
#include "desk/shop_rates_form.h"
#include "desk/side_window.h"

namespace creaseline::desk {

class ShopWindow : public SideWindow {
  Q_OBJECT

 public:
  // The document and settings must outlive the window.
  ShopWindow(Document& document, std::shared_ptr<const Rules> rules, Settings& settings,
             QWidget* parent);
  ~ShopWindow() override;

  // Brings what a cost lacks in front, ready to be typed in. `entry`: id of a backing, where it is
  // one's. Nothing: the currency.
  void goTo(std::optional<CostField> field, const std::string& entry);
  void goToHouseRule(std::size_t rule);
  void goTo(ShopList list);
  void goToTopping();  // whether topping film is in stock

 Q_SIGNALS:
  void saveRequested();
  void saveAsRequested();

 private:
  void addTopping();
  EntryPage* addPage(ShopList list, ShopForm* form, const QString& title, const QString& words,
                     const QString& empty);
  void build();
  QWidget* scrolled(ShopForm* form);
  void showShop();
  void showState();
  void showIdleRules();
  void bringInFront(const QWidget* page);
  void edit(const ShopEdit& edit);

  Document& document_;
  std::shared_ptr<const Rules> rules_;
  QTabWidget* tabs_ = nullptr;
  ShopForm* head_ = nullptr;
  ShopForm* rates_ = nullptr;
  ShopForm* topping_ = nullptr;
  EntryPage* backing_ = nullptr;
  EntryPage* houseRules_ = nullptr;
  std::vector<EntryPage*> pages_;
  QLabel* file_ = nullptr;
  QLabel* effect_ = nullptr;
  QPushButton* save_ = nullptr;
};

}  // namespace creaseline::desk
