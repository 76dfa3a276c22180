// SPDX-License-Identifier: MIT
// Words that are being typed count before their field is left, so that a crash takes but seconds of
// them.
#pragma once

#include <QTimer>
#include <QWidget>
#include <functional>

namespace creaseline::desk {

class TypingKeeper : public QObject {
 public:
  // With what the recovery of a session waits, well below five seconds.
  static constexpr int kMostMs = 1000;

  // `commit` is called while somebody types in `field`, which owns the keeper.
  TypingKeeper(QWidget& field, std::function<void()> commit);

  // Something was typed.
  void typed();
  // What is typed without the field being left is one step, however often it was committed: the
  // same until then, and another for each field.
  [[nodiscard]] QString session() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QTimer pause_;
  int session_ = 0;
};

}  // namespace creaseline::desk
