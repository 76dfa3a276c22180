// SPDX-License-Identifier: MIT
// The printer: how it is set up so that nothing scales, what is known to be against it, and the
// printing itself.
#include <QFile>
#include <QPageLayout>
#include <QPainter>
#include <QPrintEngine>
#include <algorithm>
#include <cmath>

#include "creaseline/planning/planner.h"
#include "desk/sheet_output.h"

namespace creaseline::desk {

namespace {

constexpr double kMmPerInch = 25.4;
// Paper sizes of a driver are whole points; this is a little more than one.
constexpr double kPaperToleranceMm = 0.6;
// Under this key Qt keeps the options that its print dialog sets for CUPS, as name, value, name,
// value. The key is Qt's own, not a promised one (from memory, and seen in the code of Qt 6.4's
// CUPS plugin); an engine that does not know it gives nothing.
constexpr auto kCupsOptions = QPrintEngine::PrintEnginePropertyKey(0xfe00);

QPageSize pageSize(Paper paper) {
  return QPageSize(paperSize(paper), QPageSize::Millimeter);
}

// True where one of the job's options makes the print system fit, scale or gather pages. Names
// and values: the options of CUPS and of IPP (PWG 5100.13, print-scaling; RFC 8011, number-up).
bool optionsScale(const QStringList& options) {
  for (qsizetype i = 0; i + 1 < options.size(); i += 2) {
    const QString name = options[i].toLower();
    const QString value = options[i + 1].toLower();
    if ((name == QLatin1String("fit-to-page") || name == QLatin1String("fitplot")) &&
        value != QLatin1String("false")) {
      return true;
    }
    if (name == QLatin1String("print-scaling") && value != QLatin1String("none")) {
      return true;
    }
    if ((name == QLatin1String("scaling") || name == QLatin1String("natural-scaling")) &&
        value != QLatin1String("100")) {
      return true;
    }
    if (name == QLatin1String("number-up") && value != QLatin1String("1")) {
      return true;
    }
  }
  return false;
}

QString paperWarning(const QSizeF& given, const QSizeF& wanted) {
  return QObject::tr(
             "The printer is set to paper of %1 × %2 mm, the sheets are made for %3 × %4 mm. The "
             "driver would scale or cut them. Choose the same paper here and in the printer's "
             "settings.")
      .arg(given.width(), 0, 'f', 0)
      .arg(given.height(), 0, 'f', 0)
      .arg(wanted.width(), 0, 'f', 0)
      .arg(wanted.height(), 0, 'f', 0);
}

double widest(const QMarginsF& margins) {
  return std::max({margins.left(), margins.top(), margins.right(), margins.bottom()});
}

}  // namespace

void prepare(QPrinter& printer, Paper paper) {
  printer.setPageSize(pageSize(paper));
  printer.setPageOrientation(QPageLayout::Portrait);
  printer.setFullPage(true);
  printer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
}

QStringList printWarnings(const QPrinter& printer, Paper paper) {
  QStringList warnings;
  const QSizeF wanted = paperSize(paper);
  QPageLayout layout = printer.pageLayout();
  layout.setUnits(QPageLayout::Millimeter);
  const QSizeF given = layout.fullRect().size();
  if (std::abs(given.width() - wanted.width()) > kPaperToleranceMm ||
      std::abs(given.height() - wanted.height()) > kPaperToleranceMm) {
    warnings.append(paperWarning(given, wanted));
  }
  if (!printer.fullPage()) {
    warnings.append(
        QObject::tr("The driver insists on its own margins, so the sheets may be shifted or "
                    "scaled. Choose “no margins” or “borderless” in the printer's settings."));
  }
  if (const double edge = widest(layout.minimumMargins()); edge > kSheetMargin) {
    warnings.append(
        QObject::tr("This printer cannot print nearer than %1 mm to the paper's edge, the sheets "
                    "need %2 mm. What is outside would be lost. Choose larger paper.")
            .arg(edge, 0, 'f', 0)
            .arg(kSheetMargin, 0, 'f', 0));
  }
  if (optionsScale(printer.printEngine()->property(kCupsOptions).toStringList())) {
    warnings.append(
        QObject::tr("The printer's settings fit, scale or gather the pages. Choose 100 % or "
                    "“actual size”, and one page on each side."));
  }
  return warnings;
}

int printSheets(QPrinter& printer, SheetPager& sheets, const SheetOptions& options) {
  const int count = sheets.count();
  const int first = printer.fromPage() > 0 ? printer.fromPage() : 1;
  const int last = printer.toPage() > 0 ? std::min(printer.toPage(), count) : count;
  printer.setDocName(sheets.head().title);
  QPainter painter;
  if (first > last || !painter.begin(&printer)) {
    return 0;
  }
  for (int page = first; page <= last; ++page) {
    if (options.cancel != nullptr && options.cancel->load()) {
      printer.abort();
      painter.end();
      // Printed into a file, no half one stays.
      if (!printer.outputFileName().isEmpty()) {
        QFile::remove(printer.outputFileName());
      }
      throw Cancelled{};
    }
    if (page > first && !printer.newPage()) {
      return page - first;
    }
    painter.save();
    // The resolution, not logical or physical sizes of the device, which drivers round.
    const double unitsPerMm = printer.resolution() / kMmPerInch;
    painter.scale(unitsPerMm, unitsPerMm);
    sheets.paint(painter, page);
    painter.restore();
    if (options.progress) {
      options.progress(static_cast<double>(page - first + 1) / (last - first + 1));
    }
  }
  return last - first + 1;
}

}  // namespace creaseline::desk
