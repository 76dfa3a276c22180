// SPDX-License-Identifier: MIT
// Templates and gauges measured on the page as poppler shows it, at 600 dots per inch, against the
// figures that planning laid out. A pixel is 0.042 mm.
#include "sheets/true_scale.h"

#include <QRegularExpression>
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "creaseline/planning/gauge_figure.h"
#include "creaseline/planning/template_figure.h"
#include "planning/figure_parts.h"
#include "sheets/lettering.h"
#include "sheets/pdf_probe.h"
#include "sheets/raster_marks.h"
#include "sheets/sheet_samples.h"
#include "sheets/text.h"
#include "sheets/typography.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::sheets::toQString;

namespace {

constexpr int kFineDots = 600;
constexpr double kTolerance = 0.1;  // millimetres, over 250
constexpr double kEdge = 10.0;      // nothing that matters is nearer to the sheet's edge

FigureContext contextOf(const sample::Sheets& sheets) {
  return {sheets.plan, sheets.order, sheets.shop, sample::shippedRules(), sample::kInches};
}

// The body of the first page of a set of that kind.
QRectF bodyOf(const sample::Sheets& sheets, Paper paper, const std::string& kind) {
  SheetChoice choice;
  choice.kinds = {kind};
  choice.paper = paper;
  const SheetContext context{sheets.plan, sheets.order, sheets.shop, sample::shippedRules(),
                             sample::kInches};
  const SheetDocument document = sheetSet(context, choice);
  return sheetBody(document.head, document.sections.front().pages().front());
}

// A page with all but its body wiped, so that rules and check bars are no part of what is found.
QImage bodyRaster(const QString& pdf, int page, const QRectF& body) {
  QImage image = probe::raster(pdf, page, kFineDots);
  const double pixels = kFineDots / 25.4;
  const QRect keep(QPointF(body.left() * pixels, body.top() * pixels).toPoint() - QPoint(4, 4),
                   QPointF(body.right() * pixels, body.bottom() * pixels).toPoint() + QPoint(4, 4));
  for (int row = 0; row < image.height(); ++row) {
    uchar* line = image.scanLine(row);
    const bool outside = row < keep.top() || row > keep.bottom();
    std::fill(line, line + (outside ? image.width() : std::max(keep.left(), 0)), uchar{255});
    std::fill(line + std::min(keep.right(), image.width()), line + image.width(), uchar{255});
  }
  return image;
}

Box cutBox(const Figure& figure) {
  Box box;
  for (const Stroke& stroke : figure.strokes) {
    if (stroke.kind == StrokeKind::Cut) {
      for (const Point point : stroke.line) {
        box.add(point);
      }
    }
  }
  return box;
}

// Heights of the figure's level lines that are that long, from the top.
std::set<double> levels(const Figure& figure, double length) {
  std::set<double> found;
  for (const Stroke& stroke : figure.strokes) {
    if (stroke.kind != StrokeKind::Cut && stroke.kind != StrokeKind::Guide) {
      continue;
    }
    for (std::size_t i = 1; i < stroke.line.size(); ++i) {
      if (stroke.line[i].y == stroke.line[i - 1].y &&
          std::abs(stroke.line[i].x - stroke.line[i - 1].x) >= length) {
        found.insert(stroke.line[i].y);
      }
    }
    if (stroke.closed && stroke.line.front().y == stroke.line.back().y) {
      found.insert(stroke.line.front().y);
    }
  }
  return found;
}

// Joining marks of a page by their names.
std::map<QString, QPointF> joinMarks(const QString& pdf, int page, const QImage& image) {
  static const QRegularExpression kName(QStringLiteral("^[0-9]+[ab]$"));
  const auto words = probe::words(pdf)[static_cast<std::size_t>(page - 1)].words;
  std::map<QString, QPointF> marks;
  for (const QPointF disc : probe::discs(image, kFineDots, kJoinMarkRadius)) {
    double nearest = 8.0;
    QString name;
    for (const probe::Word& word : words) {
      const QPointF away = word.box.center() - disc;
      const double distance = std::hypot(away.x(), away.y());
      if (kName.match(word.text).hasMatch() && distance < nearest) {
        nearest = distance;
        name = word.text;
      }
    }
    CHECK_FALSE(name.isEmpty());
    CHECK(marks.emplace(name, disc).second);
  }
  return marks;
}

void checkWordsInside(const QString& pdf) {
  for (const probe::PageWords& page : probe::words(pdf)) {
    for (const probe::Word& word : page.words) {
      INFO(word.text.toStdString());
      CHECK(word.box.left() >= kEdge);
      CHECK(word.box.top() >= kEdge);
      CHECK(word.box.right() <= page.size.width() - kEdge);
      CHECK(word.box.bottom() <= page.size.height() - kEdge);
    }
  }
}

std::unique_ptr<sample::Sheets> smallTemplate(Paper paper) {
  return sample::written(sample::order(sample::blank("t-shirt"), sample::design("d", 120_mm, 90_mm),
                                       "centre-chest", {"M"}),
                         sample::shop({sample::frame("f", 150_mm, 120_mm)}), paper, "templates");
}

// As wide as 256 mm with its rim: four tiles.
std::unique_ptr<sample::Sheets> largeTemplate(Paper paper) {
  return sample::written(sample::order(sample::blank("t-shirt"),
                                       sample::design("d", 200_mm, 220_mm), "full-back", {"XL"}),
                         sample::shop({sample::frame("f", 240_mm, 260_mm)}), paper, "templates");
}

Figure firstTemplate(const sample::Sheets& sheets) {
  const auto groups = templateGroups(contextOf(sheets));
  REQUIRE(groups.size() == 1);
  return templateFigure(contextOf(sheets), groups.front(), TemplateView::Usual);
}

}  // namespace

