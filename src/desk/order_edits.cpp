// SPDX-License-Identifier: MIT
#include "desk/order_edits.h"

#include <QStringList>
#include <algorithm>
#include <cmath>
#include <utility>

#include "creaseline/planning/wording.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

template <class T, class Id>
bool holds(const std::vector<T>& all, const Id& id) {
  return std::any_of(all.begin(), all.end(), [&](const T& each) { return each.id == id; });
}

}  // namespace

OrderEdit OrderEdits::head(const QString& name, std::string Order::*field,
                           const std::string& value) const {
  OrderEdit edit{name, {}, order_};
  edit.order.*field = value;
  return edit;
}

OrderEdit OrderEdits::number(const std::string& id) const {
  return head(tr("Order number %1").arg(quoted(id)), &Order::id, id);
}

OrderEdit OrderEdits::title(const std::string& title) const {
  return head(tr("Title %1").arg(quoted(title)), &Order::title, title);
}

OrderEdit OrderEdits::customer(const std::string& customer) const {
  return head(tr("Customer %1").arg(quoted(customer)), &Order::customer, customer);
}

OrderEdit OrderEdits::due(const std::string& date) const {
  return head(date.empty() ? tr("No due date") : tr("Due %1").arg(toQString(date)), &Order::due,
              date);
}

OrderEdit OrderEdits::note(const std::string& note) const {
  return head(tr("Note of the order"), &Order::note, note);
}

OrderEdit OrderEdits::frames(const std::vector<FrameId>& frames, const Shop* shop) const {
  QStringList names;
  for (const FrameId& id : frames) {
    const Frame* frame = shop == nullptr ? nullptr : shop->frame(id);
    names.append(toQString(frame == nullptr ? id.text() : frame->name));
  }
  OrderEdit edit{frames.empty()
                     ? tr("Sew the order in any frame")
                     : tr("Sew the order in %1", "frames").arg(names.join(QStringLiteral(", "))),
                 {},
                 order_};
  edit.order.frames = frames;
  return edit;
}

OrderEdit OrderEdits::onLine(std::size_t line, const QString& name,
                             const LineChange& change) const {
  OrderEdit edit{name, {}, order_};
  change(edit.order.lines.at(line));
  return edit;
}

OrderEdit OrderEdits::onPlace(std::size_t line, std::size_t placement, const QString& name,
                              const PlaceChange& change) const {
  return onLine(line, name, [&](OrderLine& at) { change(at.placements.at(placement)); });
}

QString OrderEdits::nameOf(const Spot& spot) const {
  const OrderLine& line = order_.lines.at(spot.line);
  if (!spot.placement) {
    const Blank* blank = order_.blank(line.blank);
    return tr("line %1, %2", "line's id, garment")
        .arg(toQString(line.id), toQString(blank == nullptr ? line.blank.text() : blank->name));
  }
  const LocationId& id = line.placements.at(*spot.placement).location;
  const QString name = toQString(locationPhrase(id, rules_));
  return tr("%1 (line %2)", "place, line's id").arg(name.toLower(), toQString(line.id));
}

// ---- Garments
// -------------------------------------------------------------------------------------

OrderEdit OrderEdits::quantity(std::size_t line, const SizeName& size, int quantity) const {
  const QString name = quantity == 0
                           ? tr("No %1 on line %2", "size, line's id")
                           : tr("%1 × %2 on line %3", "quantity, size, line's id").arg(quantity);
  OrderEdit edit{name.arg(toQString(size.text()), toQString(order_.lines.at(line).id)), {}, order_};
  std::vector<SizeQuantity>& sizes = edit.order.lines[line].sizes;
  const auto found = std::find_if(sizes.begin(), sizes.end(),
                                  [&](const SizeQuantity& each) { return each.size == size; });
  if (quantity == 0) {
    if (found != sizes.end()) {
      sizes.erase(found);
    }
  } else if (found != sizes.end()) {
    found->quantity = quantity;
  } else {
    sizes.push_back({size, quantity});
    // In the order of the chart, as a person lists sizes.
    if (const Blank* blank = order_.blank(order_.lines[line].blank)) {
      const auto rank = [&](const SizeQuantity& each) { return blank->chart.find(each.size); };
      std::stable_sort(sizes.begin(), sizes.end(), [&](const auto& left, const auto& right) {
        return std::less<>()(rank(left), rank(right));
      });
    }
  }
  return edit;
}

