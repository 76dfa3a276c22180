// SPDX-License-Identifier: MIT
// The desk: the window that shows an order planned against a shop. This is all that a main needs.
#pragma once

#include <QMainWindow>
#include <QString>
#include <filesystem>
#include <memory>

#include "creaseline/desk/desk_rules.h"

namespace creaseline {

// Owns the document and everything on screen. Use from the GUI thread only. Planning and reading
// of files happen on a thread of its own; errors are shown in the window, nothing is thrown.
class DeskWindow : public QMainWindow {
  Q_OBJECT

 public:
  // `resources`: the folder of the shipped rules, from findResources(); the demo is looked for
  // beside it. `settingsFile`: an INI file for units, recent files and window geometry, created
  // when something is to be kept; a test gives one of its own.
  DeskWindow(const DeskRules& rules, const std::filesystem::path& resources,
             const QString& settingsFile, QWidget* parent = nullptr);
  ~DeskWindow() override;
  DeskWindow(const DeskWindow&) = delete;
  DeskWindow& operator=(const DeskWindow&) = delete;

  // Start reading and planning, and return at once. An order without a shop is planned for the
  // shop used last, else for the only shop file beside the order; else the window asks for one.
  void openOrder(const std::filesystem::path& file);
  void openShop(const std::filesystem::path& file);
  // An order or a shop, told apart by the name's ending, else by the content.
  void openFile(const std::filesystem::path& file);

 protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  class Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace creaseline
