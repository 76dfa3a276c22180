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
#include "planning/findings.h"
#include "planning/placement.h"

namespace creaseline {
namespace {

using GarmentCache = std::map<std::pair<BlankId, SizeName>, std::shared_ptr<const GarmentShape>>;

// Looks up what lines refer to; orders of thousands of lines must not search from the start.
struct OrderIndex {
  std::map<BlankId, const Blank*> blanks;
  std::map<DesignId, const Design*> designs;
  GarmentCache garments;
};

[[noreturn]] void refuse(const OrderLine& line, const std::string& found,
                         const std::string& expected) {
  throw InputError({"order", worded("line {}", line.id), found, expected});
}

std::shared_ptr<const GarmentShape> buildGarment(const Blank& blank, const OrderLine& line,
                                                 const SizeName& size, const Workshop& workshop) {
  const GarmentKind* kind = workshop.rules->kind(blank.kind);
  if (kind == nullptr) {
    refuse(line, worded("garment kind \"{}\"", blank.kind.text()),
           worded("a kind that the rules describe"));
  }
  const ChartSize* charted = blank.chart.find(size);
  if (charted == nullptr) {
    refuse(line, worded("size \"{}\"", size.text()), worded("a size of the blank's chart"));
  }
  ChartSize resolved = *charted;
  resolved.band = resolvedBand(*charted, kind->form, workshop.figures);
  return std::make_shared<const GarmentShape>(
      garmentShape(*kind, resolved, blank.id.text(), worded("size {}", size.text())));
}

OrderIndex indexed(const Order& order) {
  OrderIndex catalogue;
  for (const Blank& blank : order.blanks) {
    catalogue.blanks.emplace(blank.id, &blank);
  }
  for (const Design& design : order.designs) {
    catalogue.designs.emplace(design.id, &design);
  }
  return catalogue;
}

const Blank& blankOf(const OrderLine& line, const OrderIndex& catalogue) {
  const auto found = catalogue.blanks.find(line.blank);
  if (found == catalogue.blanks.end()) {
    refuse(line, worded("blank \"{}\"", line.blank.text()), worded("a blank of the order"));
  }
  return *found->second;
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

// Indices of a line and of one of its placements.
struct Place {
  std::size_t line = 0;
  std::size_t placement = 0;
};

PlacementRequest makeRequest(const Order& order, const Place& at, const OrderPlacement& asked,
                             const SizeQuantity& entry, const OrderIndex& catalogue) {
  const OrderLine& line = order.lines[at.line];
  PlacementRequest request;
  request.lineIndex = at.line;
  request.placementIndex = at.placement;
  request.line = &line;
  request.blank = &blankOf(line, catalogue);
  request.placement = asked;
  const auto design = catalogue.designs.find(request.placement.design);
  if (design == catalogue.designs.end()) {
    refuse(line, worded("design \"{}\"", request.placement.design.text()),
           worded("a design of the order"));
  }
  request.design = design->second;
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

// One line and location: the unit of work that threads share out.
struct Task {
  std::size_t line = 0;
  std::size_t placement = 0;
  std::vector<PlacementPlan> plans;
  std::vector<Finding> findings;
};

void run(Task& task, const Order& order, const OrderIndex& catalogue, const Workshop& shared,
         const PlanOptions& options) {
  const OrderPlacement& asked = order.lines[task.line].placements[task.placement];
  const Workshop workshop = withFrameTurn(shared, asked.frameTurn);
  std::vector<Observed> sizes;
  for (const SizeQuantity& entry : order.lines[task.line].sizes) {
    Observed size{makeRequest(order, {task.line, task.placement}, asked, entry, catalogue), {}};
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
}

// What the answer to a task depends on besides the shop and the rules. Names hold no control
// characters, so that none can end early.
std::string questionOf(const Task& task, const Order& order) {
  const OrderLine& line = order.lines[task.line];
  const OrderPlacement& placement = line.placements[task.placement];
  std::string question =
      fmt::format("{}\n{}\n{}\n{:a} {} {} {} {} {}", line.blank.text(), placement.location.text(),
                  placement.design.text(), placement.scale, placement.moveDown.nanometres(),
                  placement.moveRight.nanometres(), placement.turn.millidegrees(),
                  placement.frameTurn.millidegrees(), placement.split);
  for (const SizeQuantity& entry : line.sizes) {
    question += '\n' + entry.size.text();
  }
  return question;
}

// A team's order asks the same again and again: each question once, and who asks it.
struct Questions {
  std::vector<Task> asked;
  std::vector<std::size_t> of;  // by task, index into `asked`
};
Questions distinctQuestions(const std::vector<Task>& tasks, const Order& order) {
  Questions questions;
  std::map<std::string, std::size_t> known;
  for (const Task& task : tasks) {
    const auto [entry, fresh] = known.try_emplace(questionOf(task, order), questions.asked.size());
    if (fresh) {
      questions.asked.push_back(task);
    }
    questions.of.push_back(entry->second);
  }
  return questions;
}

// The answer that another place has got to the same question, made this one's.
void answerAs(Task& task, const Order& order, const OrderIndex& catalogue, const Rules& rules) {
  const OrderLine& line = order.lines[task.line];
  for (PlacementPlan& plan : task.plans) {
    plan.line = task.line;
    plan.placement = task.placement;
    plan.quantity =
        std::find_if(line.sizes.begin(), line.sizes.end(), [&plan](const SizeQuantity& entry) {
          return entry.size == plan.size;
        })->quantity;
  }
  for (Finding& finding : task.findings) {
    finding.line = task.line;
    finding.placement = task.placement;
    finding.place = findingPlace(line, blankOf(line, catalogue),
                                 line.placements[task.placement].location, finding.sizes, rules);
  }
}

// Gives every task the answer to its question; the last that asks it takes it without a copy.
void handOut(Questions& questions, std::vector<Task>& tasks, const Order& order,
             const OrderIndex& catalogue, const Rules& rules) {
  std::vector<std::size_t> left(questions.asked.size(), 0);
  for (const std::size_t question : questions.of) {
    ++left[question];
  }
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    Task& asked = questions.asked[questions.of[i]];
    Task& task = tasks[i];
    const bool last = --left[questions.of[i]] == 0;
    task.plans = last ? std::move(asked.plans) : asked.plans;
    task.findings = last ? std::move(asked.findings) : asked.findings;
    if (task.line != asked.line || task.placement != asked.placement) {
      answerAs(task, order, catalogue, rules);
    }
  }
}

// Shares the tasks out; answers do not depend on who does which. The first exception wins.
void runAll(std::vector<Task>& tasks, const std::function<void(Task&)>& work,
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
      tasks.push_back({line, placement, {}, {}});
    }
  }
  Questions questions = distinctQuestions(tasks, order);
  runAll(
      questions.asked, [&](Task& task) { run(task, order, catalogue, workshop, options); },
      options);
  handOut(questions, tasks, order, catalogue, rules);

  Plan plan;
  plan.orderId = order.id;
  for (Task& task : tasks) {
    std::move(task.plans.begin(), task.plans.end(), std::back_inserter(plan.placements));
    std::move(task.findings.begin(), task.findings.end(), std::back_inserter(plan.findings));
  }
  preferCommonFrames(plan.placements, shop);
  sortFindings(plan.findings);
  if (options.checkRemedies) {
    PlanOptions quiet = options;
    quiet.checkRemedies = false;
    quiet.progress = nullptr;
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
  const auto entry =
      std::find_if(ordered.sizes.begin(), ordered.sizes.end(),
                   [&spot](const SizeQuantity& candidate) { return candidate.size == spot.size; });
  if (entry == ordered.sizes.end()) {
    refuse(ordered, worded("size \"{}\"", spot.size.text()),
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

PlacementPlan planPlacement(const Order& order, std::size_t line, std::size_t placement,
                            const SizeName& size, const Shop& shop, const Rules& rules) {
  return LivePlanner(order, shop, rules)
      .plan({line, placement, size}, order.lines.at(line).placements.at(placement));
}

}  // namespace creaseline
