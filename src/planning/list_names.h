// SPDX-License-Identifier: MIT
// Names by which lists call what the order and the rules know by its id.
#pragma once

#include <optional>
#include <string>

#include "creaseline/planning/report.h"

namespace creaseline {

// The blank's name, or its id if the order does not hold it.
std::string blankName(const ReportContext& context, const OrderLine& line);
// The line's colour, if its blank knows one of that name.
std::optional<Colour> clothColour(const ReportContext& context, const OrderLine& line);
SizeChart chartOf(const ReportContext& context, const OrderLine& line);
std::string locationName(const ReportContext& context, const LocationId& id);
// The design as ordered at that place, whether one hooping sews it or several.
Design wholeDesign(const ReportContext& context, const PlacementPlan& plan);
// "sew it at 92 %: frame B holds it"; empty if there is none.
std::string firstRemedy(const Finding& finding);

}  // namespace creaseline
