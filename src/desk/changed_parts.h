// SPDX-License-Identifier: MIT
// What differs between an order or a shop and what its file says now, in a few words.
#pragma once

#include <QStringList>

#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline::desk {

// "head of the order", "line 2", "garment Harbour hoodie", "design Crest". Empty where all is the
// same.
[[nodiscard]] QStringList changedParts(const Order& before, const Order& after);
// "frames", "rates".
[[nodiscard]] QStringList changedParts(const Shop& before, const Shop& after);

// The first few of them in one text: "line 2, line 3 and 4 more".
[[nodiscard]] QString fewOf(const QStringList& parts);

}  // namespace creaseline::desk
