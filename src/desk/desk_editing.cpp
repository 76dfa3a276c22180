// SPDX-License-Identifier: MIT
// What the user changes in the order, from menus, table and forms.
#include <QFileInfo>

#include "desk/desk_parts.h"
#include "desk/edit_commands.h"
#include "desk/file_questions.h"
#include "desk/text.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

// Of the workspace's own.
void DeskWindow::Parts::connectForms() {
  QObject::connect(details_, &DetailsPanel::edited, &window_,
                   [this](const OrderEdit& asked) { edit(asked); });
  QObject::connect(&tablePanel_->canvas(), &TableCanvas::laid, &window_,
                   [this](const LivePlanner::Spot& spot, const OrderPlacement& asked, bool nudged) {
                     if (const auto make = edits()) {
                       edit(make->laid(spot.line, spot.placement, asked, nudged));
                     }
                   });
}

void DeskWindow::Parts::connectEditing() {
  QObject::connect(
      &orderModel_, &OrderModel::quantityAsked, &window_,
      [this](int line, const QString& size, int quantity) {
        if (const auto make = edits()) {
          edit(make->quantity(static_cast<std::size_t>(line), SizeName(toUtf8(size)), quantity));
        }
      });
  const auto onSpot = [this](QAction* action, auto change) {
    QObject::connect(action, &QAction::triggered, &window_, [this, change] {
      const auto spot = selection_.spot();
      const auto make = edits();
      if (spot && make) {
        change(*make, *spot);
      }
    });
  };
  onSpot(actions_.remove,
         [this](const OrderEdits& make, const Spot& spot) { edit(make.remove(spot)); });
  onSpot(actions_.duplicate, [this](const OrderEdits& make, const Spot& spot) {
    if (edit(make.duplicate(spot))) {
      spot.placement ? selection_.choosePlacement(spot.line, *spot.placement + 1)
                     : selection_.chooseLine(spot.line + 1);
    }
  });
  const auto shift = [this](int by) {
    return [this, by](const OrderEdits& make, const Spot& spot) {
      if (!make.mayShift(spot, by) || !edit(make.shift(spot, by))) {
        return;
      }
      const auto moved = [by](std::size_t from) {
        return static_cast<std::size_t>(static_cast<std::ptrdiff_t>(from) + by);
      };
      spot.placement ? selection_.choosePlacement(spot.line, moved(*spot.placement))
                     : selection_.chooseLine(moved(spot.line));
    };
  };
  onSpot(actions_.byRule, [this](const OrderEdits& make, const Spot& spot) {
    if (spot.placement) {
      edit(make.byRule(spot.line, *spot.placement));
    }
  });
  onSpot(actions_.moveUp, shift(-1));
  onSpot(actions_.moveDown, shift(1));
  for (QMenu* menu : {actions_.addGarment, actions_.addPlace}) {
    QObject::connect(menu, &QMenu::aboutToShow, &window_, [this] { fillAddMenus(); });
  }
}

std::optional<OrderEdits> DeskWindow::Parts::edits() const {
  const auto planned = document_.planned();
  if (planned->order() == nullptr) {
    return std::nullopt;
  }
  return OrderEdits(*planned->order(), planned->rules(), planned->units());
}

bool DeskWindow::Parts::edit(const OrderEdit& asked) {
  return applyEdit(document_, asked);
}

void DeskWindow::Parts::updateEditing() {
  const auto spot = selection_.spot();
  const auto make = edits();
  actions_.addGarment->menuAction()->setEnabled(make.has_value());
  actions_.addPlace->menuAction()->setEnabled(make && spot);
  actions_.duplicate->setEnabled(make && spot);
  actions_.remove->setEnabled(make && spot);
  actions_.moveUp->setEnabled(make && spot && make->mayShift(*spot, -1));
  actions_.moveDown->setEnabled(make && spot && make->mayShift(*spot, 1));
  const OrderPlacement* place =
      make && spot && spot->placement
          ? &document_.planned()->order()->lines[spot->line].placements[*spot->placement]
          : nullptr;
  actions_.byRule->setEnabled(
      place != nullptr &&
      (place->moveDown != Length() || place->moveRight != Length() || place->turn != Angle()));
  actions_.save->setEnabled(document_.modified() || fileGone());
  for (QAction* action : {actions_.saveAs, actions_.duplicateOrder, actions_.savePattern}) {
    action->setEnabled(make.has_value());
  }
  actions_.editShop->setEnabled(document_.shopInHand() != nullptr);
}

