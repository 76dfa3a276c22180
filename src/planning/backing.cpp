// SPDX-License-Identifier: MIT
#include "planning/backing.h"

#include "base/worded.h"

#include <algorithm>

namespace creaseline {
namespace {

template <class T>
bool among(const std::vector<T>& wanted, T value) {
  return wanted.empty() || std::find(wanted.begin(), wanted.end(), value) != wanted.end();
}

template <class T>
bool within(const std::optional<T>& from, const std::optional<T>& below, const T& value) {
  return (!from || value >= *from) && (!below || value < *below);
}

bool agrees(const std::optional<bool>& wanted, bool value) {
  return !wanted || *wanted == value;
}

bool holds(const BackingConditions& when, const BackingQuestion& question) {
  const Fabric& fabric = *question.fabric;
  const bool magnetic =
      question.frame != nullptr && question.frame->frame->kind == FrameKind::Magnetic;
  return among(when.construction, fabric.construction) && among(when.stretch, fabric.stretch) &&
         among(when.pile, fabric.pile) && among(when.panels, question.panel) &&
         among(when.bands, question.band) && agrees(when.insideSeen, question.insideSeen) &&
         agrees(when.sheer, fabric.sheer) && agrees(when.magneticFrame, magnetic) &&
         within(when.weightFrom, when.weightBelow, fabric.weight) &&
         within(when.densityFrom, when.densityBelow, question.design->stitchesPerSquareMm());
}

template <class T>
void replace(T& value, const std::optional<T>& by) {
  if (by) {
    value = *by;
  }
}

void apply(BackingChoice& choice, const BackingRule& rule, bool assumed) {
  replace(choice.kind, rule.kind);
  replace(choice.leastWeight, rule.leastWeight);
  replace(choice.layers, rule.layers);
  replace(choice.hold, rule.hold);
  replace(choice.topping, rule.topping);
  replace(choice.needleSize, rule.needleSize);
  replace(choice.needlePoint, rule.needlePoint);
  replace(choice.skinCover, rule.skinCover);
  if (rule.mostDensity) {
    choice.mostDensity = rule.mostDensity;
  }
  choice.fired.push_back(
      {rule.because,
       rule.id,
       rule.basis,
       assumed,
       {},
       assumed ? worded("saying what the garment is made of")
               : worded("another cloth, or a design with other stitches on its area")});
}

// A piece may be cut either way of the roll or sheet.
bool yieldsPiece(const BackingStock& stock, Length width, Length height) {
  const auto fits = [&stock](Length across, Length along) {
    return across <= stock.width && along <= stock.length;
  };
  const bool anyLeft = stock.form == BackingForm::Roll || stock.sheets > 0;
  return anyLeft && (fits(width, height) || fits(height, width));
}

// The lightest entry that is heavy enough, so that the design does not get stiffer than needed.
const BackingStock* findStock(const BackingChoice& choice, const Workshop& workshop) {
  const BackingStock* best = nullptr;
  for (const BackingStock& stock : workshop.backings) {
    if (stock.kind != choice.kind || stock.weight < choice.leastWeight ||
        !yieldsPiece(stock, choice.cutWidth, choice.cutHeight)) {
      continue;
    }
    if (best == nullptr || stock.weight < best->weight) {
      best = &stock;
    }
  }
  return best;
}

}  // namespace

BackingChoice chooseBacking(const BackingQuestion& question, const Workshop& workshop) {
  BackingChoice choice;
  for (const BackingRule& rule : workshop.rules->backing) {
    if (holds(rule.when, question)) {
      apply(choice, rule, question.fabric->proposed);
    }
  }
  if (question.frame != nullptr) {
    const Length margin = workshop.figures.clampMargin * 2.0;
    choice.cutWidth = question.frame->bodyWidth + margin;
    choice.cutHeight = question.frame->bodyHeight + margin;
  }
  if (const BackingStock* stock = findStock(choice, workshop)) {
    choice.stock = stock->id;
    choice.stockName = stock->name;
  }
  return choice;
}

}  // namespace creaseline