OrderEdit OrderEdits::colour(std::size_t line, const std::string& colour) const {
  return onLine(
      line,
      colour.empty()
          ? tr("No colour for %1").arg(nameOf({line, {}}))
          : tr("%1 for %2", "colour, line").arg(capitalised(toQString(colour)), nameOf({line, {}})),
      [&](OrderLine& at) { at.colour = colour; });
}

OrderEdit OrderEdits::supplied(std::size_t line, bool supplied) const {
  return onLine(line,
                supplied ? tr("%1 from the customer").arg(nameOf({line, {}}))
                         : tr("%1 from the shop").arg(nameOf({line, {}})),
                [&](OrderLine& at) { at.supplied = supplied; });
}

OrderEdit OrderEdits::lineNote(std::size_t line, const std::string& note) const {
  return onLine(line, tr("Note of %1").arg(nameOf({line, {}})),
                [&](OrderLine& at) { at.note = note; });
}

OrderEdit OrderEdits::lineId(std::size_t line, const std::string& id) const {
  return onLine(line,
                tr("Line %1 becomes %2").arg(toQString(order_.lines.at(line).id), toQString(id)),
                [&](OrderLine& at) { at.id = id; });
}

OrderEdit OrderEdits::blank(std::size_t line, const Blank& blank) const {
  const GarmentKind* kind = rules_.kind(blank.kind);
  int left = 0;
  OrderEdit edit = onLine(line, {}, [&](OrderLine& at) {
    at.blank = blank.id;
    left += static_cast<int>(std::erase_if(at.sizes, [&](const SizeQuantity& each) {
      return blank.chart.find(each.size) == nullptr;
    }));
    left += static_cast<int>(std::erase_if(at.placements, [&](const OrderPlacement& each) {
      const Location* location = rules_.location(each.location);
      return kind == nullptr || location == nullptr || !kind->has(location->panel);
    }));
    if (std::none_of(blank.colours.begin(), blank.colours.end(),
                     [&](const ClothColour& each) { return each.name == at.colour; })) {
      at.colour.clear();
    }
  });
  edit.name = tr("Line %1 on %2", "line's id, garment")
                  .arg(toQString(order_.lines.at(line).id), toQString(blank.name));
  if (left > 0) {
    edit.name += tr(", %n size(s) or place(s) left out", nullptr, left);
  }
  if (!holds(edit.order.blanks, blank.id)) {
    edit.order.blanks.push_back(blank);
  }
  return edit;
}

std::string OrderEdits::freshLineId() const {
  for (std::size_t number = order_.lines.size() + 1;; ++number) {
    std::string id = std::to_string(number);
    if (!holds(order_.lines, id)) {
      return id;
    }
  }
}

OrderEdit OrderEdits::addLine(const Blank& blank) const {
  OrderEdit edit{tr("Add %1").arg(toQString(blank.name)), {}, order_};
  OrderLine line;
  line.id = freshLineId();
  line.blank = blank.id;
  if (blank.colours.size() == 1) {
    line.colour = blank.colours.front().name;  // there is none to choose
  }
  if (!holds(edit.order.blanks, blank.id)) {
    edit.order.blanks.push_back(blank);
  }
  edit.order.lines.push_back(std::move(line));
  return edit;
}

// ---- Places
// ---------------------------------------------------------------------------------------

OrderEdit OrderEdits::location(std::size_t line, std::size_t placement,
                               const LocationId& location) const {
  const Location* known = rules_.location(location);
  return onPlace(line, placement,
                 tr("Move %1 to %2", "place, place")
                     .arg(nameOf({line, placement}),
                          toQString(known == nullptr ? location.text() : known->name).toLower()),
                 [&](OrderPlacement& at) {
                   // What was moved by hand was meant for the other place.
                   at.location = location;
                   at.moveDown = at.moveRight = {};
                   at.turn = {};
                 });
}

OrderEdit OrderEdits::design(std::size_t line, std::size_t placement, const Design& design) const {
  OrderEdit edit = onPlace(
      line, placement,
      tr("%1 for %2", "design, place").arg(toQString(design.name), nameOf({line, placement})),
      [&](OrderPlacement& at) {
        at.design = design.id;
        at.scale = 1.0;
      });
  if (!holds(edit.order.designs, design.id)) {
    edit.order.designs.push_back(design);
  }
  return edit;
}

