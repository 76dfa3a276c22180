// SPDX-License-Identifier: MIT
#include "desk/desk_actions.h"

#include <QLabel>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>

#include "desk/theme.h"

namespace creaseline::desk {

DeskActions::DeskActions(QMainWindow& window, QUndoStack& undoStack) : window_(window) {
  makeActions();
  makeEditing();
  makeOrders();
  makeChoices();
  makeAppearances();
  makeLanguages();
  makeMenus(undoStack);
  makeToolBar();
}

QAction* DeskActions::add(const QString& name, const QString& text, const QString& icon,
                          const QKeySequence& shortcut) {
  auto* action = new QAction(text, &window_);
  action->setObjectName(name);
  action->setShortcut(shortcut);
  if (!icon.isEmpty()) {
    action->setIcon(deskIcon(icon));
  }
  return action;
}

void DeskActions::makeActions() {
  const auto name = [](const char* text) { return QString::fromLatin1(text); };
  newOrder = add(name("newOrder"), tr("&New order"), name("new-order"), QKeySequence::New);
  save = add(name("saveOrder"), tr("Sav&e the order"), name("save-order"), QKeySequence::Save);
  saveAs = add(name("saveOrderAs"), tr("Save the order &as…"), {},
               QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
  openOrder = add(name("openOrder"), tr("&Open order…"), name("open-order"), QKeySequence::Open);
  openShop = add(name("openShop"), tr("Open &shop…"), name("open-shop"),
                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O));
  openDemo = add(name("openDemo"), tr("Open the &demo"), {}, {});
  reload = add(name("reload"), tr("&Reload the files"), name("reload"), QKeySequence::Refresh);
  saveSheets = add(name("saveSheets"), tr("Sa&ve sheets…"), name("save-sheets"),
                   QKeySequence(Qt::CTRL | Qt::Key_E));
  printSheets = add(name("printSheets"), tr("Pr&int sheets…"), name("print"), QKeySequence::Print);
  quit = add(name("quit"), tr("&Quit"), {}, QKeySequence::Quit);
  quit->setMenuRole(QAction::QuitRole);
  zoomIn = add(name("zoomIn"), tr("Zoom &in"), name("zoom-in"), QKeySequence::ZoomIn);
  // The plus of many keyboards needs Shift; the key itself shall do.
  zoomIn->setShortcuts(
      {QKeySequence(QKeySequence::ZoomIn), QKeySequence(Qt::CTRL | Qt::Key_Equal)});
  zoomOut = add(name("zoomOut"), tr("Zoom &out"), name("zoom-out"), QKeySequence::ZoomOut);
  fit = add(name("fit"), tr("&Fit the garment"), name("fit"), QKeySequence(Qt::CTRL | Qt::Key_0));
  const auto key = [](Qt::Key digit) { return QKeySequence(Qt::CTRL | digit); };
  goToOrder = add(name("goToOrder"), tr("Go to the o&rder"), {}, key(Qt::Key_1));
  goToTable = add(name("goToTable"), tr("Go to the &table"), {}, key(Qt::Key_2));
  goToSizes = add(name("goToSizes"), tr("Go to the &sizes"), {}, key(Qt::Key_3));
  goToDetails = add(name("goToDetails"), tr("Go to the &details"), {}, key(Qt::Key_6));
  goToReasons = add(name("goToReasons"), tr("Go to the r&easons"), {}, key(Qt::Key_4));
  goToFindings = add(name("goToFindings"), tr("Go to the fi&ndings"), {}, key(Qt::Key_5));
  showGuide = add(name("showGuide"), tr("&Guide to an order"), {}, {});
  showWords = add(name("showWords"), tr("&Words of the trade"), {}, QKeySequence::HelpContents);
  about = add(name("about"), tr("&About Creaseline"), {}, {});
  about->setMenuRole(QAction::AboutRole);
}

void DeskActions::makeEditing() {
  const auto name = [](const char* text) { return QString::fromLatin1(text); };
  addGarment = new QMenu(tr("Add a &garment"), &window_);
  addGarment->setObjectName(name("addGarment"));
  addPlace = new QMenu(tr("Add a &place"), &window_);
  addPlace->setObjectName(name("addPlace"));
  garments = add(name("editGarments"), tr("G&arments and size charts…"), {},
                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G));
  designs =
      add(name("editDesigns"), tr("De&signs…"), {}, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D));
  duplicate = add(name("duplicate"), tr("&Duplicate"), {}, QKeySequence(Qt::CTRL | Qt::Key_D));
  remove = add(name("remove"), tr("R&emove"), {}, QKeySequence(Qt::CTRL | Qt::Key_Backspace));
  moveUp =
      add(name("moveUp"), tr("&Further up"), {}, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Up));
  moveDown = add(name("moveDown"), tr("Further d&own"), {},
                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Down));
  byRule = add(name("byRule"), tr("Back to the ru&le"), {},
               QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R));
}

