// SPDX-License-Identifier: MIT
// Chains of straight pieces and arcs: evaluation, pointwise maximum, level sets.
#include "shape/chain.h"

#include <algorithm>
#include <array>

namespace creaseline {

namespace {

// Up to two x values.
struct Roots {
  std::array<double, 2> x{};
  int count = 0;
  void add(double value) { x[static_cast<std::size_t>(count++)] = value; }
};

Roots crossLines(const Span& a, const Span& b) {
  Roots roots;
  if (a.slope != b.slope) {
    roots.add((b.intercept - a.intercept) / (a.slope - b.slope));
  }
  return roots;
}

Roots crossLineWithCircle(const Span& line, Point centre, double radius) {
  Roots roots;
  const double length = std::sqrt(1.0 + line.slope * line.slope);
  const double off = (line.slope * centre.x - centre.y + line.intercept) / length;
  const double squared = radius * radius - off * off;
  if (squared < 0.0) {
    return roots;
  }
  const double foot = centre.x - line.slope * off / length;
  const double half = std::sqrt(squared) / length;
  roots.add(foot - half);
  roots.add(foot + half);
  return roots;
}

Roots crossCircles(Point centreA, double radiusA, Point centreB, double radiusB) {
  Roots roots;
  const Point apart = centreB - centreA;
  const double distance = std::sqrt(dot(apart, apart));
  if (distance == 0.0) {
    return roots;
  }
  const double along =
      (distance * distance + radiusA * radiusA - radiusB * radiusB) / (2.0 * distance);
  const double squared = radiusA * radiusA - along * along;
  if (squared < 0.0) {
    return roots;
  }
  const double middle = centreA.x + along * apart.x / distance;
  const double half = std::abs(std::sqrt(squared) * apart.y / distance);
  roots.add(middle - half);
  roots.add(middle + half);
  return roots;
}

// Crossings of the whole lines and circles; some may belong to the wrong half of a circle.
Roots crossings(const Span& a, const Span& b) {
  if (a.radius == 0.0) {
    return b.radius == 0.0 ? crossLines(a, b) : crossLineWithCircle(a, b.centre, b.radius);
  }
  return b.radius == 0.0 ? crossLineWithCircle(b, a.centre, a.radius)
                         : crossCircles(a.centre, a.radius, b.centre, b.radius);
}

Span flippedSpan(Span span) {
  span.slope = -span.slope;
  span.intercept = -span.intercept;
  span.centre.y = -span.centre.y;
  return span;
}

const Span& pieceAt(const Chain& chain, double x) {
  const auto found = std::partition_point(chain.begin(), chain.end(),
                                          [x](const Span& span) { return span.to < x; });
  return found == chain.end() ? chain.back() : *found;
}

double slopeAt(const Span& span, double x) {
  if (span.radius == 0.0) {
    return span.slope;
  }
  constexpr double kSteepest = 1e9;
  const double off = x - span.centre.x;
  const double height = std::sqrt(std::max(0.0, span.radius * span.radius - off * off));
  return std::clamp(off / std::max(height, 1e-300), -kSteepest, kSteepest);
}

double sumAt(const Span& a, const Span& b, double x) {
  return valueAt(a, x) + valueAt(b, x);
}

// The zero of the sum between two x values at which it has different signs: the crossing of one
// curve with the other one flipped. Bisection serves when rounding hides the crossing.
double zeroBetween(const Span& a, const Span& b, double positive, double notPositive) {
  const double low = std::min(positive, notPositive);
  const double high = std::max(positive, notPositive);
  const Roots roots = crossings(a, flippedSpan(b));
  double best = 0.0;
  double bestSum = 1e-10;
  for (int i = 0; i < roots.count; ++i) {
    const double x = std::clamp(roots.x[static_cast<std::size_t>(i)], low, high);
    const double sum = std::abs(sumAt(a, b, x));
    if (sum < bestSum) {
      best = x;
      bestSum = sum;
    }
  }
  if (bestSum < 1e-10) {
    return best;
  }
  for (int i = 0; i < 100; ++i) {
    const double middle = (positive + notPositive) / 2.0;
    (sumAt(a, b, middle) > 0.0 ? positive : notPositive) = middle;
  }
  return notPositive;
}

// Where the sum of two pieces is least over [from, to].
double leastPlace(const Span& a, const Span& b, double from, double to) {
  double x = from;
  if (a.radius == 0.0 && b.radius == 0.0) {
    x = a.slope + b.slope < 0.0 ? to : from;
  } else if (a.radius == 0.0 || b.radius == 0.0) {
    const Span& line = a.radius == 0.0 ? a : b;
    const Span& arc = a.radius == 0.0 ? b : a;
    x = arc.centre.x - line.slope * arc.radius / std::sqrt(1.0 + line.slope * line.slope);
  } else {
    // Slopes cancel where both arcs have the same steepness, once rising and once falling.
    x = (a.centre.x * b.radius + b.centre.x * a.radius) / (a.radius + b.radius);
  }
  return std::clamp(x, from, to);
}

// Calls visit(spanA, spanB, from, to) for every interval over which both chains have one piece;
// stops when it returns false.
template <class Visit>
void overCommonPieces(const Chain& a, const Chain& b, Visit visit) {
  double from = std::max(a.front().from, b.front().from);
  for (std::size_t i = 0, j = 0; i < a.size() && j < b.size();) {
    const double to = std::min(a[i].to, b[j].to);
    const bool last = i + 1 == a.size() && j + 1 == b.size();
    if ((to > from || last) && !visit(a[i], b[j], from, std::max(from, to))) {
      return;
    }
    from = std::max(from, to);
    const bool nextA = a[i].to <= to;
    const bool nextB = b[j].to <= to;
    i += nextA ? 1U : 0U;
    j += nextB ? 1U : 0U;
  }
}

bool sameCurve(const Span& a, const Span& b) {
  return a.slope == b.slope && a.intercept == b.intercept && a.centre == b.centre &&
         a.radius == b.radius;
}

void append(Chain& chain, Span span, double from, double to) {
  if (!chain.empty() && sameCurve(chain.back(), span)) {
    chain.back().to = to;
    return;
  }
  span.from = from;
  span.to = to;
  chain.push_back(span);
}

// Appends the larger of two pieces over [from, to], cut where they cross.
void appendLarger(Chain& chain, const Span& a, const Span& b, double from, double to) {
  Roots roots;
  if (!sameCurve(a, b)) {
    roots = crossings(a, b);
  }
  double start = from;
  for (int i = 0; i <= roots.count; ++i) {
    const double end = i == roots.count ? to : roots.x[static_cast<std::size_t>(i)];
    if ((end <= start || end > to) && !(i == roots.count && end == start && chain.empty())) {
      continue;
    }
    const double middle = (start + end) / 2.0;
    append(chain, valueAt(a, middle) >= valueAt(b, middle) ? a : b, start, end);
    start = end;
  }
}

}  // namespace

Span lineSpan(double from, double to, double slope, double intercept) {
  return {from, to, slope, intercept, {}, 0.0};
}

Span arcSpan(double from, double to, Point centre, double radius) {
  return {from, to, 0.0, 0.0, centre, radius};
}

double valueAt(const Span& span, double x) {
  if (span.radius == 0.0) {
    return span.slope * x + span.intercept;
  }
  const double off = x - span.centre.x;
  return span.centre.y - std::sqrt(std::max(0.0, span.radius * span.radius - off * off));
}

double valueAt(const Chain& chain, double x) {
  return valueAt(pieceAt(chain, x), x);
}

double valueAtFlipped(const Chain& chain, double x) {
  return valueAt(flippedSpan(pieceAt(chain, x)), x);
}

Slopes slopesAt(const Chain& chain, double x) {
  const auto found = std::partition_point(chain.begin(), chain.end(),
                                          [x](const Span& span) { return span.to < x; });
  const auto before = found == chain.end() ? chain.end() - 1 : found;
  const bool joint = before->to <= x && before + 1 != chain.end();
  return {slopeAt(*before, x), slopeAt(joint ? *(before + 1) : *before, x)};
}

Chain flipped(Chain chain) {
  for (Span& span : chain) {
    span = flippedSpan(span);
  }
  return chain;
}

Chain trimmed(const Chain& chain, double from, double to) {
  Chain result;
  for (const Span& span : chain) {
    const double start = std::max(span.from, from);
    const double end = std::min(span.to, to);
    if (start < end) {
      result.push_back(span);
      result.back().from = start;
      result.back().to = end;
    }
  }
  if (result.empty()) {
    // A single column: keep the piece that it lies on.
    for (const Span& span : chain) {
      if (from <= span.to || &span == &chain.back()) {
        result.push_back(span);
        break;
      }
    }
  }
  result.front().from = from;
  result.back().to = to;
  return result;
}

Chain larger(const Chain& a, const Chain& b) {
  Chain result;
  result.reserve(a.size() + b.size());
  overCommonPieces(a, b, [&](const Span& one, const Span& other, double from, double to) {
    appendLarger(result, one, other, from, to);
    return true;
  });
  return result;
}

std::optional<Region::Interval> whereSumAtMostZero(const Chain& a, const Chain& b) {
  std::optional<Region::Interval> result;
  overCommonPieces(a, b, [&](const Span& one, const Span& other, double from, double to) {
    const double last = sumAt(one, other, to);
    if (!result) {
      double open = from;
      if (sumAt(one, other, from) > 0.0) {
        open = last <= 0.0 ? to : leastPlace(one, other, from, to);
        if (sumAt(one, other, open) > 0.0) {
          return true;
        }
        result = {zeroBetween(one, other, from, open), open};
      } else {
        result = {from, from};
      }
      if (last > 0.0) {
        result->high = zeroBetween(one, other, to, open);
        return false;
      }
    } else if (last > 0.0) {
      result->high = zeroBetween(one, other, to, from);
      return false;
    }
    result->high = to;
    return true;
  });
  return result;
}

LeastSum leastSum(const Chain& a, const Chain& b) {
  LeastSum least{std::numeric_limits<double>::infinity(), a.front().from};
  overCommonPieces(a, b, [&](const Span& one, const Span& other, double from, double to) {
    const double x = leastPlace(one, other, from, to);
    const double sum = sumAt(one, other, x);
    if (sum < least.value) {
      least = {sum, x};
    }
    return true;
  });
  return least;
}

double leastValue(const Chain& chain) {
  return leastSum(chain, {lineSpan(chain.front().from, chain.back().to, 0.0, 0.0)}).value;
}

OpenRegion intersected(const OpenRegion& a, const OpenRegion& b) {
  OpenRegion result{std::max(a.from, b.from), std::min(a.to, b.to), {}, {}};
  if (result.from <= result.to) {
    result.top =
        larger(trimmed(a.top, result.from, result.to), trimmed(b.top, result.from, result.to));
    result.flippedBottom = larger(trimmed(a.flippedBottom, result.from, result.to),
                                  trimmed(b.flippedBottom, result.from, result.to));
  }
  return result;
}

double tallestColumn(const OpenRegion& open) {
  return open.from > open.to ? open.to - open.from : -leastSum(open.top, open.flippedBottom).value;
}

Region closed(const OpenRegion& open) {
  if (open.from > open.to) {
    return {};
  }
  const auto columns = whereSumAtMostZero(open.top, open.flippedBottom);
  if (!columns) {
    return {};
  }
  return {trimmed(open.top, columns->low, columns->high),
          flipped(trimmed(open.flippedBottom, columns->low, columns->high))};
}

}  // namespace creaseline
