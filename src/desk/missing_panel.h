// SPDX-License-Identifier: MIT
// Beside a garment that is not planned yet: what is missing, each with a button to where it is
// filled in.
#pragma once

#include <QLabel>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "desk/unplanned.h"

namespace creaseline::desk {

class MissingPanel : public QWidget {
  Q_OBJECT

 public:
  enum class Way { OpenShop, NewShop, Garments, Designs, AddLine, AddPlace, Quantities };

  explicit MissingPanel(QWidget* parent = nullptr);
  // Hides itself where nothing is missing.
  void show(const std::vector<Missing>& missing);

 Q_SIGNALS:
  void wayChosen(creaseline::desk::MissingPanel::Way way);

 private:
  void add(Missing missing);
  void addWay(Way way, const QString& words, const QString& name);

  std::vector<Missing> shown_;
  QLabel* heading_ = nullptr;
  QWidget* rows_ = nullptr;
  QVBoxLayout* rowsLayout_ = nullptr;
};

}  // namespace creaseline::desk
