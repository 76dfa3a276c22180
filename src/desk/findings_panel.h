// SPDX-License-Identifier: MIT
// The findings list, and under it the remedies of the chosen finding.
#pragma once

#include <QLabel>
#include <QListView>
#include <QVBoxLayout>
#include <QWidget>

#include "desk/finding_model.h"

namespace creaseline::desk {

class FindingsPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsPanel(QWidget* parent = nullptr);

  void setPlanned(std::shared_ptr<const PlannedOrder> planned);
  // Off while the plan on screen is not the order in hand.
  void setRemediesEnabled(bool enabled);

 Q_SIGNALS:
  // Clicked, or chosen by Enter: show its place.
  void jumpRequested(const creaseline::Finding& finding);
  // Chosen by its button, by Enter or by a double click: index into the shop's house rules.
  // What has to be bought or measured: lead to where it is entered.
  void leadRequested(const creaseline::Finding& finding, const creaseline::ShopChange& change);
  void houseRuleRequested(std::size_t rule);
  void remedyRequested(const creaseline::Finding& finding, const creaseline::Remedy& remedy);

 private:
  void showRemedies(int row);
  void addReasonAndRemedies(const Finding& finding);
  void clearRemedies();
  QLabel* reasonLabel(const Reason& reason);
  QWidget* remedyRow(const Finding& finding, const Remedy& remedy);

  FindingModel model_;
  QListView* list_ = nullptr;
  QLabel* empty_ = nullptr;
  QWidget* remediesArea_ = nullptr;  // scrolls over remedies_
  QWidget* remedies_ = nullptr;
  QVBoxLayout* remediesLayout_ = nullptr;
  bool remediesEnabled_ = true;
};

}  // namespace creaseline::desk
