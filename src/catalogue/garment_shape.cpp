// SPDX-License-Identifier: MIT
// Draws all panels of one size and refuses what no cloth could be.
#include "creaseline/catalogue/garment_shape.h"

#include <algorithm>

#include "base/worded.h"
#include "catalogue/garment_shape_parts.h"
#include "catalogue/said_name.h"
#include "creaseline/base/error.h"
#include "creaseline/shape/outline.h"

namespace creaseline {
namespace {

PanelShape drawn(const GarmentKind& kind, PanelName name, const garment::Measures& measures) {
  switch (name) {
    case PanelName::Front:
    case PanelName::Back:
      return garment::bodyPanel(kind, name, measures);
    case PanelName::LeftSleeve:
    case PanelName::RightSleeve:
      return garment::sleevePanel(kind, name, measures);
    case PanelName::Hood:
      return garment::hoodPanel(kind, measures);
    case PanelName::Flat:
      return garment::flatPanel(kind, measures);
    case PanelName::LeftLeg:
    case PanelName::RightLeg:
      return garment::legPanel(name, measures);
  }
  return {};
}

}  // namespace

bool GarmentKind::has(PanelName panel) const {
  return std::find(panels.begin(), panels.end(), panel) != panels.end();
}

std::vector<const LayerBehind*> GarmentKind::layersBehind(PanelName panel) const {
  std::vector<const LayerBehind*> behind;
  for (const LayerBehind& layer : layers) {
    if (std::find(layer.panels.begin(), layer.panels.end(), panel) != layer.panels.end()) {
      behind.push_back(&layer);
    }
  }
  return behind;
}

bool GarmentKind::showsInside(PanelName panel) const {
  return std::find(insideSeen.begin(), insideSeen.end(), panel) != insideSeen.end();
}

const PanelShape* GarmentShape::panel(PanelName name) const {
  const auto found = panels.find(name);
  return found == panels.end() ? nullptr : &found->second;
}

GarmentShape garmentShape(const GarmentKind& kind, const ChartSize& size, const std::string& file,
                          const std::string& where) {
  GarmentShape shape;
  shape.kind = kind.id;
  shape.size = size.name;
  shape.band = size.band;
  shape.measures = garment::filledMeasures(kind, size, file, where);
  garment::checkMeasures(kind, shape.measures, file, where);
  const garment::Measures measures(shape.measures);
  for (const PanelName name : kind.panels) {
    PanelShape panel = drawn(kind, name, measures);
    panel.insideSeen = kind.showsInside(name);
    for (const Opening& opening : kind.openings) {
      if (std::find(opening.panels.begin(), opening.panels.end(), name) != opening.panels.end()) {
        panel.openings.push_back(
            {opening.name,
             opening.width ? std::optional(shape.measures.at(*opening.width).value) : std::nullopt,
             opening.basis});
      }
    }
    // The checks above compare measures in pairs; together they may still be impossible.
    if (const auto crossing = selfCrossing(panel.outline)) {
      throw InputError({file, where,
                        worded("measures of size {} whose {} crosses itself at {:.0f}, {:.0f} mm",
                               size.name.text(), saidName(name), crossing->x, crossing->y),
                        worded("measures that fit together")});
    }
    shape.panels.emplace(name, std::move(panel));
  }
  return shape;
}

}  // namespace creaseline