TEST_CASE("a template on one page measures what planning laid out", "[truescale]") {
  for (const Paper paper : {Paper::A4, Paper::Letter}) {
    CAPTURE(nameOf(paper));
    const auto sheets = smallTemplate(paper);
    REQUIRE(sheets->written.pages == 1);
    const Figure figure = firstTemplate(*sheets);
    const QImage image = bodyRaster(sheets->pdf, 1, bodyOf(*sheets, paper, "templates"));
    const Box cut = cutBox(figure);

    const auto found = probe::lines(image, kFineDots, true, 100.0);
    std::set<double> wanted = levels(figure, 100.0);
    // The sides of the design are lines too.
    wanted.insert(-45.0);
    wanted.insert(45.0);
    REQUIRE(found.size() == wanted.size());
    std::size_t i = 0;
    for (const double y : wanted) {
      CHECK(std::abs(found[i] - found.front() - (y - *wanted.begin())) < kTolerance);
      ++i;
    }
    const auto sides = probe::lines(image, kFineDots, false, 100.0);
    REQUIRE(sides.size() >= 2);
    CHECK(std::abs(sides.back() - sides.front() - cut.width()) < kTolerance);
    checkWordsInside(sheets->pdf);
  }
}

TEST_CASE("a template on four tiles measures right across them, and its marks meet",
          "[truescale]") {
  for (const Paper paper : {Paper::A4, Paper::Letter}) {
    CAPTURE(nameOf(paper));
    const auto sheets = largeTemplate(paper);
    REQUIRE(sheets->written.pages == 4);
    const Figure figure = firstTemplate(*sheets);
    const Box cut = cutBox(figure);
    REQUIRE(cut.width() > 250.0);
    const QRectF body = bodyOf(*sheets, paper, "templates");

    struct Page {
      std::vector<double> columns, rows;
      std::map<QString, QPointF> marks;
    };
    std::vector<Page> pages;
    for (int number = 1; number <= 4; ++number) {
      const QImage image = bodyRaster(sheets->pdf, number, body);
      pages.push_back({probe::lines(image, kFineDots, false, 60.0),
                       probe::lines(image, kFineDots, true, 60.0),
                       joinMarks(sheets->pdf, number, image)});
      REQUIRE_FALSE(pages.back().columns.empty());
      REQUIRE_FALSE(pages.back().rows.empty());
      CHECK(pages.back().marks.size() == 4);  // two for each of two neighbours
    }
    int met = 0;
    for (const auto& [left, right] : {std::pair{0, 1}, std::pair{2, 3}}) {
      const Page& a = pages[static_cast<std::size_t>(left)];
      const Page& b = pages[static_cast<std::size_t>(right)];
      for (const auto& [name, at] : a.marks) {
        if (const auto same = b.marks.find(name); same != b.marks.end()) {
          CAPTURE(name.toStdString());
          const double across = at.x() - a.columns.front() + b.columns.back() - same->second.x();
          CHECK(std::abs(across - cut.width()) < kTolerance);
          // The tiles of a row show the same heights.
          CHECK(std::abs(at.y() - same->second.y()) < kTolerance);
          ++met;
        }
      }
    }
    for (const auto& [upper, lower] : {std::pair{0, 2}, std::pair{1, 3}}) {
      const Page& a = pages[static_cast<std::size_t>(upper)];
      const Page& b = pages[static_cast<std::size_t>(lower)];
      for (const auto& [name, at] : a.marks) {
        if (const auto same = b.marks.find(name); same != b.marks.end()) {
          CAPTURE(name.toStdString());
          const double along = at.y() - a.rows.front() + b.rows.back() - same->second.y();
          CHECK(std::abs(along - cut.height()) < kTolerance);
          CHECK(std::abs(at.x() - same->second.x()) < kTolerance);
          ++met;
        }
      }
    }
    CHECK(met == 8);
    checkWordsInside(sheets->pdf);
  }
}

