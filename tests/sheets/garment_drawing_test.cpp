// SPDX-License-Identifier: MIT
#include "creaseline/sheets/garment_drawing.h"

#include <QImage>
#include <QPicture>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "sheets/sheet_samples.h"

using namespace creaseline;
using namespace creaseline::literals;

namespace {

struct Planned {
  Order order;
  Shop shop;
  Plan plan;
};

Planned planned(const std::string& location) {
  Planned result;
  result.order = sample::order(sample::blank("pullover-hoodie"),
                               sample::design("mark", 70_mm, 60_mm), location, {"M"});
  result.shop = sample::shop({sample::frame("a", 100_mm, 90_mm)});
  result.plan = planOrder(result.order, result.shop, sample::shippedRules());
  return result;
}

bool hasLabel(const std::vector<DrawnLabel>& labels, const QString& text) {
  return std::any_of(labels.begin(), labels.end(),
                     [&](const DrawnLabel& label) { return label.text.contains(text); });
}

}  // namespace

TEST_CASE("a sleeve is drawn with its cuff at the bottom, all else as it lies",
          "[sheets][drawing]") {
  const Planned sleeve = planned("left-sleeve");
  const GarmentDrawing drawing(sleeve.plan.placements.front(), sleeve.shop, sample::kInches);
  CHECK(drawing.toScene({0.0, 100.0}).y() == Approx(-100.0));  // further from the cuff is higher
  CHECK(drawing.toPanel(drawing.toScene({3.0, 4.0})) == Point{3.0, 4.0});
  CHECK(drawing.caption().contains(QStringLiteral("cuff at the bottom")));

  const Planned chest = planned("centre-chest");
  const GarmentDrawing front(chest.plan.placements.front(), chest.shop, sample::kInches);
  CHECK(front.toScene({3.0, 4.0}) == QPointF(3.0, 4.0));
}

TEST_CASE("sides are named for wearer and viewer", "[sheets][drawing]") {
  // Who faces the viewer has the right hand at the viewer's left; from behind sides agree. On a
  // left sleeve seen from the wearer's left, the garment's front is at the viewer's left.
  const auto [location, left] =
      GENERATE(table<std::string, std::string>({{"centre-chest", "wearer's right"},
                                                {"full-back", "wearer's left"},
                                                {"hood-back", "wearer's left"},
                                                {"left-sleeve", "garment's front"},
                                                {"right-sleeve", "garment's back"}}));
  CAPTURE(location);
  const Planned made = planned(location);
  const GarmentDrawing drawing(made.plan.placements.front(), made.shop, sample::kInches);
  CHECK(drawing.viewerLeft().toStdString() == left);
  CHECK(drawing.viewerLeft() != drawing.viewerRight());
}

TEST_CASE("a flat piece names the viewer's sides once, and a cuff says how it lies",
          "[sheets][drawing]") {
  const auto [kind, location, caption] = GENERATE(table<std::string, std::string, std::string>(
      {{"beanie", "beanie-cuff",
        "Cuff as it is turned up and shows when worn; its open edge on top"},
       {"apron", "apron-bib", "Flat piece, seen from outside; top edge on top"}}));
  CAPTURE(kind);
  const Order order =
      sample::order(sample::blank(kind), sample::design("mark", 40_mm, 20_mm), location, {"M"});
  const Shop shop = sample::shop({sample::frame("a", 100_mm, 90_mm)});
  const Plan plan = planOrder(order, shop, sample::shippedRules());
  const GarmentDrawing drawing(plan.placements.front(), shop, sample::kInches);
  CHECK(drawing.caption().toStdString() == caption);
  int left = 0;
  int right = 0;
  for (const DrawnLabel& label :
       drawing.labels(DrawingStyle::paper(2.0), drawing.extent().adjusted(-60, -60, 60, 60))) {
    left += static_cast<int>(label.text.count(QStringLiteral("viewer's left")));
    right += static_cast<int>(label.text.count(QStringLiteral("viewer's right")));
  }
  CHECK(left == 1);
  CHECK(right == 1);
}

