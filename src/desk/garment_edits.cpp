// SPDX-License-Identifier: MIT
// Garments as a whole, their fabric and colours; size charts are in chart_edits.cpp.
#include "desk/garment_edits.h"

#include <algorithm>

#include "creaseline/base/error.h"
#include "creaseline/base/spoken_units.h"
#include "desk/catalogue_words.h"
#include "desk/money_words.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

std::vector<std::string> blankIds(const Order& order) {
  std::vector<std::string> ids;
  for (const Blank& blank : order.blanks) {
    ids.push_back(blank.id.text());
  }
  return ids;
}

// What a shop knows of most shirts, to be changed.
Blank newBlank(const Rules& rules, const std::string& name) {
  Blank blank;
  blank.name = name;
  blank.kind = rules.kind(KindId("t-shirt")) != nullptr ? KindId("t-shirt") : rules.kinds[0].id;
  blank.fabric = rules.kind(blank.kind)->usualFabric.fabric;  // until somebody types over it
  const std::pair<const char*, double> widths[] = {{"S", 18}, {"M", 20}, {"L", 22}, {"XL", 24}};
  for (const auto& [size, width] : widths) {
    ChartSize row;
    row.name = SizeName(size);
    row.measures[Measure::BodyWidth] = Length::fromInches(width);
    row.measures[Measure::BodyLength] = Length::fromInches(width / 2.0 + 19.0);
    row.proposed = {Measure::BodyWidth, Measure::BodyLength};  // until somebody types over them
    row.band = bandOf(row, rules.defaults);
    blank.chart.sizes.push_back(std::move(row));
  }
  return blank;
}

}  // namespace

std::string freshId(const std::string& like, const std::vector<std::string>& taken) {
  std::string id = like;
  for (int number = 2; std::find(taken.begin(), taken.end(), id) != taken.end(); ++number) {
    id = like + "-" + std::to_string(number);
  }
  return id;
}

QString listed(const QStringList& words) {
  if (words.size() < 2) {
    return words.join(QString());
  }
  return QCoreApplication::translate("creaseline::desk::GarmentEdits", "%1 and %2", "list, last")
      .arg(words.mid(0, words.size() - 1).join(QStringLiteral(", ")), words.last());
}

std::optional<QString> sizeProblem(const GarmentKind& kind, const ChartSize& size,
                                   const UnitChoice& units) {
  const SpokenUnits spoken(units);
  try {
    static_cast<void>(garmentShape(kind, size, {}, {}));
    return std::nullopt;
  } catch (const InputError& error) {
    const InputError::Details& details = error.details();
    return QCoreApplication::translate("creaseline::desk::GarmentEdits",
                                       "Size %1 makes no garment: found %2, expected %3")
        .arg(toQString(size.name.text()), toQString(details.found), toQString(details.expected));
  }
}

QString GarmentEdits::nameOf(std::size_t index) const {
  return toQString(order_.blanks.at(index).name);
}

KindForm GarmentEdits::formOf(const Blank& blank) const {
  const GarmentKind* kind = rules_.kind(blank.kind);
  return kind == nullptr ? KindForm::Body : kind->form;
}

OrderEdit GarmentEdits::onBlank(std::size_t index, const QString& name,
                                const BlankChange& change) const {
  OrderEdit edit{name, {}, order_};
  change(edit.order.blanks.at(index));
  return edit;
}

OrderEdit GarmentEdits::onFabric(std::size_t index, const QString& name,
                                 const std::function<void(Fabric&)>& change) const {
  return onBlank(index, name, [&](Blank& blank) {
    change(blank.fabric);
    blank.fabric.proposed = false;  // somebody has said something about it
  });
}

// ---- The list ----------------------------------------------------------------------------------

OrderEdit GarmentEdits::added(Blank blank, const QString& name) const {
  OrderEdit edit{name, {}, order_};
  edit.order.blanks.push_back(std::move(blank));
  return edit;
}

OrderEdit GarmentEdits::add() const {
  Blank blank = newBlank(rules_, toUtf8(tr("New garment")));
  blank.id = BlankId(freshId("garment", blankIds(order_)));
  return added(std::move(blank), tr("New garment"));
}

OrderEdit GarmentEdits::addCopyOf(const Blank& blank) const {
  Blank copy = blank;
  copy.id = BlankId(freshId(blank.id.text(), blankIds(order_)));
  return added(std::move(copy), tr("Take up %1").arg(quoted(blank.name)));
}

