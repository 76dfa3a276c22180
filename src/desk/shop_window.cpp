// SPDX-License-Identifier: MIT
#include "desk/shop_window.h"

#include <QAction>
#include <QCheckBox>
#include <QDir>
#include <QScrollArea>
#include <QVBoxLayout>
#include <map>
#include <utility>

#include "creaseline/catalogue/shop_check.h"
#include "desk/edit_commands.h"
#include "desk/message_bar.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr QSize kShopSize{900, 680};

}  // namespace

ShopWindow::ShopWindow(Document& document, std::shared_ptr<const Rules> rules, Settings& settings,
                       QWidget* parent)
    : SideWindow(QStringLiteral("shopWindow"), kShopSize, settings, parent),
      document_(document),
      rules_(std::move(rules)) {
  build();
  connect(&document_, &Document::shopEdited, this, &ShopWindow::showShop);
  connect(&document_, &Document::unitsChanged, this, &ShopWindow::showShop);
  connect(&document_, &Document::filesChanged, this, &ShopWindow::showState);
  connect(&document_, &Document::shopModifiedChanged, this, &ShopWindow::showState);
  connect(&document_, &Document::plannedChanged, this, &ShopWindow::showState);
  connect(&document_, &Document::busyChanged, this, &ShopWindow::showState);
  connect(&document_, &Document::problemChanged, this, &ShopWindow::showState);
  showShop();
}

ShopWindow::~ShopWindow() = default;

void ShopWindow::build() {
  auto* layout = new QVBoxLayout(this);
  auto* message = new MessageBar(this);
  message->setObjectName(QStringLiteral("shopMessage"));
  connect(&document_, &Document::shopReplaced, message, [this, message] {
    message->say(Severity::Watch, tr("Somebody else changed the shop, too"),
                 tr("What its file says counts now, not what you changed here."),
                 {{tr("&Bring mine back"), [this] { document_.undoStack().undo(); }}});
  });
  layout->addWidget(message);
  file_ = new QLabel(this);
  file_->setObjectName(QStringLiteral("shopFile"));
  file_->setTextFormat(Qt::PlainText);
  file_->setWordWrap(true);
  layout->addWidget(file_);
  tabs_ = new QTabWidget(this);
  tabs_->setObjectName(QStringLiteral("shopTabs"));
  tabs_->setAccessibleName(tr("Parts of the shop"));
  layout->addWidget(tabs_, 1);
  head_ = new ShopHeadForm;
  tabs_->addTab(scrolled(head_), tr("Shop"));
  addPage(ShopList::Frames, new FrameForm, tr("Frames"), tr("Frames of the shop"), {});
  addPage(ShopList::Machines, new MachineForm, tr("Machines"), tr("Machines of the shop"), {});
  backing_ = addPage(ShopList::Backings, new StockForm, tr("Backing"), tr("Backing in stock"),
                     tr("No backing is listed, so orders say what to buy."));
  addTopping();
  addPage(ShopList::Needles, new NeedleForm, tr("Needles"), tr("Needles in stock"),
          tr("No needle is listed, so nothing is said about needles in stock."));
  addPage(ShopList::MeasuredHoopings, new MeasuredHoopingForm, tr("Measured hoopings"),
          tr("Hoopings that were measured"),
          tr("Measure at the machine how far off each garment was hooped before you bring it true, "
             "and write it down here. With enough of them the room that a frame must leave follows "
             "from your own hands."));
  houseRules_ = addPage(
      ShopList::HouseRules, new HouseRuleForm, tr("House rules"), tr("Placement rules of the shop"),
      tr("A house rule says where this shop puts a design, in place of the shipped rule."));
  rates_ = new ShopRatesForm;
  tabs_->addTab(scrolled(rates_), tr("Rates"));
  effect_ = new QLabel(this);
  effect_->setObjectName(QStringLiteral("shopEffect"));
  effect_->setWordWrap(true);
  auto* bottom = new QHBoxLayout;
  bottom->addWidget(effect_, 1);
  const auto button = [&](const QString& text, const QString& name) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(name);
    made->setAutoDefault(false);
    bottom->addWidget(made);
    return made;
  };
  QPushButton* saveAs = button(tr("Save the shop as…"), QStringLiteral("saveShopAs"));
  connect(saveAs, &QPushButton::clicked, this, &ShopWindow::saveAsRequested);
  save_ = button(tr("Save the shop"), QStringLiteral("saveShop"));
  save_->setShortcut(QKeySequence::Save);
  connect(save_, &QPushButton::clicked, this, &ShopWindow::saveRequested);
  layout->addLayout(bottom);
  // The same steps as on the desk; a window has shortcuts of its own.
  for (const auto& [make, keys] : {std::pair(&QUndoStack::createUndoAction, QKeySequence::Undo),
                                   std::pair(&QUndoStack::createRedoAction, QKeySequence::Redo)}) {
    QAction* action = (document_.undoStack().*make)(this, QString());
    action->setShortcuts(keys);
    addAction(action);
  }
}

QWidget* ShopWindow::scrolled(ShopForm* form) {
  auto* area = new QScrollArea(tabs_);
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  area->setWidget(form);
  connect(form, &ShopForm::edited, this, &ShopWindow::edit);
  return area;
}

