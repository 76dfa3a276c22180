// SPDX-License-Identifier: MIT
// Identifier types of catalogue entries.
#pragma once

#include "creaseline/base/identifier.h"

namespace creaseline {

using BlankId = Identifier<struct BlankTag>;
using DesignId = Identifier<struct DesignTag>;
using FrameId = Identifier<struct FrameTag>;
using KindId = Identifier<struct KindTag>;
using LocationId = Identifier<struct LocationTag>;
using MachineId = Identifier<struct MachineTag>;
using RuleId = Identifier<struct RuleTag>;
using SizeName = Identifier<struct SizeTag>;
using StockId = Identifier<struct StockTag>;

}  // namespace creaseline
