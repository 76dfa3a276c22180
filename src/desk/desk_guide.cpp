// SPDX-License-Identifier: MIT
// The guide beside a first order: what is done, and where each step is done.
#include <QLineEdit>
#include <QRegularExpression>
#include <QToolButton>
#include <algorithm>

#include "desk/desk_parts.h"

namespace creaseline {

using namespace desk;  // NOLINT(google-build-using-namespace): this file is the desk's own

void DeskWindow::Parts::connectGuide() {
  QObject::connect(guide_, &OrderGuide::stepChosen, &window_,
                   [this](OrderGuide::Step step) { goToStep(step); });
  QObject::connect(missing_, &MissingPanel::wayChosen, &window_,
                   [this](MissingPanel::Way way) { fillIn(way); });
  QObject::connect(guide_, &OrderGuide::closed, &window_, [this] {
    settings_.setGuided(true);
    guideAsked_ = false;
    updateGuide();
  });
  QObject::connect(actions_.showGuide, &QAction::triggered, &window_, [this] {
    guideAsked_ = true;
    updateGuide();
  });
  for (const auto changed : {&Document::shopEdited, &Document::edited, &Document::filesChanged}) {
    QObject::connect(&document_, changed, &window_, [this] { updateGuide(); });
  }
}

void DeskWindow::Parts::fillIn(MissingPanel::Way way) {
  switch (way) {
    case MissingPanel::Way::OpenShop:
      askForShop();
      return;
    case MissingPanel::Way::NewShop:
      startShop();
      return;
    case MissingPanel::Way::Garments:
      goToStep(OrderGuide::Garment);
      return;
    case MissingPanel::Way::Designs:
      goToStep(OrderGuide::Design);
      return;
    case MissingPanel::Way::AddLine:
      goToStep(OrderGuide::Line);
      return;
    case MissingPanel::Way::AddPlace:
      goToStep(OrderGuide::Place);
      return;
    case MissingPanel::Way::Quantities:
      goToStep(OrderGuide::Quantities);
      return;
  }
}

void DeskWindow::Parts::updateGuide() {
  if (guide_ == nullptr) {
    return;
  }
  const auto shop = document_.shopInHand();
  const auto order = document_.orderInHand();
  // Who has saved an order, or closed the guide, knows the way.
  guide_->setVisible(guideAsked_ ||
                     (!settings_.guided() && order && document_.orderFile().isEmpty()));
  const auto anyLine = [&order](const auto& has) {
    return order && std::any_of(order->lines.begin(), order->lines.end(), has);
  };
  guide_->setDone(OrderGuide::Shop, shop && !document_.shopFile().isEmpty());
  guide_->setDone(OrderGuide::Garment, order && !order->blanks.empty());
  guide_->setDone(OrderGuide::Design, order && !order->designs.empty());
  guide_->setDone(OrderGuide::Line, order && !order->lines.empty());
  guide_->setDone(OrderGuide::Place,
                  anyLine([](const OrderLine& line) { return !line.placements.empty(); }));
  guide_->setDone(OrderGuide::Quantities, order && order->garments() > 0);
}

void DeskWindow::Parts::goToStep(OrderGuide::Step step) {
  const auto openMenu = [this](const char* button) {
    if (auto* found = window_.findChild<QToolButton*>(QString::fromLatin1(button));
        found != nullptr && found->isEnabled()) {
      found->setFocus();
      found->showMenu();
    }
  };
  switch (step) {
    case OrderGuide::Shop:
      document_.shopInHand() ? showFrames() : startShop();
      return;
    case OrderGuide::Garment:
      actions_.garments->trigger();
      return;
    case OrderGuide::Design:
      actions_.designs->trigger();
      return;
    case OrderGuide::Line:
      openMenu("addGarmentButton");
      return;
    case OrderGuide::Place:
      openMenu("addPlaceButton");
      return;
    case OrderGuide::Quantities:
      if (document_.orderInHand() && !document_.orderInHand()->lines.empty()) {
        selection_.chooseLine(selection_.line());
        details_->setCurrentIndex(DetailsPanel::LineTab);
        const auto fields = details_->currentWidget()->findChildren<QLineEdit*>(
            QRegularExpression(QStringLiteral("^quantity-")));
        if (!fields.isEmpty()) {
          fields.first()->setFocus();
        }
      }
      return;
    case OrderGuide::Sheets:
      if (actions_.printSheets->isEnabled()) {
        guide_->setDone(OrderGuide::Sheets, true);
        actions_.printSheets->trigger();
      } else {
        messageBar_->say(Severity::Note, tr("There is nothing to print yet"),
                         tr("The steps before this one make the plan that the sheets show."));
      }
      return;
    case OrderGuide::StepCount:
      return;
  }
}

}  // namespace creaseline
