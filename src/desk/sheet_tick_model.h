// SPDX-License-Identifier: MIT
// The kinds of sheets with their ticks, and how many pages each ticked one has.
#pragma once

#include <QAbstractListModel>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/sheets/sheet_kind.h"
#include "desk/settings.h"
#include "desk/sheet_preparer.h"

namespace creaseline::desk {

class SheetTickModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Role { WhatRole = Qt::UserRole, PagesRole };  // texts; PagesRole "12 pages", may be empty

  // The ticks are as they were left, and are kept as they are changed.
  explicit SheetTickModel(Settings& settings, QObject* parent = nullptr);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  [[nodiscard]] const std::string& id(int row) const;
  [[nodiscard]] std::optional<int> row(const std::string& id) const;
  [[nodiscard]] bool ticked(const std::string& id) const;
  [[nodiscard]] std::vector<std::string> tickedIds() const;
  // Null while they are being counted.
  void setContents(const std::optional<SheetContents>& contents);

 Q_SIGNALS:
  void tickChanged(int row);

 private:
  [[nodiscard]] QString pagesText(int row) const;

  Settings& settings_;
  std::vector<bool> ticks_;  // of sheetKinds()
  std::optional<SheetContents> contents_;
};

}  // namespace creaseline::desk
