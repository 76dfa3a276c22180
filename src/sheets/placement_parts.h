// SPDX-License-Identifier: MIT
// The parts of a placement sheet: how high each is at a given width, and how it is painted.
// Millimetres of paper throughout.
#pragma once

#include <QPainter>
#include <QPointF>
#include <QRectF>

#include "sheets/placement_facts.h"
#include "sheets/sheet_flow.h"

namespace creaseline {

// Parts that are too long for the first page give their text to the flow instead.
struct PartChoice {
  bool findingsFlow = false;  // what is wrong is told in the columns, the banner only shouts
  bool cautionsFlow = false;
};

// Size and quantity of each garment, in boxes that wrap.
[[nodiscard]] double sizesHeight(const PlacementFacts& facts, double width);
void paintSizes(QPainter& painter, const PlacementFacts& facts, QPointF at, double width);

// DO NOT SEW, what is wrong, and what has been checked to help.
[[nodiscard]] double bannerHeight(const PlacementFacts& facts, const PartChoice& choice,
                                  double width);
void paintBanner(QPainter& painter, const PlacementFacts& facts, const PartChoice& choice,
                 QPointF at, double width);

// Drop, centre, sideways, turn, room.
[[nodiscard]] double numbersHeight(const PlacementFacts& facts, double width);
void paintNumbers(QPainter& painter, const PlacementFacts& facts, QPointF at, double width);

// The garment at a round scale, which is stated under it beside a scale bar.
// drawingHeight() is the height beyond which the drawing cannot gain at that width.
[[nodiscard]] double drawingHeight(const SheetContext& context, const PlacementFacts& facts,
                                   double width);
void paintDrawing(QPainter& painter, const SheetContext& context, const PlacementFacts& facts,
                  const QRectF& area);

[[nodiscard]] double cautionsHeight(const PlacementFacts& facts, double width);
void paintCautions(QPainter& painter, const PlacementFacts& facts, QPointF at, double width);

// Everything else as rows that flow: findings, assumed measures, frame and backing, threads, steps.
[[nodiscard]] FlowRows factRows(const PlacementFacts& facts, const PartChoice& choice,
                                double width);

// A mark whose shape tells the severity without colour: stop a square, watch a triangle, note a
// circle. `size` is its height.
void paintSeverity(QPainter& painter, QPointF at, Severity severity, double size);

}  // namespace creaseline
