// SPDX-License-Identifier: MIT
#include "planning/remedies.h"

#include <fmt/format.h>
#include <algorithm>
#include <cmath>
#include <functional>

#include "creaseline/base/error.h"
#include "creaseline/planning/wording.h"
#include "planning/frame_search.h"
#include "planning/placement.h"

namespace creaseline {
namespace {

constexpr std::size_t kMostRemedies = 3;
constexpr int kLeastPercent = 30;  // below a third it is another design

using Edit = std::function<void(PlacementRequest&)>;

struct Trial {
  bool works = false;
  std::string result;
};

std::string nameOfFrame(const FrameChoice& choice, const Workshop& workshop) {
  const Frame* frame = workshop.shop->frame(choice.frame);
  return frame == nullptr ? choice.frame.text() : frame->name;
}

// "part 1 in the long frame, part 2 in the square frame; room to the nearest side: 6 mm"
std::string partsText(const std::vector<PlacementPlan>& parts, const Workshop& workshop) {
  std::string text;
  Length least = parts.front().frame->slack.least();
  for (const PlacementPlan& part : parts) {
    least = std::min(least, part.frame->slack.least());
    text += fmt::format("{}part {} in {}", text.empty() ? "" : ", ", part.part->number,
                        nameOfFrame(*part.frame, workshop));
  }
  return fmt::format("{}; room to the nearest side: {}", text,
                     roomPhrase(least, workshop.shop->units));
}

std::string resultText(const Answer& answer, const Workshop& workshop) {
  if (!answer.parts.empty()) {
    return partsText(answer.parts, workshop);
  }
  const auto& frame = answer.whole.frame;
  return frame ? fmt::format("{} holds it; room to the nearest side: {}",
                             nameOfFrame(*frame, workshop),
                             roomPhrase(frame->slack.least(), workshop.shop->units))
               : "planned without a stop";
}

bool solved(const Case& problem, const std::vector<Observation>& observations) {
  return std::none_of(observations.begin(), observations.end(), [&problem](const Observation& o) {
    const bool same =
        o.code == problem.code && (o.subject == problem.subject || o.severity <= problem.severity);
    return o.severity == Severity::Stop || same;
  });
}

// Room and turning depend on which frame is best; for all else any frame will do.
Effort effortFor(FindingCode code) {
  return code == FindingCode::LittleRoom || code == FindingCode::FitsOnlyTurned ? Effort::BestFrame
                                                                                : Effort::AnyFrame;
}

bool editWorks(const Case& problem, const Workshop& workshop, const Edit& edit) {
  return std::all_of(
      problem.requests.begin(), problem.requests.end(), [&](PlacementRequest request) {
        edit(request);
        const Answer answer = answerInParts(request, workshop, effortFor(problem.code));
        return solved(problem, observe(request, answer, workshop));
      });
}

Trial tryEdit(const Case& problem, const Workshop& workshop, const Edit& edit) {
  if (!editWorks(problem, workshop, edit)) {
    return {};
  }
  PlacementRequest worst = problem.requests.front();
  edit(worst);
  return {true, resultText(answerInParts(worst, workshop, Effort::BestFrame), workshop)};
}

std::string widthText(const PlacementRequest& request, double factor, const UnitChoice& units) {
  return formatLength(request.design->width * (request.placement.scale * factor), units);
}

class Finder {
 public:
  Finder(const Case& problem, const Workshop& workshop)
      : problem_(problem), workshop_(workshop), units_(workshop.shop->units) {}

  std::vector<Remedy> all() {
    switch (problem_.code) {
      case FindingCode::BackingNotInStock:
      case FindingCode::NeedleNotInStock:
      case FindingCode::ToppingNotInStock:
        stockUp();
        break;
      case FindingCode::MeasureAssumed:
        measure();
        break;
      case FindingCode::TooDense:
        fewerStitches();
        break;
      case FindingCode::NoRule:
        elsewhere();
        break;
      case FindingCode::BelowLeastDrop:
      case FindingCode::BeyondMostDrop:
        move();
        smaller();
        break;
      default:
        // A note is for information: the plan has found its own way round it.
        if (problem_.severity != Severity::Note) {
          if (dependsOnPlace()) {
            move();
          }
          smaller();
          split();
          turn();
          elsewhere();
          otherFrame();
        }
        asPlanned();
        break;
    }
    return std::move(remedies_);
  }

