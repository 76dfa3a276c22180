// SPDX-License-Identifier: MIT
// What enumerators of garments and designs are called on screen.
#pragma once

#include <QString>
#include <vector>

#include "creaseline/catalogue/design.h"
#include "creaseline/catalogue/fabric.h"
#include "creaseline/catalogue/garment_kind.h"

namespace creaseline::desk {

// Inside a sentence: "adult up to XL".
[[nodiscard]] QString uncapitalised(const QString& word);
// "Pit to pit" of a shirt is the full width of a towel: a point of measure is called by the form
// of the kind.
[[nodiscard]] QString measureWord(Measure measure, KindForm form);
// Garment kinds in the order in which one looks for them: by their names in the language spoken.
[[nodiscard]] std::vector<const GarmentKind*> kindsByName(const std::vector<GarmentKind>& kinds);
[[nodiscard]] QString bandWord(SizeBand band);
[[nodiscard]] QString constructionWord(Construction construction);
[[nodiscard]] QString pileWord(Pile pile);
[[nodiscard]] QString stretchWord(Stretch stretch);
[[nodiscard]] QString blockKindWord(BlockKind kind);
[[nodiscard]] QString monogramStyleWord(MonogramStyle style);
[[nodiscard]] QString outlineSourceWord(OutlineSource source);

}  // namespace creaseline::desk
