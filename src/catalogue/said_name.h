// SPDX-License-Identifier: MIT
// Names of enumerators in messages about files.
#pragma once

#include <string>

#include "base/enum_words.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/base/phrasebook.h"

namespace creaseline {

// In English the name as files have it, "body-width", so that it can be searched for in the file;
// in other languages, whose readers it may tell nothing, the phrase for its words.
template <class E>
[[nodiscard]] std::string saidName(E value) {
  return spokenBook() == nullptr ? std::string(nameOf(value)) : spacedWordOf(value);
}

}  // namespace creaseline
