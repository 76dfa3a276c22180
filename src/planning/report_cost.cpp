// SPDX-License-Identifier: MIT
#include "planning/report_cost.h"

#include <fmt/format.h>

#include <cctype>
#include <nlohmann/json.hpp>

#include "base/worded.h"
#include "creaseline/planning/counting.h"
#include "creaseline/planning/wording.h"

namespace creaseline {
namespace {

using Json = nlohmann::ordered_json;

class CostText {
 public:
  CostText(TextLayout& out, const OrderCost& cost) : out_(out), cost_(cost) {}

  void write() {
    out_.blank();
    out_.heading(worded("Cost, for the owner"), '-');
    out_.paragraph(0, "",
                   worded("{}: {}, {} a garment over {}", totalPhrase(cost_), money(cost_.total),
                          money(cost_.perGarment),
                          counted(cost_.garments, toBeWorded("garment"), toBeWorded("garments"))));
    for (const NotCounted& each : cost_.notCounted) {
      out_.paragraph(2, worded("NOT COUNTED:") + " ",
                     worded("{}; to count it, {}", each.text, each.remedy));
    }
    out_.paragraph(2, "", leftOutOfCost());
    for (const CostItem& item : cost_.items) {
      out_.labelled(2, costPhrase(item.kind),
                    fmt::format("{}: {}", money(item.amount), item.measure));
      for (const Reason& reason : item.reasons) {
        out_.labelled(
            2, "",
            worded("{}; would change with: {}",
                   fmt::format("{} [{}; {}]", reason.text, reason.rule.text(), reason.basis),
                   reason.changedBy),
            "- ");
      }
    }
    for (const CostLine& line : cost_.lines) {
      out_.labelled(2, worded("Line {}", line.id),
                    worded("{}, {} each over {}: {}", money(line.total), money(line.perGarment),
                           counted(line.garments, toBeWorded("garment"), toBeWorded("garments")),
                           shares(line.amounts)));
    }
    for (const CostRun& run : cost_.runs) {
      out_.labelled(2, worded("Run {}", run.number),
                    worded("{}, {} each over {}: {}; {}", money(run.total), money(run.perGarment),
                           counted(run.garments, toBeWorded("garment"), toBeWorded("garments")),
                           run.title, shares(run.amounts)));
    }
  }

 private:
  [[nodiscard]] std::string money(Money amount) const {
    return moneyPhrase(amount, cost_.currency);
  }

  [[nodiscard]] std::string shares(const CostAmounts& amounts) const {
    std::string text;
    for (const auto& [kind, amount] : amounts) {
      std::string name = costPhrase(kind);
      name.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(name.front())));
      text += fmt::format("{}{} {}", text.empty() ? "" : ", ", name,
                          amountPhrase(amount, cost_.currency));
    }
    return text.empty() ? worded("nothing counted") : text;
  }

  TextLayout& out_;
  const OrderCost& cost_;
};

Json amountsJson(const CostAmounts& amounts, const Currency& currency) {
  Json json = Json::object();
  for (const auto& [kind, amount] : amounts) {
    json[std::string(nameOf(kind))] = moneyText(amount, currency);
  }
  return json;
}

// What lines and runs have in common.
template <class Part>
void addPart(Json& json, const Part& part, const Currency& currency) {
  json["garments"] = part.garments;
  json["amounts"] = amountsJson(part.amounts, currency);
  json["total"] = moneyText(part.total, currency);
  json["per-garment"] = moneyText(part.perGarment, currency);
}

}  // namespace

void writeCost(TextLayout& out, const OrderCost& cost) {
  CostText(out, cost).write();
}

Json costJson(const OrderCost& cost) {
  const Currency& currency = cost.currency;
  Json json = {{"currency", currency.code},
               {"complete", cost.complete()},
               {"garments", cost.garments},
               {"total", moneyText(cost.total, currency)},
               {"per-garment", moneyText(cost.perGarment, currency)}};
  json["not-counted"] = Json::array();
  for (const NotCounted& each : cost.notCounted) {
    json["not-counted"].push_back({{"field", nameOf(each.field)},
                                   {"entry", each.entry},
                                   {"text", each.text},
                                   {"remedy", each.remedy}});
  }
  json["items"] = Json::array();
  for (const CostItem& item : cost.items) {
    json["items"].push_back({{"kind", nameOf(item.kind)},
                             {"measure", item.measure},
                             {"amount", moneyText(item.amount, currency)},
                             {"reasons", reasonsJson(item.reasons)}});
  }
  json["lines"] = Json::array();
  for (const CostLine& line : cost.lines) {
    json["lines"].push_back({{"line", line.id}});
    addPart(json["lines"].back(), line, currency);
  }
  json["runs"] = Json::array();
  for (const CostRun& run : cost.runs) {
    json["runs"].push_back({{"number", run.number}, {"title", run.title}});
    addPart(json["runs"].back(), run, currency);
  }
  return json;
}

}  // namespace creaseline