TEST_CASE("register marks of a design in two parts measure right on both templates",
          "[truescale]") {
  Design design = sample::design("d", 130_mm, 80_mm);
  design.outline = {{{{{-65, -40}, {-8, -40}, {-8, 40}, {-65, 40}}, {}},
                     {{{8, -40}, {65, -40}, {65, 40}, {8, 40}}, {}}}};
  Order order = sample::order(sample::blank("t-shirt"), design, "full-back", {"XL"});
  order.lines[0].placements[0].split = true;
  for (const Paper paper : {Paper::A4, Paper::Letter}) {
    CAPTURE(nameOf(paper));
    const auto sheets = sample::written(order, sample::shop({sample::frame("f", 100_mm, 122_mm)}),
                                        paper, "templates");
    REQUIRE(sheets->written.pages == 2);
    const auto groups = templateGroups(contextOf(*sheets));
    REQUIRE(groups.size() == 2);
    for (std::size_t part = 0; part < 2; ++part) {
      CAPTURE(part);
      const Figure figure = templateFigure(contextOf(*sheets), groups[part], TemplateView::Usual);
      const QImage image =
          bodyRaster(sheets->pdf, static_cast<int>(part) + 1, bodyOf(*sheets, paper, "templates"));
      const Box cut = cutBox(figure);
      const double left = probe::lines(image, kFineDots, false, 100.0).front() - cut.min.x;
      const double top = probe::lines(image, kFineDots, true, 100.0).front() - cut.min.y;
      int arms = 0;
      for (const Stroke& stroke : figure.strokes) {
        if (stroke.kind != StrokeKind::Register || stroke.line[0].y != stroke.line[1].y) {
          continue;
        }
        // Across the level arm, beside the upright one.
        const double y = stroke.line[0].y;
        const double beside = std::min(stroke.line[0].x, stroke.line[1].x) + 2.0;
        const auto runs =
            probe::darkRuns(image, kFineDots, left + beside, top + y - 1.5, top + y + 1.5);
        REQUIRE(runs.size() == 1);
        CHECK(std::abs(runs.front() - top - y) < kTolerance);
        ++arms;
      }
      CHECK(arms == 2);
    }
    checkWordsInside(sheets->pdf);
  }
}

TEST_CASE("every tile says which it is, and no words of the template are lost", "[truescale]") {
  const auto sheets = largeTemplate(Paper::A4);
  QString all;
  for (int page = 1; page <= 4; ++page) {
    const QString text = probe::pageText(sheets->pdf, page);
    CHECK(text.contains(QStringLiteral("Tile %1 of 4: row %2 of 2, column %3 of 2")
                            .arg(page)
                            .arg((page + 1) / 2)
                            .arg(2 - page % 2)));
    CHECK(text.contains(QStringLiteral("100 mm")));
    CHECK(text.contains(QStringLiteral("4 in")));
    all += text + u' ';
  }
  for (const FigureText& text : firstTemplate(*sheets).texts) {
    INFO(text.text);
    CHECK(all.contains(toQString(text.text)));
  }
}

