// SPDX-License-Identifier: MIT
// Sheets as data: paper, pages with a title and a body painter, and the document they belong to.
// A new kind of page is one function that returns SheetPages; header, foot, page numbers, the
// check bar and the writing are done for it.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <functional>
#include <vector>

namespace creaseline {

enum class Paper { A4, Letter };

// Millimetres. A4: ISO 216; Letter: 8 1/2 by 11 in.
[[nodiscard]] QSizeF paperSize(Paper paper);

// Millimetres between the paper's edge and anything that matters; printers reach nearer than
// this hardly ever (common practice, no source: 10 mm and some play).
inline constexpr double kSheetMargin = 12.0;
// Length of the check bar at the foot of every page, in millimetres.
inline constexpr double kCheckBarLength = 100.0;

struct SheetPage {
  QString title;   // large, "Centre chest"
  QString detail;  // under it, smaller; wraps
  // Draws the page's own part. The painter is in millimetres from the paper's top left corner;
  // the rectangle is sheetBody() of this page.
  std::function<void(QPainter&, const QRectF&)> body;
};

struct SheetDocument {
  QString title;  // of the file: "Placement sheets, order 2026-118"
  QString order;  // in every header: id, title, customer, due; wraps
  Paper paper = Paper::A4;
  std::vector<SheetPage> pages;
};

// The rectangle left for a page's body between header and foot, in millimetres. It depends on the
// texts of the header, which wrap.
[[nodiscard]] QRectF sheetBody(const SheetDocument& document, const SheetPage& page);

// Header, body and foot of one page; the painter is in millimetres from the paper's corner. Used
// by the writer, by printing and by previews alike.
void paintSheetPage(QPainter& painter, const SheetDocument& document, std::size_t index);

}  // namespace creaseline
