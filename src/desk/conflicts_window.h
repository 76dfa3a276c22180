// SPDX-License-Identifier: MIT
// What two people changed at once, each to be decided: what stands here, or what the file says.
#pragma once

#include <QButtonGroup>
#include <map>
#include <string>
#include <vector>

#include "creaseline/catalogue/merge.h"
#include "desk/side_window.h"

namespace creaseline::desk {

class ConflictsWindow : public SideWindow {
  Q_OBJECT

 public:
  ConflictsWindow(Settings& settings, QWidget* parent);

  // At first all are as they stand here.
  void show(const std::vector<MergeConflict>& conflicts);

 Q_SIGNALS:
  // By place; those that stay as they are here are left out.
  void decided(const std::map<std::string, creaseline::MergeSide>& choices);
  // Closed without a decision.
  void leftOpen();

 protected:
  void hideEvent(QHideEvent* event) override;

 private:
  std::vector<std::string> places_;
  std::vector<QButtonGroup*> sides_;
  QWidget* list_ = nullptr;
  bool open_ = false;
};

}  // namespace creaseline::desk
