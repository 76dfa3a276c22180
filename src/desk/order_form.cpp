// SPDX-License-Identifier: MIT
#include "desk/order_form.h"

#include <QFormLayout>

#include "creaseline/catalogue/field_check.h"
#include "desk/form_parts.h"
#include "desk/text.h"

namespace creaseline::desk {

OrderForm::OrderForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("orderForm"));
  const auto label = [](bool mayBeEmpty) {
    return [mayBeEmpty](const QString& text) {
      return problemOf(checkLabel(toUtf8(text), mayBeEmpty));
    };
  };
  number_ = field(QStringLiteral("orderNumber"), tr("Number of the order"), label(false),
                  &OrderEdits::number);
  title_ = field(QStringLiteral("orderTitleEdit"), tr("Title of the order"), label(true),
                 &OrderEdits::title);
  customer_ =
      field(QStringLiteral("orderCustomer"), tr("Customer"), label(true), &OrderEdits::customer);
  title_->keepWhileTyping();
  customer_->keepWhileTyping();
  due_ = field(
      QStringLiteral("orderDue"), tr("Due date, as in 2026-12-04"),
      [](const QString& text) { return problemOf(checkDue(toUtf8(text))); }, &OrderEdits::due);
  due_->edit().setPlaceholderText(tr("year-month-day"));
  frames_ = new FramesPick(this);
  connect(frames_, &FramesPick::framesPicked, this, [this](const std::vector<FrameId>& frames) {
    if (planned_ && planned_->order() != nullptr) {
      Q_EMIT edited(edits().frames(frames, planned_->shop()));
    }
  });
  note_ = new NoteEdit(QStringLiteral("orderNote"), tr("Note of the order"), this);
  connect(note_, &NoteEdit::committed, this,
          [this](const QString& text) { edit(&OrderEdits::note, text, note_->typingSession()); });

  auto* form = new QFormLayout(this);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form->addRow(tr("N&umber"), number_);
  form->addRow(tr("T&itle"), title_);
  form->addRow(tr("&Customer"), customer_);
  form->addRow(tr("&Due"), due_);
  form->addRow(tr("F&rames"), frames_);
  form->addRow(tr("N&ote"), note_);
}

FieldEdit* OrderForm::field(const QString& name, const QString& words,
                            const FieldEdit::Check& check, Make make) {
  auto* made = new FieldEdit(name, words, check, this);
  connect(made, &FieldEdit::committed, this,
          [this, make, made](const QString& text) { edit(make, text, made->typingSession()); });
  return made;
}

OrderEdits OrderForm::edits() const {
  return {*planned_->order(), planned_->rules(), planned_->units()};
}

void OrderForm::edit(Make make, const QString& text, const QString& typing) {
  if (planned_ && planned_->order() != nullptr) {
    OrderEdit edit = (edits().*make)(toUtf8(text.trimmed()));
    edit.merging = typing;
    Q_EMIT edited(edit);
  }
}

void OrderForm::show(const std::shared_ptr<const PlannedOrder>& planned) {
  planned_ = planned;
  const Order* order = planned->order();
  setEnabled(order != nullptr);
  if (order == nullptr) {
    return;
  }
  number_->setText(toQString(order->id));
  title_->setText(toQString(order->title));
  customer_->setText(toQString(order->customer));
  due_->setText(toQString(order->due));
  frames_->showFrames(order->frames, planned->shop());
  note_->setText(toQString(order->note));
}

}  // namespace creaseline::desk
