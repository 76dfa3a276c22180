// SPDX-License-Identifier: MIT
// One function a section.
#include "desk/reason_sections.h"

#include <QCoreApplication>
#include <algorithm>

#include "creaseline/planning/groups.h"
#include "creaseline/planning/part_words.h"
#include "creaseline/planning/wording.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

class Sections {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::Reasons)

 public:
  Sections(const PlannedOrder& planned, const PlacementPlan& plan)
      : planned_(planned), plan_(plan), units_(planned.units()) {}

  PlacementReasons all() {
    PlacementReasons result;
    // The order may have been edited since, its lines counted otherwise.
    const OrderLine& line = planned_.plannedFor()->lines[plan_.line];
    const Blank* blank = planned_.plannedFor()->blank(line.blank);
    result.title = tr("%1, size %2")
                       .arg(toQString(locationPhrase(plan_.location, planned_.rules())),
                            toQString(plan_.size.text()));
    result.subtitle =
        tr("%n × %1, %2 (%3 × %4)", nullptr, plan_.quantity)
            .arg(toQString(blank == nullptr ? line.blank.text() : blank->name),
                 toQString(plan_.design.name), text(plan_.design.width), text(plan_.design.height));
    result.state = plan_.worst;
    for (ReasonSection section : {attention(), hooping(), where(), frame(), room(), rejected(),
                                  backing(), needle(), steps(), assumed(), cautions()}) {
      if (!section.answers.empty() || !section.lines.empty()) {
        result.sections.push_back(std::move(section));
      }
    }
    return result;
  }

  static QString sourceOf(const Reason& reason) {
    return withChanger(source(reason.rule, reason.basis), reason.changedBy);
  }

 private:
  QString text(Length length) const { return toQString(formatLength(length, units_)); }

  static QString source(const RuleId& rule, const std::string& basis) {
    if (rule.empty()) {
      return toQString(basis);
    }
    return basis.empty() ? tr("rule %1").arg(toQString(rule.text()))
                         : tr("rule %1: %2").arg(toQString(rule.text()), toQString(basis));
  }
  static QString withChanger(const QString& source, const std::string& changedBy) {
    const QString changer =
        changedBy.empty() ? QString() : tr("would change with: %1").arg(toQString(changedBy));
    return source.isEmpty() || changer.isEmpty() ? source + changer
                                                 : source + QStringLiteral(" · ") + changer;
  }
  static void say(ReasonSection& section, const QString& text) {
    section.lines.push_back({text, {}, false, {}});
  }
  static void add(ReasonSection& section, const Reasons& reasons) {
    for (const Reason& reason : reasons) {
      section.lines.push_back(
          {capitalised(toQString(reason.text)), sourceOf(reason), reason.assumed, {}});
    }
  }

  ReasonSection attention() const {
    ReasonSection section{tr("Needs attention"), {}, {}};
    for (const Finding& finding : planned_.plan()->findings) {
      if (concerns(finding, plan_) && finding.severity != Severity::Note) {
        section.lines.push_back({capitalised(toQString(finding.text)),
                                 finding.reason ? sourceOf(*finding.reason) : QString(),
                                 finding.reason && finding.reason->assumed, finding.severity});
      }
    }
    return section;
  }

  // Of a design that is sewn in several.
  ReasonSection hooping() const {
    ReasonSection section{tr("Part"), {}, {}};
    if (!plan_.part) {
      return section;
    }
    const DesignPart& part = *plan_.part;
    section.answers.push_back(part.cell ? tr("Part %1 of %2: %3")
                                              .arg(part.number)
                                              .arg(part.of)
                                              .arg(toQString(cellPhrase(*part.cell)))
                                        : tr("Part %1 of %2").arg(part.number).arg(part.of));
    for (const std::string& step : {alignStep(part), sewMarksStep(part)}) {
      if (!step.empty()) {
        section.answers.push_back(toQString(step));
      }
    }
    for (const PartJoin& join : part.joins) {
      say(section, capitalised(toQString(joinPhrase(plan_, join, units_))));
    }
    for (const RegisterMark& mark : part.marks) {
      say(section,
          tr("Mark %1: %2").arg(toQString(mark.name), toQString(markPhrase(plan_, mark, units_))));
    }
    add(section, part.reasons);
    return section;
  }

  ReasonSection where() const {
    ReasonSection section{tr("Where"), {}, {}};
    if (!plan_.hasRule) {
      section.lines.push_back(
          {tr("No placement rule says where this goes on this garment"), {}, false, {}});
      return section;
    }
    const Placed& placed = plan_.placed;
    const QString from = toQString(landmarkPhrase(placed.from));
    section.answers.push_back(tr("Design starts %1 %2").arg(text(placed.drop), from));
    section.answers.push_back(tr("Centre %1 %2").arg(text(placed.centreOffset), from));
    section.answers.push_back(capitalised(toQString(lateralPhrase(plan_, units_))));
    section.answers.push_back(tr("Turn: %1").arg(toQString(turnPhrase(plan_))));
    if (!plan_.letters.empty()) {
      section.answers.push_back(tr("Letters: %1").arg(toQString(plan_.letters)));
    }
    add(section, placed.dropReasons);
    add(section, placed.lateralReasons);
    add(section, plan_.letterReasons);
    add(section, placed.turnReasons);
    return section;
  }

  ReasonSection frame() const {
    ReasonSection section{tr("Frame"), {}, {}};
    if (!plan_.frame) {
      if (plan_.hasRule) {
        section.answers.push_back(tr("No frame on hand can sew this here"));
        // At full size a frame would hold it: then it is the garment that is in the way.
        if (plan_.largestScale >= 1.0) {
          say(section, tr("A frame on hand would hold it, but cannot sit on the garment here"));
        } else if (plan_.largestScale > 0.0) {
          say(section, tr("A frame on hand holds at most %1 % of its size")
                           .arg(static_cast<int>(plan_.largestScale * 100.0)));
        }
      }
      return section;
    }
    const FrameChoice& choice = *plan_.frame;
    section.answers.push_back(framed(choice));
    add(section, choice.reasons);
    for (const FrameChoice& next : plan_.alternatives) {
      section.lines.push_back({tr("Next best: %1").arg(framed(next)), {}, false, {}});
    }
    return section;
  }
  QString framed(const FrameChoice& choice) const {
    const Frame* chosen = planned_.shop()->frame(choice.frame);
    return chosen == nullptr ? toQString(choice.frame.text())
                             : toQString(framePhrase(*chosen, choice, units_));
  }

  ReasonSection room() const {
    ReasonSection section{tr("Room"), {}, {}};
    if (plan_.frame) {
      section.answers.push_back(
          tr("In the frame: %1").arg(toQString(slackPhrase(plan_.frame->slack, units_))));
      if (!plan_.frame->bodyNearest.empty()) {
        section.lines.push_back(
            {tr("Frame body to %1: %2")
                 .arg(toQString(plan_.frame->bodyNearest), text(plan_.frame->bodyRoom)),
             {},
             false,
             {}});
      }
    }
    for (const ClothCheck& check : plan_.cloth) {
      const QString against = toQString(check.against);
      const bool over = check.room < Length();
      const bool tight = !over && check.room < check.least;
      const QString said = over ? tr("Design over %1 by %2").arg(against, text(-check.room))
                                : tr("Design to %1: %2 (at least %3)")
                                      .arg(against, text(check.room), text(check.least));
      section.lines.push_back({said,
                               {},
                               check.assumed,
                               over    ? std::optional(Severity::Stop)
                               : tight ? std::optional(Severity::Watch)
                                       : std::nullopt});
    }
    return section;
  }

  ReasonSection rejected() const {
    ReasonSection section{tr("Frames ruled out"), {}, {}};
    for (const FrameRejection& rejection : plan_.rejections) {
      const Frame* named = planned_.shop()->frame(rejection.frame);
      QString name = toQString(named == nullptr ? rejection.frame.text() : named->name);
      if (rejection.turn != Angle()) {
        name = tr("%1 turned %2").arg(name, toQString(formatAngle(rejection.turn)));
      }
      section.lines.push_back(
          {tr("%1: %2", "frame: why not").arg(name, toQString(rejection.what)), {}, false, {}});
    }
    return section;
  }

  ReasonSection backing() const {
    ReasonSection section{tr("Backing"), {}, {}};
    if (!plan_.hasRule) {
      return section;
    }
    const BackingChoice& choice = plan_.backing;
    section.answers.push_back(capitalised(toQString(backingPhrase(choice, units_))));
    if (choice.cutWidth > Length()) {
      section.answers.push_back(
          tr("Cut %1 × %2").arg(text(choice.cutWidth), text(choice.cutHeight)));
    }
    section.lines.push_back({choice.stock.empty()
                                 ? tr("Nothing in stock serves")
                                 : tr("From stock: %1").arg(toQString(choice.stockName)),
                             {},
                             false,
                             {}});
    add(section, choice.fired);
    return section;
  }

  ReasonSection needle() const {
    ReasonSection section{tr("Needle"), {}, {}};
    if (plan_.hasRule) {
      section.answers.push_back(capitalised(toQString(needlePhrase(plan_.backing))));
    }
    return section;
  }

  ReasonSection steps() const {
    ReasonSection section{tr("Sewing order"), {}, {}};
    int number = 0;
    for (const auto& step : plan_.steps) {
      const QString words = capitalised(toQString(step.text));
      section.lines.push_back({QStringLiteral("%1. ").arg(++number) +
                                   (step.byHand ? tr("By hand: %1").arg(words) : words),
                               {},
                               false,
                               {}});
    }
    return section;
  }

  ReasonSection assumed() const {
    ReasonSection section{tr("Assumed measures"), {}, {}};
    for (const Measure measure : plan_.assumed) {
      ReasonLine line{capitalised(toQString(measurePhrase(measure))), {}, true, {}};
      const auto& measures = plan_.garment->measures;
      if (const auto used = measures.find(measure); used != measures.end()) {
        line.text = tr("%1 %2", "measure, length").arg(line.text, text(used->second.value));
        line.source = source(used->second.rule, used->second.basis);
      }
      section.lines.push_back(std::move(line));
    }
    return section;
  }

  ReasonSection cautions() const {
    ReasonSection section{tr("Take care"), {}, {}};
    for (const Caution* caution : plan_.cautions) {
      section.lines.push_back(
          {toQString(caution->text), source(caution->id, caution->basis), false, {}});
    }
    return section;
  }

  const PlannedOrder& planned_;
  const PlacementPlan& plan_;
  const UnitChoice& units_;
};

}  // namespace

QString sourceOf(const Reason& reason) {
  return Sections::sourceOf(reason);
}

PlacementReasons reasonsFor(const PlannedOrder& planned, const PlacementPlan& plan) {
  return Sections(planned, plan).all();
}

}  // namespace creaseline::desk
