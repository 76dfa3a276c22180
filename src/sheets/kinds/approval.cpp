// SPDX-License-Identifier: MIT
// The approval picture for the customer: what goes where, in which colours and sizes, to be signed.
#include <algorithm>

#include "creaseline/planning/order_summary.h"
#include "creaseline/planning/wording.h"
#include "creaseline/sheets/garment_drawing.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/list_texts.h"
#include "sheets/text.h"

namespace creaseline {

using lettering::TextStyle;
using sheets::capitalised;
using sheets::printed;
using sheets::toQString;
using typography::kHeading;
using typography::kText;

namespace {

// The highest at which a line goes on one page is taken; of no use beyond the first.
constexpr double kPictureHeights[] = {100.0, 90.0, 80.0, 70.0, 60.0, 52.0};
constexpr double kPictureGap = 6.0;
constexpr std::size_t kMostInARow = 3;
constexpr double kRoundPanel = 12.0;  // garment left round the panel, millimetres of garment

struct Picture {
  const PlacementPlan* plan = nullptr;  // null: its place is not settled
  QString title;
  QStringList words;
};

// ---- Drawing
// -------------------------------------------------------------------------------------

DrawingStyle approvalStyle(double scale) {
  DrawingStyle style = DrawingStyle::paper(scale);
  style.softened = false;
  style.wholeDesign = true;  // the customer sees what is worn, not how it is hooped
  style.showCentre = false;
  style.showFrame = false;
  style.showKeepOuts = false;
  style.showDimensions = false;
  style.showSides = false;
  style.showTurn = false;
  style.showCaption = false;
  style.showLabels = false;
  return style;
}

void paintGarment(QPainter& painter, const SheetContext& context, const PlacementPlan& plan,
                  const QRectF& area) {
  const GarmentDrawing drawing(plan, context.shop, context.units);
  const QRectF garment =
      drawing.panelBounds().adjusted(-kRoundPanel, -kRoundPanel, kRoundPanel, kRoundPanel);
  const double scale = std::max(garment.width() / area.width(), garment.height() / area.height());
  const QPointF corner = garment.center() - QPointF(area.width(), area.height()) * scale / 2.0;
  painter.save();
  painter.translate(area.topLeft());
  painter.scale(1.0 / scale, 1.0 / scale);
  painter.translate(-corner);
  drawing.paint(painter, approvalStyle(scale), QRectF(corner, area.size() * scale));
  painter.restore();
}

// Pictures side by side; four look better two by two.
std::size_t inARow(std::size_t pictures) {
  constexpr std::size_t kSquare = 4;
  return pictures == kSquare ? 2 : std::clamp<std::size_t>(pictures, 1, kMostInARow);
}

double wordsHeight(const Picture& picture, double width) {
  double height = lettering::wrappedHeight(picture.title, kHeading, width) + 1.0;
  for (const QString& words : picture.words) {
    height += lettering::wrappedHeight(words, kText, width);
  }
  return height;
}

void paintPicture(QPainter& painter, const SheetContext& context, const Picture& picture,
                  QPointF at, QSizeF size) {
  const double width = size.width();
  const QRectF area(at, size);
  if (picture.plan != nullptr) {
    paintGarment(painter, context, *picture.plan, area);
  } else {
    painter.setPen(QPen(Qt::black, 0.25, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area.adjusted(1.0, 1.0, -1.0, -1.0));
    lettering::drawWrapped(painter, area.topLeft() + QPointF(4.0, 4.0), width - 8.0,
                           printed("The place of this design is not settled yet."), kHeading,
                           Qt::black);
  }
  QPointF line = at + QPointF(0.0, size.height() + 1.0);
  line.ry() += lettering::drawWrapped(painter, line, width, picture.title, kHeading, Qt::black);
  for (const QString& words : picture.words) {
    line.ry() += lettering::drawWrapped(painter, line, width, words, kText, Qt::black);
  }
}

void addPictures(SheetList& list, const SheetContext& context, const std::vector<Picture>& pictures,
                 double height) {
  const std::size_t columns = inARow(pictures.size());
  const double width = (list.width() - kPictureGap * static_cast<double>(columns - 1)) /
                       static_cast<double>(columns);
  for (std::size_t first = 0; first < pictures.size(); first += columns) {
    const std::size_t end = std::min(pictures.size(), first + columns);
    const std::vector<Picture> beside(pictures.begin() + static_cast<std::ptrdiff_t>(first),
                                      pictures.begin() + static_cast<std::ptrdiff_t>(end));
    FlowRow row;
    for (const Picture& picture : beside) {
      row.height = std::max(row.height, height + wordsHeight(picture, width) + 3.0);
    }
    row.paint = [context, beside, width, height](QPainter& painter, QPointF at) {
      for (std::size_t i = 0; i < beside.size(); ++i) {
        paintPicture(painter, context, beside[i],
                     at + QPointF(static_cast<double>(i) * (width + kPictureGap), 0.0),
                     QSizeF(width, height));
      }
    };
    list.add(std::move(row));
  }
}

// ---- Words
// ---------------------------------------------------------------------------------------

QString sizeWords(const SummaryPlace& place, const UnitChoice& units) {
  QString text = printed("%1 wide, %2 high", formatLength(place.width, units),
                         formatLength(place.height, units));
  if (units.length != LengthUnit::Millimetre) {
    constexpr UnitChoice kMillimetres{LengthUnit::Millimetre};
    text +=
        QStringLiteral(" (%1)").arg(toQString(sizePhrase(place.width, place.height, kMillimetres)));
  }
  return text;
}

std::vector<Picture> picturesOf(const SheetContext& context, const SummaryLine& summary,
                                std::size_t line) {
  std::vector<Picture> pictures;
  for (std::size_t i = 0; i < summary.places.size(); ++i) {
    const SummaryPlace& place = summary.places[i];
    Picture picture;
    picture.plan = place.shown ? &context.plan.placements[*place.shown] : nullptr;
    picture.title = toQString(place.location);
    picture.words << oneLine(place.design) << sizeWords(place, context.units);
    if (const Location* location =
            context.rules.location(context.order.lines[line].placements[i].location)) {
      picture.words << capitalised(toQString(sidePhrase(*location)));
    }
    if (picture.plan != nullptr) {
      if (picture.plan->placed.turn != Angle()) {
        picture.words << printed("Turn: %1", turnPhrase(*picture.plan));
      }
      picture.words << printed("Drawn on size %1", picture.plan->size.text());
    }
    if (place.held > 0) {
      picture.words << (place.held == place.garments
                            ? printed("Still to be settled: it cannot be sewn like this.")
                            : printed("Still to be settled for %1 of %2 garments: on their "
                                      "sizes it cannot be sewn like this.",
                                      place.held, place.garments));
    }
    pictures.push_back(picture);
  }
  return pictures;
}

void addSizes(SheetList& list, const SummaryLine& line) {
  list.heading(printed("Garments, colours and quantities"));
  TableCell colour = strongCell(line.colour.empty() ? printed("not stated") : oneLine(line.colour));
  if (line.cloth) {
    colour.swatch = inkOf(*line.cloth);
  }
  QStringList sizes;
  for (const SizeQuantity& size : line.sizes) {
    sizes << quantityText(size.size, size.quantity);
  }
  list.table({{printed("Garment"), 0.0, 1.0},
              {printed("Colour"), 0.0, 0.8},
              {printed("Sizes and quantities"), 0.0, 1.5},
              {printed("In all"), 18.0, 1.0, true}});
  list.row({strongCell(oneLine(line.blank)), colour, headingCell(sizes.join(QStringLiteral(", "))),
            headingCell(countText(line.garments))});
}

void addThreads(SheetList& list, const SummaryLine& line) {
  if (!line.threads.empty()) {
    list.heading(printed("Thread colours"));
    list.table({{printed("Thread"), 0.0, 1.0}, {printed("In"), 0.0, 1.4}});
  }
  for (const SummaryThread& thread : line.threads) {
    TableCell name = swatchCell(oneLine(thread.name), inkOf(thread.colour));
    name.style = typography::kStrong;
    QStringList designs;
    for (const std::string& design : thread.designs) {
      designs << oneLine(design);
    }
    TableCell where;
    where.text = designs.join(QStringLiteral("; "));
    list.row({name, where});
  }
  list.text(printed("Colours on paper and screen differ from thread and cloth. Ask for "
                    "samples where the shade matters."),
            typography::kStrong);
}

// Kept together, so that nobody signs half of it.
void addSignature(SheetList& list) {
  list.heading(printed("Sign here"));
  list.table({{QString(), 52.0}, {QString(), 36.0}, {}}, false);
  TableCell approved = tickCell(printed("approved"));
  approved.style = kHeading;
  TableCell change = tickCell(printed("change:"));
  change.style = kHeading;
  list.row({approved, change, writeCell()}, true);
  TableCell line = writeCell();
  line.span = 3;
  list.row({line}, true);
  list.table({{printed("Name"), 14.0},
              {},
              {printed("Date"), 12.0},
              {QString(), 30.0},
              {printed("Signature"), 22.0},
              {}},
             false);
  list.row({strongCell(printed("Name")), writeCell(), strongCell(printed("Date")), writeCell(),
            strongCell(printed("Signature")), writeCell()});
}

std::vector<SheetPage> approvalPages(const SheetContext& context, const SheetHead& head,
                                     const SummaryLine& line, std::size_t index) {
  SheetPage page;
  page.title = printed("For approval: line %1", line.id);
  page.detail = colouredName(line.blank, line.colour);
  page.about = QStringLiteral("line %1 approval").arg(toQString(line.id));
  const std::vector<Picture> pictures = picturesOf(context, line, index);
  std::vector<SheetPage> pages;
  for (const double height : kPictureHeights) {
    SheetList list(head, page);
    addPictures(list, context, pictures, height);
    addSizes(list, line);
    addThreads(list, line);
    addSignature(list);
    std::vector<SheetPage> tried = list.pages();
    if (pages.empty() || tried.size() < pages.size()) {
      pages = std::move(tried);
    }
    if (pages.size() == 1) {
      break;
    }
  }
  return pages;
}

std::vector<SheetSection> approvalSections(const SheetContext& context, const SheetHead& head,
                                           const TemplateVariants& /*variants*/) {
  const OrderSummary summary = orderSummary(context.plan, {}, reportContext(context));
  std::vector<SheetSection> made;
  for (std::size_t index = 0; index < summary.lines.size(); ++index) {
    SheetSection section;
    section.title =
        printed("Line %1, %2", summary.lines[index].id, oneLine(summary.lines[index].blank));
    section.pages = [context, head, line = summary.lines[index], index] {
      return approvalPages(context, head, line, index);
    };
    made.push_back(std::move(section));
  }
  return made;
}

}  // namespace

SheetKind approvalKind() {
  return {80,
          "approval",
          printed("Approval pictures"),
          printed("For the customer: each line with its designs, colours and quantities."),
          true,
          approvalSections};
}

}  // namespace creaseline
