// SPDX-License-Identifier: MIT
// Planned sample orders for tests of templates and gauges, and questions about figures.
#pragma once

#include <catch2/catch.hpp>

#include "creaseline/planning/figure_context.h"
#include "creaseline/planning/planner.h"
#include "planning/figure_parts.h"
#include "support/sample.h"

namespace creaseline::samples {

// An order with the plan and all it was made from.
struct Planned {
  Order order;
  Shop shop;
  Plan plan;
  UnitChoice units{LengthUnit::Inch, RulerMark::Eighth, WeightUnit::GramsPerSquareMetre};
  Planned(Order given, Shop with)
      : order(std::move(given)),
        shop(std::move(with)),
        plan(planOrder(order, shop, sample::shippedRules())) {}
  [[nodiscard]] FigureContext context() const {
    return {plan, order, shop, sample::shippedRules(), units};
  }
};

inline const std::vector<std::string>& allSizes() {
  static const std::vector<std::string> sizes = {"YM", "M", "XL", "2XL"};
  return sizes;
}

inline std::vector<Polyline> linesOf(const Figure& figure, StrokeKind kind) {
  std::vector<Polyline> lines;
  for (const Stroke& stroke : figure.strokes) {
    if (stroke.kind == kind) {
      lines.push_back(stroke.line);
    }
  }
  return lines;
}

inline Box boxOf(const Polyline& line) {
  Box box;
  for (const Point point : line) {
    box.add(point);
  }
  return box;
}

// All words, with a blank where lines wrap.
inline std::string textOf(const Figure& figure) {
  std::string all;
  for (const FigureText& text : figure.texts) {
    all += text.text + " ";
  }
  for (const FigureCross& cross : figure.crosses) {
    all += cross.text + " ";
  }
  return all;
}

// No text lies on another, as far as the room goes that planning counts on.
inline void checkTextsApart(const Figure& figure) {
  std::vector<FigureText> texts = figure.texts;
  for (const FigureCross& cross : figure.crosses) {
    if (!cross.text.empty()) {
      texts.push_back(crossText(cross));
    }
  }
  for (std::size_t i = 0; i < texts.size(); ++i) {
    for (std::size_t k = i + 1; k < texts.size(); ++k) {
      INFO("\"" << texts[i].text << "\" and \"" << texts[k].text << "\"");
      // Lines of a paragraph follow each other closely.
      CHECK(gapBetween(figure::textBox(texts[i]), figure::textBox(texts[k])) > -0.05);
    }
  }
}

}  // namespace creaseline::samples
