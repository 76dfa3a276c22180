// SPDX-License-Identifier: MIT
#include "desk/tick_menu.h"

#include <QAction>
#include <utility>

#include "desk/form_parts.h"

namespace creaseline::desk {

TickMenu::TickMenu(const QString& name, const QString& words, QString any, QWidget* parent)
    : QToolButton(parent), any_(std::move(any)), menu_(new QMenu(this)) {
  setObjectName(name);
  setAccessibleName(words);
  setPopupMode(QToolButton::InstantPopup);
  setToolButtonStyle(Qt::ToolButtonTextOnly);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
  menu_->setObjectName(name + QStringLiteral("Menu"));
  setMenu(menu_);
}

void TickMenu::show(const std::vector<Choice>& choices, const QStringList& ticked) {
  menu_->clear();
  QAction* any = menu_->addAction(any_);
  any->setCheckable(true);
  any->setChecked(ticked.isEmpty());
  connect(any, &QAction::triggered, this, [this, any] {
    any->setChecked(true);  // ticked again it stays so
    Q_EMIT picked({});
  });
  menu_->addSeparator();
  QStringList names;
  for (const Choice& choice : choices) {
    QAction* action = menu_->addAction(withoutMnemonic(choice.name));
    action->setCheckable(true);
    action->setData(choice.key);
    action->setChecked(ticked.contains(choice.key));
    if (action->isChecked()) {
      names.append(choice.name);
    }
    connect(action, &QAction::triggered, this, [this] {
      QStringList keys;
      for (const QAction* each : menu_->actions()) {
        if (each->isChecked() && each->data().isValid()) {
          keys.append(each->data().toString());
        }
      }
      Q_EMIT picked(keys);
    });
  }
  setText(names.isEmpty() ? any_ : withoutMnemonic(names.join(QStringLiteral(", "))));
  setAccessibleDescription(names.isEmpty() ? any_ : names.join(QStringLiteral(", ")));
}

}  // namespace creaseline::desk
