// SPDX-License-Identifier: MIT
// Placement sheets as a reader and a ruler see them: poppler's tools are the witnesses.
#include "creaseline/sheets/sheet_kind.h"

#include <QRegularExpression>
#include <catch2/catch.hpp>
#include <cmath>

#include "creaseline/planning/groups.h"
#include "sheets/clear_text.h"
#include "sheets/pdf_probe.h"
#include "sheets/sheet_samples.h"

using namespace creaseline;
using namespace creaseline::literals;
using creaseline::probe::requireClearText;

namespace {

double millimetres(double pixels, int dotsPerInch) {
  return pixels * 25.4 / dotsPerInch;
}

double statedScale(const QString& text) {
  static const QRegularExpression kScale(QStringLiteral("scale 1 : ([0-9.]+)"));
  const QRegularExpressionMatch match = kScale.match(text);
  REQUIRE(match.hasMatch());
  return match.captured(1).toDouble();
}

// Middles of the vertical dark lines whose length lies within half a millimetre of `length`.
std::vector<double> verticalLines(const QImage& page, int dotsPerInch, double length) {
  std::vector<double> middles;
  int first = -1;
  for (int x = 0; x <= page.width(); ++x) {
    const bool hit =
        x < page.width() &&
        std::abs(millimetres(probe::longestDarkRun(page, x, false).length, dotsPerInch) - length) <
            0.5;
    if (hit && first < 0) {
      first = x;
    } else if (!hit && first >= 0) {
      middles.push_back(millimetres((first + x) / 2.0, dotsPerInch));
      first = -1;
    }
  }
  return middles;
}

}  // namespace

TEST_CASE("pages have the size of the paper", "[sheets][pdf]") {
  // ISO 216:2007, A4, 210 x 297 mm; Letter, ANSI/ASME Y14.1, 8 1/2 x 11 in (both from memory).
  // The writer rounds page boxes to whole points of 1/72 in.
  const auto [paper, width, height] = GENERATE(
      table<Paper, double, double>({{Paper::A4, 210.0, 297.0}, {Paper::Letter, 215.9, 279.4}}));
  const auto sheets = sample::written(sample::chestOrder(), sample::chestShop(), paper);
  const QString info = probe::run(
      QStringLiteral("pdfinfo"), {QStringLiteral("-box"), QStringLiteral("-f"), QStringLiteral("1"),
                                  QStringLiteral("-l"), QStringLiteral("-1"), sheets->pdf});
  static const QRegularExpression kBox(
      QStringLiteral("MediaBox: +([0-9.]+) +([0-9.]+) +([0-9.]+) +([0-9.]+)"));
  auto boxes = kBox.globalMatch(info);
  int count = 0;
  while (boxes.hasNext()) {
    const QRegularExpressionMatch box = boxes.next();
    CHECK(box.captured(1).toDouble() == 0.0);
    CHECK(box.captured(2).toDouble() == 0.0);
    CHECK(box.captured(3).toDouble() == Approx(width / 25.4 * 72.0).margin(0.51));
    CHECK(box.captured(4).toDouble() == Approx(height / 25.4 * 72.0).margin(0.51));
    ++count;
  }
  CHECK(count == sheets->written.pages);
}

TEST_CASE("the file is sound and its fonts are embedded", "[sheets][pdf]") {
  const auto sheets = sample::written(sample::chestOrder(), sample::chestShop());
  probe::run(QStringLiteral("qpdf"), {QStringLiteral("--check"), sheets->pdf});
  const QStringList lines =
      probe::run(QStringLiteral("pdffonts"), {sheets->pdf}).split(u'\n', Qt::SkipEmptyParts);
  REQUIRE(lines.size() > 2);  // two lines of heading
  for (qsizetype i = 2; i < lines.size(); ++i) {
    INFO(lines[i].toStdString());
    CHECK(lines[i].contains(QRegularExpression(QStringLiteral("DejaVuSans"))));
    // columns "emb sub uni", then object and generation
    CHECK(lines[i].contains(
        QRegularExpression(QStringLiteral(" yes +(yes|no) +(yes|no) +\\d+ +\\d+ *$"))));
  }
}

