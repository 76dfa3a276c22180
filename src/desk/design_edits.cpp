// SPDX-License-Identifier: MIT
// Designs as a whole, their size and outline; blocks and pieces are in block_edits.cpp.
#include "desk/design_edits.h"

#include <algorithm>

#include "creaseline/catalogue/field_check.h"
#include "desk/garment_edits.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

std::vector<std::string> designIds(const Order& order) {
  std::vector<std::string> ids;
  for (const Design& design : order.designs) {
    ids.push_back(design.id.text());
  }
  return ids;
}

Outline stretched(Outline outline, double across, double down) {
  const auto stretch = [&](Ring& ring) {
    for (Point& point : ring) {
      point.x *= across;
      point.y *= down;
    }
  };
  for (Piece& piece : outline.pieces) {
    stretch(piece.outer);
    for (Ring& hole : piece.holes) {
      stretch(hole);
    }
  }
  return outline.centred();
}

// The size of an outline is its bounds, as the reader of files takes it.
void takeOutline(Design& design, Outline outline) {
  design.outline = std::move(outline);
  const Box bounds = design.outline.bounds();
  design.width = Length::fromMm(bounds.width());
  design.height = Length::fromMm(bounds.height());
}

}  // namespace

QString DesignEdits::nameOf(std::size_t index) const {
  return toQString(order_.designs.at(index).name);
}

OrderEdit DesignEdits::onDesign(std::size_t index, const QString& name,
                                const DesignChange& change) const {
  OrderEdit edit{name, {}, order_};
  change(edit.order.designs.at(index));
  return edit;
}

// ---- The list ----------------------------------------------------------------------------------

OrderEdit DesignEdits::added(Design design, const QString& name) const {
  OrderEdit edit{name, {}, order_};
  edit.order.designs.push_back(std::move(design));
  return edit;
}

OrderEdit DesignEdits::add() const {
  Design design;
  design.id = DesignId(freshId("design", designIds(order_)));
  design.name = toUtf8(tr("New design"));
  const bool inches = units_.length == LengthUnit::Inch;
  design.width = design.height = inches ? Length::fromInches(3.5) : Length::fromMm(90.0);
  design.outline = Outline::rectangle(design.width, design.height);
  design.blocks = {{toUtf8(tr("black", "thread")), {0x20, 0x20, 0x20}, 5000, BlockKind::Sew, {}}};
  design.stitches = 5000;
  return added(std::move(design), tr("New design"));
}

OrderEdit DesignEdits::addCopyOf(const Design& design) const {
  Design copy = design;
  copy.id = DesignId(freshId(design.id.text(), designIds(order_)));
  return added(std::move(copy), tr("Take up %1").arg(quoted(design.name)));
}

OrderEdit DesignEdits::duplicate(std::size_t index) const {
  OrderEdit edit{tr("Duplicate %1").arg(quoted(order_.designs.at(index).name)), {}, order_};
  Design copy = order_.designs[index];
  copy.id = DesignId(freshId(copy.id.text(), designIds(order_)));
  copy.name = toUtf8(tr("%1, copy").arg(nameOf(index)));
  edit.order.designs.insert(edit.order.designs.begin() + static_cast<std::ptrdiff_t>(index) + 1,
                            std::move(copy));
  return edit;
}

std::optional<QString> DesignEdits::removeProblem(std::size_t index) const {
  QStringList lines;
  for (const OrderLine& line : order_.lines) {
    const bool used = std::any_of(
        line.placements.begin(), line.placements.end(),
        [&](const OrderPlacement& each) { return each.design == order_.designs.at(index).id; });
    if (used) {
      lines.append(toQString(line.id));
    }
  }
  if (lines.isEmpty()) {
    return std::nullopt;
  }
  return tr("%1 is sewn on line(s) %2 of the order. Give the places there another design, or "
            "remove them first.",
            nullptr, static_cast<int>(lines.size()))
      .arg(quoted(order_.designs[index].name), listed(lines));
}

OrderEdit DesignEdits::remove(std::size_t index) const {
  OrderEdit edit{tr("Remove %1").arg(quoted(order_.designs.at(index).name)), {}, order_};
  edit.order.designs.erase(edit.order.designs.begin() + static_cast<std::ptrdiff_t>(index));
  return edit;
}

OrderEdit DesignEdits::name(std::size_t index, const std::string& name) const {
  return onDesign(index, tr("Call %1 %2", "name, name").arg(nameOf(index), quoted(name)),
                  [&](Design& design) { design.name = name; });
}

OrderEdit DesignEdits::id(std::size_t index, const std::string& id) const {
  const DesignId before = order_.designs.at(index).id;
  OrderEdit edit = onDesign(index, tr("Id of %1: %2").arg(nameOf(index), toQString(id)),
                            [&](Design& design) { design.id = DesignId(id); });
  for (OrderLine& line : edit.order.lines) {
    for (OrderPlacement& placement : line.placements) {
      if (placement.design == before) {
        placement.design = DesignId(id);
      }
    }
  }
  return edit;
}

// ---- Size and outline --------------------------------------------------------------------------

bool DesignEdits::maySize(std::size_t index) const {
  const OutlineSource source = order_.designs.at(index).outlineSource;
  return source == OutlineSource::BoundingBox || source == OutlineSource::Polygon;
}

