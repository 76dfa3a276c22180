// SPDX-License-Identifier: MIT
// Copies, templates and search of orders.
#include "creaseline/catalogue/order_library.h"

#include <catch2/catch.hpp>

#include "catalogue/catalogue_data.h"
#include "catalogue/folded_text.h"
#include "catalogue/random_files.h"
#include "creaseline/base/file.h"
#include "creaseline/catalogue/save.h"

using namespace creaseline;
using namespace creaseline::testing;

namespace {

std::vector<std::string> idsFound(const std::filesystem::path& folder, const std::string& words) {
  std::vector<std::string> ids;
  for (const OrderHead& head : findOrders(folder, words).orders) {
    ids.push_back(head.id);
  }
  return ids;
}

using Ids = std::vector<std::string>;

}  // namespace

TEST_CASE("a copy has a new id and no due date, and all else", "[catalogue][library]") {
  Order order = RandomFiles(5).order();
  order.due = "2026-12-04";
  const Order copy = duplicateOrder(order, "next");
  CHECK(copy.id == "next");
  CHECK(copy.due.empty());
  order.id = "next";
  order.due.clear();
  CHECK(copy == order);
}

TEST_CASE("the next id counts the number at the end up", "[catalogue][library]") {
  CHECK(nextOrderId("2026-118", {}) == "2026-119");
  CHECK(nextOrderId("2026-118", {"2026-119", "2026-120"}) == "2026-121");
  CHECK(nextOrderId("A-099", {}) == "A-100");
  CHECK(nextOrderId("999", {}) == "1000");
  CHECK(nextOrderId("spring", {}) == "spring-2");
  CHECK(nextOrderId("spring", {"spring-2"}) == "spring-3");
}

TEST_CASE("a template has what recurs, and is a file like any order", "[catalogue][library]") {
  const Loaded<Order> order = loadOrder(goodFile("test.order.json"), shippedRules());
  const Order pattern = orderTemplate(order.value, "team order");
  CHECK(pattern.customer.empty());
  CHECK(pattern.due.empty());
  CHECK(pattern.note.empty());
  CHECK(pattern.garments() == 0);
  CHECK(pattern.blanks == order.value.blanks);
  CHECK(pattern.lines[0].placements == order.value.lines[0].placements);
  const TemporaryFolder folder;
  const auto file = folder.path() / "team.order.json";
  static_cast<void>(saveOrder(file, pattern, order.original));
  CHECK(loadOrderDraft(file, shippedRules()).value == pattern);
  CHECK(orderFromTemplate(pattern, "A-2").id == "A-2");
}

TEST_CASE("accents and letter case are set aside for Latin letters", "[catalogue][library]") {
  CHECK(foldedText("Größe ÑANDÚ Łódź Œuvre Straße") == "grosse nandu lodz oeuvre strasse");
  CHECK(foldedText("e\xCC\x81") == "e");
  CHECK(foldedText("日本 ÷ 3") == "日本 ÷ 3");
  CHECK(foldedText("\xC3") == "\xC3");
  CHECK(foldedWords("Body-Width (cm), Größe/2") ==
        std::vector<std::string>{"body", "width", "cm", "grosse", "2"});
}

TEST_CASE("orders are found by customer, title, id and garment", "[catalogue][library]") {
  const TemporaryFolder folder;
  const auto write = [&](const std::string& name, const std::string& id,
                         const std::string& customer, const std::string& title,
                         const std::string& kind) {
    Order order = sample::order(sample::blank(kind),
                                sample::design("d", Length::fromMm(50.0), Length::fromMm(50.0)),
                                "left-chest", {"M", "XL"});
    order.id = id;
    order.customer = customer;
    order.title = title;
    static_cast<void>(folder.write(name, orderText(order)));
  };
  write("a.order.json", "2026-1", "Peña Náutica", "Regatta", "polo");
  write("deep/er/b.order.json", "2026-2", "Weir Club", "Spring polos", "t-shirt");
  write(".hidden/c.order.json", "2026-3", "Weir Club", "hidden", "polo");
  static_cast<void>(folder.write("broken.order.json", "{\"format\": "));
  static_cast<void>(folder.write("other.json", "{}"));

  CHECK(idsFound(folder.path(), "") == Ids{"2026-1", "2026-2"});
  CHECK(idsFound(folder.path(), "PENA") == Ids{"2026-1"});
  CHECK(idsFound(folder.path(), "nautica rega") == Ids{"2026-1"});
  CHECK(idsFound(folder.path(), "polo") == Ids{"2026-1", "2026-2"});
  CHECK(idsFound(folder.path(), "t-shirt") == Ids{"2026-2"});
  CHECK(idsFound(folder.path(), "2026-2") == Ids{"2026-2"});
  CHECK(idsFound(folder.path(), "weir regatta").empty());

  const FoundOrders found = findOrders(folder.path(), "weir");
  REQUIRE(found.orders.size() == 1);
  CHECK(found.orders[0].garments == std::vector<std::string>{"sample t-shirt"});
  CHECK(found.orders[0].kinds == std::vector<std::string>{"t-shirt"});
  CHECK(found.orders[0].quantity == 2);
  REQUIRE(found.notes.size() == 1);
  CHECK_THAT(found.notes[0].file, Catch::EndsWith("broken.order.json"));
}

TEST_CASE("the demo's garments are found through the files of its blanks", "[catalogue][library]") {
  const FoundOrders found =
      findOrders(std::filesystem::path(SOURCE_DIR) / "demo", "harbour full-zip");
  REQUIRE(found.orders.size() == 1);
  CHECK(found.orders[0].garments.size() == 6);
  CHECK(found.notes.empty());
}

TEST_CASE("a folder that is not there gives a note", "[catalogue][library]") {
  const FoundOrders found = findOrders("/nowhere/at/all", "x");
  CHECK(found.orders.empty());
  CHECK(found.notes.size() == 1);
}
