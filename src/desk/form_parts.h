// SPDX-License-Identifier: MIT
// What the forms of the desk have in common.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QString>
#include <optional>

#include "creaseline/base/colour.h"
#include "creaseline/base/result.h"
#include "creaseline/planning/finding.h"
#include "desk/text.h"

namespace creaseline::desk {

// What to show beside a field, or nothing if its text will do.
template <class Value>
[[nodiscard]] std::optional<QString> problemOf(const Result<Value>& result) {
  return result ? std::nullopt : std::optional(capitalised(toQString(result.message())));
}

// A colour as # and six hexadecimal digits, or by its name in the standard of drawings for the web
// (SVG 1.1, recognized color keyword names), as "navy"; else what is wrong with it.
[[nodiscard]] Result<Colour> typedColour(const QString& text);

// A name as the text of a button or menu, where an ampersand would mark a shortcut.
[[nodiscard]] QString withoutMnemonic(QString name);

// The wheel scrolls the form or table that the choice stands in, and never changes what is chosen.
class StillChoice : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void wheelEvent(QWheelEvent* event) override;
};

// A still choice that never widens its form. `name`: object name; `words`: for screen readers.
[[nodiscard]] QComboBox* makeChoice(const char* name, const QString& words, QWidget* parent);

// A note in secondary colour, or what is wrong, in that colour and with its shape; in the colours
// of the appearance chosen, also after it was changed.
class NoteLabel : public QLabel {
 public:
  explicit NoteLabel(QWidget* parent);
  void say(const QString& text, std::optional<Severity> severity = {});

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void colour();

  std::optional<Severity> severity_;
  bool colouring_ = false;
};

// What is wrong with a field, below it: hidden while nothing is.
class ProblemLabel : public NoteLabel {
 public:
  explicit ProblemLabel(QWidget* parent);
  void say(const std::optional<QString>& problem);
};

// For a table's delegate: shows in the editor of a cell what the cell says now. A new plan tells
// that every cell changed, so what is being typed, and what the next key is to replace, stays as it
// is.
void showUnlessTyped(QLineEdit& editor, const QString& text);

}  // namespace creaseline::desk