Design DesignEdits::sized(std::size_t index, Side side, Length value, bool proportional) const {
  Design design = order_.designs.at(index);
  const Length before = side == Side::Width ? design.width : design.height;
  const double factor = value / before;
  const double across = side == Side::Width || proportional ? factor : 1.0;
  const double down = side == Side::Height || proportional ? factor : 1.0;
  if (design.outlineSource == OutlineSource::BoundingBox) {
    design.width = side == Side::Width ? value : design.width * across;
    design.height = side == Side::Height ? value : design.height * down;
    design.outline = Outline::rectangle(design.width, design.height);
  } else {
    takeOutline(design, stretched(std::move(design.outline), across, down));
  }
  return design;
}

// A place that asks for the design at a scale may make it too small to sew.
std::optional<QString> DesignEdits::scaleProblem(const Design& changed) const {
  for (const OrderLine& line : order_.lines) {
    for (const OrderPlacement& placement : line.placements) {
      if (placement.design != changed.id) {
        continue;
      }
      const auto scale =
          checkScale(toUtf8(QString::number(placement.scale, 'g', 17)), changed, units_);
      if (!scale) {
        return tr("Line %1 sews it at %2 %: %3")
            .arg(toQString(line.id), QString::number(placement.scale * 100.0),
                 toQString(scale.message()));
      }
    }
  }
  return std::nullopt;
}

Result<Length> DesignEdits::checkSide(std::size_t index, Side side, std::string_view text,
                                      bool proportional) const {
  Result<Length> length = checkDesignSide(text, units_.length);
  if (!length) {
    return length;
  }
  const Design& before = order_.designs.at(index);
  const auto [same, other] = side == Side::Width ? std::pair(before.width, before.height)
                                                 : std::pair(before.height, before.width);
  if (proportional && other.mm() * (*length / same) > Length::kLimitMm) {
    return Refusal{toUtf8(tr("the other side, in proportion, would be larger than any garment"))};
  }
  const Design design = sized(index, side, *length, proportional);
  for (const Length each : {design.width, design.height}) {
    if (const auto checked = checkDesignSide(exactText(each), units_.length); !checked) {
      return Refusal{
          toUtf8(tr("the other side, in proportion: %1").arg(toQString(checked.message())))};
    }
  }
  const auto problem = scaleProblem(design);
  return problem ? Result<Length>(Refusal{toUtf8(*problem)}) : length;
}

OrderEdit DesignEdits::side(std::size_t index, Side side, Length value, bool proportional) const {
  const Design design = sized(index, side, value, proportional);
  const QString length = toQString(fieldText(value, units_.length));
  QString name = side == Side::Width ? tr("Width of %1: %2") : tr("Height of %1: %2");
  if (proportional) {
    name = side == Side::Width ? tr("Width of %1: %2, in proportion")
                               : tr("Height of %1: %2, in proportion");
  }
  return onDesign(index, name.arg(nameOf(index), length), [&](Design& at) { at = design; });
}

OrderEdit DesignEdits::stitches(std::size_t index, int stitches) const {
  return onDesign(index, tr("Stitches of %1: %2").arg(nameOf(index)).arg(stitches),
                  [&](Design& design) { design.stitches = stitches; });
}

std::optional<QString> DesignEdits::outlineProblem(std::size_t index,
                                                   const Outline& outline) const {
  const Box bounds = outline.bounds();
  if (outline.empty() || bounds.empty()) {
    return tr("There is no closed shape in it");
  }
  for (const double side : {bounds.width(), bounds.height()}) {
    if (!(side < Length::kLimitMm)) {
      return tr("It is larger than any garment");
    }
    if (const auto length = checkDesignSide(exactText(Length::fromMm(side)), units_.length);
        !length) {
      const UnitChoice fine = fineUnits(units_);
      return tr("Its sides are %1 and %2: %3")
          .arg(toQString(formatLength(Length::fromMm(bounds.width()), fine)),
               toQString(formatLength(Length::fromMm(bounds.height()), fine)),
               toQString(length.message()));
    }
  }
  Design design = order_.designs.at(index);
  takeOutline(design, outline.centred());
  return scaleProblem(design);
}

OrderEdit DesignEdits::outlineFromFile(std::size_t index, OutlineSource source,
                                       const Outline& outline, const std::string& file,
                                       double dotsPerInch) const {
  const QString fileName = toQString(file).section(QLatin1Char('/'), -1);
  return onDesign(index, tr("Outline of %1 from %2").arg(nameOf(index), fileName),
                  [&](Design& design) {
                    takeOutline(design, outline.centred());
                    design.outlineSource = source;
                    design.outlineFile = file;
                    design.outlineDotsPerInch = source == OutlineSource::Png ? dotsPerInch : 0.0;
                  });
}

OrderEdit DesignEdits::outlineFromBox(std::size_t index) const {
  return onDesign(index, tr("Outline of %1: a rectangle of its size").arg(nameOf(index)),
                  [](Design& design) {
                    design.outline = Outline::rectangle(design.width, design.height);
                    design.outlineSource = OutlineSource::BoundingBox;
                    design.outlineFile.clear();
                    design.outlineDotsPerInch = 0.0;
                  });
}

}  // namespace creaseline::desk
