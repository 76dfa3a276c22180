// SPDX-License-Identifier: MIT
// The windows "Garments" and "Designs" of a desk, made when they are first asked for.
#pragma once

#include <QAction>
#include <QWidget>
#include <filesystem>
#include <functional>
#include <string>

#include "desk/designs_window.h"
#include "desk/garments_window.h"

namespace creaseline::desk {

class DeskLibrary {
 public:
  DeskLibrary(QWidget& window, Settings& settings, Document& document,
              std::filesystem::path resources);
  // The windows look at settings and document, so they go first.
  ~DeskLibrary();
  DeskLibrary(const DeskLibrary&) = delete;
  DeskLibrary& operator=(const DeskLibrary&) = delete;

  // Opens the window with a new entry, which is the last of the order's then.
  void newGarment();
  // Opens the window at the price of the garment with that id.
  void showPriceOf(const std::string& blank);
  // Opens the window at the size chart of the garment with that id.
  void showChartOf(const std::string& blank);
  void newDesign();
  // `save`: saves the order.
  void connectActions(QAction& garments, QAction& designs, const std::function<void()>& save);

 private:
  void showGarments();
  void showGarment(const std::string& blank);
  void showDesigns();

  QWidget& window_;
  Settings& settings_;
  Document& document_;
  std::filesystem::path resources_;
  std::function<void()> save_;
  GarmentsWindow* garments_ = nullptr;
  DesignsWindow* designs_ = nullptr;
};

}  // namespace creaseline::desk
