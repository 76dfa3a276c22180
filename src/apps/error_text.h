// SPDX-License-Identifier: MIT
// Errors as the command line words them.
#pragma once

#include <string>

#include "creaseline/base/error.h"

namespace creaseline {

// "error: FILE: PLACE: found X; expected Y", without the parts that are not known.
[[nodiscard]] std::string errorText(const InputError& error);

}  // namespace creaseline
