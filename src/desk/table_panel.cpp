// SPDX-License-Identifier: MIT
#include "desk/table_panel.h"

#include <QAction>
#include <QEvent>
#include <QStyleOptionToolButton>
#include <QStylePainter>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "creaseline/planning/wording.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

// Gives way where there is little room: its words are shortened then, and whole in the tool tip.
class ChoiceButton : public QToolButton {
 public:
  using QToolButton::QToolButton;

  [[nodiscard]] QSize minimumSizeHint() const override {
    constexpr int kLeastCharacters = 5;
    return {std::min(sizeHint().width(), kLeastCharacters * fontMetrics().averageCharWidth() + 16),
            sizeHint().height()};
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QStylePainter painter(this);
    QStyleOptionToolButton option;
    initStyleOption(&option);
    option.text = option.fontMetrics.elidedText(option.text, Qt::ElideRight, width() - 10);
    painter.drawComplexControl(QStyle::CC_ToolButton, option);
    if (isChecked()) {  // in the dark a pressed button is merely the duller one
      painter.fillRect(QRect(3, height() - 4, width() - 6, 2),
                       palette().color(QPalette::Highlight));
    }
  }
};

QString panelWords(PanelName panel) {
  return capitalised(toQString(panelPhrase(panel)));
}

// As many buttons as there are choices. They are kept where they can be, so that the focus stays on
// one that was just pressed.
void setCount(QButtonGroup& group, QHBoxLayout& row, std::size_t count, QWidget* parent) {
  while (group.buttons().size() > static_cast<qsizetype>(count)) {
    QAbstractButton* last = group.buttons().constLast();
    group.removeButton(last);
    delete last;
  }
  for (qsizetype i = group.buttons().size(); i < static_cast<qsizetype>(count); ++i) {
    auto* button = new ChoiceButton(parent);
    button->setCheckable(true);
    button->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
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
  otherPanels_ = new ChoiceButton(this);
  otherPanels_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  otherPanels_->setObjectName(QStringLiteral("otherPanels"));
  otherPanels_->setText(tr("Other panels"));
  otherPanels_->setToolTip(tr("Look at a panel of the garment that nothing is sewn on"));
  otherPanels_->setAccessibleName(tr("Other panels of the garment"));
  otherPanels_->setPopupMode(QToolButton::InstantPopup);
  otherPanels_->setFocusPolicy(Qt::StrongFocus);
  otherPanels_->setMinimumHeight(28);
  otherPanels_->setCheckable(true);  // while one of them is on show
  otherPanels_->setAutoRaise(true);
  otherPanelsMenu_ = new QMenu(otherPanels_);
  otherPanels_->setMenu(otherPanelsMenu_);
  // Filled as it opens: the choice of an entry changes what is shown.
  connect(otherPanelsMenu_, &QMenu::aboutToShow, this, &TablePanel::fillOtherPanels);
  strip->addWidget(otherPanels_);
  strip->addSpacing(12);
  strip->addLayout(hoopings_);
  zoom_ = new QLabel(this);
  zoom_->setObjectName(QStringLiteral("zoom"));
  strip->addStretch(1);
  strip->addWidget(zoom_, 1);
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
  connect(canvas_, &TableCanvas::zoomChanged, this, &TablePanel::showZoom);
  zoom_->setToolTip(tr("Of the garment's true size"));
  zoom_->installEventFilter(this);
  zoom_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  zoom_->setMinimumWidth(zoom_->fontMetrics().horizontalAdvance(QStringLiteral("4000 %")) + 4);
  zoom_->setMaximumWidth(zoom_->fontMetrics().horizontalAdvance(zoomWords(4000)) + 8);
  zoom_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
}

void TablePanel::showSelection(const std::shared_ptr<const PlannedOrder>& planned,
                               const std::shared_ptr<const Laid>& laid) {
  fillPlaces(*planned);
  planned_ = planned;
  otherPanels_->setVisible(!panelsWithoutPlace(*planned, selection_).empty());
  otherPanels_->setChecked(selection_.lookedAt().has_value());
  otherPanels_->setText(selection_.lookedAt() ? panelWords(*selection_.lookedAt())
                                              : tr("Other panels"));
  fillHoopings(*planned);
  TableCanvas::Picture picture{planned,
                               {selection_.line(), selection_.placement(), selection_.size()},
                               selection_.current(),
                               selection_.compared(),
                               {},
                               tr("Not planned yet"),
                               emptyText(*planned)};
  if (auto part = layLookedAt(*planned, selection_); !part->empty()) {
    picture.plan = &part->front();
    picture.laid = std::move(part);
    picture.compared = nullptr;
    picture.notPlanned = tr("Nothing is sewn here");
  } else if (picture.plan == nullptr && !laid->empty()) {
    const auto chosen = std::find_if(laid->begin(), laid->end(), [this](const PlacementPlan& each) {
      return each.size == selection_.size();
    });
    picture.plan = chosen == laid->end() ? &(*laid)[laid->size() / 2] : &*chosen;
    picture.laid = laid;
  }
  canvas_->setPicture(std::move(picture));
}

QString TablePanel::zoomWords(int percent) {
  return tr("%1 % of true size").arg(percent);
}

// The number alone where there is little room.
void TablePanel::showZoom() {
  const int percent = canvas_->percentOfTrueSize();
  const QString words = zoomWords(percent);
  const bool room = zoom_->fontMetrics().horizontalAdvance(words) <= zoom_->width();
  zoom_->setText(room ? words : tr("%1 %", "number").arg(percent));
}

bool TablePanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == zoom_ && event->type() == QEvent::Resize) {
    showZoom();
  }
  return QWidget::eventFilter(watched, event);
}

