// SPDX-License-Identifier: MIT
// Curves, mirror images and the walk round a symmetric panel.
#include <algorithm>
#include <utility>

#include "catalogue/garment_shape_parts.h"

namespace creaseline::garment {
namespace {

Point bezier(Point a, Point b, Point c, Point d, double t) {
  const double s = 1.0 - t;
  return a * (s * s * s) + b * (3.0 * s * s * t) + c * (3.0 * s * t * t) + d * (t * t * t);
}

bool onCentreLine(Point point) {
  return point.x == 0.0;
}

}  // namespace

Polyline curve(Point from, Point leaving, Point arriving, Point to) {
  // The control polygon is never shorter than the curve; equal steps of the parameter are not
  // equal steps of length, hence the doubling until every chord is short.
  const double atMost = norm(leaving - from) + norm(arriving - leaving) + norm(to - arriving);
  int steps = std::max(2, static_cast<int>(std::ceil(atMost / kLongestChord)));
  for (;; steps *= 2) {
    Polyline line{from};
    double longest = 0.0;
    for (int i = 1; i <= steps; ++i) {
      line.push_back(i == steps ? to : bezier(from, leaving, arriving, to, double(i) / steps));
      longest = std::max(longest, norm(line[line.size() - 1] - line[line.size() - 2]));
    }
    if (longest <= kLongestChord) {
      return line;
    }
  }
}

Point mirrored(Point point) {
  return {onCentreLine(point) ? 0.0 : -point.x, point.y};
}

Polyline mirroredBack(const Polyline& line) {
  Polyline back;
  for (auto point = line.rbegin(); point != line.rend(); ++point) {
    back.push_back(mirrored(*point));
  }
  return back;
}

void append(Polyline& line, const Polyline& more) {
  for (const Point point : more) {
    if (line.empty() || !(line.back() == point)) {
      line.push_back(point);
    }
  }
}

Polyline shifted(const Polyline& line, Point by) {
  Polyline moved;
  for (const Point point : line) {
    moved.push_back(point + by);
  }
  return moved;
}

Polyline partDownTo(const Polyline& line, double down) {
  Polyline part;
  for (const Point& point : line) {
    if (point.y > down) {
      const Point before = part.back();
      part.push_back(before + (point - before) * ((down - before.y) / (point.y - before.y)));
      break;
    }
    part.push_back(point);
  }
  return part;
}

Ring box(double left, double top, double right, double bottom) {
  return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

void HalfOutline::lineTo(Point to, EdgeName name) {
  points_.push_back(to);
  names_.push_back(name);
}

void HalfOutline::along(const Polyline& line, EdgeName name) {
  for (std::size_t i = 1; i < line.size(); ++i) {
    lineTo(line[i], name);
  }
}

void HalfOutline::drawInto(PanelShape& panel, EdgeName across) const {
  panel.outline = points_;
  panel.sides.clear();
  for (const EdgeName name : names_) {
    panel.sides.push_back({name, true});
  }
  if (!onCentreLine(points_.back())) {
    panel.outline.push_back(mirrored(points_.back()));
    panel.sides.push_back({across, false});
  }
  for (std::size_t i = names_.size(); i-- > 0;) {
    panel.sides.push_back({names_[i], false});
    if (i > 0 || !onCentreLine(points_[0])) {
      panel.outline.push_back(mirrored(points_[i]));
    }
  }
  if (!onCentreLine(points_[0])) {
    panel.sides.push_back({across, false});
  }
}

void addLine(PanelShape& panel, DetailKind kind, Polyline line) {
  panel.details.push_back({kind, std::move(line), false});
}

void addArea(PanelShape& panel, DetailKind kind, Ring area) {
  panel.details.push_back({kind, std::move(area), true});
}

void addPair(PanelShape& panel, DetailKind kind, const Polyline& line) {
  addLine(panel, kind, line);
  addLine(panel, kind, mirroredBack(line));
}

void addAreaPair(PanelShape& panel, DetailKind kind, const Ring& area) {
  addArea(panel, kind, area);
  addArea(panel, kind, mirroredBack(area));
}

}  // namespace creaseline::garment
