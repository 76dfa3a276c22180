// SPDX-License-Identifier: MIT
// Header and foot of every page, and the room that they leave.
#include "creaseline/sheets/sheet.h"

#include "sheets/lettering.h"

namespace creaseline {

using lettering::TextStyle;

namespace {

constexpr TextStyle kTitle{lettering::points(17.0), true};
constexpr TextStyle kDetail{lettering::points(10.5), false};
constexpr TextStyle kOrder{lettering::points(9.0), false};
constexpr TextStyle kPageNumber{lettering::points(10.0), true};
constexpr TextStyle kFoot{lettering::points(7.5), false};
constexpr double kPageNumberWidth = 32.0;
constexpr double kGap = 2.0;
constexpr double kFootHeight = 14.0;
constexpr double kBarHeight = 2.0;

QString checkText() {
  return QStringLiteral(
      "100 mm long when printed at 100 %. If it measures otherwise, print again at “actual "
      "size”. The written numbers hold either way.");
}

QRectF contentArea(Paper paper) {
  const QSizeF size = paperSize(paper);
  return QRectF(kSheetMargin, kSheetMargin, size.width() - 2.0 * kSheetMargin,
                size.height() - 2.0 * kSheetMargin);
}

double headerHeight(const SheetDocument& document, const SheetPage& page, double width) {
  double height = lettering::wrappedHeight(page.title, kTitle, width - kPageNumberWidth);
  if (!page.detail.isEmpty()) {
    height += lettering::wrappedHeight(page.detail, kDetail, width);
  }
  return height + lettering::wrappedHeight(document.order, kOrder, width) + kGap;
}

void paintHeader(QPainter& painter, const SheetDocument& document, std::size_t index,
                 const QRectF& content) {
  const SheetPage& page = document.pages[index];
  const QString number = QStringLiteral("page %1 of %2").arg(index + 1).arg(document.pages.size());
  const double numberWidth = lettering::textWidth(number, kPageNumber);
  lettering::draw(painter, {content.right() - numberWidth, content.top() + 1.0}, number,
                  kPageNumber, Qt::black);
  double y = content.top();
  y += lettering::drawWrapped(painter, {content.left(), y}, content.width() - kPageNumberWidth,
                              page.title, kTitle, Qt::black);
  if (!page.detail.isEmpty()) {
    y += lettering::drawWrapped(painter, {content.left(), y}, content.width(), page.detail, kDetail,
                                Qt::black);
  }
  y += lettering::drawWrapped(painter, {content.left(), y}, content.width(), document.order, kOrder,
                              Qt::black);
  painter.setPen(QPen(Qt::black, 0.4));
  painter.drawLine(QPointF(content.left(), y + kGap / 2.0),
                   QPointF(content.right(), y + kGap / 2.0));
}

void paintFoot(QPainter& painter, const QRectF& content) {
  const double top = content.bottom() - kFootHeight;
  painter.setPen(QPen(Qt::black, 0.2));
  painter.drawLine(QPointF(content.left(), top + 1.0), QPointF(content.right(), top + 1.0));
  // Filled, not stroked, so that its length is exact.
  painter.fillRect(QRectF(content.left(), top + 3.5, kCheckBarLength, kBarHeight), Qt::black);
  lettering::draw(painter, {content.left(), top + 3.5 + kBarHeight + 0.6},
                  QStringLiteral("check bar, 100 mm"), kFoot, Qt::black);
  const double textLeft = content.left() + kCheckBarLength + 5.0;
  lettering::drawWrapped(painter, {textLeft, top + 2.2}, content.right() - textLeft, checkText(),
                         kFoot, Qt::black);
}

}  // namespace

QSizeF paperSize(Paper paper) {
  switch (paper) {
    case Paper::A4:
      return {210.0, 297.0};
    case Paper::Letter:
      return {215.9, 279.4};
  }
  return {};
}

QRectF sheetBody(const SheetDocument& document, const SheetPage& page) {
  QRectF content = contentArea(document.paper);
  content.setTop(content.top() + headerHeight(document, page, content.width()) + kGap);
  content.setBottom(content.bottom() - kFootHeight - kGap);
  return content;
}

void paintSheetPage(QPainter& painter, const SheetDocument& document, std::size_t index) {
  const QRectF content = contentArea(document.paper);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  paintHeader(painter, document, index, content);
  paintFoot(painter, content);
  const SheetPage& page = document.pages[index];
  if (page.body) {
    page.body(painter, sheetBody(document, page));
  }
  painter.restore();
}

}  // namespace creaseline
