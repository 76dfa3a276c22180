// SPDX-License-Identifier: MIT
#include "desk/recovery.h"

#include "desk/edit_commands.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

struct Session {
  explicit Session(const DemoCopy& demo)
      : settings(demo.settings()),
        document({&shippedRules(), [](const Rules*) {}}, settings),
        recovery(pathText(demo.folder() / "recovery"), document) {}
  void open(const DemoCopy& demo) {
    document.openOrder(demo.order());
    REQUIRE(waitFor([this] { return !document.busy() && document.orderInHand() != nullptr; }));
  }
  void edit(int quantity) {
    const OrderEdits edits(*document.orderInHand(), shippedRules(), document.units());
    REQUIRE(applyEdit(document, edits.quantity(1, SizeName("YM"), quantity)));
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
  session.recovery.keep();
  REQUIRE(foldersIn(demo) == 1);
  session.document.undoStack().undo();
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
  session.recovery.keep();
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
  const auto left = next.recovery.leftWork();
  REQUIRE(left.size() == 1);
  next.document.recover({left[0].orderFile, left[0].draft, {}, {}});
  REQUIRE(waitFor([&] { return next.document.orderInHand() && !next.document.busy(); }));
  CHECK(quantityInHand(next.document) == 31);
  CHECK(next.document.modified());
  CHECK(next.document.orderFile().isEmpty());
  CHECK(DemoCopy::read(demo.order()) == "[]");
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
  const auto left = next.recovery.leftWork();
  REQUIRE(left.size() == 1);
  CHECK(left[0].orderFile == pathText(demo.order()));
  CHECK(left[0].orderName.contains(QStringLiteral("2026-118")));
  next.recovery.takeUp(left[0]);
  REQUIRE(waitFor([&] { return next.document.modified() && !next.document.busy(); }));
  CHECK(quantityInHand(next.document) == 31);
  next.recovery.keep();
  CHECK(next.recovery.leftWork().empty());
  // The step can be undone like any other.
  next.document.undoStack().undo();
  CHECK_FALSE(next.document.modified());
  CHECK(*next.document.orderInHand() == loadOrder(demo.order(), shippedRules()).value);
}

TEST_CASE("Work that is let go before it is in hand is offered again", "[desk][recovery]") {
  const DemoCopy demo;
  leaveWork(demo, 31);
  Session next(demo);
  const auto left = next.recovery.leftWork();
  REQUIRE(left.size() == 1);
  next.recovery.takeUp(left[0]);
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
  next.recovery.keep();
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
  session.recovery.keep();
  session.recovery.keep();
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
    session.recovery.keep();
    copyKept(demo);
  }
  Session next(demo);
  const auto left = next.recovery.leftWork();
  REQUIRE(left.size() == 1);
  CHECK(left[0].draft.empty());
  REQUIRE_FALSE(left[0].shopDraft.empty());
  next.recovery.takeUp(left[0]);
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
  session.recovery.keep();
  REQUIRE(session.document.save() == SaveResult::Saved);
  session.recovery.keep();
  copyKept(demo);
  const Session other(demo);
  const auto left = other.recovery.leftWork();
  REQUIRE(left.size() == 1);
  CHECK(left[0].draft.empty());
  CHECK_FALSE(left[0].shopDraft.empty());
  REQUIRE(session.document.saveShop() == SaveResult::Saved);
  CHECK(loadShop(demo.shop(), shippedRules()).value.name == "Weir Stitchroom");
  CHECK(foldersIn(demo) == 1);  // the copy
}
