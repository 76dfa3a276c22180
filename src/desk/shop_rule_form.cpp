// SPDX-License-Identifier: MIT
// A house rule: where the shop puts designs, in place of the shipped rule.
#include <algorithm>

#include "creaseline/planning/wording.h"
#include "desk/catalogue_words.h"
#include "desk/shop_field_puts.h"
#include "desk/shop_forms.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

template <class Id>
QStringList texts(const std::vector<Id>& ids) {
  QStringList list;
  for (const Id& id : ids) {
    list.append(toQString(id.text()));
  }
  return list;
}

template <class Id>
std::vector<Id> ids(const QStringList& list) {
  std::vector<Id> ids;
  for (const QString& each : list) {
    if (!each.trimmed().isEmpty()) {
      ids.emplace_back(toUtf8(each.trimmed()));
    }
  }
  return ids;
}

QString sidewaysWords(Sideways sideways) {
  switch (sideways) {
    case Sideways::CentreLine:
      return HouseRuleForm::tr("On the centre crease");
    case Sideways::FromCentreLine:
      return HouseRuleForm::tr("From the centre crease to the design's centre");
    case Sideways::PlacketToArmhole:
      return HouseRuleForm::tr("Midway between placket and armhole");
    case Sideways::PocketMiddle:
      return HouseRuleForm::tr("Over the middle of the pocket");
    case Sideways::FromSide:
      return HouseRuleForm::tr("In from the side, to the design's outer side");
  }
  return {};
}

}  // namespace

HouseRuleForm::HouseRuleForm(QWidget* parent) : ShopForm(parent) {
  const auto at = [this](auto& shop) -> auto& {
    return shop.houseRules.at(entry());
  };
  addField(
      "ruleId", tr("&Id"), tr("Id of the rule, distinct in the shop"),
      [at](const Shop& shop) { return toQString(at(shop).id.text()); }, idPut(at));
  addScope();
  addDistances();
  addSizes();
  addHeading(tr("Where this rule is from"));
  addField(
      "ruleBasis", tr("&Basis"), tr("Who decided it, and why"),
      [at](const Shop& shop) { return toQString(at(shop).basis); },
      namePut<PlacementRule>(at, &PlacementRule::basis));
  addField(
      "ruleNote", tr("N&ote"), tr("One sentence for the reasons"),
      [at](const Shop& shop) { return toQString(at(shop).note); },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        const Result<std::string> note = checkNote(toUtf8(text));
        if (note) {
          at(shop).note = *note;
        }
        return problemOf(note);
      });
}

// To what the rule applies.
void HouseRuleForm::addScope() {
  const auto at = [this](auto& shop) -> auto& {
    return shop.houseRules.at(entry());
  };
  addChoice(
      "ruleLocation", tr("&Place"), tr("Place on the garment"),
      [this] {
        std::vector<Choice> choices;
        for (const Location& location : rules().locations) {
          choices.push_back({toQString(location.name), toQString(location.id.text())});
        }
        return choices;
      },
      [at](const Shop& shop) { return toQString(at(shop).location.text()); },
      [this, at](Shop& shop, const QString& key) -> std::optional<QString> {
        PlacementRule& rule = at(shop);
        const LocationId chosen(toUtf8(key));
        // What was not changed yet becomes what is shipped for the other place.
        if (rule == placedLike(rule, shippedRuleFor(rule.location, rules()))) {
          rule = placedLike(rule, shippedRuleFor(chosen, rules()));
        }
        rule.location = chosen;
        const Location* location = rules().location(rule.location);
        // A mark that the other panel lacks gives way to one that it has.
        for (const auto& [landmark, name] : EnumNames<Landmark>::names) {
          if (location != nullptr && !liesOn(rule.from, location->panel) &&
              liesOn(landmark, location->panel)) {
            rule.from = landmark;
          }
        }
        return std::nullopt;
      });
  addTicks(
      "ruleKinds", tr("&Garments"), tr("Kinds of garment"), tr("All kinds"),
      [this] {
        std::vector<Choice> choices;
        for (const GarmentKind* kind : kindsByName(rules().kinds)) {
          choices.push_back({toQString(kind->name), toQString(kind->id.text())});
        }
        return choices;
      },
      [at](const Shop& shop) { return texts(at(shop).kinds); },
      [at](Shop& shop, const QStringList& keys) { at(shop).kinds = ids<KindId>(keys); });
  addTicks(
      "ruleBands", tr("Si&ze bands"), tr("Bands of sizes"), tr("All sizes"),
      [] { return choicesOf<SizeBand>(bandWord); },
      [at](const Shop& shop) {
        QStringList keys;
        for (const SizeBand band : at(shop).bands) {
          keys.append(toQString(nameOf(band)));
        }
        return keys;
      },
      [at](Shop& shop, const QStringList& keys) {
        at(shop).bands.clear();
        for (const QString& key : keys) {
          at(shop).bands.push_back(enumOf<SizeBand>(key));
        }
      });
  addField(
      "ruleSizes", tr("Onl&y sizes"), tr("Names of sizes with commas between; empty: all"),
      [at](const Shop& shop) { return texts(at(shop).sizes).join(QStringLiteral(", ")); },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        at(shop).sizes = ids<SizeName>(text.split(u','));
        return std::nullopt;
      });
}

