// SPDX-License-Identifier: MIT
#include "desk/missing_panel.h"

#include <QPushButton>

namespace creaseline::desk {

MissingPanel::MissingPanel(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("missing"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 4, 10, 8);
  layout->setSpacing(4);
  heading_ = new QLabel(tr("What is missing before it can be planned:"), this);
  heading_->setWordWrap(true);
  layout->addWidget(heading_);
  rows_ = new QWidget(this);
  rowsLayout_ = new QVBoxLayout(rows_);
  rowsLayout_->setContentsMargins(0, 0, 0, 0);
  rowsLayout_->setSpacing(3);
  layout->addWidget(rows_);
  hide();
}

// Rows that say the same stay, so that the focus stays on a button that was just pressed.
void MissingPanel::show(const std::vector<Missing>& missing) {
  if (missing != shown_) {
    shown_ = missing;
    while (QLayoutItem* item = rowsLayout_->takeAt(0)) {
      item->widget()->hide();
      item->widget()->deleteLater();
      delete item;
    }
    for (const Missing each : missing) {
      add(each);
    }
  }
  setVisible(!missing.empty());
}

void MissingPanel::add(Missing missing) {
  const auto say = [this](const QString& words) {
    auto* label = new QLabel(words, rows_);
    label->setObjectName(QStringLiteral("missingWords"));
    label->setWordWrap(true);
    rowsLayout_->addWidget(label);
  };
  switch (missing) {
    case Missing::Shop:
      say(tr("A shop: its frames decide what can be sewn where."));
      addWay(Way::OpenShop, tr("Open a shop's file…"), QStringLiteral("missingOpenShop"));
      addWay(Way::NewShop, tr("Describe a new shop…"), QStringLiteral("missingNewShop"));
      return;
    case Missing::Garment:
      say(tr("A garment with its size chart; then it lies here on the table."));
      addWay(Way::Garments, tr("Garments of the order…"), QStringLiteral("missingGarment"));
      return;
    case Missing::Line:
      say(tr("A line of the order that asks for this garment."));
      addWay(Way::AddLine, tr("Add a garment to the order…"), QStringLiteral("missingLine"));
      return;
    case Missing::Design:
      say(tr("A design: its size and stitches."));
      addWay(Way::Designs, tr("Designs of the order…"), QStringLiteral("missingDesign"));
      return;
    case Missing::Place:
      say(tr("A place on the garment where a design is sewn."));
      addWay(Way::AddPlace, tr("Add a place to the line…"), QStringLiteral("missingPlace"));
      return;
    case Missing::Quantities:
      say(tr("How many garments of which size: this line asks for none."));
      addWay(Way::Quantities, tr("Type the &quantities…"), QStringLiteral("missingQuantities"));
      return;
    case Missing::Chart:
      say(tr("Measures that go together: the garment cannot be drawn from its size chart."));
      addWay(Way::Garments, tr("Mend the size chart…"), QStringLiteral("missingChart"));
      return;
  }
}

void MissingPanel::addWay(Way way, const QString& words, const QString& name) {
  auto* button = new QPushButton(words, rows_);
  button->setObjectName(name);
  button->setAutoDefault(false);
  connect(button, &QPushButton::clicked, this, [this, way] { Q_EMIT wayChosen(way); });
  rowsLayout_->addWidget(button, 0, Qt::AlignLeft);
}

}  // namespace creaseline::desk
