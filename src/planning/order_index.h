// SPDX-License-Identifier: MIT
// What the lines of an order refer to; orders of thousands of lines must not search from the start.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <utility>

#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/catalogue/order.h"

namespace creaseline {

// Keeps pointers into the order.
struct OrderIndex {
  std::map<BlankId, const Blank*> blanks;
  std::map<DesignId, const Design*> designs;
  std::map<std::pair<BlankId, SizeName>, std::shared_ptr<const GarmentShape>> garments;
};

// Blanks and designs; garments are built where they are needed.
OrderIndex indexed(const Order& order);

// Throw InputError with the line where the order has no such entry.
const Blank& blankOf(const OrderLine& line, const OrderIndex& index);
const Design& designOf(const OrderLine& line, const DesignId& id, const OrderIndex& index);

[[noreturn]] void refuseLine(const OrderLine& line, const std::string& found,
                             const std::string& expected);

}  // namespace creaseline
