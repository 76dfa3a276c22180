// SPDX-License-Identifier: MIT
// Finding and counting in an order.
#include "creaseline/catalogue/order.h"

#include <algorithm>
#include <numeric>

namespace creaseline {

int OrderLine::garments() const {
  return std::accumulate(sizes.begin(), sizes.end(), 0,
                         [](int sum, const SizeQuantity& size) { return sum + size.quantity; });
}

const SizeQuantity* OrderLine::find(const SizeName& size) const {
  const auto found = std::find_if(sizes.begin(), sizes.end(),
                                  [&](const SizeQuantity& each) { return each.size == size; });
  return found == sizes.end() ? nullptr : &*found;
}

const Blank* Order::blank(const BlankId& wanted) const {
  const auto found = std::find_if(blanks.begin(), blanks.end(),
                                  [&](const Blank& each) { return each.id == wanted; });
  return found == blanks.end() ? nullptr : &*found;
}

const Design* Order::design(const DesignId& wanted) const {
  const auto found = std::find_if(designs.begin(), designs.end(),
                                  [&](const Design& each) { return each.id == wanted; });
  return found == designs.end() ? nullptr : &*found;
}

int Order::garments() const {
  return std::accumulate(lines.begin(), lines.end(), 0,
                         [](int sum, const OrderLine& line) { return sum + line.garments(); });
}

}  // namespace creaseline
