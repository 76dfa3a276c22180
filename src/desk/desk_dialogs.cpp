// SPDX-License-Identifier: MIT
// What the window asks and is asked: files to open, whether changes may go, the language.
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QMessageBox>

#include "desk/desk_parts.h"
#include "desk/text.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

namespace {

constexpr qint64 kProbeBytes = 4096;

// By the name's ending; a file with a name of its own is told by the format that it states.
bool isShop(const QString& file) {
  if (file.endsWith(QStringLiteral(".shop.json"), Qt::CaseInsensitive)) {
    return true;
  }
  if (file.endsWith(QStringLiteral(".order.json"), Qt::CaseInsensitive)) {
    return false;
  }
  QFile content(file);
  return content.open(QIODevice::ReadOnly) &&
         content.read(kProbeBytes).contains("\"creaseline-shop\"");
}

}  // namespace

void DeskWindow::Parts::openFile(const std::filesystem::path& file) {
  if (isShop(pathText(file))) {
    openShop(file);
  } else {
    openOrder(file);
  }
}

// Whether to save; nothing: neither, stay. `name`: object name.
std::optional<bool> DeskWindow::Parts::askWhetherToSave(const QString& name,
                                                        const QString& question) {
  QMessageBox box(QMessageBox::Question, tr("Changes not saved"), question, QMessageBox::NoButton,
                  &window_);
  box.setObjectName(name);
  QPushButton* save = box.addButton(tr("&Save"), QMessageBox::AcceptRole);
  QAbstractButton* drop = box.addButton(tr("&Do not save"), QMessageBox::DestructiveRole);
  QPushButton* stay = box.addButton(tr("Stay &here"), QMessageBox::RejectRole);
  box.setDefaultButton(save);
  box.setEscapeButton(stay);
  box.exec();
  return box.clickedButton() == save   ? std::optional(true)
         : box.clickedButton() == drop ? std::optional(false)
                                       : std::nullopt;
}

// A new order in which nothing has been entered: only its number is there.
bool DeskWindow::Parts::orderIsUntouched() const {
  const auto order = document_.orderInHand();
  Order fresh;
  fresh.id = order->id;
  return document_.orderFile().isEmpty() && *order == fresh;
}

bool DeskWindow::Parts::mayLeaveOrder() {
  finishTyping();
  document_.finishSaving();
  if (!document_.modified() || orderIsUntouched()) {
    return true;
  }
  const auto save = askWhetherToSave(QStringLiteral("leaveOrder"),
                                     tr("The order has changes that are not saved. Save them?"));
  return save && (!*save || saveOrder(Wait::ForDisk));
}

void DeskWindow::Parts::askForOrder() {
  const QString folder = QFileInfo(document_.orderFile()).absolutePath();
  const QString file =
      QFileDialog::getOpenFileName(&window_, tr("Open an order"), folder,
                                   tr("Orders (*.order.json);;JSON files (*.json);;All files (*)"));
  if (!file.isEmpty()) {
    openOrder(toPath(file));
  }
}

void DeskWindow::Parts::askForShop() {
  const QString beside =
      document_.shopFile().isEmpty() ? document_.orderFile() : document_.shopFile();
  const QString file =
      QFileDialog::getOpenFileName(&window_, tr("Open a shop"), QFileInfo(beside).absolutePath(),
                                   tr("Shops (*.shop.json);;JSON files (*.json);;All files (*)"));
  if (!file.isEmpty()) {
    openShop(toPath(file));
  }
}

std::optional<std::pair<std::filesystem::path, std::filesystem::path>> DeskWindow::Parts::demo()
    const {
  for (const auto& folder : {resources_ / "demo", resources_.parent_path() / "demo"}) {
    const QDir dir(pathText(folder));
    const QStringList orders = dir.entryList({QStringLiteral("*.order.json")}, QDir::Files);
    const QStringList shops = dir.entryList({QStringLiteral("*.shop.json")}, QDir::Files);
    if (!orders.isEmpty() && !shops.isEmpty()) {
      return std::pair(toPath(dir.absoluteFilePath(orders.first())),
                       toPath(dir.absoluteFilePath(shops.first())));
    }
  }
  return std::nullopt;
}

void DeskWindow::Parts::openDemo() {
  if (const auto files = demo(); files && mayLeave()) {
    document_.openShop(files->second);
    document_.openOrder(files->first);
  }
}

void DeskWindow::Parts::showWork() {
  if (workWindow_ == nullptr) {
    workWindow_ = new WorkWindow(settings_, &window_);
    workWindow_->setPlanned(document_.planned());
    QObject::connect(workWindow_, &WorkWindow::fieldAsked, &window_,
                     [this](std::optional<CostField> field, const std::string& entry) {
                       showCostField(field, entry);
                     });
  }
  workWindow_->present();
}

void DeskWindow::Parts::showCostField(std::optional<CostField> field, const std::string& entry) {
  if (field == CostField::BlankPrice) {
    library_.showPriceOf(entry);
    return;
  }
  if (field == CostField::Held || field == CostField::Beyond) {
    window_.raise();
    window_.activateWindow();
    actions_.goToFindings->trigger();
    return;
  }
  if (ShopWindow* shop = showShop()) {
    shop->goTo(field, entry);
  }
}

// Without them the desk works as well; it only explains less.
bool DeskWindow::Parts::loadWords() {
  try {
    if (words_.empty()) {
      words_ = loadTradeWords(resources_);
    }
  } catch (const InputError& error) {
    messageBar_->say(Severity::Note, tr("The words of the trade cannot be shown"),
                     toQString(error.what()));
  }
  actions_.showWords->setEnabled(!words_.empty());
  return !words_.empty();
}

void DeskWindow::Parts::showWords(std::size_t word) {
  if (!loadWords()) {
    return;
  }
  if (wordsWindow_ == nullptr) {
    wordsWindow_ = new WordsWindow(words_, settings_, &window_);
  }
  wordsWindow_->present();
  wordsWindow_->choose(word);
}

void DeskWindow::Parts::showAbout() {
  QMessageBox::about(
      &window_, tr("About Creaseline"),
      tr("<b>Creaseline</b><p>Plans garment embroidery: where each design goes on every garment "
         "and size, which frame holds it there, what goes behind it, and what has to be known "
         "before the first garment is hooped.</p><p>Free software under the MIT licence.</p>"));
}

void DeskWindow::Parts::chooseLanguage(std::optional<Language> language) {
  settings_.setLanguage(language);
  // Texts are made in many places and once; a new start makes them all.
  messageBar_->say(
      Severity::Note,
      tr("From its next start on the desk speaks %1", "language")
          .arg(ownName(spoken(language, QLocale::system().uiLanguages()))),
      tr("The window stays as it is until then. The plan and the sheets will speak it as well; "
         "files stay as they are."));
}

}  // namespace creaseline
