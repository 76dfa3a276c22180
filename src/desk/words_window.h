// SPDX-License-Identifier: MIT
// Words of the trade: searched, listed, explained.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <vector>

#include "creaseline/catalogue/trade_words.h"
#include "desk/side_window.h"

namespace creaseline::desk {

class WordsWindow : public SideWindow {
  Q_OBJECT

 public:
  WordsWindow(std::vector<TradeWord> words, Settings& settings, QWidget* parent);

  void choose(std::size_t word);

 protected:
  void showEvent(QShowEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void narrow(const QString& text);
  void showMeaning();

  std::vector<TradeWord> words_;
  QLineEdit* search_ = nullptr;
  QListWidget* list_ = nullptr;
  QLabel* meaning_ = nullptr;
};

}  // namespace creaseline::desk
