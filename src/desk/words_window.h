// SPDX-License-Identifier: MIT
// Words of the trade: searched, listed, explained.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QWidget>
#include <vector>

#include "creaseline/catalogue/trade_words.h"
#include "desk/settings.h"

namespace creaseline::desk {

class WordsWindow : public QWidget {
  Q_OBJECT

 public:
  WordsWindow(std::vector<TradeWord> words, Settings& settings, QWidget* parent);

  void choose(std::size_t word);

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void narrow(const QString& text);
  void showMeaning();

  std::vector<TradeWord> words_;
  Settings& settings_;
  QLineEdit* search_ = nullptr;
  QListWidget* list_ = nullptr;
  QLabel* meaning_ = nullptr;
};

}  // namespace creaseline::desk
