// SPDX-License-Identifier: MIT
#include "desk/table_panel.h"

#include <QAction>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "creaseline/planning/wording.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

// As many buttons as there are choices. They are kept where they can be, so that the focus stays on
// one that was just pressed.
void setCount(QButtonGroup& group, QHBoxLayout& row, std::size_t count, QWidget* parent) {
  while (group.buttons().size() > static_cast<qsizetype>(count)) {
    QAbstractButton* last = group.buttons().constLast();
    group.removeButton(last);
    delete last;
  }
  for (qsizetype i = group.buttons().size(); i < static_cast<qsizetype>(count); ++i) {
    auto* button = new QToolButton(parent);
    button->setCheckable(true);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setMinimumHeight(28);
    group.addButton(button, static_cast<int>(i));
    row.addWidget(button);
  }
}

}  // namespace

TablePanel::TablePanel(Selection& selection, const QList<QAction*>& zoomActions, QWidget* parent)
    : QWidget(parent), selection_(selection) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  auto* strip = new QHBoxLayout;
  strip->setContentsMargins(8, 4, 8, 4);
  strip->setSpacing(4);
  places_ = new QHBoxLayout;
  places_->setSpacing(4);
  placeButtons_ = new QButtonGroup(this);
  hoopings_ = new QHBoxLayout;
  hoopings_->setSpacing(4);
  hoopingButtons_ = new QButtonGroup(this);
  strip->addLayout(places_);
  strip->addSpacing(12);
  strip->addLayout(hoopings_);
  strip->addStretch(1);
  zoom_ = new QLabel(this);
  zoom_->setObjectName(QStringLiteral("zoom"));
  strip->addWidget(zoom_);
  for (QAction* action : zoomActions) {
    auto* button = new QToolButton(this);
    button->setDefaultAction(action);
    button->setAutoRaise(true);
    button->setIconSize({18, 18});
    button->setFocusPolicy(Qt::TabFocus);
    strip->addWidget(button);
  }
  layout->addLayout(strip);
  canvas_ = new TableCanvas(this);
  layout->addWidget(canvas_, 1);
  connect(placeButtons_, &QButtonGroup::idClicked, this, [this](int id) {
    selection_.choosePlacement(selection_.line(), static_cast<std::size_t>(id));
  });
  connect(hoopingButtons_, &QButtonGroup::idClicked, this,
          [this](int id) { selection_.chooseHooping(static_cast<std::size_t>(id)); });
  connect(canvas_, &TableCanvas::zoomChanged, this,
          [this] { zoom_->setText(tr("%1 % of true size").arg(canvas_->percentOfTrueSize())); });
}

void TablePanel::showSelection(const std::shared_ptr<const PlannedOrder>& planned,
                               const std::shared_ptr<const Laid>& laid) {
  fillPlaces(*planned);
  fillHoopings(*planned);
  TableCanvas::Picture picture{planned,
                               {selection_.line(), selection_.placement(), selection_.size()},
                               selection_.current(),
                               selection_.compared(),
                               {},
                               emptyText(*planned)};
  if (picture.plan == nullptr && !laid->empty()) {
    const auto chosen = std::find_if(laid->begin(), laid->end(), [this](const PlacementPlan& each) {
      return each.size == selection_.size();
    });
    picture.plan = chosen == laid->end() ? &(*laid)[laid->size() / 2] : &*chosen;
    picture.laid = laid;
  }
  canvas_->setPicture(std::move(picture));
}

QString TablePanel::emptyText(const PlannedOrder& planned) {
  return planned.order() != nullptr && planned.order()->blanks.empty()
             ? tr("The garment lies here as soon as the order has one with a size chart.")
             : tr("The garment cannot be drawn: its measures do not go together.");
}

void TablePanel::fillHoopings(const PlannedOrder& planned) {
  const PlacementPlan* shown = selection_.current();
  const std::size_t count =
      shown == nullptr || !shown->part
          ? 0
          : planned.hoopings(selection_.line(), selection_.placement(), selection_.size()).size();
  setCount(*hoopingButtons_, *hoopings_, count, this);
  for (std::size_t i = 0; i < count; ++i) {
    const int number = static_cast<int>(i) + 1;
    QAbstractButton* button = hoopingButtons_->button(static_cast<int>(i));
    button->setText(tr("Part %1").arg(number));
    button->setAccessibleName(tr("Part %1 of %2 of the design").arg(number).arg(count));
    button->setToolTip(button->accessibleName());
    button->setChecked(number == shown->part->number);
  }
}

void TablePanel::fillPlaces(const PlannedOrder& planned) {
  const auto& placements = planned.order() == nullptr || selection_.empty()
                               ? std::vector<OrderPlacement>()
                               : planned.order()->lines[selection_.line()].placements;
  setCount(*placeButtons_, *places_, placements.size(), this);
  for (std::size_t i = 0; i < placements.size(); ++i) {
    QAbstractButton* button = placeButtons_->button(static_cast<int>(i));
    const QString name = toQString(locationPhrase(placements[i].location, planned.rules()));
    const auto state = planned.worst(selection_.line(), i);
    button->setText(state ? stateShape(*state) + QLatin1Char(' ') + name : name);
    button->setAccessibleName(state
                                  ? tr("Place %1: %2, %3").arg(i + 1).arg(name, garmentWord(*state))
                                  : tr("Place %1: %2").arg(i + 1).arg(name));
    button->setToolTip(button->accessibleName());
    button->setChecked(i == selection_.placement());
  }
}

}  // namespace creaseline::desk
