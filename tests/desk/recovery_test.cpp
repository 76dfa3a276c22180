// SPDX-License-Identifier: MIT
#include "desk/recovery.h"

#include <QDirIterator>
#include <QProcess>
#include <QPushButton>

#include "desk/edit_commands.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

struct Session {
  explicit Session(const DemoCopy& demo)
      : settings(demo.settings()),
        document(sharedRules(), settings),
        recovery(pathText(demo.folder() / "recovery"), document) {}
  void open(const DemoCopy& demo) {
    document.openOrder(demo.order());
    REQUIRE(waitFor([this] { return !document.busy() && document.orderInHand() != nullptr; }));
  }
  void edit(int quantity) {
    const OrderEdits edits(*document.orderInHand(), shippedRules(), document.units());
    REQUIRE(applyEdit(document, edits.quantity(1, SizeName("YM"), quantity)));
  }
  void keep() {
    recovery.keep();
    recovery.finish();
  }
  LeftWork onlyWorkLeft() const {
    const auto left = recovery.leftWork();
    REQUIRE(left.size() == 1);
    return left.front();
  }

  Settings settings;
  Document document;
  Recovery recovery;
};

int foldersIn(const DemoCopy& demo) {
  return static_cast<int>(QDir(pathText(demo.folder() / "recovery"))
                              .entryList(QDir::Dirs | QDir::NoDotAndDotDot)
                              .size());
}

}  // namespace

TEST_CASE("What is not saved is kept by itself within five seconds and cleared by saving",
          "[desk][recovery]") {
  const DemoCopy demo;
  Session session(demo);
  session.open(demo);
  CHECK(foldersIn(demo) == 0);
  session.edit(31);
  REQUIRE(QTest::qWaitFor([&] { return foldersIn(demo) == 1; }, 5000));
  // The folder of a session that is alive is not offered to another.
  Session other(demo);
  CHECK(other.recovery.leftWork().empty());
  REQUIRE(session.document.save() == SaveResult::Saved);
  session.recovery.finish();
  CHECK(foldersIn(demo) == 0);
}

TEST_CASE("Steady typing does not put the keeping off for ever", "[desk][recovery]") {
  const DemoCopy demo;
  Session session(demo);
  session.open(demo);
  QElapsedTimer clock;
  clock.start();
  for (int i = 0; foldersIn(demo) == 0 && clock.elapsed() < 6000; ++i) {
    session.edit(40 + i);
    QTest::qWait(200);
  }
  CHECK(foldersIn(demo) == 1);
  CHECK(clock.elapsed() < 5000);
}

TEST_CASE("Undoing everything leaves nothing to keep", "[desk][recovery]") {
  const DemoCopy demo;
  Session session(demo);
  session.open(demo);
  session.edit(31);
  session.keep();
  REQUIRE(foldersIn(demo) == 1);
  session.document.undoStack().undo();
  session.recovery.finish();
  CHECK(foldersIn(demo) == 0);
}

namespace {

// A copy of the kept folder without its lock is what a killed process leaves.
void copyKept(const DemoCopy& demo) {
  const QDir folder(pathText(demo.folder() / "recovery"));
  const QString kept = folder.entryList(QDir::Dirs | QDir::NoDotAndDotDot).first();
  REQUIRE(QDir().mkpath(folder.filePath(QStringLiteral("left"))));
  for (const QString& name : QDir(folder.filePath(kept)).entryList({QStringLiteral("*.json")})) {
    const QString file = QLatin1Char('/') + name;
    REQUIRE(
        QFile::copy(folder.filePath(kept) + file, folder.filePath(QStringLiteral("left")) + file));
  }
}

void leaveWork(const DemoCopy& demo, int quantity) {
  Session session(demo);
  session.open(demo);
  session.edit(quantity);
  session.keep();
  copyKept(demo);
}

void nameShop(Session& session, const char* name) {
  Shop shop = *session.document.shopInHand();
  shop.name = name;
  REQUIRE(applyEdit(session.document, ShopEdit{QStringLiteral("name"), {}, std::move(shop)}));
}

int quantityInHand(const Document& document) {
  for (const SizeQuantity& each : document.orderInHand()->lines[1].sizes) {
    if (each.size == SizeName("YM")) {
      return each.quantity;
    }
  }
  return 0;
}

}  // namespace

