// SPDX-License-Identifier: MIT
// An order: which garments in which sizes get which design where.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "creaseline/catalogue/blank.h"
#include "creaseline/catalogue/design.h"
#include "creaseline/catalogue/identifiers.h"

namespace creaseline {

// One design at one location of a line's garments.
struct OrderPlacement {
  LocationId location;
  DesignId design;
  double scale = 1.0;  // of the design as drawn
  Length moveDown;     // on top of the rule, away from the landmark; negative is nearer
  Length moveRight;    // on top of the rule, along the panel's x axis; negative is the other way
  Angle turn;          // on top of the rule
  // Frames may lie turned on the garment by so much besides the ways that the shop lists; the
  // design reads as without.
  Angle frameTurn;
  bool split = false;  // may be sewn in several hoopings where no frame holds it whole
  std::string note;
  bool operator==(const OrderPlacement&) const = default;
};

struct SizeQuantity {
  SizeName size;
  int quantity = 0;  // > 0
  bool operator==(const SizeQuantity&) const = default;
};

struct OrderLine {
  std::string id;  // distinct within the order, "1"
  BlankId blank;
  std::string colour;  // name of one of the blank's colours, or empty
  std::vector<SizeQuantity> sizes;
  std::vector<OrderPlacement> placements;
  std::string note;
  bool supplied = false;  // the customer brings the garments
  bool operator==(const OrderLine&) const = default;
  [[nodiscard]] int garments() const;
  // How many are ordered of a size; null where the line does not order it.
  [[nodiscard]] const SizeQuantity* find(const SizeName& size) const;
};

struct Order {
  std::string id;  // "2026-118"
  std::string title;
  std::string customer;
  std::string due;  // ISO date or empty
  std::string note;
  std::vector<FrameId> frames;  // sewn in these alone; empty: in any that the shop has
  std::vector<Blank> blanks;
  std::vector<Design> designs;
  std::vector<OrderLine> lines;
  bool operator==(const Order&) const = default;
  [[nodiscard]] const Blank* blank(const BlankId& id) const;
  [[nodiscard]] const Design* design(const DesignId& id) const;
  [[nodiscard]] int garments() const;
};

}  // namespace creaseline
