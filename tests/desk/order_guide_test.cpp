// SPDX-License-Identifier: MIT
// A first order from nothing, along the guide.
#include "desk/order_guide.h"

#include <QComboBox>
#include <QLineEdit>
#include <QMenu>

#include "desk/garments_window.h"
#include "desk/shop_window.h"
#include "library_fixture.h"

namespace creaseline::desk {
namespace {

void take(DeskOnDemo& desk, const char* step) {
  QTest::mouseClick(&desk.find<QToolButton>(step), Qt::LeftButton);
}

}  // namespace

TEST_CASE("The guide shows beside a first order and leads to each step", "[desk][guide]") {
  DeskOnDemo desk;
  CHECK(desk.window->findChild<OrderGuide*>() == nullptr);
  desk.action("newOrder").trigger();
  auto& guide = desk.find<OrderGuide>("orderGuide");
  desk.find<QLineEdit>("orderTitleEdit").setFocus();
  QTest::keyClicks(&desk.find<QLineEdit>("orderTitleEdit"), QStringLiteral("First"));
  QTest::keyClick(&desk.find<QLineEdit>("orderTitleEdit"), Qt::Key_Return);
  REQUIRE(waitFor([&] { return guide.isVisible(); }));
  CHECK(guide.next() == OrderGuide::Shop);
  // None has to come before another.
  take(desk, "guideGarment");
  auto& garments = desk.find<GarmentsWindow>("garments");
  CHECK(garments.isVisible());
  garments.close();
  take(desk, "guideSheets");
  CHECK_FALSE(guide.isDone(OrderGuide::Sheets));
  CHECK(desk.label("messageHeadline").contains(QStringLiteral("nothing to print")));
  take(desk, "guideShop");
  auto& shop = desk.find<ShopWindow>("shopWindow");
  CHECK(shop.isVisible());
  // A shop that is in no file yet is not done with.
  CHECK(guide.next() == OrderGuide::Shop);
}

TEST_CASE("The guide's steps can be read after the appearance was changed", "[desk][guide]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("showGuide").trigger();
  desk.action("appearanceDark").trigger();
  QCoreApplication::processEvents();
  const QImage image = desk.find<QToolButton>("guideGarment").grab().toImage();
  int brightest = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 20; x < image.width(); ++x) {  // right of the mark
      brightest = std::max(brightest, qGray(image.pixel(x, y)));
    }
  }
  CHECK(brightest > 180);
  desk.action("appearanceSystem").trigger();
}

TEST_CASE("In a low window the guide shows the next steps and leaves room for the order",
          "[desk][guide]") {
  DeskOnDemo desk;
  desk.action("newOrder").trigger();
  auto& guide = desk.find<OrderGuide>("orderGuide");
  REQUIRE(waitFor([&] { return guide.isVisible(); }));
  const auto shown = [&guide] {
    QCoreApplication::processEvents();
    int count = 0;
    for (const auto* step : guide.findChildren<QToolButton*>()) {
      count += step->isVisible() && step->objectName() != QStringLiteral("guideClose") ? 1 : 0;
    }
    return count;
  };
  desk.window->resize(1400, 1000);
  CHECK(shown() == OrderGuide::StepCount);
  desk.window->resize(1000, 600);
  CHECK(shown() == 2);
  CHECK(desk.find<QToolButton>("guideShop").isVisible());
  desk.window->resize(1400, 1000);
  CHECK(shown() == OrderGuide::StepCount);
}

TEST_CASE("What is done is ticked by itself; closed, the guide stays away until asked for",
          "[desk][guide]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto& guide = desk.find<OrderGuide>("orderGuide");
  CHECK_FALSE(guide.isVisible());
  desk.action("showGuide").trigger();
  CHECK(guide.isVisible());
  CHECK(guide.next() == OrderGuide::Sheets);
  for (const char* step :
       {"guideShop", "guideGarment", "guideDesign", "guideLine", "guidePlace", "guideQuantities"}) {
    CHECK(desk.find<QToolButton>(step).accessibleDescription() == QStringLiteral("done"));
  }
  take(desk, "guideQuantities");
  CHECK(QApplication::focusWidget() != nullptr);
  QTest::mouseClick(&desk.find<QToolButton>("guideClose"), Qt::LeftButton);
  CHECK_FALSE(guide.isVisible());
  desk.action("duplicateOrder").trigger();
  CHECK_FALSE(guide.isVisible());
}

TEST_CASE("Who starts a copy of an order knows the way", "[desk][guide]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("duplicateOrder").trigger();
  REQUIRE(desk.waitForPlan());
  CHECK_FALSE(desk.find<OrderGuide>("orderGuide").isVisible());
}

}  // namespace creaseline::desk
