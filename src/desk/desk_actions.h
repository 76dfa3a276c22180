// SPDX-License-Identifier: MIT
// Every action of the window with its menu, tool bar and shortcut. What they do is connected by
// the window.
#pragma once

#include <QAction>
#include <QActionGroup>
#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QUndoStack>
#include <optional>

#include "creaseline/base/units.h"
#include "desk/appearance.h"
#include "desk/language.h"

namespace creaseline::desk {

class DeskActions {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::DeskActions)

 public:
  // Builds menus and tool bar into the window, which owns them.
  DeskActions(QMainWindow& window, QUndoStack& undoStack);

  QAction* newOrder = nullptr;
  QAction* openOrder = nullptr;
  QAction* openShop = nullptr;
  QAction* openDemo = nullptr;
  QAction* newWindow = nullptr;
  QAction* findOrder = nullptr;
  QAction* duplicateOrder = nullptr;
  QAction* savePattern = nullptr;
  QAction* showWork = nullptr;
  QAction* copyPlan = nullptr;
  QAction* exportPlan = nullptr;
  QAction* newShop = nullptr;
  QAction* editShop = nullptr;
  QMenu* recent = nullptr;
  QAction* reload = nullptr;
  QAction* save = nullptr;
  QAction* saveAs = nullptr;
  QAction* saveSheets = nullptr;
  QAction* printSheets = nullptr;
  QAction* quit = nullptr;
  QMenu* compareSizes = nullptr;  // the other sizes of the place, to lay one over the one shown
  QMenu* addGarment = nullptr;    // the order's blanks, and one from a file
  QMenu* addPlace = nullptr;      // the order's designs, and one from a file
  QAction* garments = nullptr;
  QAction* designs = nullptr;
  QAction* duplicate = nullptr;
  QAction* remove = nullptr;
  QAction* moveUp = nullptr;
  QAction* moveDown = nullptr;
  QAction* byRule = nullptr;  // neither moved nor turned
  QAction* zoomIn = nullptr;
  QAction* zoomOut = nullptr;
  QAction* fit = nullptr;
  QAction* goToOrder = nullptr;
  QAction* goToTable = nullptr;
  QAction* goToSizes = nullptr;
  QAction* goToDetails = nullptr;
  QAction* goToReasons = nullptr;
  QAction* goToFindings = nullptr;
  QAction* showGuide = nullptr;
  QAction* showWords = nullptr;
  QAction* about = nullptr;
  QActionGroup* lengthUnits = nullptr;  // data: LengthUnit as int
  QActionGroup* rulerMarks = nullptr;   // data: RulerMark as int

  QActionGroup* appearances = nullptr;  // data: Appearance as int
  QActionGroup* languages = nullptr;    // data: Language as int, kSystemLanguage

  [[nodiscard]] UnitChoice chosenUnits(UnitChoice base) const;
  void showUnits(const UnitChoice& units);
  // Nothing stands for the system's.
  [[nodiscard]] std::optional<Language> chosenLanguage() const;
  [[nodiscard]] Appearance chosenAppearance() const;
  void showAppearance(Appearance appearance);
  void showLanguage(std::optional<Language> language);

 private:
  static constexpr int kSystemLanguage = -1;

  QAction* add(const QString& name, const QString& text, const QString& icon,
               const QKeySequence& shortcut);
  QAction* choice(QActionGroup& group, const QString& name, const QString& text, int data);
  void makeActions();
  void makeEditing();
  void makeOrders();
  void makeChoices();
  void makeAppearances();
  void makeLanguages();
  void makeMenus(QUndoStack& undoStack);
  void makeToolBar();

  QMainWindow& window_;
  QAction* undo_ = nullptr;
  QAction* redo_ = nullptr;
};

}  // namespace creaseline::desk
