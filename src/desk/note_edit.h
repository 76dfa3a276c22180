// SPDX-License-Identifier: MIT
// Room for a note of several lines, with the same habits as FieldEdit.
#pragma once

#include <QPlainTextEdit>

namespace creaseline::desk {

class NoteEdit : public QPlainTextEdit {
  Q_OBJECT

 public:
  NoteEdit(const QString& name, const QString& words, QWidget* parent = nullptr);

  // Shows a note, unless a person is typing here just now.
  void setText(const QString& text);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 Q_SIGNALS:
  // The note is left with another text than was shown first.
  void committed(const QString& text);

 protected:
  void focusOutEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QString shown_;
};

}  // namespace creaseline::desk
