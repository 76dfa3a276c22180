// SPDX-License-Identifier: MIT
// Table of the order and how its cells are painted.
#include "desk/order_view.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QPainter>
#include <QRegularExpressionValidator>
#include <QScopedValueRollback>
#include <QStyledItemDelegate>

#include "desk/form_parts.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kOrderPadding = 6;
constexpr int kPlaceIndent = 14;
constexpr int kLeastNameCharacters = 20;

// A shape is as wide as a quantity of two figures.
int cellWidth(const QFontMetrics& metrics) {
  return metrics.horizontalAdvance(QStringLiteral("00")) + kOrderPadding;
}

class OrderDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&,
                        const QModelIndex& index) const override {
    auto* editor = new QLineEdit(parent);
    editor->setFrame(false);
    editor->setAlignment(Qt::AlignCenter);
    // Nothing typed is none.
    static const QRegularExpression number(QStringLiteral("[0-9]{0,6}"));
    editor->setValidator(new QRegularExpressionValidator(number, editor));
    editor->setAccessibleName(
        OrderView::tr("Garments in size %1").arg(index.data(OrderModel::SizeRole).toString()));
    return editor;
  }

  void setEditorData(QWidget* editor, const QModelIndex& index) const override {
    showUnlessTyped(*qobject_cast<QLineEdit*>(editor), index.data(Qt::EditRole).toString());
  }

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const QFontMetrics metrics(option.font);
    const int height = 2 * metrics.height() + kOrderPadding + 4;
    return {index.column() == 0 ? kOrderPadding : cellWidth(metrics), height};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    QStyleOptionViewItem item = option;
    initStyleOption(&item, index);
    const QString text = std::exchange(item.text, QString());
    const QWidget* widget = item.widget;
    widget->style()->drawControl(QStyle::CE_ItemViewItem, &item, painter, widget);
    const QPalette& palette = item.palette;
    const bool selected = item.state & QStyle::State_Selected;
    painter->save();
    const QColor plain = palette.color(selected ? QPalette::HighlightedText : QPalette::Text);
    painter->setPen(plain);
    if (index.column() == 0) {
      paintName(*painter, item, text, detail(index), selected ? plain : mutedText(palette));
    } else {
      paintCell(*painter, item, index, text, selected);
    }
    painter->setPen(hairline(palette));
    painter->drawLine(item.rect.bottomLeft(), item.rect.bottomRight());
    painter->restore();
  }

 private:
  static QString detail(const QModelIndex& index) {
    return index.data(OrderModel::DetailRole).toString();
  }
  static bool isPlace(const QModelIndex& index) { return index.parent().isValid(); }

  static void paintName(QPainter& painter, const QStyleOptionViewItem& item, const QString& name,
                        const QString& detail, const QColor& detailColour) {
    const bool place = isPlace(item.index);
    const QRect box = item.rect.adjusted(kOrderPadding + (place ? kPlaceIndent : 0),
                                         kOrderPadding / 2, -kOrderPadding / 2, -kOrderPadding / 2);
    QFont font = item.font;
    font.setBold(!place);
    painter.setFont(font);
    const QRect upper(box.left(), box.top(), box.width(), box.height() / 2);
    painter.drawText(upper, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(font).elidedText(name, Qt::ElideRight, box.width()));
    painter.setFont(item.font);
    QRect lower = upper.translated(0, box.height() / 2);
    // A line says its state in a word; its places say theirs size by size.
    const QVariant state = place ? QVariant() : item.index.data(OrderModel::StateRole);
    if (state.isValid()) {
      const auto severity = static_cast<Severity>(state.toInt());
      const QFontMetrics metrics(item.font);
      const int side = metrics.ascent() - 1;
      const bool selected = item.state & QStyle::State_Selected;
      const QColor colour = selected ? detailColour : stateColour(severity, item.palette);
      paintState(painter,
                 QRectF(lower.left(), lower.top() + (lower.height() - side) / 2.0, side, side),
                 severity, colour);
      lower.setLeft(lower.left() + side + 5);
      painter.setPen(colour);
      const QString word = garmentWord(severity) + QStringLiteral(", ");
      painter.drawText(lower, Qt::AlignLeft | Qt::AlignVCenter, word);
      lower.setLeft(lower.left() + metrics.horizontalAdvance(word));
    }
    painter.setPen(detailColour);
    painter.drawText(lower, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(item.font).elidedText(detail, Qt::ElideRight, lower.width()));
  }

  static void paintCell(QPainter& painter, const QStyleOptionViewItem& item,
                        const QModelIndex& index, const QString& text, bool selected) {
    const QVariant state = index.data(OrderModel::StateRole);
    if (!state.isValid()) {
      painter.drawText(item.rect, Qt::AlignCenter, text);
      return;
    }
    const auto severity = static_cast<Severity>(state.toInt());
    const QColor colour = selected ? painter.pen().color() : stateColour(severity, item.palette);
    const int side = QFontMetrics(item.font).ascent();
    QRect mark(0, 0, side, side);
    mark.moveCenter(item.rect.center());
    paintState(painter, mark, severity, colour);
  }
};

}  // namespace

