// SPDX-License-Identifier: MIT
#include "desk/reason_sections.h"

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

QString everything(const PlacementReasons& reasons) {
  QStringList text{reasons.title, reasons.subtitle};
  for (const ReasonSection& section : reasons.sections) {
    text.append(section.heading);
    for (const QString& answer : section.answers) {
      text.append(answer);
    }
    for (const ReasonLine& line : section.lines) {
      text.append(line.text + QLatin1Char(' ') + line.source);
    }
  }
  return text.join(QLatin1Char('\n'));
}

}  // namespace

TEST_CASE("The reasons name rule and basis, every ruled-out frame and every assumed measure",
          "[desk][reasons]") {
  const auto planned = plannedDemo();
  for (const PlacementPlan& plan : planned->plan()->placements) {
    const PlacementReasons reasons = reasonsFor(*planned, plan);
    const QString text = everything(reasons);
    CAPTURE(reasons.title, text);
    CHECK(reasons.state == plan.worst);
    for (const Reason& reason : plan.placed.dropReasons) {
      CHECK(text.contains(toQString(reason.rule.text())));
      CHECK(text.contains(toQString(reason.basis)));
    }
    for (const FrameRejection& rejection : plan.rejections) {
      CHECK(text.contains(toQString(rejection.what)));
    }
    std::size_t assumed = 0;
    for (const ReasonSection& section : reasons.sections) {
      CHECK_FALSE((section.answers.empty() && section.lines.empty()));
      if (section.heading == QStringLiteral("Assumed measures")) {
        assumed = section.lines.size();
      }
    }
    CHECK(assumed == plan.assumed.size());
  }
}

TEST_CASE("Reasons are of the garment that was planned, whatever lines were taken out since",
          "[desk][reasons]") {
  const auto planned = plannedDemo();
  const PlacementPlan& last = planned->plan()->placements.back();
  REQUIRE(last.line > 0);
  auto fewer = std::make_shared<Order>(*planned->order());
  fewer->lines.erase(fewer->lines.begin());
  const PlacementReasons before = reasonsFor(*planned, last);
  const PlacementReasons after = reasonsFor(planned->withOrder(fewer), last);
  CHECK(after.subtitle == before.subtitle);
  CHECK(everything(after) == everything(before));
}

TEST_CASE("The same reasons in millimetres hold no inch of the desk's own numbers",
          "[desk][reasons][units]") {
  const UnitChoice metric{LengthUnit::Millimetre, RulerMark::Eighth,
                          WeightUnit::GramsPerSquareMetre};
  const UnitChoice inches{LengthUnit::Inch, RulerMark::Eighth, WeightUnit::GramsPerSquareMetre};
  const PlacementPlan& plan = plannedDemo()->plan()->placements.front();
  const PlacementReasons inMm = reasonsFor(plannedDemo()->withUnits(metric), plan);
  const PlacementReasons inInches = reasonsFor(plannedDemo()->withUnits(inches), plan);
  CHECK(inMm.subtitle.contains(QStringLiteral(" mm")));
  CHECK_FALSE(inMm.subtitle.contains(QStringLiteral(" in ")));
  CHECK(inInches.subtitle.contains(QStringLiteral(" in")));
  CHECK(everything(inMm) != everything(inInches));
}
