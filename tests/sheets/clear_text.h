// SPDX-License-Identifier: MIT
// Whether the words of a PDF can all be read: off the paper's edge and off one another.
#pragma once

#include <QString>

namespace creaseline::probe {

// Checks each page, of which each must have more than `least` words.
void requireClearText(const QString& pdf, std::size_t least = 20);

}  // namespace creaseline::probe
