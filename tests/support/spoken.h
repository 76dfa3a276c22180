// SPDX-License-Identifier: MIT
// A language for the time of a test.
#pragma once

#include "creaseline/base/phrasebook.h"

namespace creaseline {

class Speaking {
 public:
  explicit Speaking(const Phrasebook& book) : before_(spokenBook()) { speakBy(&book); }
  ~Speaking() { speakBy(before_); }
  Speaking(const Speaking&) = delete;
  Speaking& operator=(const Speaking&) = delete;

 private:
  const Phrasebook* before_;
};

}  // namespace creaseline
