// SPDX-License-Identifier: MIT
// What of a garment's weight hangs beside the frame and pulls on it.
#pragma once

#include "creaseline/base/areal_weight.h"
#include "creaseline/catalogue/garment_shape.h"
#include "creaseline/planning/reason.h"
#include "planning/workshop.h"

namespace creaseline {

struct HangingWeight {
  double all = 0.0;     // grams, of the whole garment
  double beside = 0.0;  // grams, of what lies outside the frame's window
};

// Outline area of the panels times the cloth's weight: front and back are drawn each, a sleeve, a
// leg, a bag or a hat is cloth twice over. Hems, ribs, linings and pockets are left out. Without
// a frame all of it hangs.
HangingWeight hangingWeight(const GarmentShape& garment, ArealWeight cloth,
                            const PreparedFrame* frame);

// True if so much is to be supported.
bool isToBeSupported(const HangingWeight& weight, const Workshop& workshop);
// Precondition: it is.
Reason supportReason(const HangingWeight& weight, ArealWeight cloth, const Workshop& workshop);

}  // namespace creaseline
