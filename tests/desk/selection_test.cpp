// SPDX-License-Identifier: MIT
#include <QSignalSpy>

#include "desk/selection.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

std::shared_ptr<const PlannedOrder> withLines(std::vector<OrderLine> lines) {
  Order order = *plannedDemo()->order();
  order.lines = std::move(lines);
  return std::make_shared<PlannedOrder>(std::make_shared<const Order>(std::move(order)), nullptr,
                                        nullptr, sharedRules(), UnitChoice{});
}

}  // namespace

TEST_CASE("A new plan of the same order keeps line, place and size", "[desk][selection]") {
  Selection selection;
  selection.setPlanned(plannedDemo());
  selection.choose(1, 0, SizeName("YM"));
  SECTION("the same plan again") {
    selection.setPlanned(plannedDemo());
    CHECK(selection.line() == 1);
    CHECK(selection.size() == SizeName("YM"));
  }
  SECTION("a line was put before it") {
    std::vector<OrderLine> lines = plannedDemo()->order()->lines;
    OrderLine first = lines.front();
    first.id = "new";
    lines.insert(lines.begin(), first);
    selection.setPlanned(withLines(lines));
    CHECK(selection.line() == 2);
    CHECK(selection.size() == SizeName("YM"));
  }
}

TEST_CASE("What is gone from the order is no longer selected", "[desk][selection]") {
  Selection selection;
  selection.setPlanned(plannedDemo());
  const std::size_t last = plannedDemo()->order()->lines.size() - 1;
  selection.choose(last, 0, plannedDemo()->order()->lines[last].sizes.front().size);
  std::vector<OrderLine> lines = plannedDemo()->order()->lines;
  lines.pop_back();
  selection.setPlanned(withLines(lines));
  CHECK(selection.line() == last - 1);
  CHECK(selection.placement() < lines.back().placements.size());
  selection.setPlanned(withLines({}));
  CHECK(selection.empty());
  CHECK(selection.current() == nullptr);
}

TEST_CASE("Choosing what is already chosen tells nobody", "[desk][selection]") {
  Selection selection;
  selection.setPlanned(plannedDemo());
  const QSignalSpy changes(&selection, &Selection::changed);
  selection.choose(selection.line(), selection.placement(), selection.size());
  CHECK(changes.isEmpty());
  selection.chooseLine(1);
  CHECK(changes.size() == 1);
  CHECK(selection.current() != nullptr);
}
