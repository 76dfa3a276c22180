// SPDX-License-Identifier: MIT
#include "desk/typing_keeper.h"

#include <QEvent>

namespace creaseline::desk {

namespace {

int nextSession() {
  static int last = 0;
  return ++last;
}

}  // namespace

TypingKeeper::TypingKeeper(QWidget& field, std::function<void()> commit)
    : QObject(&field), session_(nextSession()) {
  pause_.setSingleShot(true);
  pause_.setInterval(kMostMs);
  connect(&pause_, &QTimer::timeout, this, [commit = std::move(commit)] { commit(); });
  field.installEventFilter(this);
}

// Not begun anew by each key: who types without a pause is kept as well.
void TypingKeeper::typed() {
  if (!pause_.isActive()) {
    pause_.start();
  }
}

QString TypingKeeper::session() const {
  return QStringLiteral("typed %1").arg(session_);
}

bool TypingKeeper::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) {
    session_ = nextSession();
  } else if (event->type() == QEvent::FocusOut) {
    pause_.stop();  // the field commits when it is left
  }
  return QObject::eventFilter(watched, event);
}

}  // namespace creaseline::desk
