// SPDX-License-Identifier: MIT
#include "desk/sheet_preview.h"

#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <utility>

#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kPreviewMargin = 12;
constexpr double kTruePixelsPerMm = 96.0 / 25.4;
constexpr double kLeastPixelsPerMm = 0.2;
constexpr int kLineStep = 40;
constexpr int kNotch = 120;  // of a mouse wheel

}  // namespace

SheetPreview::SheetPreview(QWidget* parent) : QAbstractScrollArea(parent) {
  setObjectName(QStringLiteral("sheetPreview"));
  setFocusPolicy(Qt::StrongFocus);
  horizontalScrollBar()->setSingleStep(kLineStep);
  verticalScrollBar()->setSingleStep(kLineStep);
}

void SheetPreview::setZoom(Zoom zoom) {
  if (std::exchange(zoom_, zoom) != zoom) {
    updateScrollBars();
    viewport()->update();
    Q_EMIT scaleChanged();
  }
}

void SheetPreview::setPaper(const QSizeF& paper) {
  if (std::exchange(paper_, paper) != paper) {
    updateScrollBars();
    viewport()->update();
    Q_EMIT scaleChanged();
  }
}

void SheetPreview::setPicture(const QImage& picture) {
  words_.clear();
  picture_ = picture;
  updateScrollBars();
  viewport()->update();
}

void SheetPreview::say(const QString& words) {
  words_ = words;
  picture_ = {};
  updateScrollBars();
  viewport()->update();
}

double SheetPreview::pixelsPerMm() const {
  if (zoom_ == Zoom::ActualSize) {
    return kTruePixelsPerMm;
  }
  // Without scroll bars, which are not there when the page fits.
  const QSize room = maximumViewportSize() - QSize(2 * kPreviewMargin, 2 * kPreviewMargin);
  return std::max(kLeastPixelsPerMm,
                  std::min(room.width() / paper_.width(), room.height() / paper_.height()));
}

int SheetPreview::percentOfTrueSize() const {
  return static_cast<int>(std::lround(pixelsPerMm() / kTruePixelsPerMm * 100.0));
}

// In the viewport, scrolled; centred where there is room.
QRectF SheetPreview::pageRect() const {
  const QSizeF size = paper_ * pixelsPerMm();
  const auto start = [](double room, double length, int scrolled) {
    return std::max<double>(kPreviewMargin, std::floor((room - length) / 2.0)) - scrolled;
  };
  return {start(viewport()->width(), size.width(), horizontalScrollBar()->value()),
          start(viewport()->height(), size.height(), verticalScrollBar()->value()), size.width(),
          size.height()};
}

void SheetPreview::updateScrollBars() {
  const QSizeF size = paper_ * pixelsPerMm();
  const auto set = [this](QScrollBar* bar, double length, int room) {
    const bool scrolls = zoom_ == Zoom::ActualSize && !picture_.isNull();
    bar->setRange(
        0,
        scrolls ? std::max(0, static_cast<int>(std::ceil(length)) + 2 * kPreviewMargin - room) : 0);
    bar->setPageStep(room);
  };
  set(horizontalScrollBar(), size.width(), viewport()->width());
  set(verticalScrollBar(), size.height(), viewport()->height());
}

void SheetPreview::paintEvent(QPaintEvent*) {
  QPainter painter(viewport());
  painter.fillRect(viewport()->rect(), tableGround(palette()));
  if (picture_.isNull()) {
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(viewport()->rect().adjusted(kPreviewMargin, kPreviewMargin, -kPreviewMargin,
                                                 -kPreviewMargin),
                     Qt::AlignCenter | Qt::TextWordWrap, words_);
  } else {
    const QRectF page = pageRect();
    // A fresh picture fits to the pixel; an older one is stretched until its successor comes.
    const QSizeF own = picture_.deviceIndependentSize();
    if (std::abs(own.width() - page.width()) < 1.0) {
      painter.drawImage(page.topLeft(), picture_);
    } else {
      painter.setRenderHint(QPainter::SmoothPixmapTransform);
      painter.drawImage(page, picture_);
    }
    painter.setPen(mutedText(palette()));
    painter.drawRect(page.toAlignedRect().adjusted(-1, -1, 0, 0));
  }
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
  }
}

void SheetPreview::resizeEvent(QResizeEvent*) {
  updateScrollBars();
  if (zoom_ == Zoom::FitPage) {
    Q_EMIT scaleChanged();
  }
}

void SheetPreview::wheelEvent(QWheelEvent* event) {
  const int delta = event->angleDelta().y();
  const QScrollBar* bar = verticalScrollBar();
  const bool past = delta > 0 ? bar->value() == bar->minimum() : bar->value() == bar->maximum();
  if (delta == 0 || !past) {
    wheel_ = 0;
    QAbstractScrollArea::wheelEvent(event);
    return;
  }
  wheel_ += delta;
  if (std::abs(wheel_) >= kNotch) {
    const int pages = wheel_ > 0 ? -1 : 1;
    wheel_ = 0;
    verticalScrollBar()->setValue(pages > 0 ? 0 : verticalScrollBar()->maximum());
    Q_EMIT turned(pages);
  }
  event->accept();
}

QSize SheetPreview::sizeHint() const {
  return {620, 720};
}

QSize SheetPreview::minimumSizeHint() const {
  return {240, 240};
}

}  // namespace creaseline::desk
