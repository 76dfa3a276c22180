// SPDX-License-Identifier: MIT
// Reads the number at the start of a text as people write it on a work order: decimals with a
// point or a comma, ruler fractions, mixed numbers.
#pragma once

#include <string_view>

#include "creaseline/base/result.h"

namespace creaseline {

struct LeadingNumber {
  double value = 0.0;     // finite
  std::string_view rest;  // what follows, without spaces around it
};

// Reads "3", "-1.5", "8,9", "1/4", "3 1/2", "3-1/2", "3½", "¾". A sign stands for the whole number.
// Refuses zero denominators, a fraction of one or more after a whole number, and a comma that may
// be a thousands separator ("1,234").
Result<LeadingNumber> readLeadingNumber(std::string_view text);

// Without leading and trailing spaces, the no-break and thin ones included.
std::string_view withoutOuterSpaces(std::string_view text);

}  // namespace creaseline
