// SPDX-License-Identifier: MIT
#include "desk/frames_pick.h"

#include <QAction>
#include <QMenu>
#include <QStringList>
#include <algorithm>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

// A name is not a place for shortcuts.
QString plain(QString name) {
  return name.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

}  // namespace

FramesPick::FramesPick(QWidget* parent) : QToolButton(parent), menu_(new QMenu(this)) {
  setObjectName(QStringLiteral("orderFrames"));
  setAccessibleName(tr("Frames in which the order is sewn"));
  setToolTip(tr("Tick frames to plan the order in these alone"));
  setPopupMode(QToolButton::InstantPopup);
  setToolButtonStyle(Qt::ToolButtonTextOnly);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
  menu_->setObjectName(QStringLiteral("orderFramesMenu"));
  setMenu(menu_);
}

void FramesPick::show(const std::vector<FrameId>& named, const Shop* shop) {
  named_ = named;
  menu_->clear();
  QAction* any = menu_->addAction(tr("Any frame"));
  any->setCheckable(true);
  any->setChecked(named.empty());
  connect(any, &QAction::triggered, this, [this] { Q_EMIT picked({}); });
  menu_->addSeparator();
  QStringList names;
  std::vector<FrameId> unknown = named;
  for (const Frame& frame : shop == nullptr ? std::vector<Frame>() : shop->frames) {
    addFrame(frame.id, toQString(frame.name));
    if (std::erase(unknown, frame.id) > 0) {
      names.append(toQString(frame.name));
    }
  }
  for (const FrameId& frame : unknown) {
    const QString name = shop == nullptr ? toQString(frame.text())
                                         : tr("%1, not in this shop").arg(toQString(frame.text()));
    addFrame(frame, name);
    names.append(name);
  }
  setText(named.empty() ? tr("Any frame") : plain(names.join(QStringLiteral(", "))));
  setAccessibleDescription(text());
}

void FramesPick::addFrame(const FrameId& frame, const QString& name) {
  QAction* action = menu_->addAction(plain(name));
  action->setCheckable(true);
  action->setChecked(std::find(named_.begin(), named_.end(), frame) != named_.end());
  connect(action, &QAction::triggered, this, [this, frame](bool checked) {
    std::vector<FrameId> frames = named_;
    std::erase(frames, frame);
    if (checked) {
      frames.push_back(frame);
    }
    Q_EMIT picked(frames);
  });
}

}  // namespace creaseline::desk
