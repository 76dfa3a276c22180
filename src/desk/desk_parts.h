// SPDX-License-Identifier: MIT
// The inside of the window: settings, document, selection, views, and how they are wired.
#pragma once

#include <QCoreApplication>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <functional>

#include "creaseline/desk/desk_language.h"
#include "creaseline/desk/desk_window.h"
#include "desk/conflicts_window.h"
#include "desk/desk_actions.h"
#include "desk/desk_library.h"
#include "desk/details_panel.h"
#include "desk/document.h"
#include "desk/findings_panel.h"
#include "desk/message_bar.h"
#include "desk/missing_panel.h"
#include "desk/order_guide.h"
#include "desk/order_model.h"
#include "desk/order_view.h"
#include "desk/orders_window.h"
#include "desk/reasons_view.h"
#include "desk/recovery.h"
#include "desk/selection.h"
#include "desk/settings.h"
#include "desk/sheet_output.h"
#include "desk/sheets_dialog.h"
#include "desk/shop_window.h"
#include "desk/size_model.h"
#include "desk/size_rail.h"
#include "desk/start_page.h"
#include "desk/table_panel.h"
#include "desk/words_window.h"
#include "desk/work_window.h"

namespace creaseline {

class DeskWindow::Parts {
  Q_DECLARE_TR_FUNCTIONS(creaseline::DeskWindow)

 public:
  Parts(DeskWindow& window, const DeskRules& rules, const std::filesystem::path& resources,
        const QString& settingsFile);
  // These windows look at settings and plan, so they go first.
  ~Parts() {
    delete sheetsDialog_;
    delete shopWindow_;
    delete ordersWindow_;
    delete workWindow_;
    delete wordsWindow_;
  }
  Parts(const Parts&) = delete;
  Parts& operator=(const Parts&) = delete;

  void openOrder(const std::filesystem::path& file);
  void openShop(const std::filesystem::path& file);
  void openFile(const std::filesystem::path& file);
  [[nodiscard]] bool orderIsUntouched() const;
  // True if no change would be lost, or the user lets it go: of the order, or of the shop, too.
  bool mayLeaveOrder();
  bool mayLeave() { return mayLeaveOrder() && mayLeaveShop(); }
  void keepWindowPlace();
  void refreshColours();
  // To be called when the window is shown: what it does not need to be usable comes a moment later.
  void finishLater();

 private:
  // Layout, in desk_layout.cpp.
  void build();
  void needWorkspace();
  QWidget* buildWorkspace();
  QWidget* buildOrderPane();
  QWidget* buildEditStrip(QWidget* parent);
  QWidget* buildSizes(QWidget* parent);
  void fillSizes();
  QWidget* buildReasons(QWidget* parent);
  void buildStatusBar();
  QWidget* pane(const QString& heading, QWidget* content, QWidget* parent);
  void restoreWindowPlace();

  // Wiring, in desk_parts.cpp.
  void connectActions();
  void connectStartPage();
  void connectWorkspace();
  void connectDocument();
  void showPlanned();
  void showSelection();
  [[nodiscard]] bool atWork() const;
  void showPage();
  void showTitle();
  void showCounts();
  void showProblem();
  void showNotes();
  void showBusy();
  void updateEnabled();
  void fillRecent();
  void jumpTo(const Finding& finding);
  void tryRemedy(const Finding& finding, const Remedy& remedy);

  // Changes of the order, in desk_editing.cpp.
  void connectEditing();
  void connectForms();
  void updateEditing();
  void fillAddMenus();
  bool edit(const desk::OrderEdit& edit);
  void addGarment(const Blank& blank);
  void addGarmentFromFile();
  void addPlace(const Design& design);
  void addDesignFromFile();
  void addToMenu(QMenu& menu, const QString& words, const std::function<void()>& run);
  [[nodiscard]] std::optional<desk::OrderEdits> edits() const;

  // Files of orders, in desk_files.cpp.
  void connectFiles();
  void startOrder();
  void finishTyping();  // what is typed in a field counts before the order is left or saved
  // Whether saving returns when it has begun, and says later what came of it, or only when it is
  // known that nothing would be lost.
  enum class Wait { No, ForDisk };
  // False if the user thinks better of it, or it is known to have failed.
  bool saveOrder(Wait wait);
  bool saveOrderAs(Wait wait);
  [[nodiscard]] bool fileGone() const;  // the order's; where to, has to be asked again
  bool begun(Wait wait);
  enum class Saveable { Order, Shop };
  void told(Saveable what, desk::SaveResult result);
  std::optional<bool> askWhetherToSave(const QString& name, const QString& question);
  void offerLeftWork();
  void takeUp(const desk::LeftWork& work);
  void showMerged();
  void decideConflicts();

