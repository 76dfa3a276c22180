// SPDX-License-Identifier: MIT
#include "creaseline/planning/planner.h"
#include "base/worded.h"

#include <fmt/format.h>
#include <algorithm>
#include <exception>
#include <map>
#include <mutex>
#include <thread>

#include "creaseline/base/error.h"
#include "planning/fewest_frames.h"
#include "planning/fewest_sizes_of_lines.h"
#include "planning/findings.h"
#include "planning/order_index.h"
#include "planning/overlapping_places.h"
#include "planning/placement.h"
#include "planning/questions.h"

namespace creaseline {
namespace {

std::shared_ptr<const GarmentShape> buildGarment(const Blank& blank, const OrderLine& line,
                                                 const SizeName& size, const Workshop& workshop) {
  const GarmentKind* kind = workshop.rules->kind(blank.kind);
  if (kind == nullptr) {
    refuseLine(line, worded("garment kind \"{}\"", blank.kind.text()),
               worded("a kind that the rules describe"));
  }
  const ChartSize* charted = blank.chart.find(size);
  if (charted == nullptr) {
    refuseLine(line, worded("size \"{}\"", size.text()), worded("a size of the blank's chart"));
  }
  ChartSize resolved = *charted;
  resolved.band = resolvedBand(*charted, kind->form, workshop.figures);
  return std::make_shared<const GarmentShape>(
      garmentShape(*kind, resolved, blank.id.text(), worded("size {}", size.text())));
}

void buildGarments(OrderIndex& catalogue, const Order& order, const Workshop& workshop) {
  for (const OrderLine& line : order.lines) {
    const Blank& blank = blankOf(line, catalogue);
    for (const SizeQuantity& entry : line.sizes) {
      auto& garment = catalogue.garments[{line.blank, entry.size}];
      if (!garment) {
        garment = buildGarment(blank, line, entry.size, workshop);
      }
    }
  }
}

PlacementRequest makeRequest(const Order& order, const OrderPlace& at, const OrderPlacement& asked,
                             const SizeQuantity& entry, const OrderIndex& catalogue) {
  const OrderLine& line = order.lines[at.line];
  PlacementRequest request;
  request.lineIndex = at.line;
  request.placementIndex = at.placement;
  request.line = &line;
  request.blank = &blankOf(line, catalogue);
  request.placement = asked;
  request.design = &designOf(line, request.placement.design, catalogue);
  request.size = entry.size;
  request.quantity = entry.quantity;
  request.garment = catalogue.garments.at({line.blank, entry.size});
  return request;
}

// The shop's frames as the order names them.
Workshop workshopOf(const Order& order, const Shop& shop, const Rules& rules) {
  for (const FrameId& frame : order.frames) {
    if (shop.frame(frame) == nullptr) {
      throw InputError({"order", "frames", worded("the frame \"{}\"", frame.text()),
                        worded("a frame of the shop, or none named, for any")});
    }
  }
  const Workshop workshop = prepareWorkshop(shop, rules);
  return order.frames.empty() ? workshop : withFrames(workshop, order.frames);
}

void run(Task& task, const Order& order, const OrderIndex& catalogue, const Workshop& shared,
         const PlanOptions& options) {
  const OrderPlacement& asked = order.lines[task.at.line].placements[task.at.placement];
  const Workshop workshop = withFrameTurn(shared, asked.frameTurn);
  std::vector<Observed> sizes;
  for (const SizeQuantity& entry : order.lines[task.at.line].sizes) {
    Observed size{makeRequest(order, task.at, asked, entry, catalogue), {}};
    Answer answer = answerInParts(size.request, workshop);
    size.observations = observe(size.request, answer, workshop);
    std::vector<PlacementPlan> hoopings = std::move(answer).takeHoopings();
    for (PlacementPlan& plan : hoopings) {
      plan.worst = worstOf(size.observations);
      task.plans.push_back(std::move(plan));
    }
    sizes.push_back(std::move(size));
  }
  task.findings = gatherFindings(sizes, workshop, options.checkRemedies);
  if (options.checkRemedies && (sizes.size() > 1 || task.sharesDesign)) {
    std::vector<ServedSize> served = servedSizes(sizes, workshop);
    if (auto range = fewestDesignSizes(served, workshop)) {
      task.findings.push_back(std::move(*range));
    }
    if (task.sharesDesign) {
      task.served = std::move(served);
    }
  }
}

// Shares the tasks out; answers do not depend on who does which. The first exception wins.
template <class Unit>
void runAll(std::vector<Unit>& tasks, const std::function<void(Unit&)>& work,
            const PlanOptions& options) {
  std::atomic<std::size_t> next{0};
  std::atomic<bool> failed{false};
  std::exception_ptr failure;
  std::mutex failureMutex;
  const auto cancelled = [&options] { return options.cancel != nullptr && *options.cancel; };
  const auto loop = [&](bool reports) {
    try {
      for (std::size_t i = next++; i < tasks.size() && !failed && !cancelled(); i = next++) {
        work(tasks[i]);
        if (reports && options.progress) {
          options.progress(static_cast<double>(i + 1) / static_cast<double>(tasks.size()));
        }
      }
    } catch (...) {
      const std::lock_guard lock(failureMutex);
      if (!failure) {
        failure = std::current_exception();
      }
      failed = true;
    }
  };
  const unsigned wanted =
      options.threads != 0 ? options.threads : std::max(1U, std::thread::hardware_concurrency());
  std::vector<std::jthread> others;
  const std::size_t helpers = std::min<std::size_t>(wanted - 1, tasks.size() / 8);
  for (std::size_t i = 0; i < helpers; ++i) {
    others.emplace_back(loop, false);
  }
  loop(true);
  others.clear();
  if (failure) {
    std::rethrow_exception(failure);
  }
  if (cancelled()) {
    throw Cancelled{};
  }
}

// Between frames that need the same backing, the one the order uses more saves a change.
void preferCommonFrames(std::vector<PlacementPlan>& plans, const Shop& shop) {
  std::map<FrameId, int> uses;
  for (const PlacementPlan& plan : plans) {
    if (plan.frame) {
      uses[plan.frame->frame] += plan.quantity;
    }
  }
  for (PlacementPlan& plan : plans) {
    if (!plan.frame || plan.alternatives.empty()) {
      continue;
    }
    FrameChoice& other = plan.alternatives.front();
    const Frame* used = shop.frame(plan.frame->frame);
    const Frame* next = shop.frame(other.frame);
    const bool equal = used != nullptr && next != nullptr && used->body == next->body &&
                       used->kind == next->kind && other.turn == plan.frame->turn &&
                       other.slack.least() >= plan.frame->slack.least();
    if (equal && uses[other.frame] > uses[plan.frame->frame]) {
      std::swap(*plan.frame, other);
      plan.frame->reasons.push_back(
          {worded("equal to another frame here and used more often in this order"),
           {},
           worded("ranking of frames"),
           false,
           {},
           worded("naming frames in the order")});
    }
  }
}

PlanCounts count(const Plan& plan, const Order& order) {
  PlanCounts counts;
  counts.garments = order.garments();
  for (const PlacementPlan& placement : plan.placements) {
    counts.placements += placement.quantity;
  }
  for (const Finding& finding : plan.findings) {
    switch (finding.severity) {
      case Severity::Stop:
        ++counts.stops;
        break;
      case Severity::Watch:
        ++counts.watches;
        break;
      case Severity::Note:
        ++counts.notes;
        break;
    }
  }
  return counts;
}

}  // namespace

Plan planOrder(const Order& order, const Shop& shop, const Rules& rules,
               const PlanOptions& options) {
  const Workshop workshop = workshopOf(order, shop, rules);
  OrderIndex catalogue = indexed(order);
  buildGarments(catalogue, order, workshop);
  std::vector<Task> tasks;
  for (std::size_t line = 0; line < order.lines.size(); ++line) {
    for (std::size_t placement = 0; placement < order.lines[line].placements.size(); ++placement) {
      tasks.emplace_back().at = {line, placement};
    }
  }
  Questions questions = distinctQuestions(tasks, order);
  std::vector<SharedDesign> shared;
  if (options.checkRemedies) {
    shared = sharedDesigns(questions, order, catalogue);
    for (const SharedDesign& design : shared) {
      for (const std::size_t question : design.questions) {
        questions.asked[question].sharesDesign = true;
      }
    }
  }
  runAll<Task>(
      questions.asked, [&](Task& task) { run(task, order, catalogue, workshop, options); },
      options);
  handOut(questions, tasks, order, catalogue, rules);

  Plan plan;
  plan.orderId = order.id;
  for (Task& task : tasks) {
    std::move(task.plans.begin(), task.plans.end(), std::back_inserter(plan.placements));
    std::move(task.findings.begin(), task.findings.end(), std::back_inserter(plan.findings));
  }
  for (Finding& overlapping : overlappingPlaces(plan.placements, order, shop, rules)) {
    plan.findings.push_back(std::move(overlapping));
  }
  preferCommonFrames(plan.placements, shop);
  sortFindings(plan.findings);
  if (options.checkRemedies) {
    PlanOptions quiet = options;
    quiet.checkRemedies = false;
    quiet.progress = nullptr;
    runAll<SharedDesign>(
        shared,
        [&](SharedDesign& design) {
          design.finding = fewestSizesOfLines(design, questions, order, workshop);
        },
        quiet);
    for (SharedDesign& design : shared) {
      replaceByWholeOrder(plan.findings, design, questions);
    }
    auto fewer = fewestFrames(order, shop, plan, [&](const Order& changed) {
      return planOrder(changed, shop, rules, quiet);
    });
    if (fewer) {
      plan.findings.push_back(std::move(*fewer));
    }
  }
  sortFindings(plan.findings);
  plan.counts = count(plan, order);
  return plan;
}

struct LivePlanner::Prepared {
  const Order& order;
  const Workshop workshop;
  OrderIndex catalogue;

