// SPDX-License-Identifier: MIT
#include "desk/entry_page.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace creaseline::desk {

EntryPage::EntryPage(ShopList list, ShopForm* form, const QString& words, const QString& empty,
                     QWidget* parent)
    : QWidget(parent), list_(list), form_(form) {
  entries_ = new QListWidget(this);
  entries_->setObjectName(QStringLiteral("entries"));
  entries_->setAccessibleName(words);
  entries_->setUniformItemSizes(true);
  const auto button = [this](const QString& text, const QString& name, const auto& run) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(name);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, run);
    return made;
  };
  QPushButton* add = button(tr("Add"), QStringLiteral("addEntry"), [this] {
    const auto count = static_cast<std::size_t>(entries_->count());
    Q_EMIT edited(edits().add(list_));
    choose(count);
  });
  duplicate_ = button(tr("Duplicate"), QStringLiteral("duplicateEntry"), [this] {
    if (const auto entry = chosen()) {
      Q_EMIT edited(edits().duplicate(list_, *entry));
      choose(*entry + 1);
    }
  });
  remove_ = button(tr("Remove"), QStringLiteral("removeEntry"), [this] {
    if (const auto entry = chosen()) {
      Q_EMIT edited(edits().remove(list_, *entry));
    }
  });
  auto* buttons = new QHBoxLayout;
  for (QPushButton* each : {add, duplicate_, remove_}) {
    buttons->addWidget(each);
  }
  auto* left = new QVBoxLayout;
  left->addWidget(entries_, 1);
  left->addLayout(buttons);
  auto* area = new QScrollArea(this);
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  area->setWidget(form_);
  area_ = area;
  auto* none = new QLabel(empty, this);
  none->setWordWrap(true);
  none->setAlignment(Qt::AlignCenter);
  empty_ = none;
  auto* layout = new QHBoxLayout(this);
  layout->addLayout(left, 2);
  auto* right = new QVBoxLayout;
  remark_ = new NoteLabel(this);
  remark_->setObjectName(QStringLiteral("entryRemark"));
  remark_->setWordWrap(true);
  remark_->hide();
  right->addWidget(remark_);
  right->addWidget(area, 1);
  layout->addLayout(right, 3);
  layout->addWidget(none, 3);
  connect(entries_, &QListWidget::currentRowChanged, this, &EntryPage::showChosen);
  connect(form_, &ShopForm::edited, this, &EntryPage::edited);
}

ShopEdits EntryPage::edits() const {
  return {*shown_.shop, *shown_.rules, shown_.units};
}

std::optional<std::size_t> EntryPage::chosen() const {
  const int row = entries_->currentRow();
  return row < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(row));
}

void EntryPage::show(const ShownShop& shown) {
  shown_ = shown;
  showNames();
  showChosen();
}

void EntryPage::setRemarks(std::map<std::size_t, QString> remarks) {
  if (remarks != remarks_) {
    remarks_ = std::move(remarks);
    if (shown_.shop) {
      showNames();
      showRemark();
    }
  }
}

void EntryPage::showNames() {
  QStringList names = edits().names(list_);
  for (const auto& each : remarks_) {
    if (static_cast<qsizetype>(each.first) < names.size()) {
      QString& name = names[static_cast<qsizetype>(each.first)];
      name = tr("%1 (not used)", "entry of the shop").arg(name);
    }
  }
  const int before = entries_->currentRow();
  {
    const QSignalBlocker quiet(entries_);
    // The rows are kept where they can be, so that the list does not jump.
    while (entries_->count() > names.size()) {
      delete entries_->takeItem(entries_->count() - 1);
    }
    for (qsizetype i = 0; i < names.size(); ++i) {
      if (i < entries_->count()) {
        entries_->item(static_cast<int>(i))->setText(names[i]);
      } else {
        entries_->addItem(names[i]);
      }
    }
    entries_->setCurrentRow(
        std::clamp(before, names.isEmpty() ? -1 : 0, static_cast<int>(names.size()) - 1));
  }
}

void EntryPage::showRemark() {
  const auto entry = chosen();
  const auto found = entry ? remarks_.find(*entry) : remarks_.end();
  remark_->setVisible(found != remarks_.end());
  if (found != remarks_.end()) {
    remark_->say(found->second, Severity::Watch);
  }
}

void EntryPage::choose(std::size_t entry) {
  entries_->setCurrentRow(static_cast<int>(entry));
}

void EntryPage::showChosen() {
  const auto entry = chosen();
  area_->setVisible(entry.has_value());
  empty_->setVisible(!entry);
  duplicate_->setEnabled(entry.has_value());
  remove_->setEnabled(entry && edits().mayRemove(list_));
  showRemark();
  if (entry) {
    form_->show(shown_, *entry);
  }
}

}  // namespace creaseline::desk
