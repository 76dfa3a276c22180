// SPDX-License-Identifier: MIT
// What the windows "Garments" and "Designs" have in common: the list at the left with its buttons,
// the message, saving to a file of an entry's own, following the document, and their place.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QSplitter>
#include <functional>
#include <memory>
#include <optional>

#include "desk/document.h"
#include "desk/message_bar.h"
#include "desk/order_edits.h"
#include "desk/side_window.h"

namespace creaseline::desk {

class LibraryWindow : public SideWindow {
  Q_OBJECT

 public:
  // Words of the kind of entry that the window holds.
  struct Words {
    QString title;      // of the window and over the list, with a mnemonic
    QString fresh;      // "New garment"
    QString fromFile;   // "From a file…"
    QString duplicate;  // for screen readers and tool tips
    QString remove;
    QString nothing;  // said in place of the form while the list is empty
  };

  LibraryWindow(const QString& name, Words words, Settings& settings, Document& document,
                QWidget* parent);

  void chooseEntry(int row);
  void addNew() { addFresh(); }
  [[nodiscard]] int entry() const { return list_->currentRow(); }

 Q_SIGNALS:
  void saveAsked();

 protected:
  struct Entry {
    QString name, detail;
  };
  // To be called at the end of the constructor.
  void setForm(QWidget* form);
  [[nodiscard]] virtual std::vector<Entry> entries() const = 0;
  virtual void showEntry(std::size_t index) = 0;
  virtual void addFresh() = 0;
  virtual void addFromFile() = 0;
  virtual void duplicateEntry(std::size_t index) = 0;
  virtual void removeEntry(std::size_t index) = 0;
  virtual void saveEntry(std::size_t index) = 0;

  bool edit(const OrderEdit& asked);
  void say(Severity severity, const QString& headline, const QString& detail);
  [[nodiscard]] std::shared_ptr<const PlannedOrder> planned() const { return document_.planned(); }
  [[nodiscard]] Document& document() const { return document_; }
  // Of the order's file, or the one to start looking in.
  [[nodiscard]] QString folder() const;
  // Asks where to; nothing if it is not to be.
  [[nodiscard]] std::optional<std::filesystem::path> askForFile(const QString& title,
                                                                const QString& id,
                                                                const QString& ending);

  bool event(QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  QWidget* buildList();
  QPushButton* button(const QString& name, const QString& text, const QString& words);
  void refresh();
  void showAll();
  void fillList();
  void finishTyping();

  QString name_;
  Words words_;
  Document& document_;
  MessageBar* message_ = nullptr;
  QSplitter* splitter_ = nullptr;
  QListWidget* list_ = nullptr;
  QPushButton *add_ = nullptr, *duplicate_ = nullptr, *remove_ = nullptr, *ownFile_ = nullptr;
  QWidget* form_ = nullptr;
  QLabel* nothing_ = nullptr;
  bool refreshing_ = false;
  std::shared_ptr<const PlannedOrder> shown_;
};

}  // namespace creaseline::desk
