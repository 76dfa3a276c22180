// SPDX-License-Identifier: MIT
// Checks of single fields while somebody types: the value, or one sentence to show beside the
// field. They ask for what the readers of files ask for, so that what passes can be saved and read.
// Spaces around a text do not count.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "creaseline/base/result.h"
#include "creaseline/base/units.h"
#include "creaseline/catalogue/order.h"

namespace creaseline {

struct LengthRange {
  Length least, most;  // both included
};

// A number without a unit is read in `bareUnit`; fractions and decimal commas serve.
[[nodiscard]] Result<Length> checkLengthText(std::string_view text, LengthUnit bareUnit,
                                             const LengthRange& range);
[[nodiscard]] Result<Length> checkMove(std::string_view text, LengthUnit bareUnit);
[[nodiscard]] Result<Length> checkMeasure(std::string_view text, LengthUnit bareUnit,
                                          Measure measure);
[[nodiscard]] Result<Length> checkDesignSide(std::string_view text, LengthUnit bareUnit);
[[nodiscard]] Result<Angle> checkTurn(std::string_view text);
[[nodiscard]] Result<ArealWeight> checkFabricWeight(std::string_view text);
[[nodiscard]] Result<Colour> checkColour(std::string_view text);

// Garments of one size; nothing typed is none, 0.
[[nodiscard]] Result<int> checkQuantity(std::string_view text);
[[nodiscard]] Result<int> checkStitches(std::string_view text);
// "0.9" or "90 %"; the design must stay large enough to sew.
[[nodiscard]] Result<double> checkScale(std::string_view text, const Design& design,
                                        const UnitChoice& units);
// Nothing, or a date that exists, "2026-12-04".
[[nodiscard]] Result<std::string> checkDue(std::string_view text);

// One line: a title, a customer, a name. Nothing passes where `mayBeEmpty`.
[[nodiscard]] Result<std::string> checkLabel(std::string_view text, bool mayBeEmpty);
// A note, of several lines if need be.
[[nodiscard]] Result<std::string> checkNote(std::string_view text);
// A label that none of the others has; `whatIsIt` as in "line id", in English.
[[nodiscard]] Result<std::string> checkDistinct(std::string_view text,
                                                const std::vector<std::string>& others,
                                                std::string_view whatIsIt);
// For the line at `index`; one past the last for a line to be added.
[[nodiscard]] Result<std::string> checkLineId(std::string_view text, const Order& order,
                                              std::size_t index);
[[nodiscard]] Result<std::string> checkBlankId(std::string_view text, const Order& order,
                                               std::size_t index);
[[nodiscard]] Result<std::string> checkDesignId(std::string_view text, const Order& order,
                                                std::size_t index);

// What is wrong with the fibres of a fabric, or nothing.
[[nodiscard]] std::optional<std::string> fibresProblem(const std::vector<FibreShare>& fibres);

}  // namespace creaseline
