// SPDX-License-Identifier: MIT
#include "planning/hooping_observer.h"

#include <algorithm>

#include "base/worded.h"
#include "planning/finding_reasons.h"
#include "planning/frame_search.h"
#include "planning/observer.h"

namespace creaseline {
namespace {

class HoopingObserver : Observer {
 public:
  using Observer::Observer;

  std::vector<Observation> hooping(const std::string& notSplit) {
    if (plan_.frame) {
      chosenFrame();
    } else {
      noFrame(notSplit);
    }
    supplies();
    return take();
  }

 private:
  [[nodiscard]] std::string nameOfFrame(const FrameId& id) const {
    const Frame* frame = workshop_.shop->frame(id);
    return frame == nullptr ? id.text() : frame->name;
  }

  static bool byGarment(const FrameRejection& rejection) {
    return rejection.test == FrameTest::ClearOfKeepOut || rejection.test == FrameTest::OnThePanel ||
           rejection.test == FrameTest::HeldByCloth || rejection.test == FrameTest::PassesOpening ||
           rejection.test == FrameTest::ArmReachesIn;
  }

  // What the number of millimetres that a rejection names is.
  static std::string_view shortOrMeets(const FrameRejection& rejection) {
    if (rejection.test == FrameTest::ArmReachesIn) {
      return {};  // open or closed: there is nothing to measure
    }
    return rejection.test == FrameTest::HeldByCloth ? toBeWorded("short by")
                                                    : toBeWorded("meets by");
  }

  // The least miss among rejections that satisfy the predicate; null if none does.
  template <class Predicate>
  [[nodiscard]] const FrameRejection* nearestMiss(Predicate predicate) const {
    const FrameRejection* nearest = nullptr;
    for (const FrameRejection& rejection : plan_.rejections) {
      if (predicate(rejection) && (nearest == nullptr || rejection.missing < nearest->missing)) {
        nearest = &rejection;
      }
    }
    return nearest;
  }

  // Ends the sentence on a design that is too large with why it cannot be sewn in parts.
  void noFrame(const std::string& notSplit) {
    if (const FrameRejection* meets = nearestMiss(byGarment)) {
      const std::string text =
          worded("no frame that holds the design can sit here; nearest is {}: {}",
                 nameOfFrame(meets->frame), meets->what);
      const Opening* pocket =
          workshop_.rules->kind(request_.blank->kind)->pocketOpening(plan_.panel, plan_.location);
      say(Severity::Stop, FindingCode::FrameMeetsGarment, {},
          pocket == nullptr || pocket->otherwise.empty()
              ? text
              : worded("{}; what else can be done: {}", text, pocket->otherwise),
          shortOrMeets(*meets), meets->missing);
      because(rejectionReason(*meets, plan_, workshop_));
      return;
    }
    const FrameRejection* small =
        nearestMiss([](const FrameRejection& r) { return r.test == FrameTest::HoldsDesign; });
    if (small == nullptr) {
      say(Severity::Stop, FindingCode::NoFrameSuits, {},
          worded("the shop uses none of its frames on a {}", panelPhrase(plan_.panel)));
      because(framesReason(worded("a frame may name the parts of garments that it is used on"),
                           worded("another frame, or other parts named for one")));
      return;
    }
    const std::string text = worded(
        "too large for every frame; nearest is {}: {}; the largest that a frame holds is "
        "{} % of this size",
        nameOfFrame(small->frame), small->what, static_cast<int>(plan_.largestScale * 100.0));
    say(Severity::Stop, FindingCode::TooLargeForEveryFrame, {},
        notSplit.empty() ? text : worded("{}; not in several hoopings either: {}", text, notSplit),
        toBeWorded("too large by"), small->missing);
    because(windowReason(nameOfFrame(small->frame)));
  }

