// SPDX-License-Identifier: MIT
#include "planning/fewest_frames.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "planning/finding_reasons.h"
#include "planning/set_cover.h"

namespace creaseline {
namespace {

// Garments by frame.
using Uses = std::map<FrameId, int>;

// What stops is not sewn as planned, so no frame serves it, though one may be the nearest.
bool isSewn(const PlacementPlan& placement) {
  return placement.frame && !placement.stops();
}

void addUses(Uses& uses, const Plan& plan, const std::vector<std::size_t>& notOf = {}) {
  for (const PlacementPlan& placement : plan.placements) {
    if (isSewn(placement) && !std::binary_search(notOf.begin(), notOf.end(), placement.line)) {
      uses[placement.frame->frame] += placement.quantity;
    }
  }
}

// The most used first: between equal covers these are preferred.
std::vector<FrameId> byUse(const Uses& uses, const Shop& shop) {
  std::vector<FrameId> frames;
  for (const Frame& frame : shop.frames) {
    frames.push_back(frame.id);
  }
  const auto garments = [&uses](const FrameId& id) {
    const auto found = uses.find(id);
    return found == uses.end() ? 0 : found->second;
  };
  std::stable_sort(frames.begin(), frames.end(),
                   [&](const FrameId& a, const FrameId& b) { return garments(a) > garments(b); });
  return frames;
}

std::vector<std::size_t> framesServing(const PlacementPlan& plan,
                                       const std::map<FrameId, std::size_t>& index) {
  const FrameChoice& chosen = *plan.frame;
  std::vector<std::size_t> serving{index.at(chosen.frame)};
  for (const FrameChoice& other : plan.alternatives) {
    if (other.bearsError || (!chosen.bearsError && other.slack.least() >= chosen.slack.least())) {
      serving.push_back(index.at(other.frame));
    }
  }
  return serving;
}

// The lines that a change of frames touches. Lines do not depend on each other, so the rest stay as
// they are planned.
std::vector<std::size_t> linesWithout(const Plan& planned, const std::vector<FrameId>& kept) {
  std::vector<std::size_t> lines;
  for (const PlacementPlan& placement : planned.placements) {
    const bool stays = !placement.frame ||
                       std::find(kept.begin(), kept.end(), placement.frame->frame) != kept.end();
    if (!stays && (lines.empty() || lines.back() != placement.line)) {
      lines.push_back(placement.line);
    }
  }
  return lines;
}

// `lines[i]` is line i of the plan now in the plan before.
bool noWorse(const Plan& now, const std::vector<std::size_t>& lines, const Plan& before) {
  std::map<std::tuple<FindingCode, std::size_t, std::size_t>, Severity> known;
  for (const Finding& finding : before.findings) {  // the worst of each first
    known.try_emplace({finding.code, finding.line, finding.placement}, finding.severity);
  }
  return std::all_of(now.findings.begin(), now.findings.end(), [&](const Finding& finding) {
    const auto same = known.find({finding.code, lines[finding.line], finding.placement});
    return finding.severity == Severity::Note ||
           (same != known.end() && same->second <= finding.severity);
  });
}

std::string nameOf(const FrameId& id, const Shop& shop) {
  const Frame* frame = shop.frame(id);
  return frame == nullptr ? id.text() : frame->name;
}

std::string listed(const std::vector<FrameId>& frames, const Shop& shop) {
  std::string list;
  for (const FrameId& id : frames) {
    list += (list.empty() ? "" : ", ") + nameOf(id, shop);
  }
  return list;
}

// How many hoopings there are, and how many of them can be made ready while the machine sews: that
// takes a second frame alike, since the first is on the machine.
struct Ahead {
  int hoopings = 0;
  int ahead = 0;
};

bool hasSecond(const FrameId& id, const Shop& shop) {
  const Frame* frame = shop.frame(id);
  return frame != nullptr && frame->quantity > 1;
}

Ahead aheadOf(const Uses& uses, const Shop& shop) {
  Ahead sum;
  for (const auto& [frame, hoopings] : uses) {
    sum.hoopings += hoopings;
    sum.ahead += hasSecond(frame, shop) ? hoopings : 0;
  }
  return sum;
}

std::string countOfHoopings(int count) {
  return counted(count, toBeWorded("hooping"), toBeWorded("hoopings"));
}

std::string usesText(const Uses& uses, const Shop& shop) {
  std::vector<std::string> texts;
  for (const auto& [frame, garments] : uses) {
    texts.push_back(worded("{} ({} on hand) for {}", nameOf(frame, shop),
                           shop.frame(frame)->quantity, countOfHoopings(garments)));
  }
  const Ahead sum = aheadOf(uses, shop);
  return worded("{}; {} of {} can be hooped ahead while the machine sews", fmt::join(texts, ", "),
                sum.ahead, countOfHoopings(sum.hoopings));
}

// Looks for covers, and plans the order in them.
class Fewer {
 public:
  Fewer(const Order& order, const Shop& shop, const Plan& planned,
        const std::function<Plan(const Order&)>& plan)
      : order_(order), shop_(shop), planned_(planned), plan_(plan) {
    addUses(uses_, planned);
    frames_ = byUse(uses_, shop);
    for (std::size_t i = 0; i < frames_.size(); ++i) {
      index_.emplace(frames_[i], i);
    }
  }

