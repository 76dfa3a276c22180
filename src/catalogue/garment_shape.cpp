// SPDX-License-Identifier: MIT
// Draws all panels of one size and refuses what no cloth could be.
#include "creaseline/catalogue/garment_shape.h"

#include <algorithm>

#include "base/worded.h"
#include "catalogue/garment_shape_parts.h"
#include "catalogue/said_name.h"
#include "creaseline/base/error.h"
#include "creaseline/base/spoken_units.h"
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
      return garment::legPanel(kind, name, measures);
  }
  return {};
}

template <class Name>
bool listed(const std::vector<Name>& list, const Name& name) {
  return std::find(list.begin(), list.end(), name) != list.end();
}

PanelOpening inThisSize(const Opening& opening, const MeasureTable& measures) {
  return {opening.name,
          opening.width ? std::optional(measures.at(*opening.width).value) : std::nullopt,
          opening.basis};
}

}  // namespace

bool GarmentKind::has(PanelName panel) const {
  return listed(panels, panel);
}

std::vector<const LayerBehind*> GarmentKind::layersBehind(PanelName panel,
                                                          const LocationId& location) const {
  std::vector<const LayerBehind*> behind;
  for (const LayerBehind& layer : layers) {
    if (listed(layer.panels, panel) &&
        (layer.locations.empty() || listed(layer.locations, location))) {
      behind.push_back(&layer);
    }
  }
  return behind;
}

const Opening* GarmentKind::pocketOpening(PanelName panel, const LocationId& location) const {
  const auto found = std::find_if(openings.begin(), openings.end(), [&](const Opening& candidate) {
    return listed(candidate.panels, panel) && listed(candidate.intoPocketAt, location);
  });
  return found == openings.end() ? nullptr : &*found;
}

bool GarmentKind::showsInside(PanelName panel) const {
  return listed(insideSeen, panel);
}

bool PanelShape::has(EdgeName edge) const {
  return std::any_of(sides.begin(), sides.end(),
                     [edge](const PanelSide& side) { return side.name == edge; });
}

const PanelShape* GarmentShape::panel(PanelName name) const {
  const auto found = panels.find(name);
  return found == panels.end() ? nullptr : &found->second;
}

const PanelShape* GarmentShape::hooped(PanelName name, const LocationId& location) const {
  const auto alone = pocketAlone.find(location);
  return alone != pocketAlone.end() && alone->second.name == name ? &alone->second : panel(name);
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
      if (listed(opening.panels, name) && opening.intoPocketAt.empty()) {
        panel.openings.push_back(inThisSize(opening, shape.measures));
      }
    }
    // The checks above compare measures in pairs; together they may still be impossible.
    if (const auto crossing = selfCrossing(panel.outline)) {
      throw InputError(
          {file, where,
           worded("measures of size {} whose {} crosses itself at {}, {}", size.name.text(),
                  saidName(name), spokenLength(Length::fromMm(std::round(crossing->x))),
                  spokenLength(Length::fromMm(std::round(crossing->y)))),
           worded("measures that fit together")});
    }
    for (const Opening& opening : kind.openings) {
      for (const LocationId& location : opening.intoPocketAt) {
        if (listed(opening.panels, name)) {
          PanelShape alone = garment::withPocketAlone(panel, kind, measures);
          alone.openings = {inThisSize(opening, shape.measures)};
          shape.pocketAlone.emplace(location, std::move(alone));
        }
      }
    }
    shape.panels.emplace(name, std::move(panel));
  }
  return shape;
}

}  // namespace creaseline
