// SPDX-License-Identifier: MIT
// Room for a note of several lines, with the same habits as FieldEdit.
#pragma once

#include <QPlainTextEdit>

#include "desk/typing_keeper.h"

namespace creaseline::desk {

class NoteEdit : public QPlainTextEdit {
  Q_OBJECT

 public:
  NoteEdit(const QString& name, const QString& words, QWidget* parent = nullptr);

  // One for all that is typed before the note is left.
  [[nodiscard]] QString typingSession() const { return keeper_->session(); }

  // Shows a note, unless a person is typing here just now.
  void setText(const QString& text);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 Q_SIGNALS:
  // The note is left, or typed at for a while, with another text than was shown first.
  void committed(const QString& text);

 protected:
  void focusOutEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void commit();

  TypingKeeper* keeper_;
  QString shown_;
};

}  // namespace creaseline::desk
