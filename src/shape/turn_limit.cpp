// SPDX-License-Identifier: MIT
// How far a hull can be turned about its origin inside a convex shape, in closed form: every
// point moves on a circle, and the first meeting of a circle with the boundary ends the turn.
#include "shape/opening_part.h"

namespace creaseline {

namespace {

// Swings that only just reach the end of an arc must not be lost to rounding.
constexpr double kTurnRounding = 1e-9;

// A hull point that can meet the boundary at all: it swings further than the boundary is near.
struct Swing {
  Point point;  // from the centre of the turn
  double radius = 0.0;
};

// The widest swing comes first: it is the likeliest to end the turn, and the others are then
// passed over.
std::vector<Swing> swingsBeyond(std::span<const Point> hull, double nearest) {
  std::vector<Swing> swings;
  swings.reserve(hull.size());
  for (const Point& point : hull) {
    const double squared = dot(point, point);
    if (nearest <= 0.0 || squared > nearest * nearest) {
      swings.push_back({point, std::sqrt(squared)});
      if (swings.back().radius > swings.front().radius) {
        std::swap(swings.back(), swings.front());
      }
    }
  }
  return swings;
}

// The turn found so far that every point can make, kept as its cosine and sine: no arc function
// is needed until the end.
class TurnLimit {
 public:
  explicit TurnLimit(double angle) { set(std::cos(angle), std::sin(angle)); }
  [[nodiscard]] double angle() const { return std::atan2(sine_, cosine_); }
  [[nodiscard]] double cosine() const { return cosine_; }
  // How far a point moves while it turns, as a share of its radius.
  [[nodiscard]] double chord() const { return chord_; }
  // Takes over a shorter turn, given by its cosine and sine; a negative sine stands for none.
  void shorten(double cosine, double sine) {
    if (sine <= 0.0 && cosine > 0.0) {
      set(1.0, 0.0);
    } else if (cosine > cosine_) {
      set(cosine, sine);
    }
  }
  // Farthest that a point gets along a direction while it turns; it has the given components
  // along and across that direction now.
  [[nodiscard]] double farthest(double along, double across, double radius) const {
    const bool passesPeak = along >= radius * cosine_;
    return passesPeak ? radius : along * cosine_ + across * sine_;
  }

