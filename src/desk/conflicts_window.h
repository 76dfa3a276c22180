// SPDX-License-Identifier: MIT
// What two people changed at once, each to be decided: what stands here, or what the file says.
#pragma once

#include <QButtonGroup>
#include <QWidget>
#include <map>
#include <string>
#include <vector>

#include "creaseline/catalogue/merge.h"

namespace creaseline::desk {

class ConflictsWindow : public QWidget {
  Q_OBJECT

 public:
  explicit ConflictsWindow(QWidget* parent);

  // At first all are as they stand here.
  void show(const std::vector<MergeConflict>& conflicts);

 Q_SIGNALS:
  // By place; those that stay as they are here are left out.
  void decided(const std::map<std::string, creaseline::MergeSide>& choices);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  std::vector<std::string> places_;
  std::vector<QButtonGroup*> sides_;
  QWidget* list_ = nullptr;
};

}  // namespace creaseline::desk
