// SPDX-License-Identifier: MIT
#include "desk/sheet_preparer.h"

#include <QSignalSpy>

#include "desk/sheet_output.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

SheetChoice everything(Paper paper = Paper::A4) {
  SheetChoice choice;
  for (const SheetKind& kind : sheetKinds()) {
    choice.kinds.push_back(kind.id);
  }
  choice.paper = paper;
  return choice;
}

}  // namespace

TEST_CASE("Counted kinds follow each other without gap and are as many as the pager's pages",
          "[desk][sheets]") {
  const SheetChoice choice = everything(Paper::Letter);
  SheetPreparer preparer;
  SheetContents contents;
  QObject::connect(&preparer, &SheetPreparer::counted,
                   [&](const SheetContents& counted) { contents = counted; });
  preparer.prepare(plannedDemo(), choice);
  // Counting is not done by the one who asks.
  CHECK(preparer.counting());
  CHECK(contents.pages == 0);
  REQUIRE(waitFor([&] { return !preparer.counting(); }));
  CHECK(contents.pages == SheetPager(sheetsOf(*plannedDemo(), choice)).count());
  CHECK(contents.kinds.size() == sheetKinds().size());
  int next = 1;
  for (const SheetContents::Kind& kind : contents.kinds) {
    CAPTURE(kind.id, kind.first, kind.count);
    if (kind.count > 0) {
      CHECK(kind.first == next);
      CHECK(contents.at(kind.first)->id == kind.id);
      CHECK(contents.at(kind.first + kind.count - 1)->id == kind.id);
    }
    CHECK(contents.find(kind.id)->count == kind.count);
    next += kind.count;
  }
  CHECK(next == contents.pages + 1);
  CHECK(contents.at(0) == nullptr);
  CHECK(contents.at(contents.pages + 1) == nullptr);
}

TEST_CASE("The newest set wins, and a page that it has not is not painted", "[desk][sheets]") {
  SheetPreparer preparer;
  const QSignalSpy counted(&preparer, &SheetPreparer::counted);
  QList<int> painted;
  QObject::connect(&preparer, &SheetPreparer::painted,
                   [&](int page, const QString&, const QImage&) { painted.append(page); });
  preparer.prepare(plannedDemo(), everything());
  SheetChoice choice = everything(Paper::A3);
  preparer.prepare(plannedDemo(), choice);
  preparer.paint(9999, 1.0, 1.0);
  preparer.paint(2, 1.0, 1.0);
  REQUIRE(waitFor([&] { return !painted.isEmpty(); }));
  REQUIRE(counted.size() == 1);
  CHECK(counted.first().first().value<SheetContents>().paper == Paper::A3);
  CHECK(painted == QList<int>{2});
  preparer.prepare(plannedDemo(), everything());
  preparer.cancel();
  CHECK_FALSE(preparer.counting());
  QTest::qWait(300);
  CHECK(counted.size() == 1);
}

TEST_CASE("A set without kinds has no pages, rather than the usual ones", "[desk][sheets]") {
  SheetPreparer preparer;
  const QSignalSpy counted(&preparer, &SheetPreparer::counted);
  preparer.prepare(plannedDemo(), SheetChoice{});
  REQUIRE(waitFor([&] { return !counted.isEmpty(); }));
  CHECK(counted.first().first().value<SheetContents>().pages == 0);
}