TEST_CASE("Work left is taken up as an order of its own where its file cannot be read any more",
          "[desk][recovery]") {
  const DemoCopy demo;
  leaveWork(demo, 31);
  DemoCopy::replace(demo.order(), "[]");
  Session next(demo);
  const LeftWork left = next.onlyWorkLeft();
  next.document.recover({left.orderFile, left.draft, {}, {}});
  REQUIRE(waitFor([&] { return next.document.orderInHand() && !next.document.busy(); }));
  CHECK(quantityInHand(next.document) == 31);
  CHECK(next.document.modified());
  CHECK(next.document.orderFile().isEmpty());
  CHECK(DemoCopy::read(demo.order()) == "[]");
}

TEST_CASE("Work left is shown with its places as soon as a new session takes it up",
          "[desk][recovery]") {
  const DemoCopy demo;
  leaveWork(demo, 31);
  Session next(demo);
  const LeftWork left = next.onlyWorkLeft();
  std::size_t places = 0;
  QObject::connect(&next.document, &Document::plannedChanged, &next.document, [&] {
    const auto planned = next.document.planned();
    if (planned->order() != nullptr && places == 0) {
      places =
          OrderEdits(*planned->order(), planned->rules(), planned->units()).locations(1).size();
    }
  });
  next.recovery.takeUp(left);
  REQUIRE(waitFor([&] { return next.document.orderInHand() && !next.document.busy(); }));
  CHECK(places > 0);
  CHECK(quantityInHand(next.document) == 31);
}

TEST_CASE(
    "Work left is planned with the shop that it was planned with, not with one open by chance",
    "[desk][recovery]") {
  const DemoCopy demo;
  leaveWork(demo, 31);
  const DemoCopy elsewhere;
  Session next(demo);
  next.document.openShop(elsewhere.shop());
  REQUIRE(waitFor([&] { return next.document.shopInHand() && !next.document.busy(); }));
  const LeftWork left = next.onlyWorkLeft();
  REQUIRE(left.shopFile == pathText(demo.shop()));
  if (GENERATE(true, false)) {
    next.recovery.takeUp(left);
    REQUIRE(waitFor([&] { return next.document.orderInHand() && !next.document.busy(); }));
    CHECK(next.document.shopFile() == pathText(demo.shop()));
  } else {
    // One with changes of its own is not let go of without a question.
    nameShop(next, "Changed");
    next.recovery.takeUp(left);
    REQUIRE(waitFor([&] { return next.document.orderInHand() && !next.document.busy(); }));
    CHECK(next.document.shopFile() == pathText(elsewhere.shop()));
    CHECK(next.document.shopModified());
  }
  CHECK(quantityInHand(next.document) == 31);
}

TEST_CASE("The open order opened again is as its file says", "[desk][document]") {
  const DemoCopy demo;
  Session session(demo);
  session.open(demo);
  session.edit(31);
  session.document.openOrder(demo.order());
  REQUIRE(waitFor([&] { return !session.document.busy() && !session.document.modified(); }));
  CHECK(quantityInHand(session.document) == 3);
  CHECK(session.document.undoStack().count() == 0);
}

TEST_CASE("Work left by a session that died is found, taken up, and dropped once kept again",
          "[desk][recovery]") {
  const DemoCopy demo;
  leaveWork(demo, 31);
  Session next(demo);
  const LeftWork left = next.onlyWorkLeft();
  CHECK(left.orderFile == pathText(demo.order()));
  CHECK(left.orderName.contains(QStringLiteral("2026-118")));
  next.recovery.takeUp(left);
  REQUIRE(waitFor([&] { return next.document.modified() && !next.document.busy(); }));
  CHECK(quantityInHand(next.document) == 31);
  next.keep();
  CHECK(next.recovery.leftWork().empty());
  // The step can be undone like any other.
  next.document.undoStack().undo();
  CHECK_FALSE(next.document.modified());
  CHECK(*next.document.orderInHand() == loadOrder(demo.order(), shippedRules()).value);
}

