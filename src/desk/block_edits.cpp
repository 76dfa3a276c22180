// SPDX-License-Identifier: MIT
// Thread blocks, appliqué pieces and monogram of designs.
#include <algorithm>
#include <cstdint>

#include "creaseline/catalogue/field_check.h"
#include "desk/catalogue_words.h"
#include "desk/design_edits.h"
#include "desk/garment_edits.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

// With blocks the total is their sum, nothing else.
void sumUp(Design& design) {
  if (!design.blocks.empty()) {
    design.stitches = 0;
    for (const ThreadBlock& block : design.blocks) {
      design.stitches += block.stitches;
    }
  }
}

bool needsPieces(const Design& design) {
  return std::any_of(design.blocks.begin(), design.blocks.end(),
                     [](const ThreadBlock& block) { return block.kind != BlockKind::Sew; });
}

QString amount(int stitches) {
  return QString::number(stitches);
}

}  // namespace

// ---- Thread blocks -----------------------------------------------------------------------------

OrderEdit DesignEdits::addBlock(std::size_t index, std::size_t at) const {
  return onDesign(index, tr("Add a thread block to %1").arg(nameOf(index)), [&](Design& design) {
    ThreadBlock block{toUtf8(tr("black", "thread")), {0x20, 0x20, 0x20}, 1000, BlockKind::Sew, {}};
    if (design.blocks.empty()) {
      block.stitches = design.stitches;  // what was the whole design is its first block
    }
    const std::size_t place = std::min(at, design.blocks.size());
    design.blocks.insert(design.blocks.begin() + static_cast<std::ptrdiff_t>(place), block);
    sumUp(design);
  });
}

OrderEdit DesignEdits::removeBlock(std::size_t index, std::size_t block) const {
  const std::string thread = order_.designs.at(index).blocks.at(block).thread;
  return onDesign(
      index,
      tr("Take the block in %1 out of %2", "thread, design").arg(toQString(thread), nameOf(index)),
      [&](Design& design) {
        design.blocks.erase(design.blocks.begin() + static_cast<std::ptrdiff_t>(block));
        sumUp(design);  // the last one leaves its stitches as the design's
      });
}

OrderEdit DesignEdits::shiftBlock(std::size_t index, std::size_t block, int by) const {
  const auto to = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(block) + by);
  const std::string thread = order_.designs.at(index).blocks.at(block).thread;
  return onDesign(
      index,
      (by < 0 ? tr("Sew the block in %1 of %2 earlier") : tr("Sew the block in %1 of %2 later"))
          .arg(toQString(thread), nameOf(index)),
      [&](Design& design) { std::swap(design.blocks.at(block), design.blocks.at(to)); });
}

std::optional<QString> DesignEdits::blockProblem(std::size_t index, std::size_t block,
                                                 const ThreadBlock& changed) const {
  const Design& design = order_.designs.at(index);
  if (changed.kind != BlockKind::Sew && design.pieces.empty()) {
    return tr("%1 belongs to an appliqué piece; add the piece first")
        .arg(blockKindWord(changed.kind));
  }
  std::int64_t sum = changed.stitches;
  for (std::size_t i = 0; i < design.blocks.size(); ++i) {
    sum += i == block ? 0 : design.blocks[i].stitches;
  }
  if (const auto total = checkStitches(std::to_string(sum)); !total) {
    return tr("All blocks together: %1").arg(toQString(total.message()));
  }
  return std::nullopt;
}

OrderEdit DesignEdits::block(std::size_t index, std::size_t block,
                             const ThreadBlock& changed) const {
  const ThreadBlock& before = order_.designs.at(index).blocks.at(block);
  const QString which = tr("block %1 of %2", "number, design").arg(block + 1).arg(nameOf(index));
  QString name = tr("Change %1").arg(which);
  if (changed.thread != before.thread) {
    name = tr("Thread of %1: %2").arg(which, toQString(changed.thread));
  } else if (changed.colour != before.colour) {
    name = tr("Colour of %1: %2").arg(which, toQString(colourText(changed.colour)));
  } else if (changed.stitches != before.stitches) {
    name = tr("Stitches of %1: %2").arg(which, amount(changed.stitches));
  } else if (changed.kind != before.kind) {
    name = tr("What %1 does: %2", "block, kind")
               .arg(which, uncapitalised(blockKindWord(changed.kind)));
  } else if (changed.piece != before.piece) {
    name = changed.piece.empty()
               ? tr("%1 is for every piece").arg(capitalised(which))
               : tr("%1 is for piece %2").arg(capitalised(which), quoted(changed.piece));
  }
  return onDesign(index, name, [&](Design& design) {
    design.blocks[block] = changed;
    sumUp(design);
  });
}