void HouseRuleForm::addDistances() {
  const auto at = [this](auto& shop) -> auto& {
    return shop.houseRules.at(entry());
  };
  const auto addLength = [&](const char* name, const QString& label, const QString& words,
                             Length PlacementRule::*member) {
    addField(
        name, label, words,
        [this, at, member](const Shop& shop) { return lengthText(at(shop).*member); },
        lengthPut({}, [at, member](Shop& shop, Length length) -> std::optional<QString> {
          at(shop).*member = length;
          return std::nullopt;
        }));
  };
  addHeading(tr("How far from which mark"));
  addChoice(
      "ruleFrom", tr("&Measured"), tr("Mark on the garment from which one measures"),
      [this, at] {
        std::vector<Choice> choices;
        const Location* location = rules().location(at(shop()).location);
        for (const auto& [landmark, name] : EnumNames<Landmark>::names) {
          if (location != nullptr && liesOn(landmark, location->panel)) {
            choices.push_back({capitalised(toQString(landmarkPhrase(landmark))), toQString(name)});
          }
        }
        return choices;
      },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).from)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).from = enumOf<Landmark>(key);
        return std::nullopt;
      });
  addChoice(
      "ruleAnchor", tr("To the design's"), tr("Which part of the design lies at that distance"),
      [] {
        return std::vector<Choice>{{tr("nearest side"), toQString(nameOf(Anchor::NearEdge))},
                                   {tr("centre"), toQString(nameOf(Anchor::Centre))}};
      },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).anchor)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).anchor = enumOf<Anchor>(key);
        return std::nullopt;
      });
  addLength("ruleDistance", tr("&Distance"), tr("Distance from the mark to the design"),
            &PlacementRule::distance);
  addLength("ruleLeast", tr("&At least"), tr("Never nearer to the mark than this"),
            &PlacementRule::least);
  addLength("ruleMost", tr("At mo&st"), tr("Never further from the mark than this"),
            &PlacementRule::most);
  addChoice(
      "ruleSideways", tr("Side&ways"), tr("Where the design goes sideways"),
      [] { return choicesOf<Sideways>(sidewaysWords); },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).sideways)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).sideways = enumOf<Sideways>(key);
        return std::nullopt;
      });
  addLength("ruleSidewaysDistance", tr("By"), tr("Distance sideways, where one is asked for"),
            &PlacementRule::sidewaysDistance);
  addField(
      "ruleTurn", tr("Tu&rned"), tr("Turned clockwise against upright as worn, in degrees"),
      [at](const Shop& shop) { return toQString(formatAngle(at(shop).turn)); },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        const Result<Angle> turn = checkTurn(toUtf8(text));
        if (turn) {
          at(shop).turn = *turn;
          if (at(shop).turnReason.empty() && *turn != Angle()) {
            at(shop).turnReason = toUtf8(tr("the shop's own habit"));
          }
        }
        return problemOf(turn);
      });
}

void HouseRuleForm::addSizes() {
  const auto add = [this](const char* name, const QString& label, const QString& words,
                          std::optional<Length> PlacementRule::*member) {
    addOwnLength(
        name, label, words,
        [ this, member ](auto& shop) -> auto& { return shop.houseRules.at(entry()).*member; },
        Length::fromNanometres(1));
  };
  addHeading(tr("How large the design usually is; empty: anything"));
  add("ruleLeastWidth", tr("&Least width"), tr("A narrower design is remarked on"),
      &PlacementRule::leastWidth);
  add("ruleMostWidth", tr("Most wid&th"), tr("A wider design is watched"),
      &PlacementRule::mostWidth);
  add("ruleLeastHeight", tr("Least &height"), tr("A lower design is remarked on"),
      &PlacementRule::leastHeight);
  add("ruleMostHeight", tr("Most h&eight"), tr("A higher design is watched"),
      &PlacementRule::mostHeight);
}

QString HouseRuleForm::subject() const {
  return ShopEdits(shop(), rules(), units()).nameOf(ShopList::HouseRules, entry());
}

}  // namespace creaseline::desk