  // Orders beside the open one, in desk_orders.cpp.
  void connectOrders();
  void findOrder();
  void useOrder(const std::filesystem::path& file, desk::OrdersWindow::Use use);
  void duplicateOrder();
  DeskWindow& newWindow();
  void openNewWindow();
  void savePattern();
  void copyPlan();
  void exportPlan();
  [[nodiscard]] std::string nextNumber(const std::string& last, const QString& folder) const;
  [[nodiscard]] QString orderFolder() const;
  [[nodiscard]] QString proposed(const QString& fileName) const;
  QString askWhereToSave(const QString& title, const QString& fileName, const QString& filter,
                         const QString& ending);

  // What the actions do, in desk_dialogs.cpp.
  void askForOrder();
  void askForShop();
  void openDemo();
  void showWork();
  void showCostField(std::optional<CostField> field, const std::string& entry);
  bool loadWords();
  void showWords(std::size_t word);
  void showAbout();
  void chooseLanguage(std::optional<desk::Language> language);
  [[nodiscard]] std::optional<std::pair<std::filesystem::path, std::filesystem::path>> demo() const;

  // The guide to a first order, in desk_guide.cpp.
  void connectGuide();
  void updateGuide();
  void goToStep(desk::OrderGuide::Step step);
  void fillIn(desk::MissingPanel::Way way);

  // The shop and its window, in desk_shop.cpp.
  void connectShop();
  // Its window; null where no shop is open.
  desk::ShopWindow* showShop();
  void showFrames();
  void leadTo(const Finding& finding, const ShopChange& change);
  void startShop();
  bool mayLeaveShop();
  bool saveShop(Wait wait);
  bool saveShopAs(Wait wait);

  // The way to paper, in desk_sheets.cpp.
  void connectOutput();
  void showSheets(desk::SheetsDialog::Purpose purpose);
  [[nodiscard]] QString proposedSheets() const;
  void askToSavePdf();
  void askToSavePictures();
  bool mayReplacePictures(const QString& folder);
  void askToPrint();
  bool mayPrint(const QPrinter& printer, Paper paper);
  void leaveSheets();
  void showPrinted(int pages);

  DeskWindow& window_;
  std::filesystem::path resources_;
  desk::Settings settings_;
  DeskLanguage language_;  // before all that has texts
  DeskRules rules_;
  desk::Document document_;
  desk::Selection selection_;
  desk::OrderModel orderModel_;
  desk::SizeModel sizeModel_;
  desk::SheetOutput output_;
  desk::DeskActions actions_;
  desk::Recovery recovery_;
  desk::DeskLibrary library_;

  // Made when they are first asked for.
  desk::SheetsDialog* sheetsDialog_ = nullptr;
  desk::ShopWindow* shopWindow_ = nullptr;
  desk::OrdersWindow* ordersWindow_ = nullptr;
  desk::ConflictsWindow* conflictsWindow_ = nullptr;
  desk::WorkWindow* workWindow_ = nullptr;
  desk::WordsWindow* wordsWindow_ = nullptr;
  std::vector<TradeWord> words_;
  desk::MessageBar* messageBar_ = nullptr;
  QStackedWidget* pages_ = nullptr;
  desk::StartPage* startPage_ = nullptr;
  // Made with the first order, like all in it: before that the start page is all that is needed.
  QWidget* workspace_ = nullptr;
  QList<QSplitter*> splitters_;
  QLabel* orderTitle_ = nullptr;
  QLabel* orderDetail_ = nullptr;
  desk::OrderGuide* guide_ = nullptr;
  bool guideAsked_ = false;
  desk::OrderView* orderView_ = nullptr;
  desk::DetailsPanel* details_ = nullptr;
  desk::TablePanel* tablePanel_ = nullptr;
  desk::SizeRail* sizeRail_ = nullptr;
  desk::MissingPanel* missing_ = nullptr;
  desk::ReasonsView* reasonsView_ = nullptr;
  desk::FindingsPanel* findingsPanel_ = nullptr;
  QLabel* counts_ = nullptr;
  QLabel* activity_ = nullptr;
  QProgressBar* progress_ = nullptr;
  QPushButton* cancel_ = nullptr;
  QTimer busyDelay_;  // a bar that flashes for 50 ms says nothing
};

}  // namespace creaseline
