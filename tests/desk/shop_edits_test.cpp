// SPDX-License-Identifier: MIT
#include "desk/shop_edits.h"

#include <random>

#include "creaseline/catalogue/save.h"
#include "creaseline/catalogue/shop_check.h"
#include "desk/desk_fixture.h"

namespace creaseline::desk {
namespace {

constexpr ShopList kLists[] = {ShopList::Machines,         ShopList::Frames,
                               ShopList::Backings,         ShopList::Needles,
                               ShopList::MeasuredHoopings, ShopList::HouseRules};

}  // namespace

TEST_CASE("Whatever is added, duplicated or removed, the shop can be saved and read",
          "[desk][shop]") {
  std::mt19937 random(7);
  Shop shop = *plannedDemo()->shop();
  REQUIRE_FALSE(shopProblem(shop, shippedRules(), {}));
  for (int step = 0; step < 300; ++step) {
    const ShopList list = kLists[random() % std::size(kLists)];
    const ShopEdits edits(shop, shippedRules(), {});
    const auto count = static_cast<std::size_t>(edits.names(list).size());
    ShopEdit edit;
    if (count == 0 || random() % 3 == 0) {
      edit = edits.add(list);
    } else if (random() % 2 == 0 || !edits.mayRemove(list)) {
      edit = edits.duplicate(list, random() % count);
    } else {
      edit = edits.remove(list, random() % count);
    }
    CAPTURE(step, edit.name);
    // Each needle and each hooping stands for itself; two alike are no new entry, but may be
    // listed.
    REQUIRE(shopProblem(edit.shop, shippedRules(), {}).value_or("") == "");
    REQUIRE_FALSE(edit.name.isEmpty());
    shop = std::move(edit.shop);
  }
  const DemoCopy demo;
  const Saved<Shop> saved = saveShop(demo.folder() / "made.shop.json", shop, {});
  CHECK(loadShop(demo.folder() / "made.shop.json", shippedRules()).value == saved.value);
}

TEST_CASE("A shop keeps one machine and one frame", "[desk][shop]") {
  const Shop first = ShopEdits::firstShop({});
  REQUIRE_FALSE(shopProblem(first, shippedRules(), {}));
  const ShopEdits edits(first, shippedRules(), {});
  CHECK_FALSE(edits.mayRemove(ShopList::Machines));
  CHECK_FALSE(edits.mayRemove(ShopList::Frames));
  CHECK_FALSE(edits.mayRemove(ShopList::Backings));
  CHECK(
      ShopEdits(edits.add(ShopList::Frames).shop, shippedRules(), {}).mayRemove(ShopList::Frames));
}

TEST_CASE("A copy stands behind its entry under an id of its own", "[desk][shop]") {
  const Shop& shop = *plannedDemo()->shop();
  const ShopEdit edit = ShopEdits(shop, shippedRules(), {}).duplicate(ShopList::Frames, 1);
  REQUIRE(edit.shop.frames.size() == shop.frames.size() + 1);
  const Frame& copy = edit.shop.frames[2];
  CHECK(copy.id != shop.frames[1].id);
  CHECK(copy.window == shop.frames[1].window);
  CHECK(toQString(copy.name).startsWith(toQString(shop.frames[1].name)));
  CHECK(edit.shop.frames[3] == shop.frames[2]);
}

TEST_CASE("What is new begins at round values of the user's own units", "[desk][shop]") {
  for (const auto unit : {LengthUnit::Inch, LengthUnit::Centimetre, LengthUnit::Millimetre}) {
    const UnitChoice units{unit, RulerMark::Eighth, {}};
    const Shop first = ShopEdits::firstShop(units);
    CHECK(first.units == units);
    const ShopEdits edits(first, shippedRules(), units);
    const Frame frame = edits.add(ShopList::Frames).shop.frames.back();
    const BackingStock backing = edits.add(ShopList::Backings).shop.backings.back();
    const Window& field = first.machines.front().sewingField;
    for (const Length length :
         {frame.window.width(), frame.window.height(), frame.body.width(), field.width(),
          first.frames.front().window.width(), backing.width, backing.length}) {
      const std::string text = exactText(length, unit);
      CAPTURE(text);
      CHECK(*parseLength(text) == length);
      // Short: no decimals, and of inches no finer fraction than a quarter.
      CHECK(text.find('.') == std::string::npos);
      if (unit == LengthUnit::Inch) {
        CHECK(length.nanometres() % (25'400'000 / 4) == 0);
        CHECK(text.find("in") != std::string::npos);
      }
    }
    CHECK(frame.body.width() > frame.window.width());
  }
}

}  // namespace creaseline::desk
