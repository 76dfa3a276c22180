// SPDX-License-Identifier: MIT
// A reader of path data with the current point and the last control point as its state.
#include "catalogue/svg_path_data.h"

#include <array>
#include <optional>
#include <string>

#include "base/quoted_text.h"
#include "base/worded.h"
#include "catalogue/svg_scanner.h"

namespace creaseline {
namespace {

constexpr std::string_view kCommands = "MmLlHhVvCcSsQqTtAaZz";

char upperCase(char command) {
  return command >= 'a' && command <= 'z' ? static_cast<char>(command - 'a' + 'A') : command;
}

class PathReader {
 public:
  PathReader(std::string_view text, const CurveFlattener& flattener, std::size_t mostPoints)
      : scanner_(text), flattener_(flattener), mostPoints_(mostPoints) {}

  Result<std::vector<Polyline>> read() {
    scanner_.skipSpaces();
    while (!scanner_.atEnd()) {
      const char command = scanner_.peek();
      if (kCommands.find(command) == std::string_view::npos) {
        return Refusal{worded("path data {} where a command is due", quotedText(scanner_.rest()))};
      }
      if (chains_.empty() && upperCase(command) != 'M') {
        return Refusal{worded("path data that does not begin with M")};
      }
      scanner_.skip();
      if (!readCommand(command)) {
        return Refusal{problem_};
      }
      scanner_.skipSpaces();
    }
    return chains_;
  }

 private:
  bool fail(std::string problem) {
    problem_ = std::move(problem);
    return false;
  }

  // A command with all its repeated argument groups.
  bool readCommand(char command) {
    relative_ = command != upperCase(command);
    char kind = upperCase(command);
    if (kind == 'Z') {
      current_ = start_;
      closed_ = true;
      previous_ = 'Z';
      return true;
    }
    do {
      scanner_.skipSeparator();
      if (!readSegment(kind)) {
        return problem_.empty() ? fail(worded("path data {} where the numbers of '{}' are due",
                                              quotedText(scanner_.rest()), command))
                                : false;
      }
      previous_ = kind;
      kind = kind == 'M' ? 'L' : kind;  // further pairs after M are lines
      scanner_.skipSpaces();
    } while (!scanner_.atEnd() && kCommands.find(scanner_.peek()) == std::string_view::npos);
    return true;
  }

  bool readSegment(char kind) {
    switch (kind) {
      case 'M':
        return moveTo();
      case 'L':
        return lineTo(takePoint());
      case 'H':
        return lineTo(takeAlong(&Point::x));
      case 'V':
        return lineTo(takeAlong(&Point::y));
      case 'C':
      case 'S':
        return cubicTo(kind);
      case 'Q':
      case 'T':
        return quadraticTo(kind);
      default:
        return arcTo();
    }
  }

  std::optional<double> takeNumber() {
    const auto number = scanner_.takeNumber();
    scanner_.skipSeparator();
    return number;
  }

  std::optional<Point> takePoint() {
    const auto x = takeNumber();
    const auto y = x ? takeNumber() : std::nullopt;
    if (!y) {
      return std::nullopt;
    }
    const Point point{*x, *y};
    return relative_ ? current_ + point : point;
  }

  std::optional<Point> takeAlong(double Point::*axis) {
    const auto value = takeNumber();
    if (!value) {
      return std::nullopt;
    }
    Point point = current_;
    point.*axis = relative_ ? point.*axis + *value : *value;
    return point;
  }

  bool moveTo() {
    const auto point = takePoint();
    if (!point) {
      return false;
    }
    start_ = *point;
    return beginChain(*point);
  }

  bool beginChain(Point at) {
    earlierPoints_ += chains_.empty() ? 0 : chains_.back().size();
    chains_.emplace_back();
    closed_ = false;
    current_ = at;
    return record(flattener_.line(chains_.back(), at));
  }

  // A drawing command after Z begins a new subpath where the old one began.
  bool ready() { return !closed_ || beginChain(start_); }

  bool record(bool appended) {
    if (!appended || earlierPoints_ + chains_.back().size() > mostPoints_) {
      return fail(worded("more than {} points, or a point out of range", mostPoints_));
    }
    return true;
  }

  bool lineTo(std::optional<Point> end) {
    if (!end || !ready()) {
      return false;
    }
    current_ = *end;
    return record(flattener_.line(chains_.back(), *end));
  }

  // The last control point mirrored at the current point, if the last segment was of that family.
  [[nodiscard]] Point mirroredControl(std::string_view family) const {
    return family.find(previous_) == std::string_view::npos ? current_ : current_ * 2.0 - control_;
  }

  bool cubicTo(char kind) {
    const auto control1 = kind == 'C' ? takePoint() : mirroredControl("CS");
    const auto control2 = control1 ? takePoint() : std::nullopt;
    const auto end = control2 ? takePoint() : std::nullopt;
    if (!end || !ready()) {
      return false;
    }
    control_ = *control2;
    current_ = *end;
    return record(flattener_.cubic(chains_.back(), *control1, *control2, *end));
  }

  bool quadraticTo(char kind) {
    const auto control = kind == 'Q' ? takePoint() : mirroredControl("QT");
    const auto end = control ? takePoint() : std::nullopt;
    if (!end || !ready()) {
      return false;
    }
    control_ = *control;
    current_ = *end;
    return record(flattener_.quadratic(chains_.back(), *control, *end));
  }

  std::optional<bool> takeFlag() {
    const auto flag = scanner_.takeFlag();
    scanner_.skipSeparator();
    return flag;
  }

  bool arcTo() {
    std::array<double, 3> numbers{};
    for (double& number : numbers) {
      const auto taken = takeNumber();
      if (!taken) {
        return false;
      }
      number = *taken;
    }
    const auto large = takeFlag();
    const auto clockwise = large ? takeFlag() : std::nullopt;
    const auto end = clockwise ? takePoint() : std::nullopt;
    if (!end || !ready()) {
      return false;
    }
    current_ = *end;
    return record(flattener_.arc(chains_.back(),
                                 {numbers[0], numbers[1], numbers[2], *large, *clockwise, *end}));
  }

  SvgScanner scanner_;
  const CurveFlattener& flattener_;
  std::size_t mostPoints_;
  std::vector<Polyline> chains_;
  std::size_t earlierPoints_ = 0;  // in all chains but the last
  std::string problem_;
  Point current_;
  Point start_;
  Point control_;
  char previous_ = 'M';
  bool relative_ = false;
  bool closed_ = false;
};

}  // namespace

Result<std::vector<Polyline>> parsePathData(std::string_view text, const CurveFlattener& flattener,
                                            std::size_t mostPoints) {
  return PathReader(text, flattener, mostPoints).read();
}

}  // namespace creaseline