TEST_CASE("each group of sizes has its page with its numbers, sizes and place in the set",
          "[sheets][pdf]") {
  const auto sheets = sample::written(sample::chestOrder(), sample::chestShop());
  const std::vector<SizeGroup> groups = groupSizes(sheets->plan, sample::kInches);
  REQUIRE(groups.size() >= 2);
  std::vector<QString> firstPages;  // of the groups; what overflows goes on behind them
  for (int page = 1; page <= sheets->written.pages; ++page) {
    const QString text = probe::pageText(sheets->pdf, page);
    CHECK(text.contains(QStringLiteral("page %1 of %2").arg(page).arg(sheets->written.pages)));
    if (!text.contains(QStringLiteral(", continued"))) {
      firstPages.push_back(text);
    }
  }
  REQUIRE(firstPages.size() == groups.size());
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const QString& text = firstPages[i];
    INFO(text.toStdString());
    CHECK(text.contains(QStringLiteral("2026-118")));
    CHECK(text.contains(QStringLiteral("Ferry crew")));
    CHECK(text.contains(QStringLiteral("wearer's right")));
    CHECK(text.contains(QStringLiteral("viewer's left")));
    for (const std::size_t index : groups[i]) {
      const PlacementPlan& plan = sheets->plan.placements[index];
      CHECK(text.contains(QStringLiteral("%1 × %2").arg(QString::fromStdString(plan.size.text()),
                                                        QString::number(plan.quantity))));
      CHECK(text.contains(QString::fromStdString(formatLength(plan.placed.drop, sample::kInches))));
      CHECK(text.contains(
          QString::fromStdString(formatLength(plan.placed.centreOffset, sample::kInches))));
    }
  }
}

TEST_CASE("text keeps off the edge and off other text", "[sheets][pdf]") {
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  SECTION("on an ordinary order") {
    requireClearText(sample::written(sample::chestOrder(), sample::chestShop(), paper)->pdf);
  }
  SECTION("with names of 60 characters, 30 thread blocks and 12 sizes") {
    const auto sheets = sample::written(sample::longOrder(), sample::chestShop(), paper);
    REQUIRE(groupSizes(sheets->plan, sample::kInches).size() == 1);
    CHECK(sheets->written.pages > 1);
    requireClearText(sheets->pdf);
  }
  SECTION("on each location") {
    const std::string location = GENERATE(as<std::string>{}, "left-chest", "upper-back",
                                          "full-back", "left-sleeve", "right-sleeve", "hood-back");
    CAPTURE(location);
    Order order = sample::order(sample::blank("pullover-hoodie"),
                                sample::design("mark", 70_mm, 60_mm), location, {"M", "2XL"});
    requireClearText(
        sample::written(order, sample::shop({sample::frame("a", 100_mm, 90_mm)}), paper)->pdf);
  }
}

TEST_CASE("no thread block is lost on the way to further pages", "[sheets][pdf]") {
  const auto sheets = sample::written(sample::longOrder(), sample::chestShop());
  QString all;
  for (int page = 1; page <= sheets->written.pages; ++page) {
    all += probe::pageText(sheets->pdf, page);
  }
  CHECK(all.count(QStringLiteral("216")) == 30);
}

TEST_CASE("what must not be sewn says so, and why, and what was checked to help", "[sheets][pdf]") {
  const auto sheets =
      sample::written(sample::order(sample::blank("pullover-hoodie"),
                                    sample::design("wide", 200_mm, 120_mm), "centre-chest", {"M"}),
                      sample::shop({sample::frame("a", 160_mm, 130_mm)}));
  REQUIRE_FALSE(sheets->plan.placements.front().frame);
  const QString text = probe::pageText(sheets->pdf, 1);
  INFO(text.toStdString());
  CHECK(text.contains(QStringLiteral("DO NOT SEW")));
  CHECK_FALSE(text.contains(QStringLiteral("Steps")));
  const Finding& finding = sheets->plan.findings.front();
  REQUIRE(finding.severity == Severity::Stop);
  REQUIRE_FALSE(finding.remedies.empty());
  CHECK(text.count(QStringLiteral("Checked remedy")) >=
        static_cast<qsizetype>(finding.remedies.size()));
  requireClearText(sheets->pdf);

  const auto fine = sample::written(sample::chestOrder(), sample::chestShop());
  CHECK_FALSE(probe::pageText(fine->pdf, 1).contains(QStringLiteral("DO NOT SEW")));
}

