// SPDX-License-Identifier: MIT
// Kinds of sheets, and sets of them chosen by tick.
//
// Each kind is one file src/sheets/kinds/<name>.cpp that defines `SheetKind <name>Kind()` (the name
// in lower camel case) in namespace creaseline; the build lists the folder, so that a new kind
// needs no other file. What a kind shows it takes from the plan and from what planning makes of
// it; it computes nothing but layout.
#pragma once

#include <QString>
#include <functional>
#include <string>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/order.h"
#include "creaseline/catalogue/rules.h"
#include "creaseline/catalogue/shop.h"
#include "creaseline/planning/plan.h"
#include "creaseline/sheets/sheet.h"

namespace creaseline {

// What the sheets draw from; the parts must belong together and outlive every document made.
struct SheetContext {
  const Plan& plan;
  const Order& order;
  const Shop& shop;
  const Rules& rules;
  UnitChoice units;
  bool prices = true;  // false: no money on any sheet
};

// Further templates, only where asked for.
struct TemplateVariants {
  bool mirrored = false;  // as seen from the back of the cloth
  bool turned = false;    // upside down, for a piece that is loaded with its top towards the user
};

struct SheetKind {
  int position = 0;   // in the set, ascending
  std::string id;     // for the command line: "run-cards"
  QString name;       // "Run cards"
  QString what;       // one sentence for the one who ticks
  bool usual = true;  // ticked unless the user says otherwise
  std::function<std::vector<SheetSection>(const SheetContext&, const SheetHead&,
                                          const TemplateVariants&)>
      sections;
};

// All kinds in the order of the set, named in the language spoken; they stay for good.
[[nodiscard]] const std::vector<SheetKind>& sheetKinds();

struct SheetChoice {
  std::vector<std::string> kinds;  // ids; empty: all usual ones
  Paper paper = Paper::A4;
  TemplateVariants variants;
  bool prices = true;  // on the order summary, where the shop has rates; never on other sheets
};

// The chosen kinds in the set's order. Throws std::invalid_argument for an id that no kind has.
// `context`'s parts must outlive the document.
[[nodiscard]] SheetDocument sheetSet(const SheetContext& context, const SheetChoice& choice);

}  // namespace creaseline
