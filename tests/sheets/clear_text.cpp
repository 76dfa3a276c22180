// SPDX-License-Identifier: MIT
#include "sheets/clear_text.h"

#include <catch2/catch.hpp>

#include "sheets/pdf_probe.h"

namespace creaseline::probe {

void requireClearText(const QString& pdf, std::size_t least) {
  // Nearer to the edge many printers do not reach (common practice, no source).
  constexpr double kUnprintable = 10.0;
  constexpr double kTouching = 0.15;  // millimetres of two boxes that may be shared
  const std::vector<PageWords> pages = probe::words(pdf);
  REQUIRE_FALSE(pages.empty());
  for (std::size_t p = 0; p < pages.size(); ++p) {
    const QRectF inside = QRectF(QPointF(), pages[p].size)
                              .adjusted(kUnprintable, kUnprintable, -kUnprintable, -kUnprintable);
    const std::vector<Word>& words = pages[p].words;
    REQUIRE(words.size() > least);
    std::string unreadable;
    for (std::size_t i = 0; i < words.size(); ++i) {
      if (!inside.contains(words[i].box)) {
        unreadable += "off the paper: " + words[i].text.toStdString() + "\n";
      }
      for (std::size_t j = i + 1; j < words.size(); ++j) {
        const QRectF common = words[i].box.intersected(words[j].box);
        if (common.width() > kTouching && common.height() > kTouching) {
          unreadable += "over each other: " + words[i].text.toStdString() + " and " +
                        words[j].text.toStdString() + "\n";
        }
      }
    }
    INFO("page " << p + 1);
    CHECK(unreadable == std::string());
  }
}

}  // namespace creaseline::probe
