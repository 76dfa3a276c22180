// SPDX-License-Identifier: MIT
// All kinds of sheets in no order; its source is written by the build from the files in kinds/.
#pragma once

#include <vector>

#include "creaseline/sheets/sheet_kind.h"

namespace creaseline {

[[nodiscard]] std::vector<SheetKind> listSheetKinds();

}  // namespace creaseline
