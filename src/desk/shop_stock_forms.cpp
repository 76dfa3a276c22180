// SPDX-License-Identifier: MIT
// Machines, backing, needles, and hoopings that were measured.
#include "creaseline/catalogue/rate_text.h"
#include "creaseline/planning/wording.h"
#include "desk/money_words.h"
#include "desk/shop_field_puts.h"
#include "desk/shop_forms.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr Length kAnyLength = Length::fromNanometres(1);

QString backingWords(BackingKind kind) {
  return capitalised(toQString(nameOf(kind)));
}

}  // namespace

// ---- Machines ----------------------------------------------------------------------------------

MachineForm::MachineForm(QWidget* parent) : WindowedForm(parent) {
  const auto at = [this](auto& shop) -> auto& {
    return shop.machines.at(entry());
  };
  addField(
      "machineName", tr("&Name"), tr("Name of the machine"),
      [at](const Shop& shop) { return toQString(at(shop).name); },
      namePut<Machine>(at, &Machine::name));
  addField(
      "machineId", tr("&Id"), tr("Id of the machine, distinct in the shop"),
      [at](const Shop& shop) { return toQString(at(shop).id.text()); }, idPut(at));
  addField(
      "machineNeedles", tr("N&eedles"), tr("Number of needles"),
      [at](const Shop& shop) { return QString::number(at(shop).needles); },
      numberPut<Machine>(at, &Machine::needles, tr("Write a whole number, such as 10")));
  addField(
      "machineSpeed", tr("S&titches a minute"), tr("Stitches a minute as this shop runs it"),
      [at](const Shop& shop) { return QString::number(at(shop).stitchesPerMinute); },
      numberPut<Machine>(at, &Machine::stitchesPerMinute, tr("Write a whole number, such as 650")));
  addWindow("machineField", tr("Sewing field, for frames that name none"), tr("sewing field"),
            {[at](const Shop& shop) { return &at(shop).sewingField; },
             [at](Shop& shop, const Window& field) { at(shop).sewingField = field; }});
}

QString MachineForm::subject() const {
  return ShopEdits(shop(), rules(), units()).nameOf(ShopList::Machines, entry());
}

// ---- Backing -----------------------------------------------------------------------------------

StockForm::StockForm(QWidget* parent) : ShopForm(parent) {
  const auto at = [this](auto& shop) -> auto& {
    return shop.backings.at(entry());
  };
  addField(
      "backingName", tr("&Name"), tr("Name of the backing"),
      [at](const Shop& shop) { return toQString(at(shop).name); },
      namePut<BackingStock>(at, &BackingStock::name));
  addField(
      "backingId", tr("&Id"), tr("Id of the backing, distinct in the shop"),
      [at](const Shop& shop) { return toQString(at(shop).id.text()); }, idPut(at));
  addChoice(
      "backingKind", tr("&Kind"), tr("Kind of backing"),
      [] { return choicesOf<BackingKind>(backingWords); },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).kind)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).kind = enumOf<BackingKind>(key);
        return std::nullopt;
      });
  addField(
      "backingWeight", tr("&Weight"), tr("Areal weight, as in 60 g/m2 or 1.8 oz/yd2"),
      [this, at](const Shop& shop) {
        return toQString(formatArealWeight(at(shop).weight, units()));
      },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        const Result<ArealWeight> weight = checkFabricWeight(toUtf8(text));
        if (weight) {
          at(shop).weight = *weight;
        }
        return problemOf(weight);
      });
  addChoice(
      "backingFormChoice", tr("&Form"), tr("On a roll or in sheets"),
      [] {
        return std::vector<Choice>{{tr("Roll"), QStringLiteral("roll")},
                                   {tr("Sheets"), QStringLiteral("sheets")}};
      },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).form)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).form = enumOf<BackingForm>(key);
        at(shop).price.reset();  // was for a length, or for a number of sheets
        return std::nullopt;
      });
  addField(
      "backingWidth", tr("Wi&dth"), tr("Width of the roll or of one sheet"),
      [this, at](const Shop& shop) { return lengthText(at(shop).width); },
      lengthPut(kAnyLength, [at](Shop& shop, Length width) -> std::optional<QString> {
        at(shop).width = width;
        return std::nullopt;
      }));
  addField(
      "backingLength", tr("&Length"),
      tr("Length left on the roll, as in 25 m or 20 yd, or of one sheet"),
      [this, at](const Shop& shop) {
        return at(shop).form == BackingForm::Roll
                   ? toQString(rollLengthText(at(shop).length, units().length))
                   : lengthText(at(shop).length);
      },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        const Result<Length> length = parseRollLength(toUtf8(text));
        if (length) {
          at(shop).length = *length;
        }
        return problemOf(length);
      });
  sheets_ = addField(
      "backingSheets", tr("&Sheets"), tr("Number of sheets in stock"),
      [at](const Shop& shop) { return QString::number(at(shop).sheets); },
      numberPut<BackingStock>(at, &BackingStock::sheets, tr("Write a whole number, such as 40")));
  addPrice();
}

