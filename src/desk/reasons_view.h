// SPDX-License-Identifier: MIT
// Shows the reasons of the selected placement as text that can be read, scrolled and copied.
#pragma once

#include <QSet>
#include <QTextBrowser>
#include <optional>
#include <vector>

#include "creaseline/catalogue/trade_words.h"
#include "desk/reason_sections.h"

namespace creaseline::desk {

class ReasonsView : public QTextBrowser {
  Q_OBJECT

 public:
  explicit ReasonsView(QWidget* parent = nullptr);

  // Explained where they first stand in the reasons.
  void setWords(std::vector<TradeWord> words);
  void show(const PlacementReasons& reasons);
  void showNothing(const QString& why);

 Q_SIGNALS:
  // Clicked, to read more of it; index into the words.
  void wordAsked(std::size_t word);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void render();
  [[nodiscard]] QString html() const;
  [[nodiscard]] QString explained(const QString& text, QSet<std::size_t>& done) const;
  [[nodiscard]] std::optional<std::size_t> wordOf(const QUrl& link) const;

  std::optional<PlacementReasons> reasons_;
  QString nothing_;
  std::vector<TradeWord> words_;
};

}  // namespace creaseline::desk
