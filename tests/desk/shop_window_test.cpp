// SPDX-License-Identifier: MIT
// The shop edited as a person would, with the order planned again at once.
#include "desk/shop_window.h"

#include <QComboBox>
#include <QLineEdit>
#include <QMessageBox>
#include <QTimer>

#include "desk/library_fixture.h"
#include "desk/message_bar.h"

namespace creaseline::desk {
namespace {

using namespace creaseline::literals;

class ShopOnDemo : public DeskOnDemo {
 public:
  ShopOnDemo() {
    openDemo();
    action("editShop").trigger();
    activate(shop());
  }
  ~ShopOnDemo() {
    // Nobody is there to answer whether the shop is to be saved.
    while (window->isVisible() && action("undo").isEnabled()) {
      action("undo").trigger();
    }
  }
  ShopWindow& shop() { return find<ShopWindow>("shopWindow"); }
  void openTab(const QString& title) {
    auto& tabs = find<QTabWidget>("shopTabs");
    for (int i = 0; i < tabs.count(); ++i) {
      if (tabs.tabText(i) == title) {
        tabs.setCurrentIndex(i);
        return;
      }
    }
    FAIL("no such tab");
  }
  // Of the tab that is open.
  template <class T>
  T& onPage(const char* name) {
    T* found =
        find<QTabWidget>("shopTabs").currentWidget()->findChild<T*>(QString::fromLatin1(name));
    CAPTURE(name);
    REQUIRE(found != nullptr);
    return *found;
  }
  void type(const char* name, const QString& text) {
    auto& edit = onPage<QLineEdit>(name);
    edit.setFocus();
    edit.selectAll();
    QTest::keyClicks(&edit, text);
    QTest::keyClick(&edit, Qt::Key_Return);
  }
  QString stepName() { return action("undo").text(); }
};

QString textOfFile(const DemoCopy& demo) {
  return QString::fromUtf8(DemoCopy::read(demo.shop()));
}

}  // namespace

TEST_CASE("A frame is edited, the order is planned with it, and undo takes it back",
          "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("Frames"));
  auto& frames = desk.onPage<QListWidget>("entries");
  REQUIRE(frames.count() > 3);
  frames.setCurrentRow(0);
  const QString before = desk.label("counts");
  const QString width = desk.onPage<QLineEdit>("frameWindowWidth").text();
  desk.type("frameFieldWidth", QStringLiteral("2 in"));
  CHECK(desk.stepName().contains(QStringLiteral("8 × 9 in magnetic: width 2 in")));
  REQUIRE(desk.waitForPlan());
  CHECK(desk.label("counts") != before);
  CHECK(desk.shop().isWindowModified());
  CHECK_FALSE(desk.window->isWindowModified());  // the order is as it was
  desk.action("undo").trigger();
  REQUIRE(desk.waitForPlan());
  CHECK(desk.label("counts") == before);
  CHECK_FALSE(desk.shop().isWindowModified());
  CHECK(desk.onPage<QLineEdit>("frameWindowWidth").text() == width);
}

TEST_CASE("A frame asks for cloth beyond it, or for none", "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("Frames"));
  desk.onPage<QListWidget>("entries").setCurrentRow(0);
  auto& margin = desk.onPage<QLineEdit>("frameClothMargin");
  CHECK(margin.text().isEmpty());
  CHECK(margin.placeholderText() == QStringLiteral("none needed"));
  CHECK(margin.toolTip().contains(QStringLiteral("beyond the window")));
  const QString before = textOfFile(desk.demo);
  desk.type("frameClothMargin", QStringLiteral("3 in"));
  CHECK(desk.stepName().contains(QStringLiteral("8 × 9 in magnetic: margin of cloth 3 in")));
  REQUIRE(desk.waitForPlan());
  QTest::keyClick(&desk.shop(), Qt::Key_S, Qt::ControlModifier);
  auto& save = desk.find<QPushButton>("saveShop");
  REQUIRE(waitFor([&] { return !save.isEnabled(); }));
  CHECK(textOfFile(desk.demo).contains(QStringLiteral("\"cloth-margin\": \"3 in\"")));
  for (const QString& wrong :
       {QStringLiteral("-1 mm"), QStringLiteral("6 m"), QStringLiteral("some")}) {
    CAPTURE(wrong);
    margin.selectAll();
    QTest::keyClicks(&margin, wrong);
    CHECK_FALSE(margin.accessibleDescription().isEmpty());
    QTest::keyClick(&margin, Qt::Key_Escape);
  }
  margin.selectAll();
  QTest::keyClick(&margin, Qt::Key_Delete);
  QTest::keyClick(&margin, Qt::Key_Return);
  QTest::keyClick(&desk.shop(), Qt::Key_S, Qt::ControlModifier);
  REQUIRE(waitFor([&] { return textOfFile(desk.demo) == before; }));
}

TEST_CASE("What could not be saved is refused beside the field", "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("Frames"));
  auto& width = desk.onPage<QLineEdit>("frameWindowWidth");
  const QString step = desk.stepName();
  for (const QString& wrong : {QStringLiteral("40 in"), QStringLiteral("0"), QStringLiteral("wide"),
                               QStringLiteral("-3 cm")}) {
    CAPTURE(wrong);
    desk.type("frameWindowWidth", wrong);
    CHECK_FALSE(width.accessibleDescription().isEmpty());
    CHECK(desk.stepName() == step);
  }
  // A window beyond its body names the body as the remedy.
  width.selectAll();
  QTest::keyClicks(&width, QStringLiteral("40 in"));
  CHECK(width.accessibleDescription().contains(QStringLiteral("body")));
  QTest::keyClick(&width, Qt::Key_Escape);
  CHECK(width.accessibleDescription().isEmpty());
  CHECK(desk.shop().isVisible());
}

TEST_CASE("Frames are added, duplicated and removed; the last stays", "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("Frames"));
  auto& frames = desk.onPage<QListWidget>("entries");
  const int count = frames.count();
  QTest::mouseClick(&desk.onPage<QPushButton>("addEntry"), Qt::LeftButton);
  CHECK(frames.count() == count + 1);
  CHECK(frames.currentRow() == count);
  desk.type("frameName", QStringLiteral("Large & square"));
  CHECK(frames.item(count)->text() == QStringLiteral("Large & square"));
  auto& remove = desk.onPage<QPushButton>("removeEntry");
  while (frames.count() > 1) {
    REQUIRE(remove.isEnabled());
    QTest::mouseClick(&remove, Qt::LeftButton);
  }
  CHECK_FALSE(remove.isEnabled());
  REQUIRE(desk.waitForPlan());
}

TEST_CASE("The shop is saved to its file, and only what changed is written", "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("Shop"));
  auto& save = desk.onPage<QLineEdit>("shopName");
  REQUIRE(save.text() == QStringLiteral("Millrace Stitchroom"));
  const QString before = textOfFile(desk.demo);
  desk.type("shopName", QStringLiteral("Weir Stitchroom"));
  auto& button = desk.find<QPushButton>("saveShop");
  REQUIRE(button.isEnabled());
  QTest::keyClick(&desk.shop(), Qt::Key_S, Qt::ControlModifier);
  REQUIRE(waitFor([&] { return !button.isEnabled(); }));
  CHECK_FALSE(desk.shop().isWindowModified());
  QString expected = before;
  expected.replace(QStringLiteral("Millrace Stitchroom"), QStringLiteral("Weir Stitchroom"));
  CHECK(textOfFile(desk.demo) == expected);
  // What is still being typed counts as well.
  auto& name = desk.onPage<QLineEdit>("shopName");
  name.selectAll();
  QTest::keyClicks(&name, QStringLiteral("Sluice Stitchroom"));
  Q_EMIT desk.shop().saveRequested();
  REQUIRE(waitFor([&] { return !button.isEnabled(); }));
  CHECK(textOfFile(desk.demo).contains(QStringLiteral("Sluice Stitchroom")));
  desk.action("undo").trigger();
  QTest::mouseClick(&button, Qt::LeftButton);
  REQUIRE(waitFor([&] { return !button.isEnabled(); }));
  CHECK(textOfFile(desk.demo) == expected);
  // Undo after saving is a change again.
  desk.action("undo").trigger();
  CHECK(desk.shop().isWindowModified());
  QTest::mouseClick(&button, Qt::LeftButton);
  REQUIRE(waitFor([&] { return !button.isEnabled(); }));
  CHECK(textOfFile(desk.demo) == before);
}

TEST_CASE("Its own hooping error is judged, measured, or the usual one", "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("Shop"));
  auto& judges = desk.onPage<QCheckBox>("shopJudges");
  const bool judged = judges.isChecked();
  QTest::mouseClick(&judges, Qt::LeftButton, {}, {8, judges.height() / 2});
  CHECK(judges.isChecked() != judged);
  CHECK(desk.onPage<QLineEdit>("shopErrorSideways").isEnabled() == judges.isChecked());
  if (!judges.isChecked()) {
    QTest::mouseClick(&judges, Qt::LeftButton, {}, {8, judges.height() / 2});
  }
  desk.type("shopErrorSideways", QStringLiteral("3/8 in"));
  CHECK(desk.stepName().contains(QStringLiteral("sideways 3/8 in")));
  desk.openTab(QStringLiteral("Measured hoopings"));
  QTest::mouseClick(&desk.onPage<QPushButton>("addEntry"), Qt::LeftButton);
  desk.type("measuredSideways", QStringLiteral("-2 mm"));
  desk.type("measuredNote", QStringLiteral("2026-11-03, polo"));
  auto& measured = desk.onPage<QListWidget>("entries");
  CHECK(measured.item(measured.currentRow())
            ->text()
            .startsWith(QStringLiteral("2026-11-03, polo: -5/64 in")));
}

TEST_CASE("A house rule is made and moves the designs that it is meant for", "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("House rules"));
  auto& rules = desk.onPage<QListWidget>("entries");
  const int before = rules.count();
  QTest::mouseClick(&desk.onPage<QPushButton>("addEntry"), Qt::LeftButton);
  REQUIRE(rules.count() == before + 1);
  auto& place = desk.onPage<QComboBox>("ruleLocation");
  const int sleeve = place.findData(QStringLiteral("left-sleeve"));
  REQUIRE(sleeve >= 0);
  place.setCurrentIndex(sleeve);
  Q_EMIT place.activated(sleeve);
  // What was not changed yet is what is shipped for the place.
  const PlacementRule& shipped = shippedRuleFor(LocationId("left-sleeve"), shippedRules());
  CHECK(desk.onPage<QComboBox>("ruleSideways").currentData().toString() ==
        toQString(nameOf(shipped.sideways)));
  CHECK(desk.onPage<QComboBox>("ruleFrom").currentData().toString() ==
        toQString(nameOf(shipped.from)));
  // The marks on offer are those of a sleeve.
  auto& from = desk.onPage<QComboBox>("ruleFrom");
  CHECK(from.findData(QStringLiteral("cuff-edge")) >= 0);
  CHECK(from.findData(QStringLiteral("collar-seam")) < 0);
  CHECK(from.currentIndex() >= 0);
  desk.type("ruleMost", QStringLiteral("9 in"));
  desk.type("ruleDistance", QStringLiteral("12 in"));
  CHECK_FALSE(desk.onPage<QLineEdit>("ruleDistance").accessibleDescription().isEmpty());
  desk.type("ruleDistance", QStringLiteral("8 in"));
  CHECK(desk.stepName().contains(QStringLiteral("distance 8 in")));
  // How large a design may be, from both ends.
  desk.type("ruleLeastHeight", QStringLiteral("2 in"));
  CHECK(desk.stepName().contains(QStringLiteral("least height 2 in")));
  desk.type("ruleMostHeight", QStringLiteral("1 in"));
  CHECK_FALSE(desk.onPage<QLineEdit>("ruleMostHeight").accessibleDescription().isEmpty());
  desk.type("ruleMostHeight", QStringLiteral("4 in"));
  CHECK(desk.stepName().contains(QStringLiteral("most height 4 in")));
  desk.type("ruleMostHeight", QString());
  REQUIRE(desk.waitForPlan());
}

TEST_CASE("A house rule that the order does not use is remarked on, and the finding leads to it",
          "[desk][shop][findings]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("House rules"));
  auto& rules = desk.onPage<QListWidget>("entries");
  QTest::mouseClick(&desk.onPage<QPushButton>("addEntry"), Qt::LeftButton);
  const int row = rules.currentRow();
  auto& place = desk.onPage<QComboBox>("ruleLocation");
  const QString sewn =
      toQString(plannedDemo()->order()->lines.front().placements.front().location.text());
  place.setCurrentIndex(place.findData(sewn));
  Q_EMIT place.activated(place.currentIndex());
  Q_EMIT desk.onPage<TickMenu>("ruleKinds").picked({});
  Q_EMIT desk.onPage<TickMenu>("ruleBands").picked({});
  auto& remark = desk.onPage<QLabel>("entryRemark");
  desk.type("ruleSizes", QStringLiteral("NoSuch"));
  REQUIRE(waitFor([&] { return remark.isVisible(); }));
  CHECK(remark.text().contains(QStringLiteral("NoSuch")));
  CHECK(rules.item(row)->text().contains(QStringLiteral("not used")));
  REQUIRE(desk.waitForPlan());
  // Last among the findings; its button leads back to the rule.
  desk.find<QTabWidget>("shopTabs").setCurrentIndex(0);
  auto& findings = desk.findings();
  const QModelIndex last = findings.model()->index(findings.model()->rowCount() - 1, 0);
  CHECK(last.data().toString().contains(QStringLiteral("NoSuch")));
  CHECK(last.data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("note")));
  findings.setCurrentIndex(last);
  rules.setCurrentRow(-1);
  press(desk, "findingHouseRule");
  CHECK(desk.onPage<QListWidget>("entries").isVisible());
  CHECK(rules.currentRow() == row);
  // A size that the chart has mends it.
  desk.type("ruleSizes",
            toQString(plannedDemo()->order()->lines.front().sizes.front().size.text()));
  CHECK(waitFor([&] { return !remark.isVisible(); }));
}

