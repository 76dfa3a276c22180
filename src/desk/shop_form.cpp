// SPDX-License-Identifier: MIT
#include "desk/shop_form.h"

#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "creaseline/catalogue/field_check.h"
#include "creaseline/catalogue/shop_check.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr Length kLargest = Length::fromMm(5000.0);

QString plainLabel(QString label) {
  return label.remove(QLatin1Char('&'));
}

}  // namespace

ShopForm::ShopForm(QWidget* parent) : QWidget(parent), form_(new QFormLayout(this)) {
  form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
}

void ShopForm::show(const ShownShop& shown, std::size_t entry) {
  shown_ = shown;
  entry_ = entry;
  setEnabled(true);
  for (const auto& follow : followers_) {
    follow();
  }
  this->shown();
}

void ShopForm::showNothing() {
  setEnabled(false);
}

std::optional<QString> ShopForm::problemWith(const Put& put, const QString& text) const {
  Shop changed = shop();
  if (const auto problem = put(changed, text.trimmed())) {
    return problem;
  }
  // What was wrong before is not this field's fault.
  const auto problem = shopProblem(changed, rules(), units());
  return problem && !shopProblem(shop(), rules(), units())
             ? std::optional(capitalised(toQString(*problem)))
             : std::nullopt;
}

void ShopForm::change(const Put& put, const QString& label, const QString& text,
                      const QString& said) {
  Shop changed = shop();
  if (!put(changed, text.trimmed())) {
    Q_EMIT edited({tr("%1: %2 %3", "entry of the shop, field, value")
                       .arg(subject(), plainLabel(label).toLower(), said),
                   {},
                   std::move(changed)});
  }
}

FieldEdit* ShopForm::addField(const char* name, const QString& label, const QString& words,
                              const Show& show, const Put& put) {
  auto* field = new FieldEdit(
      QString::fromLatin1(name), words,
      [this, put](const QString& text) { return problemWith(put, text); }, this);
  connect(field, &FieldEdit::committed, this, [this, put, show, label](const QString& text) {
    // The step says the value as the field will, in the units chosen.
    Shop changed = shop();
    if (!put(changed, text.trimmed())) {
      change(put, label, text, show(changed));
    }
  });
  followers_.emplace_back([this, field, show] { field->setText(show(shop())); });
  form_->addRow(label, field);
  return field;
}

QComboBox* ShopForm::addChoice(const char* name, const QString& label, const QString& words,
                               const std::function<std::vector<Choice>()>& choices,
                               const Show& shownKey, const Put& put) {
  auto* field = new QWidget(this);
  QComboBox* choice = makeChoice(name, words, field);
  auto* problem = new ProblemLabel(field);
  auto* both = new QVBoxLayout(field);
  both->setContentsMargins(0, 0, 0, 0);
  both->setSpacing(1);
  both->addWidget(choice);
  both->addWidget(problem);
  // Without a policy of its own the key of the label before it would lead nowhere.
  field->setFocusPolicy(Qt::StrongFocus);
  field->setFocusProxy(choice);
  connect(choice, &QComboBox::activated, this,
          [this, choice, problem, label, shownKey, put](int index) {
            const QString key = choice->itemData(index).toString();
            if (key == shownKey(shop())) {
              problem->say(std::nullopt);
              return;
            }
            if (const auto refusal = problemWith(put, key)) {
              choice->setCurrentIndex(choice->findData(shownKey(shop())));
              problem->say(refusal);
              return;
            }
            change(put, label, key, choice->itemText(index));
          });
  followers_.emplace_back([this, choice, problem, choices, shownKey] {
    problem->say(std::nullopt);
    const QSignalBlocker quiet(choice);
    choice->clear();
    for (const Choice& each : choices()) {
      choice->addItem(each.name, each.key);
    }
    choice->setCurrentIndex(choice->findData(shownKey(shop())));
  });
  form_->addRow(label, field);
  return choice;
}

QCheckBox* ShopForm::addTick(const char* name, const QString& label, const QString& words,
                             const std::function<bool(const Shop&)>& ticked,
                             const std::function<void(Shop&, bool)>& put) {
  auto* tick = new QCheckBox(label, this);
  tick->setObjectName(QString::fromLatin1(name));
  tick->setAccessibleDescription(words);
  tick->setToolTip(words);
  connect(tick, &QCheckBox::clicked, this, [this, label, put](bool checked) {
    change(
        [&](Shop& shop, const QString&) -> std::optional<QString> {
          put(shop, checked);
          return std::nullopt;
        },
        label, {}, checked ? tr("yes") : tr("no"));
  });
  followers_.emplace_back([this, tick, ticked] { tick->setChecked(ticked(shop())); });
  form_->addRow(QString(), tick);
  return tick;
}

TickMenu* ShopForm::addTicks(const char* name, const QString& label, const QString& words,
                             const QString& any,
                             const std::function<std::vector<TickMenu::Choice>()>& choices,
                             const std::function<QStringList(const Shop&)>& ticked,
                             const std::function<void(Shop&, const QStringList&)>& put) {
  auto* menu = new TickMenu(QString::fromLatin1(name), words, any, this);
  connect(menu, &TickMenu::picked, this, [this, menu, label, put](const QStringList& keys) {
    change(
        [&](Shop& shop, const QString&) -> std::optional<QString> {
          put(shop, keys);
          return std::nullopt;
        },
        label, {}, keys.isEmpty() ? menu->text() : keys.join(QStringLiteral(", ")));
  });
  followers_.emplace_back([this, menu, choices, ticked] { menu->show(choices(), ticked(shop())); });
  form_->addRow(label, menu);
  return menu;
}

void ShopForm::addHeading(const QString& words) {
  auto* heading = new QLabel(words, this);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  heading->setContentsMargins(0, 8, 0, 0);
  form_->addRow(heading);
}

QString ShopForm::lengthText(Length length) const {
  return toQString(fieldText(length, units().length));
}

Result<Length> ShopForm::readLength(const QString& text, Length least) const {
  return checkLengthText(toUtf8(text), units().length, {least, kLargest});
}

}  // namespace creaseline::desk
