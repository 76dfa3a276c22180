// SPDX-License-Identifier: MIT
#include "desk/conflicts_window.h"

#include <QLineEdit>
#include <QRadioButton>

#include "desk/desk_fixture.h"
#include "desk/message_bar.h"

namespace creaseline::desk {
namespace {

void type(DeskOnDemo& desk, const char* field, const QString& text) {
  auto& edit = desk.find<QLineEdit>(field);
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, text);
  QTest::keyClick(&edit, Qt::Key_Return);
}

// Title and customer are changed here and in the file.
void changeBoth(DeskOnDemo& desk) {
  desk.openDemo();
  desk.find<QTabWidget>("details").setCurrentIndex(0);
  type(desk, "orderTitleEdit", QStringLiteral("Mine"));
  type(desk, "orderCustomer", QStringLiteral("My customer"));
  QJsonObject order = QJsonDocument::fromJson(DemoCopy::read(desk.demo.order())).object();
  order[QStringLiteral("title")] = QStringLiteral("Theirs");
  order[QStringLiteral("customer")] = QStringLiteral("Their customer");
  DemoCopy::replace(desk.demo.order(), QJsonDocument(order).toJson());
  auto& bar = desk.find<MessageBar>("messageBar");
  REQUIRE(waitFor([&] { return bar.headline().contains(QStringLiteral("yours were kept")); }));
}

}  // namespace

TEST_CASE("What two changed at once is decided one by one", "[desk][conflicts]") {
  DeskOnDemo desk;
  changeBoth(desk);
  QTest::mouseClick(&desk.find<QPushButton>("messageOtherAction"), Qt::LeftButton);
  auto& window = desk.find<ConflictsWindow>("conflictsWindow");
  activate(window);
  QRadioButton* customer = nullptr;
  for (auto* each : window.findChildren<QRadioButton*>()) {
    CHECK_FALSE(each->accessibleName().isEmpty());
    if (each->text().contains(QStringLiteral("Their customer"))) {
      customer = each;
    }
  }
  REQUIRE(customer != nullptr);
  QTest::mouseClick(customer, Qt::LeftButton, {}, {8, customer->height() / 2});
  REQUIRE(customer->isChecked());
  QTest::mouseClick(&desk.find<QPushButton>("conflictsApply"), Qt::LeftButton);
  CHECK_FALSE(window.isVisible());
  CHECK(desk.find<QLineEdit>("orderTitleEdit").text() == QStringLiteral("Mine"));
  CHECK(desk.find<QLineEdit>("orderCustomer").text() == QStringLiteral("Their customer"));
  desk.action("undo").trigger();
  CHECK(desk.find<QLineEdit>("orderCustomer").text() == QStringLiteral("My customer"));
}

TEST_CASE("A decision that is put off can still be made", "[desk][conflicts]") {
  DeskOnDemo desk;
  changeBoth(desk);
  auto& bar = desk.find<MessageBar>("messageBar");
  QTest::mouseClick(&desk.find<QPushButton>("messageOtherAction"), Qt::LeftButton);
  auto& window = desk.find<ConflictsWindow>("conflictsWindow");
  activate(window);
  CHECK_FALSE(bar.isVisible());
  if (GENERATE(false, true)) {
    QTest::keyClick(&window, Qt::Key_Escape);
  } else {
    QTest::mouseClick(&desk.find<QPushButton>("conflictsLater"), Qt::LeftButton);
  }
  CHECK_FALSE(window.isVisible());
  CHECK(bar.isVisible());
  CHECK(bar.headline().contains(QStringLiteral("yours were kept")));
  CHECK(desk.find<QLineEdit>("orderCustomer").text() == QStringLiteral("My customer"));
}

}  // namespace creaseline::desk
