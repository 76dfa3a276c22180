// SPDX-License-Identifier: MIT
#include "creaseline/planning/pick_list.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "base/enum_words.h"
#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/wording.h"
#include "planning/backing_need.h"
#include "planning/list_names.h"

namespace creaseline {
namespace {

// The entry that `same` accepts, added at the end if there is none.
template <class Entry, class Same>
Entry& entryOf(std::vector<Entry>& list, Entry fresh, Same same) {
  const auto known = std::find_if(list.begin(), list.end(), same);
  return known != list.end() ? *known : list.emplace_back(std::move(fresh));
}

class Picking {
 public:
  Picking(const Plan& plan, const RunPlan& runs, const ReportContext& context,
          const UnitChoice& units)
      : plan_(plan), runs_(runs), context_(context), units_(units) {}

  PickList write() {
    blanks();
    for (const RunCard& card : runs_.cards) {
      const PlacementPlan& plan = plan_.placements[card.shown];
      frame(card, plan);
      backing(card, plan);
      threads(card);
      fabrics(card, plan);
      needle(card);
    }
    backingTotals();
    shortages();
    return std::move(list_);
  }

 private:
  // ---- Blanks
  // ------------------------------------------------------------------------------------

  void blanks() {
    for (std::size_t index = 0; index < context_.order.lines.size(); ++index) {
      const OrderLine& line = context_.order.lines[index];
      BlankPick fresh;
      fresh.blank = blankName(context_, line);
      fresh.colour = line.colour;
      fresh.cloth = clothColour(context_, line);
      BlankPick& pick = entryOf(list_.blanks, fresh, [&](const BlankPick& known) {
        return known.blank == fresh.blank && known.colour == fresh.colour;
      });
      for (const SizeQuantity& quantity : line.sizes) {
        SizePick& size =
            entryOf(pick.sizes, SizePick{quantity.size, 0, 0},
                    [&](const SizePick& known) { return known.size == quantity.size; });
        size.count += quantity.quantity;
        size.held += waits(index, quantity.size) ? quantity.quantity : 0;
        pick.garments += quantity.quantity;
      }
      list_.garments += line.garments();
      sortByChart(pick.sizes, chartOf(context_, line));
    }
  }

  [[nodiscard]] bool waits(std::size_t line, const SizeName& size) const {
    return std::any_of(plan_.placements.begin(), plan_.placements.end(),
                       [&](const PlacementPlan& plan) {
                         return plan.line == line && plan.size == size && !maySew(plan);
                       });
  }

  static void sortByChart(std::vector<SizePick>& sizes, const SizeChart& chart) {
    const auto position = [&](const SizePick& pick) {
      return std::find_if(chart.sizes.begin(), chart.sizes.end(),
                          [&](const ChartSize& size) { return size.name == pick.size; }) -
             chart.sizes.begin();
    };
    std::stable_sort(sizes.begin(), sizes.end(), [&](const SizePick& a, const SizePick& b) {
      return position(a) < position(b);
    });
  }

  // ---- What each run takes
  // -----------------------------------------------------------------------

  void frame(const RunCard& card, const PlacementPlan& plan) {
    const Frame* frame = context_.shop.frame(plan.frame->frame);
    if (frame == nullptr) {
      return;
    }
    FramePick fresh;
    fresh.frame = worded("{} ({} window)", frame->name, windowPhrase(frame->window, units_));
    fresh.onHand = frame->quantity;
    entryOf(list_.frames, fresh, [&](const FramePick& known) {
      return known.frame == fresh.frame;
    }).hoopings += card.garments;
    if (plan.backing.topping) {
      const ToppingPick film{frame->window.width(), frame->window.height(), 0};
      entryOf(list_.topping, film, [&](const ToppingPick& known) {
        return known.width == film.width && known.height == film.height;
      }).pieces += card.garments;
    }
  }

  void backing(const RunCard& card, const PlacementPlan& plan) {
    const BackingChoice& choice = plan.backing;
    BackingPick fresh;
    fresh.stock = choice.stockName;
    fresh.kind = worded("{}, at least {}", wordOf(choice.kind),
                        formatArealWeight(choice.leastWeight, units_));
    fresh.width = choice.cutWidth;
    fresh.height = choice.cutHeight;
    const int pieces = card.garments * choice.layers;
    // What comes from one stock entry is one thing, whatever weight was asked for.
    entryOf(list_.backing, fresh, [&](const BackingPick& known) {
      return known.stock == fresh.stock && (!fresh.stock.empty() || known.kind == fresh.kind) &&
             known.width == fresh.width && known.height == fresh.height;
    }).pieces += pieces;
    if (!choice.stock.empty()) {
      needs_[choice.stock].push_back({choice.cutWidth, choice.cutHeight, pieces});
    }
  }