  void chosenFrame() {
    const FrameChoice& choice = *plan_.frame;
    if (plan_.onlyTurned) {
      say(Severity::Watch, FindingCode::FitsOnlyTurned, {},
          worded("fits only with the frame turned by {} on the garment: turn the design in "
                 "the machine as well",
                 formatAngle(choice.turn)));
      because(framesReason(worded("not turned, no frame that can sit here holds the design"),
                           worded("another frame or a smaller design")));
    }
    roomForError(choice);
    unusableSmallerFrame(choice);
  }

  void roomForError(const FrameChoice& choice) {
    const HoopingError& error = workshop_.figures.hoopingError;
    if (choice.bearsError) {
      return;
    }
    const std::string text = littleRoomText(choice, nameOfFrame(choice.frame), error, units_);
    const Length missing =
        std::max({error.sideways - std::min(choice.slack.left, choice.slack.right),
                  error.along - std::min(choice.slack.up, choice.slack.down), Length()});
    const bool hopeless = !slackCovers(choice.slack, workshop_.figures.stopError);
    say(hopeless ? Severity::Stop : Severity::Watch, FindingCode::LittleRoom, {},
        hopeless ? worded("{}: too little even for {:.0f} % of it", text,
                          workshop_.figures.stopShare * 100.0)
                 : text,
        // Each error alone may be made good and only all together not: nothing is short then.
        missing > Length() ? toBeWorded("short by") : std::string_view(), missing);
    because(errorReason(error));
  }

  // A smaller frame would hold the design but cannot sit here: worth knowing before somebody
  // takes it from the rack.
  void unusableSmallerFrame(const FrameChoice& choice) {
    const Frame* chosen = workshop_.shop->frame(choice.frame);
    const FrameRejection* meets = nearestMiss([this, chosen](const FrameRejection& rejection) {
      const Frame* frame = workshop_.shop->frame(rejection.frame);
      return byGarment(rejection) && frame != nullptr && chosen != nullptr &&
             frame->body.area() <= chosen->body.area();
    });
    if (meets != nullptr) {
      say(Severity::Note, FindingCode::FrameMeetsGarment, meets->frame.text(),
          worded("{} would hold the design, but {}; {} is used", nameOfFrame(meets->frame),
                 meets->what, chosen->name),
          shortOrMeets(*meets), meets->missing);
      because(rejectionReason(*meets, plan_, workshop_));
    }
  }

  void supplies() {
    const BackingChoice& backing = plan_.backing;
    if (backing.stock.empty()) {
      say(Severity::Watch, FindingCode::BackingNotInStock,
          std::string(nameOf(backing.kind)) + exactText(backing.leastWeight),
          backing.cutWidth > Length()
              ? worded("not in stock: {}, in pieces of {}", backingPhrase(backing, units_),
                       sizePhrase(backing.cutWidth, backing.cutHeight, units_))
              : worded("not in stock: {}", backingPhrase(backing, units_)));
      because(backingReason(plan_, workshop_, &BackingRule::kind));
    }
    const bool listed = !workshop_.needles.empty();
    const bool needle = std::any_of(
        workshop_.needles.begin(), workshop_.needles.end(), [&backing](const NeedleStock& stock) {
          return stock.size == backing.needleSize && stock.point == backing.needlePoint;
        });
    if (listed && !needle) {
      say(Severity::Watch, FindingCode::NeedleNotInStock, needlePhrase(backing),
          worded("not in stock: needle {}", needlePhrase(backing)));
      because(backingReason(plan_, workshop_, &BackingRule::needleSize));
    }
    if (backing.topping && !workshop_.toppingFilm) {
      say(Severity::Watch, FindingCode::ToppingNotInStock, {},
          worded("not in stock: topping film"));
      because(backingReason(plan_, workshop_, &BackingRule::topping));
    }
  }
};

}  // namespace

std::vector<Observation> observeHooping(const PlacementRequest& request, const PlacementPlan& plan,
                                        const std::string& notSplit, const Workshop& workshop) {
  return HoopingObserver(request, plan, workshop).hooping(notSplit);
}

}  // namespace creaseline
