// SPDX-License-Identifier: MIT
#include "desk/library_window.h"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QScrollArea>
#include <QShortcut>
#include <QShowEvent>
#include <utility>

#include "desk/edit_commands.h"
#include "desk/file_questions.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr QSize kLibrarySize{1180, 800};
constexpr int kListCharacters = 32;
constexpr int kLibraryRowRoom = 8;

}  // namespace

LibraryWindow::LibraryWindow(const QString& name, Words words, Settings& settings,
                             Document& document, QWidget* parent)
    : SideWindow(name, kLibrarySize, settings, parent),
      name_(name),
      words_(std::move(words)),
      document_(document) {
  setWindowTitle(QString(words_.title).remove(QLatin1Char('&')));
  message_ = new MessageBar(this);
  message_->setObjectName(name_ + QStringLiteral("Message"));
  splitter_ = new QSplitter(this);
  splitter_->setObjectName(name_ + QStringLiteral("Splitter"));
  splitter_->setChildrenCollapsible(false);
  splitter_->addWidget(buildList());
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(message_);
  layout->addWidget(splitter_, 1);
  connect(&document_, &Document::plannedChanged, this, &LibraryWindow::refresh);
  const auto onKeys = [this](const QKeySequence& keys, auto run) {
    connect(new QShortcut(keys, this), &QShortcut::activated, this, run);
  };
  // The menu of the main window is out of reach of the keys here.
  onKeys(QKeySequence::Undo, [this] { document_.undoStack().undo(); });
  onKeys(QKeySequence::Redo, [this] { document_.undoStack().redo(); });
  onKeys(QKeySequence::Save, [this] {
    finishTyping();
    Q_EMIT saveAsked();
  });
}

QPushButton* LibraryWindow::button(const QString& name, const QString& text, const QString& words) {
  auto* made = new QPushButton(text, this);
  made->setObjectName(name_ + name);
  made->setToolTip(words);
  made->setAccessibleDescription(words);
  made->setAutoDefault(false);  // Enter belongs to the field that is typed in
  return made;
}

QWidget* LibraryWindow::buildList() {
  auto* column = new QWidget(this);
  auto* heading = new QLabel(words_.title, column);
  list_ = new QListWidget(column);
  list_->setObjectName(name_ + QStringLiteral("List"));
  list_->setAccessibleName(windowTitle());
  list_->setUniformItemSizes(true);
  list_->setMinimumWidth(fontMetrics().averageCharWidth() * kListCharacters);
  heading->setBuddy(list_);
  add_ = button(QStringLiteral("Add"), tr("&Add"), tr("New, or from a file"));
  auto* menu = new QMenu(add_);
  menu->setObjectName(name_ + QStringLiteral("AddMenu"));
  connect(menu->addAction(words_.fresh), &QAction::triggered, this, [this] { addFresh(); });
  connect(menu->addAction(words_.fromFile), &QAction::triggered, this, [this] { addFromFile(); });
  add_->setMenu(menu);
  duplicate_ = button(QStringLiteral("Duplicate"), tr("&Duplicate"), words_.duplicate);
  remove_ = button(QStringLiteral("Remove"), tr("&Remove"), words_.remove);
  ownFile_ = button(QStringLiteral("OwnFile"), tr("Save to a &file of its own…"),
                    tr("So that other orders can use it as well"));
  const auto onEntry = [this](QPushButton* made, void (LibraryWindow::*what)(std::size_t)) {
    connect(made, &QPushButton::clicked, this, [this, what] {
      if (entry() >= 0) {
        (this->*what)(static_cast<std::size_t>(entry()));
      }
    });
  };
  onEntry(duplicate_, &LibraryWindow::duplicateEntry);
  onEntry(remove_, &LibraryWindow::removeEntry);
  onEntry(ownFile_, &LibraryWindow::saveEntry);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0 && !refreshing_) {
      message_->hide();
      showEntry(static_cast<std::size_t>(row));
    }
  });
  auto* row = new QHBoxLayout;
  row->setSpacing(4);
  row->addWidget(add_);
  row->addWidget(duplicate_);
  row->addWidget(remove_);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 6, 0);
  layout->addWidget(heading);
  layout->addWidget(list_, 1);
  layout->addLayout(row);
  layout->addWidget(ownFile_);
  return column;
}

