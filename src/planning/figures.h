// SPDX-License-Identifier: MIT
// The shipped defaults as typed figures, read once a plan.
#pragma once

#include "creaseline/base/angle.h"
#include "creaseline/base/areal_weight.h"
#include "creaseline/base/duration.h"
#include "creaseline/base/length.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

// Of designs that are sewn in several hoopings.
struct PartFigures {
  int mostParts = 2;
  Length overlap;
  Length registerMark;
  Length markClearance;
  Length marksApart;
};

// What remedies are ranked by besides how far they move stitches, as lengths of such moves.
struct RemedyFigures {
  Length furtherHooping;
  Length turnedFrame;
  Length furtherDesign;
  Length boughtFrame;
};

struct Figures {
  Length footClearance;
  Length clampMargin;
  Length seamClearance;
  BandWidths bandWidths;
  double heavyGrams = 300.0;  // beside the frame
  Angle armReach;             // between the bracket's direction and an opening
  Length narrowestRim;        // of a frame that could be bought
  HoopingError hoopingError;  // the shop's own, or the shipped default
  double stopShare = 0.5;
  HoopingError stopError;  // that share of it: a frame that does not bear it is a stop
  Length creaseError, rulerError, clothGive;
  PartFigures parts;
  RemedyFigures remedies;
  double largerLetter = 0.15;      // by so much higher, a monogram's middle letter counts as larger
  double leastDesignShare = 0.75;  // of the largest design that a garment would take
};

// Times of a run besides the machine's own speed.
struct TimeFigures {
  Duration hooping;
  Duration colourChange;
  Duration rethreading;
  Duration threadTrim;
  Duration fabricLaying;
  Duration fabricTrimming;
};

// Throws InputError if a default does not read as the quantity it stands for.
Figures readFigures(const Defaults& defaults, const Shop& shop);
TimeFigures readTimeFigures(const Defaults& defaults);
Length readPlacementTolerance(const Defaults& defaults);

// The band of a size: as its chart says, else as its name tells, else by its body width.
SizeBand resolvedBand(const ChartSize& size, KindForm form, const Figures& figures);

}  // namespace creaseline
