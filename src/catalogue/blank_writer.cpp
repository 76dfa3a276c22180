// SPDX-License-Identifier: MIT
// Blanks and size charts as JSON, and what all writers share.
#include <fmt/format.h>

#include "catalogue/size_chart_reader.h"
#include "catalogue/writers.h"

namespace creaseline {

namespace {

EntryNames nameBefore(const JsonNode& entry) {
  return {textOf(&entry, "name")};
}

JsonNode fibresNode(const JsonNode* before, const std::vector<FibreShare>& fibres) {
  JsonNode::Object shares;
  for (const FibreShare& share : fibres) {
    shares.push_back({share.fibre, amountNode(memberOf(before, share.fibre), share.percent)});
  }
  return JsonNode{std::move(shares)};
}

JsonNode fabricNode(const JsonNode* before, const Fabric& fabric) {
  JsonObjectWriter object(before);
  object.text("name", fabric.name);
  object.enumerator("construction", fabric.construction);
  object.put("fibres", fibresNode(object.before("fibres"), fabric.fibres));
  object.put("weight", weightNode(object.before("weight"), fabric.weight));
  object.enumerator("pile", fabric.pile);
  object.enumerator("stretch", fabric.stretch);
  object.putUnless(!fabric.sheer, "sheer", JsonNode{fabric.sheer});
  object.putUnless(!fabric.proposed, "proposed", JsonNode{fabric.proposed});
  return object.take();
}

JsonNode coloursNode(const JsonNode* before, const std::vector<ClothColour>& colours) {
  return listNode(
      before, colours, [](const ClothColour& colour) { return EntryNames{colour.name}; },
      nameBefore,
      [](const ClothColour& colour, const JsonNode* old) {
        JsonObjectWriter object(old);
        object.text("name", colour.name);
        object.put("colour", colourNode(object.before("colour"), colour.colour));
        return object.take();
      });
}

// Measures stand in the order in which they stood before, new ones in the order of the points of
// measure.
JsonNode measuresNode(const JsonNode* before, const std::map<Measure, Length>& measures,
                      LengthUnit unit) {
  JsonNode::Object object;
  const auto* old = before == nullptr ? nullptr : std::get_if<JsonNode::Object>(&before->content);
  for (const JsonMember& member : old == nullptr ? JsonNode::Object() : *old) {
    const std::optional<Measure> measure = enumFromName<Measure>(member.key);
    const auto found = measure ? measures.find(*measure) : measures.end();
    if (found != measures.end()) {
      object.push_back({member.key, lengthNode(&member.value, found->second, unit)});
    }
  }
  for (const auto& [measure, length] : measures) {
    if (memberOf(before, nameOf(measure)) == nullptr) {
      object.push_back({std::string(nameOf(measure)), lengthNode(nullptr, length, unit)});
    }
  }
  return JsonNode{std::move(object)};
}

JsonNode chartNode(const Blank& blank, const Before<Blank>& before, const Writing& writing) {
  const JsonNode* old = memberOf(before.text, "chart");
  const std::string csv = textOf(old, "csv");
  if (!csv.empty() && before.value != nullptr && before.value->chart == blank.chart) {
    JsonObjectWriter object(old);
    object.text("csv", writing.reference(csv));
    object.leaveOut("sizes");
    return object.take();
  }
  return sizeChartNode(old, blank.chart, writing.lengths);
}

}  // namespace

std::string Writing::reference(const std::string& text) const {
  if (from == to) {
    return text;
  }
  const auto absolute = [](const std::filesystem::path& path) {
    return std::filesystem::absolute(path.empty() ? "." : path).lexically_normal();
  };
  return absolute(from / text).lexically_relative(absolute(to)).generic_string();
}

void putHead(JsonObjectWriter& object, FileKind kind, bool ownFile) {
  if (ownFile || object.before("format") != nullptr) {
    object.enumerator("format", kind);
  }
  if (ownFile || object.before("version") != nullptr) {
    object.put("version", amountNode(object.before("version"), kFileVersion));
  }
}

JsonNode sizeChartNode(const JsonNode* before, const SizeChart& chart, LengthUnit unit) {
  JsonObjectWriter object(before);
  object.leaveOut("csv");
  object.put("sizes", listNode(
                          object.before("sizes"), chart.sizes,
                          [](const ChartSize& size) { return EntryNames{size.name.text()}; },
                          [](const JsonNode& old) { return EntryNames{textOf(&old, "size")}; },
                          [&](const ChartSize& size, const JsonNode* old) {
                            JsonObjectWriter entry(old);
                            entry.text("size", size.name.text());
                            if (size.bandGiven) {
                              entry.enumerator("band", size.band);
                            } else {
                              entry.leaveOut("band");
                            }
                            entry.put("measures",
                                      measuresNode(entry.before("measures"), size.measures, unit));
                            entry.enumerators(
                                "proposed",
                                std::vector<Measure>(size.proposed.begin(), size.proposed.end()));
                            return entry.take();
                          }));
  return object.take();
}

JsonNode blankNode(const Blank& blank, const Before<Blank>& before, const Writing& writing,
                   bool ownFile) {
  JsonObjectWriter object(before.text);
  putHead(object, FileKind::Blank, ownFile);
  object.text("id", blank.id.text());
  object.text("name", blank.name);
  object.text("kind", blank.kind.text());
  object.put("fabric", fabricNode(object.before("fabric"), blank.fabric));
  if (blank.colours.empty()) {
    object.leaveOut("colours");  // the reader refuses an empty list
  } else {
    object.put("colours", coloursNode(object.before("colours"), blank.colours));
  }
  object.put("chart", chartNode(blank, before, writing));
  if (blank.price) {
    object.put("price",
               moneyNode(object.before("price"), blank.price->amount, blank.price->currency));
  } else {
    object.leaveOut("price");
  }
  return object.take();
}

}  // namespace creaseline