QString TablePanel::emptyText(const PlannedOrder& planned) {
  return planned.order() != nullptr && planned.order()->blanks.empty()
             ? tr("The garment lies here as soon as the order has one with a size chart.")
             : tr("The garment cannot be drawn: its measures do not go together.");
}

void TablePanel::fillHoopings(const PlannedOrder& planned) {
  const PlacementPlan* shown = selection_.current();
  const std::size_t count =
      shown == nullptr || !shown->part || selection_.lookedAt()
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

void TablePanel::fillOtherPanels() {
  otherPanelsMenu_->clear();
  for (const PanelName panel : panelsWithoutPlace(*planned_, selection_)) {
    QAction* action = otherPanelsMenu_->addAction(panelWords(panel));
    action->setCheckable(true);
    action->setChecked(selection_.lookedAt() == panel);
    connect(action, &QAction::triggered, this, [this, panel] { selection_.lookAt(panel); });
  }
}

void TablePanel::fillPlaces(const PlannedOrder& planned) {
  const auto& placements = planned.order() == nullptr || selection_.empty()
                               ? std::vector<OrderPlacement>()
                               : planned.order()->lines[selection_.line()].placements;
  setCount(*placeButtons_, *places_, placements.size(), this);
  // None of them is on show while another part is.
  placeButtons_->setExclusive(!selection_.lookedAt());
  for (std::size_t i = 0; i < placements.size(); ++i) {
    QAbstractButton* button = placeButtons_->button(static_cast<int>(i));
    const QString name = toQString(locationPhrase(placements[i].location, planned.rules()));
    const auto state = planned.worst(selection_.line(), i);
    button->setText(state ? stateShape(*state) + QLatin1Char(' ') + name : name);
    button->setAccessibleName(state
                                  ? tr("Place %1: %2, %3").arg(i + 1).arg(name, garmentWord(*state))
                                  : tr("Place %1: %2").arg(i + 1).arg(name));
    button->setToolTip(button->accessibleName());
    button->setChecked(i == selection_.placement() && !selection_.lookedAt());
  }
}

}  // namespace creaseline::desk
