// SPDX-License-Identifier: MIT
#include "planning/hanging_weight.h"

#include <algorithm>

#include "base/worded.h"
#include "creaseline/base/units.h"
#include "creaseline/shape/outline.h"

namespace creaseline {
namespace {

constexpr double kSquareMmPerSquareMetre = 1.0e6;

bool drawnOnceSewnTwice(const PanelShape& panel) {
  switch (panel.name) {
    case PanelName::Front:
    case PanelName::Back:
    case PanelName::Hood:  // spread
      return false;
    case PanelName::LeftSleeve:
    case PanelName::RightSleeve:
    case PanelName::LeftLeg:
    case PanelName::RightLeg:
      return true;
    case PanelName::Flat:
      return !panel.openings.empty();  // a bag, a hat
  }
  return false;
}

}  // namespace

HangingWeight hangingWeight(const GarmentShape& garment, ArealWeight cloth,
                            const PreparedFrame* frame) {
  double area = 0.0;
  for (const auto& [name, panel] : garment.panels) {
    area += ringArea(panel.outline) * (drawnOnceSewnTwice(panel) ? 2.0 : 1.0);
  }
  const double held = frame == nullptr ? 0.0 : std::min(area, ringArea(frame->window));
  const double grams = cloth.gramsPerSquareMetre() / kSquareMmPerSquareMetre;
  return {area * grams, (area - held) * grams};
}

bool isToBeSupported(const HangingWeight& weight, const Workshop& workshop) {
  return weight.beside >= workshop.figures.heavyGrams;
}

Reason supportReason(const HangingWeight& weight, ArealWeight cloth, const Workshop& workshop) {
  const DefaultValue& threshold = workshop.rules->defaults.heavyGarment;
  return {worded("{:.0f} g of the garment's {:.0f} g of cloth ({}) hang beside the frame; from {} "
                 "on they are to be supported",
                 weight.beside, weight.all, formatArealWeight(cloth, workshop.shop->units),
                 threshold.text),
          {},
          threshold.basis,
          false,
          {},
          worded("lighter cloth or a smaller size")};
}

}  // namespace creaseline