OrderEdit GarmentEdits::duplicate(std::size_t index) const {
  OrderEdit edit{tr("Duplicate %1").arg(quoted(order_.blanks.at(index).name)), {}, order_};
  Blank copy = order_.blanks[index];
  copy.id = BlankId(freshId(copy.id.text(), blankIds(order_)));
  copy.name = toUtf8(tr("%1, copy").arg(nameOf(index)));
  edit.order.blanks.insert(edit.order.blanks.begin() + static_cast<std::ptrdiff_t>(index) + 1,
                           std::move(copy));
  return edit;
}

std::optional<QString> GarmentEdits::removeProblem(std::size_t index) const {
  QStringList lines;
  for (const OrderLine& line : order_.lines) {
    if (line.blank == order_.blanks.at(index).id) {
      lines.append(toQString(line.id));
    }
  }
  if (lines.isEmpty()) {
    return std::nullopt;
  }
  return tr("%1 is used on line(s) %2 of the order. Give what stands there another garment, or "
            "remove it first.",
            nullptr, static_cast<int>(lines.size()))
      .arg(quoted(order_.blanks[index].name), listed(lines));
}

OrderEdit GarmentEdits::remove(std::size_t index) const {
  OrderEdit edit{tr("Remove %1").arg(quoted(order_.blanks.at(index).name)), {}, order_};
  edit.order.blanks.erase(edit.order.blanks.begin() + static_cast<std::ptrdiff_t>(index));
  return edit;
}

// ---- What it is --------------------------------------------------------------------------------

OrderEdit GarmentEdits::name(std::size_t index, const std::string& name) const {
  return onBlank(index, tr("Call %1 %2", "name, name").arg(nameOf(index), quoted(name)),
                 [&](Blank& blank) { blank.name = name; });
}

OrderEdit GarmentEdits::id(std::size_t index, const std::string& id) const {
  const BlankId before = order_.blanks.at(index).id;
  OrderEdit edit = onBlank(index, tr("Id of %1: %2").arg(nameOf(index), toQString(id)),
                           [&](Blank& blank) { blank.id = BlankId(id); });
  for (OrderLine& line : edit.order.lines) {
    if (line.blank == before) {
      line.blank = BlankId(id);
    }
  }
  return edit;
}

std::optional<QString> GarmentEdits::kindProblem(std::size_t index, const KindId& kind) const {
  const GarmentKind* known = rules_.kind(kind);
  for (const ChartSize& size : order_.blanks.at(index).chart.sizes) {
    if (const auto problem = known == nullptr ? std::nullopt : sizeProblem(*known, size, units_)) {
      return problem;
    }
  }
  return std::nullopt;
}

OrderEdit GarmentEdits::kind(std::size_t index, const KindId& kind) const {
  const GarmentKind* known = rules_.kind(kind);
  OrderEdit edit = onBlank(index, {}, [&](Blank& blank) {
    blank.kind = kind;
    if (blank.fabric.proposed && known != nullptr) {
      blank.fabric = known->usualFabric.fabric;
    }
  });
  int left = 0;
  for (OrderLine& line : edit.order.lines) {
    if (line.blank == edit.order.blanks[index].id) {
      left += static_cast<int>(std::erase_if(line.placements, [&](const OrderPlacement& each) {
        const Location* location = rules_.location(each.location);
        return known == nullptr || location == nullptr || !known->has(location->panel);
      }));
    }
  }
  edit.name = tr("Kind of %1: %2", "garment, kind")
                  .arg(nameOf(index), toQString(known == nullptr ? kind.text() : known->name));
  if (left > 0) {
    edit.name += tr(", %n place(s) left out", nullptr, left);
  }
  return edit;
}

// ---- Fabric ------------------------------------------------------------------------------------

OrderEdit GarmentEdits::fabricName(std::size_t index, const std::string& name) const {
  return onFabric(index, tr("Fabric of %1: %2").arg(nameOf(index), toQString(name)),
                  [&](Fabric& fabric) { fabric.name = name; });
}

OrderEdit GarmentEdits::fabricConfirmed(std::size_t index) const {
  return onFabric(
      index,
      tr("%1 is made of %2").arg(nameOf(index), toQString(order_.blanks.at(index).fabric.name)),
      [](Fabric&) {});
}

OrderEdit GarmentEdits::price(std::size_t index, const std::optional<Price>& price) const {
  const QString name =
      price ? tr("Price of %1: %2").arg(nameOf(index), moneyWords(price->amount, price->currency))
            : tr("No price for %1").arg(nameOf(index));
  return onBlank(index, name, [&](Blank& blank) { blank.price = price; });
}

OrderEdit GarmentEdits::weight(std::size_t index, ArealWeight weight) const {
  return onFabric(
      index,
      tr("Weight of %1: %2").arg(nameOf(index), toQString(formatArealWeight(weight, units_))),
      [&](Fabric& fabric) { fabric.weight = weight; });
}