// ---- Appliqué pieces ---------------------------------------------------------------------------

OrderEdit DesignEdits::addPiece(std::size_t index) const {
  std::vector<std::string> taken;
  for (const AppliquePiece& piece : order_.designs.at(index).pieces) {
    taken.push_back(piece.name);
  }
  const std::string name = freshId(toUtf8(tr("piece")), taken);
  return onDesign(index, tr("Add an appliqué piece to %1").arg(nameOf(index)), [&](Design& design) {
    design.pieces.push_back({name, toUtf8(tr("twill")), design.width, design.height});
  });
}

std::optional<QString> DesignEdits::removePieceProblem(std::size_t index, std::size_t piece) const {
  const Design& design = order_.designs.at(index);
  if (design.pieces.size() == 1 && needsPieces(design)) {
    return tr(
        "It is the last piece, and there are blocks that place, tack or cover one. Make them "
        "plain sewing, or remove them first.");
  }
  // Without it their blocks would be sewn for every piece.
  QStringList blocks;
  for (std::size_t i = 0; i < design.blocks.size(); ++i) {
    if (design.blocks[i].piece == design.pieces.at(piece).name) {
      blocks.append(QString::number(i + 1));
    }
  }
  return blocks.isEmpty() ? std::nullopt
                          : std::optional(tr("Blocks are for this piece alone (%1); give them "
                                             "another piece, or remove them first.")
                                              .arg(listed(blocks)));
}

OrderEdit DesignEdits::removePiece(std::size_t index, std::size_t piece) const {
  const std::string name = order_.designs.at(index).pieces.at(piece).name;
  return onDesign(index, tr("Take piece %1 out of %2").arg(quoted(name), nameOf(index)),
                  [&](Design& design) {
                    design.pieces.erase(design.pieces.begin() + static_cast<std::ptrdiff_t>(piece));
                  });
}

OrderEdit DesignEdits::shiftPiece(std::size_t index, std::size_t piece, int by) const {
  const auto to = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(piece) + by);
  const QString name = quoted(order_.designs.at(index).pieces.at(piece).name);
  return onDesign(
      index, (by < 0 ? tr("Put piece %1 further up") : tr("Put piece %1 further down")).arg(name),
      [&](Design& design) { std::swap(design.pieces.at(piece), design.pieces.at(to)); });
}

OrderEdit DesignEdits::piece(std::size_t index, std::size_t piece,
                             const AppliquePiece& changed) const {
  const AppliquePiece before = order_.designs.at(index).pieces.at(piece);
  const QString which = quoted(before.name);
  const auto text = [this](Length length) { return toQString(fieldText(length, units_.length)); };
  QString name = tr("Piece %1 becomes %2").arg(which, quoted(changed.name));
  if (changed.fabric != before.fabric) {
    name = tr("Fabric of piece %1: %2").arg(which, toQString(changed.fabric));
  } else if (changed.width != before.width) {
    name = tr("Width of piece %1: %2").arg(which, text(changed.width));
  } else if (changed.height != before.height) {
    name = tr("Height of piece %1: %2").arg(which, text(changed.height));
  }
  return onDesign(index, name, [&](Design& design) {
    design.pieces[piece] = changed;
    for (ThreadBlock& block : design.blocks) {
      if (block.piece == before.name) {
        block.piece = changed.name;
      }
    }
  });
}

// ---- Monogram ----------------------------------------------------------------------------------

std::optional<QString> DesignEdits::monogramProblem(const Monogram& monogram) {
  if (monogram.first.empty() || monogram.surname.empty()) {
    return tr("A monogram needs a first name and a surname");
  }
  if (monogram.style == MonogramStyle::LargerCentre && monogram.middle.empty() &&
      monogram.wish.empty()) {
    return tr("A larger centre letter needs a middle name, or the customer's wish");
  }
  return std::nullopt;
}

OrderEdit DesignEdits::monogram(std::size_t index, const std::optional<Monogram>& monogram) const {
  const QString name = monogram
                           ? tr("Monogram %1: %2 %3 %4", "design, names")
                                 .arg(nameOf(index), toQString(monogram->first),
                                      toQString(monogram->middle), toQString(monogram->surname))
                                 .simplified()
                           : tr("%1 is no monogram").arg(nameOf(index));
  return onDesign(index, name, [&](Design& design) { design.monogram = monogram; });
}

}  // namespace creaseline::desk