void LibraryWindow::setForm(QWidget* form) {
  form_ = form;
  // With large letters on a small screen the form scrolls before anything of it is out of reach.
  auto* area = new QScrollArea(this);
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  auto* right = new QWidget(area);
  area->setWidget(right);
  auto* layout = new QVBoxLayout(right);
  layout->setContentsMargins(6, 0, 0, 0);
  nothing_ = new QLabel(words_.nothing, right);
  nothing_->setObjectName(name_ + QStringLiteral("Nothing"));
  nothing_->setWordWrap(true);
  nothing_->setAlignment(Qt::AlignCenter);
  layout->addWidget(nothing_, 1);
  layout->addWidget(form_, 1);
  splitter_->addWidget(area);
  splitter_->setStretchFactor(0, 0);
  splitter_->setStretchFactor(1, 1);
  splitter_->restoreState(settings().splitterState(splitter_->objectName()));
}

void LibraryWindow::chooseEntry(int row) {
  list_->setCurrentRow(row);
}

bool LibraryWindow::edit(const OrderEdit& asked) {
  message_->hide();
  return applyEdit(document_, asked);
}

void LibraryWindow::say(Severity severity, const QString& headline, const QString& detail) {
  message_->say(severity, headline, detail);
}

QString LibraryWindow::folder() const {
  const QString beside =
      document_.orderFile().isEmpty() ? document_.shopFile() : document_.orderFile();
  return QFileInfo(beside).absolutePath();
}

std::optional<std::filesystem::path> LibraryWindow::askForFile(const QString& title,
                                                               const QString& id,
                                                               const QString& ending) {
  const QString file =
      askWhereToSave(this, title, QDir(folder()).absoluteFilePath(fileNameFor(toUtf8(id), ending)),
                     tr("JSON files (*%1)").arg(ending), ending);
  return file.isEmpty() ? std::nullopt : std::optional(toPath(file));
}

// ---- Following the document --------------------------------------------------------------------

void LibraryWindow::refresh() {
  if (!isVisible()) {
    return;
  }
  if (planned()->order() == nullptr) {
    hide();
    return;
  }
  // A new plan for the same order changes nothing here.
  if (shown_ == nullptr || shown_->order() != planned()->order() ||
      !(shown_->units() == planned()->units())) {
    showAll();
  }
}

void LibraryWindow::showAll() {
  shown_ = planned();
  fillList();
  const int row = list_->currentRow();
  const bool some = row >= 0;
  form_->setVisible(some);
  nothing_->setVisible(!some);
  for (QPushButton* each : {duplicate_, remove_, ownFile_}) {
    each->setEnabled(some);
  }
  if (some) {
    showEntry(static_cast<std::size_t>(row));
  }
}

// The rows are kept where they can be, so that the list does not jump while one types.
void LibraryWindow::fillList() {
  const QScopedValueRollback guard(refreshing_, true);
  const std::vector<Entry> now = entries();
  const int count = static_cast<int>(now.size());
  const int before = list_->currentRow();
  while (list_->count() > count) {
    delete list_->takeItem(list_->count() - 1);
  }
  while (list_->count() < count) {
    list_->addItem(QString());
  }
  for (int row = 0; row < count; ++row) {
    const Entry& each = now[static_cast<std::size_t>(row)];
    list_->item(row)->setText(each.name);
    list_->item(row)->setSizeHint({0, fontMetrics().height() + kLibraryRowRoom});
    list_->item(row)->setToolTip(each.detail);
  }
  list_->setCurrentRow(count == 0 ? -1 : std::clamp(before, 0, count - 1));
}

// What is typed counts when one turns to another window, where it may be saved.
void LibraryWindow::finishTyping() {
  if (auto* line = qobject_cast<QLineEdit*>(focusWidget())) {
    Q_EMIT line->editingFinished();
  }
}

bool LibraryWindow::event(QEvent* event) {
  if (event->type() == QEvent::WindowDeactivate) {
    finishTyping();
  }
  return SideWindow::event(event);
}

void LibraryWindow::changeEvent(QEvent* event) {
  SideWindow::changeEvent(event);
  // Notes and problems have colours of their own.
  if (event->type() == QEvent::PaletteChange && form_ != nullptr) {
    shown_.reset();
    refresh();
  }
}

void LibraryWindow::showEvent(QShowEvent* event) {
  SideWindow::showEvent(event);
  refresh();
  if (!event->spontaneous()) {
    list_->setFocus(Qt::OtherFocusReason);
  }
}

void LibraryWindow::hideEvent(QHideEvent* event) {
  SideWindow::hideEvent(event);
  settings().setSplitterState(splitter_->objectName(), splitter_->saveState());
}

}  // namespace creaseline::desk