  PlacementRequest request(const LivePlanner::Spot& spot, const OrderPlacement& asked);
  [[nodiscard]] PlacementPlan answered(const PlacementRequest& request) const;
};

PlacementRequest LivePlanner::Prepared::request(const Spot& spot, const OrderPlacement& asked) {
  const OrderLine& ordered = order.lines.at(spot.line);
  const SizeQuantity* entry = ordered.find(spot.size);
  if (entry == nullptr) {
    refuseLine(ordered, worded("size \"{}\"", spot.size.text()),
               worded("a size that this line orders"));
  }
  auto& garment = catalogue.garments[{ordered.blank, spot.size}];
  if (!garment) {
    garment = buildGarment(blankOf(ordered, catalogue), ordered, spot.size, workshop);
  }
  return makeRequest(order, {spot.line, spot.placement}, asked, *entry, catalogue);
}

PlacementPlan LivePlanner::Prepared::answered(const PlacementRequest& request) const {
  const Workshop turned = withFrameTurn(workshop, request.placement.frameTurn);
  Answer answer = answerInParts(request, turned, Effort::Live);
  const Severity worst = worstOf(observe(request, answer, turned));
  PlacementPlan plan = std::move(answer).takeHoopings().front();
  plan.worst = worst;
  return plan;
}

LivePlanner::LivePlanner(const Order& order, const Shop& shop, const Rules& rules)
    : prepared_(new Prepared{order, workshopOf(order, shop, rules), indexed(order)}) {
}
LivePlanner::~LivePlanner() = default;
LivePlanner::LivePlanner(LivePlanner&&) noexcept = default;
LivePlanner& LivePlanner::operator=(LivePlanner&&) noexcept = default;

PlacementPlan LivePlanner::plan(const Spot& spot, const OrderPlacement& asked) {
  return prepared_->answered(prepared_->request(spot, asked));
}

LivePlanner::Laid LivePlanner::layAt(const Spot& spot, const OrderPlacement& asked, Point centre) {
  PlacementRequest request = prepared_->request(spot, asked);
  const Workshop& workshop = prepared_->workshop;
  Point byRule = centre;
  if (const PlacementRule* rule = findPlacementRule(request, workshop)) {
    const auto ruled = [&] { return place(request, workshop, Effort::AnyFrame).placed.centre; };
    request.placement.moveDown = request.placement.moveRight = {};
    byRule.y = ruled().y;
    request.placement.moveDown =
        Length::fromMm(landmarkDirection(rule->from) * (centre.y - byRule.y));
    // How far sideways the rule says may depend on the height.
    byRule.x = ruled().x;
    request.placement.moveRight = Length::fromMm(centre.x - byRule.x);
  }
  return {request.placement, byRule};
}

namespace {

// What is laid flat before it is planned. Throws InputError where the garment cannot be drawn.
class FlatLay {
 public:
  FlatLay(const Order& order, std::size_t line, const SizeName& size, const Shop& shop,
          const Rules& rules)
      : order_(order),
        line_(line),
        frameless_(withoutFrames(shop)),
        workshop_(prepareWorkshop(frameless_, rules)),
        catalogue_(indexed(order)) {
    const OrderLine& ordered = order.lines.at(line);
    const SizeQuantity* entry = ordered.find(size);
    const auto garment = buildGarment(blankOf(ordered, catalogue_), ordered, size, workshop_);
    catalogue_.garments[{ordered.blank, size}] = garment;
    bare_.line = line;
    bare_.size = size;
    bare_.band = garment->band;
    bare_.quantity = entry == nullptr ? 0 : entry->quantity;
    bare_.garment = garment;
    bare_.panel = garment->panels.begin()->first;
  }