void DeskWindow::Parts::addToMenu(QMenu& menu, const QString& words,
                                  const std::function<void()>& run) {
  QString text = words;
  // An ampersand in a name is not a mnemonic.
  QObject::connect(menu.addAction(text.replace(QLatin1Char('&'), QStringLiteral("&&"))),
                   &QAction::triggered, &window_, run);
}

void DeskWindow::Parts::fillAddMenus() {
  actions_.addGarment->clear();
  actions_.addPlace->clear();
  if (const Order* order = document_.planned()->order()) {
    for (const Blank& blank : order->blanks) {
      addToMenu(*actions_.addGarment, toQString(blank.name), [this, blank] { addGarment(blank); });
    }
    for (const Design& design : order->designs) {
      addToMenu(*actions_.addPlace, toQString(design.name), [this, design] { addPlace(design); });
    }
  }
  actions_.addGarment->addSeparator();
  addToMenu(*actions_.addGarment, tr("New garment…"), [this] {
    library_.newGarment();
    addGarment(Blank(document_.planned()->order()->blanks.back()));
  });
  addToMenu(*actions_.addGarment, tr("From a file…"), [this] { addGarmentFromFile(); });
  actions_.addPlace->addSeparator();
  addToMenu(*actions_.addPlace, tr("With a new design…"), [this] {
    library_.newDesign();
    addPlace(Design(document_.planned()->order()->designs.back()));
  });
  addToMenu(*actions_.addPlace, tr("With a design from a file…"), [this] { addDesignFromFile(); });
}

void DeskWindow::Parts::addGarment(const Blank& blank) {
  if (const auto make = edits(); make && edit(make->addLine(blank))) {
    selection_.chooseLine(document_.planned()->order()->lines.size() - 1);
    details_->setCurrentIndex(DetailsPanel::LineTab);
  }
}

void DeskWindow::Parts::addPlace(const Design& design) {
  const auto make = edits();
  const auto spot = selection_.spot();
  if (!make || !spot) {
    return;
  }
  const auto added = make->addPlace(spot->line, design);
  if (!added) {
    messageBar_->say(Severity::Watch, tr("Every place of this garment is taken"),
                     tr("Change one of its places, or add the garment on a line of its own."));
    return;
  }
  if (edit(*added)) {
    selection_.choosePlacement(
        spot->line, document_.planned()->order()->lines[spot->line].placements.size() - 1);
    details_->setCurrentIndex(DetailsPanel::PlaceTab);
  }
}

void DeskWindow::Parts::addGarmentFromFile() {
  try {
    const auto loaded = askForGarment(&window_, QFileInfo(proposed(QString())).absolutePath(),
                                      document_.planned()->rules());
    if (!loaded) {
      return;
    }
    if (document_.orderInHand()->blank(loaded->value.id) == nullptr) {
      document_.referTo(loaded->original);
    }
    addGarment(loaded->value);
  } catch (const InputError& error) {
    messageBar_->say(Severity::Stop, tr("The garment cannot be added"), toQString(error.what()));
  }
}

void DeskWindow::Parts::addDesignFromFile() {
  try {
    const auto loaded = askForDesign(&window_, QFileInfo(proposed(QString())).absolutePath());
    if (!loaded) {
      return;
    }
    if (document_.orderInHand()->design(loaded->value.id) == nullptr) {
      document_.referTo(loaded->original);
    }
    addPlace(loaded->value);
  } catch (const InputError& error) {
    messageBar_->say(Severity::Stop, tr("The design cannot be added"), toQString(error.what()));
  }
}

}  // namespace creaseline
