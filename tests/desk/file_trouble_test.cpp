// SPDX-License-Identifier: MIT
// What becomes of an open order whose file is broken or gone.
#include <QPushButton>
#include <QSignalSpy>

#include "desk/document.h"
#include "desk/edit_commands.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

TEST_CASE("A file that comes back as it was ends the trouble, also with changes that are not saved",
          "[desk][document][watch]") {
  const DemoCopy demo(1);
  Settings settings(demo.settings());
  Document document(sharedRules(), settings);
  document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return document.planned()->plan() != nullptr && !document.busy(); }));
  const OrderEdits edits(*document.orderInHand(), shippedRules(), document.units());
  REQUIRE(applyEdit(document, edits.title("Another")));
  REQUIRE(waitFor([&] { return !document.busy(); }));
  const QByteArray content = DemoCopy::read(demo.order());
  DemoCopy::replace(demo.order(), "nonsense");
  REQUIRE(waitFor([&] { return document.problem().has_value(); }));
  DemoCopy::replace(demo.order(), content);
  CHECK(waitFor([&] { return !document.problem() && !document.stale() && !document.busy(); }));
  CHECK(document.orderInHand()->title == "Another");
  // And nothing goes on by itself after it.
  const QSignalSpy busy(&document, &Document::busyChanged);
  QTest::qWait(600);
  CHECK(busy.isEmpty());
}

TEST_CASE("A file that is gone is written again only where one says so", "[desk][save]") {
  const DemoCopy demo(1);
  Settings settings(demo.settings());
  Document document(sharedRules(), settings);
  document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return document.orderInHand() && !document.busy(); }));
  // Gone before anybody has noticed.
  std::filesystem::remove(demo.order());
  CHECK(document.save() == SaveResult::ChangedOutside);
  CHECK_FALSE(std::filesystem::exists(demo.order()));
  CHECK(document.saveAs(demo.order(), {}) == SaveResult::Saved);
  CHECK(loadOrder(demo.order(), shippedRules()).value == *document.orderInHand());
}

TEST_CASE("An order whose file is gone is saved where one says, and can be printed again",
          "[desk][save][watch]") {
  DeskOnDemo desk(1);
  desk.openDemo();
  std::filesystem::remove(desk.demo.order());
  REQUIRE(waitFor([&] { return !desk.action("saveSheets").isEnabled(); }));
  REQUIRE(waitFor([&] { return desk.action("saveOrder").isEnabled(); }));
  // Its own name will do as well.
  const std::filesystem::path other =
      GENERATE(false, true) ? desk.demo.order() : desk.demo.folder() / "again.order.json";
  answerFileDialog(desk, other);
  desk.action("saveOrder").trigger();
  CHECK(waitFor([&] { return std::filesystem::exists(other); }));
  CHECK(desk.waitForPlan());
}
