// SPDX-License-Identifier: MIT
#include "desk/document.h"

#include <QSignalSpy>

#include "desk/edit_commands.h"
#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

struct OpenDocument {
  OpenDocument() : settings(demo.settings()), document(sharedRules(), settings) {}
  void open() {
    document.openOrder(demo.order());
    REQUIRE(settled());
    REQUIRE(document.planned()->plan() != nullptr);
  }
  bool settled() {
    return waitFor([this] { return !document.busy(); });
  }

  DemoCopy demo;
  Settings settings;
  Document document;
};

}  // namespace

TEST_CASE("An order opened alone is planned for the only shop beside it", "[desk][document]") {
  OpenDocument opened;
  opened.open();
  CHECK(opened.document.shopFile() == pathText(opened.demo.shop()));
  CHECK(opened.settings.recentOrders().first() == pathText(opened.demo.order()));
  CHECK(opened.document.planned()->plan()->placements.size() ==
        plannedDemo()->plan()->placements.size());
}

TEST_CASE("An order with no shop to be found is shown and waits for one", "[desk][document]") {
  OpenDocument opened;
  const std::filesystem::path elsewhere = opened.demo.folder() / "elsewhere";
  std::filesystem::create_directory(elsewhere);
  std::filesystem::rename(opened.demo.shop(), elsewhere / "workshop.shop.json");
  opened.document.openOrder(opened.demo.order());
  REQUIRE(opened.settled());
  CHECK(opened.document.planned()->order() != nullptr);
  CHECK(opened.document.planned()->plan() == nullptr);
  opened.document.openShop(elsewhere / "workshop.shop.json");
  REQUIRE(opened.settled());
  CHECK(opened.document.planned()->plan() != nullptr);
}

TEST_CASE("A change on disk is planned by itself", "[desk][document][watch]") {
  OpenDocument opened;
  opened.open();
  const int before = opened.document.planned()->order()->garments();
  DemoCopy::edit(opened.demo.order(), "\"YS\": 2", "\"YS\": 9");
  CHECK(waitFor([&] { return opened.document.planned()->order()->garments() == before + 7; }));
  CHECK_FALSE(opened.document.stale());
}

TEST_CASE("A change in a file that the order refers to is planned, too",
          "[desk][document][watch]") {
  OpenDocument opened;
  opened.open();
  const std::filesystem::path blank = opened.demo.folder() / "blanks" / "towpath-tee.blank.json";
  const std::string before = opened.document.planned()->order()->blanks.back().name;
  DemoCopy::edit(blank, QByteArray::fromStdString("\"name\": \"" + before + "\""),
                 "\"name\": \"renamed\"");
  CHECK(
      waitFor([&] { return opened.document.planned()->order()->blanks.back().name == "renamed"; }));
}

TEST_CASE("A file that breaks leaves the last good plan, marked stale, until it is mended",
          "[desk][document][watch]") {
  OpenDocument opened;
  opened.open();
  const auto good = opened.document.planned();
  const QByteArray content = DemoCopy::read(opened.demo.order());
  DemoCopy::replace(opened.demo.order(), content.left(content.size() / 2));
  REQUIRE(waitFor([&] { return opened.document.problem().has_value(); }));
  CHECK(opened.document.stale());
  CHECK(opened.document.planned() == good);
  CHECK(opened.document.problem()->details.file == opened.demo.order().string());
  CHECK_FALSE(opened.document.problem()->details.where.empty());
  DemoCopy::replace(opened.demo.order(), content);
  CHECK(waitFor([&] { return !opened.document.problem() && !opened.document.stale(); }));
}

TEST_CASE("A new order that cannot be read leaves the open one as it was", "[desk][document]") {
  OpenDocument opened;
  opened.open();
  const auto good = opened.document.planned();
  const std::filesystem::path bad = opened.demo.folder() / "bad.order.json";
  DemoCopy::replace(bad, "[]");
  opened.document.openOrder(bad);
  REQUIRE(opened.settled());
  CHECK(opened.document.problem().has_value());
  CHECK_FALSE(opened.document.stale());
  CHECK(opened.document.planned() == good);
  CHECK(opened.document.orderFile() == pathText(opened.demo.order()));
}

TEST_CASE("Stopping the planning keeps what is on screen and says that it is not up to date",
          "[desk][document]") {
  OpenDocument opened;
  opened.open();
  const auto good = opened.document.planned();
  opened.document.reload();
  opened.document.cancelPlanning();
  CHECK_FALSE(opened.document.busy());
  CHECK(opened.document.stale());
  CHECK(opened.document.planned() == good);
  opened.document.reload();
  REQUIRE(opened.settled());
  CHECK_FALSE(opened.document.stale());
}

