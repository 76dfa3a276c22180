// SPDX-License-Identifier: MIT
// The page of all rules: generated, so that it cannot differ from what the planner uses.
#include "rules_markdown.h"

#include <fmt/format.h>

#include "creaseline/base/units.h"
#include "creaseline/planning/wording.h"

namespace creaseline {

namespace {

constexpr UnitChoice kFineInches{LengthUnit::Inch, RulerMark::Sixteenth,
                                 WeightUnit::GramsPerSquareMetre};

// "3 in (76.2 mm)" where a ruler's mark says it exactly, else millimetres alone.
std::string lengthText(Length value) {
  if (roundToMark(value, kFineInches) == value) {
    return fmt::format("{} ({})", formatLength(value, kFineInches), exactText(value));
  }
  return exactText(value);
}

// A cell may not end early.
std::string cell(std::string_view text) {
  std::string escaped;
  for (const char c : text) {
    escaped += c == '|' ? "\\|" : std::string(1, c);
  }
  return escaped;
}

void enlist(std::string& list, const std::string& entry, const char* separator = ", ") {
  if (!entry.empty()) {
    list += (list.empty() ? "" : separator) + entry;
  }
}

template <class T>
std::string identifiers(const std::vector<T>& values) {
  std::string list;
  for (const T& value : values) {
    enlist(list, value.text());
  }
  return list;
}

template <class E>
std::string enumerators(const std::vector<E>& values) {
  std::string list;
  for (const E value : values) {
    enlist(list, std::string(nameOf(value)));
  }
  return list;
}

// "kinds polo; sizes youth", or `otherwise` if nothing is asked for.
class Conditions {
 public:
  void add(const char* what, const std::string& value) {
    if (!value.empty()) {
      enlist(text_, fmt::format("{} {}", what, value), "; ");
    }
  }
  [[nodiscard]] std::string text(const char* otherwise) const {
    return text_.empty() ? otherwise : text_;
  }

 private:
  std::string text_;
};

std::string yesOrNo(const std::optional<bool>& value) {
  return !value ? "" : *value ? "yes" : "no";
}

class RulesPage {
 public:
  explicit RulesPage(const Rules& rules) : rules_(rules) {}

  std::string write() {
    page_ =
        "# Rules and their basis\n\n"
        "Written by `creaseline rules` from the data in `resources/`. Do not edit: change the "
        "data.\n\n"
        "A basis of *common practice, no source* is what the trade does; check it against a "
        "garment.\n"
        "A shop's house rules win over these.\n";
    locations();
    placement();
    backing();
    frameEdges();
    openings();
    layers();
    preparations();
    fabrics();
    cautions();
    monograms();
    defaults();
    proportions();
    return std::move(page_);
  }

 private:
  void table(std::string_view title, std::string_view lead, std::string_view head, int columns) {
    page_ += fmt::format("\n## {}\n\n{}\n\n{}\n|", title, lead, head);
    for (int column = 0; column < columns; ++column) {
      page_ += " --- |";
    }
    page_ += '\n';
  }

  void row(std::initializer_list<std::string> cells) {
    page_ += '|';
    for (const std::string& text : cells) {
      page_ += fmt::format(" {} |", cell(text));
    }
    page_ += '\n';
  }

  void locations() {
    table("Locations", "Left and right are the wearer's.", "| Location | Name | Where |", 3);
    for (const Location& location : rules_.locations) {
      row({"`" + location.id.text() + "`", location.name, sidePhrase(location)});
    }
  }

  void placement() {
    table("Placement", "The first rule that matches is used.",
          "| Rule | Location | For | Distance | Sideways | Turn | Design limits | Basis |", 8);
    for (const PlacementRule& rule : rules_.placement) {
      row({"`" + rule.id.text() + "`", rule.location.text(), appliesTo(rule), distance(rule),
           sideways(rule), turn(rule), limits(rule), basis(rule)});
    }
  }

  static std::string appliesTo(const PlacementRule& rule) {
    Conditions conditions;
    conditions.add("kinds", identifiers(rule.kinds));
    conditions.add("bands", enumerators(rule.bands));
    conditions.add("sizes", identifiers(rule.sizes));
    conditions.add("blanks", identifiers(rule.blanks));
    return conditions.text("all");
  }

  static std::string distance(const PlacementRule& rule) {
    return fmt::format("{} of the design {} {}; from {} to {}",
                       rule.anchor == Anchor::Centre ? "centre" : "near edge",
                       lengthText(rule.distance), landmarkPhrase(rule.from), lengthText(rule.least),
                       lengthText(rule.most));
  }

