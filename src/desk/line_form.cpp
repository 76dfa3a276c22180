// SPDX-License-Identifier: MIT
#include "desk/line_form.h"

#include <QFormLayout>
#include <QSignalBlocker>
#include <algorithm>

#include "creaseline/catalogue/field_check.h"
#include "desk/form_parts.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr int kSizesInARow = 6;

}  // namespace

LineForm::LineForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("lineForm"));
  id_ = new FieldEdit(
      QStringLiteral("lineId"), tr("Number of the line"),
      [this](const QString& text) {
        return problemOf(checkLineId(toUtf8(text), *planned_->order(), line_));
      },
      this);
  connect(id_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().lineId(line_, toUtf8(text.trimmed())));
  });
  blank_ = makeChoice("lineBlank", tr("Garment of the line"), this);
  colour_ = makeChoice("lineColour", tr("Colour of the garment"), this);
  connect(blank_, &QComboBox::activated, this, [this](int index) {
    const Blank& chosen = planned_->order()->blanks.at(static_cast<std::size_t>(index));
    if (chosen.id != shownLine().blank) {
      Q_EMIT edited(edits().blank(line_, chosen));
    }
  });
  connect(colour_, &QComboBox::activated, this, [this](int index) {
    Q_EMIT edited(edits().colour(line_, toUtf8(colour_->itemData(index).toString())));
  });
  sizes_ = new QWidget(this);
  sizesLayout_ = new QGridLayout(sizes_);
  sizesLayout_->setContentsMargins(0, 0, 0, 0);
  sizesLayout_->setSpacing(4);
  note_ = new NoteEdit(QStringLiteral("lineNote"), tr("Note of the line"), this);
  connect(note_, &NoteEdit::committed, this, [this](const QString& text) {
    OrderEdit edit = edits().lineNote(line_, toUtf8(text.trimmed()));
    edit.merging = note_->typingSession();
    Q_EMIT edited(edit);
  });
  supplied_ = new QCheckBox(tr("Supplie&d by the customer"), this);
  supplied_->setObjectName(QStringLiteral("lineSupplied"));
  supplied_->setToolTip(tr("The garments cost the shop nothing"));
  supplied_->setAccessibleDescription(supplied_->toolTip());
  connect(supplied_, &QCheckBox::clicked, this,
          [this](bool checked) { Q_EMIT edited(edits().supplied(line_, checked)); });
  auto* form = new QFormLayout(this);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form->addRow(tr("&Line"), id_);
  form->addRow(tr("&Garment"), blank_);
  form->addRow(tr("&Colour"), colour_);
  form->addRow(tr("Sizes"), sizes_);
  form->addRow(tr("N&ote"), note_);
  form->addRow(QString(), supplied_);
  showNothing();
}

OrderEdits LineForm::edits() const {
  return {*planned_->order(), planned_->rules(), planned_->units()};
}

const OrderLine& LineForm::shownLine() const {
  return planned_->order()->lines.at(line_);
}

void LineForm::showNothing() {
  planned_.reset();
  setEnabled(false);
}

void LineForm::show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t line) {
  planned_ = planned;
  line_ = line;
  setEnabled(true);
  const OrderLine& shown = shownLine();
  const Blank* blank = planned->order()->blank(shown.blank);
  id_->setText(toQString(shown.id));
  fillBlanks();
  fillColours(blank);
  fillSizes(blank);
  note_->setText(toQString(shown.note));
  supplied_->setChecked(shown.supplied);
}

void LineForm::fillBlanks() {
  const QSignalBlocker quiet(blank_);
  blank_->clear();
  const std::vector<Blank>& blanks = planned_->order()->blanks;
  for (const Blank& blank : blanks) {
    blank_->addItem(toQString(blank.name));
    if (blank.id == shownLine().blank) {
      blank_->setCurrentIndex(blank_->count() - 1);
    }
  }
}

void LineForm::fillColours(const Blank* blank) {
  const QSignalBlocker quiet(colour_);
  colour_->clear();
  colour_->addItem(tr("not said"), QString());
  if (blank == nullptr) {
    return;
  }
  for (const ClothColour& colour : blank->colours) {
    QPixmap sample(14, 14);
    sample.fill(QColor(colour.colour.red, colour.colour.green, colour.colour.blue));
    colour_->addItem(QIcon(sample), toQString(colour.name), toQString(colour.name));
  }
  colour_->setCurrentIndex(std::max(0, colour_->findData(toQString(shownLine().colour))));
}

// The fields are kept where the garment stays the same, so that one can go on typing.
void LineForm::fillSizes(const Blank* blank) {
  std::vector<SizeName> names;
  if (blank != nullptr) {
    for (const ChartSize& size : blank->chart.sizes) {
      names.push_back(size.name);
    }
  }
  if (names != sizeNames_) {
    qDeleteAll(sizes_->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
    quantities_.clear();
    sizeNames_ = std::move(names);
    for (std::size_t i = 0; i < sizeNames_.size(); ++i) {
      const QString size = toQString(sizeNames_[i].text());
      auto* field = new FieldEdit(
          QStringLiteral("quantity-") + size, tr("Garments in size %1").arg(size),
          [](const QString& text) { return problemOf(checkQuantity(toUtf8(text))); }, sizes_);
      field->edit().setAlignment(Qt::AlignCenter);
      auto* label = new QLabel(size, sizes_);
      label->setAlignment(Qt::AlignCenter);
      const int row = static_cast<int>(i) / kSizesInARow * 2;
      const int column = static_cast<int>(i) % kSizesInARow;
      sizesLayout_->addWidget(label, row, column);
      sizesLayout_->addWidget(field, row + 1, column, Qt::AlignTop);
      quantities_.push_back(field);
      connect(field, &FieldEdit::committed, this, [this, i](const QString& text) {
        Q_EMIT edited(edits().quantity(line_, sizeNames_[i], *checkQuantity(toUtf8(text))));
      });
    }
  }
  for (std::size_t i = 0; i < sizeNames_.size(); ++i) {
    const auto& sizes = shownLine().sizes;
    const auto found = std::find_if(sizes.begin(), sizes.end(), [&](const SizeQuantity& each) {
      return each.size == sizeNames_[i];
    });
    quantities_[i]->setText(found == sizes.end() ? QString() : QString::number(found->quantity));
  }
}

}  // namespace creaseline::desk