TEST_CASE("Units change the numbers at once and are kept for the next day", "[desk][document]") {
  OpenDocument opened;
  opened.open();
  const UnitChoice metric{LengthUnit::Millimetre, RulerMark::Eighth,
                          WeightUnit::GramsPerSquareMetre};
  const QSignalSpy changes(&opened.document, &Document::unitsChanged);
  opened.document.setUnits(metric);
  CHECK(opened.document.planned()->units() == metric);
  CHECK(changes.size() == 1);
  REQUIRE(opened.settled());
  CHECK(opened.document.planned()->units() == metric);
  CHECK(opened.settings.units() == metric);
}

namespace {

bool changeQuantity(Document& document, const char* size, int quantity) {
  const OrderEdits edits(*document.orderInHand(), shippedRules(), document.units());
  return applyEdit(document, edits.quantity(1, SizeName(size), quantity));
}

int quantityOf(const Order& order, const char* size) {
  for (const SizeQuantity& each : order.lines[1].sizes) {
    if (each.size == SizeName(size)) {
      return each.quantity;
    }
  }
  return 0;
}

}  // namespace

TEST_CASE("What somebody else saves is merged with the changes made here, and can be undone",
          "[desk][document][undo]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  REQUIRE(changeQuantity(document, "YM", 31));
  QSignalSpy merged(&document, &Document::merged);
  DemoCopy::edit(opened.demo.order(), "\"YS\": 2", "\"YS\": 12");
  REQUIRE(waitFor([&] { return merged.size() == 1; }));
  CHECK(document.outsideChange().conflicts.empty());
  CHECK(quantityOf(*document.orderInHand(), "YS") == 12);
  CHECK(quantityOf(*document.orderInHand(), "YM") == 31);
  CHECK(document.modified());
  REQUIRE(opened.settled());
  CHECK(document.save() == SaveResult::Saved);
  const Order saved = loadOrder(opened.demo.order(), shippedRules()).value;
  CHECK(quantityOf(saved, "YS") == 12);
  CHECK(quantityOf(saved, "YM") == 31);
  document.undoStack().undo();
  CHECK(quantityOf(*document.orderInHand(), "YS") == 2);
  document.undoStack().undo();
  CHECK(quantityOf(*document.orderInHand(), "YM") == 3);
  CHECK(document.modified());
}

TEST_CASE("Where both changed the same, ours stays until theirs is asked for",
          "[desk][document][undo]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  REQUIRE(changeQuantity(document, "YM", 31));
  QSignalSpy merged(&document, &Document::merged);
  DemoCopy::edit(opened.demo.order(), "\"YM\": 3", "\"YM\": 8");
  REQUIRE(waitFor([&] { return merged.size() == 1; }));
  REQUIRE(document.outsideChange().conflicts.size() == 1);
  CHECK(quantityOf(*document.orderInHand(), "YM") == 31);
  REQUIRE(changeQuantity(document, "YS", 5));
  document.takeTheirs();
  CHECK(quantityOf(*document.orderInHand(), "YM") == 8);
  CHECK(quantityOf(*document.orderInHand(), "YS") == 5);
  document.undoStack().undo();
  CHECK(quantityOf(*document.orderInHand(), "YM") == 31);
}

TEST_CASE("Saving over what somebody else has just saved is refused", "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  REQUIRE(changeQuantity(document, "YM", 31));
  REQUIRE(opened.settled());
  DemoCopy::edit(opened.demo.order(), "\"YS\": 2", "\"YS\": 12");
  const QByteArray theirs = DemoCopy::read(opened.demo.order());
  CHECK(document.save() == SaveResult::ChangedOutside);
  CHECK(DemoCopy::read(opened.demo.order()) == theirs);
  REQUIRE(waitFor([&] { return quantityOf(*document.orderInHand(), "YS") == 12; }));
  REQUIRE(opened.settled());
  CHECK(document.save() == SaveResult::Saved);
  CHECK(quantityOf(loadOrder(opened.demo.order(), shippedRules()).value, "YM") == 31);
}