  void threads(const RunCard& card) {
    for (const RunThread& thread : card.threads) {
      ThreadPick& pick =
          entryOf(list_.threads, ThreadPick{thread.name, thread.colour, 0, {}},
                  [&](const ThreadPick& known) { return known.thread == thread.name; });
      pick.stitches += std::int64_t{thread.stitches} * card.garments;
      const std::string needle = fmt::format("{}: {}", card.machine, thread.needle);
      if (std::find(pick.needles.begin(), pick.needles.end(), needle) == pick.needles.end()) {
        pick.needles.push_back(needle);
      }
    }
  }

  void fabrics(const RunCard& card, const PlacementPlan& plan) {
    for (const AppliquePiece& piece : plan.design.pieces) {
      const FabricPick fresh{piece.fabric, piece.name,   plan.design.name,
                             piece.width,  piece.height, 0};
      entryOf(list_.fabrics, fresh, [&](const FabricPick& known) {
        return std::tie(known.fabric, known.piece, known.design, known.width, known.height) ==
               std::tie(fresh.fabric, fresh.piece, fresh.design, fresh.width, fresh.height);
      }).pieces += card.garments;
    }
  }

  void needle(const RunCard& card) {
    const std::vector<NeedleStock>& stock = context_.shop.needles;
    NeedlePick fresh;
    fresh.needle = needlePhrase(card.backing);
    fresh.machine = card.machine;
    fresh.listed = stock.empty() || std::find(stock.begin(), stock.end(),
                                              NeedleStock{card.backing.needleSize,
                                                          card.backing.needlePoint}) != stock.end();
    NeedlePick& pick = entryOf(list_.needles, fresh, [&](const NeedlePick& known) {
      return known.needle == fresh.needle && known.machine == fresh.machine;
    });
    std::set<int>& positions = positions_[{fresh.machine, fresh.needle}];
    for (const RunThread& thread : card.threads) {
      positions.insert(thread.needle);
    }
    pick.count = std::max(1, static_cast<int>(positions.size()));
  }

  // ---- Stock
  // -------------------------------------------------------------------------------------

  void backingTotals() {
    for (const BackingStock& stock : context_.shop.backings) {
      const auto pieces = needs_.find(stock.id);
      if (pieces != needs_.end()) {
        list_.backingTotals.push_back(backingTotal(stock, pieces->second, units_));
        list_.cuts.push_back(cutLayout(stock, pieces->second, units_));
      }
    }
  }

  void shortages() {
    for (const BackingPick& pick : list_.backing) {
      if (pick.stock.empty()) {
        list_.shortages.push_back(
            worded("No backing in stock serves: {}, {} of {}", pick.kind,
                   counted(pick.pieces, toBeWorded("piece"), toBeWorded("pieces")),
                   sizePhrase(pick.width, pick.height, units_)));
      }
    }
    for (const BackingTotal& total : list_.backingTotals) {
      if (!total.enough) {
        list_.shortages.push_back(worded("{} may run short: up to {} needed, {} on hand",
                                         total.stock, total.need, total.onHand));
      }
    }
    if (!list_.topping.empty() && !context_.shop.toppingFilm) {
      list_.shortages.push_back(worded("Topping film is needed and the shop has none"));
    }
    for (const NeedlePick& pick : list_.needles) {
      if (!pick.listed) {
        list_.shortages.push_back(worded("Needle {} is not among the shop's needles", pick.needle));
      }
    }
  }

  const Plan& plan_;
  const RunPlan& runs_;
  const ReportContext& context_;
  UnitChoice units_;
  PickList list_;
  std::map<StockId, std::vector<BackingPieces>> needs_;
  std::map<std::pair<std::string, std::string>, std::set<int>> positions_;  // by machine and needle
};

}  // namespace

PickList pickList(const Plan& plan, const RunPlan& runs, const ReportContext& context,
                  const UnitChoice& units) {
  return Picking(plan, runs, context, units).write();
}

}  // namespace creaseline
