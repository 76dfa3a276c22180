// SPDX-License-Identifier: MIT
// A line to type in that checks as one types and says beside the field what is wrong.
#pragma once

#include <QLineEdit>
#include <QWidget>
#include <functional>
#include <optional>

#include "desk/form_parts.h"
#include "desk/typing_keeper.h"

namespace creaseline::desk {

class FieldEdit : public QWidget {
  Q_OBJECT

 public:
  // What is wrong with a text, one sentence without a full stop; nothing if it will do.
  using Check = std::function<std::optional<QString>(const QString&)>;

  // `name`: object name of the line edit; `words`: its name for screen readers.
  FieldEdit(const QString& name, const QString& words, Check check, QWidget* parent = nullptr);

  // For words: what is typed is committed before the field is left, too.
  void keepWhileTyping();
  // One for all that is typed before the field is left; empty for what is committed only then.
  [[nodiscard]] QString typingSession() const { return keeper_ ? keeper_->session() : QString(); }

  // Shows a value, unless a person is typing in the field just now.
  void setText(const QString& text);
  [[nodiscard]] QString text() const { return edit_->text(); }
  [[nodiscard]] QLineEdit& edit() { return *edit_; }
  [[nodiscard]] QString problem() const { return problem_->text(); }

 Q_SIGNALS:
  // The field is left, or Enter pressed, or words are being typed, with a text that will do and is
  // not the one shown first.
  void committed(const QString& text);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void showProblem();
  void bringIntoView();
  void commit();
  void goBack();

  Check check_;
  QLineEdit* edit_ = nullptr;
  ProblemLabel* problem_ = nullptr;
  TypingKeeper* keeper_ = nullptr;
  QString shown_;
};

}  // namespace creaseline::desk
