// SPDX-License-Identifier: MIT
// Size charts of garments.
#include <algorithm>

#include "creaseline/catalogue/field_check.h"
#include "desk/catalogue_words.h"
#include "desk/garment_edits.h"
#include "desk/text.h"

namespace creaseline::desk {

// Whatever of a size changes, the band that its chart does not give follows.
OrderEdit GarmentEdits::onSize(std::size_t index, std::size_t size, const QString& name,
                               const std::function<void(ChartSize&)>& change) const {
  return onBlank(index, name, [&](Blank& blank) {
    ChartSize& row = blank.chart.sizes.at(size);
    change(row);
    row.band = bandOf(row, rules_.defaults);
  });
}

std::optional<QString> GarmentEdits::measureProblem(std::size_t index, std::size_t size,
                                                    Measure measure,
                                                    std::optional<Length> value) const {
  const Blank& blank = order_.blanks.at(index);
  const GarmentKind* kind = rules_.kind(blank.kind);
  ChartSize changed = blank.chart.sizes.at(size);
  if (value) {
    changed.measures[measure] = *value;
  } else {
    changed.measures.erase(measure);
  }
  changed.proposed.erase(measure);
  changed.band = bandOf(changed, rules_.defaults);
  return kind == nullptr ? std::nullopt : sizeProblem(*kind, changed, units_);
}

OrderEdit GarmentEdits::measure(std::size_t index, std::size_t size, Measure measure,
                                std::optional<Length> value) const {
  const Blank& blank = order_.blanks.at(index);
  const QString what = measureWord(measure, formOf(blank));
  const QString row = toQString(blank.chart.sizes.at(size).name.text());
  const QString name = value ? tr("%1 of %2: %3", "measure, size, length")
                                   .arg(what, row, toQString(fieldText(*value, units_.length)))
                             : tr("%1 of %2 not in the chart", "measure, size").arg(what, row);
  return onSize(index, size, name, [&](ChartSize& at) {
    at.proposed.erase(measure);
    if (value) {
      at.measures[measure] = *value;
    } else {
      at.measures.erase(measure);
    }
  });
}

OrderEdit GarmentEdits::addSize(std::size_t index, std::size_t after) const {
  const SizeChart& chart = order_.blanks.at(index).chart;
  std::vector<std::string> taken;
  for (const ChartSize& size : chart.sizes) {
    taken.push_back(size.name.text());
  }
  ChartSize fresh = chart.sizes.at(after);
  fresh.name = SizeName(freshId(toUtf8(tr("new", "size")), taken));
  for (const auto& each : fresh.measures) {
    fresh.proposed.insert(each.first);
  }
  fresh.band = bandOf(fresh, rules_.defaults);
  return onBlank(index, tr("Add a size behind %1").arg(toQString(chart.sizes[after].name.text())),
                 [&](Blank& blank) {
                   auto& sizes = blank.chart.sizes;
                   sizes.insert(sizes.begin() + static_cast<std::ptrdiff_t>(after) + 1,
                                std::move(fresh));
                 });
}

std::optional<QString> GarmentEdits::removeSizeProblem(std::size_t index, std::size_t size) const {
  const Blank& blank = order_.blanks.at(index);
  if (blank.chart.sizes.size() == 1) {
    return tr("A chart needs at least one size");
  }
  QStringList lines;
  const SizeName& name = blank.chart.sizes.at(size).name;
  for (const OrderLine& line : order_.lines) {
    if (line.blank == blank.id && line.find(name) != nullptr) {
      lines.append(toQString(line.id));
    }
  }
  if (lines.isEmpty()) {
    return std::nullopt;
  }
  return tr("Size %1 is ordered on line(s) %2. Set the quantity there to 0 first.", nullptr,
            static_cast<int>(lines.size()))
      .arg(toQString(name.text()), listed(lines));
}

OrderEdit GarmentEdits::removeSize(std::size_t index, std::size_t size) const {
  const Blank& blank = order_.blanks.at(index);
  return onBlank(index,
                 tr("Take size %1 out of %2", "size, garment")
                     .arg(toQString(blank.chart.sizes.at(size).name.text()), nameOf(index)),
                 [&](Blank& at) {
                   at.chart.sizes.erase(at.chart.sizes.begin() + static_cast<std::ptrdiff_t>(size));
                 });
}

OrderEdit GarmentEdits::shiftSize(std::size_t index, std::size_t size, int by) const {
  const auto to = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(size) + by);
  const QString name = toQString(order_.blanks.at(index).chart.sizes.at(size).name.text());
  return onBlank(
      index, (by < 0 ? tr("Put size %1 further up") : tr("Put size %1 further down")).arg(name),
      [&](Blank& blank) { std::swap(blank.chart.sizes.at(size), blank.chart.sizes.at(to)); });
}

