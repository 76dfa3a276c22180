// SPDX-License-Identifier: MIT
#include "planning/figures.h"

#include <string>

#include "creaseline/base/error.h"
#include "creaseline/base/units.h"
#include "planning/own_error.h"

namespace creaseline {
namespace {

template <class T>
T require(const Result<T>& parsed, const DefaultValue& value) {
  if (!parsed) {
    throw InputError({"rules/defaults.json", value.id, value.text, parsed.message()});
  }
  return parsed.value();
}

Length lengthOf(const DefaultValue& value) {
  return require(parseLength(value.text), value);
}

Duration durationOf(const DefaultValue& value) {
  return require(parseDuration(value.text), value);
}

// Loading has seen to it that this is two digits and a percent sign.
double shareOf(const DefaultValue& value) {
  return std::stoi(value.text) / 100.0;
}

// As the shop judges it, as its measured hoopings tell, or as shipped.
HoopingError hoopingErrorOf(const Defaults& defaults, const Shop& shop) {
  if (shop.hoopingError) {
    return *shop.hoopingError;
  }
  const auto measured =
      measuredHoopingError(shop.measuredHoopings,
                           static_cast<std::size_t>(std::stoi(defaults.leastHoopingsMeasured.text)),
                           shareOf(defaults.hoopingCoverage), shareOf(defaults.hoopingConfidence));
  if (measured) {
    return *measured;
  }
  return {lengthOf(defaults.hoopingSideways), lengthOf(defaults.hoopingAlong),
          require(parseAngle(defaults.hoopingTurn.text), defaults.hoopingTurn),
          defaults.hoopingSideways.basis};
}

}  // namespace

Figures readFigures(const Defaults& defaults, const Shop& shop) {
  Figures figures;
  figures.footClearance = lengthOf(defaults.footClearance);
  figures.clampMargin = lengthOf(defaults.clampMargin);
  figures.bandWidths = bandWidths(defaults);
  figures.seamClearance = lengthOf(defaults.seamClearance);
  // Loading has seen to it that this is digits and the unit.
  figures.heavyGrams = std::stoi(defaults.heavyGarment.text);
  figures.armReach = require(parseAngle(defaults.armReach.text), defaults.armReach);
  figures.narrowestRim = lengthOf(defaults.narrowestRim);
  // Loading has seen to it that this is one digit.
  figures.parts = {defaults.mostParts.text.front() - '0', lengthOf(defaults.partOverlap),
                   lengthOf(defaults.registerMark), lengthOf(defaults.registerMarkClearance),
                   lengthOf(defaults.registerMarksApart)};
  figures.remedies = {lengthOf(defaults.furtherHoopingWeighs), lengthOf(defaults.turnedFrameWeighs),
                      lengthOf(defaults.furtherDesignWeighs), lengthOf(defaults.boughtFrameWeighs)};
  figures.largerLetter = shareOf(defaults.largerLetter);
  figures.leastDesignShare = shareOf(defaults.leastDesignShare);
  figures.creaseError = shop.creaseError.value_or(lengthOf(defaults.creaseError));
  figures.rulerError = shop.rulerError.value_or(lengthOf(defaults.rulerError));
  figures.clothGive = shop.clothGive.value_or(lengthOf(defaults.clothGive));
  figures.hoopingError = hoopingErrorOf(defaults, shop);
  const double share = shareOf(defaults.stopShareOfError);
  figures.stopShare = share;
  figures.stopError = {figures.hoopingError.sideways * share, figures.hoopingError.along * share,
                       Angle::fromDegrees(figures.hoopingError.turn.degrees() * share),
                       defaults.stopShareOfError.basis};
  return figures;
}

TimeFigures readTimeFigures(const Defaults& defaults) {
  return {durationOf(defaults.hoopingTime),  durationOf(defaults.colourChange),
          durationOf(defaults.rethreading),  durationOf(defaults.threadTrim),
          durationOf(defaults.fabricLaying), durationOf(defaults.fabricTrimming)};
}

Length readPlacementTolerance(const Defaults& defaults) {
  return lengthOf(defaults.placementTolerance);
}

SizeBand resolvedBand(const ChartSize& size, KindForm form, const Figures& figures) {
  if (size.bandGiven) {
    return size.band;
  }
  if (const auto named = bandFromName(size.name)) {
    return *named;
  }
  const auto width = size.measures.find(Measure::BodyWidth);
  // The width of a towel or a bag tells nothing about who uses it.
  if (width == size.measures.end() || form == KindForm::Flat) {
    return SizeBand::Adult;
  }
  return figures.bandWidths.band(width->second);
}

}  // namespace creaseline
