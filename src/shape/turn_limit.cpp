// SPDX-License-Identifier: MIT
// How far a hull can be turned about its origin inside a convex shape, in closed form: every
// point moves on a circle, and the first meeting of a circle with the boundary ends the turn.
#include "shape/opening_part.h"

namespace creaseline {

namespace {

// The turn that brings a point from where it is now to where its circle crosses the line
// normal . p = reach. `along` and `across` are its components along and across the normal.
double turnToLine(double along, double across, double squaredRadius, double reach) {
  const double now = std::atan2(std::abs(across), along);
  const double then = std::atan2(std::sqrt(squaredRadius - reach * reach), reach);
  return std::max(0.0, now - then);
}

// Shortens `limit` if a point of the hull, turned by less, meets the face.
double limitByFace(std::span<const Point> hull, Point normal, double reach, double limit) {
  for (const Point& point : hull) {
    const double along = dot(point, normal);
    const double across = cross(point, normal);
    // Within `limit` the point gains no more than |across| * limit: most are ruled out here.
    if (std::max(along, 0.0) + std::abs(across) * limit <= reach) {
      continue;
    }
    const double squared = dot(point, point);
    if (squared > reach * reach) {
      limit = std::min(limit, turnToLine(along, across, squared, reach));
    } else if (reach < 0.0) {
      limit = 0.0;
    }
  }
  return limit;
}

// Shortens `limit` if the point, turned by less, meets the corner's arc. `sign` says which
// corner: the arc is the part of the circle with sign * (p - centre) >= 0.
double limitByCorner(Point point, Point at, Point centre, Point sign, double radius, double limit) {
  const double squared = dot(point, point);
  const double swing = std::sqrt(squared);
  const Point here = at + point - centre;
  if (here.x * sign.x + swing * limit <= 0.0 || here.y * sign.y + swing * limit <= 0.0) {
    return limit;  // too far away to come abreast of the corner
  }
  const Point way = centre - at;
  const double squaredWay = dot(way, way);
  const double distance = std::sqrt(squaredWay);
  const double product = 2.0 * swing * distance;
  const double cosine = (squared + squaredWay - radius * radius) / product;
  if (product == 0.0 || std::abs(cosine) >= 1.0) {
    return limit;  // the circles do not cross
  }
  const double sine = std::sqrt(1.0 - cosine * cosine);
  for (const double side : {-1.0, 1.0}) {
    const Point unit{(way.x * cosine - side * way.y * sine) / distance,
                     (way.y * cosine + side * way.x * sine) / distance};
    const Point meeting = unit * swing - way;
    if (meeting.x * sign.x >= 0.0 && meeting.y * sign.y >= 0.0) {
      limit = std::min(limit, std::atan2(std::abs(cross(point, unit)), dot(point, unit)));
    }
  }
  return limit;
}

}  // namespace

double turnLimitIn(const RoundedShape& shape, std::span<const Point> hull, Point at, double limit) {
  limit = limitByFace(hull, {-1, 0}, shape.halfWidth + at.x, limit);
  limit = limitByFace(hull, {1, 0}, shape.halfWidth - at.x, limit);
  limit = limitByFace(hull, {0, -1}, shape.halfHeight + at.y, limit);
  limit = limitByFace(hull, {0, 1}, shape.halfHeight - at.y, limit);
  if (shape.radius == 0.0) {
    return limit;
  }
  const Point corner{shape.halfWidth - shape.radius, shape.halfHeight - shape.radius};
  for (const Point sign : {Point{-1, -1}, Point{1, -1}, Point{1, 1}, Point{-1, 1}}) {
    const Point centre{corner.x * sign.x, corner.y * sign.y};
    for (const Point& point : hull) {
      limit = limitByCorner(point, at, centre, sign, shape.radius, limit);
    }
  }
  return limit;
}

double turnLimitIn(const FacetedShape& shape, double inset, std::span<const Point> hull, Point at,
                   double limit) {
  const auto reachOf = [&](const FacetedShape::Face& face) {
    return face.offset - inset - dot(face.normal, at);
  };
  double leastReach = std::numeric_limits<double>::infinity();
  for (const FacetedShape::Face& face : shape.faces) {
    leastReach = std::min(leastReach, reachOf(face));
  }
  Ring moving;  // points nearer to the centre than any face never meet one
  for (const Point& point : hull) {
    if (norm(point) > leastReach) {
      moving.push_back(point);
    }
  }
  // A few faces first: they bring the limit near its final value, and the others are then ruled
  // out cheaply. It matters for ellipses, which have hundreds of faces.
  const std::size_t stride = shape.faces.size() / 32 + 1;
  for (std::size_t i = 0; i < shape.faces.size(); i += stride) {
    limit = limitByFace(moving, shape.faces[i].normal, reachOf(shape.faces[i]), limit);
  }
  for (const FacetedShape::Face& face : shape.faces) {
    limit = limitByFace(moving, face.normal, reachOf(face), limit);
  }
  return limit;
}

}  // namespace creaseline
