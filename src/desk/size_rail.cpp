// SPDX-License-Identifier: MIT
// Scale, cells and painting of the size rail.
#include "desk/size_rail.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScopedValueRollback>
#include <QScrollBar>
#include <QStyledItemDelegate>

#include "creaseline/sheets/garment_drawing.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kRailMargin = 8;
constexpr int kLeastCell = 68;
constexpr int kLeastPicture = 70;
constexpr double kLeastShrink = 0.5;  // of the scale that the height allows

int textHeight(const QFontMetrics& metrics) {
  return 2 * metrics.height() + kRailMargin;
}

QRectF hanging(const PlacementPlan& plan, const PlannedOrder& planned) {
  return GarmentDrawing(plan, planned.shopForDrawing(), planned.units()).extent();
}

class SizeDelegate : public QStyledItemDelegate {
 public:
  explicit SizeDelegate(SizeRail& rail, const SizeModel& model)
      : QStyledItemDelegate(&rail), rail_(rail), model_(model) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
    return rail_.gridSize();
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    const PlacementPlan& plan = *model_.plans()[static_cast<std::size_t>(index.row())];
    const QPalette& palette = option.palette;
    const QRect cell = option.rect.adjusted(2, 2, -2, -2);
    const bool selected = option.state & QStyle::State_Selected;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (selected) {
      painter->setPen(QPen(palette.color(QPalette::Highlight), 2));
      painter->setBrush(palette.color(QPalette::Base));
      painter->drawRoundedRect(cell.adjusted(1, 1, -1, -1), 6, 6);
    } else if (option.state & QStyle::State_MouseOver) {
      painter->setPen(hairline(palette));
      painter->setBrush(Qt::NoBrush);
      painter->drawRoundedRect(cell, 6, 6);
    }
    if (option.state & QStyle::State_HasFocus) {
      painter->setPen(QPen(palette.color(QPalette::Text), 1, Qt::DotLine));
      painter->setBrush(Qt::NoBrush);
      painter->drawRoundedRect(cell.adjusted(4, 4, -4, -4), 4, 4);
    }
    if (rail_.isCompared(plan.size)) {
      painter->setPen(QPen(comparedColour(palette), 2, Qt::DashLine));
      painter->setBrush(Qt::NoBrush);
      painter->drawRoundedRect(cell.adjusted(1, 1, -1, -1), 6, 6);
    }
    const int words = textHeight(option.fontMetrics);
    paintGarment(*painter, plan, palette,
                 QRectF(cell.adjusted(kRailMargin / 2, kRailMargin, -kRailMargin / 2, -words)));
    paintWords(*painter, option, plan,
               QRect(cell.left(), cell.bottom() - words, cell.width(), words));
    painter->restore();
  }

 private:
  // Hung by the top of its extent, so that sizes can be compared from the same line.
  void paintGarment(QPainter& painter, const PlacementPlan& plan, const QPalette& palette,
                    const QRectF& box) const {
    const GarmentDrawing drawing(plan, model_.planned()->shopForDrawing(),
                                 model_.planned()->units());
    const double scale = rail_.pixelsPerMm();
    const QRectF extent = drawing.extent();
    DrawingStyle style = drawingStyle(palette, scale, model_.cloth());
    style.showDimensions = style.showSides = style.showTurn = style.showCaption = false;
    style.showKeepOuts = style.showLabels = false;
    painter.save();
    painter.setClipRect(box);
    painter.translate(box.center().x(), box.top());
    painter.scale(scale, scale);
    painter.translate(-extent.center().x(), -extent.top());
    const QRectF area(extent.center().x() - box.width() / scale / 2.0, extent.top(),
                      box.width() / scale, box.height() / scale);
    drawing.paint(painter, style, area);
    painter.restore();
  }

  void paintWords(QPainter& painter, const QStyleOptionViewItem& option, const PlacementPlan& plan,
                  const QRect& box) const {
    QFont bold = option.font;
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(option.palette.color(QPalette::Text));
    const int line = option.fontMetrics.height();
    painter.drawText(
        QRect(box.left(), box.top(), box.width(), line), Qt::AlignCenter,
        QStringLiteral("%1  × %2").arg(toQString(plan.size.text())).arg(plan.quantity));
    painter.setFont(option.font);
    if (!model_.arePlanned()) {
      painter.setPen(mutedText(option.palette));
      painter.drawText(QRect(box.left(), box.top() + line, box.width(), line), Qt::AlignCenter,
                       SizeRail::tr("not planned"));
      return;
    }
    const QColor colour = stateColour(plan.worst, option.palette);
    const QString word = garmentWord(plan.worst);
    const int side = option.fontMetrics.ascent() - 1;
    const int width = side + 5 + option.fontMetrics.horizontalAdvance(word);
    const QRect lower(box.center().x() - width / 2, box.top() + line, width + 4, line);
    paintState(painter, QRectF(lower.left(), lower.top() + (line - side) / 2.0, side, side),
               plan.worst, colour);
    painter.setPen(colour);
    painter.drawText(lower.adjusted(side + 5, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, word);
  }

  SizeRail& rail_;
  const SizeModel& model_;
};

}  // namespace

