// SPDX-License-Identifier: MIT
#include "desk/note_edit.h"

#include <QFocusEvent>
#include <QKeyEvent>

#include "creaseline/catalogue/field_check.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr int kLines = 3;

}  // namespace

NoteEdit::NoteEdit(const QString& name, const QString& words, QWidget* parent)
    : QPlainTextEdit(parent), keeper_(new TypingKeeper(*this, [this] { commit(); })) {
  setObjectName(name);
  setAccessibleName(words);
  setTabChangesFocus(true);
  connect(this, &QPlainTextEdit::textChanged, keeper_, [this] {
    if (hasFocus() && toPlainText() != shown_) {
      keeper_->typed();
    }
  });
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

QSize NoteEdit::sizeHint() const {
  return {160, kLines * fontMetrics().lineSpacing() + 14};
}

QSize NoteEdit::minimumSizeHint() const {
  return {80, 2 * fontMetrics().lineSpacing() + 14};
}

void NoteEdit::setText(const QString& text) {
  const bool typing = hasFocus() && toPlainText() != shown_;
  shown_ = text;
  if (hasFocus() && toPlainText().trimmed() == text.trimmed()) {
    return;  // the line that was just begun is not taken back
  }
  if (!typing && toPlainText() != text) {
    setPlainText(text);
  }
}

void NoteEdit::focusOutEvent(QFocusEvent* event) {
  QPlainTextEdit::focusOutEvent(event);
  if (event->reason() != Qt::PopupFocusReason) {
    commit();
  }
}

void NoteEdit::commit() {
  const QString text = toPlainText();
  if (text != shown_ && checkNote(toUtf8(text))) {
    shown_ = text;
    Q_EMIT committed(text);
  }
}

void NoteEdit::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && toPlainText() != shown_) {
    setPlainText(shown_);
    return;
  }
  QPlainTextEdit::keyPressEvent(event);
}

}  // namespace creaseline::desk
