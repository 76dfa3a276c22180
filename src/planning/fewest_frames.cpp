// SPDX-License-Identifier: MIT
#include "planning/fewest_frames.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "planning/set_cover.h"

namespace creaseline {
namespace {

// Garments by frame.
using Uses = std::map<FrameId, int>;

void addUses(Uses& uses, const Plan& plan, const std::vector<std::size_t>& notOf = {}) {
  for (const PlacementPlan& placement : plan.placements) {
    if (placement.frame && !std::binary_search(notOf.begin(), notOf.end(), placement.line)) {
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

std::string usesText(const Uses& uses, const Shop& shop) {
  std::vector<std::string> texts;
  for (const auto& [frame, garments] : uses) {
    texts.push_back(worded("{} for {}", nameOf(frame, shop),
                           counted(garments, toBeWorded("hooping"), toBeWorded("hoopings"))));
  }
  return fmt::format("{}", fmt::join(texts, ", "));
}

}  // namespace

std::optional<Finding> fewestFrames(const Order& order, const Shop& shop, const Plan& planned,
                                    const std::function<Plan(const Order&)>& plan) {
  Uses uses;
  addUses(uses, planned);
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
  const std::vector<std::size_t> lines = linesWithout(planned, change.frames);
  Finding finding;
  finding.severity = Severity::Note;
  finding.code = FindingCode::FewerFramesWouldDo;
  finding.line = lines.front();
  finding.wholeOrder = true;
  finding.place = worded("the whole order");
  Order changed = order;
  changed.frames = change.frames;
  changed.lines.clear();
  for (const std::size_t line : lines) {
    changed.lines.push_back(order.lines[line]);
  }
  const Plan again = plan(changed);
  if (!noWorse(again, lines, planned)) {
    return std::nullopt;
  }
  Uses then;
  addUses(then, planned, lines);
  addUses(then, again);
  const std::string inFrames =
      counted(static_cast<int>(uses.size()), toBeWorded("frame"), toBeWorded("frames"));
  finding.text =
      cover->proved()
          ? worded("planned in {}; {} would serve every placement as well, and no fewer would",
                   inFrames, cover->chosen.size())
          : worded(
                "planned in {}; {} would serve every placement as well, and no fewer than {} "
                "can",
                inFrames, cover->chosen.size(), cover->atLeast);
  finding.remedies.push_back({change,
                              worded("sew the whole order in {}", listed(change.frames, shop)),
                              usesText(then, shop), Length()});
  return finding;
}

}  // namespace creaseline
