// SPDX-License-Identifier: MIT
#include "creaseline/sheets/sheet_pager.h"

#include <catch2/catch.hpp>
#include <stdexcept>

using namespace creaseline;

namespace {

// Sections of so many pages; each making of one is counted.
SheetDocument documentOf(const std::vector<int>& sizes, std::vector<int>& makings) {
  makings.assign(sizes.size(), 0);
  SheetDocument document;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    document.sections.push_back({QStringLiteral("Kind"), QString::number(i), [&, i] {
                                   ++makings[i];
                                   std::vector<SheetPage> pages;
                                   for (int p = 0; p < sizes[i]; ++p) {
                                     SheetPage page;
                                     page.title = QStringLiteral("%1.%2").arg(i).arg(p);
                                     pages.push_back(page);
                                   }
                                   return pages;
                                 }});
  }
  return document;
}

}  // namespace

TEST_CASE("pages are found by number across sections, empty ones too", "[sheets][pager]") {
  const std::vector<int> sizes{2, 0, 1, 3};
  std::vector<int> makings;
  SheetPager pager(documentOf(sizes, makings));
  CHECK(pager.count() == 6);
  CHECK(pager.firstPage(0) == 1);
  CHECK(pager.firstPage(1) == 3);
  CHECK(pager.firstPage(2) == 3);
  CHECK(pager.firstPage(4) == 7);
  QStringList titles;
  for (int number = 1; number <= pager.count(); ++number) {
    titles << pager.page(number).title;
  }
  CHECK(titles.join(u' ') == QStringLiteral("0.0 0.1 2.0 3.0 3.1 3.2"));
  CHECK(pager.page(2).title == QStringLiteral("0.1"));  // and backwards
}

TEST_CASE("reading the pages in order makes each section twice, once to count", "[sheets][pager]") {
  const std::vector<int> sizes{2, 3};
  std::vector<int> makings;
  SheetPager pager(documentOf(sizes, makings));
  CHECK(makings == std::vector<int>{1, 1});
  for (int number = 1; number <= pager.count(); ++number) {
    CHECK_FALSE(pager.page(number).title.isEmpty());
  }
  CHECK(makings == std::vector<int>{2, 2});
}

TEST_CASE("there is no page outside the document", "[sheets][pager]") {
  const std::vector<int> sizes{2};
  std::vector<int> makings;
  SheetPager pager(documentOf(sizes, makings));
  CHECK_THROWS_AS(pager.page(0), std::out_of_range);
  CHECK_THROWS_AS(pager.page(3), std::out_of_range);
}