TEST_CASE("A save changes what was edited and nothing else, and is the new clean state",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  QByteArray expected = DemoCopy::read(opened.demo.order());
  REQUIRE(changeQuantity(document, "YM", 31));
  CHECK(document.modified());
  REQUIRE(document.save() == SaveResult::Saved);
  CHECK_FALSE(document.modified());
  expected.replace(expected.indexOf("\"YM\": 3"), 7, "\"YM\": 31");
  CHECK((QJsonDocument::fromJson(DemoCopy::read(opened.demo.order())) ==
         QJsonDocument::fromJson(expected)));
  document.undoStack().undo();
  CHECK(document.modified());
  document.undoStack().redo();
  CHECK_FALSE(document.modified());
}

TEST_CASE("What is edited while the order is being written is not lost, and is not saved either",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  QSignalSpy saved(&document, &Document::saved);
  REQUIRE(changeQuantity(document, "YM", 31));
  document.startSaving();
  REQUIRE(changeQuantity(document, "YM", 32));
  CHECK(document.saving());
  CHECK(saved.isEmpty());
  REQUIRE(waitFor([&] { return saved.size() == 1; }));
  CHECK(saved[0][0].value<SaveResult>() == SaveResult::Saved);
  CHECK_FALSE(document.saving());
  CHECK(document.modified());
  CHECK(quantityOf(*document.orderInHand(), "YM") == 32);
  CHECK(quantityOf(loadOrder(opened.demo.order(), shippedRules()).value, "YM") == 31);
  // Undoing comes back to what the file says.
  document.undoStack().undo();
  CHECK_FALSE(document.modified());
  document.undoStack().redo();
  REQUIRE(document.save() == SaveResult::Saved);
  CHECK(quantityOf(loadOrder(opened.demo.order(), shippedRules()).value, "YM") == 32);
}

TEST_CASE("Saves that follow one another at once end in order, the last one's in the file",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  QSignalSpy saved(&document, &Document::saved);
  constexpr int kSaves = 6;
  for (int i = 1; i <= kSaves; ++i) {
    REQUIRE(changeQuantity(document, "YM", 40 + i));
    document.startSaving();
  }
  document.finishSaving();
  REQUIRE(saved.size() == kSaves);
  for (const auto& result : saved) {
    CHECK(result[0].value<SaveResult>() == SaveResult::Saved);
  }
  CHECK(quantityOf(loadOrder(opened.demo.order(), shippedRules()).value, "YM") == 40 + kSaves);
  CHECK_FALSE(document.modified());
}

TEST_CASE("Files read before a save are read again, so that the save is not taken back",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  REQUIRE(changeQuantity(document, "YM", 31));
  SECTION("saved while they are read") {
    document.reload();
    REQUIRE(document.save() == SaveResult::Saved);
  }
  SECTION("read while they are saved") {
    document.startSaving();
    document.reload();
  }
  REQUIRE(waitFor([&] { return !document.busy() && !document.saving(); }));
  CHECK(quantityOf(*document.orderInHand(), "YM") == 31);
  CHECK_FALSE(document.modified());
  CHECK(document.undoStack().count() == 1);
}

TEST_CASE("A garment's file that is added while the order is saved is referred to by the next save",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  const auto blank =
      loadBlank(opened.demo.folder() / "blanks" / "quayside-crew.blank.json", shippedRules());
  Blank other = blank.value;
  other.id = BlankId("another-crew");
  const std::filesystem::path file = opened.demo.folder() / "blanks" / "another.blank.json";
  const auto original = saveBlank(file, other, {}).original;
  REQUIRE(changeQuantity(document, "YM", 31));
  document.startSaving();
  document.referTo(original);
  const OrderEdits edits(*document.orderInHand(), shippedRules(), document.units());
  REQUIRE(applyEdit(document, edits.addLine(other)));
  document.finishSaving();
  CHECK(document.modified());
  REQUIRE(document.save() == SaveResult::Saved);
  CHECK(DemoCopy::read(opened.demo.order()).contains("another.blank.json"));
}