TEST_CASE("A new shop starts from nothing and asks for a file", "[desk][shop]") {
  DeskOnDemo desk;
  desk.action("newShop").trigger();
  auto& shop = desk.find<ShopWindow>("shopWindow");
  activate(shop);
  CHECK(shop.isWindowModified());
  CHECK(desk.label("shopFile") == QStringLiteral("Not in a file yet"));
  // Leaving asks; staying keeps it.
  bool asked = false;
  const auto answer = [&](const QString& words) {
    QTimer::singleShot(300, desk.window.get(), [&, words] {
      auto* box = desk.window->findChild<QMessageBox*>(QStringLiteral("leaveShop"));
      for (QAbstractButton* button : box == nullptr ? QList<QAbstractButton*>() : box->buttons()) {
        if (button->text().contains(words)) {
          asked = true;
          button->click();
          return;
        }
      }
    });
  };
  answer(QStringLiteral("Stay"));
  CHECK_FALSE(desk.window->close());
  CHECK(asked);
  CHECK(desk.window->isVisible());
  answer(QStringLiteral("not save"));
  CHECK(desk.window->close());
}

TEST_CASE("A shop that another changed counts, and undo brings mine back", "[desk][shop]") {
  ShopOnDemo desk;
  desk.openTab(QStringLiteral("Shop"));
  desk.type("shopName", QStringLiteral("Mine"));
  DemoCopy::edit(desk.demo.shop(), "Millrace Stitchroom", "Theirs");
  REQUIRE(waitFor(
      [&] { return desk.onPage<QLineEdit>("shopName").text() == QStringLiteral("Theirs"); }));
  CHECK(desk.find<MessageBar>("messageBar").headline().contains(QStringLiteral("shop")));
  desk.action("undo").trigger();
  CHECK(desk.onPage<QLineEdit>("shopName").text() == QStringLiteral("Mine"));
  CHECK(desk.shop().isWindowModified());
}

