// SPDX-License-Identifier: MIT
// What a person can do to an order: each edit makes the changed order and the name of the step.
// Pure functions of the order; edit_commands.h puts them on the undo stack.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <functional>
#include <optional>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class OrderEdit {
 public:
  QString name;     // of the step, "Quantity of M: 6"
  QString merging;  // steps of the same key that follow each other (nudges) become one; or empty
  Order order;      // changed
};

class OrderEdits {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::OrderEdits)

 public:
  OrderEdits(const Order& order, const Rules& rules, const UnitChoice& units)
      : order_(order), rules_(rules), units_(units) {}

  // Head of the order.
  [[nodiscard]] OrderEdit number(const std::string& id) const;
  [[nodiscard]] OrderEdit title(const std::string& title) const;
  [[nodiscard]] OrderEdit customer(const std::string& customer) const;
  [[nodiscard]] OrderEdit due(const std::string& date) const;
  // None: in any. `shop` may be null and only gives the names.
  [[nodiscard]] OrderEdit frames(const std::vector<FrameId>& frames, const Shop* shop) const;
  [[nodiscard]] OrderEdit note(const std::string& note) const;

  // Garments. 0 takes the size out of the line. A blank that is not in the order yet is put there.
  [[nodiscard]] OrderEdit quantity(std::size_t line, const SizeName& size, int quantity) const;
  [[nodiscard]] OrderEdit colour(std::size_t line, const std::string& colour) const;
  // Whether the customer brings the garments.
  [[nodiscard]] OrderEdit supplied(std::size_t line, bool supplied) const;
  [[nodiscard]] OrderEdit lineNote(std::size_t line, const std::string& note) const;
  [[nodiscard]] OrderEdit lineId(std::size_t line, const std::string& id) const;
  // Sizes and places that the other garment does not have are left out, and the name says so.
  [[nodiscard]] OrderEdit blank(std::size_t line, const Blank& blank) const;
  [[nodiscard]] OrderEdit addLine(const Blank& blank) const;

  // Places.
  [[nodiscard]] OrderEdit location(std::size_t line, std::size_t placement,
                                   const LocationId& location) const;
  // A design that is not in the order yet is put there.
  [[nodiscard]] OrderEdit design(std::size_t line, std::size_t placement,
                                 const Design& design) const;
  [[nodiscard]] OrderEdit scale(std::size_t line, std::size_t placement, double scale) const;
  [[nodiscard]] OrderEdit moveDown(std::size_t line, std::size_t placement, Length moveDown) const;
  [[nodiscard]] OrderEdit moveRight(std::size_t line, std::size_t placement,
                                    Length moveRight) const;
  // Moved and turned at once, as on the table; `nudged`: by keys, of which many make one step.
  [[nodiscard]] OrderEdit laid(std::size_t line, std::size_t placement, const OrderPlacement& asked,
                               bool nudged) const;
  // Neither moved nor turned.
  [[nodiscard]] OrderEdit byRule(std::size_t line, std::size_t placement) const;
  [[nodiscard]] OrderEdit frameTurn(std::size_t line, std::size_t placement, Angle turn) const;
  [[nodiscard]] OrderEdit turn(std::size_t line, std::size_t placement, Angle turn) const;
  // Whether several hoopings may sew it where no frame holds it whole.
  [[nodiscard]] OrderEdit split(std::size_t line, std::size_t placement, bool split) const;
  [[nodiscard]] OrderEdit placeNote(std::size_t line, std::size_t placement,
                                    const std::string& note) const;
  // At the first location that the garment has and the line does not use yet; nothing without one.
  [[nodiscard]] std::optional<OrderEdit> addPlace(std::size_t line, const Design& design) const;

  // Of a line or of a place.
  [[nodiscard]] OrderEdit remove(const Spot& spot) const;
  [[nodiscard]] OrderEdit duplicate(const Spot& spot) const;
  [[nodiscard]] bool mayShift(const Spot& spot, int by) const;
  [[nodiscard]] OrderEdit shift(const Spot& spot, int by) const;  // only if it may

  // Locations that the line's garment has.
  [[nodiscard]] std::vector<const Location*> locations(std::size_t line) const;
  // "Line 2, Left chest".
  [[nodiscard]] QString nameOf(const Spot& spot) const;

 private:
  using LineChange = std::function<void(OrderLine&)>;
  using PlaceChange = std::function<void(OrderPlacement&)>;
  [[nodiscard]] OrderEdit head(const QString& name, std::string Order::*field,
                               const std::string& value) const;
  [[nodiscard]] OrderEdit onLine(std::size_t line, const QString& name,
                                 const LineChange& change) const;
  [[nodiscard]] OrderEdit onPlace(std::size_t line, std::size_t placement, const QString& name,
                                  const PlaceChange& change) const;
  [[nodiscard]] std::string freshLineId() const;
  // "1/4 in down, 1/8 in towards the wearer's left"
  [[nodiscard]] QString moveWords(const OrderPlacement& asked) const;
  [[nodiscard]] QString towards(const LocationId& location, bool right) const;

  const Order& order_;
  const Rules& rules_;
  UnitChoice units_;
};

}  // namespace creaseline::desk
