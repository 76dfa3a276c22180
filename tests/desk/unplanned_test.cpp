// SPDX-License-Identifier: MIT
// An order that cannot be planned yet: its garment lies on the table all the same, and beside it
// stands what is missing.
#include "desk/unplanned.h"

#include <QMenu>
#include <QPushButton>

#include "desk/missing_panel.h"
#include "desk/order_model.h"
#include "desk/shop_window.h"
#include "desk/size_model.h"
#include "desk/table_canvas.h"
#include "library_fixture.h"

namespace creaseline::desk {
namespace {

TableCanvas& table(DeskOnDemo& desk) {
  return desk.find<TableCanvas>("table");
}

// The visible buttons that lead to what is missing.
QStringList ways(DeskOnDemo& desk) {
  QCoreApplication::processEvents();  // a row that is added is shown a moment later
  QStringList names;
  for (const auto* button : desk.find<QWidget>("missing").findChildren<QPushButton*>()) {
    if (button->isVisible()) {
      names.append(button->objectName());
    }
  }
  return names;
}

// Something of a garment is painted, with its words for screen readers.
void checkGarmentLies(DeskOnDemo& desk, const char* name) {
  QCoreApplication::processEvents();
  const QString said = table(desk).accessibleDescription();
  CAPTURE(said);
  CHECK(said.contains(QStringLiteral("Not planned yet")));
  CHECK(said.contains(QStringLiteral("seen from outside")));
  const QImage image = table(desk).grab().toImage();
  const QRgb ground = image.pixel(4, image.height() - 4);
  CHECK(image.pixel(image.width() / 2, image.height() * 2 / 3) != ground);
  QDir().mkpath(QStringLiteral(SCREENSHOT_FOLDER));
  CHECK(desk.window->grab().save(
      QStringLiteral("%1/unplanned-%2.png")
          .arg(QStringLiteral(SCREENSHOT_FOLDER), QString::fromLatin1(name))));
}

std::shared_ptr<const PlannedOrder> unplanned(Order order) {
  return std::make_shared<PlannedOrder>(std::make_shared<const Order>(std::move(order)), nullptr,
                                        nullptr, sharedRules(), UnitChoice{});
}

}  // namespace

TEST_CASE("What is missing is named in the order in which it is best mended", "[desk][unplanned]") {
  Selection selection;
  const auto missing = [&](Order order) {
    const auto planned = unplanned(std::move(order));
    selection.setPlanned(planned);
    return whatIsMissing(*planned, selection, true);
  };
  using List = std::vector<Missing>;
  CHECK(missing(demoOrder()) == List{Missing::Shop});
  CHECK(missing(Order{}) == List{Missing::Shop, Missing::Garment, Missing::Design});
  Order order = demoOrder();
  order.lines.clear();
  CHECK(missing(order) == List{Missing::Shop, Missing::Line});
  order = demoOrder();
  order.lines.front().sizes.clear();
  order.lines.front().placements.clear();
  CHECK(missing(order) == List{Missing::Shop, Missing::Place, Missing::Quantities});
  CHECK(whatIsMissing(*plannedDemo(), selection, true).size() == 0);
}

TEST_CASE("A garment is laid flat in every size that is ordered, or in all of its chart",
          "[desk][unplanned]") {
  Selection selection;
  Order order = demoOrder();
  const auto planned = unplanned(order);
  selection.setPlanned(planned);
  const auto ordered = layUnplanned(*planned, selection);
  REQUIRE(ordered->size() == order.lines.front().sizes.size());
  // Where the design goes does not depend on the frames.
  const PlacementPlan* same = plannedDemo()->find(0, 0, ordered->front().size);
  REQUIRE(same != nullptr);
  CHECK(ordered->front().placed.centre == same->placed.centre);
  CHECK_FALSE(ordered->front().frame);
  order.lines.front().sizes.clear();
  const auto none = unplanned(order);
  selection.setPlanned(none);
  const Blank& blank = *order.blank(order.lines.front().blank);
  CHECK(layUnplanned(*none, selection)->size() == blank.chart.sizes.size());
  CHECK(blank.chart.find(selection.size()) != nullptr);
  order.lines.clear();
  const auto noLine = unplanned(order);
  selection.setPlanned(noLine);
  CHECK(layUnplanned(*noLine, selection)->size() == order.blanks.front().chart.sizes.size());
  selection.setPlanned(plannedDemo());
  CHECK(layUnplanned(*plannedDemo(), selection)->empty());
}

TEST_CASE("An order without a shop shows its lines and garments, and leads to the shop",
          "[desk][unplanned]") {
  DeskOnDemo desk;
  std::filesystem::rename(desk.demo.shop(), desk.demo.folder() / "elsewhere.json");
  desk.window->openOrder(desk.demo.order());
  REQUIRE(waitFor([&] { return desk.order().isVisible() && !ways(desk).isEmpty(); }));
  CHECK(ways(desk) ==
        QStringList{QStringLiteral("missingOpenShop"), QStringLiteral("missingNewShop")});
  CHECK(desk.order().model()->rowCount() == DemoCopy::kFewLines);
  checkGarmentLies(desk, "without-shop");
  // The rail has the line's sizes, without a judgement.
  REQUIRE(desk.sizes().model()->rowCount() > 1);
  CHECK_FALSE(desk.sizes().model()->index(0, 0).data(SizeModel::StateRole).isValid());
  const QString before = table(desk).accessibleDescription();
  clickItem(desk.sizes(), desk.sizes().model()->index(0, 0));
  CHECK(table(desk).accessibleDescription() != before);
  press(desk, "missingNewShop");
  CHECK(desk.find<ShopWindow>("shopWindow").isVisible());
  REQUIRE(desk.waitForPlan());
  CHECK(ways(desk).isEmpty());
}

TEST_CASE("A line without place and quantities shows its garment and what to fill in",
          "[desk][unplanned]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto& garments = desk.find<QMenu>("addGarment");
  Q_EMIT garments.aboutToShow();
  garments.actions().first()->trigger();
  checkGarmentLies(desk, "line");
  CHECK(ways(desk) ==
        QStringList{QStringLiteral("missingPlace"), QStringLiteral("missingQuantities")});
  press(desk, "missingQuantities");
  auto* quantity = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  REQUIRE(quantity != nullptr);
  CHECK(quantity->objectName().startsWith(QStringLiteral("quantity-")));
  QTest::keyClicks(quantity, QStringLiteral("4"));
  QTest::keyClick(quantity, Qt::Key_Return);
  CHECK(ways(desk) == QStringList{QStringLiteral("missingPlace")});
  checkGarmentLies(desk, "place");
  auto& places = desk.find<QMenu>("addPlace");
  Q_EMIT places.aboutToShow();
  places.actions().first()->trigger();
  CHECK(ways(desk).isEmpty());
  REQUIRE(desk.waitForPlan());
  CHECK_FALSE(table(desk).accessibleDescription().contains(QStringLiteral("Not planned")));
}

TEST_CASE("What lies on the table unplanned is not moved by a hand", "[desk][unplanned]") {
  DeskOnDemo desk;
  std::filesystem::remove(desk.demo.shop());
  desk.window->openOrder(desk.demo.order());
  REQUIRE(waitFor([&] { return desk.order().isVisible() && !ways(desk).isEmpty(); }));
  CHECK_FALSE(table(desk).designAt());
  table(desk).setFocus();
  QTest::keyClick(&table(desk), Qt::Key_Right, Qt::AltModifier);
  QTest::keyClick(&table(desk), Qt::Key_Right);
  CHECK_FALSE(desk.window->isWindowModified());
}

TEST_CASE("An order without garments says on the table what comes first", "[desk][unplanned]") {
  DeskOnDemo desk;
  desk.action("newOrder").trigger();
  REQUIRE(waitFor([&] { return desk.order().isVisible(); }));
  CHECK(ways(desk).contains(QStringLiteral("missingGarment")));
  CHECK(table(desk).accessibleDescription().contains(QStringLiteral("garment")));
  press(desk, "missingGarment");
  CHECK(desk.find<QWidget>("garments").isVisible());
}

}  // namespace creaseline::desk