OrderEdit GarmentEdits::construction(std::size_t index, Construction construction) const {
  return onFabric(index,
                  tr("Construction of %1: %2").arg(nameOf(index), constructionWord(construction)),
                  [&](Fabric& fabric) { fabric.construction = construction; });
}

OrderEdit GarmentEdits::pile(std::size_t index, Pile pile) const {
  return onFabric(index, tr("Pile of %1: %2").arg(nameOf(index), pileWord(pile)),
                  [&](Fabric& fabric) { fabric.pile = pile; });
}

OrderEdit GarmentEdits::stretch(std::size_t index, Stretch stretch) const {
  return onFabric(index, tr("Stretch of %1: %2").arg(nameOf(index), stretchWord(stretch)),
                  [&](Fabric& fabric) { fabric.stretch = stretch; });
}

OrderEdit GarmentEdits::sheer(std::size_t index, bool sheer) const {
  return onFabric(index, (sheer ? tr("%1 is sheer") : tr("%1 is not sheer")).arg(nameOf(index)),
                  [&](Fabric& fabric) { fabric.sheer = sheer; });
}

OrderEdit GarmentEdits::fibres(std::size_t index, const std::vector<FibreShare>& fibres) const {
  QStringList shares;
  for (const FibreShare& share : fibres) {
    shares.append(
        tr("%1 % %2", "share, fibre").arg(QString::number(share.percent), toQString(share.fibre)));
  }
  return onFabric(index,
                  tr("Fibres of %1: %2").arg(nameOf(index), shares.join(QStringLiteral(", "))),
                  [&](Fabric& fabric) { fabric.fibres = fibres; });
}

// ---- Colours -----------------------------------------------------------------------------------

OrderEdit GarmentEdits::addColour(std::size_t index) const {
  std::vector<std::string> taken;
  for (const ClothColour& colour : order_.blanks.at(index).colours) {
    taken.push_back(colour.name);
  }
  const std::string name = freshId(toUtf8(tr("colour")), taken);
  return onBlank(index, tr("Add a colour to %1").arg(nameOf(index)), [&](Blank& blank) {
    blank.colours.push_back({name, {0x80, 0x80, 0x80}});
  });
}

OrderEdit GarmentEdits::removeColour(std::size_t index, std::size_t colour) const {
  const std::string name = order_.blanks.at(index).colours.at(colour).name;
  OrderEdit edit = onBlank(index, {}, [&](Blank& blank) {
    blank.colours.erase(blank.colours.begin() + static_cast<std::ptrdiff_t>(colour));
  });
  int left = 0;
  for (OrderLine& line : edit.order.lines) {
    if (line.blank == order_.blanks[index].id && line.colour == name) {
      line.colour.clear();
      ++left;
    }
  }
  edit.name = tr("Take %1 out of %2", "colour, garment").arg(quoted(name), nameOf(index));
  if (left > 0) {
    edit.name += tr(", %n line(s) without a colour", nullptr, left);
  }
  return edit;
}

OrderEdit GarmentEdits::shiftColour(std::size_t index, std::size_t colour, int by) const {
  const auto to = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(colour) + by);
  const QString name = quoted(order_.blanks.at(index).colours.at(colour).name);
  return onBlank(index, (by < 0 ? tr("Put %1 further up") : tr("Put %1 further down")).arg(name),
                 [&](Blank& blank) { std::swap(blank.colours.at(colour), blank.colours.at(to)); });
}

OrderEdit GarmentEdits::colourName(std::size_t index, std::size_t colour,
                                   const std::string& name) const {
  const std::string before = order_.blanks.at(index).colours.at(colour).name;
  OrderEdit edit = onBlank(
      index, tr("Colour %1 of %2 becomes %3").arg(quoted(before), nameOf(index), quoted(name)),
      [&](Blank& blank) { blank.colours[colour].name = name; });
  for (OrderLine& line : edit.order.lines) {
    if (line.blank == order_.blanks[index].id && line.colour == before) {
      line.colour = name;
    }
  }
  return edit;
}

OrderEdit GarmentEdits::colourValue(std::size_t index, std::size_t colour, Colour value) const {
  return onBlank(index,
                 tr("%1 of %2 is %3", "colour, garment, #rrggbb")
                     .arg(capitalised(toQString(order_.blanks.at(index).colours.at(colour).name)),
                          nameOf(index), toQString(colourText(value))),
                 [&](Blank& blank) { blank.colours[colour].colour = value; });
}

}  // namespace creaseline::desk
