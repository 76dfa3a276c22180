// SPDX-License-Identifier: MIT
#include "desk/design_form.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "creaseline/catalogue/field_check.h"
#include "desk/catalogue_words.h"
#include "desk/form_parts.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr double kMostDotsPerInch = 10'000.0;  // as the reader of files

// Nothing, or a resolution.
Result<double> checkDots(const QString& text) {
  const QString plain = text.trimmed();
  if (plain.isEmpty()) {
    return 0.0;
  }
  bool isNumber = false;
  const double dots =
      QString(plain).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&isNumber);
  if (!isNumber || !(dots >= 1.0 && dots <= kMostDotsPerInch)) {
    return Refusal{
        toUtf8(DesignForm::tr("write a number from 1 to 10000, such as 300, or nothing"))};
  }
  return dots;
}

QString dotsText(double dots) {
  return dots > 0.0 ? QString::number(dots, 'g', 10) : QString();
}

NoteLabel* mutedNote(const char* name, QWidget* parent) {
  auto* note = new NoteLabel(parent);
  note->setObjectName(QString::fromLatin1(name));
  return note;
}

}  // namespace

DesignForm::DesignForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("designForm"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(buildDesign());
  layout->addWidget(buildOutline(), 1);
  layout->addWidget(buildMonogram());
  setFocusProxy(name_);
}

FieldEdit* DesignForm::sideField(const char* name, const QString& words, DesignEdits::Side side,
                                 QWidget* parent) {
  auto* made = new FieldEdit(
      QString::fromLatin1(name), words,
      [this, side](const QString& text) {
        return problemOf(
            edits().checkSide(design_, side, toUtf8(text), proportional_->isChecked()));
      },
      parent);
  connect(made, &FieldEdit::committed, this, [this, side](const QString& text) {
    const bool proportional = proportional_->isChecked();
    Q_EMIT edited(edits().side(design_, side,
                               *edits().checkSide(design_, side, toUtf8(text), proportional),
                               proportional));
  });
  return made;
}

QWidget* DesignForm::buildDesign() {
  auto* group = new QGroupBox(tr("Design"), this);
  name_ = new FieldEdit(
      QStringLiteral("designName"), tr("Name of the design"),
      [](const QString& text) { return problemOf(checkLabel(toUtf8(text), false)); }, group);
  connect(name_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().name(design_, toUtf8(text.trimmed())));
  });
  id_ = new FieldEdit(
      QStringLiteral("designId"), tr("Id of the design, by which orders refer to it"),
      [this](const QString& text) {
        return problemOf(checkDesignId(toUtf8(text), *planned_->order(), design_));
      },
      group);
  connect(id_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().id(design_, toUtf8(text.trimmed())));
  });
  width_ = sideField("designWidth", tr("Width of the design"), DesignEdits::Side::Width, group);
  height_ = sideField("designHeight", tr("Height of the design"), DesignEdits::Side::Height, group);
  proportional_ = new QCheckBox(tr("&Keep the proportion"), group);
  proportional_->setObjectName(QStringLiteral("designProportional"));
  proportional_->setChecked(true);
  sizeNote_ = mutedNote("designSizeNote", group);
  stitches_ = new FieldEdit(
      QStringLiteral("designStitches"), tr("Stitches of the design"),
      [](const QString& text) { return problemOf(checkStitches(toUtf8(text))); }, group);
  connect(stitches_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT edited(edits().stitches(design_, *checkStitches(toUtf8(text))));
  });
  stitchNote_ = mutedNote("designStitchNote", group);
  group->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
  auto* fields = new QFormLayout(group);
  fields->addRow(tr("&Name"), name_);
  fields->addRow(tr("&Id"), id_);
  fields->addRow(tr("&Width"), width_);
  fields->addRow(tr("&Height"), height_);
  fields->addRow(QString(), proportional_);
  fields->addRow(QString(), sizeNote_);
  fields->addRow(tr("&Stitches"), stitches_);
  fields->addRow(QString(), stitchNote_);
  return group;
}

QPushButton* DesignForm::button(const char* name, const QString& text, const QString& words) {
  auto* made = new QPushButton(text, this);
  made->setObjectName(QString::fromLatin1(name));
  made->setToolTip(words);
  made->setAccessibleDescription(words);
  made->setAutoDefault(false);
  return made;
}

