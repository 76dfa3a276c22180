// SPDX-License-Identifier: MIT
#include <QSpacerItem>

#include "creaseline/planning/wording.h"
#include "desk/shop_field_puts.h"
#include "desk/shop_forms.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

QString kindWords(FrameKind kind) {
  switch (kind) {
    case FrameKind::Magnetic:
      return FrameForm::tr("Magnetic");
    case FrameKind::Screw:
      return FrameForm::tr("Screw");
    case FrameKind::Clamp:
      return FrameForm::tr("Clamp");
  }
  return {};
}

QString bracketWords(BracketSide side) {
  switch (side) {
    case BracketSide::Top:
      return FrameForm::tr("On top");
    case BracketSide::Bottom:
      return FrameForm::tr("At the bottom");
    case BracketSide::Left:
      return FrameForm::tr("Left");
    case BracketSide::Right:
      return FrameForm::tr("Right");
    case BracketSide::Both:
      return FrameForm::tr("Left and right");
  }
  return {};
}

// "0, 90"; each once.
Result<std::vector<Angle>> turnsOf(const QString& text) {
  std::vector<Angle> turns;
  for (const QString& each : text.split(u',', Qt::SkipEmptyParts)) {
    const Result<Angle> turn = checkTurn(toUtf8(each.trimmed()));
    if (!turn) {
      return Refusal{turn.message()};
    }
    turns.push_back(*turn);
  }
  if (turns.empty()) {
    return Refusal{toUtf8(FrameForm::tr("name at least one turn, such as 0"))};
  }
  return turns;
}

}  // namespace

FrameForm::FrameForm(QWidget* parent) : WindowedForm(parent) {
  const auto at = [this](auto& shop) -> auto& {
    return shop.frames.at(entry());
  };
  picture_ = new FramePicture(this);
  addRow(picture_);
  addField(
      "frameName", tr("&Name"), tr("Name of the frame"),
      [at](const Shop& shop) { return toQString(at(shop).name); },
      namePut<Frame>(at, &Frame::name));
  addField(
      "frameId", tr("&Id"), tr("Id of the frame, distinct in the shop"),
      [at](const Shop& shop) { return toQString(at(shop).id.text()); }, idPut(at));
  addField(
      "frameQuantity", tr("&On hand"), tr("How many of this frame the shop has"),
      [at](const Shop& shop) { return QString::number(at(shop).quantity); },
      numberPut<Frame>(at, &Frame::quantity, tr("Write a whole number, such as 2")));
  addChoice(
      "frameKind", tr("&Kind"), tr("How the frame holds the cloth"),
      [] { return choicesOf<FrameKind>(kindWords); },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).kind)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).kind = enumOf<FrameKind>(key);
        return std::nullopt;
      });
  addWays();
  addWindow("frameBody", tr("Body: outside edge of both rings"), tr("body"),
            {[at](const Shop& shop) { return &at(shop).body; },
             [at](Shop& shop, const Window& body) { at(shop).body = body; }});
  addWindow("frameWindow", tr("Window: open inside"), tr("window"),
            {[at](const Shop& shop) { return &at(shop).window; },
             [at](Shop& shop, const Window& window) { at(shop).window = window; }});
  addMargins();
  const auto field = [at](const Shop& shop) {
    return at(shop).sewingField ? &*at(shop).sewingField : nullptr;
  };
  addHeading(tr("Sewing field that the machine reaches with this frame"));
  addTick(
      "frameOwnField", tr("&Its own, not the machine's"),
      tr("Whether this frame has a sewing field of its own"),
      [field](const Shop& shop) { return field(shop) != nullptr; },
      [at](Shop& shop, bool own) {
        at(shop).sewingField = own ? std::optional(at(shop).window) : std::nullopt;
      });
  addWindow("frameField", {}, tr("sewing field"),
            {field, [at](Shop& shop, const Window& made) { at(shop).sewingField = made; }});
}

// What of cloth and window must stay free or go on.
void FrameForm::addMargins() {
  const auto addLength = [this](const char* name, const QString& title, const QString& about,
                                std::optional<Length> Frame::*member) {
    FieldEdit* field = addOwnLength(
        name, title, about,
        [ this, member ](auto& shop) -> auto& { return shop.frames.at(entry()).*member; });
    field->edit().setToolTip(about);
    return field;
  };
  clearance_ = addLength("frameClearance", tr("&Clearance"),
                         tr("Between the window's edge and the needle; empty: the usual one"),
                         &Frame::clearance);
  addLength("frameClothMargin", tr("&Margin of cloth"),
            tr("Cloth needed beyond the body, or beyond the window at an edge that the rings may "
               "overhang; empty: none"),
            &Frame::clothMargin)
      ->edit()
      .setPlaceholderText(tr("none needed"));
}

// How the frame may lie, and where.
void FrameForm::addWays() {
  const auto at = [this](auto& shop) -> auto& {
    return shop.frames.at(entry());
  };
  addChoice(
      "frameBracket", tr("&Bracket"), tr("Side where the bracket meets the machine's arm"),
      [] { return choicesOf<BracketSide>(bracketWords); },
      [at](const Shop& shop) { return toQString(nameOf(at(shop).bracket)); },
      [at](Shop& shop, const QString& key) -> std::optional<QString> {
        at(shop).bracket = enumOf<BracketSide>(key);
        return std::nullopt;
      });
  addField(
      "frameTurns", tr("&Turns"),
      tr("How the frame may lie on the garment, in degrees, such as 0, 90"),
      [at](const Shop& shop) {
        QStringList turns;
        for (const Angle turn : at(shop).turns) {
          turns.append(toQString(formatAngle(turn)));
        }
        return turns.join(QStringLiteral(", "));
      },
      [at](Shop& shop, const QString& text) -> std::optional<QString> {
        const Result<std::vector<Angle>> turns = turnsOf(text);
        if (turns) {
          at(shop).turns = *turns;
        }
        return problemOf(turns);
      });
  addTicks(
      "framePanels", tr("&Panels"), tr("Panels that the frame is meant for"), tr("Any panel"),
      [] {
        return choicesOf<PanelName>(
            [](PanelName panel) { return capitalised(toQString(panelPhrase(panel))); });
      },
      [at](const Shop& shop) {
        QStringList keys;
        for (const PanelName panel : at(shop).panels) {
          keys.append(toQString(nameOf(panel)));
        }
        return keys;
      },
      [at](Shop& shop, const QStringList& keys) {
        at(shop).panels.clear();
        for (const QString& key : keys) {
          at(shop).panels.push_back(enumOf<PanelName>(key));
        }
      });
}

QString FrameForm::subject() const {
  return ShopEdits(shop(), rules(), units()).nameOf(ShopList::Frames, entry());
}

void FrameForm::shown() {
  const Frame& frame = shop().frames.at(entry());
  const Length usual = parseLength(rules().defaults.footClearance.text).ok()
                           ? *parseLength(rules().defaults.footClearance.text)
                           : Length();
  clearance_->edit().setPlaceholderText(tr("usually %1").arg(lengthText(usual)));
  picture_->show(frame, frame.clearance.value_or(usual),
                 frame.sewingField.value_or(shop().machines.front().sewingField));
}

}  // namespace creaseline::desk
