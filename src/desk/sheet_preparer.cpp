// SPDX-License-Identifier: MIT
#include "desk/sheet_preparer.h"

#include <QMetaObject>
#include <QPainter>
#include <algorithm>
#include <exception>
#include <functional>
#include <optional>
#include <utility>

#include "creaseline/planning/planner.h"
#include "desk/sheet_output.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

// Stops between two sections, which are made one by one while pages are counted.
SheetDocument stoppable(SheetDocument document, const std::shared_ptr<std::atomic<bool>>& cancel) {
  for (SheetSection& section : document.sections) {
    section.pages = [pages = std::move(section.pages), cancel] {
      if (*cancel) {
        throw Cancelled{};
      }
      return pages();
    };
  }
  return document;
}

SheetContents contentsOf(const SheetPager& pager, const SheetChoice& choice) {
  SheetContents contents;
  contents.pages = pager.count();
  contents.paper = choice.paper;
  const std::vector<SheetSection>& sections = pager.document().sections;
  for (const SheetKind& kind : sheetKinds()) {
    if (std::find(choice.kinds.begin(), choice.kinds.end(), kind.id) == choice.kinds.end()) {
      continue;
    }
    SheetContents::Kind found{kind.id, 1, 0};
    for (std::size_t i = 0; i < sections.size(); ++i) {
      const int pages = pager.firstPage(i + 1) - pager.firstPage(i);
      if (sections[i].group == kind.name && pages > 0) {
        found.first = found.count == 0 ? pager.firstPage(i) : found.first;
        found.count += pages;
      }
    }
    contents.kinds.push_back(found);
  }
  return contents;
}

}  // namespace

const SheetContents::Kind* SheetContents::find(const std::string& id) const {
  const auto found =
      std::find_if(kinds.begin(), kinds.end(), [&](const Kind& kind) { return kind.id == id; });
  return found == kinds.end() ? nullptr : &*found;
}

const SheetContents::Kind* SheetContents::at(int page) const {
  const auto found = std::find_if(kinds.begin(), kinds.end(), [&](const Kind& kind) {
    return page >= kind.first && page < kind.first + kind.count;
  });
  return found == kinds.end() ? nullptr : &*found;
}

QImage sheetPicture(SheetPager& sheets, int page, double pixelsPerMm, double devicePixelRatio) {
  const double scale = pixelsPerMm * devicePixelRatio;
  const QSizeF size = paperSize(sheets.head().paper) * scale;
  QImage picture(size.toSize().expandedTo({1, 1}), QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(scale, scale);
  sheets.paint(painter, page);
  painter.end();
  picture.setDevicePixelRatio(devicePixelRatio);
  return picture;
}

struct SheetPreparer::Made {
  std::shared_ptr<const PlannedOrder> planned;  // outlives the pager, which refers to it
  std::optional<SheetPager> pager;
};

SheetPreparer::SheetPreparer(QObject* parent) : QObject(parent), made_(std::make_shared<Made>()) {
  pool_.setMaxThreadCount(1);
}

SheetPreparer::~SheetPreparer() {
  cancel();
  pool_.waitForDone();
}

void SheetPreparer::cancel() {
  for (Flag* flag : {&cancelSet_, &cancelPicture_}) {
    if (*flag) {
      **flag = true;
    }
    *flag = std::make_shared<std::atomic<bool>>(false);
  }
  counting_ = false;
}

template <class Work>
void SheetPreparer::start(Flag cancel, Work work) {
  pool_.start([this, cancel = std::move(cancel), work = std::move(work)] {
    std::function<void()> tell;
    try {
      if (*cancel) {
        return;
      }
      tell = work();
    } catch (const Cancelled&) {
      return;
    } catch (const std::exception& error) {
      tell = [this, why = toQString(error.what())] {
        counting_ = false;
        Q_EMIT failed(why);
      };
    }
    QMetaObject::invokeMethod(
        this,
        [cancel, tell = std::move(tell)] {
          if (tell && !*cancel) {
            tell();
          }
        },
        Qt::QueuedConnection);
  });
}

void SheetPreparer::prepare(std::shared_ptr<const PlannedOrder> planned,
                            const SheetChoice& choice) {
  cancel();
  counting_ = true;
  start(cancelSet_,
        [this, made = made_, cancel = cancelSet_, planned = std::move(planned),
         choice]() -> std::function<void()> {
          made->pager.reset();
          made->planned = planned;
          SheetContents contents;
          contents.paper = choice.paper;
          if (!choice.kinds.empty()) {
            made->pager.emplace(stoppable(sheetsOf(*planned, choice), cancel));
            contents = contentsOf(*made->pager, choice);
          }
          return [this, contents] {
            counting_ = false;
            Q_EMIT counted(contents);
          };
        });
}

void SheetPreparer::paint(int page, double pixelsPerMm, double devicePixelRatio) {
  if (cancelPicture_) {
    *cancelPicture_ = true;
  }
  cancelPicture_ = std::make_shared<std::atomic<bool>>(false);
  start(cancelPicture_,
        [this, made = made_, page, pixelsPerMm, devicePixelRatio]() -> std::function<void()> {
          if (!made->pager || page < 1 || page > made->pager->count()) {
            return {};
          }
          const QImage picture = sheetPicture(*made->pager, page, pixelsPerMm, devicePixelRatio);
          const QString title = made->pager->page(page).title;
          return [this, page, title, picture] { Q_EMIT painted(page, title, picture); };
        });
}

}  // namespace creaseline::desk
