// SPDX-License-Identifier: MIT
// The bar of runs: every run can be read, however short, and hours are those at the machine.
#include "desk/day_bar.h"

#include <QHelpEvent>
#include <QToolTip>

#include "desk/desk_fixture.h"

namespace creaseline::desk {
namespace {

// Runs of so many minutes each.
RunPlan runsOf(std::initializer_list<int> minutes) {
  RunPlan runs;
  for (const int each : minutes) {
    RunCard card;
    card.number = static_cast<int>(runs.cards.size()) + 1;
    card.location = "Centre chest";
    card.time.setUp = Duration::fromSeconds(60.0);
    card.time.total = Duration::fromSeconds(each * 60.0);
    runs.cards.push_back(card);
  }
  return runs;
}

void showBar(DayBar& bar, const RunPlan& runs, int width) {
  bar.show(runs);
  bar.resize(width, bar.sizeHint().height());
  bar.setVisible(true);
  REQUIRE(QTest::qWaitForWindowExposed(&bar));
}

}  // namespace

TEST_CASE("Each run's number stands on the bar or above it, and none lies on another",
          "[desk][work]") {
  DayBar bar;
  const RunPlan runs = runsOf({300, 4, 90, 3, 4, 2, 2, 3, 200, 2, 2, 2, 2});
  showBar(bar, runs, 500);
  const int count = static_cast<int>(runs.cards.size());
  for (int i = 0; i < count; ++i) {
    CAPTURE(i);
    const QRectF number = bar.numberPlace(i);
    CHECK(QRectF(bar.rect()).contains(number));
    CHECK(number.width() >= bar.fontMetrics().horizontalAdvance(QString::number(i + 1)));
    for (int other = 0; other < i; ++other) {
      CHECK_FALSE(number.intersects(bar.numberPlace(other)));
    }
  }
  CHECK(bar.grab().save(QStringLiteral("%1/day-bar.png").arg(QStringLiteral(SCREENSHOT_FOLDER))));
  // There is room on the first, and none on the second.
  CHECK(bar.place(0).contains(bar.numberPlace(0)));
  CHECK(bar.numberPlace(1).bottom() <= bar.place(1).top());
}

TEST_CASE("A run is told in full to pointer and screen reader", "[desk][work]") {
  DayBar bar;
  showBar(bar, runsOf({300, 4, 90}), 500);
  CHECK(bar.accessibleName().contains(QStringLiteral("hours at the machine")));
  for (const QString& run :
       {QStringLiteral("run 1, Centre chest: 5 h"), QStringLiteral("run 2, Centre chest: 4 min")}) {
    CAPTURE(run);
    CHECK(bar.accessibleDescription().contains(run));
  }
  bar.choose(1);
  CHECK(bar.accessibleDescription().startsWith(QStringLiteral("chosen: run 2")));
  const QPoint at = bar.numberPlace(1).center().toPoint();
  QHelpEvent help(QEvent::ToolTip, at, bar.mapToGlobal(at));
  QApplication::sendEvent(&bar, &help);
  CHECK(QToolTip::text().contains(QStringLiteral("Run 2, Centre chest: 4 min")));
  QToolTip::hideText();
}

TEST_CASE("A run too narrow to hit is chosen by its number", "[desk][work]") {
  DayBar bar;
  showBar(bar, runsOf({600, 1, 600}), 400);
  int chosen = -1;
  QObject::connect(&bar, &DayBar::chosen, &bar, [&chosen](int run) { chosen = run; });
  REQUIRE(bar.place(1).width() < 2.0);
  QTest::mouseClick(&bar, Qt::LeftButton, {}, bar.numberPlace(1).center().toPoint());
  CHECK(chosen == 1);
}

TEST_CASE("Hours are told as often as there is room, by whole hours", "[desk][work]") {
  DayBar bar;
  showBar(bar, runsOf({240}), 800);
  CHECK(bar.hoursApart() == 1.0);
  showBar(bar, runsOf({24 * 60}), 300);
  CHECK(bar.hoursApart() > 1.0);
  CHECK(bar.hoursApart() == std::floor(bar.hoursApart()));
}

}  // namespace creaseline::desk
