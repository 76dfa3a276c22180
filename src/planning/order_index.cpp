// SPDX-License-Identifier: MIT
#include "planning/order_index.h"

#include "base/worded.h"
#include "creaseline/base/error.h"

namespace creaseline {

void refuseLine(const OrderLine& line, const std::string& found, const std::string& expected) {
  throw InputError({"order", worded("line {}", line.id), found, expected});
}

OrderIndex indexed(const Order& order) {
  OrderIndex index;
  for (const Blank& blank : order.blanks) {
    index.blanks.emplace(blank.id, &blank);
  }
  for (const Design& design : order.designs) {
    index.designs.emplace(design.id, &design);
  }
  return index;
}

const Blank& blankOf(const OrderLine& line, const OrderIndex& index) {
  const auto found = index.blanks.find(line.blank);
  if (found == index.blanks.end()) {
    refuseLine(line, worded("blank \"{}\"", line.blank.text()), worded("a blank of the order"));
  }
  return *found->second;
}

const Design& designOf(const OrderLine& line, const DesignId& id, const OrderIndex& index) {
  const auto found = index.designs.find(id);
  if (found == index.designs.end()) {
    refuseLine(line, worded("design \"{}\"", id.text()), worded("a design of the order"));
  }
  return *found->second;
}

}  // namespace creaseline
