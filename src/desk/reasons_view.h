// SPDX-License-Identifier: MIT
// Shows the reasons of the selected placement as text that can be read, scrolled and copied.
#pragma once

#include <QTextBrowser>
#include <optional>

#include "desk/reason_sections.h"

namespace creaseline::desk {

class ReasonsView : public QTextBrowser {
  Q_OBJECT

 public:
  explicit ReasonsView(QWidget* parent = nullptr);

  void show(const PlacementReasons& reasons);
  void showNothing(const QString& why);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void render();
  [[nodiscard]] QString html() const;

  std::optional<PlacementReasons> reasons_;
  QString nothing_;
};

}  // namespace creaseline::desk
