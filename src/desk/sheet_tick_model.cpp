// SPDX-License-Identifier: MIT
#include "desk/sheet_tick_model.h"

#include "desk/text.h"

namespace creaseline::desk {

namespace {

const SheetKind& kindAt(int row) {
  return sheetKinds().at(static_cast<std::size_t>(row));
}

}  // namespace

SheetTickModel::SheetTickModel(Settings& settings, QObject* parent)
    : QAbstractListModel(parent), settings_(settings) {
  for (const SheetKind& kind : sheetKinds()) {
    ticks_.push_back(settings_.sheetTicked(kind.id).value_or(kind.usual));
  }
}

int SheetTickModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(ticks_.size());
}

QVariant SheetTickModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) {
    return {};
  }
  const SheetKind& kind = kindAt(index.row());
  switch (role) {
    case Qt::DisplayRole:
      return kind.name;
    case Qt::CheckStateRole:
      return ticks_[static_cast<std::size_t>(index.row())] ? Qt::Checked : Qt::Unchecked;
    case Qt::AccessibleTextRole: {
      const QString pages = pagesText(index.row());
      return pages.isEmpty() ? kind.name
                             : tr("%1, %2", "kind of sheet, pages").arg(kind.name, pages);
    }
    case Qt::AccessibleDescriptionRole:
    case WhatRole:
      return kind.what;
    case PagesRole:
      return pagesText(index.row());
    default:
      return {};
  }
}

QString SheetTickModel::pagesText(int row) const {
  if (!ticks_[static_cast<std::size_t>(row)]) {
    return {};
  }
  if (!contents_) {
    return QStringLiteral("…");
  }
  const SheetContents::Kind* kind = contents_->find(id(row));
  if (kind == nullptr) {
    return {};
  }
  return kind->count == 0 ? tr("no pages") : tr("%n page(s)", nullptr, kind->count);
}

Qt::ItemFlags SheetTickModel::flags(const QModelIndex& index) const {
  return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable |
                               Qt::ItemNeverHasChildren
                         : Qt::NoItemFlags;
}

bool SheetTickModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::CheckStateRole) {
    return false;
  }
  const bool ticked = value.toInt() == Qt::Checked;
  ticks_[static_cast<std::size_t>(index.row())] = ticked;
  settings_.setSheetTicked(id(index.row()), ticked);
  Q_EMIT dataChanged(index, index);
  Q_EMIT tickChanged(index.row());
  return true;
}

const std::string& SheetTickModel::id(int row) const {
  return kindAt(row).id;
}

std::optional<int> SheetTickModel::row(const std::string& id) const {
  for (int row = 0; row < rowCount(); ++row) {
    if (kindAt(row).id == id) {
      return row;
    }
  }
  return std::nullopt;
}

bool SheetTickModel::ticked(const std::string& id) const {
  const std::optional<int> at = row(id);
  return at && ticks_[static_cast<std::size_t>(*at)];
}

std::vector<std::string> SheetTickModel::tickedIds() const {
  std::vector<std::string> ids;
  for (int row = 0; row < rowCount(); ++row) {
    if (ticks_[static_cast<std::size_t>(row)]) {
      ids.push_back(id(row));
    }
  }
  return ids;
}

void SheetTickModel::setContents(const std::optional<SheetContents>& contents) {
  contents_ = contents;
  if (rowCount() > 0) {
    Q_EMIT dataChanged(index(0), index(rowCount() - 1));
  }
}

}  // namespace creaseline::desk
