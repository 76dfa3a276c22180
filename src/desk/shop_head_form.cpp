// SPDX-License-Identifier: MIT
#include <QLabel>

#include "desk/shop_field_puts.h"
#include "desk/shop_forms.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

// A value as a choice's key.
template <class E>
QString keyOf(E value) {
  return QString::number(static_cast<int>(value));
}

template <class E>
auto unitPut(E UnitChoice::*unit) {
  return [unit](Shop& shop, const QString& key) -> std::optional<QString> {
    shop.units.*unit = static_cast<E>(key.toInt());
    return std::nullopt;
  };
}

}  // namespace

ShopHeadForm::ShopHeadForm(QWidget* parent) : ShopForm(parent) {
  addField(
      "shopName", tr("&Name"), tr("Name of the shop"),
      [](const Shop& shop) { return toQString(shop.name); },
      namePut<Shop>([](Shop& shop) -> Shop& { return shop; }, &Shop::name));
  addUnits();
  addJudgedError();
  addHeading(tr("What the steps before the machine may add; empty: the usual value"));
  addError("shopCrease", tr("&Crease"),
           tr("How far a pressed crease may lie off the garment's true middle"), &Shop::creaseError,
           &Defaults::creaseError);
  addError("shopRuler", tr("&Ruler"), tr("How far off a length laid on cloth may be"),
           &Shop::rulerError, &Defaults::rulerError);
  addError("shopGive", tr("Cloth gi&ves"), tr("How far cloth moves between marking and clamping"),
           &Shop::clothGive, &Defaults::clothGive);
}

void ShopHeadForm::addUnits() {
  addHeading(tr("Units of this shop, until you choose others"));
  addChoice(
      "shopLength", tr("&Lengths"), tr("Unit of lengths"),
      [] {
        return std::vector<Choice>{{tr("Inches"), keyOf(LengthUnit::Inch)},
                                   {tr("Centimetres"), keyOf(LengthUnit::Centimetre)},
                                   {tr("Millimetres"), keyOf(LengthUnit::Millimetre)}};
      },
      [](const Shop& shop) { return keyOf(shop.units.length); }, unitPut(&UnitChoice::length));
  addChoice(
      "shopMark", tr("Ruler &mark"), tr("Finest mark of the shop's ruler, in inches"),
      [] {
        return std::vector<Choice>{{tr("1/8"), keyOf(RulerMark::Eighth)},
                                   {tr("1/16"), keyOf(RulerMark::Sixteenth)}};
      },
      [](const Shop& shop) { return keyOf(shop.units.mark); }, unitPut(&UnitChoice::mark));
  addChoice(
      "shopWeight", tr("&Weights"), tr("Unit of the weight of fabrics"),
      [] {
        return std::vector<Choice>{{tr("g/m²"), keyOf(WeightUnit::GramsPerSquareMetre)},
                                   {tr("oz/yd²"), keyOf(WeightUnit::OuncesPerSquareYard)}};
      },
      [](const Shop& shop) { return keyOf(shop.units.weight); }, unitPut(&UnitChoice::weight));
}

FieldEdit* ShopHeadForm::addErrorLength(const char* name, const QString& label,
                                        const QString& words, Length HoopingError::*length) {
  return addField(
      name, label, words,
      [this, length](const Shop& shop) {
        return shop.hoopingError ? lengthText(*shop.hoopingError.*length) : QString();
      },
      lengthPut({}, [length](Shop& shop, Length value) -> std::optional<QString> {
        if (shop.hoopingError) {
          *shop.hoopingError.*length = value;
        }
        return std::nullopt;
      }));
}

void ShopHeadForm::addJudgedError() {
  addHeading(tr("How far off a hooped garment may be"));
  addTick(
      "shopJudges", tr("We &judge it ourselves"),
      tr("Else it follows from measured hoopings if they are enough, and from the usual values if "
         "not"),
      [](const Shop& shop) { return shop.hoopingError.has_value(); },
      [this](Shop& shop, bool judges) {
        if (!judges) {
          shop.hoopingError.reset();
          return;
        }
        const Defaults& usual = rules().defaults;
        const auto length = [](const DefaultValue& value) {
          const Result<Length> read = parseLength(value.text);
          return read ? *read : Length();
        };
        const Result<Angle> turn = parseAngle(usual.hoopingTurn.text);
        shop.hoopingError =
            HoopingError{length(usual.hoopingSideways), length(usual.hoopingAlong),
                         turn ? *turn : Angle(), toUtf8(tr("the shop's own judgement"))};
      });
  judged_ = {
      addErrorLength("shopErrorSideways", tr("Side&ways"),
                     tr("How far off sideways a hooped garment may be"), &HoopingError::sideways),
      addErrorLength("shopErrorAlong", tr("A&long"),
                     tr("How far off along itself a hooped garment may be"), &HoopingError::along),
      addField(
          "shopErrorTurn", tr("T&urn"), tr("How far turned a hooped garment may lie"),
          [](const Shop& shop) {
            return shop.hoopingError ? toQString(formatAngle(shop.hoopingError->turn)) : QString();
          },
          [](Shop& shop, const QString& text) -> std::optional<QString> {
            const Result<Angle> turn = checkTurn(toUtf8(text));
            if (turn && shop.hoopingError) {
              shop.hoopingError->turn = *turn;
            }
            return problemOf(turn);
          }),
      addField(
          "shopErrorBasis", tr("&Basis"), tr("How the shop came to judge so"),
          [](const Shop& shop) {
            return shop.hoopingError ? toQString(shop.hoopingError->basis) : QString();
          },
          [](Shop& shop, const QString& text) -> std::optional<QString> {
            const Result<std::string> basis = checkLabel(toUtf8(text), false);
            if (basis && shop.hoopingError) {
              shop.hoopingError->basis = *basis;
            }
            return problemOf(basis);
          })};
}

void ShopHeadForm::addError(const char* name, const QString& label, const QString& words,
                            std::optional<Length> Shop::*length,
                            const DefaultValue Defaults::*shipped) {
  shipped_.emplace_back(
      addOwnLength(
          name, label, words, [length](auto& shop) -> auto& { return shop.*length; }),
      shipped);
}

void ShopHeadForm::shown() {
  for (FieldEdit* field : judged_) {
    field->setEnabled(shop().hoopingError.has_value());
  }
  for (const auto& [field, shipped] : shipped_) {
    const Result<Length> usual = parseLength((rules().defaults.*shipped).text);
    field->edit().setPlaceholderText(usual ? tr("usually %1").arg(lengthText(*usual)) : QString());
  }
}

}  // namespace creaseline::desk
