// SPDX-License-Identifier: MIT
// Copies and templates of orders.
#include <algorithm>

#include "creaseline/catalogue/order_library.h"

namespace creaseline {

namespace {

// "2026-118" -> "2026-119", "099" -> "100", "spring" -> "spring-2".
std::string countedUp(const std::string& id) {
  std::size_t at = id.find_last_not_of("0123456789") + 1;  // npos + 1 is 0
  if (at == id.size()) {
    return id + "-2";
  }
  std::string digits = id.substr(at);
  std::size_t i = digits.size();
  while (i > 0 && digits[i - 1] == '9') {
    digits[--i] = '0';
  }
  if (i == 0) {
    digits.insert(digits.begin(), '1');
  } else {
    ++digits[i - 1];
  }
  return id.substr(0, at) + digits;
}

}  // namespace

Order duplicateOrder(const Order& order, const std::string& newId) {
  Order copy = order;
  copy.id = newId;
  copy.due.clear();
  return copy;
}

std::string nextOrderId(const std::string& id, const std::vector<std::string>& taken) {
  std::string next = countedUp(id);
  while (std::find(taken.begin(), taken.end(), next) != taken.end()) {
    next = countedUp(next);
  }
  return next;
}

Order orderTemplate(const Order& order, const std::string& templateId) {
  Order pattern = duplicateOrder(order, templateId);
  pattern.customer.clear();
  pattern.note.clear();
  for (OrderLine& line : pattern.lines) {
    line.sizes.clear();
  }
  return pattern;
}

Order orderFromTemplate(const Order& pattern, const std::string& newId) {
  return duplicateOrder(pattern, newId);
}

}  // namespace creaseline
