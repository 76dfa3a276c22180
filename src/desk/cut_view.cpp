// SPDX-License-Identifier: MIT
#include "desk/cut_view.h"

#include <QPainter>
#include <QResizeEvent>
#include <algorithm>
#include <cmath>

#include "creaseline/planning/wording.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kCutMargin = 12;
constexpr int kCutGap = 8;
constexpr int kCutWordsWidth = 210;       // beside the drawing
constexpr std::int64_t kMostCutRows = 4;  // drawn; the rest is said
constexpr double kLeastNumbered = 18.0;   // pixels of a piece that has room for its number
constexpr double kMostCutPixelsPerMm = 0.28;

// The rows that are drawn: all, or the first few and the last.
std::int64_t rowsDrawn(const CutBlock& block) {
  return std::min(block.rows, kMostCutRows);
}

}  // namespace

CutView::CutView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("workCuts"));
  setAccessibleName(tr("How the backing is cut"));
  setFocusPolicy(Qt::TabFocus);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void CutView::show(const std::vector<CutLayout>& cuts, const UnitChoice& units) {
  cuts_ = cuts;
  units_ = units;
  QStringList said;
  for (const CutLayout& cut : cuts_) {
    said.append(headingOf(cut));
    for (const CutBlock& block : cut.blocks) {
      said.append(wordsOf(cut, block));
    }
  }
  setAccessibleDescription(said.join(QStringLiteral("; ")));
  setMinimumHeight(heightForWidth(width()));
  updateGeometry();
  update();
}

QString CutView::headingOf(const CutLayout& cut) const {
  const QString width = toQString(formatLength(cut.width, units_));
  const QString size =
      cut.form == BackingForm::Roll
          ? tr("%1, roll %2 wide", "stock, width").arg(toQString(cut.stock), width)
          : tr("%1, sheets of %2", "stock, size")
                .arg(toQString(cut.stock), toQString(sizePhrase(cut.width, cut.length, units_)));
  return tr("%1: takes at most %2", "stock, need").arg(size, toQString(cut.need));
}

QString CutView::wordsOf(const CutLayout& cut, const CutBlock& block) const {
  const QString what = tr("%n piece(s) of %1", nullptr, static_cast<int>(block.pieces))
                           .arg(toQString(sizePhrase(block.across, block.along, units_)));
  if (block.beside == 0) {
    return tr("%1: larger than what is in stock").arg(what);
  }
  const QString rows = tr("%n row(s)", nullptr, static_cast<int>(block.rows));
  const QString laid = tr("%1, %2 beside each other in %3", "pieces, number, rows")
                           .arg(what)
                           .arg(block.beside)
                           .arg(rows);
  return cut.form == BackingForm::Roll
             ? tr("%1; takes %2 of the roll")
                   .arg(laid, toQString(formatLength(block.taken, units_)))
             : tr("%1 on %n sheet(s)", nullptr, static_cast<int>(block.sheets)).arg(laid);
}

// The widest roll or sheet fills what is left of the width.
double CutView::scaleFor(int width) const {
  double widest = 1.0;
  for (const CutLayout& cut : cuts_) {
    widest = std::max(widest, cut.width.mm());
  }
  return std::min(kMostCutPixelsPerMm,
                  std::max(60.0, width - 2.0 * kCutMargin - kCutWordsWidth - kCutGap) / widest);
}

int CutView::heightForWidth(int width) const {
  return lay(width, nullptr);
}

QSize CutView::minimumSizeHint() const {
  return {kCutWordsWidth + 140, 80};
}

void CutView::resizeEvent(QResizeEvent* event) {
  if (event->size().width() != event->oldSize().width()) {
    setMinimumHeight(heightForWidth(event->size().width()));
  }
}

