// SPDX-License-Identifier: MIT
// Header and foot of every page, and the room that they leave.
#include "creaseline/sheets/sheet.h"

#include "sheets/page_code.h"
#include "sheets/text.h"
#include "sheets/typography.h"

namespace creaseline {

using lettering::TextStyle;
using sheets::printed;
using typography::kHeading;
using typography::kStrong;
using typography::kText;

namespace {

constexpr double kLeastPageNumber = 32.0;
constexpr double kGap = 2.0;
constexpr double kFootHeight = 15.0;
constexpr double kTrueScaleFootHeight = 19.0;
constexpr double kAboveFootText = 2.2;
constexpr double kBarHeight = 2.0;
constexpr double kBarRow = 7.0;  // a bar and its words
constexpr double kUprightBarRoom = 8.0;

QString checkText(bool trueScale) {
  if (trueScale) {
    return printed(
        "Measure the three bars before use. If one is wrong, this page is worthless: print it "
        "again at 100 %, “actual size”, never “fit to page”.");
  }
  return printed(
      "100 mm long when printed at 100 %. If it measures otherwise, print again at “actual "
      "size”. The written numbers hold either way.");
}

QRectF contentArea(Paper paper) {
  const QSizeF size = paperSize(paper);
  return QRectF(kSheetMargin, kSheetMargin, size.width() - 2.0 * kSheetMargin,
                size.height() - 2.0 * kSheetMargin);
}

// What is said beside the check bars.
double footTextLeft(const QRectF& content) {
  return content.left() + kInchBarLength + 4.0;
}

double footHeight(const SheetPage& page, const QRectF& content) {
  const double text = lettering::wrappedHeight(checkText(page.trueScale), kText,
                                               content.right() - footTextLeft(content));
  return std::max(page.trueScale ? kTrueScaleFootHeight : kFootHeight, kAboveFootText + text);
}

QString pageNumberText(int number, int count) {
  return printed("page %1 of %2", number, count);
}

// Room for it beside the title, whatever the numbers are.
double pageNumberWidth() {
  constexpr int kUsualCount = 88;
  return std::max(kLeastPageNumber,
                  lettering::textWidth(pageNumberText(kUsualCount, kUsualCount), kStrong) + kGap);
}

// The header's lines keep clear of the code, and the title of the page number too.
double headerTextWidth(const QRectF& content) {
  return content.width() - kPageCodeSize;
}

double headerHeight(const SheetHead& head, const SheetPage& page, const QRectF& content) {
  const double width = headerTextWidth(content);
  double height = lettering::wrappedHeight(page.title, kHeading, width - pageNumberWidth());
  if (!page.detail.isEmpty()) {
    height += lettering::wrappedHeight(page.detail, kText, width);
  }
  height += lettering::wrappedHeight(head.order, kText, width);
  return std::max(height, kPageCodeSize) + kGap;
}

void paintHeader(QPainter& painter, const SheetHead& head, const SheetPage& page, int number,
                 int count, const QRectF& content) {
  const double width = headerTextWidth(content);
  const QString place = pageNumberText(number, count);
  lettering::draw(painter,
                  {content.left() + width - lettering::textWidth(place, kStrong) - kGap,
                   content.top() + lettering::baseline(kHeading) - lettering::baseline(kStrong)},
                  place, kStrong, Qt::black);
  double y = content.top();
  y += lettering::drawWrapped(painter, {content.left(), y}, width - pageNumberWidth(), page.title,
                              kHeading, Qt::black);
  if (!page.detail.isEmpty()) {
    y += lettering::drawWrapped(painter, {content.left(), y}, width, page.detail, kText, Qt::black);
  }
  lettering::drawWrapped(painter, {content.left(), y}, width, head.order, kText, Qt::black);
  // Its quiet zone reaches into the margin, so that the code itself ends where the text does.
  paintPageCode(painter, {content.right() - kPageCodeSize + kGap, content.top() - kGap},
                pageCodeText(head.orderId, number, count, page.about));
  const double bottom = content.top() + headerHeight(head, page, content) - kGap / 2.0;
  painter.setPen(QPen(Qt::black, 0.4));
  painter.drawLine(QPointF(content.left(), bottom), QPointF(content.right(), bottom));
}

// Filled, not stroked, so that its length is exact.
void paintBar(QPainter& painter, QPointF at, double length, const QString& words) {
  painter.fillRect(QRectF(at, QSizeF(length, kBarHeight)), Qt::black);
  lettering::draw(painter, at + QPointF(0.0, kBarHeight + 0.4), words, kText, Qt::black);
}

void paintUprightBar(QPainter& painter, const QRectF& body, const QRectF& content) {
  painter.save();
  painter.translate(content.right(), body.top());
  painter.rotate(90.0);
  paintBar(painter, {0.0, 0.0}, kCheckBarLength, printed("check bar, 100 mm"));
  painter.restore();
}

void paintFoot(QPainter& painter, const SheetPage& page, const QRectF& content) {
  const double top = content.bottom() - footHeight(page, content);
  painter.setPen(QPen(Qt::black, 0.2));
  painter.drawLine(QPointF(content.left(), top + 1.0), QPointF(content.right(), top + 1.0));
  const QPointF first(content.left(), top + 3.5);
  paintBar(painter, first, kCheckBarLength, printed("check bar, 100 mm"));
  if (page.trueScale) {
    paintBar(painter, first + QPointF(0.0, kBarRow), kInchBarLength, printed("check bar, 4 in"));
  }
  const double textLeft = footTextLeft(content);
  lettering::drawWrapped(painter, {textLeft, top + kAboveFootText}, content.right() - textLeft,
                         checkText(page.trueScale), kText, Qt::black);
}

}  // namespace

QSizeF paperSize(Paper paper) {
  switch (paper) {
    case Paper::A4:
      return {210.0, 297.0};
    case Paper::Letter:
      return {215.9, 279.4};
    case Paper::A3:
      return {297.0, 420.0};
    case Paper::Tabloid:
      return {279.4, 431.8};
    case Paper::A2:
      return {420.0, 594.0};
    case Paper::AnsiC:
      return {431.8, 558.8};
  }
  return {};
}

QRectF sheetBody(const SheetHead& head, const SheetPage& page) {
  QRectF content = contentArea(head.paper);
  content.setTop(content.top() + headerHeight(head, page, content) + kGap);
  content.setBottom(content.bottom() - footHeight(page, content) - kGap);
  if (page.trueScale) {
    content.setRight(content.right() - kUprightBarRoom);
  }
  return content;
}

void paintSheetPage(QPainter& painter, const SheetHead& head, const SheetPage& page, int number,
                    int count) {
  const QRectF content = contentArea(head.paper);
  const QRectF body = sheetBody(head, page);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  paintHeader(painter, head, page, number, count, content);
  paintFoot(painter, page, content);
  if (page.trueScale) {
    paintUprightBar(painter, body, content);
  }
  if (page.body) {
    page.body(painter, body);
  }
  painter.restore();
}

}  // namespace creaseline