OrderView::OrderView(OrderModel& model, Selection& selection, QWidget* parent)
    : QTreeView(parent), model_(model), selection_(selection) {
  setObjectName(QStringLiteral("order"));
  setAccessibleName(tr("Order: lines, places and sizes"));
  setFrameShape(QFrame::NoFrame);
  setModel(&model_);
  setItemDelegate(new OrderDelegate(this));
  setRootIsDecorated(false);
  setIndentation(0);
  // Lines are never folded away, so that left and right move along the sizes.
  setItemsExpandable(false);
  setExpandsOnDoubleClick(false);
  setSelectionBehavior(QAbstractItemView::SelectItems);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setUniformRowHeights(true);
  setTabKeyNavigation(false);
  setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
  header()->setStretchLastSection(false);
  header()->setSectionsMovable(false);
  header()->setMinimumSectionSize(24);
  connect(&model_, &QAbstractItemModel::modelReset, this, &OrderView::followModel);
  connect(&selection_, &Selection::changed, this, &OrderView::followSelection);
}

void OrderView::followModel() {
  expandAll();
  fitColumns();
}

void OrderView::followSelection() {
  if (following_ || selection_.empty()) {
    return;
  }
  const QScopedValueRollback guard(following_, true);
  const int column = model_.sizeColumn(selection_.size());
  if (selection_.wholeLine()) {
    const int row = static_cast<int>(selection_.line());
    // The column stays: it may be one that the line has no garment of yet.
    const int kept = currentIndex().isValid() ? currentIndex().column() : 0;
    setCurrentIndex(model_.index(row, std::min(kept, model_.columnCount() - 1)));
    return;
  }
  const QModelIndex target = model_.indexOf(selection_.line(), selection_.placement(), column);
  setCurrentIndex(target.isValid() ? target : model_.index(static_cast<int>(selection_.line()), 0));
}

void OrderView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTreeView::currentChanged(current, previous);
  if (following_ || !current.isValid()) {
    return;
  }
  const QScopedValueRollback guard(following_, true);
  const auto line = static_cast<std::size_t>(current.data(OrderModel::LineRole).toInt());
  const QVariant placement = current.data(OrderModel::PlacementRole);
  const QVariant size = current.data(OrderModel::SizeRole);
  if (placement.isValid()) {
    selection_.choosePlacement(line, static_cast<std::size_t>(placement.toInt()));
  } else {
    selection_.chooseLine(line);
  }
  if (size.isValid() && !current.data().toString().isEmpty()) {
    selection_.chooseSize(SizeName(toUtf8(size.toString())));
  }
}

// From a quantity that was typed, Tab goes on to the next one of the line, then to the next line.
void OrderView::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const bool next = hint == QAbstractItemDelegate::EditNextItem;
  if (!next && hint != QAbstractItemDelegate::EditPreviousItem) {
    QTreeView::closeEditor(editor, hint);
    return;
  }
  QTreeView::closeEditor(editor, QAbstractItemDelegate::NoHint);
  const int columns = model_.columnCount();
  const QModelIndex from = currentIndex();
  for (int cell = from.row() * columns + from.column() + (next ? 1 : -1);
       cell >= 0 && cell < model_.rowCount() * columns; cell += next ? 1 : -1) {
    const QModelIndex index = model_.index(cell / columns, cell % columns);
    if (index.flags() & Qt::ItemIsEditable) {
      setCurrentIndex(index);
      edit(index);
      return;
    }
  }
}

void OrderView::drawBranches(QPainter*, const QRect&, const QModelIndex&) const {
}

void OrderView::resizeEvent(QResizeEvent* event) {
  QTreeView::resizeEvent(event);
  fitColumns();
}

// Sizes as wide as heading and cells; the name gets the rest, down to a readable least. Cells are
// alike, so that a long order is not asked about each.
void OrderView::fitColumns() {
  int rest = viewport()->width();
  for (int column = 1; column < model_.columnCount(); ++column) {
    setColumnWidth(column, std::max(header()->sectionSizeHint(column), cellWidth(fontMetrics())));
    rest -= columnWidth(column);
  }
  const int least = fontMetrics().averageCharWidth() * kLeastNameCharacters;
  setColumnWidth(0, std::max(rest, least));
}

}  // namespace creaseline::desk
