// SPDX-License-Identifier: MIT
// Names of enumerators in messages about files.
#pragma once

#include <algorithm>
#include <string>

#include "creaseline/base/named_enum.h"
#include "creaseline/base/phrasebook.h"

namespace creaseline {

// In English the name as files have it, "body-width", so that it can be searched for in the file;
// in other languages, whose readers it may tell nothing, the phrase for its words.
template <class E>
[[nodiscard]] std::string saidName(E value) {
  std::string name(nameOf(value));
  if (spokenBook() == nullptr) {
    return name;
  }
  std::replace(name.begin(), name.end(), '-', ' ');
  return inLanguage(name);
}

}  // namespace creaseline
