// SPDX-License-Identifier: MIT
// The plan for people: summary, findings, then every group of sizes. Draws all numbers from the
// plan and computes none.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/groups.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/report.h"
#include "creaseline/planning/wording.h"
#include "planning/report_cost.h"
#include "planning/report_words.h"
#include "text_layout.h"

namespace creaseline {

namespace {

constexpr std::size_t kColumns = 100;

// Appends to a comma-separated list.
void enlist(std::string& list, const std::string& entry) {
  list += (list.empty() ? "" : ", ") + entry;
}

class TextReport {
 public:
  TextReport(const Plan& plan, const ReportContext& context, const UnitChoice& units)
      : plan_(plan), context_(context), units_(units) {}

  std::string write() {
    summary();
    findings();
    if (context_.shop.rates) {
      writeCost(out_, *orderCost(plan_, planRuns(plan_, context_, units_), context_, units_));
    }
    std::size_t line = context_.order.lines.size();
    for (const SizeGroup& members : groupSizes(plan_, units_)) {
      const PlacementPlan& first = plan_.placements[members.front()];
      if (first.line != line) {
        line = first.line;
        lineHeading(line);
      }
      group(members);
    }
    return out_.text();
  }

 private:
  [[nodiscard]] std::string length(Length value) const { return formatLength(value, units_); }

  // The blank's name; loaders guarantee that it is there.
  [[nodiscard]] const Blank& blankOf(const OrderLine& line) const {
    return *context_.order.blank(line.blank);
  }

  void summary() {
    const Order& order = context_.order;
    const std::string id = worded("Order {}", order.id);
    out_.heading(order.title.empty() ? id : fmt::format("{}: {}", id, order.title), '=');
    std::string about;
    if (!order.customer.empty()) {
      enlist(about, worded("for {}", order.customer));
    }
    if (!order.due.empty()) {
      enlist(about, worded("due {}", order.due));
    }
    enlist(about, worded("planned for {}", context_.shop.name));
    out_.paragraph(0, "", about);
    if (!order.note.empty()) {
      out_.paragraph(0, worded("Note:") + " ", order.note);
    }
    const PlanCounts& counts = plan_.counts;
    out_.blank();
    out_.paragraph(
        0, "",
        fmt::format("{}, {}. {}, {}, {}.",
                    counted(counts.garments, toBeWorded("garment"), toBeWorded("garments")),
                    counted(counts.placements, toBeWorded("hooping"), toBeWorded("hoopings")),
                    counted(counts.stops, toBeWorded("stop"), toBeWorded("stops")),
                    counted(counts.watches, toBeWorded("watch"), toBeWorded("watches")),
                    counted(counts.notes, toBeWorded("note"), toBeWorded("notes"))));
  }

  void findings() {
    const Finding* previous = nullptr;
    int number = 0;
    for (const Finding& finding : plan_.findings) {
      if (previous == nullptr || previous->severity != finding.severity) {
        out_.blank();
        out_.heading(headingOf(finding.severity), '-');
      }
      previous = &finding;
      describe(finding, ++number);
    }
  }

  void describe(const Finding& finding, int number) {
    out_.paragraph(0, fmt::format("{:>3}. ", number), finding.place);
    out_.paragraph(5, "",
                   fmt::format("{}{} [{}]", finding.text, finding.text.ends_with('.') ? "" : ".",
                               nameOf(finding.code)));
    std::string numbers;
    for (const Number& entry : finding.numbers) {
      enlist(numbers, fmt::format("{} {}", inLanguage(entry.name), amount(entry.value, units_)));
    }
    if (!numbers.empty()) {
      out_.paragraph(5, "", numbers);
    }
    if (finding.reason) {
      out_.paragraph(5, worded("Why:") + " ", reasonText(*finding.reason));
    }
    for (const Remedy& remedy : finding.remedies) {
      out_.paragraph(
          5, worded("Remedy:") + " ",
          worded("{} (checked by planning it)",
                 remedy.result.empty() ? remedy.text : remedy.text + "; " + remedy.result));
    }
    if (finding.remedies.empty() && finding.severity == Severity::Stop) {
      out_.paragraph(5, worded("Remedy:") + " ",
                     worded("none of the changes that were tried by planning them helps"));
    }
  }

