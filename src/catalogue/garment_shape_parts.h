// SPDX-License-Identifier: MIT
// Parts of garment_shape: what the drawing of body, sleeve and hood share. All numbers are panel
// coordinates in millimetres.
#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "creaseline/catalogue/garment_shape.h"

namespace creaseline::garment {

// No chord of a drawn curve is longer.
inline constexpr double kLongestChord = 4.0;

// The measures of one size, as millimetres.
class Measures {
 public:
  explicit Measures(const MeasureTable& table) : table_(&table) {}
  // Precondition: the kind needs this measure.
  [[nodiscard]] double mm(Measure measure) const { return table_->at(measure).value.mm(); }
  [[nodiscard]] bool anyAssumed(const std::vector<Measure>& measures) const;

 private:
  const MeasureTable* table_;
};

// Fills and checks; throws InputError as garmentShape() says.
[[nodiscard]] std::vector<Measure> neededMeasures(const GarmentKind& kind);
// Those that shape and place a pocket of that form.
[[nodiscard]] std::vector<Measure> pocketMeasures(PocketForm pocket);
[[nodiscard]] MeasureTable filledMeasures(const GarmentKind& kind, const ChartSize& size,
                                          const std::string& file, const std::string& where);
void checkMeasures(const GarmentKind& kind, const MeasureTable& table, const std::string& file,
                   const std::string& where);

// A cubic Bézier curve as points, both ends included, no chord above kLongestChord.
[[nodiscard]] Polyline curve(Point from, Point leaving, Point arriving, Point to);
[[nodiscard]] Point mirrored(Point point);
// Mirrored about the centre line and run backwards, so that a walk goes on.
[[nodiscard]] Polyline mirroredBack(const Polyline& line);
void append(Polyline& line, const Polyline& more);
[[nodiscard]] Polyline shifted(const Polyline& line, Point by);
// The part of a line that runs down, from its start to the level `down`. Precondition: the line
// starts above that level.
[[nodiscard]] Polyline partDownTo(const Polyline& line, double down);
[[nodiscard]] Ring box(double left, double top, double right, double bottom);

// The right half of a panel, walked clockwise from the top of the centre line to its bottom.
class HalfOutline {
 public:
  explicit HalfOutline(Point start) : points_{start} {}
  void lineTo(Point to, EdgeName name);
  void along(const Polyline& line, EdgeName name);  // starts at the last point
  // Sets outline and sides of the whole panel. Where the walk starts or ends off the centre line,
  // a straight side of that name joins it to its mirror image.
  void drawInto(PanelShape& panel, EdgeName across) const;

 private:
  Polyline points_;
  std::vector<EdgeName> names_;
};

// ---- Body --------------------------------------------------------------------------------------

// Corners of the right half of a front or back.
struct BodyPoints {
  Point shoulderPoint;  // HPS
  Point shoulderEnd;
  Point pit;
  Point hem;
};
[[nodiscard]] BodyPoints bodyPoints(PanelName panel, const Measures& measures);
// Right half of the collar seam, from the centre line to the HPS.
[[nodiscard]] Polyline neckline(const GarmentKind& kind, PanelName panel, const Measures& measures);
// Right armhole, from the shoulder's end to the pit.
[[nodiscard]] Polyline armhole(const BodyPoints& points);
// Each pocket of the front, clockwise: a kangaroo pocket whole or in two halves beside the zip, a
// chest pocket, the bags of two side pockets.
[[nodiscard]] std::vector<Ring> pocketAreas(const GarmentKind& kind, const Measures& measures);
void addPocketKeepOuts(PanelShape& panel, const GarmentKind& kind, const Measures& measures);
// The front for a ring that lies in the chest pocket.
[[nodiscard]] PanelShape withPocketAlone(const PanelShape& front, const GarmentKind& kind,
                                         const Measures& measures);
void addPocketLines(PanelShape& panel, const GarmentKind& kind, const Measures& measures);

[[nodiscard]] PanelShape bodyPanel(const GarmentKind& kind, PanelName name,
                                   const Measures& measures);
void addBodyDetails(PanelShape& panel, const GarmentKind& kind, const Measures& measures);
void addNeckDetails(PanelShape& panel, const GarmentKind& kind, const Measures& measures);

// ---- Sleeve, hood ------------------------------------------------------------------------------

[[nodiscard]] PanelShape sleevePanel(const GarmentKind& kind, PanelName name,
                                     const Measures& measures);
[[nodiscard]] PanelShape hoodPanel(const GarmentKind& kind, const Measures& measures);

// ---- Flat piece, leg ---------------------------------------------------------------------------

[[nodiscard]] PanelShape flatPanel(const GarmentKind& kind, const Measures& measures);
[[nodiscard]] PanelShape legPanel(const GarmentKind& kind, PanelName name,
                                  const Measures& measures);

// ---- Lines -------------------------------------------------------------------------------------

void addLine(PanelShape& panel, DetailKind kind, Polyline line);
void addArea(PanelShape& panel, DetailKind kind, Ring area);
// A line and its mirror image.
void addPair(PanelShape& panel, DetailKind kind, const Polyline& line);
void addAreaPair(PanelShape& panel, DetailKind kind, const Ring& area);

}  // namespace creaseline::garment
