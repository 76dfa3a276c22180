// SPDX-License-Identifier: MIT
// What a person can do to the garments of an order: identity, fabric, colours, size chart. Pure
// functions of the order, like order_edits.h.
//
// An order must stay one that can be saved and read again, so each edit has a problem function, or
// takes only what a check has let through; lines that use the garment follow its changes.
#pragma once

#include <QCoreApplication>
#include <functional>
#include <optional>

#include "creaseline/catalogue/chart_import.h"
#include "creaseline/catalogue/garment_shape.h"
#include "desk/order_edits.h"

namespace creaseline::desk {

class GarmentEdits {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::GarmentEdits)

 public:
  GarmentEdits(const Order& order, const Rules& rules, const UnitChoice& units)
      : order_(order), rules_(rules), units_(units) {}

  // The list of garments. `index` is into Order::blanks throughout.
  [[nodiscard]] OrderEdit add() const;
  [[nodiscard]] OrderEdit addCopyOf(const Blank& blank) const;  // under an id that is free
  [[nodiscard]] OrderEdit duplicate(std::size_t index) const;
  // Why it must stay, or nothing.
  [[nodiscard]] std::optional<QString> removeProblem(std::size_t index) const;
  [[nodiscard]] OrderEdit remove(std::size_t index) const;

  [[nodiscard]] OrderEdit name(std::size_t index, const std::string& name) const;
  [[nodiscard]] OrderEdit id(std::size_t index, const std::string& id) const;
  // Places that the other kind does not have are left out, and the name says so.
  [[nodiscard]] std::optional<QString> kindProblem(std::size_t index, const KindId& kind) const;
  [[nodiscard]] OrderEdit kind(std::size_t index, const KindId& kind) const;

  // Nothing: not given.
  [[nodiscard]] OrderEdit price(std::size_t index, const std::optional<Price>& price) const;

  // It is as proposed for the kind.
  [[nodiscard]] OrderEdit fabricConfirmed(std::size_t index) const;
  [[nodiscard]] OrderEdit fabricName(std::size_t index, const std::string& name) const;
  [[nodiscard]] OrderEdit weight(std::size_t index, ArealWeight weight) const;
  [[nodiscard]] OrderEdit construction(std::size_t index, Construction construction) const;
  [[nodiscard]] OrderEdit pile(std::size_t index, Pile pile) const;
  [[nodiscard]] OrderEdit stretch(std::size_t index, Stretch stretch) const;
  [[nodiscard]] OrderEdit sheer(std::size_t index, bool sheer) const;
  // Shares that fibresProblem() has nothing against.
  [[nodiscard]] OrderEdit fibres(std::size_t index, const std::vector<FibreShare>& fibres) const;

  // Lines in a colour follow its new name, and are left without one when it goes.
  [[nodiscard]] OrderEdit addColour(std::size_t index) const;
  [[nodiscard]] OrderEdit removeColour(std::size_t index, std::size_t colour) const;
  [[nodiscard]] OrderEdit shiftColour(std::size_t index, std::size_t colour, int by) const;
  [[nodiscard]] OrderEdit colourName(std::size_t index, std::size_t colour,
                                     const std::string& name) const;
  [[nodiscard]] OrderEdit colourValue(std::size_t index, std::size_t colour, Colour value) const;

  // The size chart. Nothing takes the measure out, so that the kind's proportions fill it.
  [[nodiscard]] std::optional<QString> measureProblem(std::size_t index, std::size_t size,
                                                      Measure measure,
                                                      std::optional<Length> value) const;
  [[nodiscard]] OrderEdit measure(std::size_t index, std::size_t size, Measure measure,
                                  std::optional<Length> value) const;
  // A new size has the measures of the one that it stands behind, as proposals.
  [[nodiscard]] OrderEdit addSize(std::size_t index, std::size_t after) const;
  [[nodiscard]] std::optional<QString> removeSizeProblem(std::size_t index, std::size_t size) const;
  [[nodiscard]] OrderEdit removeSize(std::size_t index, std::size_t size) const;
  [[nodiscard]] OrderEdit shiftSize(std::size_t index, std::size_t size, int by) const;
  [[nodiscard]] Result<std::string> checkSizeName(std::size_t index, std::size_t size,
                                                  std::string_view text) const;
  [[nodiscard]] OrderEdit sizeName(std::size_t index, std::size_t size,
                                   const std::string& name) const;
  // Nothing: as the name or the body's width tells.
  [[nodiscard]] OrderEdit band(std::size_t index, std::size_t size,
                               std::optional<SizeBand> band) const;
  [[nodiscard]] std::optional<QString> chartProblem(std::size_t index,
                                                    const SizeChart& chart) const;
  // Sizes of lines that the new chart does not have are left out, and the name says so.
  [[nodiscard]] OrderEdit chart(std::size_t index, const SizeChart& chart) const;
  // Sizes that lines ask for and the chart lacks.
  [[nodiscard]] std::vector<SizeName> sizesLost(std::size_t index, const SizeChart& chart) const;

 private:
  using BlankChange = std::function<void(Blank&)>;
  [[nodiscard]] OrderEdit onBlank(std::size_t index, const QString& name,
                                  const BlankChange& change) const;
  [[nodiscard]] OrderEdit onFabric(std::size_t index, const QString& name,
                                   const std::function<void(Fabric&)>& change) const;
  [[nodiscard]] OrderEdit onSize(std::size_t index, std::size_t size, const QString& name,
                                 const std::function<void(ChartSize&)>& change) const;
  [[nodiscard]] QString nameOf(std::size_t index) const;
  [[nodiscard]] KindForm formOf(const Blank& blank) const;
  [[nodiscard]] OrderEdit added(Blank blank, const QString& name) const;

  const Order& order_;
  const Rules& rules_;
  UnitChoice units_;
};

// Why a size makes no garment of that kind, or nothing.
[[nodiscard]] std::optional<QString> sizeProblem(const GarmentKind& kind, const ChartSize& size,
                                                 const UnitChoice& units);

// An id like the one given that none of `taken` has: "crest", "crest-2".
[[nodiscard]] std::string freshId(const std::string& like, const std::vector<std::string>& taken);

// Fibres as a label says them, "80 % cotton, 20 % polyester"; the share may also stand behind.
[[nodiscard]] Result<std::vector<FibreShare>> parseFibres(std::string_view text);
[[nodiscard]] std::string fibresText(const std::vector<FibreShare>& fibres);

// "1", "1 and 3", "1, 2 and 3".
[[nodiscard]] QString listed(const QStringList& words);

}  // namespace creaseline::desk
