// SPDX-License-Identifier: MIT
#include "desk/document.h"

#include <QSignalSpy>

#include "desk/edit_commands.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

struct OpenDocument {
  OpenDocument()
      : settings(demo.settings()), document({&shippedRules(), [](const Rules*) {}}, settings) {}
  void open() {
    document.openOrder(demo.order());
    REQUIRE(settled());
    REQUIRE(document.planned()->plan() != nullptr);
  }
  bool settled() {
    return waitFor([this] { return !document.busy(); });
  }

  DemoCopy demo;
  Settings settings;
  Document document;
};

}  // namespace

TEST_CASE("An order opened alone is planned for the only shop beside it", "[desk][document]") {
  OpenDocument opened;
  opened.open();
  CHECK(opened.document.shopFile() == pathText(opened.demo.shop()));
  CHECK(opened.settings.recentOrders().first() == pathText(opened.demo.order()));
  CHECK(opened.document.planned()->plan()->placements.size() ==
        plannedDemo()->plan()->placements.size());
}

TEST_CASE("An order with no shop to be found is shown and waits for one", "[desk][document]") {
  OpenDocument opened;
  const std::filesystem::path elsewhere = opened.demo.folder() / "elsewhere";
  std::filesystem::create_directory(elsewhere);
  std::filesystem::rename(opened.demo.shop(), elsewhere / "workshop.shop.json");
  opened.document.openOrder(opened.demo.order());
  REQUIRE(opened.settled());
  CHECK(opened.document.planned()->order() != nullptr);
  CHECK(opened.document.planned()->plan() == nullptr);
  opened.document.openShop(elsewhere / "workshop.shop.json");
  REQUIRE(opened.settled());
  CHECK(opened.document.planned()->plan() != nullptr);
}

TEST_CASE("A change on disk is planned by itself", "[desk][document][watch]") {
  OpenDocument opened;
  opened.open();
  const int before = opened.document.planned()->order()->garments();
  DemoCopy::edit(opened.demo.order(), "\"YS\": 2", "\"YS\": 9");
  CHECK(waitFor([&] { return opened.document.planned()->order()->garments() == before + 7; }));
  CHECK_FALSE(opened.document.stale());
}

TEST_CASE("A change in a file that the order refers to is planned, too",
          "[desk][document][watch]") {
  OpenDocument opened;
  opened.open();
  const std::filesystem::path blank = opened.demo.folder() / "blanks" / "towpath-tee.blank.json";
  const std::string before = opened.document.planned()->order()->blanks.back().name;
  DemoCopy::edit(blank, QByteArray::fromStdString("\"name\": \"" + before + "\""),
                 "\"name\": \"renamed\"");
  CHECK(
      waitFor([&] { return opened.document.planned()->order()->blanks.back().name == "renamed"; }));
}

TEST_CASE("A file that breaks leaves the last good plan, marked stale, until it is mended",
          "[desk][document][watch]") {
  OpenDocument opened;
  opened.open();
  const auto good = opened.document.planned();
  const QByteArray content = DemoCopy::read(opened.demo.order());
  DemoCopy::replace(opened.demo.order(), content.left(content.size() / 2));
  REQUIRE(waitFor([&] { return opened.document.problem().has_value(); }));
  CHECK(opened.document.stale());
  CHECK(opened.document.planned() == good);
  CHECK(opened.document.problem()->details.file == opened.demo.order().string());
  CHECK_FALSE(opened.document.problem()->details.where.empty());
  DemoCopy::replace(opened.demo.order(), content);
  CHECK(waitFor([&] { return !opened.document.problem() && !opened.document.stale(); }));
}

TEST_CASE("A new order that cannot be read leaves the open one as it was", "[desk][document]") {
  OpenDocument opened;
  opened.open();
  const auto good = opened.document.planned();
  const std::filesystem::path bad = opened.demo.folder() / "bad.order.json";
  DemoCopy::replace(bad, "[]");
  opened.document.openOrder(bad);
  REQUIRE(opened.settled());
  CHECK(opened.document.problem().has_value());
  CHECK_FALSE(opened.document.stale());
  CHECK(opened.document.planned() == good);
  CHECK(opened.document.orderFile() == pathText(opened.demo.order()));
}

TEST_CASE("Stopping the planning keeps what is on screen and says that it is not up to date",
          "[desk][document]") {
  OpenDocument opened;
  opened.open();
  const auto good = opened.document.planned();
  opened.document.reload();
  opened.document.cancelPlanning();
  CHECK_FALSE(opened.document.busy());
  CHECK(opened.document.stale());
  CHECK(opened.document.planned() == good);
  opened.document.reload();
  REQUIRE(opened.settled());
  CHECK_FALSE(opened.document.stale());
}

TEST_CASE("Units change the numbers at once and are kept for the next day", "[desk][document]") {
  OpenDocument opened;
  opened.open();
  const UnitChoice metric{LengthUnit::Millimetre, RulerMark::Eighth,
                          WeightUnit::GramsPerSquareMetre};
  const QSignalSpy changes(&opened.document, &Document::unitsChanged);
  opened.document.setUnits(metric);
  CHECK(opened.document.planned()->units() == metric);
  CHECK(changes.size() == 1);
  REQUIRE(opened.settled());
  CHECK(opened.document.planned()->units() == metric);
  CHECK(opened.settings.units() == metric);
}

TEST_CASE("Tried changes are dropped, and said to be, when the order file changes",
          "[desk][document][undo]") {
  OpenDocument opened;
  opened.open();
  std::vector<OrderLine> lines = opened.document.orderInHand()->lines;
  Finding finding;
  finding.sizes = {lines.front().sizes.front().size};
  const Remedy remedy{ScaleChange{0.5}, "sew it at 50 %", {}};
  REQUIRE(applyRemedy(opened.document, finding, remedy));
  REQUIRE(opened.settled());
  QSignalSpy dropped(&opened.document, &Document::editsDropped);
  DemoCopy::edit(opened.demo.order(), "\"YS\": 2", "\"YS\": 3");
  REQUIRE(waitFor([&] { return dropped.size() == 1; }));
  CHECK(dropped.first().first().toInt() == 1);
  CHECK(opened.document.undoStack().count() == 0);
  CHECK(opened.document.orderInHand()->lines.size() == lines.size());
}
