// SPDX-License-Identifier: MIT
// Recent orders are called by what is in them.
#include "desk/start_page.h"

#include "desk/desk_fixture.h"

namespace creaseline::desk {

TEST_CASE("A recent order shows number, title and customer with its file below", "[desk][start]") {
  const DemoCopy demo;
  const Order order = loadOrder(demo.order(), shippedRules()).value;
  const QString gone = pathText(demo.folder() / "gone.order.json");
  StartPage page;
  page.showState(true, true, {pathText(demo.order()), gone});
  const auto text = [&page](const QString& file) {
    for (const QToolButton* button : page.findChildren<QToolButton*>()) {
      if (button->toolTip().endsWith(QDir::toNativeSeparators(file))) {
        return button->text();
      }
    }
    return QString();
  };
  REQUIRE(waitFor([&] { return text(pathText(demo.order())).contains(QLatin1Char('\n')); }));
  page.resize(900, 600);
  CHECK(
      page.grab().save(QStringLiteral("%1/start-page.png").arg(QStringLiteral(SCREENSHOT_FOLDER))));
  const QStringList lines = text(pathText(demo.order())).split(QLatin1Char('\n'));
  for (const std::string& each : {order.id, order.title, order.customer}) {
    CAPTURE(each);
    REQUIRE_FALSE(each.empty());
    CHECK(lines[0].contains(toQString(each)));
  }
  CHECK(lines[1].contains(QStringLiteral("regatta.order.json")));
  // One that cannot be read keeps its file's name.
  CHECK(text(gone).contains(QStringLiteral("gone.order.json")));
  CHECK_FALSE(text(gone).contains(QLatin1Char('\n')));
}

}  // namespace creaseline::desk