TEST_CASE("a gauge's ruler, sides and cross measure right", "[truescale]") {
  for (const Paper paper : {Paper::A4, Paper::Letter}) {
    CAPTURE(nameOf(paper));
    const auto sheets =
        sample::written(sample::order(sample::blank("t-shirt"), sample::design("d", 160_mm, 150_mm),
                                      "centre-chest", {"XL"}),
                        sample::shop({sample::frame("f", 190_mm, 180_mm)}), paper, "gauges");
    REQUIRE(sheets->written.pages == 1);
    const auto strips = gaugeStrips(contextOf(*sheets));
    REQUIRE(strips.size() == 1);
    const Figure figure = gaugeFigure(contextOf(*sheets), strips.front());
    const Box cut = cutBox(figure);
    const QImage image = bodyRaster(sheets->pdf, 1, bodyOf(*sheets, paper, "gauges"));
    const auto sides = probe::lines(image, kFineDots, false, 60.0);
    const auto rows = probe::lines(image, kFineDots, true, 60.0);
    REQUIRE(sides.size() == 2);
    REQUIRE_FALSE(rows.empty());
    CHECK(std::abs(sides[1] - sides[0] - cut.width()) < kTolerance);
    // From figure to page: the left side and the bottom are known.
    const auto toPage = [&](Point point) {
      return QPointF(sides[0] + point.x - cut.min.x, rows.back() + point.y - cut.max.y);
    };
    REQUIRE(figure.crosses.size() == 1);
    const Point cross = figure.crosses.front().at;

    const QPointF top = toPage({-1.0, 1.0});
    const auto marks = probe::darkRuns(image, kFineDots, top.x(), top.y(), rows.back() - 0.5);
    int checked = 0;
    for (int mark = 1; mark * 25.4 / 8.0 < cross.y - 6.0; ++mark) {
      const double wanted = toPage({0.0, mark * 25.4 / 8.0}).y();
      CAPTURE(mark);
      CHECK(std::any_of(marks.begin(), marks.end(),
                        [&](double found) { return std::abs(found - wanted) < kTolerance; }));
      ++checked;
    }
    CHECK(checked > 30);
    // An arm of the cross, between ring and end.
    const QPointF arm = toPage(cross + Point{3.5, 0.0});
    const auto arms = probe::darkRuns(image, kFineDots, arm.x(), arm.y() - 3.0, arm.y() + 3.0);
    REQUIRE(arms.size() == 1);
    CHECK(std::abs(arms.front() - arm.y()) < kTolerance);
    checkWordsInside(sheets->pdf);
    CHECK(probe::pageText(sheets->pdf, 1).contains(QStringLiteral("card")));
  }
}

TEST_CASE("planning counts on no less room for words than the font takes", "[truescale]") {
  for (const std::string text :
       {"this edge 3 1/2 in below the collar seam", "Escudo conmemorativo del club náutico",
        "Donaudampfschifffahrtsgesellschaft", "WWWWWWWWWW", "MMMMMMMM wwwwmmmm", "ÄÖÜ ÑÁÉÍÓÚ ß",
        "0123456789", "8 7/8 × 9 3/4 in", "Order 2026-118 & Co. (XL)", "@%&+=<>", "QOGCD HNU"}) {
    CAPTURE(text);
    const QString shown = toQString(text);
    CHECK(lettering::textWidth(shown, typography::kText) <= figure::roomFor(text, false));
    CHECK(lettering::textWidth(shown, typography::kStrong) <= figure::roomFor(text, true));
    CHECK(lettering::textWidth(shown, typography::kHeading) <= figure::roomFor(text, true, true));
  }
  CHECK(lettering::lineHeight(typography::kText) <= figure::kLineHeight);
  CHECK(lettering::lineHeight(typography::kHeading) <= figure::kLargeLineHeight);
}

TEST_CASE("templates and gauges of a long order stay inside the sheet", "[truescale]") {
  for (const std::string kind : {"templates", "gauges"}) {
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
      CAPTURE(kind, nameOf(paper));
      const auto sheets = sample::written(sample::longOrder(), sample::chestShop(), paper, kind);
      CHECK(sheets->written.pages >= 1);
      checkWordsInside(sheets->pdf);
    }
  }
}

TEST_CASE("a figure lies turned where that takes fewer pages", "[truescale]") {
  SheetHead head;
  head.order = QStringLiteral("order");
  SheetPage page;
  page.title = QStringLiteral("page");
  const auto pagesOf = [&](double width, double height) {
    Figure figure;
    figure.bounds = {{0.0, 0.0}, {width, height}};
    return trueScalePages(head, page, figure).size();
  };
  CHECK(pagesOf(170.0, 200.0) == 1);
  CHECK(pagesOf(200.0, 170.0) == 1);
  CHECK(pagesOf(200.0, 210.0) == 2);
  CHECK(pagesOf(330.0, 330.0) == 4);
  CHECK(pagesOf(900.0, 100.0) == pagesOf(100.0, 900.0));
  // Two small ones share a page, three of this height do not.
  Figure small;
  small.bounds = {{0.0, 0.0}, {150.0, 90.0}};
  CHECK(trueScalePages(head, page, std::vector<Figure>{small, small}).size() == 1);
  CHECK(trueScalePages(head, page, std::vector<Figure>{small, small, small}).size() == 2);
}
