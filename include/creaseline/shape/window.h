// SPDX-License-Identifier: MIT
// The open inside of a frame, or any other convex region given by a simple description.
#pragma once

#include <variant>

#include "creaseline/base/length.h"
#include "creaseline/base/result.h"
#include "creaseline/shape/point.h"

namespace creaseline {

// A convex shape centred on its own origin: a rectangle with rounded corners, an ellipse, a shape
// in between, or a convex polygon (whose bounding box is centred on the origin).
class Window {
 public:
  struct Rectangle {
    Length width, height, cornerRadius;
    bool operator==(const Rectangle&) const = default;
  };
  struct Ellipse {
    Length width, height;
    bool operator==(const Ellipse&) const = default;
  };
  // |2x / width|^fullness + |2y / height|^fullness <= 1: an ellipse at 2, nearer to a rectangle
  // the larger. Its sides are curved all along.
  struct Rounded {
    Length width, height;
    double fullness = 2.0;
    bool operator==(const Rounded&) const = default;
  };
  struct Polygon {
    Ring points;  // convex, clockwise to the viewer
    bool operator==(const Polygon&) const = default;
  };
  using Form = std::variant<Rectangle, Ellipse, Rounded, Polygon>;

  // Each refuses sizes that are not positive, a radius that is negative or more than half the
  // smaller side, a fullness below 2 or beyond kMostFullness, polygons that are not convex or
  // enclose nothing. Windings are put right.
  static Result<Window> rectangle(Length width, Length height, Length cornerRadius = {});
  static Result<Window> ellipse(Length width, Length height);
  static Result<Window> rounded(Length width, Length height, double fullness);
  static Result<Window> polygon(Ring points);
  // Beyond this the corners are too sharp to tell from square ones.
  static constexpr double kMostFullness = 20.0;

  [[nodiscard]] const Form& form() const { return form_; }
  [[nodiscard]] Length width() const;
  [[nodiscard]] Length height() const;
  [[nodiscard]] Area area() const;

  // Boundary as a polygon whose vertices lie on the true boundary and which is nowhere further
  // than `tolerance` inside it. Clockwise to the viewer.
  [[nodiscard]] Ring boundary(Length tolerance) const;

  bool operator==(const Window&) const = default;

 private:
  explicit Window(Form form) : form_(std::move(form)) {}
  Form form_;
};

}  // namespace creaseline
