// SPDX-License-Identifier: MIT
// Which frame on hand holds the design at its place, and can sit on the garment there.
#pragma once

#include <vector>

#include "creaseline/planning/plan.h"
#include "planning/request.h"

namespace creaseline {

struct FrameSearch {
  std::vector<FrameChoice> accepted;       // best first, each frame in its best way of lying
  bool onlyTurned = false;                 // no way without a quarter turn would do
  std::vector<FrameRejection> rejections;  // one for each frame that fails, its nearest miss
  std::vector<const Frame*> armMissed;  // whose bracket lay on a closed side, in some way of lying
  double largestScale = 0.0;            // that any window would hold; 1 or more if one holds it
};

// `onPanel` is the design's outline in panel coordinates, `centre` its centre there.
FrameSearch searchFrames(const Workshop& workshop, const PanelShape& panel, const Outline& onPanel,
                         Point centre, Effort effort);

// How far along the panel's axes a design may reach at most, for each way of lying of the frames
// that may be used on the panel, with room for the shop's hooping error on each side. What reaches
// further than each of them is held by none, wherever in the box its centre lies.
std::vector<Box> largestHeld(const Workshop& workshop, const PanelShape& panel, const Box& centres);

// By how much frames would have to lie turned on the garment to hold the design, where no way of
// the shop's holds it: for each frame meant for the panel the smallest turn at which it also bears
// the shop's hooping error, to the whole degree; else the smallest at which it bears what less than
// that is a stop; else the smallest of all, to the whole degree or tenth. Smallest first.
std::vector<Angle> turnsThatHold(const Workshop& workshop, PanelName panel, const Outline& onPanel,
                                 Point centre);

// Where the design's centre may lie in a frame whose own centre is at `frameCentre`, all in panel
// coordinates, as FrameChoice::room says it; and the slack with the design at its place there.
struct RoomInFrame {
  Region room;
  Slack slack;
};
RoomInFrame roomInFrame(const PreparedFrame& frame, const Outline& onPanel, Point centre,
                        Point frameCentre);

// True if the slack on every side and turned, each alone, is no less than the error.
bool slackCovers(const Slack& slack, const HoopingError& error);

}  // namespace creaseline