Result<std::string> GarmentEdits::checkSizeName(std::size_t index, std::size_t size,
                                                std::string_view text) const {
  const Blank& blank = order_.blanks.at(index);
  std::vector<std::string> others;
  for (std::size_t i = 0; i < blank.chart.sizes.size(); ++i) {
    if (i != size) {
      others.push_back(blank.chart.sizes[i].name.text());
    }
  }
  Result<std::string> name = checkDistinct(text, others, "size");
  if (!name) {
    return name;
  }
  // Another name may tell another band, and proportions differ between bands.
  ChartSize renamed = blank.chart.sizes.at(size);
  renamed.name = SizeName(*name);
  renamed.band = bandOf(renamed, rules_.defaults);
  const GarmentKind* kind = rules_.kind(blank.kind);
  const auto problem = kind == nullptr ? std::nullopt : sizeProblem(*kind, renamed, units_);
  return problem ? Result<std::string>(Refusal{toUtf8(*problem)}) : name;
}

OrderEdit GarmentEdits::sizeName(std::size_t index, std::size_t size,
                                 const std::string& name) const {
  const SizeName before = order_.blanks.at(index).chart.sizes.at(size).name;
  OrderEdit edit = onSize(
      index, size,
      tr("Size %1 of %2 becomes %3").arg(toQString(before.text()), nameOf(index), toQString(name)),
      [&](ChartSize& row) { row.name = SizeName(name); });
  for (OrderLine& line : edit.order.lines) {
    for (SizeQuantity& each : line.sizes) {
      if (line.blank == order_.blanks[index].id && each.size == before) {
        each.size = SizeName(name);
      }
    }
  }
  return edit;
}

OrderEdit GarmentEdits::band(std::size_t index, std::size_t size,
                             std::optional<SizeBand> band) const {
  const QString row = toQString(order_.blanks.at(index).chart.sizes.at(size).name.text());
  return onSize(
      index, size,
      band ? tr("Size %1 counts as %2", "size, band").arg(row, uncapitalised(bandWord(*band)))
           : tr("Size %1 counts as its name tells").arg(row),
      [&](ChartSize& at) {
        at.bandGiven = band.has_value();
        at.band = band.value_or(at.band);
      });
}

std::optional<QString> GarmentEdits::chartProblem(std::size_t index, const SizeChart& chart) const {
  const GarmentKind* kind = rules_.kind(order_.blanks.at(index).kind);
  for (ChartSize size : chart.sizes) {
    size.band = bandOf(size, rules_.defaults);
    if (const auto problem = kind == nullptr ? std::nullopt : sizeProblem(*kind, size, units_)) {
      return problem;
    }
  }
  return std::nullopt;
}

std::vector<SizeName> GarmentEdits::sizesLost(std::size_t index, const SizeChart& chart) const {
  std::vector<SizeName> lost;
  for (const OrderLine& line : order_.lines) {
    for (const SizeQuantity& each : line.sizes) {
      if (line.blank == order_.blanks.at(index).id && chart.find(each.size) == nullptr &&
          std::find(lost.begin(), lost.end(), each.size) == lost.end()) {
        lost.push_back(each.size);
      }
    }
  }
  return lost;
}

OrderEdit GarmentEdits::chart(std::size_t index, const SizeChart& chart) const {
  OrderEdit edit = onBlank(index, tr("Size chart of %1").arg(nameOf(index)), [&](Blank& blank) {
    blank.chart = chart;
    for (ChartSize& size : blank.chart.sizes) {
      size.band = bandOf(size, rules_.defaults);
    }
  });
  int left = 0;
  for (OrderLine& line : edit.order.lines) {
    if (line.blank == order_.blanks[index].id) {
      left += static_cast<int>(std::erase_if(
          line.sizes, [&](const SizeQuantity& each) { return chart.find(each.size) == nullptr; }));
    }
  }
  if (left > 0) {
    edit.name += tr(", %n size(s) of lines left out", nullptr, left);
  }
  return edit;
}

}  // namespace creaseline::desk