void ShopWindow::goTo(std::optional<CostField> field, const std::string& entry) {
  QString name = ShopRatesForm::fieldOf(field);
  QWidget* page = rates_;
  if (name.isEmpty()) {
    page = backing_;
    const auto shop = document_.shopInHand();
    for (std::size_t i = 0; shop && i < shop->backings.size(); ++i) {
      if (shop->backings[i].id.text() == entry) {
        backing_->choose(i);
        name = field == CostField::BackingPrice ? QStringLiteral("backingPrice")
                                                : QStringLiteral("backingWidth");
      }
    }
  }
  bringInFront(page);
  if (auto* edit = page->findChild<QLineEdit*>(name)) {
    edit->setFocus(Qt::OtherFocusReason);
    edit->selectAll();
  }
}

void ShopWindow::bringInFront(const QWidget* page) {
  for (int tab = 0; tab < tabs_->count(); ++tab) {
    if (tabs_->widget(tab) == page || tabs_->widget(tab)->isAncestorOf(page)) {
      tabs_->setCurrentIndex(tab);
    }
  }
}

void ShopWindow::goToHouseRule(std::size_t rule) {
  bringInFront(houseRules_);
  houseRules_->choose(rule);
  if (auto* list = houseRules_->findChild<QListWidget*>(QStringLiteral("entries"))) {
    list->setFocus(Qt::OtherFocusReason);
  }
}

void ShopWindow::goTo(ShopList list) {
  for (EntryPage* page : pages_) {
    if (page->list() == list) {
      bringInFront(page);
      // Where a fresh entry begins; the first that is there is not to be typed over by chance.
      if (auto* add = page->findChild<QPushButton*>(QStringLiteral("addEntry"))) {
        add->setFocus(Qt::OtherFocusReason);
      }
    }
  }
}

void ShopWindow::goToTopping() {
  if (auto* topping = findChild<QCheckBox*>(QStringLiteral("shopTopping"))) {
    bringInFront(topping);
    topping->setFocus(Qt::OtherFocusReason);
  }
}

// Those that the order on the desk should use, but does not.
void ShopWindow::showIdleRules() {
  std::map<std::size_t, QString> remarks;
  const auto shop = document_.shopInHand();
  const auto order = document_.orderInHand();
  if (shop && order) {
    for (const IdleHouseRule& idle : idleHouseRules(*order, *shop)) {
      remarks[idle.rule] = capitalised(toQString(idle.note.text));
    }
  }
  houseRules_->setRemarks(std::move(remarks));
}

EntryPage* ShopWindow::addPage(ShopList list, ShopForm* form, const QString& title,
                               const QString& words, const QString& empty) {
  auto* page = new EntryPage(list, form, words, empty, tabs_);
  connect(page, &EntryPage::edited, this, &ShopWindow::edit);
  pages_.push_back(page);
  tabs_->addTab(page, title);
  return page;
}

// Above the list of backing: what lies over the cloth is stock like what lies behind it.
void ShopWindow::addTopping() {
  auto* stock = new QWidget(tabs_);
  auto* layout = new QVBoxLayout(stock);
  layout->setContentsMargins(0, 0, 0, 0);
  const int at = tabs_->indexOf(backing_);
  const QString title = tabs_->tabText(at);
  topping_ = new ToppingForm(stock);
  connect(topping_, &ShopForm::edited, this, &ShopWindow::edit);
  tabs_->removeTab(at);
  layout->addWidget(topping_);
  layout->addWidget(backing_, 1);
  backing_->setVisible(true);
  tabs_->insertTab(at, stock, title);
}

void ShopWindow::edit(const ShopEdit& edit) {
  applyEdit(document_, edit);
}

void ShopWindow::showShop() {
  const auto shop = document_.shopInHand();
  tabs_->setEnabled(shop != nullptr);
  if (shop) {
    const ShownShop shown{shop, rules_, document_.units()};
    head_->show(shown);
    rates_->show(shown);
    topping_->show(shown);
    for (EntryPage* page : pages_) {
      page->show(shown);
    }
  }
  showState();
}

void ShopWindow::showState() {
  const auto shop = document_.shopInHand();
  showIdleRules();
  setWindowTitle(shop ? tr("%1[*] - Shop").arg(toQString(shop->name)) : tr("Shop[*]"));
  setWindowModified(document_.shopModified());
  file_->setText(document_.shopFile().isEmpty() ? tr("Not in a file yet")
                                                : QDir::toNativeSeparators(document_.shopFile()));
  save_->setEnabled(document_.shopModified());
  if (document_.problem()) {
    effect_->setText(tr("The order cannot be planned with this: %1")
                         .arg(toQString(document_.problem()->details.expected)));
    return;
  }
  const Plan* plan = document_.planned()->plan();
  if (plan == nullptr || document_.busy()) {
    effect_->setText(plan == nullptr ? tr("No order is open.") : tr("Planning the order…"));
    return;
  }
  effect_->setText(tr("The order with this shop: %1, %2")
                       .arg(tr("%n stop(s)", nullptr, plan->counts.stops),
                            tr("%n watch(es)", nullptr, plan->counts.watches)));
}

}  // namespace creaseline::desk
