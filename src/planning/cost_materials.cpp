// SPDX-License-Identifier: MIT
// Backing, topping and fabric, as much of each as the pick list has cut.
#include <fmt/format.h>

#include "creaseline/planning/counting.h"
#include "planning/backing_need.h"
#include "planning/cost_ledger.h"

#include "base/worded.h"

namespace creaseline {
namespace {

// Width times height times count; only ratios of it are used.
boost::multiprecision::cpp_int areaOf(const BackingPieces& need) {
  return boost::multiprecision::cpp_int(need.width.nanometres()) * need.height.nanometres() *
         need.pieces;
}

// Pieces that one run has cut from something that is bought.
struct RunPieces {
  std::size_t run = 0;
  BackingPieces pieces;
};
using Cuts = std::vector<RunPieces>;

std::vector<BackingPieces> piecesOf(const Cuts& cuts) {
  std::vector<BackingPieces> pieces;
  for (const RunPieces& cut : cuts) {
    pieces.push_back(cut.pieces);
  }
  return pieces;
}

class Materials {
 public:
  explicit Materials(CostLedger& ledger) : ledger_(ledger) {}

  void write() {
    backing();
    topping();
    applique();
  }

 private:
  // ---- Material
  // ----------------------------------------------------------------------------------

  // What was cut is borne by its runs by area, with their share of what falls off.
  void payCuts(CostKind kind, const Cuts& cuts, const ExactMoney& amount) {
    boost::multiprecision::cpp_int whole = 0;
    for (const RunPieces& cut : cuts) {
      whole += areaOf(cut.pieces);
    }
    for (const RunPieces& cut : cuts) {
      if (whole > 0) {
        ledger_.addRun(kind, cut.run, amount * ExactMoney(areaOf(cut.pieces), whole));
      }
    }
  }

  void backing() {
    std::map<StockId, Cuts> cuts;
    int unserved = 0;
    for (std::size_t run = 0; run < ledger_.runs().cards.size(); ++run) {
      const RunCard& card = ledger_.runs().cards[run];
      const BackingChoice& choice = card.backing;
      const int pieces = card.garments * choice.layers;
      if (!choice.stock.empty()) {
        cuts[choice.stock].push_back({run, {choice.cutWidth, choice.cutHeight, pieces}});
      } else if (pieces > 0) {
        unserved += pieces;
      }
    }
    CostItem whole{CostKind::Backing, {}, {}, {}};
    for (const BackingStock& stock : ledger_.context().shop.backings) {
      if (const auto found = cuts.find(stock.id); found != cuts.end()) {
        stockOf(whole, stock, found->second);
      }
    }
    if (!whole.reasons.empty()) {
      ledger_.addItem(std::move(whole));
    }
    if (unserved > 0) {
      ledger_.missing(CostField::BackingStock, {},
                      worded("Backing, {} for which nothing in stock serves",
                             counted(unserved, toBeWorded("piece"), toBeWorded("pieces"))),
                      worded("add backing that serves to the shop, with its price"));
    }
  }

  void stockOf(CostItem& whole, const BackingStock& stock, const Cuts& cuts) {
    const std::vector<BackingPieces> pieces = piecesOf(cuts);
    const CutNeed need = cutNeed(stock, pieces);
    if (!need.goesOn) {
      ledger_.missing(CostField::BackingStock, stock.id.text(),
                      worded("Backing, pieces that do not go on {}", stock.name),
                      worded("add backing that is wide enough to the shop"));
      return;
    }
    const std::string measure = backingTotal(stock, pieces, ledger_.units()).need;
    if (!stock.price) {
      ledger_.missing(CostField::BackingPrice, stock.id.text(),
                      worded("Backing, {} of {}", measure, stock.name),
                      worded("give the price of {} in the shop's backing", stock.name));
      return;
    }
    const BackingPrice& price = *stock.price;
    const bool roll = stock.form == BackingForm::Roll;
    payCuts(CostKind::Backing, cuts,
            CostLedger::exact(price.amount) *
                (roll ? ExactMoney(need.roll.nanometres(), price.length.nanometres())
                      : ExactMoney(need.sheets, price.sheets)));
    whole.measure +=
        (whole.measure.empty() ? "" : "; ") + fmt::format("{}, {}", stock.name, measure);
    CostLedger::reason(
        whole,
        worded("{} of {} at {} for {}: each cut size in straight rows as on the pick list, "
               "what falls off included",
               measure, stock.name, ledger_.money(price.amount),
               roll ? rollLengthText(price.length, ledger_.units().length)
                    : counted(price.sheets, toBeWorded("sheet"), toBeWorded("sheets"))),
        worded("the price of this backing, smaller frames"));
  }

