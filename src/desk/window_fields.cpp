// SPDX-License-Identifier: MIT
#include "desk/window_fields.h"

#include <QLocale>
#include <variant>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr Length kAnyFieldLength = Length::fromNanometres(1);
constexpr double kFirstFullness = 4.0;

QString shapeKey(const Window& window) {
  static const QString kKeys[] = {QStringLiteral("rectangle"), QStringLiteral("ellipse"),
                                  QStringLiteral("rounded"), QStringLiteral("polygon")};
  return kKeys[window.form().index()];
}

// The window with other sides; a polygon is stretched.
Result<Window> withSides(const Window& window, Length width, Length height) {
  if (const auto* rectangle = std::get_if<Window::Rectangle>(&window.form())) {
    return Window::rectangle(width, height, rectangle->cornerRadius);
  }
  if (const auto* rounded = std::get_if<Window::Rounded>(&window.form())) {
    return Window::rounded(width, height, rounded->fullness);
  }
  if (const auto* polygon = std::get_if<Window::Polygon>(&window.form())) {
    Ring points = polygon->points;
    for (Point& point : points) {
      point.x *= width.mm() / window.width().mm();
      point.y *= height.mm() / window.height().mm();
    }
    return Window::polygon(std::move(points));
  }
  return Window::ellipse(width, height);
}

Result<Window> withShape(const Window& window, const QString& key) {
  if (key == QStringLiteral("ellipse")) {
    return Window::ellipse(window.width(), window.height());
  }
  if (key == QStringLiteral("rounded")) {
    return Window::rounded(window.width(), window.height(), kFirstFullness);
  }
  return key == shapeKey(window) ? Result<Window>(window)
                                 : Window::rectangle(window.width(), window.height());
}

}  // namespace

void WindowedForm::addSide(const QString& name, const QString& label, const QString& words,
                           const WindowAccess& access, bool width) {
  addField(
      name.toLatin1().constData(), label, words,
      [this, access, width](const Shop& shop) {
        const Window* window = access.get(shop);
        return window == nullptr ? QString()
                                 : lengthText(width ? window->width() : window->height());
      },
      lengthPut(
          kAnyFieldLength, [access, width](Shop& shop, Length side) -> std::optional<QString> {
            const Window* window = access.get(shop);
            if (window == nullptr) {
              return std::nullopt;
            }
            const Result<Window> made =
                withSides(*window, width ? side : window->width(), width ? window->height() : side);
            if (!made) {
              return problemOf(made);
            }
            access.set(shop, *made);
            return std::nullopt;
          }));
}

void WindowedForm::addWindow(const char* name, const QString& heading, const QString& what,
                             const WindowAccess& access) {
  if (!heading.isEmpty()) {
    addHeading(heading);
  }
  const QString stem = QString::fromLatin1(name);
  addChoice((stem + QStringLiteral("Shape")).toLatin1().constData(), tr("Shape"),
            tr("Shape of the %1", "window, body, sewing field").arg(what),
            [this, access] {
              std::vector<Choice> choices = {{tr("Rectangle"), QStringLiteral("rectangle")},
                                             {tr("Ellipse"), QStringLiteral("ellipse")},
                                             {tr("In between"), QStringLiteral("rounded")}};
              const Window* window = access.get(shop());
              if (window != nullptr && std::holds_alternative<Window::Polygon>(window->form())) {
                choices.push_back({tr("Polygon, as in the file"), QStringLiteral("polygon")});
              }
              return choices;
            },
            [access](const Shop& shop) {
              const Window* window = access.get(shop);
              return window == nullptr ? QString() : shapeKey(*window);
            },
            [access](Shop& shop, const QString& key) -> std::optional<QString> {
              const Window* window = access.get(shop);
              if (window == nullptr) {
                return std::nullopt;
              }
              const Result<Window> made = withShape(*window, key);
              if (!made) {
                return problemOf(made);
              }
              access.set(shop, *made);
              return std::nullopt;
            });
  addSide(stem + QStringLiteral("Width"), tr("Width"), tr("Width of the %1").arg(what), access,
          true);
  addSide(stem + QStringLiteral("Height"), tr("Height"), tr("Height of the %1").arg(what), access,
          false);
  // Of a rectangle the radius of its corners; of a shape in between how full it is.
  addField(
      (stem + QStringLiteral("Corners")).toLatin1().constData(), tr("Corners"),
      tr("Radius of the corners of the %1, or its fullness from 2 to 20 where it is in between")
          .arg(what),
      [this, access](const Shop& shop) {
        const Window* window = access.get(shop);
        if (window == nullptr) {
          return QString();
        }
        if (const auto* rectangle = std::get_if<Window::Rectangle>(&window->form())) {
          return lengthText(rectangle->cornerRadius);
        }
        const auto* rounded = std::get_if<Window::Rounded>(&window->form());
        return rounded == nullptr ? QString() : QString::number(rounded->fullness);
      },
      [this, access](Shop& shop, const QString& text) -> std::optional<QString> {
        const Window* window = access.get(shop);
        if (window == nullptr) {
          return std::nullopt;
        }
        Result<Window> made = Refusal{toUtf8(tr("this shape has no corners to choose"))};
        if (std::holds_alternative<Window::Rectangle>(window->form())) {
          const Result<Length> radius = readLength(text, {});
          made = radius ? Window::rectangle(window->width(), window->height(), *radius)
                        : Result<Window>(Refusal{radius.message()});
        } else if (std::holds_alternative<Window::Rounded>(window->form())) {
          bool isNumber = false;
          const double fullness =
              QLocale::c().toDouble(QString(text).replace(u',', u'.'), &isNumber);
          made = isNumber ? Window::rounded(window->width(), window->height(), fullness)
                          : Result<Window>(Refusal{toUtf8(tr("write a number from 2 to 20"))});
        }
        if (!made) {
          return problemOf(made);
        }
        access.set(shop, *made);
        return std::nullopt;
      });
}

}  // namespace creaseline::desk