TEST_CASE("Work taken up while another draft is being written is not dropped by that one",
          "[desk][recovery]") {
  const DemoCopy demo;
  leaveWork(demo, 31);
  Session next(demo);
  next.open(demo);
  next.edit(5);
  const LeftWork left = next.onlyWorkLeft();
  next.recovery.keep();
  next.recovery.takeUp(left);
  REQUIRE(waitFor([&] { return quantityInHand(next.document) == 31; }));
  next.recovery.finish();
  CHECK(next.recovery.leftWork().size() == 1);
  next.keep();
  CHECK(next.recovery.leftWork().empty());
}

TEST_CASE("A draft that is being written when all is saved does not stay", "[desk][recovery]") {
  const DemoCopy demo;
  Session session(demo);
  session.open(demo);
  session.edit(31);
  session.recovery.keep();
  REQUIRE(session.document.save() == SaveResult::Saved);
  session.recovery.finish();
  CHECK(foldersIn(demo) == 0);
  // What is edited then is kept again, in a folder of its own.
  session.edit(32);
  session.keep();
  CHECK(foldersIn(demo) == 1);
}

TEST_CASE("Work that is let go before it is in hand is offered again", "[desk][recovery]") {
  const DemoCopy demo;
  leaveWork(demo, 31);
  Session next(demo);
  const LeftWork left = next.onlyWorkLeft();
  next.recovery.takeUp(left);
  SECTION("by stopping") {
    next.document.cancelPlanning();
    next.open(demo);
  }
  SECTION("by opening another order") {
    next.open(demo);
  }
  // The file that was opened then is as it says, and keeping an edit of it does not drop the rest.
  CHECK_FALSE(next.document.modified());
  next.edit(5);
  next.keep();
  CHECK(next.recovery.leftWork().size() == 1);
}

TEST_CASE("A folder that cannot be made is said once", "[desk][recovery]") {
  const DemoCopy demo;
  Session session(demo);
  session.open(demo);
  DemoCopy::replace(demo.folder() / "recovery", "a file is in the way");
  int said = 0;
  QObject::connect(&session.recovery, &Recovery::notKept, &session.recovery, [&] { ++said; });
  session.edit(31);
  session.keep();
  session.keep();
  CHECK(said == 1);
}

TEST_CASE("A shop that was not saved is taken up again over its file", "[desk][recovery][shop]") {
  const DemoCopy demo;
  {
    Session session(demo);
    session.open(demo);
    REQUIRE(waitFor([&] { return session.document.shopInHand() != nullptr; }));
    nameShop(session, "Weir Stitchroom");
    REQUIRE(session.document.shopModified());
    REQUIRE_FALSE(session.document.modified());
    session.keep();
    copyKept(demo);
  }
  Session next(demo);
  const LeftWork left = next.onlyWorkLeft();
  CHECK(left.draft.empty());
  REQUIRE_FALSE(left.shopDraft.empty());
  next.recovery.takeUp(left);
  REQUIRE(waitFor([&] {
    const auto shop = next.document.shopInHand();
    return shop && shop->name == "Weir Stitchroom" && !next.document.busy();
  }));
  CHECK(next.document.shopModified());
  CHECK(next.document.shopFile() == pathText(demo.shop()));
  next.document.undoStack().undo();
  CHECK(next.document.shopInHand()->name == "Millrace Stitchroom");
  CHECK_FALSE(next.document.shopModified());
}

TEST_CASE("Saving the order alone leaves the shop's draft", "[desk][recovery][shop]") {
  const DemoCopy demo;
  Session session(demo);
  session.open(demo);
  REQUIRE(waitFor([&] { return session.document.shopInHand() != nullptr; }));
  session.edit(31);
  nameShop(session, "Weir Stitchroom");
  session.keep();
  REQUIRE(session.document.save() == SaveResult::Saved);
  session.keep();
  copyKept(demo);
  const Session other(demo);
  const LeftWork left = other.onlyWorkLeft();
  CHECK(left.draft.empty());
  CHECK_FALSE(left.shopDraft.empty());
  REQUIRE(session.document.saveShop() == SaveResult::Saved);
  session.recovery.finish();
  CHECK(loadShop(demo.shop(), shippedRules()).value.name == "Weir Stitchroom");
  CHECK(foldersIn(demo) == 1);  // the copy
}

