// SPDX-License-Identifier: MIT
// Orders beside the open one: found, copied, used as a pattern, opened beside; the plan put out.
#include "desk/orders_window.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QLineEdit>

#include "creaseline/planning/report.h"
#include "desk/desk_fixture.h"

namespace creaseline::desk {
namespace {

// Two orders more beside the demo's.
void addOrders(const DemoCopy& demo) {
  for (const auto& [number, customer] :
       {std::pair("2026-201", "Quarry Choir"), std::pair("2026-202", "Lantern House")}) {
    QJsonObject order = QJsonDocument::fromJson(DemoCopy::read(demo.order())).object();
    order[QStringLiteral("id")] = QString::fromLatin1(number);
    order[QStringLiteral("customer")] = QString::fromLatin1(customer);
    DemoCopy::replace(demo.folder() / (std::string(number) + ".order.json"),
                      QJsonDocument(order).toJson());
  }
}

class OrdersOnDemo : public DeskOnDemo {
 public:
  OrdersOnDemo() {
    addOrders(demo);
    openDemo();
    action("findOrder").trigger();
    activate(orders());
    REQUIRE(waitFor([this] { return table().model()->rowCount() == 3; }));
  }
  OrdersWindow& orders() { return find<OrdersWindow>("ordersWindow"); }
  QTableView& table() { return find<QTableView>("ordersTable"); }
  void search(const char* words, int expected) {
    auto& edit = find<QLineEdit>("ordersWords");
    edit.setFocus();
    edit.selectAll();
    QTest::keyClicks(&edit, QString::fromLatin1(words));
    REQUIRE(waitFor([&] { return table().model()->rowCount() == expected; }));
  }
  QString number(int row) { return table().model()->index(row, 0).data().toString(); }
};

}  // namespace

TEST_CASE("An order is found by customer and opened by Enter", "[desk][orders]") {
  OrdersOnDemo desk;
  const QAbstractItemModelTester tester(desk.table().model());
  desk.search("lantern", 1);
  CHECK(desk.number(0) == QStringLiteral("2026-202"));
  desk.search("nobody at all", 0);
  CHECK_FALSE(desk.find<QPushButton>("ordersOpen").isEnabled());
  desk.search("2026-20", 2);
  QTest::keyClick(&desk.find<QLineEdit>("ordersWords"), Qt::Key_Down);
  QTest::keyClick(&desk.find<QLineEdit>("ordersWords"), Qt::Key_Return);
  CHECK_FALSE(desk.orders().isVisible());
  REQUIRE(waitFor([&] { return desk.window->windowTitle().contains(QStringLiteral("2026-202")); }));
  REQUIRE(desk.waitForPlan());
}

TEST_CASE("A copy has the next number and is in no file", "[desk][orders]") {
  OrdersOnDemo desk;
  desk.search("quarry", 1);
  QTest::mouseClick(&desk.find<QPushButton>("ordersCopy"), Qt::LeftButton);
  CHECK(desk.label("orderTitle").startsWith(QStringLiteral("2026-203")));
  CHECK(desk.window->isWindowModified());
  CHECK(desk.label("orderDetail").contains(QStringLiteral("Quarry Choir")));
  REQUIRE(desk.waitForPlan());
}

TEST_CASE("Two orders are open in two windows, and each is planned", "[desk][orders]") {
  OrdersOnDemo desk;
  desk.search("lantern", 1);
  QTest::mouseClick(&desk.find<QPushButton>("ordersNewWindow"), Qt::LeftButton);
  DeskWindow* other = nullptr;
  for (QWidget* top : QApplication::topLevelWidgets()) {
    auto* window = qobject_cast<DeskWindow*>(top);
    other = window != nullptr && window != desk.window.get() ? window : other;
  }
  REQUIRE(other != nullptr);
  REQUIRE(waitFor([&] {
    return other->windowTitle().contains(QStringLiteral("2026-202")) &&
           other->findChild<QAction*>(QStringLiteral("saveSheets"))->isEnabled();
  }));
  CHECK_FALSE(desk.window->windowTitle().contains(QStringLiteral("2026-202")));
  CHECK(other->close());
}

TEST_CASE("A pattern is saved and used for a new order", "[desk][orders]") {
  DeskOnDemo desk;
  desk.openDemo();
  const std::filesystem::path file = desk.demo.folder() / "team.order.json";
  answerFileDialog(desk, file);
  desk.action("savePattern").trigger();
  const Order pattern = loadOrderDraft(file, shippedRules()).value;
  CHECK(pattern.customer.empty());
  CHECK(pattern.garments() == 0);
  CHECK_FALSE(pattern.lines.empty());
  desk.action("findOrder").trigger();
  auto& table = desk.find<QTableView>("ordersTable");
  REQUIRE(waitFor([&] { return table.model()->rowCount() == 2; }));
  for (int row = 0; row < 2; ++row) {
    if (table.model()->index(row, 0).data().toString().endsWith(QStringLiteral("-pattern"))) {
      table.setCurrentIndex(table.model()->index(row, 0));
    }
  }
  QTest::mouseClick(&desk.find<QPushButton>("ordersPattern"), Qt::LeftButton);
  const QString title = desk.label("orderTitle");
  CHECK_FALSE(title.contains(QStringLiteral("pattern")));
  CHECK(desk.window->isWindowModified());
  desk.action("undo").trigger();
}

TEST_CASE("The plan goes to the clipboard as text and to a file as JSON", "[desk][orders]") {
  DeskOnDemo desk;
  desk.openDemo();
  desk.action("copyPlan").trigger();
  const QString text = QApplication::clipboard()->text();
  const auto planned = plannedDemo();
  CHECK(toUtf8(text) == textReport(*planned->plan(),
                                   {*planned->order(), *planned->shop(), shippedRules()},
                                   planned->units()));
  const std::filesystem::path file = desk.demo.folder() / "regatta.plan.json";
  answerFileDialog(desk, file);
  desk.action("exportPlan").trigger();
  CHECK(DemoCopy::read(file).toStdString() ==
        jsonReport(*planned->plan(), {*planned->order(), *planned->shop(), shippedRules()}));
}

}  // namespace creaseline::desk
