// SPDX-License-Identifier: MIT
#include "planning/fewest_frames.h"

#include <fmt/format.h>
#include <algorithm>
#include <map>
#include <set>

#include "creaseline/planning/change.h"
#include "creaseline/planning/counting.h"
#include "planning/set_cover.h"

namespace creaseline {
namespace {

// Garments by frame.
using Uses = std::map<FrameId, int>;

Uses usesOf(const Plan& plan) {
  Uses uses;
  for (const PlacementPlan& placement : plan.placements) {
    if (placement.frame) {
      uses[placement.frame->frame] += placement.quantity;
    }
  }
  return uses;
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
  std::stable_sort(frames.begin(), frames.end(), [&](const FrameId& a, const FrameId& b) {
    return garments(a) > garments(b);
  });
  return frames;
}

std::vector<std::size_t> framesServing(const PlacementPlan& plan,
                                       const std::map<FrameId, std::size_t>& index) {
  const FrameChoice& chosen = *plan.frame;
  std::vector<std::size_t> serving{index.at(chosen.frame)};
  for (const FrameChoice& other : plan.alternatives) {
    if (other.bearsError ||
        (!chosen.bearsError && other.slack.least() >= chosen.slack.least())) {
      serving.push_back(index.at(other.frame));
    }
  }
  return serving;
}

bool noWorse(const Plan& now, const Plan& before) {
  return std::all_of(now.findings.begin(), now.findings.end(), [&before](const Finding& finding) {
    return finding.severity == Severity::Note ||
           std::any_of(before.findings.begin(), before.findings.end(), [&](const Finding& known) {
             return known.code == finding.code && known.line == finding.line &&
                    known.placement == finding.placement && known.severity <= finding.severity;
           });
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

std::string usesText(const Uses& uses, const Shop& shop) {
  std::string text;
  for (const auto& [frame, garments] : uses) {
    text += fmt::format("{}{} for {}", text.empty() ? "" : ", ", nameOf(frame, shop),
                        counted(garments, "hooping", "hoopings"));
  }
  return text;
}

// Where a frame that is no longer used is planned first.
const PlacementPlan& firstChanged(const Plan& plan, const std::vector<FrameId>& kept) {
  return *std::find_if(plan.placements.begin(), plan.placements.end(),
                       [&kept](const PlacementPlan& placement) {
                         return placement.frame && std::find(kept.begin(), kept.end(),
                                                             placement.frame->frame) == kept.end();
                       });
}

}  // namespace

std::optional<Finding> fewestFrames(const Order& order, const Shop& shop, const Plan& planned,
                                    const std::function<Plan(const Order&)>& plan) {
  const Uses uses = usesOf(planned);
  const std::vector<FrameId> frames = byUse(uses, shop);
  std::map<FrameId, std::size_t> index;
  for (std::size_t i = 0; i < frames.size(); ++i) {
    index.emplace(frames[i], i);
  }
  std::set<std::vector<std::size_t>> distinct;
  for (const PlacementPlan& placement : planned.placements) {
    if (placement.frame) {
      distinct.insert(framesServing(placement, index));
    }
  }
  const auto cover = fewestSets({distinct.begin(), distinct.end()});
  if (!cover || cover->chosen.size() >= uses.size()) {
    return std::nullopt;
  }
  FramesChange change;
  for (const std::size_t chosen : cover->chosen) {
    change.frames.push_back(frames[chosen]);
  }
  const PlacementPlan& first = firstChanged(planned, change.frames);
  Finding finding;
  finding.severity = Severity::Note;
  finding.code = FindingCode::FewerFramesWouldDo;
  finding.line = first.line;
  finding.placement = first.placement;
  finding.wholeOrder = true;
  finding.place = "the whole order";
  const std::optional<Order> changed = orderWith(order, finding, change);
  if (!changed) {
    return std::nullopt;
  }
  const Plan again = plan(*changed);
  if (!noWorse(again, planned)) {
    return std::nullopt;
  }
  finding.text = fmt::format(
      "planned in {}; {} would serve every placement as well, {}",
      counted(static_cast<int>(uses.size()), "frame", "frames"), cover->chosen.size(),
      cover->proved() ? "and no fewer would"
                      : fmt::format("and no fewer than {} can", cover->atLeast));
  finding.remedies.push_back({change,
                              fmt::format("sew the whole order in {}", listed(change.frames, shop)),
                              usesText(usesOf(again), shop), Length()});
  return finding;
}

}  // namespace creaseline