QWidget* DesignForm::buildOutline() {
  auto* group = new QGroupBox(tr("Outline"), this);
  outline_ = new OutlineView(group);
  source_ = new QLabel(group);
  source_->setObjectName(QStringLiteral("designOutlineSource"));
  source_->setWordWrap(true);
  source_->setTextFormat(Qt::PlainText);
  box_ = button("designOutlineBox", tr("Rec&tangle"), tr("The rectangle of the design's size"));
  drawing_ = button("designOutlineDrawing", tr("From S&VG…"),
                    tr("From a drawing with its size in millimetres or inches"));
  picture_ =
      button("designOutlinePicture", tr("From &PNG…"), tr("From the opaque part of a picture"));
  connect(box_, &QPushButton::clicked, this, [this] {
    forgetPicture();
    Q_EMIT edited(edits().outlineFromBox(design_));
  });
  connect(drawing_, &QPushButton::clicked, this, &DesignForm::drawingAsked);
  connect(picture_, &QPushButton::clicked, this, &DesignForm::pictureAsked);
  dots_ = new FieldEdit(
      QStringLiteral("designDots"),
      tr("Dots per inch of a picture; nothing where the picture says so itself"),
      [](const QString& text) { return problemOf(checkDots(text)); }, group);
  dots_->edit().setPlaceholderText(tr("its own"));
  connect(dots_, &FieldEdit::committed, this, [this](const QString& text) {
    if (design().outlineSource == OutlineSource::Png || asksPictureWidth()) {
      Q_EMIT dotsPerInchAsked(*checkDots(text));
    }
  });
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(4);
  for (QPushButton* each : {box_, drawing_, picture_}) {
    buttons->addWidget(each, 1);
  }
  auto* dots = new QHBoxLayout;
  auto* label = new QLabel(tr("Dots per inch of a PNG"), group);
  dots->addWidget(label, 0, Qt::AlignTop);
  label->setMinimumHeight(dots_->edit().sizeHint().height());
  dots->addWidget(dots_, 1, Qt::AlignTop);
  auto* layout = new QVBoxLayout(group);
  layout->addWidget(outline_, 1);
  layout->addWidget(source_);
  layout->addLayout(buttons);
  layout->addLayout(dots);
  layout->addWidget(buildPictureRow(group));
  return group;
}

// Shown only while it is asked for.
QWidget* DesignForm::buildPictureRow(QWidget* parent) {
  pictureRow_ = new QWidget(parent);
  pictureWords_ = new QLabel(pictureRow_);
  pictureWords_->setObjectName(QStringLiteral("designPictureWords"));
  pictureWords_->setTextFormat(Qt::PlainText);
  pictureWords_->setWordWrap(true);
  pictureWidth_ = new FieldEdit(
      QStringLiteral("designPictureWidth"), tr("Width at which the picture's design is sewn"),
      [this](const QString& text) {
        return problemOf(checkDesignSide(toUtf8(text), planned_->units().length));
      },
      pictureRow_);
  connect(pictureWidth_, &FieldEdit::committed, this, [this](const QString& text) {
    Q_EMIT pictureWidthGiven(*checkDesignSide(toUtf8(text), planned_->units().length));
  });
  auto* layout = new QVBoxLayout(pictureRow_);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(3);
  layout->addWidget(pictureWords_);
  layout->addWidget(pictureWidth_);
  pictureRow_->hide();
  return pictureRow_;
}

void DesignForm::askPictureWidth(const QString& file) {
  pictureWords_->setText(
      tr("%1 does not say how large it is. How wide is its design sewn, from edge to edge of what "
         "is opaque? Type a length, such as 3 1/2 in or 90 mm; or type its dots per inch above.")
          .arg(file));
  pictureWidth_->edit().setAccessibleDescription(pictureWords_->text());
  pictureWidth_->setText(QString());
  pictureRow_->show();
  pictureWidth_->edit().setFocus(Qt::OtherFocusReason);
}

void DesignForm::forgetPicture() {
  pictureRow_->hide();
}

FieldEdit* DesignForm::nameField(const char* name, const QString& words,
                                 std::string Monogram::*part, QWidget* parent) {
  auto* made = new FieldEdit(
      QString::fromLatin1(name), words,
      [this, part](const QString& text) -> std::optional<QString> {
        const auto label = checkLabel(toUtf8(text), true);
        if (!label) {
          return problemOf(label);
        }
        Monogram changed = monogramFor(design());
        changed.*part = *label;
        return DesignEdits::monogramProblem(changed);
      },
      parent);
  connect(made, &FieldEdit::committed, this, [this, part](const QString& text) {
    Monogram changed = monogramFor(design());
    changed.*part = toUtf8(text.trimmed());
    setMonogram(changed);
  });
  return made;
}

