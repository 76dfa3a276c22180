// SPDX-License-Identifier: MIT
// How backing is cut from what is in stock: for each roll or sheet its pieces in their rows, all to
// one scale, numbered, with words for screen readers.
#pragma once

#include <QWidget>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/planning/pick_list.h"

namespace creaseline::desk {

class CutView : public QWidget {
  Q_OBJECT

 public:
  explicit CutView(QWidget* parent = nullptr);

  void show(const std::vector<CutLayout>& cuts, const UnitChoice& units);
  // Of one block: "12 pieces of 11 × 12 1/4 in, 2 beside each other in 6 rows".
  [[nodiscard]] QString wordsOf(const CutLayout& cut, const CutBlock& block) const;

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override { return {600, heightForWidth(600)}; }
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  // Draws, or only measures where there is no painter; gives the height taken.
  int lay(int width, QPainter* painter) const;
  int layBlock(const CutLayout& cut, const CutBlock& block, const QRect& room, double scale,
               QPainter* painter) const;
  [[nodiscard]] QString headingOf(const CutLayout& cut) const;
  [[nodiscard]] double scaleFor(int width) const;

  std::vector<CutLayout> cuts_;
  UnitChoice units_;
};

}  // namespace creaseline::desk
