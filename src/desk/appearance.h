// SPDX-License-Identifier: MIT
// Whether the desk looks as the system does, light, or dark. The palettes are its own, since the
// system has one of either only.
#pragma once

#include <QPalette>

#include "creaseline/base/named_enum.h"

namespace creaseline::desk {

enum class Appearance { System, Light, Dark };

// Of Light and Dark; texts have a contrast of at least 4.5 to 1 on what they stand on (W3C WCAG
// 2.2, success criterion 1.4.3).
[[nodiscard]] QPalette paletteOf(Appearance appearance);

// For all windows of the program, at once.
void applyAppearance(Appearance appearance);

}  // namespace creaseline::desk

namespace creaseline {

template <>
struct EnumNames<desk::Appearance> {
  static constexpr std::pair<desk::Appearance, std::string_view> names[] = {
      {desk::Appearance::System, "system"},
      {desk::Appearance::Light, "light"},
      {desk::Appearance::Dark, "dark"}};
};

}  // namespace creaseline
