// SPDX-License-Identifier: MIT
// Where to cut a design both ways: first one way into strips, then each strip the other way where
// it must be. For what no parallel cuts divide.
#pragma once

#include <optional>

#include "planning/split_search.h"

namespace creaseline {

struct GridSearch {
  std::optional<Split> split;
  bool gaveUp = false;
  int questions = 0;
};

// The fewest parts, then the least crossed length, then the most equal parts, of all cuts at the
// places of gridPlaces() with the marks of closePairs(). Each part but the first is tied by two
// marks to one neighbour that is sewn before it: in a strip to the part beside it, the first part
// of a strip to a part of the strip before. Marks are then set further apart where frames allow.
//
// What a choice of cuts costs is known before any question is asked. So the search takes the best
// choice that nothing speaks against, asks about its parts, and where one cannot be sewn, lets all
// choices go that hold as much, until a choice holds or none is left. What holds more than a part
// that cannot be sewn cannot be sewn either: that spares questions, and is all that is taken for
// granted; each part of the answer has been asked about as it is. By the same token nothing is
// looked for where a corner of the design's hull cannot be sewn by itself.
[[nodiscard]] GridSearch findGrid(const Outline& outline, const SplitFigures& figures,
                                  const PartFits& fits);

}  // namespace creaseline
