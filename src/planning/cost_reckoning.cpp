// SPDX-License-Identifier: MIT
#include "planning/cost_reckoning.h"

#include <algorithm>
#include <set>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "planning/cost_ledger.h"
#include "planning/list_names.h"

namespace creaseline {
namespace {

constexpr std::int64_t kMillisecondsPerHour = 3'600'000;

// Of one garment or once before all, by whom the time keeps busy.
struct BusyTime {
  std::int64_t hands = 0, handsAtMachine = 0, machine = 0;  // milliseconds

  void add(const std::vector<TimeShare>& shares, int count) {
    for (const TimeShare& share : shares) {
      const std::int64_t time = (share.time * count).milliseconds();
      (share.use == TimeUse::Hands            ? hands
       : share.use == TimeUse::HandsAtMachine ? handsAtMachine
                                              : machine) += time;
    }
  }
};

class Reckoning : public CostLedger {
 public:
  using CostLedger::CostLedger;

  ExactCost write() {
    time();
    reckonMaterials(*this);
    thread();
    blanks();
    setUp();
    markup();
    held();
    return takeCost();
  }

 private:
  // ---- Time
  // --------------------------------------------------------------------------------------

  void time() {
    if (runs().cards.empty()) {
      return;
    }
    const Percent attendance = rates().attendance.value_or(kWhole);
    ExactMoney labour = 0;
    ExactMoney machine = 0;
    for (std::size_t run = 0; run < runs().cards.size(); ++run) {
      const RunCard& card = runs().cards[run];
      BusyTime busy;
      busy.add(card.time.once, 1);
      busy.add(card.time.each, card.garments);
      const ExactMoney work =
          busy.hands + busy.handsAtMachine +
          ExactMoney(busy.machine) * attendance.hundredths() / Percent::kHundredthsPerWhole;
      const ExactMoney taken = busy.machine + busy.handsAtMachine;
      labour += work;
      machine += taken;
      payHours(CostKind::Labour, rates().labour, run, work);
      payHours(CostKind::Machine, rates().machine, run, taken);
    }
    labourItem(durationText(labour), attendance);
    machineItem(durationText(machine));
  }

  void payHours(CostKind kind, const std::optional<Money>& rate, std::size_t run,
                const ExactMoney& milliseconds) {
    if (rate) {
      addRun(kind, run, exact(*rate) * milliseconds / kMillisecondsPerHour);
    }
  }

  static std::string durationText(const ExactMoney& milliseconds) {
    return formatDuration(Duration::fromMilliseconds(roundedMoney(milliseconds).minorUnits()));
  }

  void labourItem(const std::string& time, Percent attendance) {
    if (!rates().labour) {
      missing(CostField::Labour, {}, worded("Work, {}", time),
              worded("give what an hour of work costs, labour in the shop's rates"));
      return;
    }
    reason(
        item(CostKind::Labour, time),
        rates().attendance
            ? worded("{} at {} an hour: all work by hand as on the run cards, and {} of the time "
                     "in which the machine runs by itself",
                     time, money(*rates().labour), percentText(attendance))
            : worded("{} at {} an hour: all work by hand as on the run cards, and {} of the time "
                     "in which the machine runs by itself, as no attendance is given",
                     time, money(*rates().labour), percentText(attendance)),
        worded("labour or attendance in the shop's rates, fewer hoopings"));
  }

  void machineItem(const std::string& time) {
    if (!rates().machine) {
      missing(CostField::Machine, {}, worded("The machine, {}", time),
              worded("give what an hour of the machine costs, machine in the shop's rates"));
      return;
    }
    reason(item(CostKind::Machine, time),
           worded("{} at {} an hour: sewing, and work by hand for which the machine waits; "
                  "hooping is done beside it",
                  time, money(*rates().machine)),
           worded("machine in the shop's rates, the machine's speed"));
  }

  void thread() {
    std::int64_t stitches = 0;
    for (std::size_t run = 0; run < runs().cards.size(); ++run) {
      const RunCard& card = runs().cards[run];
      const std::int64_t own = std::int64_t{card.stitches} * card.garments;
      stitches += own;
      if (rates().thread) {
        addRun(CostKind::Thread, run,
               exact(rates().thread->amount) * ExactMoney(own, rates().thread->stitches));
      }
    }
    if (runs().cards.empty()) {
      return;
    }
    const std::string measure = worded("{} stitches", grouped(stitches));
    if (!rates().thread) {
      missing(CostField::Thread, {}, worded("Thread, {}", measure),
              worded("give what so many stitches cost, thread in the shop's rates"));
      return;
    }
    reason(item(CostKind::Thread, measure),
           worded("{} at {} for {} stitches", measure, money(rates().thread->amount),
                  grouped(rates().thread->stitches)),
           worded("thread in the shop's rates, stitches of the designs"));
  }

