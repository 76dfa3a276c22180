// SPDX-License-Identifier: MIT
// The plan for people: summary, findings, then every group of sizes. Draws all numbers from the
// plan and computes none.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "creaseline/planning/groups.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/report.h"
#include "creaseline/planning/wording.h"
#include "text_layout.h"

namespace creaseline {

namespace {

constexpr std::size_t kColumns = 100;

std::string counted(int count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

// Appends to a comma-separated list.
void enlist(std::string& list, const std::string& entry) {
  list += (list.empty() ? "" : ", ") + entry;
}

std::string headingOf(Severity severity) {
  switch (severity) {
    case Severity::Stop:
      return "Stops: cannot be sewn as asked";
    case Severity::Watch:
      return "Watches: can be sewn, with care";
    case Severity::Note:
      return "Notes";
  }
  return {};
}

// "5/8 in (14.7 mm)": a ruler's mark is too coarse for what is too much or too little by a hair.
std::string amount(Length value, const UnitChoice& units) {
  std::string shown = formatLength(value, units);
  if (value != Length() && roundToMark(value, units) == Length()) {
    shown = roomPhrase(abs(value), units);
  }
  return fmt::format("{} ({:.1f} mm)", shown, value.mm());
}

// Percent, rounded down so that what is said to fit fits.
std::string percentDown(double factor) {
  return fmt::format("{} %", static_cast<int>(std::floor(factor * 100.0 + 1e-9)));
}

class TextReport {
 public:
  TextReport(const Plan& plan, const ReportContext& context, const UnitChoice& units)
      : plan_(plan), context_(context), units_(units) {}

  std::string write() {
    summary();
    findings();
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
    std::string title = "Order " + order.id;
    if (!order.title.empty()) {
      title += ": " + order.title;
    }
    out_.heading(title, '=');
    std::string about;
    if (!order.customer.empty()) {
      enlist(about, "for " + order.customer);
    }
    if (!order.due.empty()) {
      enlist(about, "due " + order.due);
    }
    enlist(about, "planned for " + context_.shop.name);
    out_.paragraph(0, "", about);
    if (!order.note.empty()) {
      out_.paragraph(0, "Note: ", order.note);
    }
    const PlanCounts& counts = plan_.counts;
    out_.blank();
    out_.paragraph(
        0, "",
        fmt::format("{}, {}. {}, {}, {}.", counted(counts.garments, "garment", "garments"),
                    counted(counts.placements, "hooping", "hoopings"),
                    counted(counts.stops, "stop", "stops"),
                    counted(counts.watches, "watch", "watches"),
                    counted(counts.notes, "note", "notes")));
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
      enlist(numbers, fmt::format("{} {}", entry.name, amount(entry.value, units_)));
    }
    if (!numbers.empty()) {
      out_.paragraph(5, "", numbers);
    }
    for (const Remedy& remedy : finding.remedies) {
      out_.paragraph(5, "Remedy: ",
                     fmt::format("{}{}{} (checked by planning it)", remedy.text,
                                 remedy.result.empty() ? "" : "; ", remedy.result));
    }
    if (finding.remedies.empty() && finding.severity == Severity::Stop) {
      out_.paragraph(5, "Remedy: ", "none of the changes that were tried by planning them helps");
    }
  }

  void lineHeading(std::size_t index) {
    const OrderLine& line = context_.order.lines[index];
    const Blank& blank = blankOf(line);
    std::string title = fmt::format("Line {}: {}", line.id, blank.name);
    if (!line.colour.empty()) {
      enlist(title, line.colour);
    }
    enlist(title, counted(line.garments(), "garment", "garments"));
    out_.blank();
    out_.heading(title, '=');
    out_.paragraph(
        0, "",
        fmt::format("{}, {}", blank.fabric.name, formatArealWeight(blank.fabric.weight, units_)));
    if (!line.note.empty()) {
      out_.paragraph(0, "Note: ", line.note);
    }
  }

  void group(const SizeGroup& members) {
    const PlacementPlan& plan = plan_.placements[members.front()];
    groupHeading(members);
    const std::string& note = context_.order.lines[plan.line].placements[plan.placement].note;
    if (!note.empty()) {
      out_.paragraph(2, "Note: ", note);
    }
    design(plan);
    if (!plan.hasRule) {
      out_.labelled(2, "Placement", "no rule serves here, so nothing is decided; see the findings");
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
    const Location* location = context_.rules.location(first.location);
    const Blank& blank = blankOf(context_.order.lines[first.line]);
    out_.blank();
    out_.heading(fmt::format("{}, {} {}", location ? location->name : first.location.text(),
                             sizes.size() == 1 ? "size" : "sizes", sizesPhrase(sizes, blank.chart)),
                 '-');
    out_.labelled(2, "Garments",
                  members.size() == 1 ? std::to_string(garments)
                                      : fmt::format("{}: {}", garments, quantities));
    if (location != nullptr) {
      out_.labelled(2, "Panel", sidePhrase(*location));
    }
  }

  void design(const PlacementPlan& plan) {
    const OrderPlacement& asked = context_.order.lines[plan.line].placements[plan.placement];
    std::string text = fmt::format("{}, {}, {}", plan.design.name,
                                   sizePhrase(plan.design.width, plan.design.height, units_),
                                   counted(plan.design.stitches, "stitch", "stitches"));
    if (asked.scale != 1.0) {
      text += fmt::format(", sewn at {:.4g} %", asked.scale * 100.0);
    }
    out_.labelled(2, "Design", text);
    if (!plan.letters.empty()) {
      out_.labelled(2, "Letters", plan.letters);
    }
    if (plan.part && plan.part->cell) {
      out_.labelled(2, "Part", cellPhrase(*plan.part->cell) + " of the design, as it reads");
    }
    for (const PartJoin& join : plan.part ? plan.part->joins : std::vector<PartJoin>()) {
      out_.labelled(2, "Join", joinPhrase(plan, join, units_));
    }
    for (const RegisterMark& mark : plan.part ? plan.part->marks : std::vector<RegisterMark>()) {
      out_.labelled(2, "Mark " + mark.name, markPhrase(plan, mark));
    }
  }

  void place(const PlacementPlan& plan) {
    const Placed& placed = plan.placed;
    out_.labelled(2, "Drop",
                  fmt::format("{} {} to the {}", length(placed.drop), landmarkPhrase(placed.from),
                              nearSidePhrase(plan)));
    std::string centre =
        fmt::format("{} {}", length(placed.centreOffset), landmarkPhrase(placed.from));
    const bool body = plan.panel == PanelName::Front || plan.panel == PanelName::Back;
    if (body && placed.from != Landmark::CollarSeam) {
      enlist(centre, fmt::format("{} {} at the centre line", length(placed.centreBelowDatum),
                                 landmarkPhrase(Landmark::CollarSeam)));
    }
    out_.labelled(2, "Centre", centre);
    out_.labelled(2, "Sideways", lateralPhrase(plan, units_));
    out_.labelled(2, "Turn", turnPhrase(plan));
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
      out_.labelled(2, "Room", text);
    }
  }

  [[nodiscard]] std::string clothRoom(const ClothCheck& check) const {
    std::string text = check.room < Length() ? "over by " + amount(abs(check.room), units_)
                                             : roomPhrase(check.room, units_);
    if (check.room >= Length() && check.room < check.least) {
      text += fmt::format(" (should be {})", length(check.least));
    }
    return text + (check.assumed ? " (assumed)" : "");
  }

  void frame(const PlacementPlan& plan) {
    if (plan.frame) {
      chosenFrame(plan, *plan.frame);
    } else {
      out_.labelled(2, "Frame", "none on hand serves here");
      // At full size a frame would hold it: then it is the garment that is in the way.
      if (plan.largestScale > 0.0 && plan.largestScale < 1.0) {
        out_.labelled(2, "",
                      fmt::format("the frames hold the design at up to {} of this size",
                                  percentDown(plan.largestScale)));
      }
    }
    for (const FrameRejection& rejection : plan.rejections) {
      out_.labelled(2, &rejection == plan.rejections.data() ? "Ruled out" : "",
                    rejected(rejection));
    }
  }

  void chosenFrame(const PlacementPlan& plan, const FrameChoice& choice) {
    const Frame* frame = context_.shop.frame(choice.frame);
    out_.labelled(2, "Frame", frame ? framePhrase(*frame, choice, units_) : choice.frame.text());
    std::string slack = slackPhrase(choice.slack, units_);
    if (plan.panel == PanelName::LeftSleeve || plan.panel == PanelName::RightSleeve) {
      slack += " (seen with the cuff on top)";
    }
    out_.labelled(2, "Slack", slack);
    if (!choice.bodyNearest.empty()) {
      out_.labelled(2, "",
                    choice.bodyRoom > Length()
                        ? fmt::format("frame body {} from the {}",
                                      roomPhrase(choice.bodyRoom, units_), choice.bodyNearest)
                        : fmt::format("frame body touches the {}", choice.bodyNearest));
    }
  }

  [[nodiscard]] std::string rejected(const FrameRejection& rejection) const {
    const Frame* frame = context_.shop.frame(rejection.frame);
    std::string text = frame ? frame->name : rejection.frame.text();
    if (rejection.turn != Angle()) {
      text += " turned " + formatAngle(rejection.turn);
    }
    text += fmt::format(": {} [{}", rejection.what, nameOf(rejection.test));
    if (rejection.missing != Length()) {
      text += fmt::format(", by {:.1f} mm", rejection.missing.mm());
    }
    text += ']';
    if (rejection.largestScale > 0.0) {
      text += fmt::format("; would hold {}", percentDown(rejection.largestScale));
    }
    return text;
  }

  void backing(const PlacementPlan& plan) {
    const BackingChoice& backing = plan.backing;
    std::string text = backingPhrase(backing, units_);
    if (backing.cutWidth > Length()) {
      text += ", cut " + sizePhrase(backing.cutWidth, backing.cutHeight, units_);
    }
    if (backing.skinCover) {
      text += ", soft cover over the back";
    }
    out_.labelled(2, "Backing", text);
    out_.labelled(2, "From stock", backing.stockName.empty() ? "none" : backing.stockName);
    out_.labelled(2, "Topping", backing.topping ? "film" : "none");
    out_.labelled(2, "Needle", needlePhrase(backing));
  }

  void steps(const PlacementPlan& plan) {
    int number = 0;
    for (const Step& step : plan.steps) {
      ++number;
      out_.labelled(2, number == 1 ? "Steps" : "", step.text + (step.byHand ? " (by hand)" : ""),
                    fmt::format("{:>2}. ", number));
    }
  }

  void reasons(const PlacementPlan& plan) {
    listReasons("drop", plan.placed.dropReasons);
    listReasons("sideways", plan.placed.lateralReasons);
    listReasons("turn", plan.placed.turnReasons);
    if (plan.frame) {
      listReasons("frame", plan.frame->reasons);
    }
    listReasons("letters", plan.letterReasons);
    listReasons("backing", plan.backing.fired);
    if (plan.part) {
      listReasons("parts", plan.part->reasons);
    }
  }

  void listReasons(std::string_view what, const Reasons& reasons) {
    for (const Reason& reason : reasons) {
      std::string source = reason.rule.text();
      if (!reason.basis.empty()) {
        source += (source.empty() ? "" : "; ") + reason.basis;
      }
      out_.labelled(
          2, &reason == reasons.data() ? fmt::format("Why {}", what) : "",
          fmt::format("{}{}{}{}", reason.text, source.empty() ? "" : fmt::format(" [{}]", source),
                      reason.assumed ? " (assumed)" : "",
                      reason.changedBy.empty()
                          ? ""
                          : fmt::format("; would change with: {}", reason.changedBy)),
          "- ");
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
      out_.labelled(2, "Assumed", text + "; not in the size chart, so measure a garment");
    }
  }

  void cautions(const SizeGroup& members) {
    std::vector<const Caution*> shown;
    for (const std::size_t index : members) {
      for (const Caution* caution : plan_.placements[index].cautions) {
        if (std::find(shown.begin(), shown.end(), caution) == shown.end()) {
          out_.labelled(
              2, shown.empty() ? "Caution" : "",
              fmt::format("{} [{}; {}]", caution->text, caution->id.text(), caution->basis), "- ");
          shown.push_back(caution);
        }
      }
    }
  }

  const Plan& plan_;
  const ReportContext& context_;
  UnitChoice units_;
  TextLayout out_{kColumns};
};

}  // namespace

std::string textReport(const Plan& plan, const ReportContext& context, const UnitChoice& units) {
  return TextReport(plan, context, units).write();
}

}  // namespace creaseline
