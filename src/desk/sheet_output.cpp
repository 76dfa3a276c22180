// SPDX-License-Identifier: MIT
#include "desk/sheet_output.h"

#include <QMetaObject>
#include <QPageLayout>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <exception>

#include "creaseline/planning/planner.h"
#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_set.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr double kMmPerInch = 25.4;
// Paper sizes of a driver are whole points; this is a little more than one.
constexpr double kPaperToleranceMm = 0.6;

QPageSize pageSize(Paper paper) {
  return QPageSize(paperSize(paper), QPageSize::Millimeter);
}

}  // namespace

SheetDocument sheetsOf(const PlannedOrder& planned, const SheetChoice& choice) {
  return sheetSet(
      {*planned.plan(), *planned.order(), *planned.shop(), planned.rules(), planned.units()},
      choice);
}

SheetSaver::SheetSaver(QObject* parent) : QObject(parent) {
  pool_.setMaxThreadCount(1);
}

SheetSaver::~SheetSaver() {
  cancel_ = true;
  pool_.waitForDone();
}

bool SheetSaver::save(std::shared_ptr<const PlannedOrder> planned, const SheetChoice& choice,
                      const QString& file) {
  if (busy_) {
    return false;
  }
  busy_ = true;
  cancel_ = false;
  pool_.start([this, planned = std::move(planned), choice, file] {
    const auto tell = [this](auto what) {
      QMetaObject::invokeMethod(this, std::move(what), Qt::QueuedConnection);
    };
    SheetOptions options;
    options.cancel = &cancel_;
    options.progress = [&](double share) { tell([this, share] { Q_EMIT progressed(share); }); };
    try {
      const WrittenSheets written = writeSheets(sheetsOf(*planned, choice), toPath(file), options);
      QStringList notes;
      for (const std::string& note : written.notes) {
        notes.append(toQString(note));
      }
      tell([this, file, pages = written.pages, notes] {
        busy_ = false;
        Q_EMIT saved(file, pages, notes);
      });
    } catch (const Cancelled&) {
      tell([this] {
        busy_ = false;
        Q_EMIT cancelled();
      });
    } catch (const std::exception& error) {
      tell([this, why = toQString(error.what())] {
        busy_ = false;
        Q_EMIT failed(why);
      });
    }
  });
  return true;
}

void prepare(QPrinter& printer, Paper paper) {
  printer.setPageSize(pageSize(paper));
  printer.setPageOrientation(QPageLayout::Portrait);
  printer.setFullPage(true);
  printer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
}

QStringList printWarnings(const QPrinter& printer, Paper paper) {
  QStringList warnings;
  const QSizeF wanted = paperSize(paper);
  const QSizeF given = printer.pageLayout().fullRect(QPageLayout::Millimeter).size();
  if (std::abs(given.width() - wanted.width()) > kPaperToleranceMm ||
      std::abs(given.height() - wanted.height()) > kPaperToleranceMm) {
    warnings.append(
        QObject::tr("The printer is set to paper of %1 × %2 mm, the sheets are made for %3 × %4 "
                    "mm. The driver would scale or cut them.")
            .arg(given.width(), 0, 'f', 0)
            .arg(given.height(), 0, 'f', 0)
            .arg(wanted.width(), 0, 'f', 0)
            .arg(wanted.height(), 0, 'f', 0));
  }
  if (!printer.fullPage()) {
    warnings.append(
        QObject::tr("The driver insists on its own margins, so the sheets may be shifted or "
                    "scaled."));
  }
  return warnings;
}

int printSheets(QPrinter& printer, SheetPager& sheets) {
  const int count = sheets.count();
  const int first = printer.fromPage() > 0 ? printer.fromPage() : 1;
  const int last = printer.toPage() > 0 ? std::min(printer.toPage(), count) : count;
  printer.setDocName(sheets.head().title);
  QPainter painter;
  if (first > last || !painter.begin(&printer)) {
    return 0;
  }
  for (int page = first; page <= last; ++page) {
    if (page > first && !printer.newPage()) {
      return page - first;
    }
    painter.save();
    // The resolution, not logical or physical sizes of the device, which drivers round.
    const double unitsPerMm = printer.resolution() / kMmPerInch;
    painter.scale(unitsPerMm, unitsPerMm);
    sheets.paint(painter, page);
    painter.restore();
  }
  return last - first + 1;
}

}  // namespace creaseline::desk
