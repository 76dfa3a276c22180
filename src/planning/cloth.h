// SPDX-License-Identifier: MIT
// The cloth under the design: is it there, and is nothing in the way.
#pragma once

#include <vector>

#include "creaseline/planning/plan.h"

namespace creaseline {

// "side seam (wearer's left)": a panel edge with its side, as a wearer would say it.
std::string sideLabel(const PanelShape& panel, const PanelSide& side);

// True if that edge of the panel is drawn from an assumed measure.
bool edgeAssumed(EdgeName edge, const PanelShape& panel, const GarmentShape& garment);

// Room from the sewn outline to each edge and keep-out of the panel, nearest first. What is
// further away than `horizon` may be given as that far, or left out.
std::vector<ClothCheck> checkCloth(const GarmentShape& garment, const PanelShape& panel,
                                   const Outline& onPanel, Length seamClearance, Length horizon);

// By how much the design is wider than the panel at its height; zero or less if it is not.
Length widerThanPanel(const PanelShape& panel, const Box& design);

}  // namespace creaseline
