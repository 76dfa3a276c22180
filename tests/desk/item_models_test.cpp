// SPDX-License-Identifier: MIT
#include <QAbstractItemModelTester>

#include "desk/finding_model.h"
#include "desk/order_model.h"
#include "desk/size_model.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

// Failures of the tester would only be logged; as fatal it ends the run, which cannot be missed.
constexpr auto kFatal = QAbstractItemModelTester::FailureReportingMode::Fatal;

std::shared_ptr<const PlannedOrder> nothing() {
  return std::make_shared<PlannedOrder>(nullptr, nullptr, nullptr, sharedRules(), UnitChoice{});
}

}  // namespace

TEST_CASE("The item models keep the rules of item models through every change", "[desk][models]") {
  OrderModel order;
  SizeModel sizes;
  FindingModel findings;
  const QAbstractItemModelTester orderTester(&order, kFatal);
  const QAbstractItemModelTester sizesTester(&sizes, kFatal);
  const QAbstractItemModelTester findingsTester(&findings, kFatal);
  for (const auto& planned : {nothing(), plannedDemo(), nothing(), plannedDemo()}) {
    order.setPlanned(planned);
    findings.setPlanned(planned);
    for (std::size_t line = 0; line < 3; ++line) {
      sizes.setPlacement(planned, line, 0);
    }
  }
  CHECK(order.rowCount() == static_cast<int>(plannedDemo()->order()->lines.size()));
  CHECK(findings.rowCount() == static_cast<int>(plannedDemo()->plan()->findings.size()));
}

TEST_CASE("The order's rows show every quantity of every line exactly once", "[desk][models]") {
  OrderModel model;
  model.setPlanned(plannedDemo());
  int garments = 0;
  for (int row = 0; row < model.rowCount(); ++row) {
    for (int column = 1; column < model.columnCount(); ++column) {
      garments += model.index(row, column).data().toInt();
    }
  }
  CHECK(garments == plannedDemo()->order()->garments());
  CHECK(garments > 0);
}

TEST_CASE("Size columns stand in the order of the charts, youth before adult", "[desk][models]") {
  OrderModel model;
  model.setPlanned(plannedDemo());
  CHECK(model.sizeColumn(SizeName("YS")) < model.sizeColumn(SizeName("YL")));
  CHECK(model.sizeColumn(SizeName("S")) < model.sizeColumn(SizeName("M")));
  CHECK(model.sizeColumn(SizeName("XL")) < model.sizeColumn(SizeName("4XL")));
  CHECK(model.sizeColumn(SizeName("no such size")) == -1);
}

TEST_CASE("A place's cell says the state of its size in words as well as by its shape",
          "[desk][models][accessibility]") {
  OrderModel model;
  const auto planned = plannedDemo();
  model.setPlanned(planned);
  int cells = 0;
  for (const PlacementPlan& plan : planned->plan()->placements) {
    const QModelIndex cell = model.indexOf(plan.line, plan.placement, model.sizeColumn(plan.size));
    CAPTURE(plan.line, plan.placement, plan.size.text());
    REQUIRE(cell.isValid());
    CHECK(cell.data(OrderModel::StateRole).toInt() == static_cast<int>(plan.worst));
    const QString word = plan.worst == Severity::Stop    ? QStringLiteral("stop")
                         : plan.worst == Severity::Watch ? QStringLiteral("watch")
                                                         : QStringLiteral("fine");
    CHECK(cell.data(Qt::AccessibleTextRole).toString().endsWith(word));
    ++cells;
  }
  CHECK(cells > 0);
}

TEST_CASE("Without a plan the order is shown without states", "[desk][models]") {
  OrderModel model;
  model.setPlanned(std::make_shared<PlannedOrder>(
      std::shared_ptr<const Order>(plannedDemo(), plannedDemo()->order()), nullptr, nullptr,
      sharedRules(), UnitChoice{}));
  REQUIRE(model.rowCount() > 0);
  CHECK(model.index(0, 0).data().toString().isEmpty() == false);
  CHECK_FALSE(model.index(0, 0).data(OrderModel::StateRole).isValid());
}

TEST_CASE("The worst finding of a size is the state of its garment", "[desk][models]") {
  const auto planned = plannedDemo();
  for (std::size_t line = 0; line < planned->order()->lines.size(); ++line) {
    const auto whole = planned->worst(line);
    REQUIRE(whole.has_value());
    bool reached = false;
    for (std::size_t i = 0; i < planned->order()->lines[line].placements.size(); ++i) {
      for (const PlacementPlan* plan : planned->sizes(line, i)) {
        CHECK(plan->worst >= *whole);
        reached = reached || plan->worst == *whole;
      }
    }
    CHECK(reached);
  }
}