  static std::string sideways(const PlacementRule& rule) {
    switch (rule.sideways) {
      case Sideways::CentreLine:
        return "on the centre line";
      case Sideways::FromCentreLine:
        return lengthText(rule.sidewaysDistance) + " from the centre line";
      case Sideways::PlacketToArmhole:
        return "midway between placket (or centre line) and armhole";
      case Sideways::PocketMiddle:
        return "over the middle of the pocket";
      case Sideways::FromSide:
        return lengthText(rule.sidewaysDistance) + " in from the side";
    }
    return {};
  }

  static std::string turn(const PlacementRule& rule) {
    std::string text = rule.turn == Angle() ? "none" : formatAngle(rule.turn);
    enlist(text, rule.turnReason, ": ");
    return text;
  }

  static std::string limits(const PlacementRule& rule) {
    Conditions conditions;
    conditions.add("width at least", rule.leastWidth ? lengthText(*rule.leastWidth) : "");
    conditions.add("width at most", rule.mostWidth ? lengthText(*rule.mostWidth) : "");
    conditions.add("height at least", rule.leastHeight ? lengthText(*rule.leastHeight) : "");
    conditions.add("height at most", rule.mostHeight ? lengthText(*rule.mostHeight) : "");
    return conditions.text("none");
  }

  static std::string basis(const PlacementRule& rule) {
    std::string text = rule.basis;
    enlist(text, rule.note, "; ");
    return text;
  }

  void backing() {
    table("Backing and needle",
          "All rules that apply are used, in this order; a later one replaces what it names.",
          "| Rule | When | Answer | Because | Basis |", 5);
    for (const BackingRule& rule : rules_.backing) {
      row({"`" + rule.id.text() + "`", when(rule.when), answer(rule), rule.because, rule.basis});
    }
  }

  static std::string when(const BackingConditions& when) {
    Conditions conditions;
    conditions.add("construction", enumerators(when.construction));
    conditions.add("stretch", enumerators(when.stretch));
    conditions.add("pile", enumerators(when.pile));
    conditions.add("panels", enumerators(when.panels));
    conditions.add("bands", enumerators(when.bands));
    conditions.add("inside seen", yesOrNo(when.insideSeen));
    conditions.add("sheer", yesOrNo(when.sheer));
    conditions.add("magnetic frame", yesOrNo(when.magneticFrame));
    conditions.add("weight from", when.weightFrom ? exactText(*when.weightFrom) : "");
    conditions.add("weight below", when.weightBelow ? exactText(*when.weightBelow) : "");
    conditions.add("stitches per mm² from", density(when.densityFrom));
    conditions.add("stitches per mm² below", density(when.densityBelow));
    return conditions.text("always");
  }

  static std::string density(const std::optional<double>& value) {
    return value ? fmt::format("{:.4g}", *value) : "";
  }

  static std::string answer(const BackingRule& rule) {
    Conditions answers;
    answers.add("backing", rule.kind ? std::string(nameOf(*rule.kind)) : "");
    answers.add("at least", rule.leastWeight ? exactText(*rule.leastWeight) : "");
    answers.add("layers", rule.layers ? std::to_string(*rule.layers) : "");
    answers.add("held", rule.hold ? std::string(nameOf(*rule.hold)) : "");
    answers.add("topping", yesOrNo(rule.topping));
    answers.add("needle", rule.needleSize ? std::to_string(*rule.needleSize) : "");
    answers.add("needle point", rule.needlePoint ? std::string(nameOf(*rule.needlePoint)) : "");
    answers.add("soft cover", yesOrNo(rule.skinCover));
    answers.add("stitches per mm² at most", density(rule.mostDensity));
    return answers.text("nothing");
  }

  void frameEdges() {
    table("Frames across garment edges",
          "Whether a frame's body may lie across an edge, and where the machine's arm reaches in.",
          "| Rule | Edge | May lie across | The arm goes in through | Because | Basis |", 6);
    for (const FrameEdgeRule& rule : rules_.frameEdges) {
      row({"`" + rule.id.text() + "`", edgePhrase(rule.edge), crossing(rule.crossing),
           rule.armThrough.empty() ? "-" : rule.armThrough, rule.because, rule.basis});
    }
  }

  static std::string crossing(EdgeCrossing crossing) {
    switch (crossing) {
      case EdgeCrossing::Never:
        return "never";
      case EdgeCrossing::WindowStays:
        return "while the window stays on the cloth";
      case EdgeCrossing::May:
        return "yes";
    }
    return {};
  }

  void cautions() {
    table("Cautions", "Local law, the garment maker and the employer come first.",
          "| Rule | When | Caution | Basis |", 4);
    for (const Caution& caution : rules_.cautions) {
      row({"`" + caution.id.text() + "`", std::string(nameOf(caution.when)), caution.text,
           caution.basis});
    }
  }

