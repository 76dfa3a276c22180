// SPDX-License-Identifier: MIT
// What is looked at in the words on the desk, in every language: whether they fit, whether their
// mnemonics differ.
#pragma once

#include <QAbstractButton>
#include <QKeySequence>
#include <QLabel>
#include <QMenu>
#include <QSet>

#include "desk_fixture.h"

namespace creaseline::desk {

// Words that do not fit their control are cut without a sign.
inline void checkNothingClipped(const QWidget& window) {
  for (const auto* label : window.findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().isEmpty()) {
      continue;
    }
    CAPTURE(label->text(), label->width(), label->height());
    if (label->wordWrap()) {
      CHECK(label->height() >= label->heightForWidth(label->width()));
    } else {
      CHECK(label->width() >= label->sizeHint().width());
    }
  }
  for (const auto* button : window.findChildren<QAbstractButton*>()) {
    if (button->isVisible() && !button->text().isEmpty()) {
      CAPTURE(button->text(), button->width());
      CHECK(button->width() >= button->minimumSizeHint().width());
    }
  }
}

// Each mnemonic at most once; those that are taken already count as well. Returns all.
inline QSet<QString> checkMnemonics(const QStringList& texts, QSet<QString> taken = {}) {
  for (const QString& text : texts) {
    const QString key = QKeySequence::mnemonic(text).toString();
    CAPTURE(text, key);
    if (!key.isEmpty()) {
      CHECK_FALSE(taken.contains(key));
      taken.insert(key);
    }
  }
  return taken;
}

// Of a menu and of all below it.
inline void checkMenuMnemonics(const QList<QAction*>& entries) {
  QStringList texts;
  for (const QAction* entry : entries) {
    texts.append(entry->text());
    if (QMenu* menu = entry->menu()) {
      Q_EMIT menu->aboutToShow();  // some are filled only then
      checkMenuMnemonics(menu->actions());
    }
  }
  checkMnemonics(texts);
}

// Of buttons, and of labels that lead to a field.
inline QStringList textsWithMnemonics(const QWidget& part) {
  QStringList texts;
  for (const auto* button : part.findChildren<QAbstractButton*>()) {
    texts.append(button->text());
  }
  for (const auto* label : part.findChildren<QLabel*>()) {
    if (label->buddy() != nullptr) {
      texts.append(label->text());
    }
  }
  texts.removeAll(QString());
  return texts;
}

}  // namespace creaseline::desk
