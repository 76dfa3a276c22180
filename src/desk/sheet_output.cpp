// SPDX-License-Identifier: MIT
#include "desk/sheet_output.h"

#include <QDir>
#include <QMetaObject>
#include <QPainter>
#include <algorithm>
#include <exception>
#include <utility>

#include "creaseline/planning/planner.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

SheetOptions withRange(const SheetJob& job, SheetOptions options) {
  options.firstPage = job.firstPage;
  options.lastPage = job.lastPage;
  return options;
}

}  // namespace

SheetDocument sheetsOf(const PlannedOrder& planned, const SheetChoice& choice) {
  return sheetSet(
      {*planned.plan(), *planned.order(), *planned.shop(), planned.rules(), planned.units()},
      choice);
}

SheetOutput::SheetOutput(QObject* parent) : QObject(parent) {
  pool_.setMaxThreadCount(1);
}

SheetOutput::~SheetOutput() {
  cancel_ = true;
  pool_.waitForDone();
}

bool SheetOutput::start(Form form,
                        std::function<std::function<void()>(const SheetOptions&)> write) {
  if (busy_) {
    return false;
  }
  busy_ = true;
  form_ = form;
  cancel_ = false;
  pool_.start([this, write = std::move(write)] {
    const auto later = [this](auto what) {
      QMetaObject::invokeMethod(this, std::move(what), Qt::QueuedConnection);
    };
    const auto end = [&](std::function<void()> tell) {
      later([this, tell = std::move(tell)] {
        busy_ = false;
        tell();
      });
    };
    SheetOptions options;
    options.cancel = &cancel_;
    options.progress = [&](double share) { later([this, share] { Q_EMIT progressed(share); }); };
    try {
      end(write(options));
    } catch (const Cancelled&) {
      end([this] { Q_EMIT cancelled(); });
    } catch (const std::exception& error) {
      end([this, why = toQString(error.what())] { Q_EMIT failed(why); });
    }
  });
  return true;
}

std::function<void()> SheetOutput::tellSaved(const QString& target, const WrittenSheets& written) {
  QStringList notes;
  for (const std::string& note : written.notes) {
    notes.append(toQString(note));
  }
  return [this, target, pages = written.pages, notes] { Q_EMIT saved(target, pages, notes); };
}

bool SheetOutput::savePdf(const SheetJob& job, const QString& file) {
  return start(Form::Pdf, [this, job, file](const SheetOptions& options) {
    return tellSaved(file, writeSheets(sheetsOf(*job.planned, job.choice), toPath(file),
                                       withRange(job, options)));
  });
}

bool SheetOutput::savePictures(const SheetJob& job, const QString& folder) {
  return start(Form::Pictures, [this, job, folder](const SheetOptions& options) {
    return tellSaved(folder, writeSheetPictures(sheetsOf(*job.planned, job.choice), toPath(folder),
                                                withRange(job, options)));
  });
}

bool SheetOutput::print(const SheetJob& job, std::shared_ptr<QPrinter> printer) {
  return start(Form::Paper,
               [this, job, printer = std::move(printer)](
                   const SheetOptions& options) -> std::function<void()> {
                 SheetPager pager(sheetsOf(*job.planned, job.choice));
                 const int pages = printSheets(*printer, pager, options);
                 return [this, pages] { Q_EMIT printed(pages); };
               });
}

QStringList pagePictures(const QString& folder) {
  // The names that the writer gives them.
  return QDir(folder).entryList({QStringLiteral("page-???.svg"), QStringLiteral("page-????.svg")},
                                QDir::Files);
}

}  // namespace creaseline::desk
