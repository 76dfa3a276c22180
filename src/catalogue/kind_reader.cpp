// SPDX-License-Identifier: MIT
// Garment kinds: panels, forms and proportions.
#include <algorithm>

#include "base/worded.h"
#include "catalogue/blank_reader.h"
#include "catalogue/garment_shape_parts.h"
#include "catalogue/rules_reader.h"

namespace creaseline {

namespace {

ProportionRule readProportion(const JsonCursor& at) {
  JsonObject object = at.object();
  ProportionRule rule;
  rule.id = object.at("id").identifier<RuleId>();
  rule.measure = object.at("measure").enumerator<Measure>();
  const auto of = object.find("of");
  if (of) {
    rule.of = of->enumerator<Measure>();
    if (*rule.of == rule.measure) {
      of->fail(worded("a measure in proportion to itself"), worded("another point of measure"));
    }
    rule.factor = object.at("factor").number(-10.0, 10.0);
  }
  if (const auto plus = object.find("plus")) {
    rule.plus = plus->length(-kLargestPart, kLargestPart);
  } else if (!of) {
    at.fail(worded("neither \"of\" nor \"plus\""),
            worded("\"of\" with \"factor\", or a fixed length in \"plus\""));
  }
  if (const auto bands = object.find("bands")) {
    rule.bands = bands->enumerators<SizeBand>();
  }
  rule.basis = object.at("basis").ownLabel();
  object.finish();
  return rule;
}

std::vector<ProportionRule> readProportions(const JsonCursor& at) {
  std::vector<ProportionRule> rules;
  std::vector<std::string> ids;
  for (const JsonCursor& item : at.items(0, 500, toBeWorded("proportions"))) {
    ProportionRule rule = readProportion(item);
    requireDistinct(ids, rule.id.text(), item, toBeWorded("rule id"));
    ids.push_back(rule.id.text());
    rules.push_back(std::move(rule));
  }
  return rules;
}

EdgeName readEdge(const JsonCursor& at, std::initializer_list<EdgeName> allowed) {
  const EdgeName edge = at.enumerator<EdgeName>();
  std::string list;
  for (const EdgeName candidate : allowed) {
    if (candidate == edge) {
      return edge;
    }
    list += (list.empty() ? "" : ", ") + std::string(nameOf(candidate));
  }
  at.failShown(worded("one of {}", list));
}

FlatParts readFlatParts(const JsonCursor& at) {
  JsonObject object = at.object();
  FlatParts parts;
  parts.sides =
      readEdge(object.at("sides"), {EdgeName::SideEdge, EdgeName::SideSeam, EdgeName::Fold});
  parts.bottom =
      readEdge(object.at("bottom"), {EdgeName::Hem, EdgeName::BottomSeam, EdgeName::TurnUpFold});
  if (const auto border = object.find("border")) {
    parts.border = border->boolean();
  }
  if (const auto straps = object.find("straps")) {
    parts.straps = straps->boolean();
  }
  if (const auto domed = object.find("domed")) {
    parts.domed = domed->boolean();
  }
  object.finish();
  return parts;
}

KindForm formOf(PanelName panel) {
  if (panel == PanelName::Flat) {
    return KindForm::Flat;
  }
  return isLeg(panel) ? KindForm::Legs : KindForm::Body;
}

// The form, and the panels that go with it.
void readForm(JsonObject& top, GarmentKind& kind) {
  if (const auto form = top.find("form")) {
    kind.form = form->enumerator<KindForm>();
  }
  const JsonCursor panels = top.at("panels");
  kind.panels = panels.enumerators<PanelName>();
  for (const PanelName panel : kind.panels) {
    if (formOf(panel) != kind.form) {
      panels.fail(worded("the panel {}", inQuotes(nameOf(panel))),
                  worded("panels of a kind of form {}", inQuotes(nameOf(kind.form))));
    }
  }
  if (kind.form == KindForm::Flat) {
    kind.flat = readFlatParts(top.at("flat"));
  }
}

// Panels that the kind has.
std::vector<PanelName> readPanels(const JsonCursor& at, std::size_t least,
                                  const GarmentKind& kind) {
  std::vector<PanelName> panels = at.enumerators<PanelName>(least);
  for (const PanelName panel : panels) {
    if (!kind.has(panel)) {
      at.fail(worded("the panel {}", inQuotes(nameOf(panel))), worded("panels that the kind has"));
    }
  }
  return panels;
}

std::vector<LocationId> readLocations(const JsonCursor& at) {
  std::vector<LocationId> locations;
  for (const JsonCursor& item : at.items(1, 50, toBeWorded("locations"))) {
    locations.push_back(item.identifier<LocationId>());
  }
  return locations;
}

LegParts readLegParts(const JsonCursor& at) {
  JsonObject object = at.object();
  LegParts parts;
  parts.fly = object.at("fly").boolean();
  parts.sidePockets = object.at("side-pockets").boolean();
  object.finish();
  return parts;
}

std::vector<Preparation> readPreparations(const JsonCursor& at, const GarmentKind& kind) {
  std::vector<Preparation> preparations;
  for (const JsonCursor& item : at.items(0, 50, toBeWorded("preparations"))) {
    JsonObject object = item.object();
    Preparation preparation;
    preparation.panels = readPanels(object.at("panels"), 1, kind);
    preparation.step = object.at("step").ownLabel();
    preparation.basis = object.at("basis").ownLabel();
    object.finish();
    preparations.push_back(std::move(preparation));
  }
  return preparations;
}

std::vector<LayerBehind> readLayers(const JsonCursor& at, const GarmentKind& kind) {
  std::vector<LayerBehind> layers;
  for (const JsonCursor& item : at.items(0, 50, toBeWorded("layers"))) {
    JsonObject object = item.object();
    LayerBehind layer;
    layer.name = object.at("behind").ownLabel();
    layer.panels = readPanels(object.at("panels"), 1, kind);
    if (const auto locations = object.find("locations")) {
      layer.locations = readLocations(*locations);
    }
    layer.step = object.at("step").ownLabel();
    if (const auto watch = object.find("watch")) {
      layer.watch = watch->boolean();
    }
    layer.basis = object.at("basis").ownLabel();
    object.finish();
    layers.push_back(std::move(layer));
  }
  return layers;
}

std::vector<Opening> readOpenings(const JsonCursor& at, const GarmentKind& kind) {
  const std::vector<Measure> known = garment::neededMeasures(kind);
  std::vector<Opening> openings;
  for (const JsonCursor& item : at.items(0, 50, toBeWorded("openings"))) {
    JsonObject object = item.object();
    Opening opening;
    opening.name = object.at("name").ownLabel();
    opening.panels = readPanels(object.at("panels"), 1, kind);
    if (const auto pocket = object.find("into-pocket-at")) {
      if (kind.pocket != PocketForm::Chest || opening.panels != std::vector{PanelName::Front}) {
        pocket->failShown(worded("locations on the front of a kind with a chest pocket"));
      }
      opening.intoPocketAt = readLocations(*pocket);
    }
    if (const auto otherwise = object.find("otherwise")) {
      opening.otherwise = otherwise->ownLabel();
    }
    const auto width = object.find("width");
    const auto flat = object.find("lies-flat");
    if (width.has_value() == (flat && flat->boolean())) {
      item.fail(worded("an opening with both or neither of a width and lying flat"),
                worded("one of them"));
    }
    if (width) {
      opening.width = width->enumerator<Measure>();
      if (std::find(known.begin(), known.end(), *opening.width) == known.end()) {
        width->failShown(worded("a measure that the kind has"));
      }
    }
    opening.basis = object.at("basis").ownLabel();
    object.finish();
    openings.push_back(std::move(opening));
  }
  return openings;
}

UsualFabric readUsualFabric(const JsonCursor& at) {
  JsonObject object = at.object();
  const JsonCursor fabric = object.at("fabric");
  UsualFabric usual{readFabric(fabric), object.at("basis").ownLabel()};
  usual.fabric.name = fabric.object().at("name").ownLabel();
  usual.fabric.proposed = true;
  object.finish();
  return usual;
}

}  // namespace

GarmentKind readKind(JsonObject& top) {
  GarmentKind kind;
  kind.id = top.at("id").identifier<KindId>();
  kind.name = top.at("name").ownLabel();
  readForm(top, kind);
  const JsonCursor neck = top.at("neck");
  kind.neck = neck.enumerator<NeckForm>();
  if ((kind.neck == NeckForm::None) != (kind.form != KindForm::Body)) {
    neck.failShown(worded("\"none\" exactly where the form is not \"body\""));
  }
  if ((kind.neck == NeckForm::Hood) != kind.has(PanelName::Hood)) {
    neck.failShown(worded("\"hood\" exactly where \"panels\" has a hood"));
  }
  kind.opening = top.at("opening").enumerator<FrontOpening>();
  kind.pocket = top.at("pocket").enumerator<PocketForm>();
  const JsonCursor sleeve = top.at("sleeve");
  kind.sleeve = sleeve.enumerator<SleeveForm>();
  if ((kind.sleeve == SleeveForm::None) ==
      (kind.has(PanelName::LeftSleeve) || kind.has(PanelName::RightSleeve))) {
    sleeve.failShown(worded("\"none\" exactly where \"panels\" has no sleeve"));
  }
  if (const auto cuff = top.find("cuff")) {
    kind.cuff = cuff->enumerator<CuffForm>();
  }
  if (const auto hem = top.find("hem")) {
    kind.hem = hem->enumerator<HemForm>();
  }
  if (const auto yoke = top.find("yoke")) {
    kind.yoke = yoke->boolean();
  }
  kind.hemRib = top.at("hem-rib").boolean();
  kind.insideSeen = readPanels(top.at("inside-seen"), 0, kind);
  if (const auto legs = top.find("legs")) {
    if (kind.form != KindForm::Legs) {
      legs->failShown(worded("none where the form is not \"legs\""));
    }
    kind.legs = readLegParts(*legs);
  }
  if (const auto drawcord = top.find("drawcord")) {
    kind.drawcord = drawcord->boolean();
    if (kind.drawcord && kind.neck != NeckForm::Hood) {
      drawcord->failShown(worded("false where \"panels\" has no hood"));
    }
  }
  if (const auto preparations = top.find("preparations")) {
    kind.preparations = readPreparations(*preparations, kind);
  }
  if (const auto layers = top.find("layers")) {
    kind.layers = readLayers(*layers, kind);
  }
  if (const auto openings = top.find("openings")) {
    kind.openings = readOpenings(*openings, kind);
  }
  kind.proportions = readProportions(top.at("proportions"));
  kind.usualFabric = readUsualFabric(top.at("usual-fabric"));
  top.finish();
  return kind;
}

}  // namespace creaseline