 private:
  [[nodiscard]] bool full() const { return remedies_.size() >= kMostRemedies; }

  void offer(Change change, std::string text, const Trial& trial) {
    if (trial.works && !full()) {
      remedies_.push_back({std::move(change), std::move(text), trial.result});
    }
  }

  [[nodiscard]] const PlacementRequest& first() const { return problem_.requests.front(); }

  // Whether moving the design can change the finding at all.
  [[nodiscard]] bool dependsOnPlace() const {
    return problem_.code == FindingCode::FrameMeetsGarment ||
           problem_.code == FindingCode::MeetsKeepOut ||
           problem_.code == FindingCode::OutsidePanel || problem_.code == FindingCode::NearSeam ||
           problem_.code == FindingCode::LittleRoom;
  }

  // The smallest move within the rule's tolerance, to a ruler mark, that works.
  void move() {
    const PlacementRule* rule = findPlacementRule(first(), workshop_);
    if (rule == nullptr) {
      return;
    }
    const Length step = units_.length == LengthUnit::Inch
                            ? Length::fromInches(1.0 / static_cast<double>(units_.mark))
                            : Length::fromMm(1.0);
    const Length now = rule->distance + first().placement.moveDown;
    std::vector<Length> moves{rule->least - now, rule->most - now};
    for (const int marks : {1, 2, 3, 4, 6, 8, 12, 16}) {
      moves.push_back(step * marks);
      moves.push_back(step * -marks);
    }
    std::erase_if(moves, [&](Length by) {
      return by == Length() || now + by < rule->least || now + by > rule->most;
    });
    std::stable_sort(moves.begin(), moves.end(),
                     [](Length a, Length b) { return abs(a) < abs(b); });
    for (const Length by : moves) {
      const Trial trial = tryEdit(problem_, workshop_, [by](PlacementRequest& request) {
        request.placement.moveDown += by;
      });
      if (trial.works) {
        offer(MoveChange{by},
              fmt::format("move it {} {}", formatLength(abs(by), units_),
                          by > Length() ? "further from the mark" : "nearer to the mark"),
              trial);
        return;
      }
    }
  }

  void smaller() {
    const int percent = workingPercent(problem_, workshop_);
    if (percent == 0) {
      return;
    }
    const double factor = percent / 100.0;
    const Trial trial = tryEdit(problem_, workshop_, [factor](PlacementRequest& request) {
      request.placement.scale *= factor;
    });
    const std::string size =
        fmt::format("at {} % ({} wide)", percent, widthText(first(), factor, units_));
    if (problem_.allSizes) {
      offer(ScaleChange{factor}, "sew it " + size, trial);
      return;
    }
    SizeSplitChange split{factor, {}};
    for (const PlacementRequest& request : problem_.requests) {
      split.sizes.push_back(request.size);
    }
    offer(split,
          fmt::format("sew {} {}, the other sizes as they are",
                      sizesPhrase(split.sizes, first().blank->chart), size),
          trial);
  }

  void split() {
    const bool frameTrouble = problem_.code == FindingCode::TooLargeForEveryFrame ||
                              problem_.code == FindingCode::FrameMeetsGarment;
    if (full() || !frameTrouble || first().placement.split) {
      return;
    }
    const Trial trial = tryEdit(problem_, workshop_,
                                [](PlacementRequest& request) { request.placement.split = true; });
    if (!trial.works) {
      return;
    }
    PlacementRequest request = first();
    request.placement.split = true;
    const int parts =
        static_cast<int>(answerInParts(request, workshop_, Effort::BestFrame).hoopings().size());
    offer(SplitChange{parts}, fmt::format("sew it in {} hoopings, joined on register marks", parts),
          trial);
  }

