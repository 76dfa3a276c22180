// SPDX-License-Identifier: MIT
#include "desk/page_range_box.h"

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

TEST_CASE("A range of pages is read as people write it", "[desk][sheets][range]") {
  const auto read = [](const char* text) { return pageSpan(QString::fromUtf8(text), 59); };
  CHECK(read("2-5") == PageSpan{2, 5});
  CHECK(read(" 2 - 5 ") == PageSpan{2, 5});
  CHECK(read("2–5") == PageSpan{2, 5});
  CHECK(read("7") == PageSpan{7, 7});
  CHECK(read("59-59") == PageSpan{59, 59});
  for (const char* wrong :
       {"", "0-3", "5-2", "2-60", "60", "a-b", "2-", "-5", "2,5", "1-2-3", "99999999999"}) {
    CAPTURE(wrong);
    CHECK_FALSE(read(wrong).has_value());
  }
  // Not yet counted: only the form is checked.
  CHECK(pageSpan(QStringLiteral("2-600"), 0) == PageSpan{2, 600});
}

TEST_CASE("Typing a range chooses it, and a wrong one is said to be wrong",
          "[desk][sheets][range]") {
  PageRangeBox box;
  box.setPages(3, 59);
  box.show();
  const auto* problem = box.findChild<QLabel*>(QStringLiteral("pagesProblem"));
  CHECK(box.span() == PageSpan{});
  box.findChild<QRadioButton*>(QStringLiteral("pagesOnShow"))->click();
  CHECK(box.span() == PageSpan{3, 3});
  box.setPages(4, 59);
  CHECK(box.span() == PageSpan{4, 4});
  CHECK_FALSE(problem->isVisible());
  auto* typed = box.findChild<QLineEdit*>(QStringLiteral("pagesTyped"));
  QTest::keyClicks(typed, QStringLiteral("8-70"));
  CHECK_FALSE(box.span().has_value());
  CHECK(problem->isVisible());
  CHECK(problem->text().contains(QStringLiteral("59")));
  QTest::keyClick(typed, Qt::Key_Backspace);
  QTest::keyClick(typed, Qt::Key_Backspace);
  QTest::keyClicks(typed, QStringLiteral("9"));
  CHECK(box.span() == PageSpan{8, 9});
  CHECK_FALSE(problem->isVisible());
}
