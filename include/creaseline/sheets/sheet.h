// SPDX-License-Identifier: MIT
// Sheets as data: paper, pages with a title and a body painter, and the set they belong to.
// A new kind of page is one new file (sheet_kind.h); header, foot, page numbers, code, check bars,
// bookmarks and the writing are done for it.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <functional>
#include <vector>

#include "creaseline/base/named_enum.h"

namespace creaseline {

enum class Paper { A4, Letter, A3, Tabloid, A2, AnsiC };

// Millimetres, upright. A4, A3, A2: ISO 216. Letter, Tabloid, AnsiC: sizes A, B and C of
// ANSI/ASME Y14.1, 8 1/2 by 11, 11 by 17 and 17 by 22 in.
[[nodiscard]] QSizeF paperSize(Paper paper);

// Millimetres between the paper's edge and anything that matters; printers reach nearer than
// this hardly ever (common practice, no source: 10 mm and some play).
inline constexpr double kSheetMargin = 12.0;
// Lengths of the check bars, in millimetres: one on every page, both on pages in true scale.
inline constexpr double kCheckBarLength = 100.0;
inline constexpr double kInchBarLength = 4.0 * 25.4;

struct SheetPage {
  QString title;   // large, "Centre chest"
  QString detail;  // under it, smaller; wraps
  // What the page's code says besides order and page number: "line 3 left-chest"; may be empty.
  QString about;
  // Lengths on this page are measured by laying cloth or ruler on it: both check bars, in both
  // directions, and what to do when they do not measure.
  bool trueScale = false;
  // Draws the page's own part. The painter is in millimetres from the paper's top left corner;
  // the rectangle is sheetBody() of this page.
  std::function<void(QPainter&, const QRectF&)> body;
};

// What all pages of a set share.
struct SheetHead {
  QString title;    // of the file: "Sheets, order 2026-118"
  QString order;    // in every header: id, title, customer, due, shop; wraps
  QString orderId;  // for the code
  Paper paper = Paper::A4;
};

// Pages that stand under one bookmark. They are made when they are asked for, so that of a long
// set only one section at a time is in memory; `pages` answers the same whenever it is called.
struct SheetSection {
  QString group;  // bookmark above it, name of the kind: "Placement sheets"
  QString title;  // bookmark: "Line 1, centre chest, S M L"
  std::function<std::vector<SheetPage>()> pages;
};

struct SheetDocument {
  SheetHead head;
  std::vector<SheetSection> sections;
};

// The rectangle left for a page's body between header and foot, in millimetres. It depends on the
// texts of the header, which wrap, and on `trueScale`.
[[nodiscard]] QRectF sheetBody(const SheetHead& head, const SheetPage& page);

// Header, body and foot of one page; the painter is in millimetres from the paper's corner. Used
// by the writers, by printing and by previews alike. `number` counts from 1.
void paintSheetPage(QPainter& painter, const SheetHead& head, const SheetPage& page, int number,
                    int count);

template <>
struct EnumNames<Paper> {
  static constexpr std::pair<Paper, std::string_view> names[] = {
      {Paper::A4, "a4"},           {Paper::Letter, "letter"}, {Paper::A3, "a3"},
      {Paper::Tabloid, "tabloid"}, {Paper::A2, "a2"},         {Paper::AnsiC, "ansi-c"}};
};

}  // namespace creaseline