  void lineHeading(std::size_t index) {
    const OrderLine& line = context_.order.lines[index];
    const Blank& blank = blankOf(line);
    std::string title = worded("Line {}: {}", line.id, blank.name);
    if (!line.colour.empty()) {
      enlist(title, line.colour);
    }
    enlist(title, counted(line.garments(), toBeWorded("garment"), toBeWorded("garments")));
    out_.blank();
    out_.heading(title, '=');
    out_.paragraph(
        0, "",
        fmt::format("{}, {}", blank.fabric.name, formatArealWeight(blank.fabric.weight, units_)));
    if (!line.note.empty()) {
      out_.paragraph(0, worded("Note:") + " ", line.note);
    }
  }

  void group(const SizeGroup& members) {
    const PlacementPlan& plan = plan_.placements[members.front()];
    groupHeading(members);
    const std::string& note = context_.order.lines[plan.line].placements[plan.placement].note;
    if (!note.empty()) {
      out_.paragraph(2, worded("Note:") + " ", note);
    }
    design(plan);
    if (!plan.hasRule) {
      out_.labelled(2, worded("Placement"),
                    worded("no rule serves here, so nothing is decided; see the findings"));
      return;
    }
    place(plan);
    cloth(members);
    frame(plan);
    backing(plan);
    steps(plan);
    reasons(plan);
    assumed(members);
    cautions(members);
  }

  void groupHeading(const SizeGroup& members) {
    const PlacementPlan& first = plan_.placements[members.front()];
    std::vector<SizeName> sizes;
    std::string quantities;
    int garments = 0;
    for (const std::size_t index : members) {
      const PlacementPlan& plan = plan_.placements[index];
      sizes.push_back(plan.size);
      garments += plan.quantity;
      enlist(quantities, fmt::format("{} × {}", plan.quantity, plan.size.text()));
    }
    const Blank& blank = blankOf(context_.order.lines[first.line]);
    out_.blank();
    const std::string where = locationPhrase(first.location, context_.rules);
    const std::string which = sizesPhrase(sizes, blank.chart);
    out_.heading(sizes.size() == 1 ? worded("{}, size {}", where, which)
                                   : worded("{}, sizes {}", where, which),
                 '-');
    out_.labelled(2, worded("Garments"),
                  members.size() == 1 ? std::to_string(garments)
                                      : fmt::format("{}: {}", garments, quantities));
    if (const Location* location = context_.rules.location(first.location)) {
      out_.labelled(2, worded("Panel"), sidePhrase(*location));
    }
  }

  void design(const PlacementPlan& plan) {
    const OrderPlacement& asked = context_.order.lines[plan.line].placements[plan.placement];
    std::string text = fmt::format(
        "{}, {}, {}", plan.design.name, sizePhrase(plan.design.width, plan.design.height, units_),
        counted(plan.design.stitches, toBeWorded("stitch"), toBeWorded("stitches")));
    if (asked.scale != 1.0) {
      text = worded("{}, sewn at {:.4g} %", text, asked.scale * 100.0);
    }
    out_.labelled(2, worded("Design"), text);
    if (!plan.letters.empty()) {
      out_.labelled(2, worded("Letters"), plan.letters);
    }
    if (plan.part && plan.part->cell) {
      out_.labelled(2, worded("Part"),
                    worded("{} of the design, as it reads", cellPhrase(*plan.part->cell)));
    }
    for (const PartJoin& join : plan.part ? plan.part->joins : std::vector<PartJoin>()) {
      out_.labelled(2, worded("Join"), joinPhrase(plan, join, units_));
    }
    for (const RegisterMark& mark : plan.part ? plan.part->marks : std::vector<RegisterMark>()) {
      out_.labelled(2, worded("Mark {}", mark.name), markPhrase(plan, mark, units_));
    }
  }

