// SPDX-License-Identifier: MIT
// Which line, place and size is looked at. Kept by name, so that it outlives a new plan of the
// same order.
#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <string>

#include "desk/order_edits.h"
#include "desk/planned_order.h"

namespace creaseline::desk {

class Selection : public QObject {
  Q_OBJECT

 public:
  explicit Selection(QObject* parent = nullptr);

  // Takes the new plan and finds the same line, place and size in it; else the nearest left, else
  // the first.
  void setPlanned(std::shared_ptr<const PlannedOrder> planned);

  [[nodiscard]] bool empty() const;
  [[nodiscard]] std::size_t line() const { return line_; }
  [[nodiscard]] std::size_t placement() const { return placement_; }
  [[nodiscard]] const SizeName& size() const { return size_; }
  // Which hooping of a design that is sewn in several, counted from 0.
  [[nodiscard]] std::size_t hooping() const { return hooping_; }
  // The plan of what is selected; null if nothing is, or there is no plan yet.
  [[nodiscard]] const PlacementPlan* current() const;

  // Whether the line itself was chosen, not one of its places; views of one place then show the
  // place that placement() says.
  [[nodiscard]] bool wholeLine() const { return wholeLine_; }
  // What an edit is meant for; nothing if the order is empty.
  [[nodiscard]] std::optional<Spot> spot() const;

  void chooseLine(std::size_t line);
  void choosePlacement(std::size_t line, std::size_t placement);
  void chooseSize(const SizeName& size);
  void choose(std::size_t line, std::size_t placement, const SizeName& size);
  void chooseHooping(std::size_t hooping);
  // A second size of the same place, drawn over the first; the same again takes it away. It goes
  // by itself when another line or place is chosen.
  void compare(const SizeName& size);
  [[nodiscard]] const PlacementPlan* compared() const;  // null if none is
  // A part of the garment that nothing is sewn on, to see it. It goes by itself when a line or a
  // place is chosen.
  void lookAt(PanelName panel);
  [[nodiscard]] std::optional<PanelName> lookedAt() const { return lookedAt_; }

 Q_SIGNALS:
  void changed();

 private:
  void settle();
  void choose(std::size_t line, std::size_t placement, const SizeName& size, bool wholeLine,
              std::optional<PanelName> lookedAt = {});

  std::shared_ptr<const PlannedOrder> planned_;
  std::string orderId_, lineId_;
  std::size_t line_ = 0, placement_ = 0;
  std::size_t hooping_ = 0;
  bool wholeLine_ = false;
  SizeName size_;
  std::optional<SizeName> compared_;
  std::optional<PanelName> lookedAt_;
};

}  // namespace creaseline::desk