int CutView::lay(int width, QPainter* painter) const {
  const int textWidth = std::max(80, width - 2 * kCutMargin);
  const double scale = scaleFor(width);
  int y = kCutMargin;
  const auto text = [&](const QString& words, bool strong) {
    QFont face = font();
    face.setBold(strong);
    const QRect room(kCutMargin, y, textWidth, 10000);
    const int height = QFontMetrics(face).boundingRect(room, Qt::TextWordWrap, words).height();
    if (painter != nullptr) {
      painter->setFont(face);
      painter->drawText(QRect(kCutMargin, y, textWidth, height), Qt::TextWordWrap, words);
    }
    y += height + kCutGap / 2;
  };
  if (painter != nullptr) {
    painter->setPen(palette().color(QPalette::Text));
  }
  if (cuts_.empty()) {
    text(tr("Nothing is cut from backing in stock."), false);
    return y + kCutMargin;
  }
  for (const CutLayout& cut : cuts_) {
    if (painter != nullptr) {
      painter->setPen(cut.enough ? palette().color(QPalette::Text)
                                 : stateColour(Severity::Watch, palette()));
    }
    text(cut.enough ? headingOf(cut)
                    : tr("%1 %2, more than there is", "shape, stock and need")
                          .arg(stateShape(Severity::Watch), headingOf(cut)),
         true);
    for (const CutBlock& block : cut.blocks) {
      const QRect room(kCutMargin, y, textWidth, 10000);
      y += layBlock(cut, block, room, scale, painter) + kCutGap;
    }
    y += kCutGap;
  }
  text(tr("Each size is cut for itself in straight rows; better cutting takes less."), false);
  return y + kCutMargin;
}

// The roll's width lies across; its rows follow each other downwards.
int CutView::layBlock(const CutLayout& cut, const CutBlock& block, const QRect& room, double scale,
                      QPainter* painter) const {
  const int across = static_cast<int>(std::lround(cut.width.mm() * scale));
  const double pieceWidth = block.across.mm() * scale;
  const double pieceHeight = block.along.mm() * scale;
  const std::int64_t drawn = rowsDrawn(block);
  const bool more = block.rows > drawn;
  const double rows = static_cast<double>(drawn) * pieceHeight;
  const double whole =
      cut.form == BackingForm::Sheets ? cut.length.mm() * scale : rows + (more ? kCutGap : 0.0);
  const int high = block.beside == 0
                       ? 0
                       : static_cast<int>(std::ceil(std::max(rows, more ? rows + kCutGap : whole)));
  const QString words = wordsOf(cut, block);
  const int left = room.left() + across + kCutGap;
  const QRect beside(left, room.top(), std::max(60, room.right() - left), 10000);
  const int wordsHigh = fontMetrics().boundingRect(beside, Qt::TextWordWrap, words).height();
  if (painter != nullptr) {
    painter->setFont(font());
    painter->setPen(palette().color(QPalette::Text));
    painter->drawText(QRect(beside.left(), beside.top(), beside.width(), wordsHigh),
                      Qt::TextWordWrap, words);
    if (block.beside > 0) {
      const QRectF stuff(room.left(), room.top(), across, high);
      painter->fillRect(stuff, hairline(palette()));
      const std::int64_t onOne = cut.form == BackingForm::Sheets
                                     ? std::min(block.pieces, block.beside * block.rows)
                                     : block.pieces;
      for (std::int64_t row = 0; row < drawn; ++row) {
        for (std::int64_t column = 0; column < block.beside; ++column) {
          const std::int64_t number = row * block.beside + column + 1;
          if (number > onOne) {
            break;
          }
          const QRectF piece(room.left() + static_cast<double>(column) * pieceWidth,
                             room.top() + static_cast<double>(row) * pieceHeight, pieceWidth,
                             pieceHeight);
          painter->setBrush(palette().color(QPalette::Base));
          painter->setPen(QPen(palette().color(QPalette::Text), 1.0));
          painter->drawRect(piece.adjusted(0.5, 0.5, -0.5, -0.5));
          if (std::min(pieceWidth, pieceHeight) >= kLeastNumbered) {
            painter->drawText(piece, Qt::AlignCenter, QString::number(number));
          }
        }
      }
      if (more) {
        // The rows that are not drawn.
        painter->setPen(QPen(palette().color(QPalette::Text), 1.0, Qt::DashLine));
        const double edge = room.top() + rows + kCutGap / 2.0;
        painter->drawLine(QPointF(room.left(), edge), QPointF(room.left() + across, edge));
      }
      painter->setBrush(Qt::NoBrush);
      painter->setPen(QPen(mutedText(palette()), 1.0));
      painter->drawRect(stuff.adjusted(0.5, 0.5, -0.5, -0.5));
    }
  }
  return std::max(high, wordsHigh);
}

void CutView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette().color(QPalette::Base));
  lay(width(), &painter);
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
  }
}

}  // namespace creaseline::desk
