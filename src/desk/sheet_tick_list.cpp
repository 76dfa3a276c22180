// SPDX-License-Identifier: MIT
#include "desk/sheet_tick_list.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScopedValueRollback>
#include <QStyledItemDelegate>
#include <utility>

#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kTickPadding = 6;

QFont bold(QFont font) {
  font.setBold(true);
  return font;
}

class TickDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto* view = qobject_cast<const QListView*>(option.widget);
    const QRect row(0, 0, view->viewport()->width(), 0);
    const int text =
        QFontMetrics(bold(option.font)).height() + whatBox(option, row, index).height();
    // A width of its own would make the view scroll sideways.
    return {kTickPadding, std::max(text, tickBox(option, row).height()) + 2 * kTickPadding};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    QStyleOptionViewItem item = option;
    initStyleOption(&item, index);
    const QString name = std::exchange(item.text, QString());
    item.features &= ~QStyleOptionViewItem::HasCheckIndicator;
    const QStyle* style = item.widget->style();
    style->drawControl(QStyle::CE_ItemViewItem, &item, painter, item.widget);
    paintTick(*painter, item, index);
    painter->save();
    const bool selected = item.state & QStyle::State_Selected;
    const QColor plain = item.palette.color(selected ? QPalette::HighlightedText : QPalette::Text);
    const QColor muted = selected ? plain : mutedText(item.palette);
    paintWords(*painter, item, index, name, plain, muted);
    painter->setPen(hairline(item.palette));
    painter->drawLine(item.rect.bottomLeft(), item.rect.bottomRight());
    painter->restore();
  }

  bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override {
    if (!asksForTick(*event, option)) {
      return false;
    }
    const bool ticked = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
    return model->setData(index, ticked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
  }

 private:
  static QRect tickBox(const QStyleOptionViewItem& option, const QRect& row) {
    const QStyle* style = option.widget->style();
    const int side = style->pixelMetric(QStyle::PM_IndicatorWidth, &option, option.widget);
    const int nameHeight = QFontMetrics(bold(option.font)).height();
    const int top = row.top() + kTickPadding + std::max(0, (nameHeight - side) / 2);
    return {row.left() + kTickPadding, top, side, side};
  }

  static QRect words(const QStyleOptionViewItem& option, const QRect& row) {
    return row.adjusted(2 * kTickPadding + tickBox(option, row).width(), kTickPadding,
                        -kTickPadding, -kTickPadding);
  }

  static QRect whatBox(const QStyleOptionViewItem& option, const QRect& row,
                       const QModelIndex& index) {
    QRect box = words(option, row);
    box.setTop(box.top() + QFontMetrics(bold(option.font)).height());
    constexpr int kAnyHeight = 10000;
    box.setHeight(kAnyHeight);
    return QFontMetrics(option.font)
        .boundingRect(box, Qt::AlignLeft | Qt::TextWordWrap,
                      index.data(SheetTickModel::WhatRole).toString());
  }

  // The whole column of the tick counts, as small squares are hard to hit.
  static bool asksForTick(const QEvent& event, const QStyleOptionViewItem& option) {
    if (event.type() == QEvent::KeyPress) {
      const int key = static_cast<const QKeyEvent&>(event).key();
      return key == Qt::Key_Space || key == Qt::Key_Select;
    }
    if (event.type() != QEvent::MouseButtonRelease) {
      return false;
    }
    const auto& click = static_cast<const QMouseEvent&>(event);
    return click.button() == Qt::LeftButton &&
           click.position().x() < words(option, option.rect).left();
  }

  static void paintTick(QPainter& painter, const QStyleOptionViewItem& item,
                        const QModelIndex& index) {
    QStyleOptionViewItem tick = item;
    tick.rect = tickBox(item, item.rect);
    tick.state &= ~(QStyle::State_HasFocus | QStyle::State_Selected | QStyle::State_On |
                    QStyle::State_Off | QStyle::State_NoChange);
    tick.state |= index.data(Qt::CheckStateRole).toInt() == Qt::Checked ? QStyle::State_On
                                                                        : QStyle::State_Off;
    item.widget->style()->drawPrimitive(QStyle::PE_IndicatorItemViewItemCheck, &tick, &painter,
                                        item.widget);
  }

  static void paintWords(QPainter& painter, const QStyleOptionViewItem& item,
                         const QModelIndex& index, const QString& name, const QColor& plain,
                         const QColor& muted) {
    QRect box = words(item, item.rect);
    const QString pages = index.data(SheetTickModel::PagesRole).toString();
    const int pagesWidth = QFontMetrics(item.font).horizontalAdvance(pages);
    box.setHeight(QFontMetrics(bold(item.font)).height());
    painter.setPen(muted);
    painter.setFont(item.font);
    painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, pages);
    painter.drawText(whatBox(item, item.rect, index), Qt::AlignLeft | Qt::TextWordWrap,
                     index.data(SheetTickModel::WhatRole).toString());
    painter.setPen(plain);
    painter.setFont(bold(item.font));
    box.setRight(box.right() - pagesWidth - kTickPadding);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(painter.font()).elidedText(name, Qt::ElideRight, box.width()));
  }
};

}  // namespace

SheetTickList::SheetTickList(SheetTickModel& model, QWidget* parent) : QListView(parent) {
  setObjectName(QStringLiteral("sheetKinds"));
  setAccessibleName(tr("Kinds of sheets"));
  setAccessibleDescription(tr("Space ticks a kind, the arrow keys show its first page."));
  setModel(&model);
  setItemDelegate(new TickDelegate(this));
  setResizeMode(QListView::Adjust);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setTabKeyNavigation(false);
  connect(this, &QListView::clicked, this,
          [this](const QModelIndex& index) { Q_EMIT kindChosen(index.row()); });
}

void SheetTickList::follow(int row) {
  const QScopedValueRollback guard(following_, true);
  setCurrentIndex(model()->index(row, 0));
}

void SheetTickList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QListView::currentChanged(current, previous);
  if (!following_ && current.isValid()) {
    Q_EMIT kindChosen(current.row());
  }
}

}  // namespace creaseline::desk
