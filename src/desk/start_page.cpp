// SPDX-License-Identifier: MIT
#include "desk/start_page.h"

#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <algorithm>
#include <optional>

#include "creaseline/catalogue/order_library.h"
#include "desk/form_parts.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kPageWidth = 620;
constexpr int kButtonsInARow = 3;

}  // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("startPage"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  auto* outer = new QHBoxLayout(this);
  auto* page = new QWidget(this);
  page->setMaximumWidth(kPageWidth);
  page->setMinimumWidth(420);
  outer->addStretch(1);
  outer->addWidget(page, 3);
  outer->addStretch(1);
  auto* layout = new QVBoxLayout(page);
  layout->setSpacing(14);
  layout->addStretch(2);
  auto* title = new QLabel(tr("Where does the design go?"), page);
  QFont large = title->font();
  large.setPointSizeF(large.pointSizeF() * 1.8);
  large.setBold(true);
  title->setFont(large);
  title->setWordWrap(true);
  auto* words = new QLabel(
      tr("Start or open an order to see for every garment, size and place where the design goes, "
         "which frame holds it and what goes behind it. Files can also be dropped here."),
      page);
  words->setWordWrap(true);
  layout->addWidget(title);
  layout->addWidget(words);
  // Two rows, so that longer words of other languages find room.
  auto* buttons = new QGridLayout;
  newOrder_ = new QPushButton(tr("&New order"), page);
  newOrder_->setObjectName(QStringLiteral("startNew"));
  newOrder_->setAccessibleName(tr("Start a new order"));
  openOrder_ = new QPushButton(tr("Open an &order…"), page);
  openOrder_->setDefault(true);
  openOrder_->setObjectName(QStringLiteral("startOrder"));
  openShop_ = new QPushButton(tr("Open a &shop…"), page);
  openShop_->setObjectName(QStringLiteral("startShop"));
  newShop_ = new QPushButton(tr("Ne&w shop"), page);
  newShop_->setObjectName(QStringLiteral("startNewShop"));
  newShop_->setAccessibleName(tr("Describe a shop: its frames, machines and stock"));
  openDemo_ = new QPushButton(tr("Open the &demo"), page);
  openDemo_->setObjectName(QStringLiteral("startDemo"));
  openOrder_->setAccessibleName(tr("Open an order from the start page"));
  openShop_->setAccessibleName(tr("Open a shop from the start page"));
  openDemo_->setAccessibleName(tr("Open the demo from the start page"));
  int at = 0;
  for (QPushButton* button : {newOrder_, openOrder_, openDemo_, newShop_, openShop_}) {
    button->setMinimumHeight(38);
    buttons->addWidget(button, at / kButtonsInARow, at % kButtonsInARow);
    ++at;
  }
  layout->addLayout(buttons);
  recent_ = new QWidget(page);
  recentLayout_ = new QVBoxLayout(recent_);
  recentLayout_->setContentsMargins(0, 10, 0, 0);
  recentLayout_->setSpacing(2);
  layout->addWidget(recent_);
  layout->addStretch(3);
  connect(newOrder_, &QPushButton::clicked, this, &StartPage::newOrderRequested);
  connect(openOrder_, &QPushButton::clicked, this, &StartPage::openOrderRequested);
  connect(openShop_, &QPushButton::clicked, this, &StartPage::openShopRequested);
  connect(newShop_, &QPushButton::clicked, this, &StartPage::newShopRequested);
  connect(openDemo_, &QPushButton::clicked, this, &StartPage::openDemoRequested);
}

void StartPage::showState(bool hasShop, bool demoAvailable, const QStringList& recent) {
  openShop_->setVisible(!hasShop);
  newShop_->setVisible(!hasShop);
  openDemo_->setEnabled(demoAvailable);
  openDemo_->setToolTip(demoAvailable ? QString() : tr("The demo is not installed here"));
  fillRecent(recent);
}

void StartPage::fillRecent(const QStringList& recent) {
  heads_.forget();
  recentButtons_.clear();
  while (QLayoutItem* item = recentLayout_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  recent_->setVisible(!recent.isEmpty());
  if (recent.isEmpty()) {
    return;
  }
  auto* heading = new QLabel(tr("Recent orders"), recent_);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  recentLayout_->addWidget(heading);
  for (const QString& file : recent) {
    // Words beside a picture stand at the left, in the colours of any appearance.
    auto* button = new QToolButton(recent_);
    button->setIcon(deskIcon(QStringLiteral("open-order")));
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setAutoRaise(true);
    button->setText(withoutMnemonic(fileLine(file)));
    button->setToolTip(QDir::toNativeSeparators(file));
    button->setAccessibleName(tr("Recent order %1").arg(QDir::toNativeSeparators(file)));
    recentLayout_->addWidget(button);
    // Queued: opening changes the list, and with it this very button.
    connect(
        button, &QToolButton::clicked, this, [this, file] { Q_EMIT openRecentRequested(file); },
        Qt::QueuedConnection);
    recentButtons_.emplace_back(file, button);
  }
  nameRecent();
}

// "regatta.order.json   in /orders"
QString StartPage::fileLine(const QString& file) const {
  const QFileInfo info(file);
  const QString folder = fontMetrics().elidedText(QDir::toNativeSeparators(info.absolutePath()),
                                                  Qt::ElideMiddle, kPageWidth / 2);
  return tr("%1   in %2", "file, folder").arg(info.fileName(), folder);
}

// Number, title and customer of each order come above its file as soon as they are read.
void StartPage::nameRecent() {
  std::vector<QString> files;
  for (const auto& recent : recentButtons_) {
    files.push_back(recent.first);
  }
  heads_.start(
      [files] {
        std::vector<std::optional<OrderHead>> heads;
        for (const QString& file : files) {
          heads.push_back(readOrderHead(toPath(file)));
        }
        return heads;
      },
      [this](const std::vector<std::optional<OrderHead>>& heads) {
        for (std::size_t i = 0; i < std::min(heads.size(), recentButtons_.size()); ++i) {
          if (!heads[i]) {
            continue;
          }
          const auto& [file, button] = recentButtons_[i];
          QStringList words;
          for (const std::string& each : {heads[i]->id, heads[i]->title, heads[i]->customer}) {
            if (!each.empty()) {
              words.append(toQString(each));
            }
          }
          const QString order = words.join(QStringLiteral(", "));
          button->setText(
              withoutMnemonic(fontMetrics().elidedText(order, Qt::ElideRight, kPageWidth - 40) +
                              QLatin1Char('\n') + fileLine(file)));
          button->setAccessibleName(tr("Recent order %1, %2", "number, title and customer; file")
                                        .arg(order, QDir::toNativeSeparators(file)));
          button->setToolTip(order + QLatin1Char('\n') + QDir::toNativeSeparators(file));
        }
      });
}

}  // namespace creaseline::desk