SizeRail::SizeRail(SizeModel& model, Selection& selection, QWidget* parent)
    : QListView(parent), model_(model), selection_(selection) {
  setObjectName(QStringLiteral("sizes"));
  setAccessibleName(tr("Sizes of the selected place"));
  setToolTip(
      tr("Ctrl+click a second size to lay it over the one on the table, or press Ctrl+Left or "
         "Ctrl+Right here; again takes it away"));
  setAccessibleDescription(toolTip());
  setFrameShape(QFrame::NoFrame);
  setFlow(QListView::LeftToRight);
  setWrapping(false);
  setUniformItemSizes(true);
  setMouseTracking(true);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setItemDelegate(new SizeDelegate(*this, model_));
  setModel(&model_);
  connect(&model_, &QAbstractItemModel::modelReset, this, [this] {
    fitScale();
    followSelection();
  });
  connect(&selection_, &Selection::changed, this, &SizeRail::followSelection);
}

bool SizeRail::isCompared(const SizeName& size) const {
  const PlacementPlan* compared = selection_.compared();
  return compared != nullptr && compared->size == size;
}

QSize SizeRail::minimumSizeHint() const {
  return {3 * kLeastCell, kLeastPicture + textHeight(fontMetrics()) + 2 * kRailMargin};
}

QSize SizeRail::sizeHint() const {
  return {8 * kLeastCell, 2 * kLeastPicture + textHeight(fontMetrics()) + 2 * kRailMargin};
}

void SizeRail::followSelection() {
  if (following_) {
    return;
  }
  const QScopedValueRollback guard(following_, true);
  const int row = model_.rowOf(selection_.size());
  setCurrentIndex(model_.index(row < 0 ? 0 : row, 0));
}

void SizeRail::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QListView::currentChanged(current, previous);
  if (following_ || !current.isValid()) {
    return;
  }
  const QScopedValueRollback guard(following_, true);
  selection_.chooseSize(SizeName(toUtf8(current.data().toString())));
}

// With Control a size is laid over the one on the table instead of taking its place.
void SizeRail::compareWith(const QModelIndex& index) {
  if (index.isValid()) {
    selection_.compare(SizeName(toUtf8(index.data().toString())));
    viewport()->update();
  }
}

void SizeRail::mousePressEvent(QMouseEvent* event) {
  if (event->modifiers() & Qt::ControlModifier) {
    compareWith(indexAt(event->position().toPoint()));
    return;
  }
  QListView::mousePressEvent(event);
}

void SizeRail::keyPressEvent(QKeyEvent* event) {
  const bool control = event->modifiers() & Qt::ControlModifier;
  if (control && (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right)) {
    const PlacementPlan* compared = selection_.compared();
    const int from = compared == nullptr ? currentIndex().row() : model_.rowOf(compared->size);
    compareWith(model_.index(from + (event->key() == Qt::Key_Right ? 1 : -1), 0));
    return;
  }
  QListView::keyPressEvent(event);
}

void SizeRail::resizeEvent(QResizeEvent* event) {
  fitScale();
  QListView::resizeEvent(event);
}

void SizeRail::changeEvent(QEvent* event) {
  QListView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) {
    viewport()->update();
  } else if (event->type() == QEvent::FontChange) {
    fitScale();
  }
}

// The largest scale at which the tallest and widest garment fits its cell.
void SizeRail::fitScale() {
  if (model_.plans().empty()) {
    return;
  }
  double widest = 1.0;
  double tallest = 1.0;
  for (const PlacementPlan* plan : model_.plans()) {
    const QRectF extent = hanging(*plan, *model_.planned());
    widest = std::max(widest, extent.width());
    tallest = std::max(tallest, extent.height());
  }
  // The bar's height is kept free even while it is hidden: no size may jump when it comes.
  const int height = std::max(this->height() - horizontalScrollBar()->sizeHint().height(),
                              minimumSizeHint().height());
  const double picture = height - textHeight(fontMetrics()) - kRailMargin - 8;
  const int count = static_cast<int>(model_.plans().size());
  // All sizes in view at once if that leaves them large enough to be told apart.
  const double byHeight = std::max(picture, 1.0) / tallest;
  const double byWidth =
      (static_cast<double>(viewport()->width()) / count - 2 * kRailMargin - 1) / widest;
  pixelsPerMm_ = std::max(std::min(byHeight, byWidth), byHeight * kLeastShrink);
  const int needed =
      std::max(kLeastCell, static_cast<int>(widest * pixelsPerMm_) + 2 * kRailMargin);
  const int offered = std::min(viewport()->width() / count, needed * 3 / 2);
  const int hung =
      static_cast<int>(tallest * pixelsPerMm_) + textHeight(fontMetrics()) + kRailMargin + 8;
  setGridSize({std::max(needed, offered), std::min(hung, height - 2)});
  scheduleDelayedItemsLayout();
}

}  // namespace creaseline::desk
