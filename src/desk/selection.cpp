// SPDX-License-Identifier: MIT
// Keeping the selection valid.
#include "desk/selection.h"

#include <algorithm>
#include <utility>

namespace creaseline::desk {

Selection::Selection(QObject* parent) : QObject(parent) {
}

bool Selection::empty() const {
  return !planned_ || planned_->order() == nullptr || planned_->order()->lines.empty();
}

void Selection::setPlanned(std::shared_ptr<const PlannedOrder> planned) {
  planned_ = std::move(planned);
  if (!empty()) {
    const Order& order = *planned_->order();
    if (order.id != orderId_) {
      line_ = placement_ = 0;
      wholeLine_ = false;
      lookedAt_.reset();
      size_ = SizeName();
    } else {
      const auto same = std::find_if(order.lines.begin(), order.lines.end(),
                                     [this](const OrderLine& l) { return l.id == lineId_; });
      if (same != order.lines.end()) {
        line_ = static_cast<std::size_t>(same - order.lines.begin());
      }
    }
    orderId_ = order.id;
  }
  settle();
  Q_EMIT changed();
}

const PlacementPlan* Selection::current() const {
  if (empty()) {
    return nullptr;
  }
  const auto& hoopings = planned_->hoopings(line_, placement_, size_);
  return hoopings.empty() ? nullptr : hoopings[std::min(hooping_, hoopings.size() - 1)];
}

std::optional<Spot> Selection::spot() const {
  if (empty()) {
    return std::nullopt;
  }
  Spot result{line_, std::nullopt};
  if (!wholeLine_ && placement_ < planned_->order()->lines[line_].placements.size()) {
    result.placement = placement_;
  }
  return result;
}

void Selection::chooseLine(std::size_t line) {
  choose(line, line == line_ ? placement_ : 0, size_, true);
}

void Selection::choosePlacement(std::size_t line, std::size_t placement) {
  choose(line, placement, size_, false);
}

void Selection::chooseSize(const SizeName& size) {
  choose(line_, placement_, size, wholeLine_, lookedAt_);
}

void Selection::choose(std::size_t line, std::size_t placement, const SizeName& size) {
  choose(line, placement, size, false);
}

void Selection::choose(std::size_t line, std::size_t placement, const SizeName& size,
                       bool wholeLine, std::optional<PanelName> lookedAt) {
  const auto before = std::tuple(line_, placement_, size_, wholeLine_, lookedAt_);
  if (line != line_ || placement != placement_) {
    hooping_ = 0;
    compared_.reset();
  }
  line_ = line;
  placement_ = placement;
  size_ = size;
  wholeLine_ = wholeLine;
  lookedAt_ = lookedAt;
  settle();
  if (before != std::tuple(line_, placement_, size_, wholeLine_, lookedAt_)) {
    Q_EMIT changed();
  }
}

void Selection::lookAt(PanelName panel) {
  choose(line_, placement_, size_, wholeLine_, panel);
}

void Selection::chooseHooping(std::size_t hooping) {
  if (hooping_ != hooping) {
    hooping_ = hooping;
    Q_EMIT changed();
  }
}

void Selection::compare(const SizeName& size) {
  compared_ = compared_ == size || size == size_ ? std::nullopt : std::optional(size);
  Q_EMIT changed();
}

const PlacementPlan* Selection::compared() const {
  return empty() || !compared_ || *compared_ == size_
             ? nullptr
             : planned_->find(line_, placement_, *compared_);
}

void Selection::settle() {
  if (empty()) {
    return;
  }
  const Order& order = *planned_->order();
  line_ = std::min(line_, order.lines.size() - 1);
  const OrderLine& line = order.lines[line_];
  lineId_ = line.id;
  placement_ = line.placements.empty() ? 0 : std::min(placement_, line.placements.size() - 1);
  // The middle size stands for the line better than its smallest.
  if (!line.sizes.empty()) {
    if (line.find(size_) == nullptr) {
      size_ = line.sizes[line.sizes.size() / 2].size;
    }
    return;
  }
  // Nothing is ordered yet: any size that the garment is made in can be looked at.
  const Blank* blank = order.blank(line.blank);
  if (blank == nullptr || blank->chart.sizes.empty()) {
    size_ = SizeName();
  } else if (blank->chart.find(size_) == nullptr) {
    size_ = blank->chart.sizes[blank->chart.sizes.size() / 2].name;
  }
}

}  // namespace creaseline::desk
