// SPDX-License-Identifier: MIT
// All shipped rules as a page for people, each with its basis.
#pragma once

#include <string>

#include "creaseline/catalogue/rules.h"

namespace creaseline {

[[nodiscard]] std::string rulesMarkdown(const Rules& rules);

}  // namespace creaseline
