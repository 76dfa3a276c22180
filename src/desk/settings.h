// SPDX-License-Identifier: MIT
// What the desk keeps between two days: language, appearance, units, the sheets chosen, recent
// files, the shop used last, the windows' places. The file is given from outside, so that tests
// never touch a person's own settings.
#pragma once

#include <QByteArray>
#include <QSettings>
#include <QString>
#include <QStringList>
#include <optional>
#include <string>

#include "creaseline/base/units.h"
#include "creaseline/sheets/sheet_kind.h"
#include "desk/appearance.h"
#include "desk/language.h"

namespace creaseline::desk {

class Settings {
 public:
  static constexpr int kRecentFiles = 8;

  explicit Settings(const QString& file);
  [[nodiscard]] QString file() const { return store_.fileName(); }

  // Nothing as long as the system's is followed.
  [[nodiscard]] std::optional<Language> language() const;
  void setLanguage(std::optional<Language> language);

  [[nodiscard]] Appearance appearance() const;
  void setAppearance(Appearance appearance);

  // Nothing until the user has chosen; then the shop's own choice is no longer followed.
  [[nodiscard]] std::optional<UnitChoice> units() const;
  void setUnits(const UnitChoice& units);

  // Of the sheets; until chosen, what the language's country uses.
  [[nodiscard]] Paper paper() const;
  void setPaper(Paper paper);
  // Whether a kind of sheet, by its id, was ticked; nothing until the user has chosen.
  [[nodiscard]] std::optional<bool> sheetTicked(const std::string& kind) const;
  void setSheetTicked(const std::string& kind, bool ticked);
  [[nodiscard]] TemplateVariants templateVariants() const;
  void setTemplateVariants(const TemplateVariants& variants);
  // Whether the order summary shows the cost, where the shop has rates.
  [[nodiscard]] bool pricesOnSheets() const;
  void setPricesOnSheets(bool shown);

  // Orders, newest first, no path twice. Files that are gone stay listed: they may be on a drive
  // that is not plugged in.
  [[nodiscard]] QStringList recentOrders() const;
  void addRecentOrder(const QString& file);
  void clearRecentOrders();

  // Whether the guide to a first order was closed.
  [[nodiscard]] bool guided() const;
  void setGuided(bool guided);

  [[nodiscard]] QString lastShop() const;
  void setLastShop(const QString& file);

  [[nodiscard]] QByteArray windowGeometry() const;
  void setWindowGeometry(const QByteArray& geometry);
  // Of another window, by its object name.
  [[nodiscard]] QByteArray geometryOf(const QString& window) const;
  void setGeometryOf(const QString& window, const QByteArray& geometry);
  // Of a splitter, by its object name.
  [[nodiscard]] QByteArray splitterState(const QString& name) const;
  void setSplitterState(const QString& name, const QByteArray& state);

 private:
  QSettings store_;
};

}  // namespace creaseline::desk
