// SPDX-License-Identifier: MIT
#include "desk/shop_rates_form.h"

#include "creaseline/catalogue/rate_text.h"
#include "desk/money_words.h"
#include "desk/text.h"

namespace creaseline::desk {

ShopRatesForm::ShopRatesForm(QWidget* parent) : ShopForm(parent) {
  addHeading(
      tr("What an order costs the shop. What is left empty is not counted, and the cost "
         "says so."));
  addCurrency();
  addHeading(tr("Time"));
  addMoney("rateLabour", tr("&Work, an hour"), tr("What an hour of work costs, as in 18.50"),
           &Rates::labour);
  addMoney("rateMachine", tr("&Machine, an hour"),
           tr("What an hour of the machine costs: buying it, care, power"), &Rates::machine);
  addShare("rateAttendance", tr("Stands &by"),
           tr("Share of the machine's own time in which somebody stands by and is paid, as in "
              "50 %; empty: all of it"),
           &Rates::attendance, kWhole);
  addHeading(tr("Material; prices of backing are on its page, of garments in their window"));
  addThread();
  addRoll("rateTopping", tr("T&opping film"),
          tr("Price of a roll of topping film, its width and length, as in 22 / 20 in x 25 yd"),
          &Rates::topping);
  addRoll("rateApplique", tr("&Appliqué fabric"),
          tr("Price of a length of appliqué fabric, its width and length, as in 9.90 / 140 cm x "
             "1 m"),
          &Rates::applique);
  addHeading(tr("Once, and on top"));
  addMoney("rateSetUp", tr("S&et-up, a design"),
           tr("What each design of an order costs once, for digitizing or setting up"),
           &Rates::setUp);
  addShare("rateMarkup", tr("Mar&kup"), tr("On top of all that is counted, as in 30 %"),
           &Rates::markup, kMostMarkup);
}

void ShopRatesForm::addCurrency() {
  currency_ = addField(
      "rateCurrency", tr("C&urrency"),
      tr("Code of the currency in three letters, as in EUR or USD; empty: costs are not reckoned"),
      [](const Shop& shop) {
        return shop.rates ? toQString(shop.rates->currency.code) : QString();
      },
      [this](Shop& shop, const QString& text) -> std::optional<QString> {
        if (text.isEmpty()) {
          shop.rates.reset();
          for (BackingStock& stock : shop.backings) {
            stock.price.reset();
          }
          return std::nullopt;
        }
        const Currency* currency = rules().currency(toUtf8(text.toUpper()));
        if (currency == nullptr) {
          return tr("Write a code of ISO 4217, such as EUR or USD");
        }
        const Result<Shop> changed = withCurrency(shop, *currency);
        if (changed) {
          shop = *changed;
        }
        return problemOf(changed);
      });
  connect(&currency_->edit(), &QLineEdit::textChanged, this, &ShopRatesForm::openFields);
}

QString ShopRatesForm::currencyFirst() {
  return tr("Choose a currency first");
}

QString ShopRatesForm::notCounted() {
  return tr("not counted");
}

template <class Value, class Read, class Text>
FieldEdit* ShopRatesForm::addRate(const char* name, const QString& label, const QString& words,
                                  std::optional<Value> Rates::*value, Read read, Text text) {
  FieldEdit* field = addField(
      name, label, words,
      [value, text](const Shop& shop) {
        return shop.rates && (*shop.rates).*value ? text(*((*shop.rates).*value), *shop.rates)
                                                  : QString();
      },
      [value, read](Shop& shop, const QString& typed) -> std::optional<QString> {
        if (!shop.rates) {
          return currencyFirst();
        }
        if (typed.isEmpty()) {
          ((*shop.rates).*value).reset();
          return std::nullopt;
        }
        const Result<Value> given = read(toUtf8(typed), *shop.rates);
        if (given) {
          (*shop.rates).*value = *given;
        }
        return problemOf(given);
      });
  field->edit().setPlaceholderText(notCounted());
  rates_.push_back(field);
  return field;
}

void ShopRatesForm::addMoney(const char* name, const QString& label, const QString& words,
                             std::optional<Money> Rates::*amount) {
  addRate(
      name, label, words, amount,
      [](const std::string& text, const Rates& rates) { return parseMoney(text, rates.currency); },
      [](Money shown, const Rates& rates) { return priceWords(moneyText(shown, rates.currency)); });
}

void ShopRatesForm::addShare(const char* name, const QString& label, const QString& words,
                             std::optional<Percent> Rates::*share, Percent most) {
  FieldEdit* field = addRate(
      name, label, words, share,
      [most](const std::string& text, const Rates&) { return parsePercent(text, most); },
      [](Percent shown, const Rates&) { return priceWords(percentText(shown)); });
  field->edit().setPlaceholderText(most == kWhole ? tr("100 %") : tr("none"));
}

void ShopRatesForm::addThread() {
  addRate(
      "rateThread", tr("T&hread"),
      tr("Price of the thread for so many stitches, as in 0.02 / 1000, or of a cone and the "
         "stitches that it lasts for"),
      &Rates::thread,
      [](const std::string& text, const Rates& rates) {
        return parseStitchPrice(text, rates.currency);
      },
      [](const StitchPrice& price, const Rates& rates) {
        return priceWords(stitchPriceText(price, rates.currency));
      });
}

void ShopRatesForm::addRoll(const char* name, const QString& label, const QString& words,
                            std::optional<RollPrice> Rates::*price) {
  addRate(
      name, label, words, price,
      [this](const std::string& text, const Rates& rates) {
        return parseRollPrice(text, rates.currency, units().length);
      },
      [this](const RollPrice& shown, const Rates& rates) {
        return priceWords(rollPriceText(shown, rates.currency, units().length));
      });
}

QString ShopRatesForm::fieldOf(std::optional<CostField> field) {
  if (!field) {
    return QStringLiteral("rateCurrency");
  }
  switch (*field) {
    case CostField::Labour:
      return QStringLiteral("rateLabour");
    case CostField::Machine:
      return QStringLiteral("rateMachine");
    case CostField::Thread:
      return QStringLiteral("rateThread");
    case CostField::Topping:
      return QStringLiteral("rateTopping");
    case CostField::Applique:
      return QStringLiteral("rateApplique");
    case CostField::BackingPrice:
    case CostField::BackingStock:
    case CostField::BlankPrice:
    case CostField::Held:
    case CostField::Beyond:
      break;
  }
  return {};
}

void ShopRatesForm::shown() {
  openFields();
}

// As soon as what is typed is a currency, so that the next field is there to go on to; the shop has
// it when the currency's field is left.
void ShopRatesForm::openFields() {
  if (!showsShop()) {
    return;
  }
  const QString code = currency_->edit().text().trimmed().toUpper();
  const bool open = !code.isEmpty() && (shop().rates || rules().currency(toUtf8(code)) != nullptr);
  for (FieldEdit* field : rates_) {
    field->setEnabled(open);
  }
}

}  // namespace creaseline::desk