namespace {

const char* const kKilledDesk = "CREASELINE_KILLED_DESK";  // names the folder of the demo

// Types a name over the shop's, in its window.
void typeShopName(DeskWindow& window, const QString& name) {
  window.findChild<QAction*>(QStringLiteral("editShop"))->trigger();
  auto* shop = window.findChild<QWidget*>(QStringLiteral("shopWindow"));
  REQUIRE(shop != nullptr);
  auto* field = shop->findChild<QLineEdit*>(QStringLiteral("shopName"));
  REQUIRE(field != nullptr);
  field->selectAll();
  QTest::keyClicks(field, name);
  QTest::keyClick(field, Qt::Key_Return);
  REQUIRE(shop->isWindowModified());
}

}  // namespace

// Run by the test below, in a process of its own.
TEST_CASE("A desk in which the shop is edited until it is killed", "[.][killed-desk]") {
  const std::filesystem::path folder = toPath(qEnvironmentVariable(kKilledDesk));
  REQUIRE_FALSE(folder.empty());
  DeskWindow window(shippedRules(), resourcesFolder(), pathText(folder / "desk.ini"));
  window.show();
  window.openShop(folder / "workshop.shop.json");
  auto* edit = window.findChild<QAction*>(QStringLiteral("editShop"));
  REQUIRE(waitFor([&] { return edit->isEnabled(); }));
  typeShopName(window, QStringLiteral("Weir Stitchroom"));
  QTest::qWait(60000);
  FAIL("nobody killed this process");
}

TEST_CASE("What was typed into the shop of a desk that is killed is offered by the next one",
          "[desk][recovery][shop]") {
  const DemoCopy demo;
  const QByteArray before = DemoCopy::read(demo.shop());
  QProcess killed;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QString::fromLatin1(kKilledDesk), pathText(demo.folder()));
  killed.setProcessEnvironment(environment);
  killed.start(QCoreApplication::applicationFilePath(), {QStringLiteral("[killed-desk]")});
  const auto kept = [&] {
    QDirIterator drafts(pathText(demo.folder() / "recovery"), {QStringLiteral("about.json")},
                        QDir::Files, QDirIterator::Subdirectories);
    return drafts.hasNext();
  };
  const bool wasKept = waitFor(kept);
  killed.kill();
  REQUIRE(killed.waitForFinished());
  CAPTURE(killed.readAll().toStdString());
  REQUIRE(wasKept);
  CHECK(killed.exitStatus() == QProcess::CrashExit);
  CHECK(DemoCopy::read(demo.shop()) == before);

  DeskWindow next(shippedRules(), resourcesFolder(), demo.settings());
  next.show();
  auto* said = next.findChild<QLabel*>(QStringLiteral("messageHeadline"));
  REQUIRE(said->isVisible());
  CHECK(said->text() == QStringLiteral("The shop was not saved"));
  QTest::mouseClick(next.findChild<QPushButton*>(QStringLiteral("messageAction")), Qt::LeftButton);
  auto* edit = next.findChild<QAction*>(QStringLiteral("editShop"));
  REQUIRE(waitFor([&] { return edit->isEnabled(); }));
  edit->trigger();
  auto* shop = next.findChild<QWidget*>(QStringLiteral("shopWindow"));
  REQUIRE(waitFor([&] { return shop->isWindowModified(); }));
  CHECK(shop->findChild<QLineEdit*>(QStringLiteral("shopName"))->text() ==
        QStringLiteral("Weir Stitchroom"));
  QTest::mouseClick(shop->findChild<QPushButton*>(QStringLiteral("saveShop")), Qt::LeftButton);
  REQUIRE(waitFor([&] { return !shop->isWindowModified(); }));
  CHECK(loadShop(demo.shop(), shippedRules()).value.name == "Weir Stitchroom");
}