  [[nodiscard]] const PlacementPlan& bare() const { return bare_; }
  [[nodiscard]] PlacementPlan placed(std::size_t placement) const {
    return place(makeRequest(order_, {line_, placement}, order_.lines[line_].placements[placement],
                             {bare_.size, bare_.quantity}, catalogue_),
                 workshop_);
  }

 private:
  // No frame is asked, and preparing them is most of the work.
  static Shop withoutFrames(Shop shop) {
    shop.frames.clear();
    return shop;
  }

  const Order& order_;
  std::size_t line_;
  Shop frameless_;
  Workshop workshop_;
  OrderIndex catalogue_;
  PlacementPlan bare_;
};

}  // namespace

std::optional<PlacementPlan> layFlat(const Order& order, std::size_t line,
                                     std::optional<std::size_t> placement, const SizeName& size,
                                     const Shop& shop, const Rules& rules) {
  if (line >= order.lines.size()) {
    return std::nullopt;
  }
  std::optional<PlacementPlan> bare;
  try {
    const FlatLay lay(order, line, size, shop, rules);
    bare = lay.bare();
    if (placement && *placement < order.lines[line].placements.size()) {
      PlacementPlan laid = lay.placed(*placement);
      if (laid.garment->panel(laid.panel) != nullptr) {
        return laid;
      }
    }
  } catch (const InputError&) {
    // What is wrong is said by whoever plans the order; the bare garment may still be drawn.
  }
  return bare;
}

std::optional<PlacementPlan> layPanelFlat(const Order& order, std::size_t line, PanelName panel,
                                          const SizeName& size, const Shop& shop,
                                          const Rules& rules) {
  if (line >= order.lines.size()) {
    return std::nullopt;
  }
  try {
    PlacementPlan bare = FlatLay(order, line, size, shop, rules).bare();
    bare.panel = panel;
    return bare.garment->panel(panel) == nullptr ? std::nullopt : std::optional(std::move(bare));
  } catch (const InputError&) {
    return std::nullopt;
  }
}

PlacementPlan planPlacement(const Order& order, std::size_t line, std::size_t placement,
                            const SizeName& size, const Shop& shop, const Rules& rules) {
  return LivePlanner(order, shop, rules)
      .plan({line, placement, size}, order.lines.at(line).placements.at(placement));
}

}  // namespace creaseline