TEST_CASE("labels stay inside and never overlap, at any scale", "[sheets][drawing]") {
  const std::string location = GENERATE(as<std::string>{}, "centre-chest", "left-chest",
                                        "right-chest", "full-back", "left-sleeve", "hood-back");
  const double scale = GENERATE(2.0, 5.0, 10.0);
  CAPTURE(location, scale);
  const Planned made = planned(location);
  const GarmentDrawing drawing(made.plan.placements.front(), made.shop, sample::kInches);
  const double margin = 10.0 * scale;
  const QRectF area = drawing.extent().adjusted(-margin, -margin, margin, margin);
  const auto labels = drawing.labels(DrawingStyle::paper(scale), area);
  const PlacementPlan& plan = made.plan.placements.front();
  CHECK(hasLabel(labels, QString::fromStdString(formatLength(plan.placed.drop, sample::kInches))));
  CHECK(hasLabel(labels, QStringLiteral("to the centre")));
  CHECK(hasLabel(labels, drawing.viewerLeft()));
  for (std::size_t i = 0; i < labels.size(); ++i) {
    INFO(labels[i].text.toStdString());
    CHECK(area.contains(labels[i].plate));
    for (std::size_t j = i + 1; j < labels.size(); ++j) {
      INFO(labels[j].text.toStdString());
      CHECK_FALSE(labels[i].plate.intersects(labels[j].plate));
    }
  }
}

TEST_CASE("room, frame and dimensions can be switched", "[sheets][drawing]") {
  const Planned made = planned("centre-chest");
  const GarmentDrawing drawing(made.plan.placements.front(), made.shop, sample::kInches);
  const QRectF area = drawing.extent();
  const auto painted = [&](const DrawingStyle& style) {
    QImage image(300, 400, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(300.0 / area.width(), 400.0 / area.height());
    painter.translate(-area.topLeft());
    drawing.paint(painter, style, area);
    return image;
  };
  const DrawingStyle plain = DrawingStyle::screenLight(4.0);
  const QImage base = painted(plain);
  CHECK(base == painted(plain));
  for (bool DrawingStyle::*part :
       {&DrawingStyle::showRoom, &DrawingStyle::showFrame, &DrawingStyle::showDimensions,
        &DrawingStyle::showKeepOuts, &DrawingStyle::showTurn, &DrawingStyle::showSides}) {
    DrawingStyle other = plain;
    other.*part = !(other.*part);
    CHECK(base != painted(other));
  }
  CHECK(base != painted(DrawingStyle::screenDark(4.0)));
}

TEST_CASE("a plan without a garment cannot be drawn", "[sheets][drawing]") {
  const Shop shop = sample::chestShop();
  const PlacementPlan empty;
  CHECK_THROWS_AS(GarmentDrawing(empty, shop, sample::kInches), std::invalid_argument);
}

// A screen shows nothing finer than its dots, and a design of thousands of points is drawn anew for
// each step of the hand and each size.
TEST_CASE("what is finer than asked for is left out of the drawing, and nothing else",
          "[sheets][drawing]") {
  Ring wavy;
  for (int i = 0; i < 4000; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / 4000;
    const double radius = 30.0 + 3.0 * std::sin(41.0 * angle);
    wavy.push_back({radius * std::cos(angle), radius * std::sin(angle)});
  }
  Planned made = planned("centre-chest");
  PlacementPlan& plan = made.plan.placements.front();
  plan.outlineOnPanel.pieces = {{wavy, {}}};
  for (Point& point : plan.outlineOnPanel.pieces.front().outer) {
    point = point + plan.placed.centre;
  }
  const GarmentDrawing drawing(plan, made.shop, sample::kInches);
  constexpr double kPixelsPerMm = 3.0;
  const QRectF area = drawing.panelBounds();
  const auto drawn = [&](double finest) {
    DrawingStyle style = DrawingStyle::screenLight(1.0);
    style.finest = finest;
    QImage picture((area.size() * kPixelsPerMm).toSize(), QImage::Format_RGB32);
    picture.fill(style.palette.ground);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(kPixelsPerMm, kPixelsPerMm);
    painter.translate(-area.topLeft());
    drawing.paint(painter, style, area);
    QPicture recorded;
    QPainter recorder(&recorded);
    drawing.paint(recorder, style, area);
    recorder.end();
    return std::pair(picture, recorded.size());
  };
  // Dots that differ by more than a tenth of the way from black to white.
  const auto differing = [](const QImage& one, const QImage& other) {
    int count = 0;
    for (int y = 0; y < one.height(); ++y) {
      for (int x = 0; x < one.width(); ++x) {
        count += std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y))) > 25 ? 1 : 0;
      }
    }
    return count;
  };
  const auto [whole, wholeSize] = drawn(0.0);
  const auto [fine, fineSize] = drawn(0.25 / kPixelsPerMm);
  const auto [coarse, coarseSize] = drawn(6.0);
  CHECK(differing(whole, fine) <= 5);
  CHECK(differing(whole, coarse) > 500);  // so the comparison sees what is left out
  CHECK(fineSize < wholeSize);
  CHECK(coarseSize < fineSize / 2);
}
