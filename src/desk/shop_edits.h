// SPDX-License-Identifier: MIT
// What a person can do to the shop: each edit makes the changed shop and the name of the step, as
// order_edits.h does for the order.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>
#include <cstddef>

#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline::desk {

class ShopEdit {
 public:
  QString name;     // of the step, "Frame 5 × 7 in: clearance 8 mm"
  QString merging;  // steps of the same key that follow each other become one; or empty
  Shop shop;        // changed
};

// The lists of a shop.
enum class ShopList { Machines, Frames, Backings, Needles, MeasuredHoopings, HouseRules };

// The shipped rule of a location for grown-ups, else its first, else the first of all.
[[nodiscard]] const PlacementRule& shippedRuleFor(const LocationId& location, const Rules& rules);
// `rule` with the location and all figures of the other; to whom it applies and where it is from
// stay.
[[nodiscard]] PlacementRule placedLike(const PlacementRule& rule, PlacementRule like);

class ShopEdits {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::ShopEdits)

 public:
  ShopEdits(const Shop& shop, const Rules& rules, const UnitChoice& units)
      : shop_(shop), rules_(rules), units_(units) {}

  // Of the entries of a list, as one tells them apart.
  [[nodiscard]] QStringList names(ShopList list) const;
  // "Frame 5 × 7 in"
  [[nodiscard]] QString nameOf(ShopList list, std::size_t index) const;

  // A new entry stands at the end of the list, and is such that the shop can be saved.
  [[nodiscard]] ShopEdit add(ShopList list) const;
  // The copy stands behind the entry.
  [[nodiscard]] ShopEdit duplicate(ShopList list, std::size_t index) const;
  // A shop keeps one machine and one frame.
  [[nodiscard]] bool mayRemove(ShopList list) const;
  [[nodiscard]] ShopEdit remove(ShopList list, std::size_t index) const;

  // An empty shop to start from: one machine, one frame.
  [[nodiscard]] static Shop firstShop(const UnitChoice& units);

 private:
  const Shop& shop_;
  const Rules& rules_;
  UnitChoice units_;
};

}  // namespace creaseline::desk