QWidget* DesignForm::buildMonogram() {
  auto* part = new QWidget(this);
  monogram_ = new QCheckBox(tr("&Monogram"), part);
  monogram_->setObjectName(QStringLiteral("designMonogram"));
  connect(monogram_, &QCheckBox::clicked, this, [this](bool checked) {
    Q_EMIT edited(
        edits().monogram(design_, checked ? std::optional(monogramFor(design())) : std::nullopt));
  });
  names_ = new QGroupBox(part);
  first_ = nameField("monogramFirst", tr("First name"), &Monogram::first, names_);
  middle_ = nameField("monogramMiddle", tr("Middle name"), &Monogram::middle, names_);
  surname_ = nameField("monogramSurname", tr("Surname"), &Monogram::surname, names_);
  wish_ =
      nameField("monogramWish", tr("Letters as the customer wishes them"), &Monogram::wish, names_);
  wish_->edit().setPlaceholderText(tr("by the rule"));
  style_ = makeChoice("monogramStyle", tr("Style of the monogram"), names_);
  for (const auto& entry : EnumNames<MonogramStyle>::names) {
    style_->addItem(monogramStyleWord(entry.first), static_cast<int>(entry.first));
  }
  connect(style_, &QComboBox::activated, this, [this](int index) {
    Monogram changed = monogramFor(design());
    changed.style = static_cast<MonogramStyle>(style_->itemData(index).toInt());
    setMonogram(changed);
  });
  auto* form = new QFormLayout(names_);
  form->addRow(tr("First"), first_);
  form->addRow(tr("Middle"), middle_);
  form->addRow(tr("Surname"), surname_);
  form->addRow(tr("Style"), style_);
  form->addRow(tr("Wish"), wish_);
  auto* layout = new QVBoxLayout(part);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(monogram_);
  layout->addWidget(names_);
  return part;
}

// A design that becomes a monogram begins with names to be typed over.
Monogram DesignForm::monogramFor(const Design& design) const {
  Monogram fresh;
  fresh.first = toUtf8(tr("First"));
  fresh.surname = toUtf8(tr("Surname"));
  return design.monogram.value_or(fresh);
}

void DesignForm::setMonogram(const Monogram& monogram) {
  if (const auto problem = DesignEdits::monogramProblem(monogram)) {
    showMonogram();
    Q_EMIT refused(*problem);
    return;
  }
  Q_EMIT edited(edits().monogram(design_, monogram));
}

DesignEdits DesignForm::edits() const {
  return {*planned_->order(), planned_->units()};
}

double DesignForm::dotsPerInch() const {
  const auto dots = checkDots(dots_->text());
  return dots ? *dots : 0.0;
}

void DesignForm::show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t index) {
  const bool other = planned_ == nullptr || index != design_;
  planned_ = planned;
  design_ = index;
  const Design& shown = design();
  name_->setText(toQString(shown.name));
  id_->setText(toQString(shown.id.text()));
  showSize();
  outline_->show(shown, planned->units());
  const QString word = outlineSourceWord(shown.outlineSource);
  source_->setText(
      shown.outlineFile.empty()
          ? word
          : tr("%1 %2", "drawing or picture, its file").arg(word, toQString(shown.outlineFile)));
  box_->setEnabled(shown.outlineSource != OutlineSource::BoundingBox);
  if (other || shown.outlineSource == OutlineSource::Png) {
    dots_->setText(dotsText(shown.outlineDotsPerInch));
  }
  showMonogram();
}

// What follows from something else cannot be typed, and a note says from what.
void DesignForm::showSize() {
  const Design& shown = design();
  const LengthUnit unit = planned_->units().length;
  width_->setText(toQString(fieldText(shown.width, unit)));
  height_->setText(toQString(fieldText(shown.height, unit)));
  const bool maySize = edits().maySize(design_);
  for (QWidget* each : {static_cast<QWidget*>(width_), static_cast<QWidget*>(height_),
                        static_cast<QWidget*>(proportional_)}) {
    each->setEnabled(maySize);
  }
  sizeNote_->say(maySize ? tr("Of all sewing together, edge to edge")
                         : tr("As large as the outline's file says"));
  stitches_->setText(QString::number(shown.stitches));
  stitches_->setEnabled(shown.blocks.empty());
  stitchNote_->say(shown.blocks.empty() ? tr("Of the whole design, without thread blocks")
                                        : tr("The sum of the thread blocks"));
}

void DesignForm::showMonogram() {
  const Design& shown = design();
  monogram_->setChecked(shown.monogram.has_value());
  // Fields of what is not there would only take room.
  names_->setVisible(shown.monogram.has_value());
  const Monogram monogram = shown.monogram.value_or(Monogram());
  first_->setText(toQString(monogram.first));
  middle_->setText(toQString(monogram.middle));
  surname_->setText(toQString(monogram.surname));
  wish_->setText(toQString(monogram.wish));
  style_->setCurrentIndex(style_->findData(static_cast<int>(monogram.style)));
}

}  // namespace creaseline::desk
