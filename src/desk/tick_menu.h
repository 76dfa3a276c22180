// SPDX-License-Identifier: MIT
// A button that shows what of a list is ticked, and a menu to tick it; nothing ticked is any.
#pragma once

#include <QMenu>
#include <QStringList>
#include <QToolButton>
#include <vector>

namespace creaseline::desk {

class TickMenu : public QToolButton {
  Q_OBJECT

 public:
  struct Choice {
    QString name, key;
  };

  // `words`: for screen readers; `any`: what is said where nothing is ticked.
  TickMenu(const QString& name, const QString& words, QString any, QWidget* parent = nullptr);
  void show(const std::vector<Choice>& choices, const QStringList& ticked);

 Q_SIGNALS:
  // Keys, in the order of the choices.
  void picked(const QStringList& keys);

 private:
  QString any_;
  QMenu* menu_ = nullptr;
};

}  // namespace creaseline::desk
