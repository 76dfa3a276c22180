// SPDX-License-Identifier: MIT
#include "desk/garment_form.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include "creaseline/catalogue/field_check.h"
#include "creaseline/catalogue/rate_text.h"
#include "desk/catalogue_words.h"
#include "desk/form_parts.h"
#include "desk/money_words.h"
#include "desk/text.h"

namespace creaseline::desk {

GarmentForm::GarmentForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("garmentForm"));
  auto* left = new QVBoxLayout;
  left->addWidget(buildGarment());
  left->addWidget(buildFabric());
  colours_ = buildColours();
  setFocusProxy(name_);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addLayout(left, 5);
  layout->addWidget(colours_, 4);
}

QWidget* GarmentForm::buildGarment() {
  auto* group = new QGroupBox(tr("Garment"), this);
  name_ = new FieldEdit(
      QStringLiteral("garmentName"), tr("Name of the garment"),
      [](const QString& text) { return problemOf(checkLabel(toUtf8(text), false)); }, group);
  connect(name_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().name(blank_, toUtf8(text.trimmed())));
  });
  id_ = new FieldEdit(
      QStringLiteral("garmentId"), tr("Id of the garment, by which orders refer to it"),
      [this](const QString& text) {
        return problemOf(checkBlankId(toUtf8(text), *planned_->order(), blank_));
      },
      group);
  connect(id_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().id(blank_, toUtf8(text.trimmed())));
  });
  kind_ = makeChoice("garmentKind", tr("Kind of garment"), group);
  connect(kind_, &QComboBox::activated, this, [this](int index) {
    const KindId chosen(toUtf8(kind_->itemData(index).toString()));
    if (chosen == blank().kind) {
      return;
    }
    if (const auto problem = edits().kindProblem(blank_, chosen)) {
      fillKinds();
      Q_EMIT refused(*problem);
      return;
    }
    Q_EMIT edited(edits().kind(blank_, chosen));
  });
  auto* form = new QFormLayout(group);
  form->addRow(tr("&Name"), name_);
  form->addRow(tr("Id"), id_);
  form->addRow(tr("&Kind"), kind_);
  price_ = buildPrice(group);
  form->addRow(tr("Price"), price_);
  return group;
}

FieldEdit* GarmentForm::buildPrice(QWidget* parent) {
  auto* made = new FieldEdit(
      QStringLiteral("garmentPrice"),
      tr("What one garment costs the shop, as in 12.40 EUR; empty: not counted"),
      [this](const QString& text) {
        return text.trimmed().isEmpty() ? std::nullopt : problemOf(readPrice(text));
      },
      parent);
  made->edit().setPlaceholderText(tr("not counted"));
  connect(made, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().price(
        blank_, text.trimmed().isEmpty() ? std::nullopt : std::optional(*readPrice(text))));
  });
  return made;
}

Result<Price> GarmentForm::readPrice(const QString& text) const {
  const auto shop = planned_->shop();
  const Currency* usual = shop && shop->rates ? &shop->rates->currency : nullptr;
  return parsePrice(toUtf8(text.trimmed().toUpper()), planned_->rules(), usual);
}

template <class E>
QComboBox* GarmentForm::enumChoice(const char* name, const QString& words, QString (*word)(E),
                                   OrderEdit (GarmentEdits::*make)(std::size_t, E) const,
                                   QWidget* parent) {
  QComboBox* made = makeChoice(name, words, parent);
  for (const auto& entry : EnumNames<E>::names) {
    made->addItem(word(entry.first), static_cast<int>(entry.first));
  }
  connect(made, &QComboBox::activated, this, [this, made, make](int index) {
    Q_EMIT edited((edits().*make)(blank_, static_cast<E>(made->itemData(index).toInt())));
  });
  return made;
}

QWidget* GarmentForm::buildFabric() {
  auto* group = new QGroupBox(tr("Fabric"), this);
  fabric_ = new FieldEdit(
      QStringLiteral("fabricName"), tr("Name of the fabric"),
      [](const QString& text) { return problemOf(checkLabel(toUtf8(text), false)); }, group);
  connect(fabric_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().fabricName(blank_, toUtf8(text.trimmed())));
  });
  weight_ = new FieldEdit(
      QStringLiteral("fabricWeight"), tr("Weight of the fabric, as in 280 g/m² or 8.3 oz/yd²"),
      [](const QString& text) { return problemOf(checkFabricWeight(toUtf8(text))); }, group);
  connect(weight_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().weight(blank_, *checkFabricWeight(toUtf8(text))));
  });
  fibres_ = new FieldEdit(
      QStringLiteral("fabricFibres"),
      tr("Fibres with their shares, as in 80 % cotton, 20 % polyester"),
      [](const QString& text) { return problemOf(parseFibres(toUtf8(text))); }, group);
  connect(fibres_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().fibres(blank_, *parseFibres(toUtf8(text))));
  });
  construction_ = enumChoice<Construction>("fabricConstruction", tr("Construction of the fabric"),
                                           constructionWord, &GarmentEdits::construction, group);
  stretch_ = enumChoice<Stretch>("fabricStretch", tr("Stretch of the fabric"), stretchWord,
                                 &GarmentEdits::stretch, group);
  pile_ = enumChoice<Pile>("fabricPile", tr("Pile of the fabric"), pileWord, &GarmentEdits::pile,
                           group);
  sheer_ = new QCheckBox(tr("S&heer"), group);
  sheer_->setObjectName(QStringLiteral("fabricSheer"));
  sheer_->setToolTip(tr("A backing shows through it"));
  sheer_->setAccessibleDescription(sheer_->toolTip());
  connect(sheer_, &QCheckBox::clicked, this,
          [this](bool checked) { Q_EMIT edited(edits().sheer(blank_, checked)); });
  auto* form = new QFormLayout(group);
  form->addRow(tr("&Called"), fabric_);
  form->addRow(tr("&Weight"), weight_);
  form->addRow(tr("Fibr&es"), fibres_);
  form->addRow(tr("C&onstruction"), construction_);
  form->addRow(tr("S&tretch"), stretch_);
  form->addRow(tr("Pi&le"), pile_);
  form->addRow(QString(), sheer_);
  form->addRow(buildProposed(group));
  return group;
}

