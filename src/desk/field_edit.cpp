// SPDX-License-Identifier: MIT
#include "desk/field_edit.h"

#include <QKeyEvent>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>
#include <utility>

#include "desk/form_parts.h"

namespace creaseline::desk {

FieldEdit::FieldEdit(const QString& name, const QString& words, Check check, QWidget* parent)
    : QWidget(parent), check_(std::move(check)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(1);
  edit_ = new QLineEdit(this);
  edit_->setObjectName(name);
  edit_->setAccessibleName(words);
  edit_->installEventFilter(this);
  problem_ = new ProblemLabel(this);
  layout->addWidget(edit_);
  layout->addWidget(problem_);
  // Without a policy of its own the key of the label before it would lead nowhere.
  setFocusPolicy(Qt::StrongFocus);
  setFocusProxy(edit_);
  connect(edit_, &QLineEdit::textEdited, this, &FieldEdit::showProblem);
  connect(edit_, &QLineEdit::editingFinished, this, &FieldEdit::commit);
}

void FieldEdit::keepWhileTyping() {
  keeper_ = new TypingKeeper(*edit_, [this] { commit(); });
  connect(edit_, &QLineEdit::textEdited, keeper_, &TypingKeeper::typed);
}

void FieldEdit::setText(const QString& text) {
  // The blank before the next word is not taken from under the hand that types.
  if (keeper_ != nullptr && edit_->hasFocus() && edit_->text().trimmed() == text.trimmed()) {
    shown_ = text;
    return;
  }
  const bool typing = edit_->hasFocus() && edit_->text() != shown_;
  shown_ = text;
  if (!typing && edit_->text() != text) {
    edit_->setText(text);
    edit_->setCursorPosition(0);  // of a long text its beginning is shown
    showProblem();
  }
}

void FieldEdit::showProblem() {
  const auto problem = edit_->text() == shown_ ? std::nullopt : check_(edit_->text());
  problem_->say(problem);
  if (problem) {
    bringIntoView();
  }
  edit_->setAccessibleDescription(problem.value_or(QString()));
}

// In a form that scrolls the words may lie below its edge, once they have got their room.
void FieldEdit::bringIntoView() {
  QTimer::singleShot(0, this, [this] {
    for (QWidget* each = parentWidget(); each != nullptr; each = each->parentWidget()) {
      if (auto* area = qobject_cast<QScrollArea*>(each); area != nullptr && edit_->hasFocus()) {
        area->ensureWidgetVisible(problem_, 0, problem_->height());
        area->ensureWidgetVisible(edit_, 0, 0);
      }
    }
  });
}

void FieldEdit::commit() {
  if (edit_->text() == shown_ || check_(edit_->text())) {
    return;  // what will not do stays in the field, with its problem, until it is mended
  }
  shown_ = edit_->text();
  Q_EMIT committed(shown_);
}

void FieldEdit::goBack() {
  edit_->setText(shown_);
  showProblem();
}

bool FieldEdit::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape && edit_->text() != shown_) {
    goBack();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace creaseline::desk
