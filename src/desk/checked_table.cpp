// SPDX-License-Identifier: MIT
#include "desk/checked_table.h"

#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QStyledItemDelegate>

#include "desk/form_parts.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kRoom = 8;

class CheckedDelegate : public QStyledItemDelegate {
 public:
  explicit CheckedDelegate(CheckedTable& table, CheckedTableModel& model)
      : QStyledItemDelegate(&table), table_(table), model_(model) {}

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&,
                        const QModelIndex& index) const override {
    const QStringList choices = model_.choices(index);
    if (!choices.isEmpty()) {
      return choiceEditor(parent, index, choices);
    }
    auto* editor = new QLineEdit(parent);
    editor->setFrame(false);
    editor->setAutoFillBackground(true);
    editor->setAccessibleName(model_.cellName(index));
    const QPersistentModelIndex cell(index);
    connect(editor, &QLineEdit::textEdited, editor, [this, editor, cell](const QString& text) {
      const auto problem = problemOf(cell, text);
      QPalette colours = table_.palette();
      if (problem) {
        colours.setColor(QPalette::Text, stateColour(Severity::Stop, colours));
      }
      editor->setPalette(colours);
      editor->setAccessibleDescription(problem.value_or(QString()));
      Q_EMIT table_.problemChanged(problem.value_or(QString()));
    });
    return editor;
  }

  void setEditorData(QWidget* editor, const QModelIndex& index) const override {
    const QString text = model_.typed(index);
    if (auto* choice = qobject_cast<QComboBox*>(editor)) {
      choice->setCurrentText(text);
    } else if (auto* line = qobject_cast<QLineEdit*>(editor)) {
      showUnlessTyped(*line, text);
    }
  }

  void setModelData(QWidget* editor, QAbstractItemModel* model,
                    const QModelIndex& index) const override {
    const QString text = textOf(editor);
    if (text == model_.typed(index)) {
      Q_EMIT table_.problemChanged({});
      return;
    }
    const auto problem = model_.problem(index, text);
    Q_EMIT table_.problemChanged(problem ? CheckedTable::tr("Not taken: %1").arg(*problem)
                                         : QString());
    if (!problem) {
      model->setData(index, text, Qt::EditRole);
    }
  }

  void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                            const QModelIndex&) const override {
    QRect box = option.rect;
    if (qobject_cast<QComboBox*>(editor) != nullptr) {
      box.setWidth(std::max(box.width(), editor->sizeHint().width()));
    }
    editor->setGeometry(box);
  }

  bool eventFilter(QObject* object, QEvent* event) override {
    // A text that will not do stays to be mended when Enter or Tab is pressed.
    if (event->type() == QEvent::KeyPress) {
      auto* editor = qobject_cast<QLineEdit*>(object);
      const int key = static_cast<QKeyEvent*>(event)->key();
      if (key == Qt::Key_Escape) {
        Q_EMIT table_.problemChanged({});
      }
      const bool leaves = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab ||
                          key == Qt::Key_Backtab;
      if (editor != nullptr && leaves && problemOf(table_.currentIndex(), editor->text())) {
        editor->selectAll();
        return true;
      }
    }
    return QStyledItemDelegate::eventFilter(object, event);
  }

 private:
  [[nodiscard]] std::optional<QString> problemOf(const QModelIndex& index,
                                                 const QString& text) const {
    return !index.isValid() || text == model_.typed(index) ? std::nullopt
                                                           : model_.problem(index, text);
  }

  static QString textOf(const QWidget* editor) {
    if (const auto* choice = qobject_cast<const QComboBox*>(editor)) {
      return choice->currentText();
    }
    return qobject_cast<const QLineEdit*>(editor)->text();
  }

  QWidget* choiceEditor(QWidget* parent, const QModelIndex& index,
                        const QStringList& choices) const {
    auto* editor = new QComboBox(parent);
    editor->addItems(choices);
    editor->setAccessibleName(model_.cellName(index));
    auto* self = const_cast<CheckedDelegate*>(this);  // NOLINT: the signals are not const
    connect(editor, &QComboBox::activated, editor, [self, editor] {
      Q_EMIT self->commitData(editor);
      Q_EMIT self->closeEditor(editor);
    });
    return editor;
  }

  CheckedTable& table_;
  CheckedTableModel& model_;
};

}  // namespace

QStringList CheckedTableModel::choices(const QModelIndex&) const {
  return {};
}

QString CheckedTableModel::typed(const QModelIndex& index) const {
  return index.data(Qt::EditRole).toString();
}

QString CheckedTableModel::cellName(const QModelIndex& index) const {
  return tr("%1, row %2", "column, number")
      .arg(headerData(index.column(), Qt::Horizontal).toString().simplified())
      .arg(index.row() + 1);
}

CheckedTable::CheckedTable(const QString& name, const QString& words, CheckedTableModel& model,
                           QWidget* parent)
    : QTableView(parent), model_(model) {
  setObjectName(name);
  setAccessibleName(words);
  setModel(&model_);
  setItemDelegate(new CheckedDelegate(*this, model_));
  setSelectionMode(QAbstractItemView::SingleSelection);
  setTabKeyNavigation(false);  // Tab leads on to the next control
  setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
  setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  setCornerButtonEnabled(false);
  setWordWrap(false);
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + kRoom);
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setHighlightSections(false);
}

void CheckedTable::chooseCell(int row, int column) {
  setCurrentIndex(model_.index(row, column));
}

void CheckedTable::keyPressEvent(QKeyEvent* event) {
  const bool clears = event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace;
  if (clears && state() != EditingState && currentIndex().isValid()) {
    const auto problem = model_.problem(currentIndex(), QString());
    Q_EMIT problemChanged(problem.value_or(QString()));
    if (!problem) {
      model_.setData(currentIndex(), QString(), Qt::EditRole);
    }
    return;
  }
  if (event->matches(QKeySequence::Paste) && state() != EditingState) {
    Q_EMIT pasteAsked();
    return;
  }
  // Enter opens the cell, as a person expects of a table.
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && state() != EditingState && currentIndex().isValid()) {
    edit(currentIndex());
    return;
  }
  QTableView::keyPressEvent(event);
}

// From a cell that was typed, Tab goes on to the next one, and after the last to the next row.
void CheckedTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const bool next = hint == QAbstractItemDelegate::EditNextItem;
  if (!next && hint != QAbstractItemDelegate::EditPreviousItem) {
    QTableView::closeEditor(editor, hint);
    return;
  }
  QTableView::closeEditor(editor, QAbstractItemDelegate::NoHint);
  const int columns = model_.columnCount();
  const int cell = currentIndex().row() * columns + currentIndex().column() + (next ? 1 : -1);
  if (cell >= 0 && cell < model_.rowCount() * columns) {
    const QModelIndex index = model_.index(cell / columns, cell % columns);
    setCurrentIndex(index);
    edit(index);
  }
}

void CheckedTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTableView::currentChanged(current, previous);
  Q_EMIT cellChosen();
}

QSize CheckedTable::sizeHint() const {
  return {240, 140};
}

QSize CheckedTable::minimumSizeHint() const {
  const int row = verticalHeader()->defaultSectionSize();
  return {160, horizontalHeader()->sizeHint().height() + 2 * row + 2 * frameWidth() + kRoom};
}

}  // namespace creaseline::desk