  void turn() {
    const bool frameTrouble = problem_.code == FindingCode::TooLargeForEveryFrame ||
                              problem_.code == FindingCode::FrameMeetsGarment ||
                              problem_.code == FindingCode::WiderThanPanel;
    if (!frameTrouble) {
      return;
    }
    const Angle quarter = Angle::fromDegrees(90.0);
    offer(TurnChange{quarter}, "turn the design by 90° on the garment",
          tryEdit(problem_, workshop_, [quarter](PlacementRequest& request) {
            request.placement.turn = request.placement.turn + quarter;
          }));
  }

  void elsewhere() {
    if (full() || problem_.code == FindingCode::NearSeam ||
        problem_.code == FindingCode::BeyondUsualSize) {
      return;
    }
    const Location* here = workshop_.rules->location(first().placement.location);
    const auto tryAt = [this](const Location& location) {
      const Trial trial = tryEdit(problem_, workshop_, [&location](PlacementRequest& request) {
        request.placement.location = location.id;
        request.placement.moveDown = {};
      });
      offer(LocationChange{location.id}, "put it at " + location.name, trial);
      return trial.works;
    };
    for (const Location& location : workshop_.rules->locations) {
      const bool sameSide = here != nullptr && location.panel == here->panel;
      if (location.id != first().placement.location && sameSide && tryAt(location)) {
        return;
      }
    }
  }

  // A frame that is not on hand, just large enough.
  void otherFrame() {
    if (full() || (problem_.code != FindingCode::TooLargeForEveryFrame &&
                   problem_.code != FindingCode::NoFrameSuits)) {
      return;
    }
    const PlacementPlan plan = answer(first(), workshop_, Effort::BestFrame);
    const Length clearance = workshop_.figures.footClearance;
    const HoopingError& error = workshop_.figures.hoopingError;
    const Length width =
        Length::fromMm(plan.placed.bounds.width()) + (clearance + error.sideways) * 2.0;
    const Length height =
        Length::fromMm(plan.placed.bounds.height()) + (clearance + error.along) * 2.0;
    const Length rim = workshop_.figures.clampMargin * 2.0;
    Shop shop = *workshop_.shop;
    const Window window = *Window::rectangle(width, height);
    shop.frames = {Frame{FrameId("another frame"),
                         "such a frame",
                         FrameKind::Screw,
                         window,
                         *Window::rectangle(width + rim, height + rim),
                         window,
                         clearance,
                         BracketSide::Both,
                         {Angle()},
                         {},
                         1}};
    const Workshop larger = prepareWorkshop(shop, *workshop_.rules);
    offer(ShopChange{"another-frame"},
          fmt::format("use a frame, none is on hand, whose window and sewing field are at least "
                      "{}",
                      sizePhrase(width, height, units_)),
          tryEdit(problem_, larger, [](PlacementRequest&) {}));
  }

  // For a note or a watch that the plan has already answered by its own choice.
  void asPlanned() {
    if (!remedies_.empty()) {
      return;
    }
    const Answer answer = answerInParts(first(), workshop_, Effort::BestFrame);
    const auto& frame = answer.hoopings().front().frame;
    if (!frame || worstOf(observe(first(), answer, workshop_)) == Severity::Stop) {
      return;
    }
    offer(ShopChange{"as-planned"},
          fmt::format("use {} as planned", nameOfFrame(*frame, workshop_)),
          {true, resultText(answer, workshop_)});
  }

