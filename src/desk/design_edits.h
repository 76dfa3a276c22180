// SPDX-License-Identifier: MIT
// What a person can do to the designs of an order: identity, size, outline, thread blocks, appliqué
// pieces, monogram. Pure functions of the order, like order_edits.h.
//
// An order must stay one that can be saved and read again: what a field holds passes a check or a
// problem function first, and what follows from a change changes with it (the stitches with the
// blocks, the outline with the size, blocks with the name of their piece).
#pragma once

#include <QCoreApplication>
#include <functional>
#include <optional>

#include "desk/order_edits.h"

namespace creaseline::desk {

class DesignEdits {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::DesignEdits)

 public:
  DesignEdits(const Order& order, const UnitChoice& units) : order_(order), units_(units) {}

  // The list of designs. `index` is into Order::designs throughout.
  [[nodiscard]] OrderEdit add() const;
  [[nodiscard]] OrderEdit addCopyOf(const Design& design) const;  // under an id that is free
  [[nodiscard]] OrderEdit duplicate(std::size_t index) const;
  // Why it must stay, or nothing.
  [[nodiscard]] std::optional<QString> removeProblem(std::size_t index) const;
  [[nodiscard]] OrderEdit remove(std::size_t index) const;

  [[nodiscard]] OrderEdit name(std::size_t index, const std::string& name) const;
  [[nodiscard]] OrderEdit id(std::size_t index, const std::string& id) const;

  // Size. That of a drawing or picture is its own and stays.
  [[nodiscard]] bool maySize(std::size_t index) const;
  enum class Side { Width, Height };
  [[nodiscard]] Result<Length> checkSide(std::size_t index, Side side, std::string_view text,
                                         bool proportional) const;
  [[nodiscard]] OrderEdit side(std::size_t index, Side side, Length value, bool proportional) const;
  [[nodiscard]] OrderEdit stitches(std::size_t index, int stitches) const;  // only without blocks

  // Outline. `file` as the order writes it; `outline` as it was read from it.
  [[nodiscard]] std::optional<QString> outlineProblem(std::size_t index,
                                                      const Outline& outline) const;
  [[nodiscard]] OrderEdit outlineFromFile(std::size_t index, OutlineSource source,
                                          const Outline& outline, const std::string& file,
                                          double dotsPerInch) const;
  [[nodiscard]] OrderEdit outlineFromBox(std::size_t index) const;

  // Thread blocks, in sewing order.
  [[nodiscard]] OrderEdit addBlock(std::size_t index, std::size_t at) const;
  [[nodiscard]] OrderEdit removeBlock(std::size_t index, std::size_t block) const;
  [[nodiscard]] OrderEdit shiftBlock(std::size_t index, std::size_t block, int by) const;
  // The whole of a block; `name` is that of the step.
  [[nodiscard]] std::optional<QString> blockProblem(std::size_t index, std::size_t block,
                                                    const ThreadBlock& changed) const;
  [[nodiscard]] OrderEdit block(std::size_t index, std::size_t block,
                                const ThreadBlock& changed) const;

  // Appliqué pieces.
  [[nodiscard]] OrderEdit addPiece(std::size_t index) const;
  [[nodiscard]] std::optional<QString> removePieceProblem(std::size_t index,
                                                          std::size_t piece) const;
  [[nodiscard]] OrderEdit removePiece(std::size_t index, std::size_t piece) const;
  [[nodiscard]] OrderEdit shiftPiece(std::size_t index, std::size_t piece, int by) const;
  [[nodiscard]] OrderEdit piece(std::size_t index, std::size_t piece,
                                const AppliquePiece& changed) const;

  // Nothing: the design is no monogram.
  [[nodiscard]] static std::optional<QString> monogramProblem(const Monogram& monogram);
  [[nodiscard]] OrderEdit monogram(std::size_t index,
                                   const std::optional<Monogram>& monogram) const;

 private:
  using DesignChange = std::function<void(Design&)>;
  [[nodiscard]] OrderEdit onDesign(std::size_t index, const QString& name,
                                   const DesignChange& change) const;
  [[nodiscard]] QString nameOf(std::size_t index) const;
  [[nodiscard]] OrderEdit added(Design design, const QString& name) const;
  [[nodiscard]] Design sized(std::size_t index, Side side, Length value, bool proportional) const;
  [[nodiscard]] std::optional<QString> scaleProblem(const Design& changed) const;

  const Order& order_;
  UnitChoice units_;
};

}  // namespace creaseline::desk
