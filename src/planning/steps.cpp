// SPDX-License-Identifier: MIT
#include "planning/steps.h"

#include <algorithm>

#include "base/worded.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/wording.h"
#include "planning/hanging_weight.h"

namespace creaseline {
namespace {

std::string creaseStep(PanelName panel) {
  switch (panel) {
    case PanelName::Front:
    case PanelName::Back:
      return worded("Find the centre: lay the side seams together and press a crease");
    case PanelName::LeftSleeve:
    case PanelName::RightSleeve:
      return worded("Find the centre: lay the sleeve on its seam and press the fold opposite");
    case PanelName::Hood:
      return worded("Find the centre: lay the two hood sides together and press a crease");
    case PanelName::Flat:
      return worded("Find the centre: lay one side of the piece on the other and press a crease");
    case PanelName::LeftLeg:
    case PanelName::RightLeg:
      return worded(
          "Find the centre: lay side seam and inseam of the leg together and press a crease");
  }
  return {};
}

std::string markStep(const PlacementPlan& plan, const UnitChoice& units) {
  return worded("Mark the design's centre: {} {}, {}",
                formatLength(plan.placed.centreOffset, units), landmarkPhrase(plan.placed.from),
                lateralPhrase(plan, units));
}

std::string backingStep(const BackingChoice& backing, const UnitChoice& units) {
  const std::string size = sizePhrase(backing.cutWidth, backing.cutHeight, units);
  const std::string kind = backingPhrase(backing, units);
  return backing.layers == 1 ? worded("Cut one backing {}: {}", size, kind)
                             : worded("Cut backings {}: {}", size, kind);
}

// How one thread block is done: the machine's part, and the hands' part that follows it.
std::string liftStep(BackingKind backing) {
  switch (backing) {
    case BackingKind::CutAway:
      return worded("Lift out; trim the backing, trim threads");
    case BackingKind::TearAway:
      return worded("Lift out; tear away the backing, trim threads");
    case BackingKind::WashAway:
      return worded("Lift out; rinse out the backing, trim threads");
  }
  return {};
}

void addBlock(std::vector<Step>& steps, const ThreadBlock& block, const Design& design) {
  switch (block.kind) {
    case BlockKind::PlacementLine:
      steps.push_back(
          {worded("Piece {}: sew the placement line ({})", block.piece, block.thread), false});
      break;
    case BlockKind::TackDown:
      steps.push_back({worded("Piece {}: tack down ({})", block.piece, block.thread), false});
      break;
    case BlockKind::Cover:
      steps.push_back({worded("Piece {}: cover the edge ({})", block.piece, block.thread), false});
      break;
    case BlockKind::Sew:
      steps.push_back({worded("Sew {}", block.thread), false});
      break;
  }
  if (const std::string byHand = handStepAfter(block, design); !byHand.empty()) {
    steps.push_back({byHand, true});
  }
}

bool occasionHolds(CautionOccasion occasion, const PlacementPlan& plan, const Blank& blank,
                   const GarmentKind& kind, const Workshop& workshop) {
  const bool child = plan.band == SizeBand::Youth || plan.band == SizeBand::Infant;
  switch (occasion) {
    case CautionOccasion::Always:
    case CautionOccasion::Press:  // every centre is found with a pressed crease
      return true;
    case CautionOccasion::MagneticFrame: {
      const Frame* frame = plan.frame ? workshop.shop->frame(plan.frame->frame) : nullptr;
      return frame != nullptr && frame->kind == FrameKind::Magnetic;
    }
    case CautionOccasion::Applique:
      return !plan.design.pieces.empty();
    case CautionOccasion::Infant:
      return plan.band == SizeBand::Infant;
    case CautionOccasion::Youth:
      return child;
    case CautionOccasion::ChildHood:
      return child && kind.neck == NeckForm::Hood;
    case CautionOccasion::HeavyGarment:
      return isToBeSupported(
          hangingWeight(
              *plan.garment, blank.fabric.weight,
              plan.frame ? preparedFrame(workshop, plan.frame->frame, plan.frame->turn) : nullptr),
          workshop);
    case CautionOccasion::Topping:
      return plan.backing.topping;
  }
  return false;
}

// A step of a part that has one of this kind.
void addPartStep(std::vector<Step>& steps, const PlacementPlan& plan,
                 std::string (*step)(const DesignPart&), bool byHand) {
  std::string text = plan.part ? step(*plan.part) : std::string();
  if (!text.empty()) {
    steps.push_back({std::move(text), byHand});
  }
}

}  // namespace

std::vector<Step> stepsFor(const PlacementPlan& plan, const Location& location,
                           const GarmentKind& kind, const UnitChoice& units) {
  std::vector<Step> steps;
  for (const Preparation& preparation : kind.preparations) {
    if (std::find(preparation.panels.begin(), preparation.panels.end(), plan.panel) !=
        preparation.panels.end()) {
      steps.push_back({preparation.step, true});
    }
  }
  steps.push_back({creaseStep(location.panel), true});
  steps.push_back({markStep(plan, units), true});
  steps.push_back({backingStep(plan.backing, units), true});
  // What the finding warns of is done before the frame is closed; that all is clear is felt after.
  const std::vector<const LayerBehind*> layers = kind.layersBehind(plan.panel, plan.location);
  const auto addLayers = [&](bool watch) {
    for (const LayerBehind* layer : layers) {
      if (layer->watch == watch) {
        steps.push_back({layer->step, true});
      }
    }
  };
  addLayers(true);
  steps.push_back(
      {plan.backing.hold == HoldMethod::Hooped
           ? worded("Close the frame over backing and cloth, crease on the frame's centre marks")
           : worded("Close the frame over the cloth, crease on the frame's centre marks; slide "
                    "the backing under the frame"),
       true});
  addLayers(false);
  if (plan.backing.topping) {
    steps.push_back({worded("Lay topping film over the cloth"), true});
  }
  addPartStep(steps, plan, alignStep, true);
  steps.push_back(
      {worded("Trace the design's outline with the needle up: it must clear the frame"), true});
  for (const ThreadBlock& block : plan.design.blocks) {
    addBlock(steps, block, plan.design);
  }
  if (plan.design.blocks.empty()) {
    steps.push_back({worded("Sew {}", plan.design.name), false});
  }
  addPartStep(steps, plan, sewMarksStep, false);
  addPartStep(steps, plan, pickOutStep, true);
  steps.push_back({liftStep(plan.backing.kind), true});
  if (plan.backing.topping) {
    steps.push_back({worded("Pull off the topping; dissolve what is left"), true});
  }
  if (!plan.design.pieces.empty()) {
    steps.push_back(
        {worded("Press again from the back with a cloth between, to set the fusible web"), true});
  }
  return steps;
}

std::string handStepAfter(const ThreadBlock& block, const Design& design) {
  const auto piece = std::find_if(
      design.pieces.begin(), design.pieces.end(),
      [&block](const AppliquePiece& candidate) { return candidate.name == block.piece; });
  switch (block.kind) {
    case BlockKind::PlacementLine:
      return worded("Piece {}: lay {} over the line", block.piece,
                    piece == design.pieces.end() ? worded("the fabric") : piece->fabric);
    case BlockKind::TackDown:
      return worded("Piece {}: trim in the frame with curved scissors; the frame stays closed",
                    block.piece);
    case BlockKind::Cover:
    case BlockKind::Sew:
      return {};
  }
  return {};
}

std::vector<const Caution*> cautionsFor(const PlacementPlan& plan, const Blank& blank,
                                        const GarmentKind& kind, const Workshop& workshop) {
  std::vector<const Caution*> cautions;
  for (const Caution& caution : workshop.rules->cautions) {
    if (occasionHolds(caution.when, plan, blank, kind, workshop)) {
      cautions.push_back(&caution);
    }
  }
  return cautions;
}

}  // namespace creaseline