 private:
  void set(double cosine, double sine) {
    cosine_ = cosine;
    sine_ = sine;
    chord_ = std::sqrt(sine * sine + (1.0 - cosine) * (1.0 - cosine));
  }
  double cosine_ = 1.0;
  double sine_ = 0.0;
  double chord_ = 0.0;
};

// The line is normal . p = reach, seen from the centre of the turn.
void limitByFace(std::span<const Swing> swings, Point normal, double reach, TurnLimit& limit) {
  for (const Swing& swing : swings) {
    if (reach >= 0.0 && swing.radius <= reach) {
      continue;
    }
    const double along = dot(swing.point, normal);
    const double across = std::abs(cross(swing.point, normal));
    if (limit.farthest(along, across, swing.radius) <= reach) {
      continue;
    }
    // From where the point is now, at the angle (along, across) to the normal, to where its
    // circle crosses the line, at (reach, height): the difference of the two angles.
    const double squared = swing.radius * swing.radius;
    const double height = std::sqrt(std::max(0.0, squared - reach * reach));
    limit.shorten((along * reach + across * height) / squared,
                  (across * reach - along * height) / squared);
  }
}

// The arc is the part of the circle around `centre` with sign * (p - centre) >= 0. `way` leads
// from the centre of the turn to the arc's.
void limitByCorner(std::span<const Swing> swings, Point way, Point sign, double radius,
                   TurnLimit& limit) {
  const double squaredWay = dot(way, way);
  const double distance = std::sqrt(squaredWay);
  // Seen from inside, the ends of the arc are its nearest points, unless the turn's centre lies
  // between the arc and its centre.
  const bool between = way.x * sign.x <= 0.0 && way.y * sign.y <= 0.0;
  const double nearest = (between ? radius - distance
                                  : std::min(norm({way.x + sign.x * radius, way.y}),
                                             norm({way.x, way.y + sign.y * radius}))) -
                         kTurnRounding;
  for (const Swing& swing : swings) {
    if (swing.radius < nearest) {
      continue;
    }
    // No point that stays on the near side of the arc's centre comes abreast of the corner.
    const double gain = swing.radius * limit.chord();
    if ((swing.point.x - way.x) * sign.x + gain <= 0.0 ||
        (swing.point.y - way.y) * sign.y + gain <= 0.0) {
      continue;
    }
    const double product = 2.0 * swing.radius * distance;
    const double part = swing.radius * swing.radius + squaredWay - radius * radius;
    if (product == 0.0 || std::abs(part) >= product) {
      continue;  // the circles do not cross
    }
    const double cosine = part / product;
    const double sine = std::sqrt(1.0 - cosine * cosine);
    for (const double side : {-1.0, 1.0}) {
      const Point unit{(way.x * cosine - side * way.y * sine) / distance,
                       (way.y * cosine + side * way.x * sine) / distance};
      const Point meeting = unit * swing.radius - way;
      const double along = dot(swing.point, unit);
      if (meeting.x * sign.x >= 0.0 && meeting.y * sign.y >= 0.0 &&
          along > swing.radius * limit.cosine()) {
        limit.shorten(along / swing.radius, std::abs(cross(swing.point, unit)) / swing.radius);
      }
    }
  }
}

void limitBySides(std::span<const Swing> swings, const RoundedShape& shape, Point at,
                  TurnLimit& limit) {
  limitByFace(swings, {-1, 0}, shape.halfWidth + at.x, limit);
  limitByFace(swings, {1, 0}, shape.halfWidth - at.x, limit);
  limitByFace(swings, {0, -1}, shape.halfHeight + at.y, limit);
  limitByFace(swings, {0, 1}, shape.halfHeight - at.y, limit);
}

void limitByCorners(std::span<const Swing> swings, const RoundedShape& shape, Point at,
                    TurnLimit& limit) {
  if (shape.radius == 0.0) {
    return;
  }
  const Point corner{shape.halfWidth - shape.radius, shape.halfHeight - shape.radius};
  for (const Point sign : {Point{-1, -1}, Point{1, -1}, Point{1, 1}, Point{-1, 1}}) {
    const Point centre{corner.x * sign.x, corner.y * sign.y};
    limitByCorner(swings, centre - at, sign, shape.radius, limit);
  }
}

}  // namespace

double turnLimitIn(const RoundedShape& shape, std::span<const Point> hull, Point at,
                   double limitAngle) {
  const std::vector<Swing> swings = swingsBeyond(hull, depthIn(shape, at));
  TurnLimit limit(limitAngle);
  limitBySides(swings, shape, at, limit);
  limitByCorners(swings, shape, at, limit);
  return limit.angle();
}

double turnLimitIn(const FacetedShape& shape, double inset, std::span<const Point> hull, Point at,
                   double limitAngle) {
  const auto reachOf = [&](const FacetedShape::Face& face) {
    return face.offset - inset - dot(face.normal, at);
  };
  const std::vector<Swing> swings = swingsBeyond(hull, depthIn(shape, at) - inset);
  TurnLimit limit(limitAngle);
  // A few faces first: they bring the limit near its final value, and the others are then ruled
  // out cheaply. It matters for ellipses, which have hundreds of faces.
  const std::size_t stride = shape.faces.size() / 32 + 1;
  for (std::size_t i = 0; i < shape.faces.size(); i += stride) {
    limitByFace(swings, shape.faces[i].normal, reachOf(shape.faces[i]), limit);
  }
  for (const FacetedShape::Face& face : shape.faces) {
    limitByFace(swings, face.normal, reachOf(face), limit);
  }
  return limit.angle();
}

}  // namespace creaseline