void DeskActions::makeOrders() {
  const auto name = [](const char* text) { return QString::fromLatin1(text); };
  newWindow = add(name("newWindow"), tr("Another windo&w"), {},
                  QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
  findOrder = add(name("findOrder"), tr("&Find an order…"), {}, QKeySequence::Find);
  duplicateOrder = add(name("duplicateOrder"), tr("Start a cop&y of the order"), {}, {});
  savePattern = add(name("savePattern"), tr("Save as a &pattern for orders…"), {}, {});
  showWork =
      add(name("showWork"), tr("Runs and m&aterials…"), {}, QKeySequence(Qt::CTRL | Qt::Key_M));
  copyPlan = add(name("copyPlan"), tr("&Copy the plan as text"), {},
                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C));
  exportPlan = add(name("exportPlan"), tr("E&xport the plan as JSON…"), {}, {});
  newShop = add(name("newShop"), tr("Descri&be a new shop"), {}, {});
  editShop = add(name("editShop"), tr("S&hop: frames, machines, stock…"), {},
                 QKeySequence(Qt::CTRL | Qt::Key_H));
}

QAction* DeskActions::choice(QActionGroup& group, const QString& name, const QString& text,
                             int data) {
  auto* action = group.addAction(text);
  action->setObjectName(name);
  action->setCheckable(true);
  action->setData(data);
  return action;
}

void DeskActions::makeChoices() {
  lengthUnits = new QActionGroup(&window_);
  const auto unit = [this](const char* name, const QString& text, const QString& toolTip,
                           LengthUnit value) {
    choice(*lengthUnits, QString::fromLatin1(name), text, static_cast<int>(value))
        ->setToolTip(toolTip);
  };
  unit("unitInch", tr("in"), tr("Show lengths in inches"), LengthUnit::Inch);
  unit("unitCentimetre", tr("cm"), tr("Show lengths in centimetres"), LengthUnit::Centimetre);
  unit("unitMillimetre", tr("mm"), tr("Show lengths in millimetres"), LengthUnit::Millimetre);
  rulerMarks = new QActionGroup(&window_);
  choice(*rulerMarks, QStringLiteral("markEighth"), tr("1/8"), static_cast<int>(RulerMark::Eighth))
      ->setToolTip(tr("Inches to an eighth"));
  choice(*rulerMarks, QStringLiteral("markSixteenth"), tr("1/16"),
         static_cast<int>(RulerMark::Sixteenth))
      ->setToolTip(tr("Inches to a sixteenth"));
}

void DeskActions::makeAppearances() {
  appearances = new QActionGroup(&window_);
  const auto look = [this](const char* name, const QString& text, Appearance value) {
    choice(*appearances, QString::fromLatin1(name), text, static_cast<int>(value));
  };
  look("appearanceSystem", tr("&As the system"), Appearance::System);
  look("appearanceLight", tr("&Light"), Appearance::Light);
  look("appearanceDark", tr("&Dark"), Appearance::Dark);
}

void DeskActions::makeLanguages() {
  languages = new QActionGroup(&window_);
  choice(*languages, QStringLiteral("languageSystem"), tr("&As the system"), kSystemLanguage);
  // Not translated: who does not read the language on show must find the own one.
  choice(*languages, QStringLiteral("languageEnglish"), QStringLiteral("&English"),
         static_cast<int>(Language::English));
  choice(*languages, QStringLiteral("languageSpanish"), QStringLiteral("E&spañol"),
         static_cast<int>(Language::Spanish));
}