  // Pieces of one thing that is bought by the roll at one price.
  ExactMoney payRoll(CostKind kind, const RollPrice& price, const Cuts& cuts, std::string& measure,
                     bool& goesOn) {
    BackingStock roll;
    roll.width = price.width;
    const std::vector<BackingPieces> pieces = piecesOf(cuts);
    const CutNeed need = cutNeed(roll, pieces);
    goesOn = need.goesOn;
    measure = backingTotal(roll, pieces, ledger_.units()).need;
    ExactMoney amount = CostLedger::exact(price.amount) *
                        ExactMoney(need.roll.nanometres(), price.length.nanometres());
    if (goesOn) {
      payCuts(kind, cuts, amount);
    }
    return amount;
  }

  void topping() {
    Cuts cuts;
    int pieces = 0;
    for (std::size_t run = 0; run < ledger_.runs().cards.size(); ++run) {
      const RunCard& card = ledger_.runs().cards[run];
      const PlacementPlan& plan = ledger_.plan().placements[card.shown];
      const Frame* frame = ledger_.context().shop.frame(plan.frame->frame);
      if (card.backing.topping && frame != nullptr) {
        pieces += card.garments;
        cuts.push_back({run, {frame->window.width(), frame->window.height(), card.garments}});
      }
    }
    payAllRolls(
        CostKind::Topping, CostField::Topping, ledger_.rates().topping, {{worded("film"), cuts}},
        worded("Topping film, {}", counted(pieces, toBeWorded("piece"), toBeWorded("pieces"))),
        pieces);
  }

  void applique() {
    std::map<std::string, Cuts> fabrics;
    int pieces = 0;
    for (std::size_t run = 0; run < ledger_.runs().cards.size(); ++run) {
      const RunCard& card = ledger_.runs().cards[run];
      for (const AppliquePiece& piece : ledger_.plan().placements[card.shown].design.pieces) {
        fabrics[piece.fabric].push_back({run, {piece.width, piece.height, card.garments}});
        pieces += card.garments;
      }
    }
    payAllRolls(
        CostKind::Applique, CostField::Applique, ledger_.rates().applique, fabrics,
        worded("Appliqué fabric, {}", counted(pieces, toBeWorded("piece"), toBeWorded("pieces"))),
        pieces);
  }

  void payAllRolls(CostKind kind, CostField field, const std::optional<RollPrice>& price,
                   const std::map<std::string, Cuts>& things, const std::string& text, int pieces) {
    if (pieces == 0) {
      return;
    }
    if (!price) {
      ledger_.missing(
          field, {}, text,
          worded("give the price of a roll of it, {} in the shop's rates", nameOf(field)));
      return;
    }
    CostItem whole{kind, {}, {}, {}};
    for (const auto& [name, cuts] : things) {
      std::string measure;
      bool goesOn = true;
      payRoll(kind, *price, cuts, measure, goesOn);
      if (!goesOn) {
        ledger_.missing(
            field, {}, worded("{}, as {} is wider than the roll that is priced", text, name),
            worded("give the price of a wider roll, {} in the shop's rates", nameOf(field)));
        continue;
      }
      whole.measure += (whole.measure.empty() ? "" : "; ") + fmt::format("{}, {}", name, measure);
      CostLedger::reason(
          whole,
          worded("{}, {} at {} for {}: each cut size in straight rows, what falls off "
                 "included",
                 name, measure, ledger_.money(price->amount),
                 rollLengthText(price->length, ledger_.units().length)),
          worded("{} in the shop's rates", nameOf(field)));
    }
    if (!whole.reasons.empty()) {
      ledger_.addItem(std::move(whole));
    }
  }

  CostLedger& ledger_;
};

}  // namespace

void reckonMaterials(CostLedger& ledger) {
  Materials(ledger).write();
}

}  // namespace creaseline
