// SPDX-License-Identifier: MIT
#include "creaseline/planning/change.h"

#include <algorithm>
#include <functional>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace creaseline {
namespace {

bool holds(const std::vector<SizeName>& sizes, const SizeName& size) {
  return std::find(sizes.begin(), sizes.end(), size) != sizes.end();
}

struct PlacementEdit {
  OrderPlacement& at;
  const SizeName& size;

  void operator()(const TurnChange& change) const { at.turn = at.turn + change.turn; }
  void operator()(const ScaleChange& change) const { at.scale *= change.factor; }
  void operator()(const MoveChange& change) const { at.moveDown += change.down; }
  void operator()(const LocationChange& change) const {
    at.location = change.location;
    at.moveDown = at.moveRight = {};
  }
  void operator()(const DesignSizesChange& change) const {
    for (const SizeScale& scale : change.scales) {
      if (holds(scale.sizes, size)) {
        at.scale *= scale.factor;
      }
    }
  }
  void operator()(const DesignSizesOfLinesChange& /*change*/) const {}
  void operator()(const SplitChange& /*change*/) const { at.split = true; }
  void operator()(const FrameTurnChange& change) const { at.frameTurn = change.turn; }
  void operator()(const StitchesChange& /*change*/) const {}
  void operator()(const FramesChange& /*change*/) const {}
  void operator()(const ShopChange& /*change*/) const {}
};

// "3-2" for the first part split from line "3".
std::string freshId(const std::vector<OrderLine>& lines, const std::string& from) {
  for (int part = 2;; ++part) {
    std::string id = from + "-" + std::to_string(part);
    if (std::none_of(lines.begin(), lines.end(),
                     [&](const OrderLine& line) { return line.id == id; })) {
      return id;
    }
  }
}

void changeSizes(std::vector<OrderLine>& lines, std::size_t line,
                 const std::vector<SizeName>& sizes,
                 const std::function<void(OrderLine&)>& change) {
  const auto meant = [&](const SizeQuantity& entry) { return holds(sizes, entry.size); };
  OrderLine part = lines[line];
  std::erase_if(part.sizes, [&](const SizeQuantity& entry) { return !meant(entry); });
  if (part.sizes.empty()) {
    return;
  }
  change(part);
  if (part.sizes.size() == lines[line].sizes.size()) {
    lines[line] = std::move(part);
    return;
  }
  part.id = freshId(lines, lines[line].id);
  std::erase_if(lines[line].sizes, meant);
  lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(line) + 1, std::move(part));
}

bool hasPlace(const Order& order, std::size_t line, std::size_t placement) {
  return line < order.lines.size() && placement < order.lines[line].placements.size();
}

// The placements of a line as its garments of one size are to be sewn.
std::vector<OrderPlacement> placementsFor(const SizeName& size, const OrderLine& line,
                                          const std::vector<PlacementScales>& changes) {
  std::vector<OrderPlacement> placements = line.placements;
  for (const PlacementScales& change : changes) {
    applyChange(DesignSizesChange{change.scales}, size, placements[change.placement]);
  }
  return placements;
}

// Sizes whose placements change alike stay together, whichever of the placements that is.
void changeLine(std::vector<OrderLine>& lines, std::size_t index,
                const std::vector<PlacementScales>& changes) {
  std::vector<std::pair<std::vector<OrderPlacement>, std::vector<SizeName>>> alike;
  for (const SizeQuantity& entry : lines[index].sizes) {
    std::vector<OrderPlacement> wanted = placementsFor(entry.size, lines[index], changes);
    if (wanted == lines[index].placements) {
      continue;
    }
    const auto known = std::find_if(alike.begin(), alike.end(),
                                    [&wanted](const auto& group) { return group.first == wanted; });
    if (known == alike.end()) {
      alike.emplace_back(std::move(wanted), std::vector<SizeName>{entry.size});
    } else {
      known->second.push_back(entry.size);
    }
  }
  for (const auto& [placements, sizes] : alike) {
    changeSizes(lines, index, sizes,
                [&placements = placements](OrderLine& line) { line.placements = placements; });
  }
}

bool changeLines(std::vector<OrderLine>& lines, const Order& before,
                 const DesignSizesOfLinesChange& change) {
  // From the last line to the first: new lines come behind the one they are split from.
  std::map<std::size_t, std::vector<PlacementScales>, std::greater<>> byLine;
  for (const PlacementScales& placement : change.placements) {
    if (!hasPlace(before, placement.line, placement.placement)) {
      return false;
    }
    byLine[placement.line].push_back(placement);
  }
  for (const auto& [line, changes] : byLine) {
    changeLine(lines, line, changes);
  }
  return true;
}

}  // namespace

bool changesOrder(const Change& change) {
  return !std::holds_alternative<ShopChange>(change) &&
         !std::holds_alternative<StitchesChange>(change);
}

void applyChange(const Change& change, const SizeName& size, OrderPlacement& placement) {
  std::visit(PlacementEdit{placement, size}, change);
}

std::optional<Order> orderWith(const Order& order, const Finding& finding, const Change& change) {
  if (!hasPlace(order, finding.line, finding.placement) || !changesOrder(change)) {
    return std::nullopt;
  }
  Order changed = order;
  const auto changeThese = [&](const std::vector<SizeName>& sizes) {
    changeSizes(changed.lines, finding.line, sizes, [&](OrderLine& line) {
      applyChange(change, line.sizes.front().size, line.placements[finding.placement]);
    });
  };
  if (const auto* frames = std::get_if<FramesChange>(&change)) {
    changed.frames = frames->frames;
  } else if (const auto* several = std::get_if<DesignSizesChange>(&change)) {
    for (const SizeScale& scale : several->scales) {
      changeThese(scale.sizes);
    }
  } else if (const auto* ofLines = std::get_if<DesignSizesOfLinesChange>(&change)) {
    if (!changeLines(changed.lines, order, *ofLines)) {
      return std::nullopt;
    }
  } else {
    changeThese(finding.sizes);
  }
  return changed == order ? std::nullopt : std::optional(std::move(changed));
}

}  // namespace creaseline