void DeskActions::makeMenus(QUndoStack& undoStack) {
  QMenu* file = window_.menuBar()->addMenu(tr("&File"));
  file->addActions({newOrder, openOrder, findOrder, newWindow});
  recent = file->addMenu(tr("Re&cent orders"));
  recent->setObjectName(QStringLiteral("recentOrders"));
  file->addSeparator();
  file->addActions({newShop, openShop, openDemo});
  file->addSeparator();
  file->addActions({reload, save, saveAs, duplicateOrder, savePattern});
  file->addSeparator();
  file->addActions({saveSheets, printSheets, exportPlan});
  file->addSeparator();
  file->addAction(quit);

  undo_ = undoStack.createUndoAction(&window_, tr("&Undo"));
  undo_->setObjectName(QStringLiteral("undo"));
  undo_->setShortcuts(QKeySequence::Undo);
  undo_->setIcon(deskIcon(QStringLiteral("undo")));
  redo_ = undoStack.createRedoAction(&window_, tr("&Redo"));
  redo_->setObjectName(QStringLiteral("redo"));
  redo_->setShortcuts(QKeySequence::Redo);
  redo_->setIcon(deskIcon(QStringLiteral("redo")));
  // In the tool bar the step's name would make the button jump in width.
  undo_->setIconText(tr("Undo"));
  redo_->setIconText(tr("Redo"));
  QMenu* edit = window_.menuBar()->addMenu(tr("&Edit"));
  edit->addActions({undo_, redo_});
  edit->addSeparator();
  edit->addMenu(addGarment);
  edit->addMenu(addPlace);
  edit->addSeparator();
  edit->addActions({duplicate, remove, moveUp, moveDown, byRule});
  edit->addSeparator();
  edit->addActions({garments, designs, editShop});
  edit->addSeparator();
  edit->addAction(copyPlan);

  QMenu* view = window_.menuBar()->addMenu(tr("&View"));
  view->addActions({zoomIn, zoomOut, fit});
  view->addSeparator();
  compareSizes = new QMenu(tr("&Compare with size"), &window_);
  compareSizes->setObjectName(QStringLiteral("compareSizes"));
  view->addMenu(compareSizes);
  view->addAction(showWork);
  view->addSeparator();
  view->addMenu(tr("&Units"))->addActions(lengthUnits->actions());
  view->addMenu(tr("Ruler &mark"))->addActions(rulerMarks->actions());
  view->addMenu(tr("A&ppearance"))->addActions(appearances->actions());
  view->addMenu(tr("&Language"))->addActions(languages->actions());
  view->addSeparator();
  view->addActions({goToOrder, goToTable, goToSizes, goToReasons, goToFindings, goToDetails});
  window_.menuBar()->addMenu(tr("&Help"))->addActions({showGuide, showWords, about});
}

void DeskActions::makeToolBar() {
  QToolBar* bar = window_.addToolBar(tr("Tools"));
  bar->setObjectName(QStringLiteral("tools"));
  bar->setMovable(false);
  bar->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  bar->setIconSize({20, 20});
  newOrder->setIconText(tr("New"));
  openOrder->setIconText(tr("Order"));
  save->setIconText(tr("Save"));
  openShop->setIconText(tr("Shop"));
  saveSheets->setIconText(tr("Save sheets"));
  printSheets->setIconText(tr("Print"));
  bar->addActions({newOrder, openOrder, openShop, save});
  bar->addSeparator();
  bar->addActions({undo_, redo_});
  bar->addSeparator();
  bar->addActions({saveSheets, printSheets});
  auto* spacer = new QWidget(bar);
  spacer->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  bar->addWidget(spacer);
  bar->addWidget(new QLabel(tr("Units "), bar));
  bar->addActions(lengthUnits->actions());
  bar->addSeparator();
  bar->addWidget(new QLabel(tr("Ruler mark "), bar));
  bar->addActions(rulerMarks->actions());
  for (QAction* action : bar->actions()) {
    if (auto* button = qobject_cast<QToolButton*>(bar->widgetForAction(action))) {
      // The tool tip is a whole sentence where the label is only "in".
      button->setAccessibleName(action->toolTip().remove(QLatin1Char('&')));
      button->setFocusPolicy(Qt::TabFocus);
    }
  }
}

UnitChoice DeskActions::chosenUnits(UnitChoice base) const {
  if (const QAction* length = lengthUnits->checkedAction()) {
    base.length = static_cast<LengthUnit>(length->data().toInt());
  }
  if (const QAction* mark = rulerMarks->checkedAction()) {
    base.mark = static_cast<RulerMark>(mark->data().toInt());
  }
  return base;
}

Appearance DeskActions::chosenAppearance() const {
  const QAction* chosen = appearances->checkedAction();
  return chosen == nullptr ? Appearance::System : static_cast<Appearance>(chosen->data().toInt());
}

void DeskActions::showAppearance(Appearance appearance) {
  for (QAction* action : appearances->actions()) {
    action->setChecked(action->data().toInt() == static_cast<int>(appearance));
  }
}

std::optional<Language> DeskActions::chosenLanguage() const {
  const QAction* chosen = languages->checkedAction();
  if (chosen == nullptr || chosen->data().toInt() == kSystemLanguage) {
    return std::nullopt;
  }
  return static_cast<Language>(chosen->data().toInt());
}

void DeskActions::showLanguage(std::optional<Language> language) {
  const int shown = language ? static_cast<int>(*language) : kSystemLanguage;
  for (QAction* action : languages->actions()) {
    action->setChecked(action->data().toInt() == shown);
  }
}

void DeskActions::showUnits(const UnitChoice& units) {
  for (QAction* action : lengthUnits->actions()) {
    action->setChecked(action->data().toInt() == static_cast<int>(units.length));
  }
  for (QAction* action : rulerMarks->actions()) {
    action->setChecked(action->data().toInt() == static_cast<int>(units.mark));
  }
  rulerMarks->setEnabled(units.length == LengthUnit::Inch);
}

}  // namespace creaseline::desk
