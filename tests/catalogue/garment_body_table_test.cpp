// SPDX-License-Identifier: MIT
// Drawn garments against open tables of body measurements and one published lettering size.
//
// Letter codes and chest girths: EN 13402-3:2004, as transcribed. Bodies: C. C. Gordon et al.,
// 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007 (ANSUR II), fit adults of 17
// to 58, hence an envelope of what is plausible and no more. Ease is common practice, no source.
#include <catch2/catch.hpp>
#include <numbers>

#include "catalogue/garment_sizes.h"

using namespace creaseline;
using namespace creaseline::garment_test;

namespace {

constexpr double kXlChestCm = 118.0;        // EN 13402-3, men's XL ends here
constexpr double kRegularTeeEaseCm = 12.0;  // middle of 8 to 16
constexpr double kSweatshirtEaseCm = 18.0;  // near the middle of 14 to 24

struct BodyBand {
  std::string sex;
  double chestLow = 0.0, chestHigh = 0.0;  // cm
  double neckBase = 0.0, biacromialLow = 0.0;
};

bool hasLongSleeves(const GarmentKind& kind) {
  return kind.sleeve == SleeveForm::Long;
}

// Those with neck and shoulders.
std::vector<GarmentKind> bodyKinds() {
  std::vector<GarmentKind> kinds = shippedRules().kinds;
  std::erase_if(kinds, [](const GarmentKind& kind) { return kind.form != KindForm::Body; });
  REQUIRE(kinds.size() == 14);
  return kinds;
}

// What is worn over other clothes; of the kinds with short sleeves none is.
bool isLoose(const GarmentKind& kind) {
  return kind.sleeve != SleeveForm::Short;
}

// The kind in the size that a chest girth asks for; lengths are invented and play no part.
GarmentShape fittedTo(const GarmentKind& kind, double chestCm) {
  const double ease = isLoose(kind) ? kSweatshirtEaseCm : kRegularTeeEaseCm;
  const SizeBand band = chestCm < kXlChestCm ? SizeBand::Adult : SizeBand::AdultAboveXl;
  return drawn(kind, chartSize("test", band, (chestCm + ease) / 2.0, 75.0));
}

double neckOpeningCm(const GarmentShape& shape) {
  const PanelShape& front = *shape.panel(PanelName::Front);
  return (cornersOf(front, EdgeName::CollarSeam, true).back().x -
          cornersOf(front, EdgeName::CollarSeam, false).front().x) /
         10.0;
}

double shoulderSeamToSeamCm(const GarmentShape& shape) {
  const PanelShape& front = *shape.panel(PanelName::Front);
  return (cornersOf(front, EdgeName::ShoulderSeam, true).back().x -
          cornersOf(front, EdgeName::ShoulderSeam, false).front().x) /
         10.0;
}

double lengthOf(const Polyline& line) {
  double sum = 0.0;
  for (std::size_t i = 1; i < line.size(); ++i) {
    sum += norm(line[i] - line[i - 1]);
  }
  return sum;
}

std::vector<BodyBand> bodyBands() {
  std::vector<BodyBand> bands;
  for (const Row& row : tableRows(BENCHMARK_DATA "/body/ansur2_by_chest_band.csv")) {
    bands.push_back({row.at("sex"), std::stod(row.at("chest_lo_cm")),
                     std::stod(row.at("chest_hi_cm")),
                     std::stod(row.at("neckcircumferencebase_mean")),
                     std::stod(row.at("biacromialbreadth_p5"))});
  }
  return bands;
}

double percentile(const std::string& sex, const std::string& measure, const std::string& column) {
  for (const Row& row : tableRows(BENCHMARK_DATA "/body/ansur2_percentiles.csv")) {
    if (row.at("sex") == sex && row.at("measure") == measure) {
      return std::stod(row.at(column));
    }
  }
  FAIL("no " << measure << " for " << sex);
  return 0.0;
}

bool skipWithoutTables(const std::vector<BodyBand>& bands) {
  if (bands.empty()) {
    WARN("skipped: no body tables in " BENCHMARK_DATA "/body");
  }
  return bands.empty();
}

}  // namespace

