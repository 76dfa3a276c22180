// SPDX-License-Identifier: MIT
// Long sets of sheets: time and size a page, memory against the number of pages; beside it, in the
// same run, the same number of pages of plain text from Qt's PDF writer alone.
#include <fmt/format.h>
#include <sys/resource.h>

#include <QGuiApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <chrono>
#include <filesystem>
#include <iostream>

#include "creaseline/planning/planner.h"
#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_set.h"
#include "support/sample.h"

namespace {

using namespace creaseline;
using namespace creaseline::literals;

constexpr UnitChoice kInches{LengthUnit::Inch, RulerMark::Eighth, WeightUnit::GramsPerSquareMetre};

// Lines that differ in their drop, so that none share a page.
Order orderOf(int lines) {
  const char* locations[] = {"centre-chest", "left-chest", "upper-back", "full-back"};
  Order order = sample::order(sample::blank("pullover-hoodie"),
                              sample::design("crest", 90_mm, 80_mm), "centre-chest", {"M", "2XL"});
  const OrderLine pattern = order.lines.front();
  order.lines.clear();
  for (int i = 0; i < lines; ++i) {
    OrderLine line = pattern;
    line.id = std::to_string(i + 1);
    line.placements[0].location = LocationId(locations[i % 4]);
    line.placements[0].moveDown = Length::fromMm(0.2 * (i % 50));
    order.lines.push_back(std::move(line));
  }
  return order;
}

double peakMegabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

template <class Work>
double secondsOf(Work work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

void writePlainText(const QString& path, int pages) {
  QPdfWriter writer(path);
  writer.setPageSize(QPageSize(QPageSize::A4));
  QPainter painter(&writer);
  for (int page = 0; page < pages; ++page) {
    if (page > 0) {
      writer.newPage();
    }
    for (int line = 0; line < 60; ++line) {
      painter.drawText(QPointF(500.0, 500.0 + 200.0 * line),
                       QStringLiteral("page %1, line %2 of a plain text").arg(page).arg(line));
    }
  }
}

void measure(int lines, const QTemporaryDir& folder) {
  const Order order = orderOf(lines);
  const Shop shop = sample::shop({sample::frame("a", 160_mm, 130_mm, 20_mm)});
  const Plan plan = planOrder(order, shop, sample::shippedRules());
  const double before = peakMegabytes();
  const QString path = folder.filePath(QStringLiteral("sheets.pdf"));
  int pages = 0;
  const double seconds = secondsOf([&] {
    pages = writeSheets(sheetSet({plan, order, shop, sample::shippedRules(), kInches}, {}),
                        path.toStdString())
                .pages;
  });
  const double after = peakMegabytes();
  const double plain =
      secondsOf([&] { writePlainText(folder.filePath(QStringLiteral("plain.pdf")), pages); });
  const double kilobytes =
      static_cast<double>(std::filesystem::file_size(path.toStdString())) / 1000.0;
  std::cout << fmt::format("{:>8} {:>10.2f} {:>12.2f} {:>16.1f} {:>14.1f} {:>24.1f}\n", pages,
                           seconds, 1000.0 * seconds / pages, seconds / plain, kilobytes / pages,
                           after - before);
}

}  // namespace

int main(int argc, char* argv[]) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  const QTemporaryDir folder;
  std::cout
      << "The usual set of sheets, A4; plain text: 60 lines a page from Qt's writer alone\n\n";
  std::cout << fmt::format("{:>8} {:>10} {:>12} {:>16} {:>14} {:>24}\n", "pages", "seconds",
                           "ms a page", "to plain text", "kB a page", "peak MB over the plan");
  for (const int lines : {10, 50, 200, 800}) {
    measure(lines, folder);
  }
  return 0;
}
