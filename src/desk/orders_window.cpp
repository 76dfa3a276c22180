// SPDX-License-Identifier: MIT
#include "desk/orders_window.h"

#include <QDir>
#include <QFileDialog>
#include <QHeaderView>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <utility>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr QSize kOrdersSize{820, 480};
constexpr int kTypingMs = 150;

}  // namespace

OrdersWindow::OrdersWindow(Settings& settings, QWidget* parent)
    : SideWindow(QStringLiteral("ordersWindow"), kOrdersSize, settings, parent) {
  setWindowTitle(tr("Find an order"));
  typing_.setSingleShot(true);
  typing_.setInterval(kTypingMs);
  connect(&typing_, &QTimer::timeout, this, &OrdersWindow::search);
  build();
}

OrdersWindow::~OrdersWindow() = default;

void OrdersWindow::build() {
  auto* layout = new QVBoxLayout(this);
  auto* top = new QHBoxLayout;
  folderLabel_ = new QLabel(this);
  folderLabel_->setObjectName(QStringLiteral("ordersFolder"));
  folderLabel_->setTextFormat(Qt::PlainText);
  auto* folder = new QPushButton(tr("&Folder…"), this);
  folder->setObjectName(QStringLiteral("ordersChooseFolder"));
  folder->setAccessibleName(tr("Choose the folder in which orders are looked for"));
  folder->setAutoDefault(false);
  connect(folder, &QPushButton::clicked, this, [this] {
    const QString chosen = QFileDialog::getExistingDirectory(this, tr("Look in"), folder_);
    if (!chosen.isEmpty()) {
      lookIn(chosen);
    }
  });
  top->addWidget(folderLabel_, 1);
  top->addWidget(folder);
  layout->addLayout(top);
  words_ = new QLineEdit(this);
  words_->setObjectName(QStringLiteral("ordersWords"));
  words_->setAccessibleName(tr("Words of the number, title, customer or garment"));
  words_->setPlaceholderText(tr("Words of the number, title, customer or garment"));
  words_->setClearButtonEnabled(true);
  words_->installEventFilter(this);
  connect(words_, &QLineEdit::textChanged, &typing_, qOverload<>(&QTimer::start));
  layout->addWidget(words_);
  table_ = new QTableView(this);
  table_->setObjectName(QStringLiteral("ordersTable"));
  table_->setAccessibleName(tr("Orders found"));
  table_->setModel(&model_);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setTabKeyNavigation(false);
  table_->setShowGrid(false);
  table_->setWordWrap(false);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setStretchLastSection(false);
  table_->horizontalHeader()->setSectionResizeMode(OrderListModel::Garments, QHeaderView::Stretch);
  table_->installEventFilter(this);
  connect(table_, &QTableView::doubleClicked, this, [this] { choose(Use::Open); });
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          &OrdersWindow::updateEnabled);
  layout->addWidget(table_, 1);
  said_ = new QLabel(this);
  said_->setObjectName(QStringLiteral("ordersSaid"));
  said_->setWordWrap(true);
  layout->addWidget(said_);
  auto* buttons = new QHBoxLayout;
  buttons->addStretch(1);
  const auto button = [&](const QString& text, const QString& name, Use use, const QString& tip) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(name);
    made->setToolTip(tip);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, [this, use] { choose(use); });
    buttons->addWidget(made);
    uses_.append(made);
  };
  button(tr("Use as a &pattern"), QStringLiteral("ordersPattern"), Use::Pattern,
         tr("Start an order with its garments and places, without quantities"));
  button(tr("Start a &copy"), QStringLiteral("ordersCopy"), Use::Copy,
         tr("Start an order that is like it, under a new number"));
  button(tr("Open in a &new window"), QStringLiteral("ordersNewWindow"), Use::OpenInNewWindow, {});
  button(tr("&Open"), QStringLiteral("ordersOpen"), Use::Open, {});
  layout->addLayout(buttons);
  updateEnabled();
}

void OrdersWindow::lookIn(const QString& folder) {
  folder_ = folder;
  folderLabel_->setText(tr("Orders in %1").arg(QDir::toNativeSeparators(folder_)));
  search();
}

void OrdersWindow::search() {
  typing_.stop();
  said_->setText(tr("Looking…"));
  search_.start([folder = toPath(folder_),
                 words = toUtf8(words_->text())] { return findOrders(folder, words); },
                [this](const FoundOrders& found) { take(found); });
}

void OrdersWindow::take(const FoundOrders& found) {
  model_.setOrders(found.orders);
  for (int column = 0; column < model_.columnCount(); ++column) {
    if (column != OrderListModel::Garments) {
      table_->resizeColumnToContents(column);
    }
  }
  if (!found.orders.empty()) {
    table_->setCurrentIndex(model_.index(0, 0));
  }
  QString text = tr("%n order(s)", nullptr, static_cast<int>(found.orders.size()));
  if (!found.notes.empty()) {
    const LoadNote& first = found.notes.front();
    text += tr("; %n file(s) cannot be read", nullptr, static_cast<int>(found.notes.size())) +
            QStringLiteral(": %1, %2").arg(toQString(first.file), toQString(first.text));
  }
  said_->setText(text);
  updateEnabled();
}

void OrdersWindow::choose(Use use) {
  const QModelIndex current = table_->currentIndex();
  if (current.isValid()) {
    const std::filesystem::path file = model_.order(current.row()).file;
    close();
    Q_EMIT chosen(file, use);
  }
}

void OrdersWindow::updateEnabled() {
  for (QPushButton* button : uses_) {
    button->setEnabled(table_->currentIndex().isValid());
  }
}

void OrdersWindow::showEvent(QShowEvent* event) {
  SideWindow::showEvent(event);
  words_->setFocus();
  words_->selectAll();
}

// While one types, the arrows go along the list and Enter opens, as from the list itself.
bool OrdersWindow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
      choose(key->modifiers() & Qt::ControlModifier ? Use::OpenInNewWindow : Use::Open);
      return true;
    }
    const bool down = key->key() == Qt::Key_Down;
    if (watched == words_ && (down || key->key() == Qt::Key_Up)) {
      const int row = table_->currentIndex().row() + (down ? 1 : -1);
      if (row >= 0 && row < model_.rowCount()) {
        table_->setCurrentIndex(model_.index(row, 0));
      }
      return true;
    }
  }
  return SideWindow::eventFilter(watched, event);
}

}  // namespace creaseline::desk