OrderEdit OrderEdits::scale(std::size_t line, std::size_t placement, double scale) const {
  return onPlace(line, placement,
                 tr("Scale %1 to %2 %", "place, number")
                     .arg(nameOf({line, placement}))
                     .arg(std::round(scale * 1000.0) / 10.0),
                 [&](OrderPlacement& at) { at.scale = scale; });
}

OrderEdit OrderEdits::moveDown(std::size_t line, std::size_t placement, Length moveDown) const {
  const QString place = nameOf({line, placement});
  const Length size = moveDown < Length() ? -moveDown : moveDown;
  const QString length = toQString(formatLength(size, units_));
  QString name = moveDown < Length() ? tr("Move %1 %2 up of the rule", "place, length")
                                     : tr("Move %1 %2 down of the rule", "place, length");
  if (moveDown == Length()) {
    name = tr("Put %1 back to the rule");
  }
  OrderEdit edit =
      onPlace(line, placement, moveDown == Length() ? name.arg(place) : name.arg(place, length),
              [&](OrderPlacement& at) { at.moveDown = moveDown; });
  edit.merging = QStringLiteral("move/%1/%2").arg(line).arg(placement);
  return edit;
}

QString OrderEdits::towards(const LocationId& location, bool right) const {
  const Location* known = rules_.location(location);
  return known == nullptr ? QString() : toQString(sideOfPanel(known->panel, right));
}

OrderEdit OrderEdits::moveRight(std::size_t line, std::size_t placement, Length moveRight) const {
  OrderPlacement asked = order_.lines.at(line).placements.at(placement);
  asked.moveRight = moveRight;
  return laid(line, placement, asked, true);
}

QString OrderEdits::moveWords(const OrderPlacement& asked) const {
  const auto words = [this](Length by) {
    return toQString(formatLength(abs(by), unitsTellingApart(by, {Length()}, units_)));
  };
  QStringList moves;
  if (asked.moveDown != Length()) {
    moves.append((asked.moveDown > Length() ? tr("%1 down", "length") : tr("%1 up", "length"))
                     .arg(words(asked.moveDown)));
  }
  if (asked.moveRight != Length()) {
    moves.append(
        tr("%1 towards the %2", "length, side of the garment")
            .arg(words(asked.moveRight), towards(asked.location, asked.moveRight > Length())));
  }
  return moves.join(tr(", ", "between parts of a list"));
}

OrderEdit OrderEdits::laid(std::size_t line, std::size_t placement, const OrderPlacement& asked,
                           bool nudged) const {
  const OrderPlacement& before = order_.lines.at(line).placements.at(placement);
  const QString place = nameOf({line, placement});
  QString name;
  if (asked.moveDown == before.moveDown && asked.moveRight == before.moveRight) {
    name = tr("Turn %1 by %2", "place, angle").arg(place, toQString(formatAngle(asked.turn)));
  } else if (asked.moveDown == Length() && asked.moveRight == Length()) {
    name = tr("Put %1 back to the rule").arg(place);
  } else {
    name = tr("Move %1 %2 of the rule", "place, how far").arg(place, moveWords(asked));
  }
  OrderEdit edit = onPlace(line, placement, name, [&](OrderPlacement& at) {
    at.moveDown = asked.moveDown;
    at.moveRight = asked.moveRight;
    at.turn = asked.turn;
  });
  if (nudged) {
    edit.merging = QStringLiteral("lay/%1/%2").arg(line).arg(placement);
  }
  return edit;
}

OrderEdit OrderEdits::byRule(std::size_t line, std::size_t placement) const {
  return onPlace(line, placement, tr("Put %1 back to the rule").arg(nameOf({line, placement})),
                 [](OrderPlacement& at) {
                   at.moveDown = at.moveRight = {};
                   at.turn = {};
                 });
}

OrderEdit OrderEdits::turn(std::size_t line, std::size_t placement, Angle turn) const {
  OrderEdit edit = onPlace(line, placement,
                           tr("Turn %1 by %2", "place, angle")
                               .arg(nameOf({line, placement}), toQString(formatAngle(turn))),
                           [&](OrderPlacement& at) { at.turn = turn; });
  edit.merging = QStringLiteral("turn/%1/%2").arg(line).arg(placement);
  return edit;
}

OrderEdit OrderEdits::frameTurn(std::size_t line, std::size_t placement, Angle turn) const {
  const QString place = nameOf({line, placement});
  OrderEdit edit =
      onPlace(line, placement,
              turn == Angle() ? tr("Frames as the shop lays them for %1", "place").arg(place)
                              : tr("Turn the frame for %1 by %2", "place, angle")
                                    .arg(place, toQString(formatAngle(turn))),
              [&](OrderPlacement& at) { at.frameTurn = turn; });
  edit.merging = QStringLiteral("frame-turn/%1/%2").arg(line).arg(placement);
  return edit;
}