TEST_CASE("Every control of the shop has a name and is reached by Tab", "[desk][shop][access]") {
  ShopOnDemo desk;
  auto& tabs = desk.find<QTabWidget>("shopTabs");
  for (int i = 0; i < tabs.count(); ++i) {
    tabs.setCurrentIndex(i);
    CAPTURE(tabs.tabText(i));
    const auto* entries = tabs.currentWidget()->findChild<QListWidget*>(QStringLiteral("entries"));
    if (entries != nullptr && entries->count() == 0) {
      QTest::mouseClick(&desk.onPage<QPushButton>("addEntry"), Qt::LeftButton);
    }
    QSet<QWidget*> reached;
    QWidget* at = &tabs;
    at->setFocus();
    for (int step = 0; step < 200; ++step) {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
      reached.insert(QApplication::focusWidget());
    }
    for (QWidget* each : tabs.currentWidget()->findChildren<QWidget*>()) {
      const bool control = qobject_cast<QLineEdit*>(each) != nullptr ||
                           qobject_cast<QComboBox*>(each) != nullptr ||
                           qobject_cast<QAbstractButton*>(each) != nullptr ||
                           qobject_cast<QListWidget*>(each) != nullptr;
      if (!control || !each->isVisible() || !each->isEnabled()) {
        continue;
      }
      auto* button = qobject_cast<QAbstractButton*>(each);
      CAPTURE(each->objectName());
      CHECK_FALSE(
          (each->accessibleName().isEmpty() && (button == nullptr || button->text().isEmpty())));
      CHECK(reached.contains(each));
    }
  }
}

}  // namespace creaseline::desk
