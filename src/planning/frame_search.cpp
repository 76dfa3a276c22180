// SPDX-License-Identifier: MIT
#include "planning/frame_search.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "base/worded.h"
#include "creaseline/planning/wording.h"
#include "planning/arm_side.h"
#include "planning/frame_rejections.h"
#include "planning/frame_turns.h"
#include "planning/seat.h"
#include "planning/stack_up.h"

namespace creaseline {
namespace {

struct Candidate {
  FrameChoice choice;
  const PreparedFrame* prepared = nullptr;
  std::size_t order = 0;        // of the prepared frame: the last word between equals
  bool bearsStopError = false;  // what less than that is a stop
  double backingArea = 0.0;
  std::optional<ClothLeft> cloth;  // asked of a frame that needs cloth beyond it
};

Ring hullAround(const Outline& onPanel, Point centre) {
  Ring hull = onPanel.hull();
  for (Point& point : hull) {
    point = point - centre;
  }
  return hull;
}

Region moved(const Region& region, Point by) {
  const auto shift = [by](std::vector<Region::Span> chain) {
    for (Region::Span& span : chain) {
      span.from += by.x;
      span.to += by.x;
      if (span.radius == 0.0) {
        span.intercept += by.y - span.slope * by.x;
      } else {
        span.centre = span.centre + by;
      }
    }
    return chain;
  };
  return region.empty() ? region : Region(shift(region.top()), shift(region.bottom()));
}

// The place of the frame nearest to centred at which its body is clear of everything, or the
// best that can be had within the room that the design leaves.
struct Seated {
  Point translation;  // design centre in the frame
  std::vector<Meeting> meetings;
};
Seated findSeat(const PreparedFrame& frame, const Region& region, Point design,
                const PanelShape& panel, const EdgeCrossings& crossings) {
  const auto at = [&](Point translation) {
    return Seated{translation, meetingsOf(frame, design - translation, panel, crossings)};
  };
  Seated best = at(region.balancedPoint());
  constexpr int kSteps = 8;  // each step clears the deepest meeting; two walls need a few
  for (int step = 0; step < kSteps && !best.meetings.empty(); ++step) {
    const Meeting& worst = best.meetings.front();
    const Point next = region.nearest(best.translation - worst.wayOut * worst.depth);
    Seated moved = at(next);
    constexpr double kProgress = 1e-3;
    if (!moved.meetings.empty() && moved.meetings.front().depth > worst.depth - kProgress) {
      break;  // hemmed in from two sides, or at the end of the room
    }
    best = std::move(moved);
  }
  return best;
}

bool covers(const PreparedFrame& frame, const Region& region, const Ring& hull, Point translation,
            const HoopingError& error) {
  return frame.opening.bearsError(region, hull, translation, error.sideways, error.along,
                                  error.turn);
}

Candidate accept(const PreparedFrame& frame, const Region& region, const Ring& hull, Point design,
                 Point translation, const Workshop& workshop, std::size_t order) {
  Candidate candidate;
  candidate.order = order;
  candidate.prepared = &frame;
  FrameChoice& choice = candidate.choice;
  choice.frame = frame.frame->id;
  choice.turn = frame.turn;
  choice.centre = design - translation;
  choice.slack = frame.opening.slack(region, hull, translation);
  choice.room = moved(region, choice.centre);
  choice.bearsError = covers(frame, region, hull, translation, workshop.figures.hoopingError);
  candidate.bearsStopError =
      choice.bearsError || slackCovers(choice.slack, workshop.figures.stopError);
  const Length margin = workshop.figures.clampMargin * 2.0;
  candidate.backingArea = ((frame.bodyWidth + margin) * (frame.bodyHeight + margin)).squareMm();
  return candidate;
}

// Design, section 7: room for the shop's own error, then the plain way round, then least backing.
bool better(const Candidate& a, const Candidate& b) {
  const auto key = [](const Candidate& c) {
    return std::make_tuple(!c.choice.bearsError, !c.bearsStopError, c.choice.turn != Angle(),
                           c.backingArea, c.order);
  };
  return key(a) < key(b);
}

bool quarterTurned(const Candidate& candidate) {
  return candidate.choice.turn.millidegrees() % 180'000 != 0;
}

std::string changesFrames() {
  return worded("other frames in the shop or named in the order");
}

// The best candidate is turned although another way of lying holds the design: say why.
void explainTurn(std::vector<Candidate>& candidates) {
  if (!candidates.empty() && quarterTurned(candidates.front()) &&
      !std::all_of(candidates.begin(), candidates.end(), quarterTurned)) {
    candidates.front().choice.reasons.push_back(
        {worded("turned on the garment for the sake of room: not turned, no frame leaves enough "
                "for the shop's hooping error"),
         {},
         worded("ranking of frames"),
         false,
         {},
         changesFrames()});
  }
}

std::string roomText(const FrameChoice& choice, const HoopingError& own, Point centre,
                     const UnitChoice& shown) {
  const UnitChoice units =
      unitsTellingApart(choice.slack.least(), {own.sideways, own.along}, shown, Compared::Room);
  const std::string room =
      worded("room {} to the nearest side, {} sideways and along at once, {} any way, {} turned",
             roomPhrase(choice.slack.least(), units),
             roomPhrase(Length::fromMm(choice.room.squareAround(centre)), units),
             roomPhrase(Length::fromMm(choice.room.discAround(centre)), units),
             formatAngle(choice.slack.turn));
  const std::string error = worded("{} sideways, {} along, {}", formatLength(own.sideways, units),
                                   formatLength(own.along, units), formatAngle(own.turn));
  return choice.bearsError
             ? worded("{}; the shop's hooping error is {}, and all together can be made good", room,
                      error)
             : worded("{}; the shop's hooping error is {}, and all together cannot be made good",
                      room, error);
}

void giveReasons(std::vector<Candidate>& accepted, const PanelShape& panel,
                 const Workshop& workshop, Point centre) {
  const UnitChoice& units = workshop.shop->units;
  for (Candidate& candidate : accepted) {
    FrameChoice& choice = candidate.choice;
    choice.reasons.push_back(
        {roomText(choice, workshop.figures.hoopingError, centre, units),
         {},
         workshop.figures.hoopingError.basis,
         false,
         {},
         worded("hoopings that the shop measures or its own judgement of its error")});
    const Reasons errors = stackUpReasons(workshop, choice.slack);
    choice.reasons.insert(choice.reasons.end(), errors.begin(), errors.end());
    if (!choice.bodyNearest.empty()) {
      choice.reasons.push_back({worded("room between its body and the {}: {}", choice.bodyNearest,
                                       roomPhrase(choice.bodyRoom, units)),
                                {},
                                worded("measured on the drawn panel"),
                                false,
                                {},
                                worded("another frame or another place")});
    }
    if (candidate.prepared->clothMargin > 0.0) {
      choice.reasons.push_back(clothReason(*candidate.prepared, candidate.cloth, units));
    }
    if (auto ring = ringReason(*candidate.prepared, panel, units)) {
      choice.reasons.push_back(std::move(*ring));
    }
    choice.reasons.push_back(armReason(*candidate.prepared, centre, panel, workshop));
    if (choice.bearsError && &candidate == &accepted.front() && accepted.size() > 1) {
      choice.reasons.push_back(
          {worded("of the frames that hold it with enough room it needs the least backing"),
           {},
           worded("ranking of frames"),
           false,
           {},
           changesFrames()});
    }
  }
}

bool meantFor(const Frame& frame, PanelName panel) {
  return frame.panels.empty() ||
         std::find(frame.panels.begin(), frame.panels.end(), panel) != frame.panels.end();
}

// Keeps the nearest miss of each frame: the test that came furthest, then the least missing.
void keepNearestMiss(std::vector<FrameRejection>& rejections, FrameRejection rejection) {
  const auto known = std::find_if(
      rejections.begin(), rejections.end(),
      [&rejection](const FrameRejection& other) { return other.frame == rejection.frame; });
  if (known == rejections.end()) {
    rejections.push_back(std::move(rejection));
    return;
  }
  const bool further = rejection.test > known->test && known->test <= FrameTest::HoldsDesign;
  const bool nearer = rejection.missing < known->missing &&
                      (rejection.test >= known->test || rejection.test > FrameTest::HoldsDesign);
  if (further || nearer) {
    *known = std::move(rejection);
  }
}

// Asked last, of the frames that stay rejected alone: it is the costliest question of all.
void nameTurns(FrameSearch& search, const Workshop& workshop, const Ring& hull) {
  for (FrameRejection& rejection : search.rejections) {
    const PreparedFrame* frame = preparedFrame(workshop, rejection.frame, rejection.turn);
    if (rejection.test != FrameTest::HoldsDesign || frame == nullptr) {
      continue;
    }
    if (const auto holding = turnThatHolds(*frame, hull, workshop.figures)) {
      rejection.what += "; " + turnPhrase(holding->turn, holding->room);
    }
  }
}

void dropAccepted(FrameSearch& search) {
  std::erase_if(search.rejections, [&search](const FrameRejection& rejection) {
    return std::any_of(
        search.accepted.begin(), search.accepted.end(),
        [&rejection](const FrameChoice& choice) { return choice.frame == rejection.frame; });
  });
}

// One entry a frame: its best way of lying.
void keepBestTurn(std::vector<Candidate>& candidates) {
  std::vector<Candidate> best;
  for (Candidate& candidate : candidates) {
    const bool known = std::any_of(best.begin(), best.end(), [&candidate](const Candidate& other) {
      return other.choice.frame == candidate.choice.frame;
    });
    if (!known) {
      best.push_back(std::move(candidate));
    }
  }
  candidates = std::move(best);
}

// No scale above this can fit: the bounding box must go into what is open.
double scaleBound(const PreparedFrame& frame, const Box& box) {
  return std::max(
      0.0, std::min(frame.opened.width() / box.width(), frame.opened.height() / box.height()));
}

// Largest scale that any frame would hold. The search within one frame is costly, so frames are
// asked in order of what they could hold at most, and no longer than that can win.
void askScales(FrameSearch& search, const Workshop& workshop, const Ring& hull, PanelName panel) {
  const Box box = ringBounds(hull);
  std::vector<std::pair<double, const PreparedFrame*>> order;
  for (const PreparedFrame& frame : *workshop.frames) {
    if (!frame.leftOut && meantFor(*frame.frame, panel)) {
      order.emplace_back(scaleBound(frame, box), &frame);
    }
  }
  std::stable_sort(order.begin(), order.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  for (const auto& [bound, frame] : order) {
    if (bound <= search.largestScale) {
      break;
    }
    const double scale = frame->opening.largestScale(hull);
    search.largestScale = std::max(search.largestScale, scale);
    for (FrameRejection& rejection : search.rejections) {
      if (rejection.frame == frame->frame->id) {
        rejection.largestScale = std::max(rejection.largestScale, scale);
      }
    }
  }
}

void measureBody(Candidate& candidate, const PanelShape& panel, const EdgeCrossings& crossings) {
  const BodyRoom room = bodyRoom(*candidate.prepared, candidate.choice.centre, panel, crossings);
  if (std::isfinite(room.distance)) {
    candidate.choice.bodyRoom = Length::fromMm(room.distance);
    candidate.choice.bodyNearest = room.nearest;
  }
  if (candidate.prepared->clothMargin > 0.0) {
    candidate.cloth = clothLeft(*candidate.prepared, candidate.choice.centre, panel, crossings);
  }
}

// What became of one frame in one way of lying.
void tryFrame(FrameSearch& search, std::vector<Candidate>& candidates, const PreparedFrame& frame,
              const Ring& hull, const Box& box, Point centre, const PanelShape& panel,
              const Workshop& workshop, bool explain) {
  const UnitChoice& units = workshop.shop->units;
  const auto ruleOut = [&](FrameTest test, std::string what) {
    if (explain) {
      keepNearestMiss(search.rejections,
                      {frame.frame->id, frame.turn, test, {}, std::move(what), 0.0});
    }
  };
  // Upside down it is the same frame again, but for the machine's arm.
  if (frame.upsideDown && std::find(search.armMissed.begin(), search.armMissed.end(),
                                    frame.frame) == search.armMissed.end()) {
    return;
  }
  if (frame.leftOut) {
    ruleOut(FrameTest::NamedByOrder, worded("the order names other frames"));
    return;
  }
  if (!meantFor(*frame.frame, panel.name)) {
    ruleOut(FrameTest::MeantForPanel, worded("the shop does not use it on this part of a garment"));
    return;
  }
  constexpr double kTouching = 1e-6;  // the box only spares work; the opening decides
  const bool surelyTooLarge = box.width() > frame.opened.width() + kTouching ||
                              box.height() > frame.opened.height() + kTouching;
  const Region region = surelyTooLarge ? Region() : frame.opening.translations(hull);
  if (region.empty()) {
    if (explain) {
      keepNearestMiss(search.rejections, tooLarge(frame, hull, units));
    }
    return;
  }
  if (const auto tooWide = tooWideForOpenings(frame, panel)) {
    if (explain) {
      keepNearestMiss(search.rejections, cannotEnter(frame, *tooWide, units));
    }
    return;
  }
  const Seated seated = findSeat(frame, region, centre, panel, workshop.crossings);
  if (seated.meetings.empty() && !liesOpen(panel) &&
      armEdge(frame, centre, panel, workshop) == nullptr) {
    search.armMissed.push_back(frame.frame);
    ruleOut(FrameTest::ArmReachesIn, noArmPhrase(frame, panel));
  } else if (seated.meetings.empty()) {
    candidates.push_back(
        accept(frame, region, hull, centre, seated.translation, workshop, candidates.size()));
  } else if (explain) {
    const bool hasPlay = region.bounds().width() > 1.0 || region.bounds().height() > 1.0;
    keepNearestMiss(search.rejections,
                    meetsGarment(frame, seated.meetings.front(), hasPlay, units));
  }
}

}  // namespace

bool slackCovers(const Slack& slack, const HoopingError& error) {
  return slack.left >= error.sideways && slack.right >= error.sideways && slack.up >= error.along &&
         slack.down >= error.along && slack.turn >= error.turn;
}

std::vector<Box> largestHeld(const Workshop& workshop, const PanelShape& panel,
                             const Box& centres) {
  const HoopingError& error = workshop.figures.hoopingError;
  const Point play{error.sideways.mm(), error.along.mm()};
  std::vector<Box> largest;
  for (const PreparedFrame& frame : *workshop.frames) {
    if (!frame.leftOut && meantFor(*frame.frame, panel.name) &&
        armMayReach(frame, centres, panel, workshop)) {
      largest.push_back({frame.opened.min + play, frame.opened.max - play});
    }
  }
  return largest;
}

std::vector<Angle> turnsThatHold(const Workshop& workshop, PanelName panel, const Outline& onPanel,
                                 Point centre) {
  const Ring hull = hullAround(onPanel, centre);
  const auto shorter = [](Angle a, Angle b) {
    return std::abs(a.millidegrees()) < std::abs(b.millidegrees());
  };
  std::vector<Angle> turns;
  for (const PreparedFrame& frame : *workshop.frames) {
    if (frame.leftOut || frame.upsideDown || !meantFor(*frame.frame, panel)) {
      continue;
    }
    const auto holding = turnThatHolds(frame, hull, workshop.figures);
    if (holding && std::find(turns.begin(), turns.end(), holding->turn) == turns.end()) {
      turns.push_back(holding->turn);
    }
  }
  std::stable_sort(turns.begin(), turns.end(), shorter);
  return turns;
}

RoomInFrame roomInFrame(const PreparedFrame& frame, const Outline& onPanel, Point centre,
                        Point frameCentre) {
  const Ring hull = hullAround(onPanel, centre);
  const Region region = frame.opening.translations(hull);
  constexpr double kRounding = 1e-9;  // of the difference of the two centres
  if (!region.contains(centre - frameCentre, kRounding)) {
    return {};
  }
  return {moved(region, frameCentre), frame.opening.slack(region, hull, centre - frameCentre)};
}

FrameSearch searchFrames(const Workshop& workshop, const PanelShape& panel, const Outline& onPanel,
                         Point centre, Effort effort) {
  FrameSearch search;
  const Ring hull = hullAround(onPanel, centre);
  const Box box = ringBounds(hull);
  std::vector<Candidate> candidates;
  for (const PreparedFrame& frame : *workshop.frames) {
    tryFrame(search, candidates, frame, hull, box, centre, panel, workshop, explains(effort));
    if (!candidates.empty() &&
        (effort == Effort::AnyFrame ||
         (effort == Effort::AnyRoomy && candidates.back().choice.bearsError))) {
      break;
    }
  }
  std::sort(candidates.begin(), candidates.end(), better);
  search.onlyTurned =
      !candidates.empty() && std::all_of(candidates.begin(), candidates.end(), quarterTurned);
  explainTurn(candidates);
  keepBestTurn(candidates);
  if (explains(effort)) {
    for (Candidate& candidate : candidates) {
      measureBody(candidate, panel, workshop.crossings);
    }
    giveReasons(candidates, panel, workshop, centre);
  }
  for (Candidate& candidate : candidates) {
    search.accepted.push_back(std::move(candidate.choice));
  }
  if (explains(effort)) {
    dropAccepted(search);
  }
  if (effort == Effort::Full) {
    nameTurns(search, workshop, hull);
    if (search.accepted.empty()) {
      askScales(search, workshop, hull, panel.name);
    }
  }
  if (!search.accepted.empty()) {
    search.largestScale = 1.0;
  }
  return search;
}

}  // namespace creaseline
