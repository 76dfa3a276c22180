// SPDX-License-Identifier: MIT
#include "planning/workshop.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace creaseline {
namespace {

// Bodies are only checked against cloth, where a tenth of a millimetre is beyond any ruler.
constexpr Length kBodyTolerance = Length::fromNanometres(100'000);

// The window as it lies on the garment. Quarter turns stay exact; any other turn makes a polygon
// of the same tolerance as an ellipse's.
Window turnedWindow(const Window& window, Angle turn) {
  const int quarters = turn.millidegrees() / 90'000;
  const bool square = turn.millidegrees() % 90'000 == 0;
  if (square && quarters % 2 == 0 && !std::holds_alternative<Window::Polygon>(window.form())) {
    return window;
  }
  if (square) {
    if (const auto* rectangle = std::get_if<Window::Rectangle>(&window.form())) {
      return *Window::rectangle(rectangle->height, rectangle->width, rectangle->cornerRadius);
    }
    if (const auto* ellipse = std::get_if<Window::Ellipse>(&window.form())) {
      return *Window::ellipse(ellipse->height, ellipse->width);
    }
    if (const auto* rounded = std::get_if<Window::Rounded>(&window.form())) {
      return *Window::rounded(rounded->height, rounded->width, rounded->fullness);
    }
  }
  return *Window::polygon(
      transformedRing(window.boundary(FrameOpening::kCurveTolerance), turn, {}));
}

Box openedBox(const Window& window, Length clearance, const std::optional<Window>& field) {
  double width = (window.width() - clearance * 2.0).mm();
  double height = (window.height() - clearance * 2.0).mm();
  if (field) {
    width = std::min(width, field->width().mm());
    height = std::min(height, field->height().mm());
  }
  return {{-width / 2.0, -height / 2.0}, {width / 2.0, height / 2.0}};
}

PreparedFrame prepareFrame(const Frame& frame, Angle turn, const Shop& shop, Length clearance) {
  const Window window = turnedWindow(frame.window, turn);
  const Window body = turnedWindow(frame.body, turn);
  std::optional<Window> field = frame.sewingField;
  if (!field && !shop.machines.empty()) {
    field = shop.machines.front().sewingField;
  }
  // The field belongs to the frame on the machine, so it turns with the frame.
  if (field) {
    field = turnedWindow(*field, turn);
  }
  return {&frame,
          turn,
          FrameOpening(window, clearance, field),
          body.boundary(kBodyTolerance),
          window.boundary(kBodyTolerance),
          frame.clothMargin.value_or(Length()).mm(),
          openedBox(window, clearance, field),
          body.width(),
          body.height(),
          false,
          false};
}

// A half turn changes polygons alone.
bool sameUpsideDown(const Frame& frame) {
  const auto polygon = [](const Window& window) {
    return std::holds_alternative<Window::Polygon>(window.form());
  };
  return !polygon(frame.window) && !polygon(frame.body) &&
         !(frame.sewingField && polygon(*frame.sewingField));
}

bool isTwin(const PreparedFrame& frame, const PreparedFrame& other) {
  return other.frame == frame.frame && other.turn == frame.turn + Angle::fromDegrees(180.0);
}

}  // namespace

const PreparedFrame* preparedFrame(const Workshop& workshop, const FrameId& frame, Angle turn) {
  for (const PreparedFrame& prepared : *workshop.frames) {
    if (prepared.frame->id == frame && prepared.turn == turn) {
      return &prepared;
    }
  }
  return nullptr;
}

Workshop withFrames(const Workshop& workshop, const std::vector<FrameId>& frames) {
  Workshop changed = workshop;
  std::vector<PreparedFrame> prepared = *workshop.frames;
  for (PreparedFrame& frame : prepared) {
    frame.leftOut =
        !frames.empty() && std::find(frames.begin(), frames.end(), frame.frame->id) == frames.end();
  }
  changed.frames = std::make_shared<const std::vector<PreparedFrame>>(std::move(prepared));
  return changed;
}

Workshop withFrameTurn(const Workshop& workshop, Angle turn) {
  if (turn == Angle()) {
    return workshop;
  }
  Workshop changed = workshop;
  std::vector<PreparedFrame> prepared;
  for (auto frame = workshop.frames->begin(); frame != workshop.frames->end(); ++frame) {
    prepared.push_back(*frame);
    const auto next = std::next(frame);
    const bool last = next == workshop.frames->end() || next->frame != frame->frame;
    if (last && preparedFrame(workshop, frame->frame->id, turn) == nullptr) {
      prepared.push_back(
          prepareFrame(*frame->frame, turn, *workshop.shop,
                       frame->frame->clearance.value_or(workshop.figures.footClearance)));
      prepared.back().leftOut = frame->leftOut;
    }
  }
  changed.frames = std::make_shared<const std::vector<PreparedFrame>>(std::move(prepared));
  return changed;
}

Workshop prepareWorkshop(const Shop& shop, const Rules& rules) {
  Workshop workshop;
  workshop.shop = &shop;
  workshop.rules = &rules;
  workshop.figures = readFigures(rules.defaults, shop);
  workshop.crossings.fill(EdgeCrossing::Never);
  for (const FrameEdgeRule& rule : rules.frameEdges) {
    workshop.crossings[static_cast<std::size_t>(rule.edge)] = rule.crossing;
  }
  std::vector<PreparedFrame> frames;
  for (const Frame& frame : shop.frames) {
    const Length clearance = frame.clearance.value_or(workshop.figures.footClearance);
    for (const Angle turn : frame.turns) {
      PreparedFrame prepared = prepareFrame(frame, turn, shop, clearance);
      prepared.upsideDown =
          sameUpsideDown(frame) &&
          std::any_of(frames.begin(), frames.end(),
                      [&prepared](const PreparedFrame& other) { return isTwin(prepared, other); });
      frames.push_back(std::move(prepared));
    }
  }
  workshop.frames = std::make_shared<const std::vector<PreparedFrame>>(std::move(frames));
  workshop.backings = shop.backings;
  workshop.needles = shop.needles;
  workshop.toppingFilm = shop.toppingFilm;
  return workshop;
}

}  // namespace creaseline