OrderEdit OrderEdits::split(std::size_t line, std::size_t placement, bool split) const {
  const QString name = split ? tr("Allow several hoopings for %1") : tr("One hooping for %1");
  return onPlace(line, placement, name.arg(nameOf({line, placement})),
                 [&](OrderPlacement& at) { at.split = split; });
}

OrderEdit OrderEdits::placeNote(std::size_t line, std::size_t placement,
                                const std::string& note) const {
  return onPlace(line, placement, tr("Note of %1").arg(nameOf({line, placement})),
                 [&](OrderPlacement& at) { at.note = note; });
}

std::vector<const Location*> OrderEdits::locations(std::size_t line) const {
  std::vector<const Location*> result;
  const Blank* blank = order_.blank(order_.lines.at(line).blank);
  const GarmentKind* kind = blank == nullptr ? nullptr : rules_.kind(blank->kind);
  for (const Location& location : rules_.locations) {
    if (kind != nullptr && kind->has(location.panel)) {
      result.push_back(&location);
    }
  }
  return result;
}

std::optional<OrderEdit> OrderEdits::addPlace(std::size_t line, const Design& design) const {
  const auto used = [&](const LocationId& id) {
    const auto& placements = order_.lines.at(line).placements;
    return std::any_of(placements.begin(), placements.end(),
                       [&](const OrderPlacement& each) { return each.location == id; });
  };
  for (const Location* location : locations(line)) {
    if (used(location->id)) {
      continue;
    }
    OrderEdit edit{tr("Add %1 to line %2", "place, line's id")
                       .arg(toQString(location->name).toLower(), toQString(order_.lines[line].id)),
                   {},
                   order_};
    OrderPlacement placement;
    placement.location = location->id;
    placement.design = design.id;
    edit.order.lines[line].placements.push_back(std::move(placement));
    if (!holds(edit.order.designs, design.id)) {
      edit.order.designs.push_back(design);
    }
    return edit;
  }
  return std::nullopt;
}

// ---- Lines and places alike
// -----------------------------------------------------------------------

OrderEdit OrderEdits::remove(const Spot& spot) const {
  OrderEdit edit{tr("Remove %1").arg(nameOf(spot)), {}, order_};
  auto& lines = edit.order.lines;
  if (spot.placement) {
    auto& placements = lines[spot.line].placements;
    placements.erase(placements.begin() + static_cast<std::ptrdiff_t>(*spot.placement));
  } else {
    lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(spot.line));
  }
  return edit;
}

OrderEdit OrderEdits::duplicate(const Spot& spot) const {
  OrderEdit edit{tr("Duplicate %1").arg(nameOf(spot)), {}, order_};
  auto& lines = edit.order.lines;
  if (spot.placement) {
    auto& placements = lines[spot.line].placements;
    const auto at = static_cast<std::ptrdiff_t>(*spot.placement);
    OrderPlacement copy = placements[*spot.placement];
    placements.insert(placements.begin() + at + 1, std::move(copy));
  } else {
    OrderLine copy = lines[spot.line];
    copy.id = freshLineId();
    lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(spot.line) + 1, std::move(copy));
  }
  return edit;
}

bool OrderEdits::mayShift(const Spot& spot, int by) const {
  const std::size_t count =
      spot.placement ? order_.lines.at(spot.line).placements.size() : order_.lines.size();
  const auto to = static_cast<std::ptrdiff_t>(spot.placement.value_or(spot.line)) + by;
  return to >= 0 && to < static_cast<std::ptrdiff_t>(count);
}

OrderEdit OrderEdits::shift(const Spot& spot, int by) const {
  OrderEdit edit{by < 0 ? tr("Put %1 further up").arg(nameOf(spot))
                        : tr("Put %1 further down").arg(nameOf(spot)),
                 {},
                 order_};
  const std::size_t from = spot.placement.value_or(spot.line);
  const auto to = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(from) + by);
  if (spot.placement) {
    auto& placements = edit.order.lines[spot.line].placements;
    std::swap(placements.at(from), placements.at(to));
  } else {
    std::swap(edit.order.lines.at(from), edit.order.lines.at(to));
  }
  return edit;
}

}  // namespace creaseline::desk