  std::optional<Finding> finding() {
    const auto fewest = cover(false);
    if (!fewest || fewest->chosen.size() >= uses_.size()) {
      return std::nullopt;
    }
    // First what costs no waiting, then what needs fewer still.
    Finding finding;
    const auto keeping = cover(true);
    if (keeping && keeping->chosen.size() < uses_.size()) {
      offer(finding, *keeping);
    }
    if (finding.remedies.empty() || fewest->chosen.size() < keeping->chosen.size()) {
      offer(finding, *fewest);
    }
    if (finding.remedies.empty()) {
      return std::nullopt;
    }
    finding.severity = Severity::Note;
    finding.code = FindingCode::FewerFramesWouldDo;
    finding.wholeOrder = true;
    finding.place = worded("the whole order");
    finding.reason =
        framesReason(worded("each placement may lie in every frame that bears the error as "
                            "well as its own does"),
                     worded("the frames named in the order or in the shop"));
    const Ahead now = aheadOf(uses_, shop_);
    const std::string planned =
        worded("planned in {}, {} of {} can be hooped ahead on a second frame alike",
               counted(static_cast<int>(uses_.size()), toBeWorded("frame"), toBeWorded("frames")),
               now.ahead, countOfHoopings(now.hoopings));
    finding.text =
        fewest->proved()
            ? worded("{}; {} would serve every placement as well, and no fewer would", planned,
                     fewest->chosen.size())
            : worded("{}; {} would serve every placement as well, and no fewer than {} can",
                     planned, fewest->chosen.size(), fewest->atLeast);
    const auto stopped = std::count_if(planned_.placements.begin(), planned_.placements.end(),
                                       [](const PlacementPlan& plan) { return plan.stops(); });
    if (stopped > 0) {
      finding.text =
          worded("{}; left out because of a stop: {}", finding.text,
                 counted(static_cast<int>(stopped), toBeWorded("hooping"), toBeWorded("hoopings")));
    }
    return finding;
  }

 private:
  // The fewest frames; with `keepAhead` such that what can be hooped ahead as planned still can.
  [[nodiscard]] std::optional<SetCover> cover(bool keepAhead) const {
    std::set<std::vector<std::size_t>> distinct;
    for (const PlacementPlan& placement : planned_.placements) {
      if (!isSewn(placement)) {
        continue;
      }
      std::vector<std::size_t> serving = framesServing(placement, index_);
      if (keepAhead && hasSecond(placement.frame->frame, shop_)) {
        std::erase_if(serving,
                      [this](std::size_t frame) { return !hasSecond(frames_[frame], shop_); });
      }
      distinct.insert(std::move(serving));
    }
    return fewestSets({distinct.begin(), distinct.end()});
  }

  void offer(Finding& finding, const SetCover& cover) const {
    FramesChange change;
    for (const std::size_t chosen : cover.chosen) {
      change.frames.push_back(frames_[chosen]);
    }
    const std::vector<std::size_t> lines = linesWithout(planned_, change.frames);
    Order changed = order_;
    changed.frames = change.frames;
    changed.lines.clear();
    for (const std::size_t line : lines) {
      changed.lines.push_back(order_.lines[line]);
    }
    const Plan again = plan_(changed);
    if (!noWorse(again, lines, planned_)) {
      return;
    }
    Uses then;
    addUses(then, planned_, lines);
    addUses(then, again);
    if (finding.remedies.empty()) {
      finding.line = lines.front();
    }
    std::string text = worded("sew the whole order in {}", listed(change.frames, shop_));
    finding.remedies.push_back(
        {std::move(change), std::move(text), usesText(then, shop_), Length()});
  }

  const Order& order_;
  const Shop& shop_;
  const Plan& planned_;
  const std::function<Plan(const Order&)>& plan_;
  Uses uses_;
  std::vector<FrameId> frames_;
  std::map<FrameId, std::size_t> index_;
};

}  // namespace

std::optional<Finding> fewestFrames(const Order& order, const Shop& shop, const Plan& planned,
                                    const std::function<Plan(const Order&)>& plan) {
  return Fewer(order, shop, planned, plan).finding();
}

}  // namespace creaseline