  static std::string onPanels(const std::vector<PanelName>& panels,
                              const std::vector<LocationId>& locations) {
    std::string text = enumerators(panels);
    for (std::size_t i = 0; i < locations.size(); ++i) {
      text += (i == 0 ? ", at " : ", ") + locations[i].text() +
              (i + 1 == locations.size() ? " alone" : "");
    }
    return text;
  }

  void openings() {
    table("Openings", "Where a frame's ring goes into a garment that is sewn to a tube.",
          "| Kind | Opening | Panels | Flat width | Basis |", 5);
    for (const GarmentKind& kind : rules_.kinds) {
      for (const Opening& opening : kind.openings) {
        row({"`" + kind.id.text() + "`", opening.name,
             onPanels(opening.panels, opening.intoPocketAt),
             opening.width ? std::string(nameOf(*opening.width)) : "lies flat", opening.basis});
      }
    }
  }

  void layers() {
    table("Layers", "What lies behind a panel and must not be sewn in.",
          "| Kind | Behind | Panels | At the table | Basis |", 5);
    for (const GarmentKind& kind : rules_.kinds) {
      for (const LayerBehind& layer : kind.layers) {
        row({"`" + kind.id.text() + "`", layer.name, onPanels(layer.panels, layer.locations),
             layer.step, layer.basis});
      }
    }
  }

  void preparations() {
    table("Before hooping", "What brings the side that is sewn to the top.",
          "| Kind | Panels | At the table | Basis |", 4);
    for (const GarmentKind& kind : rules_.kinds) {
      for (const Preparation& preparation : kind.preparations) {
        row({"`" + kind.id.text() + "`", enumerators(preparation.panels), preparation.step,
             preparation.basis});
      }
    }
  }

  void fabrics() {
    table("Usual fabrics",
          "What a new garment is taken to be of until somebody says what it is of.",
          "| Kind | Fabric | Weight | Pile | Stretch | Basis |", 6);
    for (const GarmentKind& kind : rules_.kinds) {
      const Fabric& fabric = kind.usualFabric.fabric;
      std::string fibres;
      for (const FibreShare& share : fabric.fibres) {
        fibres +=
            fmt::format("{}{:.6g} % {}", fibres.empty() ? "" : ", ", share.percent, share.fibre);
      }
      row({"`" + kind.id.text() + "`",
           fmt::format("{}, {}, {}", fabric.name, nameOf(fabric.construction), fibres),
           formatArealWeight(fabric.weight, {}), std::string(nameOf(fabric.pile)),
           std::string(nameOf(fabric.stretch)), kind.usualFabric.basis});
    }
  }

  void monograms() {
    table("Monograms", "Whose letter stands where, from the left; the customer's wish comes first.",
          "| Rule | Style | Letters | Basis |", 4);
    for (const MonogramRule& rule : rules_.monograms) {
      row({"`" + rule.id.text() + "`", std::string(nameOf(rule.style)), enumerators(rule.letters),
           rule.basis});
    }
  }

  void defaults() {
    table("Defaults", "Single figures that a shop may replace.", "| Figure | Value | Basis |", 3);
    for (const DefaultValue* value : rules_.defaults.all()) {
      row({"`" + value->id + "`", value->text, value->basis});
    }
  }

  void proportions() {
    page_ +=
        "\n## Measures that a size chart lacks\n\n"
        "Filled by proportion and shown as *assumed*. For each measure the first rule whose own\n"
        "measure is known is used.\n";
    for (const GarmentKind& kind : rules_.kinds) {
      page_ += fmt::format(
          "\n### {}\n\n| Rule | Measure | Value | For | Basis |\n"
          "| --- | --- | --- | --- | --- |\n",
          kind.name);
      for (const ProportionRule& rule : kind.proportions) {
        const std::string bands = enumerators(rule.bands);
        row({"`" + rule.id.text() + "`", measurePhrase(rule.measure), proportion(rule),
             bands.empty() ? "all" : bands, rule.basis});
      }
    }
  }

  static std::string proportion(const ProportionRule& rule) {
    if (!rule.of) {
      return exactText(rule.plus);
    }
    std::string text = fmt::format("{:.4g} × {}", rule.factor, measurePhrase(*rule.of));
    if (rule.plus != Length()) {
      text += fmt::format(" {} {}", rule.plus < Length() ? "-" : "+", exactText(abs(rule.plus)));
    }
    return text;
  }

  const Rules& rules_;
  std::string page_;
};

}  // namespace

std::string rulesMarkdown(const Rules& rules) {
  return RulesPage(rules).write();
}

}  // namespace creaseline
