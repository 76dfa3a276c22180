// SPDX-License-Identifier: MIT
#include "planning/shop_remedies.h"

#include <algorithm>
#include <cmath>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/frame_search.h"

namespace creaseline {
namespace {

constexpr auto kAsAsked = [](PlacementRequest&) {};

// The shop with what a plan lacks in stock, and how to say what that is.
std::string buyWhatIsMissing(Workshop& stocked, FindingCode code, const Answer& planned) {
  const BackingChoice& backing = planned.hoopings().front().backing;
  if (code == FindingCode::BackingNotInStock) {
    Length side = Length::fromMm(1.0);
    for (const PlacementPlan& hooping : planned.hoopings()) {
      side = std::max({side, hooping.backing.cutWidth, hooping.backing.cutHeight});
    }
    stocked.backings.push_back({StockId("to-buy"), worded("what is to be bought"), backing.kind,
                                backing.leastWeight, BackingForm::Sheets, side, side, 1});
    return worded("buy {}", backingPhrase(backing, stocked.shop->units));
  }
  if (code == FindingCode::NeedleNotInStock) {
    stocked.needles.push_back({backing.needleSize, backing.needlePoint});
    return worded("buy needles {}", needlePhrase(backing));
  }
  stocked.toppingFilm = true;
  return worded("buy topping film");
}

// What a frame that the shop does not have must leave open, with room for its hooping error.
struct NewWindow {
  Length width, height;
};

NewWindow windowToBuy(const Case& problem, const Workshop& workshop) {
  const PlacementPlan plan = place(problem.requests.front(), workshop, Effort::BestFrame);
  const Length clearance = workshop.figures.footClearance;
  const HoopingError& error = workshop.figures.hoopingError;
  return {Length::fromMm(plan.placed.bounds.width()) + (clearance + error.sideways) * 2.0,
          Length::fromMm(plan.placed.bounds.height()) + (clearance + error.along) * 2.0};
}

// The shop with such a frame alone. It is bought with its brackets where they are wanted.
Shop shopThatBuys(const NewWindow& size, Length rim, const Workshop& workshop) {
  Shop shop = *workshop.shop;
  const Window window = *Window::rectangle(size.width, size.height);
  shop.frames = {Frame{FrameId("another frame"),
                       worded("such a frame"),
                       FrameKind::Screw,
                       window,
                       *Window::rectangle(size.width + rim * 2.0, size.height + rim * 2.0),
                       window,
                       workshop.figures.footClearance,
                       BracketSide::Both,
                       {Angle(), Angle::fromDegrees(180.0)},
                       {},
                       1,
                       {}}};
  return shop;
}

}  // namespace

std::optional<Remedy> buyFrame(const Case& problem, const Workshop& workshop) {
  const NewWindow window = windowToBuy(problem, workshop);
  const Shop shop = shopThatBuys(window, workshop.figures.clampMargin, workshop);
  const Workshop larger = prepareWorkshop(shop, *workshop.rules);
  return RemedyTrial(problem, workshop)
      .remedy(ShopChange{"another-frame"},
              worded("use a frame, none is on hand, whose window and sewing field are at "
                     "least {}",
                     sizePhrase(roundUpToMark(window.width, workshop.shop->units),
                                roundUpToMark(window.height, workshop.shop->units),
                                workshop.shop->units)),
              kAsAsked, larger);
}

std::optional<Remedy> buyNarrowerFrame(const Case& problem, const Workshop& workshop) {
  const NewWindow window = windowToBuy(problem, workshop);
  const RemedyTrial trial(problem, workshop);
  const Length narrowest = workshop.figures.narrowestRim;
  const Length step = Length::fromMm(1.0);
  const auto withRim = [&](Length rim) -> std::optional<Remedy> {
    const Shop shop = shopThatBuys(window, rim, workshop);
    const Workshop other = prepareWorkshop(shop, *workshop.rules);
    const UnitChoice& units = workshop.shop->units;
    return trial.remedy(
        ShopChange{"another-frame"},
        worded("use a frame, none is on hand, whose body is at most {} and whose window and "
               "sewing field are at least {}",
               sizePhrase(roundDownToMark(window.width + rim * 2.0, units),
                          roundDownToMark(window.height + rim * 2.0, units), units),
               sizePhrase(roundUpToMark(window.width, units), roundUpToMark(window.height, units),
                          units)),
        kAsAsked, other);
  };
  std::optional<Remedy> best = withRim(narrowest);
  if (!best) {
    return std::nullopt;
  }
  // A wider rim never sits better, so the widest is found by halving.
  Length works = narrowest;
  Length fails = std::max(workshop.figures.clampMargin, narrowest) + step;
  while (fails - works > step) {
    const Length middle = Length::fromMm(std::floor((works + (fails - works) * 0.5).mm()));
    if (middle <= works) {
      break;
    }
    if (auto remedy = withRim(middle)) {
      best = std::move(remedy);
      works = middle;
    } else {
      fails = middle;
    }
  }
  return best;
}

std::optional<Remedy> leaveAsPlanned(const Case& problem, const Workshop& workshop) {
  const PlacementRequest& first = problem.requests.front();
  const Answer answer = answerInParts(first, workshop, Effort::BestFrame);
  const auto& frame = answer.hoopings().front().frame;
  if (!frame || worstOf(observe(first, answer, workshop)) == Severity::Stop) {
    return std::nullopt;
  }
  return Remedy{ShopChange{"as-planned"},
                worded("use {} as planned", nameOfFrame(*frame, workshop)),
                resultText(answer, workshop), Length()};
}

std::optional<Remedy> stockUp(const Case& problem, const Workshop& workshop) {
  Workshop stocked = workshop;
  const std::string text = buyWhatIsMissing(
      stocked, problem.code, answerInParts(problem.requests.front(), workshop, Effort::BestFrame));
  const bool works = std::all_of(
      problem.requests.begin(), problem.requests.end(), [&](const PlacementRequest& request) {
        const auto seen =
            observe(request, answerInParts(request, stocked, Effort::BestFrame), stocked);
        return std::none_of(seen.begin(), seen.end(), [&problem](const Observation& o) {
          return o.code == problem.code && o.subject == problem.subject;
        });
      });
  if (!works) {
    return std::nullopt;
  }
  return Remedy{ShopChange{"buy"}, text, worded("nothing is short here then"), Length()};
}

std::optional<Remedy> measureGarments(const Case& problem, const Workshop& workshop) {
  // As if the assumed values had been measured, to see that this is what is missing.
  for (const PlacementRequest& request : problem.requests) {
    PlacementRequest measured = request;
    auto garment = std::make_shared<GarmentShape>(*request.garment);
    for (auto& [measure, value] : garment->measures) {
      value.assumed = false;
    }
    measured.garment = std::move(garment);
    const auto seen =
        observe(measured, answerInParts(measured, workshop, Effort::AnyFrame), workshop);
    if (std::any_of(seen.begin(), seen.end(),
                    [](const Observation& o) { return o.code == FindingCode::MeasureAssumed; })) {
      return std::nullopt;
    }
  }
  return Remedy{ShopChange{"measure"},
                worded("measure {} on one garment of each size and enter it in the size chart",
                       problem.subject),
                worded("nothing is assumed then"), Length()};
}

std::optional<Remedy> fewerStitches(const Case& problem, const Workshop& workshop) {
  const PlacementRequest& first = problem.requests.front();
  const PlacementPlan plan = answer(first, workshop, Effort::BestFrame);
  if (!plan.backing.mostDensity || plan.design.stitches == 0) {
    return std::nullopt;
  }
  const double share = *plan.backing.mostDensity / plan.design.stitchesPerSquareMm();
  const int stitches = static_cast<int>(std::floor(first.design->stitches * share));
  Design lighter = *first.design;
  lighter.stitches = stitches;
  lighter.blocks.clear();
  return RemedyTrial(problem, workshop)
      .remedy(
          StitchesChange{stitches},
          worded("have the design made with at most {} stitches", stitches),
          [&lighter](PlacementRequest& request) { request.design = &lighter; }, workshop);
}

}  // namespace creaseline
