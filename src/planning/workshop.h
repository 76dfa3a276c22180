// SPDX-License-Identifier: MIT
// The shop made ready for planning: every frame in every way it may lie on a garment, prepared
// once and asked for every placement.
#pragma once

#include <array>
#include <memory>
#include <vector>

#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/shape/fit.h"
#include "planning/figures.h"

namespace creaseline {

// A frame turned on the garment. All shapes are in the panel's axes, centred on the frame.
struct PreparedFrame {
  const Frame* frame = nullptr;
  Angle turn;
  FrameOpening opening;
  Ring body;
  Ring window;
  double clothMargin = 0.0;  // millimetres that cloth must go on beyond body or window
  Box opened;                // extent left for a design: window less clearance, and sewing field
  Length bodyWidth, bodyHeight;
  bool leftOut = false;  // the order names frames and not this one
  // A half turn from an earlier way of lying, and like it but for the side of the bracket.
  bool upsideDown = false;
};

// What a frame body may do at each edge of a panel, by EdgeName.
using EdgeCrossings = std::array<EdgeCrossing, std::size(EnumNames<EdgeName>::names)>;

// Cheap to copy: a remedy that changes the stock is tried on a copy.
struct Workshop {
  const Shop* shop = nullptr;
  const Rules* rules = nullptr;
  Figures figures;
  EdgeCrossings crossings{};
  std::shared_ptr<const std::vector<PreparedFrame>> frames;
  std::vector<BackingStock> backings;
  std::vector<NeedleStock> needles;
  bool toppingFilm = false;
};

// The frame in that way of lying; null if the shop has none.
const PreparedFrame* preparedFrame(const Workshop& workshop, const FrameId& frame, Angle turn);

// Keeps pointers to both arguments.
Workshop prepareWorkshop(const Shop& shop, const Rules& rules);

// The same with every frame but these marked as left out; no names: with none left out.
Workshop withFrames(const Workshop& workshop, const std::vector<FrameId>& frames);

// The same where every frame may also lie turned on the garment by so much. Zero adds nothing.
Workshop withFrameTurn(const Workshop& workshop, Angle turn);

}  // namespace creaseline
