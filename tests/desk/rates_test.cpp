// SPDX-License-Identifier: MIT
// Rates typed in the shop, prices of backing and garments, and the cost that follows from them.
#include <QListWidget>
#include <QTextBrowser>

#include "desk/library_fixture.h"
#include "desk/money_words.h"
#include "desk/shop_window.h"
#include "desk/work_window.h"

namespace creaseline::desk {
namespace {

class CostOnDemo : public DeskOnDemo {
 public:
  CostOnDemo() { openDemo(); }
  ~CostOnDemo() {
    // Nobody is there to answer whether the shop is to be saved.
    while (window->isVisible() && action("undo").isEnabled()) {
      action("undo").trigger();
    }
  }
  void openRates() {
    action("editShop").trigger();
    auto& shop = find<ShopWindow>("shopWindow");
    activate(shop);
    auto& tabs = find<QTabWidget>("shopTabs");
    tabs.setCurrentIndex(tabs.count() - 1);
  }
  WorkWindow& openCost() {
    action("showWork").trigger();
    auto& work = find<WorkWindow>("workWindow");
    activate(work);
    auto& tabs = find<QTabWidget>("workTabs");
    tabs.setCurrentIndex(tabs.count() - 1);
    REQUIRE(waitFor([&] { return work.ready(); }));
    return work;
  }
  void type(const char* field, const QString& text) { typeField(*this, field, text); }
  QString problemBeside(const char* field) {
    return find<QLineEdit>(field).accessibleDescription();
  }
  QString step() { return undoText(*this); }
  QListWidget& missing() { return find<QListWidget>("costMissing"); }
  bool misses(const char* words) {
    return !missing().findItems(QString::fromLatin1(words), Qt::MatchContains).isEmpty();
  }
  void chooseMissing(const QString& words) {
    const QList<QListWidgetItem*> found = missing().findItems(words, Qt::MatchContains);
    CAPTURE(words);
    REQUIRE(!found.isEmpty());
    missing().setCurrentItem(found.first());
    press(*this, "costFillIn");
  }
  // As the window says it.
  QString total() {
    auto& work = find<WorkWindow>("workWindow");
    REQUIRE(waitForPlan());
    REQUIRE(waitFor([&] { return work.ready(); }));
    return label("costHead");
  }
};

}  // namespace

TEST_CASE("Rates are edited as typed, each as a step, and refused where they cannot be",
          "[desk][rates]") {
  CostOnDemo desk;
  desk.openRates();
  CHECK(desk.find<QLineEdit>("rateLabour").text() == QStringLiteral("19.50 EUR"));
  desk.type("rateLabour", QStringLiteral("21,25"));
  CHECK(desk.step().contains(QStringLiteral("Rates: work, an hour 21.25 EUR")));
  CHECK(desk.find<QLineEdit>("rateLabour").text() == QStringLiteral("21.25 EUR"));
  desk.type("rateMachine", QStringLiteral("7 USD"));
  CHECK_FALSE(desk.problemBeside("rateMachine").isEmpty());
  QTest::keyClick(&desk.find<QLineEdit>("rateMachine"), Qt::Key_Escape);
  desk.type("rateAttendance", QStringLiteral("120 %"));
  CHECK_FALSE(desk.problemBeside("rateAttendance").isEmpty());
  desk.type("rateAttendance", QStringLiteral("40"));
  CHECK(desk.find<QLineEdit>("rateAttendance").text() == QStringLiteral("40 %"));
  desk.type("rateThread", QStringLiteral("6.90 / 900000"));
  CHECK(desk.find<QLineEdit>("rateThread").text() == QStringLiteral("6.90 EUR / 900000"));
  desk.type("rateTopping", QStringLiteral("22 / 20 in"));
  CHECK_FALSE(desk.problemBeside("rateTopping").isEmpty());
  desk.type("rateTopping", QStringLiteral("22 / 20 in x 10 yd"));
  CHECK(desk.problemBeside("rateTopping").isEmpty());
  desk.action("undo").trigger();
  CHECK(desk.find<QLineEdit>("rateTopping").text() == QStringLiteral("24.00 EUR / 20 in x 25 yd"));
}

TEST_CASE("Rates can be typed as soon as a currency is, and not once it is emptied",
          "[desk][rates]") {
  CostOnDemo desk;
  desk.openRates();
  auto& currency = desk.find<QLineEdit>("rateCurrency");
  auto& labour = desk.find<QLineEdit>("rateLabour");
  currency.setFocus();
  currency.selectAll();
  QTest::keyClick(&currency, Qt::Key_Delete);
  CHECK_FALSE(labour.isEnabled());
  QTest::keyClick(&currency, Qt::Key_Escape);
  CHECK(labour.isEnabled());
  desk.type("rateCurrency", QStringLiteral(" "));
  REQUIRE(desk.find<QLineEdit>("rateCurrency").text().trimmed().isEmpty());
  CHECK_FALSE(labour.isEnabled());
  currency.setFocus();
  currency.selectAll();
  QTest::keyClicks(&currency, QStringLiteral("us"));
  CHECK_FALSE(labour.isEnabled());
  QTest::keyClicks(&currency, QStringLiteral("d"));
  REQUIRE(labour.isEnabled());
  CHECK(desk.find<QLineEdit>("rateMarkup").isEnabled());
  // Tab goes on to what was grey a moment ago.
  QTest::keyClick(&currency, Qt::Key_Tab);
  CHECK(QApplication::focusWidget() == &labour);
  CHECK(currency.text() == QStringLiteral("USD"));
  QTest::keyClicks(&labour, QStringLiteral("20"));
  QTest::keyClick(&labour, Qt::Key_Return);
  CHECK(labour.text() == QStringLiteral("20.00 USD"));
}

TEST_CASE("The currency comes first, and another keeps the digits", "[desk][rates]") {
  CostOnDemo desk;
  desk.openRates();
  desk.type("rateCurrency", QStringLiteral("usd"));
  CHECK(desk.find<QLineEdit>("rateCurrency").text() == QStringLiteral("USD"));
  CHECK(desk.find<QLineEdit>("rateLabour").text() == QStringLiteral("19.50 USD"));
  desk.type("rateCurrency", QStringLiteral("JPY"));
  CHECK(desk.problemBeside("rateCurrency").contains(QStringLiteral("decimals")));
  desk.type("rateCurrency", QStringLiteral("dollars"));
  CHECK(desk.problemBeside("rateCurrency").contains(QStringLiteral("ISO 4217")));
  auto& currency = desk.find<QLineEdit>("rateCurrency");
  currency.selectAll();
  QTest::keyClick(&currency, Qt::Key_Delete);
  QTest::keyClick(&currency, Qt::Key_Return);
  CHECK_FALSE(desk.find<QLineEdit>("rateLabour").isEnabled());
  CHECK(desk.find<QLineEdit>("rateLabour").text().isEmpty());
  desk.action("undo").trigger();
  CHECK(desk.find<QLineEdit>("rateCurrency").text() == QStringLiteral("USD"));
  CHECK(desk.find<QLineEdit>("rateLabour").text() == QStringLiteral("19.50 USD"));
}

TEST_CASE("The cost is shown by kind, line and run as it is reckoned", "[desk][rates][work]") {
  CostOnDemo desk;
  desk.openCost();
  const auto planned = plannedDemo();
  const ReportContext context{*planned->order(), *planned->shop(), shippedRules()};
  const auto cost =
      orderCost(*planned->plan(), planRuns(*planned->plan(), context, planned->units()), context,
                planned->units());
  REQUIRE(cost);
  const QString head = desk.label("costHead");
  CHECK(head.contains(moneyWords(cost->total, cost->currency)));
  CHECK(head.contains(QStringLiteral("Incomplete")) == !cost->complete());
  CHECK(desk.missing().count() == static_cast<int>(cost->notCounted.size()));
  REQUIRE_FALSE(cost->notCounted.empty());
  const QString text = desk.find<QTextBrowser>("workCost").toPlainText();
  for (const CostItem& item : cost->items) {
    CHECK(text.contains(toQString(costPhrase(item.kind))));
    CHECK(text.contains(moneyWords(item.amount, cost->currency)));
  }
  for (const CostLine& line : cost->lines) {
    CHECK(text.contains(moneyWords(line.total, cost->currency)));
  }
  for (const CostRun& run : cost->runs) {
    CHECK(text.contains(moneyWords(run.perGarment, cost->currency)));
  }
}

TEST_CASE("What is not counted leads to the field that is missing", "[desk][rates][work]") {
  CostOnDemo desk;
  desk.openRates();
  desk.type("rateLabour", QStringLiteral(" "));
  REQUIRE(desk.waitForPlan());
  CHECK(desk.find<QLineEdit>("rateLabour").text().isEmpty());
  WorkWindow& work = desk.openCost();
  REQUIRE(waitFor([&] { return work.ready() && desk.misses("Work,"); }));
  desk.chooseMissing(QStringLiteral("Work,"));
  CHECK(
      waitFor([&] { return QApplication::focusWidget() == &desk.find<QLineEdit>("rateLabour"); }));
  desk.type("rateLabour", QStringLiteral("20"));
  REQUIRE(desk.waitForPlan());

  const QString without = desk.total();

  // A garment's price is in its own window.
  desk.action("editGarments").trigger();
  desk.type("garmentPrice", QStringLiteral(" "));
  CHECK(desk.find<QLineEdit>("garmentPrice").text().isEmpty());
  REQUIRE(desk.waitForPlan());
  REQUIRE(waitFor([&] { return work.ready() && desk.misses("Blanks,"); }));
  activate(work);
  desk.chooseMissing(QStringLiteral("Blanks,"));
  REQUIRE(waitFor(
      [&] { return QApplication::focusWidget() == &desk.find<QLineEdit>("garmentPrice"); }));
  desk.type("garmentPrice", QStringLiteral("4.20"));
  CHECK(desk.step().contains(QStringLiteral("4.20 EUR")));
  CHECK(desk.find<QLineEdit>("garmentPrice").text() == QStringLiteral("4.20 EUR"));
  CHECK(desk.total() != without);
  CHECK_FALSE(desk.misses("Blanks,"));
}

TEST_CASE("A shop without rates is told where they begin", "[desk][rates][work]") {
  CostOnDemo desk;
  desk.openRates();
  auto& currency = desk.find<QLineEdit>("rateCurrency");
  currency.setFocus();
  currency.clear();
  QTest::keyClick(&currency, Qt::Key_Space);
  QTest::keyClick(&currency, Qt::Key_Return);
  REQUIRE(desk.waitForPlan());
  desk.openCost();
  CHECK(desk.total().contains(QStringLiteral("no rates")));
  REQUIRE(desk.missing().count() == 1);
  press(desk, "costFillIn");
  CHECK(waitFor([&] { return QApplication::focusWidget() == &currency; }));
}

TEST_CASE("Backing has a price for what one buys of it", "[desk][rates]") {
  CostOnDemo desk;
  desk.openRates();
  desk.find<QTabWidget>("shopTabs").setCurrentIndex(3);
  auto& price = desk.find<QLineEdit>("backingPrice");
  CHECK(price.text() == QStringLiteral("64.00 EUR / 50 m"));
  desk.type("backingPrice", QStringLiteral("64 / 100"));
  CHECK_FALSE(desk.problemBeside("backingPrice").isEmpty());
  desk.type("backingPrice", QStringLiteral("66 / 25 m"));
  CHECK(price.text() == QStringLiteral("66.00 EUR / 25 m"));
  CHECK(desk.step().contains(QStringLiteral("price 66.00 EUR / 25 m")));
  // What was for a length is for no number of sheets.
  desk.type("backingLength", QStringLiteral("30 cm"));
  auto& form = desk.find<QComboBox>("backingFormChoice");
  form.setCurrentIndex(1);
  Q_EMIT form.activated(1);
  CHECK(price.text().isEmpty());
}

TEST_CASE("A line's garments may be the customer's own", "[desk][rates]") {
  CostOnDemo desk;
  desk.openCost();
  const QString before = desk.total();
  auto& supplied = desk.find<QCheckBox>("lineSupplied");
  REQUIRE_FALSE(supplied.isChecked());
  supplied.click();
  CHECK(supplied.isChecked());
  CHECK(desk.step().contains(QStringLiteral("from the customer")));
  CHECK(desk.total() != before);
  desk.action("undo").trigger();
  CHECK(desk.total() == before);
}

TEST_CASE("Amounts are written as the place writes them", "[desk][rates]") {
  const QLocale before;
  const Currency euro{"EUR", 2};
  CHECK(moneyWords(Money::fromMinorUnits(123'456), {"JPY", 0}) ==
        QLocale().toString(123'456) + QStringLiteral(" JPY"));
  QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Spain));
  CHECK(moneyWords(Money::fromMinorUnits(1'850), euro) == QStringLiteral("18,50 EUR"));
  CHECK(moneyWords(Money::fromMinorUnits(12'345'678), euro) == QStringLiteral("123.456,78 EUR"));
  CHECK(priceWords("0.02 EUR / 12.5 m") == QStringLiteral("0,02 EUR / 12.5 m"));
  QLocale::setDefault(before);
}

}  // namespace creaseline::desk
