// SPDX-License-Identifier: MIT
// The parts of the benchmark program. Each prints a plain text table.
#pragma once

#include <iosfwd>
#include <vector>

#include "creaseline/catalogue/shop.h"

// Six rounded rectangles, three ellipses and three octagons from 90 to 300 mm, in four turns.
std::vector<creaseline::Frame> twelveFrames();

// One exact fit against GEOS doing the same, measured in the same run.
void benchmarkFit(std::ostream& out);

// One placement with all its angles, and the same questions against GEOS and CGAL.
void benchmarkRotation(std::ostream& out);

// Whole orders of 100, 1,000 and 10,000 lines against 12 frames that lie in 4 ways each.
void benchmarkPlanning(std::ostream& out);