TEST_CASE("Changes of the shop can be undone after another order is opened",
          "[desk][document][undo][shop]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  const auto nameShop = [&](const char* name) {
    Shop shop = *document.shopInHand();
    shop.name = name;
    // As if typed in one field, letter by letter.
    REQUIRE(applyEdit(document, ShopEdit{QString::fromUtf8(name), QStringLiteral("name"), shop}));
  };
  const std::string before = document.shopInHand()->name;
  nameShop("Weir Stitchroom");
  REQUIRE(changeQuantity(document, "YM", 31));
  nameShop("Lock Stitchroom");
  nameShop("Quay Stitchroom");
  document.undoStack().undo();
  REQUIRE(document.shopInHand()->name == "Weir Stitchroom");
  nameShop("Lock Stitchroom");
  REQUIRE(opened.settled());
  SECTION("one from a file") {
    const std::filesystem::path other = opened.demo.folder() / "other.order.json";
    std::filesystem::copy_file(opened.demo.order(), other);
    document.openOrder(other);
    REQUIRE(opened.settled());
    REQUIRE(document.orderFile() == pathText(other));
  }
  SECTION("a new one") {
    Order order;
    order.id = "7";
    document.startOrder(order);
    REQUIRE(opened.settled());
  }
  const Order order = *document.orderInHand();
  CHECK(document.shopInHand()->name == "Lock Stitchroom");
  REQUIRE(document.undoStack().count() == 2);
  document.undoStack().undo();
  CHECK(document.shopInHand()->name == "Weir Stitchroom");
  document.undoStack().undo();
  CHECK(document.shopInHand()->name == before);
  CHECK_FALSE(document.shopModified());
  document.undoStack().redo();
  document.undoStack().redo();
  CHECK(document.shopInHand()->name == "Lock Stitchroom");
  CHECK(*document.orderInHand() == order);
  // With another shop its steps are gone.
  const std::filesystem::path another = opened.demo.folder() / "another.shop.json";
  std::filesystem::copy_file(opened.demo.shop(), another);
  document.openShop(another);
  REQUIRE(opened.settled());
  CHECK(document.undoStack().count() == 0);
}

TEST_CASE("A place where nothing can be written is said, and the order stays in hand",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  REQUIRE(changeQuantity(document, "YM", 31));
  CHECK(document.saveAs(opened.demo.folder() / "no such folder" / "a.order.json", {}) ==
        SaveResult::NotWritten);
  CHECK_FALSE(document.saveProblem().isEmpty());
  CHECK(document.modified());
  CHECK(quantityOf(*document.orderInHand(), "YM") == 31);
}

TEST_CASE("An order saved in another folder still leads to its garments and designs, undone or not",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.open();
  Document& document = opened.document;
  REQUIRE(changeQuantity(document, "YM", 31));
  const std::filesystem::path folder = opened.demo.folder() / "elsewhere";
  std::filesystem::create_directory(folder);
  const std::filesystem::path file = folder / "copy.order.json";
  REQUIRE(document.saveAs(file, {}) == SaveResult::Saved);
  REQUIRE(opened.settled());
  CHECK(quantityOf(loadOrder(file, shippedRules()).value, "YM") == 31);
  document.undoStack().undo();
  REQUIRE(document.save() == SaveResult::Saved);
  CHECK(quantityOf(loadOrder(file, shippedRules()).value, "YM") == 3);
  CHECK(document.orderFile() == pathText(file));
}

TEST_CASE("A new order is edited, saved, and planned without ever having had a file",
          "[desk][document][save]") {
  OpenDocument opened;
  opened.document.openShop(opened.demo.shop());
  REQUIRE(opened.settled());
  Order order;
  order.id = "7";
  opened.document.startOrder(order);
  CHECK(opened.document.modified());
  REQUIRE(opened.settled());
  const std::filesystem::path folder = opened.demo.folder();
  const auto blank = loadBlank(folder / "blanks" / "quayside-crew.blank.json", shippedRules());
  const auto design = loadDesign(folder / "designs" / "crest.design.json");
  opened.document.referTo(blank.original);
  opened.document.referTo(design.original);
  const auto edit = [&](const auto& make) {
    const OrderEdits edits(*opened.document.orderInHand(), shippedRules(), {});
    REQUIRE(applyEdit(opened.document, make(edits)));
  };
  edit([&](const OrderEdits& edits) { return edits.addLine(blank.value); });
  edit([&](const OrderEdits& edits) { return *edits.addPlace(0, design.value); });
  const SizeName size = blank.value.chart.sizes.front().name;
  edit([&](const OrderEdits& edits) { return edits.quantity(0, size, 4); });
  REQUIRE(opened.settled());
  REQUIRE(opened.document.planned()->plan() != nullptr);
  CHECK(opened.document.planned()->find(0, 0, size) != nullptr);
  const std::filesystem::path file = opened.demo.folder() / "new.order.json";
  REQUIRE(opened.document.saveAs(file, {}) == SaveResult::Saved);
  CHECK_FALSE(opened.document.modified());
  const Order saved = loadOrder(file, shippedRules()).value;
  CHECK(saved == *opened.document.orderInHand());
  CHECK(saved.garments() == 4);
}