  void stockUp() {
    const Answer planned = answerInParts(first(), workshop_, Effort::BestFrame);
    const PlacementPlan& plan = planned.hoopings().front();
    Workshop stocked = workshop_;
    std::string text;
    if (problem_.code == FindingCode::BackingNotInStock) {
      Length side = Length::fromMm(1.0);
      for (const PlacementPlan& hooping : planned.hoopings()) {
        side = std::max({side, hooping.backing.cutWidth, hooping.backing.cutHeight});
      }
      stocked.backings.push_back({StockId("to-buy"), "what is to be bought", plan.backing.kind,
                                  plan.backing.leastWeight, BackingForm::Sheets, side, side, 1});
      text = "buy " + backingPhrase(plan.backing, units_);
    } else if (problem_.code == FindingCode::NeedleNotInStock) {
      stocked.needles.push_back({plan.backing.needleSize, plan.backing.needlePoint});
      text = fmt::format("buy needles {}", needlePhrase(plan.backing));
    } else {
      stocked.toppingFilm = true;
      text = "buy topping film";
    }
    Trial trial;
    trial.works = std::all_of(
        problem_.requests.begin(), problem_.requests.end(), [&](const PlacementRequest& request) {
          const auto seen =
              observe(request, answerInParts(request, stocked, Effort::BestFrame), stocked);
          return std::none_of(seen.begin(), seen.end(), [this](const Observation& o) {
            return o.code == problem_.code && o.subject == problem_.subject;
          });
        });
    trial.result = "nothing is short here then";
    offer(ShopChange{"buy"}, text, trial);
  }

  // Measures as if the assumed values had been measured, to see that this is what is missing.
  void measure() {
    bool works = true;
    for (const PlacementRequest& request : problem_.requests) {
      PlacementRequest measured = request;
      auto garment = std::make_shared<GarmentShape>(*request.garment);
      for (auto& [measure, value] : garment->measures) {
        value.assumed = false;
      }
      measured.garment = std::move(garment);
      const auto seen =
          observe(measured, answerInParts(measured, workshop_, Effort::AnyFrame), workshop_);
      works = works && std::none_of(seen.begin(), seen.end(), [](const Observation& o) {
                return o.code == FindingCode::MeasureAssumed;
              });
    }
    offer(ShopChange{"measure"},
          fmt::format("measure {} on one garment of each size and enter it in the size chart",
                      problem_.subject),
          {works, "nothing is assumed then"});
  }

  void fewerStitches() {
    const PlacementPlan plan = answer(first(), workshop_, Effort::BestFrame);
    if (!plan.backing.mostDensity || plan.design.stitches == 0) {
      return;
    }
    const double share = *plan.backing.mostDensity / plan.design.stitchesPerSquareMm();
    const int stitches = static_cast<int>(std::floor(first().design->stitches * share));
    Design lighter = *first().design;
    lighter.stitches = stitches;
    lighter.blocks.clear();
    const Trial trial = tryEdit(
        problem_, workshop_, [&lighter](PlacementRequest& request) { request.design = &lighter; });
    offer(StitchesChange{stitches},
          fmt::format("have the design made with at most {} stitches", stitches), trial);
  }

  const Case& problem_;
  const Workshop& workshop_;
  const UnitChoice& units_;
  std::vector<Remedy> remedies_;
};

}  // namespace

int workingPercent(const Case& problem, const Workshop& workshop) {
  const auto works = [&](int percent) {
    const double factor = percent / 100.0;
    return editWorks(problem, workshop,
                     [factor](PlacementRequest& request) { request.placement.scale *= factor; });
  };
  // Working is not quite monotone (a smaller design can rest on a smaller frame that meets a
  // pocket), so the bisection only narrows; the answer itself has been tried.
  int low = kLeastPercent;
  int high = 99;
  if (works(high)) {
    return high;
  }
  if (!works(low)) {
    return 0;
  }
  while (high - low > 1) {
    const int middle = (low + high) / 2;
    (works(middle) ? low : high) = middle;
  }
  return low;
}

std::vector<Remedy> findRemedies(const Case& problem, const Workshop& workshop) {
  return problem.requests.empty() ? std::vector<Remedy>{} : Finder(problem, workshop).all();
}

}  // namespace creaseline
