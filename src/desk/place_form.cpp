// SPDX-License-Identifier: MIT
#include "desk/place_form.h"

#include <QFormLayout>
#include <QSignalBlocker>
#include <algorithm>
#include <cmath>

#include "creaseline/catalogue/field_check.h"
#include "desk/form_parts.h"
#include "desk/text.h"

namespace creaseline::desk {

PlaceForm::PlaceForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("placeForm"));
  location_ = makeChoice("placeLocation", tr("Place on the garment"), this);
  design_ = makeChoice("placeDesign", tr("Design at this place"), this);
  connect(location_, &QComboBox::activated, this, [this](int index) {
    const LocationId chosen(toUtf8(location_->itemData(index).toString()));
    if (chosen != shownPlace().location) {
      Q_EMIT edited(edits().location(line_, placement_, chosen));
    }
  });
  connect(design_, &QComboBox::activated, this, [this](int index) {
    const Design& chosen = planned_->order()->designs.at(static_cast<std::size_t>(index));
    if (chosen.id != shownPlace().design) {
      Q_EMIT edited(edits().design(line_, placement_, chosen));
    }
  });
  makeFields();
  auto* form = new QFormLayout(this);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form->addRow(tr("&Place"), location_);
  form->addRow(tr("&Design"), design_);
  form->addRow(tr("Sca&le"), scale_);
  form->addRow(tr("&Moved down"), moveDown_);
  form->addRow(tr("Moved side&ways"), moveRight_);
  form->addRow(tr("Tu&rned"), turn_);
  form->addRow(tr("Frame t&urned"), frameTurn_);
  form->addRow(QString(), split_);
  form->addRow(tr("N&ote"), note_);
  showNothing();
}

void PlaceForm::makeFields() {
  scale_ = new FieldEdit(
      QStringLiteral("placeScale"), tr("Scale of the design, as in 90 %"),
      [this](const QString& text) -> std::optional<QString> {
        const Design* design = planned_->order()->design(shownPlace().design);
        return design == nullptr ? std::nullopt
                                 : problemOf(checkScale(toUtf8(text), *design, planned_->units()));
      },
      this);
  connect(scale_, &FieldEdit::committed, this, [this](const QString& text) {
    if (const Design* design = planned_->order()->design(shownPlace().design)) {
      Q_EMIT edited(
          edits().scale(line_, placement_, *checkScale(toUtf8(text), *design, planned_->units())));
    }
  });
  moveDown_ = new FieldEdit(
      QStringLiteral("placeMoveDown"), tr("Moved down from the rule; a minus sign moves up"),
      [this](const QString& text) { return problemOf(checkMove(toUtf8(text), unit())); }, this);
  connect(moveDown_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().moveDown(line_, placement_, *checkMove(toUtf8(text), unit())));
  });
  moveRight_ = new FieldEdit(
      QStringLiteral("placeMoveRight"),
      tr("Moved sideways from the rule, to the viewer's right; a minus sign moves left"),
      [this](const QString& text) { return problemOf(checkMove(toUtf8(text), unit())); }, this);
  connect(moveRight_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().moveRight(line_, placement_, *checkMove(toUtf8(text), unit())));
  });
  turn_ = new FieldEdit(
      QStringLiteral("placeTurn"), tr("Turned clockwise against the rule, in degrees"),
      [](const QString& text) { return problemOf(checkTurn(toUtf8(text))); }, this);
  connect(turn_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().turn(line_, placement_, *checkTurn(toUtf8(text))));
  });
  frameTurn_ = new FieldEdit(
      QStringLiteral("placeFrameTurn"),
      tr("Frames may also lie turned clockwise by so much on the garment, in degrees"),
      [](const QString& text) { return problemOf(checkTurn(toUtf8(text))); }, this);
  connect(frameTurn_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().frameTurn(line_, placement_, *checkTurn(toUtf8(text))));
  });
  split_ = new QCheckBox(tr("&Several hoopings"), this);
  split_->setObjectName(QStringLiteral("placeSplit"));
  split_->setToolTip(
      tr("Where no frame holds the design whole, sew it in parts that meet on register marks"));
  split_->setAccessibleDescription(split_->toolTip());
  connect(split_, &QCheckBox::clicked, this,
          [this](bool checked) { Q_EMIT edited(edits().split(line_, placement_, checked)); });
  note_ = new NoteEdit(QStringLiteral("placeNote"), tr("Note of the place"), this);
  connect(note_, &NoteEdit::committed, this, [this](const QString& text) {
    OrderEdit edit = edits().placeNote(line_, placement_, toUtf8(text.trimmed()));
    edit.merging = note_->typingSession();
    Q_EMIT edited(edit);
  });
}

OrderEdits PlaceForm::edits() const {
  return {*planned_->order(), planned_->rules(), planned_->units()};
}

const OrderPlacement& PlaceForm::shownPlace() const {
  return planned_->order()->lines.at(line_).placements.at(placement_);
}

void PlaceForm::showNothing() {
  planned_.reset();
  setEnabled(false);
}

void PlaceForm::show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t line,
                     std::size_t placement) {
  planned_ = planned;
  line_ = line;
  placement_ = placement;
  setEnabled(true);
  const OrderPlacement& shown = shownPlace();
  fillLocations();
  fillDesigns();
  scale_->setText(tr("%1 %", "number").arg(std::round(shown.scale * 1000.0) / 10.0));
  moveDown_->setText(toQString(fieldText(shown.moveDown, unit())));
  moveRight_->setText(toQString(fieldText(shown.moveRight, unit())));
  turn_->setText(toQString(formatAngle(shown.turn)));
  frameTurn_->setText(toQString(formatAngle(shown.frameTurn)));
  split_->setChecked(shown.split);
  note_->setText(toQString(shown.note));
}

void PlaceForm::fillLocations() {
  const QSignalBlocker quiet(location_);
  location_->clear();
  for (const Location* location : edits().locations(line_)) {
    location_->addItem(toQString(location->name), toQString(location->id.text()));
  }
  location_->setCurrentIndex(location_->findData(toQString(shownPlace().location.text())));
}

void PlaceForm::fillDesigns() {
  const QSignalBlocker quiet(design_);
  design_->clear();
  for (const Design& design : planned_->order()->designs) {
    design_->addItem(toQString(design.name));
    if (design.id == shownPlace().design) {
      design_->setCurrentIndex(design_->count() - 1);
    }
  }
}

}  // namespace creaseline::desk
