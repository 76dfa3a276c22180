// SPDX-License-Identifier: MIT
#include "planning/questions.h"

#include <fmt/format.h>
#include <algorithm>
#include <map>

#include "planning/findings.h"

namespace creaseline {
namespace {

// What the answer to a task depends on besides the shop and the rules. Names hold no control
// characters, so that none can end early.
std::string questionOf(const Task& task, const Order& order) {
  const OrderLine& line = order.lines[task.at.line];
  const OrderPlacement& placement = line.placements[task.at.placement];
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

// The answer that another place has got to the same question, made this one's.
void answerAs(Task& task, const Order& order, const OrderIndex& index, const Rules& rules) {
  const OrderLine& line = order.lines[task.at.line];
  for (PlacementPlan& plan : task.plans) {
    plan.line = task.at.line;
    plan.placement = task.at.placement;
    plan.quantity = line.find(plan.size)->quantity;
  }
  for (Finding& finding : task.findings) {
    finding.line = task.at.line;
    finding.placement = task.at.placement;
    finding.place = findingPlace(line, blankOf(line, index),
                                 line.placements[task.at.placement].location, finding.sizes, rules);
  }
}

}  // namespace

Questions distinctQuestions(const std::vector<Task>& tasks, const Order& order) {
  Questions questions;
  std::map<std::string, std::size_t> known;
  for (const Task& task : tasks) {
    const auto [entry, fresh] = known.try_emplace(questionOf(task, order), questions.asked.size());
    if (fresh) {
      questions.asked.push_back(task);
      questions.places.emplace_back();
    }
    questions.places[entry->second].push_back(task.at);
    questions.of.push_back(entry->second);
  }
  return questions;
}

void handOut(Questions& questions, std::vector<Task>& tasks, const Order& order,
             const OrderIndex& index, const Rules& rules) {
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
    if (task.at != asked.at) {
      answerAs(task, order, index, rules);
    }
  }
}

}  // namespace creaseline
