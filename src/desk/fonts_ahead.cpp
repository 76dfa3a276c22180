// SPDX-License-Identifier: MIT
#include "creaseline/desk/fonts_ahead.h"

#include <QApplication>
#include <QFontMetricsF>
#include <QThreadPool>

#ifdef CREASELINE_WITH_FONTCONFIG
#include <fontconfig/fontconfig.h>
#endif

namespace creaseline {

FontsAhead::FontsAhead() {
#ifdef CREASELINE_WITH_FONTCONFIG
  // What Qt asks of the library later finds them read.
  settings_ = std::async(std::launch::async, [] { FcInit(); });
#endif
}

// Qt reads the fonts once, behind a lock, when the first text is measured.
void FontsAhead::read() {
  if (settings_.valid()) {
    settings_.wait();
  }
  QThreadPool::globalInstance()->start(
      [font = QApplication::font()] { QFontMetricsF(font).horizontalAdvance(QLatin1Char('x')); });
}

}  // namespace creaseline
