// SPDX-License-Identifier: MIT
// Pockets of a front: what they cover, what frame and needle must keep off, and their lines.
//
// - kangaroo: one bag across the centre line, open at its slanted sides; or two halves beside a
// zip.
// - chest: a patch on the wearer's left with a hemmed opening on top and stitching along its edge.
//   Within it one may sew while the frame's inner ring lies in the pocket, so that it stays open.
//   Such a ring cannot pass the stitching at the sides and at the bottom.
// - side: two bags behind the front, from the side seams inwards; their openings slant.
#include <algorithm>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

// Stitching along the edge of a patch pocket and the hem at its opening, from memory.
constexpr double kPatchEdge = 4.0;
constexpr double kPatchHem = 19.0;
// Half the width of a welt with its zip or binding, from memory.
constexpr double kHalfWelt = 12.0;

double frontHem(const Measures& measures) {
  return bodyPoints(PanelName::Front, measures).hem.y;
}

std::vector<Ring> kangarooAreas(const GarmentKind& kind, const Measures& measures) {
  // The hand opening slants over the upper part; below it the edge is upright, from memory.
  constexpr double kUprightShare = 0.3;
  const double bottom = frontHem(measures) - measures.mm(Measure::PocketAboveHem);
  const double height = measures.mm(Measure::PocketHeight);
  const double top = bottom - height;
  const double outer = measures.mm(Measure::PocketWidth) / 2.0;
  const double upper = measures.mm(Measure::PocketTopWidth) / 2.0;
  const bool split = kind.pocket == PocketForm::SplitKangaroo;
  const double inner =
      split && kind.opening == FrontOpening::FullZip ? measures.mm(Measure::ZipWidth) / 2.0 : 0.0;
  Polyline rightHalf{{inner, top}, {upper, top}};
  if (upper < outer) {
    rightHalf.push_back({outer, bottom - kUprightShare * height});
  }
  rightHalf.push_back({outer, bottom});
  if (split) {
    rightHalf.push_back({inner, bottom});
    return {rightHalf, mirroredBack(rightHalf)};
  }
  Ring whole(rightHalf.begin() + 1, rightHalf.end());
  append(whole, mirroredBack(whole));
  return {whole};
}

// On the wearer's left, which is +x on the front.
Ring chestPatch(const Measures& measures) {
  const double middle = measures.mm(Measure::PocketFromCentre);
  const double half = measures.mm(Measure::PocketWidth) / 2.0;
  const double top = measures.mm(Measure::PocketBelowHps) - measures.mm(Measure::FrontNeckDrop);
  return box(middle - half, top, middle + half, top + measures.mm(Measure::PocketHeight));
}

Ring sideBag(const Measures& measures) {
  const double bottom = frontHem(measures) - measures.mm(Measure::PocketAboveHem);
  const double side = measures.mm(Measure::BodyWidth) / 2.0;
  return box(side - measures.mm(Measure::PocketWidth), bottom - measures.mm(Measure::PocketHeight),
             side, bottom);
}

// The opening of a side pocket: from the middle of the bag's top slanting out to its bottom.
Ring welt(const Ring& bag) {
  const double upper = (bag[0].x + bag[1].x) / 2.0;
  const double lower = std::max(bag[1].x - 2.0 * kHalfWelt, upper);
  return {{upper - kHalfWelt, bag[0].y},
          {upper + kHalfWelt, bag[0].y},
          {lower + kHalfWelt, bag[2].y},
          {lower - kHalfWelt, bag[2].y}};
}

std::vector<Ring> patchEdges(const Ring& patch) {
  const Point from = patch[0];
  const Point to = patch[2];
  const double hem = std::min(kPatchHem, (to.y - from.y) / 3.0);
  return {box(from.x, from.y, to.x, from.y + hem),
          box(from.x, from.y + hem, from.x + kPatchEdge, to.y),
          box(to.x - kPatchEdge, from.y + hem, to.x, to.y),
          box(from.x + kPatchEdge, to.y - kPatchEdge, to.x - kPatchEdge, to.y)};
}

Polyline closed(const Ring& ring) {
  Polyline line = ring;
  line.push_back(ring.front());
  return line;
}

}  // namespace

std::vector<Ring> pocketAreas(const GarmentKind& kind, const Measures& measures) {
  switch (kind.pocket) {
    case PocketForm::None:
      return {};
    case PocketForm::Kangaroo:
    case PocketForm::SplitKangaroo:
      return kangarooAreas(kind, measures);
    case PocketForm::Chest:
      return {chestPatch(measures)};
    case PocketForm::Side: {
      const Ring bag = sideBag(measures);
      return {bag, mirroredBack(bag)};
    }
  }
  return {};
}

void addPocketKeepOuts(PanelShape& panel, const GarmentKind& kind, const Measures& measures) {
  const std::vector<Measure> shaping = pocketMeasures(kind.pocket);
  for (const Measure measure : shaping) {
    if (std::find(panel.measures.begin(), panel.measures.end(), measure) == panel.measures.end()) {
      panel.measures.push_back(measure);
    }
  }
  const bool assumed = measures.anyAssumed(shaping);
  const bool patch = kind.pocket == PocketForm::Chest;
  for (const Ring& area : pocketAreas(kind, measures)) {
    // A bag: sewing through it would close it, and a frame cannot close over it. The rings may hold
    // a flat patch.
    for (const Ring& part : patch ? patchEdges(area) : std::vector<Ring>{area}) {
      panel.keepOuts.push_back({KeepOutName::PocketEdge, part, true, !patch, assumed});
    }
  }
}

PanelShape withPocketAlone(const PanelShape& front, const GarmentKind& kind,
                           const Measures& measures) {
  PanelShape alone = front;
  for (const Ring& area : pocketAreas(kind, measures)) {
    const std::vector<Ring> edges = patchEdges(area);
    for (KeepOut& keepOut : alone.keepOuts) {
      // Not the first, the hem of the opening: the ring comes in over it.
      if (keepOut.name == KeepOutName::PocketEdge &&
          std::find(edges.begin() + 1, edges.end(), keepOut.area) != edges.end()) {
        keepOut.frame = true;
      }
    }
  }
  return alone;
}

void addPocketLines(PanelShape& panel, const GarmentKind& kind, const Measures& measures) {
  for (const Ring& area : pocketAreas(kind, measures)) {
    if (kind.pocket == PocketForm::Side) {
      addPair(panel, DetailKind::PocketLine, closed(welt(area)));
      return;  // the pair is both of them
    }
    addLine(panel, DetailKind::PocketLine, closed(area));
    if (kind.pocket == PocketForm::Chest) {
      const double hem = patchEdges(area).front()[2].y;
      addLine(panel, DetailKind::PocketLine, {{area[0].x, hem}, {area[1].x, hem}});
    }
  }
}

}  // namespace creaseline::garment