TEST_CASE("men's regular M is 51 to 59 cm from pit to pit", "[garment][outside]") {
  // EN 13402-3:2004, men's M: chest 94 to 102 cm; regular ease 8 to 16 cm, common practice, no
  // source; half of the sum is 51 to 59 cm.
  const std::vector<Row> letters = tableRows(BENCHMARK_DATA "/body/en13402_letters.csv");
  if (letters.empty()) {
    WARN("skipped: no letter codes in " BENCHMARK_DATA "/body");
    return;
  }
  const auto medium = std::find_if(letters.begin(), letters.end(), [](const Row& row) {
    return row.at("sex") == "men" && row.at("code") == "M";
  });
  REQUIRE(medium != letters.end());
  const double low = std::stod(medium->at("girth_lo_cm"));
  const double high = std::stod(medium->at("girth_hi_cm"));
  for (const double chest : {low, (low + high) / 2.0, high}) {
    const GarmentShape shape = fittedTo(kindNamed("t-shirt"), chest);
    const PanelShape& front = *shape.panel(PanelName::Front);
    const double pitToPit = (cornersOf(front, EdgeName::SideSeam, true).front().x -
                             cornersOf(front, EdgeName::SideSeam, false).back().x) /
                            10.0;
    CHECK(pitToPit >= (94.0 + 8.0) / 2.0);
    CHECK(pitToPit <= (102.0 + 16.0) / 2.0);
  }
}

TEST_CASE("filled neck openings clear the neck and leave shoulders", "[garment][outside]") {
  // ANSUR II: neck base of the band over pi is the least width; two shoulder seams of 8 cm each
  // must remain (common practice, no source).
  const std::vector<BodyBand> bands = bodyBands();
  if (skipWithoutTables(bands)) {
    return;
  }
  for (const GarmentKind& kind : bodyKinds()) {
    for (const BodyBand& band : bands) {
      for (const double chest : {band.chestLow, band.chestHigh}) {
        const GarmentShape shape = fittedTo(kind, chest);
        CAPTURE(kind.id.text(), band.sex, chest);
        CHECK(neckOpeningCm(shape) >= band.neckBase / std::numbers::pi);
        CHECK(neckOpeningCm(shape) <= shoulderSeamToSeamCm(shape) - 16.0);
      }
    }
  }
}

TEST_CASE("crew necks of men's M are of the usual width", "[garment][outside]") {
  // 16 to 20 cm, common practice, no source.
  for (const char* kind : {"t-shirt", "crew-sweatshirt"}) {
    const double width = neckOpeningCm(fittedTo(kindNamed(kind), 98.0));
    CHECK(width >= 16.0);
    CHECK(width <= 20.0);
  }
}

TEST_CASE("filled shoulders lie between the bones and the muscles", "[garment][outside]") {
  // ANSUR II: biacromial breadth, 5th percentile of the band, to bideltoid breadth, 95th
  // percentile, plus 6 cm (common practice, no source).
  const std::vector<BodyBand> bands = bodyBands();
  if (skipWithoutTables(bands)) {
    return;
  }
  for (const GarmentKind& kind : bodyKinds()) {
    for (const BodyBand& band : bands) {
      const double most = percentile(band.sex, "bideltoidbreadth", "p95") + 6.0;
      for (const double chest : {band.chestLow, band.chestHigh}) {
        CAPTURE(kind.id.text(), band.sex, chest);
        const double shoulders = shoulderSeamToSeamCm(fittedTo(kind, chest));
        CHECK(shoulders >= band.biacromialLow);
        CHECK(shoulders <= most);
      }
    }
  }
}

