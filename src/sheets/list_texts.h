// SPDX-License-Identifier: MIT
// Words and contexts that the list sheets share.
#pragma once

#include <QColor>
#include <QString>
#include <string>
#include <string_view>

#include "creaseline/base/colour.h"
#include "creaseline/planning/run_card.h"
#include "creaseline/sheets/sheet_kind.h"
#include "sheets/sheet_list.h"

namespace creaseline {

// What planning is asked with; refers to the context's own parts.
[[nodiscard]] inline ReportContext reportContext(const SheetContext& context) {
  return {context.order, context.shop, context.rules};
}
[[nodiscard]] inline RunPlan runsOf(const SheetContext& context) {
  return planRuns(context.plan, reportContext(context), context.units);
}

[[nodiscard]] inline QColor inkOf(const Colour& colour) {
  return {colour.red, colour.green, colour.blue};
}
// "1,234"
[[nodiscard]] QString countText(std::int64_t number);
// "3 stitches": the words marked by toBeWorded(), said in the language spoken.
[[nodiscard]] QString countText(int number, std::string_view one, std::string_view many);
// "XL × 3", which no line end splits.
[[nodiscard]] QString quantityText(const SizeName& size, int quantity);
// "Hoodie, navy"; the name alone if no colour is stated.
[[nodiscard]] QString colouredName(const std::string& name, const std::string& colour);
// Runs of blanks and line ends become one blank.
[[nodiscard]] QString oneLine(const std::string& text);

// What must not be sewn, with reasons and remedies; nothing if the list is empty.
void addHeld(SheetList& list, const std::vector<HeldGarments>& held);

}  // namespace creaseline
