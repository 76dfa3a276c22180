// SPDX-License-Identifier: MIT
// Orders as JSON. Blanks and designs that lie in files of their own stay there.
#include <algorithm>

#include "catalogue/writers.h"

namespace creaseline {

namespace {

// The path by which the text before referred to that file, or the shortest one from the new place.
std::string referenceTo(const OriginalFile& target, const JsonNode* list, const Writing& writing) {
  for (const JsonNode& item : arrayOf(list) == nullptr ? JsonNode::Array() : *arrayOf(list)) {
    const auto* text = std::get_if<std::string>(&item.content);
    if (text != nullptr && (writing.from / *text).lexically_normal() == target.file) {
      return writing.reference(*text);
    }
  }
  const Writing fromTarget{writing.lengths, target.file.parent_path(), writing.to};
  return fromTarget.from == fromTarget.to ? target.file.filename().generic_string()
                                          : fromTarget.reference(target.file.filename());
}

// What the list of blanks or designs needs to know of the kind of entry.
template <class Entry>
struct EntryList {
  const std::vector<Entry>& entries;
  const std::vector<Original<Entry>>& originals;
  const std::vector<Entry>* valuesBefore;  // of the whole order; null for a new one
  JsonNode (*write)(const Entry&, const Before<Entry>&, const Writing&, bool);
};

template <class Entry>
JsonNode entriesNode(const JsonNode* before, const EntryList<Entry>& list, const Writing& writing,
                     bool changedInPlace) {
  return listNode(
      before, list.entries, [](const Entry& entry) { return EntryNames{entry.id.text()}; },
      [](const JsonNode& old) { return EntryNames{textOf(&old, "id")}; },
      [&](const Entry& entry, const JsonNode* old) {
        if (const auto* file = originalOf(list.originals, list.entries, entry, list.valuesBefore)) {
          if (!changedInPlace || *file->value == entry) {
            return textNode(referenceTo(*file, before, writing));
          }
          const Writing moved{writing.lengths, file->file.parent_path(), writing.to};
          return list.write(entry, {file->text.get(), file->value.get()}, moved, false);
        }
        const std::string id = textOf(old, "id");
        return id.empty()
                   ? list.write(entry, {}, writing, false)
                   : list.write(entry, {old, entryOfId(list.valuesBefore, id)}, writing, false);
      });
}

JsonNode sizesNode(const JsonNode* before, const std::vector<SizeQuantity>& sizes) {
  JsonNode::Object object;
  for (const SizeQuantity& size : sizes) {
    object.push_back(
        {size.size.text(), amountNode(memberOf(before, size.size.text()), size.quantity)});
  }
  return JsonNode{std::move(object)};
}

JsonNode placementNode(const OrderPlacement& placement, const JsonNode* before, LengthUnit unit) {
  JsonObjectWriter object(before);
  object.text("location", placement.location.text());
  object.text("design", placement.design.text());
  object.putUnless(placement.scale == 1.0, "scale",
                   amountNode(object.before("scale"), placement.scale));
  object.putUnless(placement.moveDown == Length(), "move-down",
                   lengthNode(object.before("move-down"), placement.moveDown, unit));
  object.putUnless(placement.moveRight == Length(), "move-right",
                   lengthNode(object.before("move-right"), placement.moveRight, unit));
  object.putUnless(placement.turn == Angle(), "turn",
                   angleNode(object.before("turn"), placement.turn));
  object.putUnless(placement.frameTurn == Angle(), "frame-turn",
                   angleNode(object.before("frame-turn"), placement.frameTurn));
  object.putUnless(!placement.split, "split", JsonNode{placement.split});
  object.textIfAny("note", placement.note);
  return object.take();
}

JsonNode placementsNode(const JsonNode* before, const std::vector<OrderPlacement>& placements,
                        LengthUnit unit) {
  return listNode(
      before, placements,
      [](const OrderPlacement& placement) {
        return EntryNames{placement.location.text() + '\n' + placement.design.text(),
                          placement.location.text()};
      },
      [](const JsonNode& old) {
        const std::string location = textOf(&old, "location");
        return EntryNames{location + '\n' + textOf(&old, "design"), location};
      },
      [unit](const OrderPlacement& placement, const JsonNode* old) {
        return placementNode(placement, old, unit);
      });
}

JsonNode lineNode(const OrderLine& line, const JsonNode* before, LengthUnit unit) {
  JsonObjectWriter object(before);
  object.text("id", line.id);
  object.text("blank", line.blank.text());
  if (line.colour.empty()) {
    object.leaveOut("colour");  // the reader takes no empty colour
  } else {
    object.text("colour", line.colour);
  }
  object.put("sizes", sizesNode(object.before("sizes"), line.sizes));
  object.put("placements", placementsNode(object.before("placements"), line.placements, unit));
  object.textIfAny("note", line.note);
  object.putUnless(!line.supplied, "supplied", JsonNode{line.supplied});
  return object.take();
}

}  // namespace

JsonNode orderNode(const Order& order, const Original<Order>& before, const Writing& writing,
                   bool changedInPlace) {
  JsonObjectWriter object(before.text.get());
  const Order* old = before.value.get();
  putHead(object, FileKind::Order, true);
  object.text("id", order.id);
  object.textIfAny("title", order.title);
  object.textIfAny("customer", order.customer);
  object.textIfAny("due", order.due);
  object.textIfAny("note", order.note);
  object.identifiers("frames", order.frames);
  object.put("blanks", entriesNode<Blank>(object.before("blanks"),
                                          {order.blanks, before.blanks,
                                           old == nullptr ? nullptr : &old->blanks, blankNode},
                                          writing, changedInPlace));
  object.put("designs", entriesNode<Design>(object.before("designs"),
                                            {order.designs, before.designs,
                                             old == nullptr ? nullptr : &old->designs, designNode},
                                            writing, changedInPlace));
  object.put("lines", listNode(
                          object.before("lines"), order.lines,
                          [](const OrderLine& line) { return EntryNames{line.id}; },
                          [](const JsonNode& entry) { return EntryNames{textOf(&entry, "id")}; },
                          [&](const OrderLine& line, const JsonNode* entry) {
                            return lineNode(line, entry, writing.lengths);
                          }));
  return object.take();
}

}  // namespace creaseline
