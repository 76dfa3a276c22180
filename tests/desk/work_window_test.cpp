// SPDX-License-Identifier: MIT
#include "desk/work_window.h"

#include <cmath>

#include "creaseline/planning/run_card.h"
#include "desk/desk_fixture.h"

namespace creaseline::desk {
namespace {

WorkWindow& openWork(DeskOnDemo& desk) {
  desk.action("showWork").trigger();
  auto& work = desk.find<WorkWindow>("workWindow");
  activate(work);
  REQUIRE(waitFor([&] { return work.ready(); }));
  return work;
}

RunPlan runsOfDemo() {
  const auto planned = plannedDemo();
  return planRuns(*planned->plan(), {*planned->order(), *planned->shop(), shippedRules()},
                  planned->units());
}

}  // namespace

TEST_CASE("Runs stand in order, each as long on the bar as it takes", "[desk][work]") {
  DeskOnDemo desk;
  desk.openDemo();
  openWork(desk);
  const RunPlan runs = runsOfDemo();
  auto& list = desk.find<QListWidget>("workRuns");
  REQUIRE(list.count() == static_cast<int>(runs.cards.size()));
  REQUIRE(list.count() > 1);
  auto& bar = desk.find<DayBar>("dayBar");
  double end = bar.place(0).left();
  for (int i = 0; i < list.count(); ++i) {
    const RunCard& card = runs.cards[static_cast<std::size_t>(i)];
    CHECK(list.item(i)->text().contains(toQString(formatDuration(card.time.total))));
    CHECK(bar.place(i).left() == Approx(end));
    CHECK(bar.place(i).width() / bar.place(0).width() ==
          Approx(card.time.total.seconds() / runs.cards[0].time.total.seconds()));
    end = bar.place(i).right();
  }
  CHECK(desk.label("workSummary").startsWith(toQString(formatDuration(runs.total))));
  // A run is chosen on the bar, and by keys there.
  QTest::mouseClick(&bar, Qt::LeftButton, {}, bar.place(1).center().toPoint());
  CHECK(list.currentRow() == 1);
  QTest::keyClick(&bar, Qt::Key_Left);
  CHECK(list.currentRow() == 0);
  const auto& shown = desk.find<QTextBrowser>("workRun");
  for (const RunStep& step : runs.cards[0].steps) {
    CHECK(shown.toPlainText().contains(toQString(step.text)));
  }
}

TEST_CASE("What to lay ready is listed as the pick list has it", "[desk][work]") {
  DeskOnDemo desk;
  desk.openDemo();
  openWork(desk);
  const auto planned = plannedDemo();
  const PickList picks =
      pickList(*planned->plan(), runsOfDemo(),
               {*planned->order(), *planned->shop(), shippedRules()}, planned->units());
  const QString text = desk.find<QTextBrowser>("workMaterials").toPlainText();
  REQUIRE_FALSE(picks.threads.empty());
  for (const ThreadPick& thread : picks.threads) {
    CHECK(text.contains(toQString(thread.thread)));
    CHECK(text.contains(QString::number(thread.stitches)));
  }
  for (const BackingTotal& total : picks.backingTotals) {
    CHECK(text.contains(toQString(total.need)));
  }
  for (const FramePick& frame : picks.frames) {
    CHECK(text.contains(toQString(frame.frame)));
  }
}

TEST_CASE("How backing is cut is drawn to one scale and said in words", "[desk][work]") {
  DeskOnDemo desk;
  desk.openDemo();
  WorkWindow& work = openWork(desk);
  auto& tabs = desk.find<QTabWidget>("workTabs");
  tabs.setCurrentIndex(2);
  auto& view = desk.find<CutView>("workCuts");
  REQUIRE(view.isVisible());
  const auto planned = plannedDemo();
  const PickList picks =
      pickList(*planned->plan(), runsOfDemo(),
               {*planned->order(), *planned->shop(), shippedRules()}, planned->units());
  REQUIRE_FALSE(picks.cuts.empty());
  const QString said = view.accessibleDescription();
  for (const CutLayout& cut : picks.cuts) {
    CHECK(said.contains(toQString(cut.stock)));
    CHECK(said.contains(toQString(cut.need)));
    for (const CutBlock& block : cut.blocks) {
      const QString words = view.wordsOf(cut, block);
      CHECK(said.contains(words));
      CHECK(words.contains(QString::number(block.pieces)));
    }
  }
  // Keyboard: the drawing is reached by Tab, and all of it is in the area that scrolls.
  CHECK((view.focusPolicy() & Qt::TabFocus) != 0);
  CHECK(view.height() >= view.heightForWidth(view.width()));
  QDir().mkpath(QStringLiteral(SCREENSHOT_FOLDER));
  CHECK(work.grab().save(QStringLiteral("%1/cutting.png").arg(QStringLiteral(SCREENSHOT_FOLDER))));
  view.show({}, planned->units());
  CHECK(view.accessibleDescription().isEmpty());
  CutLayout narrow = picks.cuts.front();
  narrow.blocks = {CutBlock{Length::fromMm(900.0), Length::fromMm(900.0), 2, 0, 0, {}, 1}};
  view.show({narrow}, planned->units());
  CHECK(view.accessibleDescription().contains(QStringLiteral("larger than what is in stock")));
}

TEST_CASE("Runs follow the order that is edited", "[desk][work]") {
  DeskOnDemo desk;
  desk.openDemo();
  WorkWindow& work = openWork(desk);
  const QString before = desk.label("workSummary");
  desk.action("remove").trigger();
  REQUIRE(desk.waitForPlan());
  REQUIRE(waitFor([&] { return work.ready() && desk.label("workSummary") != before; }));
  desk.action("undo").trigger();
  REQUIRE(desk.waitForPlan());
  REQUIRE(waitFor([&] { return work.ready() && desk.label("workSummary") == before; }));
  QTest::keyClick(&work, Qt::Key_Escape);
  CHECK_FALSE(work.isVisible());
}

}  // namespace creaseline::desk
