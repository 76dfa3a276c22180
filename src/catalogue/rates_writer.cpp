// SPDX-License-Identifier: MIT
// Prices and rates as JSON.
#include "catalogue/rates_reader.h"
#include "catalogue/shop_reader.h"
#include "catalogue/writers.h"

namespace creaseline {

namespace {

JsonNode percentNode(const JsonNode* before, Percent share) {
  return keptOr(
      before, share, [](const JsonCursor& at) { return readPercent(at, kMostMarkup); },
      [&] { return textNode(percentText(share)); });
}

JsonNode rollLengthNode(const JsonNode* before, Length length, LengthUnit unit) {
  return keptOr(before, length, readRollLength,
                [&] { return textNode(rollLengthText(length, unit)); });
}

class RatesWriter {
 public:
  RatesWriter(const JsonNode* before, const Currency& currency, LengthUnit unit)
      : object_(before), currency_(currency), unit_(unit) {}

  void money(std::string_view key, const std::optional<Money>& amount) {
    if (amount) {
      object_.put(key, moneyNode(object_.before(key), *amount, currency_));
    } else {
      object_.leaveOut(key);
    }
  }
  void percent(std::string_view key, const std::optional<Percent>& share) {
    if (share) {
      object_.put(key, percentNode(object_.before(key), *share));
    } else {
      object_.leaveOut(key);
    }
  }
  void stitches(std::string_view key, const std::optional<StitchPrice>& price) {
    if (!price) {
      object_.leaveOut(key);
      return;
    }
    JsonObjectWriter entry(object_.before(key));
    entry.put("price", moneyNode(entry.before("price"), price->amount, currency_));
    entry.put("stitches", amountNode(entry.before("stitches"), price->stitches));
    object_.put(key, entry.take());
  }
  void roll(std::string_view key, const std::optional<RollPrice>& price) {
    if (!price) {
      object_.leaveOut(key);
      return;
    }
    JsonObjectWriter entry(object_.before(key));
    entry.put("price", moneyNode(entry.before("price"), price->amount, currency_));
    entry.put("width", lengthNode(entry.before("width"), price->width, unit_));
    entry.put("length", rollLengthNode(entry.before("length"), price->length, unit_));
    object_.put(key, entry.take());
  }
  JsonObjectWriter& object() { return object_; }

 private:
  JsonObjectWriter object_;
  const Currency& currency_;
  LengthUnit unit_;
};

}  // namespace

JsonNode moneyNode(const JsonNode* before, Money amount, const Currency& currency) {
  return keptOr(
      before, amount, [&](const JsonCursor& at) { return readMoney(at, currency); },
      [&] { return textNode(moneyText(amount, currency)); });
}

JsonNode backingPriceNode(const JsonNode* before, const BackingPrice& price, BackingForm form,
                          const Currency& currency, LengthUnit unit) {
  JsonObjectWriter object(before);
  object.put("price", moneyNode(object.before("price"), price.amount, currency));
  if (form == BackingForm::Roll) {
    object.put("length", rollLengthNode(object.before("length"), price.length, unit));
    object.leaveOut("sheets");
  } else {
    object.leaveOut("length");
    object.put("sheets", amountNode(object.before("sheets"), price.sheets));
  }
  return object.take();
}

JsonNode ratesNode(const JsonNode* before, const Rates& rates, LengthUnit unit) {
  RatesWriter writer(before, rates.currency, unit);
  writer.object().text("currency", rates.currency.code);
  writer.money("labour", rates.labour);
  writer.money("machine", rates.machine);
  writer.percent("attendance", rates.attendance);
  writer.stitches("thread", rates.thread);
  writer.roll("topping", rates.topping);
  writer.roll("applique-fabric", rates.applique);
  writer.money("set-up", rates.setUp);
  writer.percent("markup", rates.markup);
  return writer.object().take();
}

}  // namespace creaseline