  void place(const PlacementPlan& plan) {
    const Placed& placed = plan.placed;
    out_.labelled(2, worded("Drop"),
                  worded("{} {} to the {}", length(placed.drop), landmarkPhrase(placed.from),
                         nearSidePhrase(plan)));
    std::string centre =
        fmt::format("{} {}", length(placed.centreOffset), landmarkPhrase(placed.from));
    const bool body = plan.panel == PanelName::Front || plan.panel == PanelName::Back;
    if (body && placed.from != Landmark::CollarSeam) {
      enlist(centre, worded("{} {} at the centre line", length(placed.centreBelowDatum),
                            landmarkPhrase(Landmark::CollarSeam)));
    }
    out_.labelled(2, worded("Centre"), centre);
    out_.labelled(2, worded("Sideways"), lateralPhrase(plan, units_));
    out_.labelled(2, worded("Turn"), turnPhrase(plan));
  }

  // The least room that any size of the group has, one entry for each thing.
  void cloth(const SizeGroup& members) {
    std::vector<ClothCheck> least;
    for (const std::size_t index : members) {
      for (const ClothCheck& check : plan_.placements[index].cloth) {
        const auto known = std::find_if(least.begin(), least.end(), [&](const ClothCheck& entry) {
          return entry.against == check.against;
        });
        if (known == least.end()) {
          least.push_back(check);
        } else if (check.room < known->room) {
          *known = check;
        }
      }
    }
    std::string text;
    for (const ClothCheck& check : least) {
      enlist(text, check.against + " " + clothRoom(check));
    }
    if (!text.empty()) {
      out_.labelled(2, worded("Room"), text);
    }
  }

  [[nodiscard]] std::string clothRoom(const ClothCheck& check) const {
    std::string text = check.room < Length() ? worded("over by {}", amount(abs(check.room), units_))
                                             : roomPhrase(check.room, units_);
    if (check.room >= Length() && check.room < check.least) {
      text = worded("{} (should be {})", text, length(check.least));
    }
    return check.assumed ? worded("{} (assumed)", text) : text;
  }

  void frame(const PlacementPlan& plan) {
    if (plan.frame) {
      chosenFrame(plan, *plan.frame);
    } else {
      out_.labelled(2, worded("Frame"), worded("none on hand serves here"));
      // At full size a frame would hold it: then it is the garment that is in the way.
      if (plan.largestScale > 0.0 && plan.largestScale < 1.0) {
        out_.labelled(2, "",
                      worded("the frames hold the design at up to {} of this size",
                             percentDown(plan.largestScale)));
      }
    }
    for (const FrameRejection& rejection : plan.rejections) {
      out_.labelled(2, &rejection == plan.rejections.data() ? worded("Ruled out") : "",
                    rejected(rejection));
    }
  }

  void chosenFrame(const PlacementPlan& plan, const FrameChoice& choice) {
    const Frame* frame = context_.shop.frame(choice.frame);
    out_.labelled(2, worded("Frame"),
                  frame ? framePhrase(*frame, choice, units_) : choice.frame.text());
    std::string slack = slackPhrase(choice.slack, units_);
    if (plan.panel == PanelName::LeftSleeve || plan.panel == PanelName::RightSleeve) {
      slack = worded("{} (seen with the cuff on top)", slack);
    }
    out_.labelled(2, worded("Slack"), slack);
    if (!choice.bodyNearest.empty()) {
      out_.labelled(2, "",
                    choice.bodyRoom > Length()
                        ? worded("frame body {} from the {}", roomPhrase(choice.bodyRoom, units_),
                                 choice.bodyNearest)
                        : worded("frame body touches the {}", choice.bodyNearest));
    }
  }

  [[nodiscard]] std::string rejected(const FrameRejection& rejection) const {
    const Frame* frame = context_.shop.frame(rejection.frame);
    std::string text = frame ? frame->name : rejection.frame.text();
    if (rejection.turn != Angle()) {
      text = worded("{} turned {}", text, formatAngle(rejection.turn));
    }
    const std::string_view test = nameOf(rejection.test);
    text += fmt::format(": {} [{}]", rejection.what,
                        rejection.missing == Length()
                            ? std::string(test)
                            : worded("{}, by {}", test, amount(rejection.missing, units_)));
    return rejection.largestScale > 0.0
               ? worded("{}; would hold {}", text, percentDown(rejection.largestScale))
               : text;
  }

