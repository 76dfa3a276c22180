// SPDX-License-Identifier: MIT
#include "desk/findings_panel.h"

#include <QSignalSpy>

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

// The demo's plan with `count` findings of its own, told apart by their texts.
std::shared_ptr<const PlannedOrder> withFindings(int count, bool idleRule = false) {
  const PlannedOrder& demo = *plannedDemo();
  auto plan = std::make_shared<Plan>(*demo.plan());
  REQUIRE_FALSE(plan->findings.empty());
  const Finding first = plan->findings.front();
  plan->findings.assign(static_cast<std::size_t>(count), first);
  for (std::size_t i = 0; i < plan->findings.size(); ++i) {
    plan->findings[i].text = "finding " + std::to_string(i);
    plan->findings[i].sizes = {SizeName(std::to_string(i))};
  }
  auto shop = std::make_shared<Shop>(*demo.shop());
  if (idleRule) {
    PlacementRule rule = sharedRules()->placement.front();
    rule.id = RuleId("for-nobody");
    rule.sizes = {SizeName("NoSuch")};
    shop->houseRules.push_back(rule);
  }
  return std::make_shared<PlannedOrder>(std::make_shared<Order>(*demo.order()), shop, plan,
                                        sharedRules(), demo.units());
}

struct Shown {
  FindingsPanel panel;
  QListView& list = *panel.findChild<QListView*>();
  Shown() {
    panel.resize(340, 300);
    panel.show();
  }
  [[nodiscard]] bool inView(int row) const {
    const QRect rect = list.visualRect(list.model()->index(row, 0));
    return rect.isValid() && list.viewport()->rect().intersects(rect);
  }
};

}  // namespace

TEST_CASE("The chosen finding is in view again in a plan with other findings", "[desk][findings]") {
  Shown shown;
  shown.panel.setPlanned(withFindings(400));
  const int row = GENERATE(0, 150, 399);
  CAPTURE(row);
  REQUIRE(waitFor([&] {
    shown.list.setCurrentIndex(shown.list.model()->index(row, 0));
    return shown.inView(row);
  }));
  shown.panel.setPlanned(withFindings(401));
  CHECK(shown.list.currentIndex().row() == row);
  CHECK(waitFor([&] { return shown.inView(row); }));
}

TEST_CASE("A plan that finds the same leaves the list as it is", "[desk][findings]") {
  Shown shown;
  shown.panel.setPlanned(withFindings(90));
  REQUIRE(waitFor([&] {
    shown.list.setCurrentIndex(shown.list.model()->index(80, 0));
    return shown.inView(80);
  }));
  QSignalSpy resets(shown.list.model(), &QAbstractItemModel::modelReset);
  shown.panel.setPlanned(withFindings(90));
  CHECK(resets.isEmpty());
  CHECK(shown.inView(80));
  shown.panel.setPlanned(withFindings(91));
  CHECK(resets.size() == 1);
}

TEST_CASE("Findings stay clear of each other when their list becomes narrower",
          "[desk][findings]") {
  Shown shown;
  shown.panel.setPlanned(plannedDemo());
  const QAbstractItemModel& model = *shown.list.model();
  REQUIRE(model.rowCount() > 1);
  for (const int width : {340, 170, 260}) {
    CAPTURE(width);
    shown.panel.resize(width, 300);
    CHECK(waitFor([&] {
      for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex index = model.index(row, 0);
        if (shown.list.visualRect(index).height() != shown.list.sizeHintForIndex(index).height()) {
          return false;
        }
      }
      return true;
    }));
  }
}

TEST_CASE("What has to be bought or measured leads to where it is entered", "[desk][findings]") {
  Shown shown;
  const PlannedOrder& demo = *plannedDemo();
  auto plan = std::make_shared<Plan>(*demo.plan());
  plan->findings.resize(1);
  plan->findings.front().remedies = {
      Remedy{ShopChange{"buy"}, "buy cut-away", "nothing is short here then", Length()},
      Remedy{StitchesChange{900}, "have fewer stitches made", "", Length()}};
  shown.panel.setPlanned(std::make_shared<PlannedOrder>(std::make_shared<Order>(*demo.order()),
                                                        std::make_shared<Shop>(*demo.shop()), plan,
                                                        sharedRules(), demo.units()));
  QSignalSpy led(&shown.panel, &FindingsPanel::leadRequested);
  shown.list.setCurrentIndex(shown.list.model()->index(0, 0));
  const auto ways = shown.panel.findChildren<QPushButton*>();
  REQUIRE(ways.size() == 1);
  CHECK(ways.front()->accessibleName().contains(QStringLiteral("Buy cut-away")));
  ways.front()->click();
  REQUIRE(led.size() == 1);
  CHECK(led.front().at(1).value<ShopChange>().what == "buy");
}

TEST_CASE("Tab leads from a finding to what would help", "[desk][findings][accessibility]") {
  DeskOnDemo desk;
  desk.openDemo();
  const auto& model = *qobject_cast<FindingModel*>(desk.findings().model());
  int row = 0;
  while (row < model.rowCount() && model.finding(row)->remedies.size() < 2) {
    ++row;
  }
  REQUIRE(row < model.rowCount());
  clickItem(desk.findings(), model.index(row, 0));
  const auto buttons = desk.find<QWidget>("remedies").findChildren<QPushButton*>();
  REQUIRE(buttons.size() > 1);
  desk.findings().setFocus();
  for (qsizetype i = 0; i < buttons.size(); ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    CHECK(QApplication::focusWidget()->parentWidget()->parentWidget() ==
          &desk.find<QWidget>("remedies"));
  }
}

TEST_CASE("Findings stay in view beside the remedies of the chosen one", "[desk][findings]") {
  Shown shown;
  shown.panel.resize(340, 300);
  shown.panel.setPlanned(plannedDemo());
  for (int row = 0; row < shown.list.model()->rowCount(); ++row) {
    CAPTURE(row);
    shown.list.setCurrentIndex(shown.list.model()->index(row, 0));
    QCoreApplication::processEvents();
    CHECK(shown.list.height() >= 6 * shown.list.fontMetrics().lineSpacing());
  }
}

TEST_CASE("A chosen finding that is gone is not sought among house rules without use",
          "[desk][findings]") {
  Shown shown;
  shown.panel.setPlanned(withFindings(2, true));
  REQUIRE(shown.list.model()->rowCount() == 3);
  shown.list.setCurrentIndex(shown.list.model()->index(1, 0));
  shown.panel.setPlanned(withFindings(1, true));
  CHECK(shown.list.model()->rowCount() == 2);
  CHECK_FALSE(shown.list.currentIndex().isValid());
  CHECK_FALSE(shown.panel.findChild<QWidget*>(QStringLiteral("remedies"))->isVisible());
}
