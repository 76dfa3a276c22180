// SPDX-License-Identifier: MIT
#include "desk/conflicts_window.h"

#include <QHideEvent>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <utility>

#include "desk/form_parts.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr QSize kConflictsSize{560, 420};
constexpr int kTheirs = 1;

}  // namespace

ConflictsWindow::ConflictsWindow(Settings& settings, QWidget* parent)
    : SideWindow(QStringLiteral("conflictsWindow"), kConflictsSize, settings, parent) {
  setWindowTitle(tr("Changed here and in the file"));
  auto* layout = new QVBoxLayout(this);
  auto* words = new QLabel(tr("Somebody else changed these in the order's file while you changed "
                              "them here. Decide for each which one counts."),
                           this);
  words->setWordWrap(true);
  layout->addWidget(words);
  auto* area = new QScrollArea(this);
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  list_ = new QWidget;
  new QVBoxLayout(list_);
  area->setWidget(list_);
  layout->addWidget(area, 1);
  auto* apply = new QPushButton(tr("&Count these"), this);
  apply->setObjectName(QStringLiteral("conflictsApply"));
  apply->setAutoDefault(false);
  connect(apply, &QPushButton::clicked, this, [this] {
    std::map<std::string, MergeSide> choices;
    for (std::size_t i = 0; i < places_.size(); ++i) {
      if (sides_[i]->checkedId() == kTheirs) {
        choices[places_[i]] = MergeSide::Theirs;
      }
    }
    open_ = false;
    close();
    Q_EMIT decided(choices);
  });
  auto* later = new QPushButton(tr("&Not now"), this);
  later->setObjectName(QStringLiteral("conflictsLater"));
  later->setAutoDefault(false);
  connect(later, &QPushButton::clicked, this, &QWidget::close);
  auto* buttons = new QHBoxLayout;
  buttons->addStretch(1);
  buttons->addWidget(later);
  buttons->addWidget(apply);
  layout->addLayout(buttons);
}

void ConflictsWindow::show(const std::vector<MergeConflict>& conflicts) {
  while (QLayoutItem* item = list_->layout()->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  places_.clear();
  sides_.clear();
  auto* layout = static_cast<QVBoxLayout*>(list_->layout());
  for (const MergeConflict& conflict : conflicts) {
    auto* row = new QWidget(list_);
    auto* inside = new QVBoxLayout(row);
    const QString place = capitalised(toQString(conflict.place));
    auto* heading = new QLabel(place, row);
    heading->setTextFormat(Qt::PlainText);
    heading->setWordWrap(true);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    inside->addWidget(heading);
    auto* sides = new QButtonGroup(row);
    const auto side = [&](const QString& text, const char* name, int id) {
      auto* made = new QRadioButton(withoutMnemonic(text), row);
      made->setObjectName(QString::fromLatin1(name) + QString::number(places_.size()));
      made->setAccessibleName(tr("%1: %2", "place, value").arg(place, text));
      sides->addButton(made, id);
      inside->addWidget(made);
      return made;
    };
    side(tr("here: %1").arg(toQString(conflict.mine)), "mine-", 0)->setChecked(true);
    side(tr("in the file: %1").arg(toQString(conflict.theirs)), "theirs-", kTheirs);
    layout->addWidget(row);
    places_.push_back(conflict.place);
    sides_.push_back(sides);
  }
  layout->addStretch(1);
  open_ = true;
  present();
}

void ConflictsWindow::hideEvent(QHideEvent* event) {
  SideWindow::hideEvent(event);
  if (!event->spontaneous() && std::exchange(open_, false)) {
    Q_EMIT leftOpen();
  }
}

}  // namespace creaseline::desk