  void backing(const PlacementPlan& plan) {
    const BackingChoice& backing = plan.backing;
    std::string text = backingPhrase(backing, units_);
    if (backing.cutWidth > Length()) {
      text = worded("{}, cut {}", text, sizePhrase(backing.cutWidth, backing.cutHeight, units_));
    }
    if (backing.skinCover) {
      text = worded("{}, soft cover over the back", text);
    }
    out_.labelled(2, worded("Backing"), text);
    out_.labelled(2, worded("From stock"),
                  backing.stockName.empty() ? worded("none") : backing.stockName);
    out_.labelled(2, worded("Topping"), backing.topping ? worded("film") : worded("none"));
    out_.labelled(2, worded("Needle"), needlePhrase(backing));
  }

  void steps(const PlacementPlan& plan) {
    int number = 0;
    for (const Step& step : plan.steps) {
      ++number;
      out_.labelled(2, number == 1 ? worded("Steps") : "",
                    step.byHand ? worded("{} (by hand)", step.text) : step.text,
                    fmt::format("{:>2}. ", number));
    }
  }

  void reasons(const PlacementPlan& plan) {
    listReasons(toBeWorded("Why drop"), plan.placed.dropReasons);
    listReasons(toBeWorded("Why sideways"), plan.placed.lateralReasons);
    listReasons(toBeWorded("Why turn"), plan.placed.turnReasons);
    if (plan.frame) {
      listReasons(toBeWorded("Why frame"), plan.frame->reasons);
    }
    listReasons(toBeWorded("Why letters"), plan.letterReasons);
    listReasons(toBeWorded("Why backing"), plan.backing.fired);
    if (plan.part) {
      listReasons(toBeWorded("Why parts"), plan.part->reasons);
    }
  }

  // With rule, basis and what would change it.
  static std::string reasonText(const Reason& reason) {
    std::string source = reason.rule.text();
    if (!reason.basis.empty()) {
      source += (source.empty() ? "" : "; ") + reason.basis;
    }
    std::string text = source.empty() ? reason.text : fmt::format("{} [{}]", reason.text, source);
    text = reason.assumed ? worded("{} (assumed)", text) : text;
    return reason.changedBy.empty() ? text
                                    : worded("{}; would change with: {}", text, reason.changedBy);
  }

  void listReasons(std::string_view what, const Reasons& reasons) {
    for (const Reason& reason : reasons) {
      out_.labelled(2, &reason == reasons.data() ? inLanguage(what) : "", reasonText(reason), "- ");
    }
  }

  void assumed(const SizeGroup& members) {
    std::vector<Measure> measures;
    for (const std::size_t index : members) {
      for (const Measure measure : plan_.placements[index].assumed) {
        if (std::find(measures.begin(), measures.end(), measure) == measures.end()) {
          measures.push_back(measure);
        }
      }
    }
    std::string text;
    for (const Measure measure : measures) {
      enlist(text, measurePhrase(measure));
    }
    if (!text.empty()) {
      out_.labelled(2, worded("Assumed"),
                    worded("{}; not in the size chart, so measure a garment", text));
    }
  }

  void cautions(const SizeGroup& members) {
    std::vector<const Caution*> shown;
    for (const std::size_t index : members) {
      for (const Caution* caution : plan_.placements[index].cautions) {
        if (std::find(shown.begin(), shown.end(), caution) == shown.end()) {
          out_.labelled(
              2, shown.empty() ? worded("Caution") : "",
              fmt::format("{} [{}; {}]", caution->text, caution->id.text(), caution->basis), "- ");
          shown.push_back(caution);
        }
      }
    }
  }

  const Plan& plan_;
  const ReportContext& context_;
  UnitChoice units_;
  TextLayout out_{kColumns, labelColumns()};
};

}  // namespace

std::string textReport(const Plan& plan, const ReportContext& context, const UnitChoice& units) {
  return TextReport(plan, context, units).write();
}

}  // namespace creaseline
