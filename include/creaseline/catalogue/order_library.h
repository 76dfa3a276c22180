// SPDX-License-Identifier: MIT
// Orders as a shop keeps them: copies, templates, and finding one again.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "creaseline/catalogue/load.h"
#include "creaseline/catalogue/order.h"

namespace creaseline {

// The same order under a new id, with no due date. Save it with the first order's `original`: its
// files of blanks and designs are referred to again, and its unknown keys go along.
[[nodiscard]] Order duplicateOrder(const Order& order, const std::string& newId);
// An id that is not among `taken`: the number at the end of `id` is counted up ("2026-118" gives
// "2026-119"), or "-2" is put behind it.
[[nodiscard]] std::string nextOrderId(const std::string& id, const std::vector<std::string>& taken);

// What recurs of an order: garments, colours, placements, designs and notes of lines and
// placements, but no id, customer, due date, note of the order, and no quantities. Its file is an
// order that loadOrderDraft() reads once it has an id.
[[nodiscard]] Order orderTemplate(const Order& order, const std::string& templateId);
// A new order from a template; its sizes are to be filled in.
[[nodiscard]] Order orderFromTemplate(const Order& pattern, const std::string& newId);

// What a list of orders shows.
struct OrderHead {
  std::filesystem::path file;
  std::string id, title, customer, due;
  std::vector<std::string> garments;  // names of the blanks, where they can be read
  std::vector<std::string> kinds;     // of the blanks, distinct
  int quantity = 0;                   // of garments
  bool operator==(const OrderHead&) const = default;
};
struct FoundOrders {
  std::vector<OrderHead> orders;  // by path
  std::vector<LoadNote> notes;    // files that could not be read, each with the reason
};

// The orders (*.order.json) of a folder and the folders below it that have every one of `words`
// in id, title, customer, or the name or kind of a blank. Parts of words match; letter case and
// accents of Latin letters are set aside. No words: all orders. Only what the list shows is read:
// no charts, no outlines, and no check of what an order asks for. Links to folders are not followed
// and folders that start with a dot are left out. A folder that cannot be read gives a note.
[[nodiscard]] FoundOrders findOrders(const std::filesystem::path& folder, const std::string& words);

// The head of one order, as findOrders() reads it; nothing where it cannot be read.
[[nodiscard]] std::optional<OrderHead> readOrderHead(const std::filesystem::path& file);

}  // namespace creaseline
