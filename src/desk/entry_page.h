// SPDX-License-Identifier: MIT
// A list of the shop with the form of the entry that is chosen: add, duplicate, remove.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>
#include <map>

#include "desk/form_parts.h"
#include "desk/shop_form.h"

namespace creaseline::desk {

class EntryPage : public QWidget {
  Q_OBJECT

 public:
  // `form` becomes the page's own; `words`: the list's name for screen readers; `empty`: what is
  // said where the list has no entry.
  EntryPage(ShopList list, ShopForm* form, const QString& words, const QString& empty,
            QWidget* parent = nullptr);

  [[nodiscard]] ShopList list() const { return list_; }
  void show(const ShownShop& shown);
  void choose(std::size_t entry);
  // On single entries, said above their form and after their name: that they are not used.
  void setRemarks(std::map<std::size_t, QString> remarks);

 Q_SIGNALS:
  void edited(const creaseline::desk::ShopEdit& edit);

 private:
  [[nodiscard]] ShopEdits edits() const;
  [[nodiscard]] std::optional<std::size_t> chosen() const;
  void showChosen();
  void showNames();
  void showRemark();

  ShopList list_;
  ShownShop shown_;
  QListWidget* entries_ = nullptr;
  ShopForm* form_ = nullptr;
  QPushButton* duplicate_ = nullptr;
  QPushButton* remove_ = nullptr;
  NoteLabel* remark_ = nullptr;
  std::map<std::size_t, QString> remarks_;
  QWidget* empty_ = nullptr;
  QWidget* area_ = nullptr;
};

}  // namespace creaseline::desk
