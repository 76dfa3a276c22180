// SPDX-License-Identifier: MIT
#include "desk/chart_table_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;
using namespace creaseline::literals;

namespace {

constexpr auto kMode = QAbstractItemModelTester::FailureReportingMode::Fatal;

// The demo's order with inches, so that lengths read as on an American ruler.
std::shared_ptr<const PlannedOrder> inches() {
  return std::make_shared<const PlannedOrder>(
      plannedDemo()->withUnits({LengthUnit::Inch, RulerMark::Eighth, {}}));
}

std::size_t blankOfKind(const PlannedOrder& planned, const char* kind) {
  const auto& blanks = planned.order()->blanks;
  for (std::size_t i = 0; i < blanks.size(); ++i) {
    if (blanks[i].kind == KindId(kind)) {
      return i;
    }
  }
  FAIL("no such kind");
  return 0;
}

int rowOf(const ChartTableModel& model, const char* size) {
  for (int row = 0; row < model.rowCount(); ++row) {
    if (model.headerData(row, Qt::Vertical).toString() == QString::fromLatin1(size)) {
      return row;
    }
  }
  FAIL("no such size");
  return -1;
}

}  // namespace

TEST_CASE("The chart's table keeps the rules of item models through every change",
          "[desk][garments][models]") {
  ChartTableModel model;
  const QAbstractItemModelTester tester(&model, kMode);
  const auto planned = inches();
  for (std::size_t blank = 0; blank < planned->order()->blanks.size(); ++blank) {
    model.show(planned, blank);
    CHECK(model.rowCount() == static_cast<int>(planned->order()->blanks[blank].chart.sizes.size()));
    model.addColumn(Measure::YokeDepth);
    model.show(planned, blank);
    CHECK(model.columnOf(Measure::YokeDepth) >= 0);
  }
  // A size more, a size less, another length: as edits make them.
  std::shared_ptr<const PlannedOrder> now = planned;
  QObject::connect(&model, &ChartTableModel::edited, &model, [&](const OrderEdit& edit) {
    now = std::make_shared<const PlannedOrder>(
        now->withOrder(std::make_shared<const Order>(edit.order)));
    model.show(now, 0);
  });
  model.show(now, 0);
  const GarmentEdits edits(*planned->order(), shippedRules(), planned->units());
  Q_EMIT model.edited(edits.addSize(0, 1));
  Q_EMIT model.edited(edits.measure(0, 0, Measure::BodyLength, 25_in));
  CHECK(model.setData(model.index(0, model.columnOf(Measure::BodyWidth)), QStringLiteral("20 1/4"),
                      Qt::EditRole));
  CHECK(model.index(0, model.columnOf(Measure::BodyWidth)).data().toString() ==
        QStringLiteral("20 1/4 in"));
  model.showNothing();
  CHECK(model.rowCount() == 0);
}

TEST_CASE("What the chart does not give stands in brackets and is typed from nothing",
          "[desk][garments][models]") {
  ChartTableModel model;
  const auto planned = inches();
  const std::size_t tee = blankOfKind(*planned, "t-shirt");
  auto order = std::make_shared<Order>(*planned->order());
  order->blanks[tee].chart.sizes[0].measures.erase(Measure::NeckWidth);
  model.show(std::make_shared<const PlannedOrder>(planned->withOrder(order)), tee);
  const QModelIndex cell = model.index(0, model.columnOf(Measure::NeckWidth));
  CHECK(cell.data().toString().startsWith(QLatin1Char('(')));
  CHECK(model.typed(cell).isEmpty());
  CHECK(cell.data(Qt::ToolTipRole).toString().startsWith(QStringLiteral("Not in the chart")));
  CHECK(model.cellName(cell).startsWith(QStringLiteral("Neck width of")));
}

TEST_CASE("What is only proposed stands in brackets, and what is typed over it does not",
          "[desk][garments][models]") {
  const Order order =
      GarmentEdits(*plannedDemo()->order(), shippedRules(), plannedDemo()->units()).add().order;
  const auto planned =
      std::make_shared<PlannedOrder>(std::make_shared<const Order>(order), nullptr, nullptr,
                                     sharedRules(), plannedDemo()->units());
  ChartTableModel model;
  model.show(planned, order.blanks.size() - 1);
  const QModelIndex cell = model.index(0, model.columnOf(Measure::BodyWidth));
  CHECK(cell.data().toString().startsWith(QLatin1Char('(')));
  CHECK(cell.data(Qt::EditRole).toString().isEmpty());
  CHECK(cell.data(Qt::ToolTipRole).toString().contains(QStringLiteral("proposed")));
  const QSignalSpy edits(&model, &ChartTableModel::edited);
  CHECK_FALSE(model.problem(cell, QString()));
  CHECK_FALSE(model.setData(cell, QString(), Qt::EditRole));
  CHECK(edits.isEmpty());
  CHECK(model.setData(cell, QStringLiteral("18 in"), Qt::EditRole));
  REQUIRE(edits.size() == 1);
  const Order typed = edits.first().first().value<OrderEdit>().order;
  CHECK(typed.blanks.back().chart.sizes.front().proposed.count(Measure::BodyWidth) == 0);
}

TEST_CASE("A length is checked in any unit, and against the garment that it makes",
          "[desk][garments][models]") {
  ChartTableModel model;
  const auto planned = inches();
  model.show(planned, blankOfKind(*planned, "t-shirt"));
  const QModelIndex width = model.index(rowOf(model, "M"), model.columnOf(Measure::BodyWidth));
  for (const char* good : {"22", "22 1/2", "22.5 in", "56 cm", "560mm", "56,5 cm"}) {
    CAPTURE(good);
    CHECK_FALSE(model.problem(width, QString::fromLatin1(good)));
  }
  for (const char* bad : {"q", "22 q", "-3", "0", "", "900 in"}) {
    CAPTURE(bad);
    CHECK(model.problem(width, QString::fromLatin1(bad)));
  }
  const QModelIndex neck = model.index(rowOf(model, "M"), model.columnOf(Measure::NeckWidth));
  CHECK_FALSE(model.problem(neck, QString()));
  CHECK(model.problem(neck, QStringLiteral("40 in")));
  CHECK_FALSE(model.setData(neck, QStringLiteral("40 in"), Qt::EditRole));
}
