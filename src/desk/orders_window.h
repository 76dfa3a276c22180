// SPDX-License-Identifier: MIT
// Finds an order again: all orders of a folder that have the words one types, by number, title,
// customer or garment. Folders are read off the GUI thread.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTimer>
#include <filesystem>

#include "desk/latest_job.h"
#include "desk/order_list_model.h"
#include "desk/side_window.h"

namespace creaseline::desk {

class OrdersWindow : public SideWindow {
  Q_OBJECT

 public:
  // What one can do with the order that is chosen.
  enum class Use { Open, OpenInNewWindow, Copy, Pattern };

  OrdersWindow(Settings& settings, QWidget* parent);
  ~OrdersWindow() override;

  void lookIn(const QString& folder);

 Q_SIGNALS:
  void chosen(const std::filesystem::path& file, creaseline::desk::OrdersWindow::Use use);

 protected:
  void showEvent(QShowEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void search();
  void take(const FoundOrders& found);
  void choose(Use use);
  void updateEnabled();

  QString folder_;
  OrderListModel model_;
  LatestJob search_{*this};
  QTimer typing_;  // a search for each letter would be one too many
  QLabel* folderLabel_ = nullptr;
  QLineEdit* words_ = nullptr;
  QTableView* table_ = nullptr;
  QLabel* said_ = nullptr;
  QList<QPushButton*> uses_;
};

}  // namespace creaseline::desk