  // ---- Garments and fees
  // -------------------------------------------------------------------------

  void blanks() {
    CostItem whole{CostKind::Blanks, {}, {}, {}};
    for (const Blank& blank : context().order.blanks) {
      int garments = 0;
      for (std::size_t line = 0; line < context().order.lines.size(); ++line) {
        const OrderLine& ordered = context().order.lines[line];
        if (ordered.blank != blank.id || ordered.supplied) {
          continue;
        }
        garments += ordered.garments();
        if (blank.price && blank.price->currency == rates().currency) {
          addCell({CostKind::Blanks, line, std::nullopt,
                   exact(blank.price->amount) * ordered.garments()});
        }
      }
      if (garments > 0) {
        blankOf(whole, blank, counted(garments, toBeWorded("garment"), toBeWorded("garments")));
      }
    }
    if (!whole.reasons.empty()) {
      addItem(std::move(whole));
    }
  }

  void blankOf(CostItem& whole, const Blank& blank, const std::string& garments) {
    const bool foreign = blank.price && blank.price->currency != rates().currency;
    if (!blank.price || foreign) {
      missing(CostField::BlankPrice, blank.id.text(),
              foreign ? worded("Blanks, {} of {}, priced in {}", garments, blank.name,
                               blank.price->currency.code)
                      : worded("Blanks, {} of {}", garments, blank.name),
              worded("give the price of {} in {}, or tick its lines as supplied by the "
                     "customer",
                     blank.name, rates().currency.code));
      return;
    }
    whole.measure += (whole.measure.empty() ? "" : "; ") + worded("{} of {}", garments, blank.name);
    whole.reasons.push_back(
        {worded("{} of {} at {} each", garments, blank.name, money(blank.price->amount)),
         RuleId("price"), worded("the blank's price"), false, std::nullopt,
         worded("the price of the blank, garments that the customer supplies")});
  }

  // Each design once; its lines bear it by their garments.
  void setUp() {
    if (!rates().setUp) {
      return;
    }
    std::map<DesignId, std::set<std::size_t>> designs;
    for (std::size_t line = 0; line < context().order.lines.size(); ++line) {
      for (const OrderPlacement& placement : context().order.lines[line].placements) {
        designs[placement.design].insert(line);
      }
    }
    for (const auto& [design, lines] : designs) {
      int garments = 0;
      for (const std::size_t line : lines) {
        garments += context().order.lines[line].garments();
      }
      for (const std::size_t line : lines) {
        addCell({CostKind::SetUp, line, std::nullopt,
                 exact(*rates().setUp) *
                     ExactMoney(context().order.lines[line].garments(), std::max(1, garments))});
      }
    }
    if (!designs.empty()) {
      const std::string count =
          counted(static_cast<int>(designs.size()), toBeWorded("design"), toBeWorded("designs"));
      reason(item(CostKind::SetUp, count),
             worded("{} at {} each, once in an order", count, money(*rates().setUp)),
             worded("set-up in the shop's rates, fewer designs"));
    }
  }

  void markup() {
    if (!rates().markup || cells().empty()) {
      return;
    }
    std::map<std::size_t, ExactMoney> lines;
    for (const CostCell& cell : cells()) {
      lines[cell.line] += cell.amount;
    }
    for (const auto& [line, amount] : lines) {
      addCell({CostKind::Markup, line, std::nullopt,
               amount * rates().markup->hundredths() / Percent::kHundredthsPerWhole});
    }
    const std::string share = percentText(*rates().markup);
    reason(item(CostKind::Markup, share), worded("{} on top of all that is counted", share),
           worded("markup in the shop's rates"));
  }

  void held() {
    int hoopings = 0;
    for (const HeldGarments& each : runs().held) {
      hoopings += each.garments;
    }
    if (hoopings > 0) {
      missing(CostField::Held, {},
              worded("Work and material of {} that must not be sewn as ordered",
                     counted(hoopings, toBeWorded("placement"), toBeWorded("placements"))),
              worded("clear the stops"));
    }
  }
};

}  // namespace

ExactCost reckonCost(const Plan& plan, const RunPlan& runs, const ReportContext& context,
                     const UnitChoice& units) {
  return Reckoning(plan, runs, context, units).write();
}

}  // namespace creaseline
