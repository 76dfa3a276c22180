// SPDX-License-Identifier: MIT
// What the window shows while no order, or no shop, is open: always a way on.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QStringList>
#include <QToolButton>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "desk/latest_job.h"

namespace creaseline::desk {

class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent = nullptr);

  // What is missing, and the files that could be opened again.
  void showState(bool hasShop, bool demoAvailable, const QStringList& recent);

 Q_SIGNALS:
  void newOrderRequested();
  void openOrderRequested();
  void openShopRequested();
  void newShopRequested();
  void openDemoRequested();
  void openRecentRequested(const QString& file);

 private:
  void fillRecent(const QStringList& recent);
  [[nodiscard]] QString fileLine(const QString& file) const;
  void nameRecent();

  QPushButton* newOrder_ = nullptr;
  QPushButton* openOrder_ = nullptr;
  QPushButton* openShop_ = nullptr;
  QPushButton* newShop_ = nullptr;
  QPushButton* openDemo_ = nullptr;
  QWidget* recent_ = nullptr;
  QVBoxLayout* recentLayout_ = nullptr;
  std::vector<std::pair<QString, QToolButton*>> recentButtons_;  // by file
  // Files may lie on a slow disk: what is in them is read beside.
  LatestJob heads_{*this};
};

}  // namespace creaseline::desk