TEST_CASE("filled shoulders grow slower than the chest", "[garment][outside]") {
  // ANSUR II: biacromial breadth grows by 0.9 cm for 8 cm of chest in men, so an outline whose
  // shoulders keep their share of the chest is wrong.
  const GarmentKind& tee = kindNamed("t-shirt");
  const GarmentShape small = fittedTo(tee, 90.0);
  const GarmentShape large = fittedTo(tee, 122.0);
  const auto share = [](const GarmentShape& shape) {
    return shoulderSeamToSeamCm(shape) * 10.0 / millimetres(shape, Measure::BodyWidth);
  };
  CHECK(share(large) < share(small) - 0.05);
}

TEST_CASE("filled long sleeves reach the wrist", "[garment][outside]") {
  // ANSUR II men: sleeve outseam within 5 cm. The filled sleeve follows the men's figures.
  const std::vector<BodyBand> bands = bodyBands();
  if (skipWithoutTables(bands)) {
    return;
  }
  const double outseam = percentile("male", "sleeveoutseam", "mean_cm");
  for (const GarmentKind& kind : bodyKinds()) {
    if (!hasLongSleeves(kind)) {
      continue;
    }
    for (const BodyBand& band : bands) {
      if (band.sex == "male") {
        const GarmentShape shape = fittedTo(kind, (band.chestLow + band.chestHigh) / 2.0);
        CAPTURE(kind.id.text(), band.chestLow);
        const Box sleeve = ringBounds(shape.panel(PanelName::LeftSleeve)->outline);
        CHECK(std::abs(sleeve.height() / 10.0 - outseam) <= 5.0);
      }
    }
  }
}

TEST_CASE("a head goes through a crew neck", "[garment][outside]") {
  // ANSUR II: head circumference, 95th percentile. Neck rib stretches to half as much again, from
  // memory.
  constexpr double kRibStretch = 1.5;
  const std::vector<BodyBand> bands = bodyBands();
  if (skipWithoutTables(bands)) {
    return;
  }
  for (const char* kind : {"t-shirt", "crew-sweatshirt"}) {
    for (const BodyBand& band : bands) {
      const GarmentShape shape = fittedTo(kindNamed(kind), band.chestLow);
      double seam = 0.0;
      for (const PanelName name : {PanelName::Front, PanelName::Back}) {
        seam += 2.0 * lengthOf(cornersOf(*shape.panel(name), EdgeName::CollarSeam, true));
      }
      CAPTURE(kind, band.sex, band.chestLow);
      CHECK(kRibStretch * seam / 10.0 >= percentile(band.sex, "headcircumference", "p95"));
    }
  }
}

TEST_CASE("published front lettering lies on the T-shirt's front in every size",
          "[garment][outside]") {
  // A-A-55069, 17 June 1992: lettering 12 in wide and 3 in high, the same on all sizes; chests S
  // 34-36, M 38-40, L 42-44, XL 46-48, XXL 50-52 in. Placed by the trade's chest rule and kept
  // 10 mm off every seam (both common practice, no source).
  constexpr double kInch = 25.4;
  const std::pair<const char*, double> chestInches[] = {
      {"S", 35}, {"M", 39}, {"L", 43}, {"XL", 47}, {"XXL", 51}};
  for (const auto& [name, chest] : chestInches) {
    const GarmentShape shape = fittedTo(kindNamed("t-shirt"), chest * kInch / 10.0);
    const Ring& front = shape.panel(PanelName::Front)->outline;
    const double top = (std::string(name) == "XXL" ? 4.0 : 3.0) * kInch;
    CAPTURE(name);
    for (const double x : {-6.0 * kInch, 6.0 * kInch}) {
      for (const double y : {top, top + 3.0 * kInch}) {
        CHECK(contains(front, {x, y}));
        CHECK(nearestSide(front, {x, y}).distance >= 10.0);
      }
    }
  }
}
