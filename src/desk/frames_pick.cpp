// SPDX-License-Identifier: MIT
#include "desk/frames_pick.h"

#include "desk/text.h"

namespace creaseline::desk {

FramesPick::FramesPick(QWidget* parent)
    : TickMenu(QStringLiteral("orderFrames"), tr("Frames in which the order is sewn"),
               tr("Any frame"), parent) {
  setToolTip(tr("Tick frames to plan the order in these alone"));
  connect(this, &TickMenu::picked, this, [this](const QStringList& keys) {
    std::vector<FrameId> frames;
    for (const QString& key : keys) {
      frames.emplace_back(toUtf8(key));
    }
    Q_EMIT framesPicked(frames);
  });
}

void FramesPick::showFrames(const std::vector<FrameId>& named, const Shop* shop) {
  std::vector<Choice> choices;
  QStringList ticked;
  for (const Frame& frame : shop == nullptr ? std::vector<Frame>() : shop->frames) {
    choices.push_back({toQString(frame.name), toQString(frame.id.text())});
  }
  for (const FrameId& frame : named) {
    const QString id = toQString(frame.text());
    ticked.append(id);
    if (shop == nullptr || shop->frame(frame) == nullptr) {
      choices.push_back({shop == nullptr ? id : tr("%1, not in this shop").arg(id), id});
    }
  }
  show(choices, ticked);
}

}  // namespace creaseline::desk