void StockForm::addPrice() {
  const auto at = [this](auto& shop) -> auto& {
    return shop.backings.at(entry());
  };
  price_ = addField(
      "backingPrice", tr("&Price"),
      tr("Price and what one gets for it: of a roll its length, as in 38 / 50 m, of sheets their "
         "number, as in 14 / 100; empty: not counted"),
      [this, at](const Shop& shop) {
        const BackingStock& stock = at(shop);
        return stock.price && shop.rates
                   ? priceWords(backingPriceText(*stock.price, shop.rates->currency, stock.form,
                                                 units().length))
                   : QString();
      },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        BackingStock& stock = at(shop);
        if (text.isEmpty()) {
          stock.price.reset();
          return std::nullopt;
        }
        if (!shop.rates) {
          return tr("Choose a currency among the rates first");
        }
        const Result<BackingPrice> price =
            parseBackingPrice(toUtf8(text), shop.rates->currency, stock.form);
        if (price) {
          stock.price = *price;
        }
        return problemOf(price);
      });
}

void StockForm::shown() {
  sheets_->setEnabled(shop().backings.at(entry()).form == BackingForm::Sheets);
  price_->setEnabled(shop().rates.has_value());
  price_->edit().setPlaceholderText(shop().rates ? tr("not counted")
                                                 : tr("first a currency, among the rates"));
}

QString StockForm::subject() const {
  return ShopEdits(shop(), rules(), units()).nameOf(ShopList::Backings, entry());
}

// ---- Topping -----------------------------------------------------------------------------------

ToppingForm::ToppingForm(QWidget* parent) : ShopForm(parent) {
  addTick(
      "shopTopping", tr("&Topping film is in stock"),
      tr("Film that dissolves, to lie over pile and knit"),
      [](const Shop& shop) { return shop.toppingFilm; },
      [](Shop& shop, bool has) { shop.toppingFilm = has; });
}

// ---- Needles -----------------------------------------------------------------------------------

NeedleForm::NeedleForm(QWidget* parent) : ShopForm(parent) {
  const auto at = [this](auto& shop) -> auto& {
    return shop.needles.at(entry());
  };
  addField(
      "needleSize", tr("&Size"), tr("Size in hundredths of a millimetre of blade, such as 75"),
      [at](const Shop& shop) { return QString::number(at(shop).size); },
      numberPut<NeedleStock>(at, &NeedleStock::size, tr("Write a whole number, such as 75")));
  addChoice(
      "needlePoint", tr("&Point"), tr("Point of the needle"),
      [] {
        return choicesOf<NeedlePoint>(
            [](NeedlePoint point) { return capitalised(toQString(nameOf(point))); });
      },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).point)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).point = enumOf<NeedlePoint>(key);
        return std::nullopt;
      });
}

QString NeedleForm::subject() const {
  return ShopEdits(shop(), rules(), units()).nameOf(ShopList::Needles, entry());
}

// ---- Measured hoopings -------------------------------------------------------------------------

MeasuredHoopingForm::MeasuredHoopingForm(QWidget* parent) : ShopForm(parent) {
  const auto at = [this](auto& shop) -> auto& {
    return shop.measuredHoopings.at(entry());
  };
  constexpr Length kFurthest = Length::fromMm(5000.0);
  const auto addOff = [&](const char* name, const QString& label, const QString& words,
                          Length MeasuredHooping::*member) {
    addField(
        name, label, words,
        [this, at, member](const Shop& shop) { return lengthText(at(shop).*member); },
        lengthPut(-kFurthest, [at, member](Shop& shop, Length off) -> std::optional<QString> {
          at(shop).*member = off;
          return std::nullopt;
        }));
  };
  addOff("measuredSideways", tr("Side&ways"),
         tr("How far the mark was off sideways; right of where it should be is plus"),
         &MeasuredHooping::sideways);
  addOff("measuredAlong", tr("A&long"),
         tr("How far the mark was off along the garment; down is plus"), &MeasuredHooping::along);
  addField(
      "measuredTurn", tr("&Turn"), tr("How far the garment lay turned, in degrees clockwise"),
      [at](const Shop& shop) { return toQString(formatAngle(at(shop).turn)); },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        const Result<Angle> turn = checkTurn(toUtf8(text));
        if (turn) {
          at(shop).turn = *turn;
        }
        return problemOf(turn);
      });
  addField(
      "measuredNote", tr("N&ote"), tr("When and on what, such as 2026-10-02, polo"),
      [at](const Shop& shop) { return toQString(at(shop).note); },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        const Result<std::string> note = checkLabel(toUtf8(text), true);
        if (note) {
          at(shop).note = *note;
        }
        return problemOf(note);
      });
}

QString MeasuredHoopingForm::subject() const {
  return ShopEdits(shop(), rules(), units()).nameOf(ShopList::MeasuredHoopings, entry());
}

}  // namespace creaseline::desk