TEST_CASE("the check bar measures 100 mm on the raster", "[sheets][pdf][scale]") {
  constexpr int kDots = 600;
  const Paper paper = GENERATE(Paper::A4, Paper::Letter);
  const auto sheets = sample::written(sample::chestOrder(), sample::chestShop(), paper);
  const QImage page = probe::raster(sheets->pdf, 1, kDots);
  CHECK(probe::checkBarLength(page, kDots) == Approx(100.0).margin(0.1));
}

TEST_CASE("the drawing has the scale that it states", "[sheets][pdf][scale]") {
  constexpr int kDots = 600;
  // A large frame, so that no label comes to lie over its sides.
  const auto sheets =
      sample::written(sample::order(sample::blank("pullover-hoodie"),
                                    sample::design("wide", 260_mm, 200_mm), "full-back", {"XL"}),
                      sample::shop({sample::frame("a", 320_mm, 280_mm)}));
  const double scale = statedScale(probe::pageText(sheets->pdf, 1));
  const Frame& frame = sheets->shop.frames.front();
  REQUIRE(sheets->plan.placements.front().frame->turn == Angle());
  const QImage page = probe::raster(sheets->pdf, 1, kDots);
  const std::vector<double> lines = verticalLines(page, kDots, frame.body.height().mm() / scale);
  INFO("scale " << scale << ", " << lines.size() << " lines");
  REQUIRE(lines.size() == 2);  // both upright sides of the frame's body
  CHECK((lines[1] - lines[0]) * scale == Approx(frame.body.width().mm()).margin(0.5));
}

TEST_CASE("a sheet stays readable in greyscale", "[sheets][pdf]") {
  const auto sheets = sample::written(sample::chestOrder(), sample::chestShop());
  const QImage page = probe::raster(sheets->pdf, 1, 150);
  std::vector<int> histogram(256, 0);
  for (int y = 0; y < page.height(); ++y) {
    for (int x = 0; x < page.width(); ++x) {
      ++histogram[page.constScanLine(y)[x]];
    }
  }
  const double whole = static_cast<double>(page.width()) * page.height();
  double dark = 0.0;
  double middle = 0.0;
  for (std::size_t level = 0; level < 256; ++level) {
    dark += level < 60 ? histogram[level] : 0.0;
    middle += level >= 60 && level < 230 ? histogram[level] : 0.0;
  }
  CAPTURE(dark / whole, middle / whole);
  CHECK(histogram[0] > 0);              // black is black
  CHECK(histogram[255] > 0.8 * whole);  // and little ink is used
  CHECK(dark / whole > 0.01);
  CHECK(middle / whole < 0.12);
}

TEST_CASE("the same plan gives the same pages", "[sheets][pdf]") {
  const auto first = sample::written(sample::chestOrder(), sample::chestShop());
  const auto second = sample::written(sample::chestOrder(), sample::chestShop());
  const auto a = probe::words(first->pdf);
  const auto b = probe::words(second->pdf);
  REQUIRE(a.size() == b.size());
  for (std::size_t p = 0; p < a.size(); ++p) {
    REQUIRE(a[p].words.size() == b[p].words.size());
    for (std::size_t i = 0; i < a[p].words.size(); ++i) {
      CHECK(a[p].words[i].text == b[p].words[i].text);
      CHECK(a[p].words[i].box == b[p].words[i].box);
    }
  }
}