QWidget* GarmentForm::buildProposed(QWidget* parent) {
  proposed_ = new QWidget(parent);
  auto* words = new QLabel(tr("Usual for this kind; the plan counts it as assumed."), proposed_);
  words->setWordWrap(true);
  auto* confirm = new QPushButton(tr("It is this one"), proposed_);
  confirm->setObjectName(QStringLiteral("fabricConfirm"));
  confirm->setAutoDefault(false);
  connect(confirm, &QPushButton::clicked, this,
          [this] { Q_EMIT edited(edits().fabricConfirmed(blank_)); });
  auto* layout = new QHBoxLayout(proposed_);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(words, 1);
  layout->addWidget(confirm);
  return proposed_;
}

EntryTable* GarmentForm::buildColours() {
  const auto at = [](int row) { return static_cast<std::size_t>(row); };
  EntryColumn name{tr("Name"), [this](int row) { return toQString(colour(row).name); },
                   [this](int row, const QString& text) -> std::optional<QString> {
                     std::vector<std::string> others;
                     for (const ClothColour& each : blank().colours) {
                       if (&each != &colour(row)) {
                         others.push_back(each.name);
                       }
                     }
                     return problemOf(checkDistinct(toUtf8(text), others, "colour"));
                   },
                   [this, at](int row, const QString& text) {
                     Q_EMIT edited(edits().colourName(blank_, at(row), toUtf8(text.trimmed())));
                   }};
  EntryColumn value{tr("Colour"),
                    [this](int row) { return toQString(colourText(colour(row).colour)); },
                    [](int, const QString& text) { return problemOf(typedColour(text)); },
                    [this, at](int row, const QString& text) {
                      Q_EMIT edited(edits().colourValue(blank_, at(row), *typedColour(text)));
                    }};
  value.sample = [this](int row) {
    const Colour shown = colour(row).colour;
    return QColor(shown.red, shown.green, shown.blue);
  };
  EntryTable::Deeds deeds;
  deeds.add = [this] {
    Q_EMIT edited(edits().addColour(blank_));
    colours_->chooseRow(static_cast<int>(blank().colours.size()) - 1);
  };
  deeds.remove = [this, at](int row) { Q_EMIT edited(edits().removeColour(blank_, at(row))); };
  deeds.shift = [this, at](int row, int by) {
    Q_EMIT edited(edits().shiftColour(blank_, at(row), by));
  };
  deeds.colourColumn = 1;
  auto* made = new EntryTable(QStringLiteral("garmentColours"), tr("Colours"), tr("colour"),
                              {name, value}, deeds, this);
  made->setColumnWidths({24});
  made->setNote(tr("What the garment is sold in. Colours by name, as #rrggbb, or picked."));
  return made;
}

GarmentEdits GarmentForm::edits() const {
  return {*planned_->order(), planned_->rules(), planned_->units()};
}

void GarmentForm::fillKinds() {
  const QSignalBlocker quiet(kind_);
  kind_->clear();
  for (const GarmentKind* kind : kindsByName(planned_->rules().kinds)) {
    kind_->addItem(toQString(kind->name), toQString(kind->id.text()));
  }
  kind_->setCurrentIndex(kind_->findData(toQString(blank().kind.text())));
}

void GarmentForm::show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t blank) {
  planned_ = planned;
  blank_ = blank;
  const Blank& shown = this->blank();
  const Fabric& fabric = shown.fabric;
  name_->setText(toQString(shown.name));
  id_->setText(toQString(shown.id.text()));
  price_->setText(shown.price ? priceWords(moneyText(shown.price->amount, shown.price->currency))
                              : QString());
  fillKinds();
  fabric_->setText(toQString(fabric.name));
  weight_->setText(toQString(formatArealWeight(fabric.weight, planned->units())));
  fibres_->setText(toQString(fibresText(fabric.fibres)));
  const auto choose = [](QComboBox* choice, auto value) {
    choice->setCurrentIndex(choice->findData(static_cast<int>(value)));
  };
  choose(construction_, fabric.construction);
  choose(stretch_, fabric.stretch);
  choose(pile_, fabric.pile);
  sheer_->setChecked(fabric.sheer);
  proposed_->setVisible(fabric.proposed);
  colours_->show(static_cast<int>(shown.colours.size()));
}

}  // namespace creaseline::desk
