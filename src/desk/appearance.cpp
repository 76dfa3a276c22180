// SPDX-License-Identifier: MIT
#include "desk/appearance.h"

#include <QApplication>
#include <QToolTip>

namespace creaseline::desk {

namespace {

// What a look is made of; the rest of a palette follows.
struct Look {
  QRgb window, base, alternate, button, text, muted, faint;
  QRgb light, midlight, mid, dark, shadow;
  QRgb highlight, highlighted, link, visited;
  QRgb tip, tipText;
};

constexpr Look kLight{0xffefefef, 0xffffffff, 0xfff5f5f5, 0xffefefef, 0xff1b1b1b, 0xff6b6b6b,
                      0xff8e8e8e, 0xffffffff, 0xffe4e4e4, 0xffb8b8b8, 0xff9f9f9f, 0xff767676,
                      0xff1f6099, 0xffffffff, 0xff0b57a4, 0xff6a2c91, 0xffffffdc, 0xff1b1b1b};
constexpr Look kDark{0xff3a3d41, 0xff1b1c1f, 0xff232528, 0xff4a4d52, 0xffeaeaea, 0xffa0a0a0,
                     0xff8a8c90, 0xff666a70, 0xff56595f, 0xff2b2d30, 0xff17181a, 0xff0e0f10,
                     0xff3d6fa8, 0xffffffff, 0xff7fb6f0, 0xffc79be6, 0xff35373a, 0xffffffff};

QPalette paletteFrom(const Look& look) {
  QPalette palette;
  const auto all = [&palette](QPalette::ColorRole role, QRgb colour) {
    palette.setColor(QPalette::All, role, QColor::fromRgb(colour));
  };
  all(QPalette::Window, look.window);
  all(QPalette::Base, look.base);
  all(QPalette::AlternateBase, look.alternate);
  all(QPalette::Button, look.button);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    all(role, look.text);
    palette.setColor(QPalette::Disabled, role, QColor::fromRgb(look.faint));
  }
  all(QPalette::BrightText, look.highlighted);
  all(QPalette::PlaceholderText, look.muted);
  all(QPalette::Light, look.light);
  all(QPalette::Midlight, look.midlight);
  all(QPalette::Mid, look.mid);
  all(QPalette::Dark, look.dark);
  all(QPalette::Shadow, look.shadow);
  all(QPalette::Highlight, look.highlight);
  all(QPalette::HighlightedText, look.highlighted);
  palette.setColor(QPalette::Disabled, QPalette::Highlight, QColor::fromRgb(look.mid));
  palette.setColor(QPalette::Disabled, QPalette::HighlightedText, QColor::fromRgb(look.text));
  all(QPalette::Link, look.link);
  all(QPalette::LinkVisited, look.visited);
  all(QPalette::ToolTipBase, look.tip);
  all(QPalette::ToolTipText, look.tipText);
  return palette;
}

}  // namespace

QPalette paletteOf(Appearance appearance) {
  return paletteFrom(appearance == Appearance::Dark ? kDark : kLight);
}

void applyAppearance(Appearance appearance) {
  // One without a colour of its own brings the system's back.
  const QPalette palette = appearance == Appearance::System ? QPalette() : paletteOf(appearance);
  QApplication::setPalette(palette);
  QPalette tips = QApplication::palette();
  tips.setColor(QPalette::Window, tips.color(QPalette::ToolTipBase));
  tips.setColor(QPalette::WindowText, tips.color(QPalette::ToolTipText));
  QToolTip::setPalette(tips);
}

}  // namespace creaseline::desk
