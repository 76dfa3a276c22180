// SPDX-License-Identifier: MIT
#include "desk/words_window.h"

#include <QKeyEvent>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr QSize kWordsSize{560, 420};

bool isMeant(const TradeWord& word, const QString& text) {
  const auto has = [&text](const std::string& each) {
    return toQString(each).contains(text, Qt::CaseInsensitive);
  };
  return has(word.word) || has(word.meaning) ||
         std::any_of(word.also.begin(), word.also.end(), has);
}

}  // namespace

WordsWindow::WordsWindow(std::vector<TradeWord> words, Settings& settings, QWidget* parent)
    : SideWindow(QStringLiteral("wordsWindow"), kWordsSize, settings, parent),
      words_(std::move(words)) {
  setWindowTitle(tr("Words of the trade"));
  auto* layout = new QVBoxLayout(this);
  search_ = new QLineEdit(this);
  search_->setObjectName(QStringLiteral("wordsSearch"));
  search_->setAccessibleName(tr("Search the words"));
  search_->setPlaceholderText(tr("Search the words"));
  search_->setClearButtonEnabled(true);
  layout->addWidget(search_);
  auto* lower = new QHBoxLayout;
  list_ = new QListWidget(this);
  list_->setObjectName(QStringLiteral("wordsList"));
  list_->setAccessibleName(tr("Words"));
  lower->addWidget(list_, 2);
  meaning_ = new QLabel(this);
  meaning_->setObjectName(QStringLiteral("wordsMeaning"));
  meaning_->setTextFormat(Qt::RichText);
  meaning_->setWordWrap(true);
  meaning_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  meaning_->setMargin(10);
  lower->addWidget(meaning_, 3);
  layout->addLayout(lower, 1);
  for (std::size_t i = 0; i < words_.size(); ++i) {
    auto* item = new QListWidgetItem(toQString(words_[i].word), list_);
    item->setData(Qt::UserRole, QVariant::fromValue(static_cast<int>(i)));
  }
  connect(search_, &QLineEdit::textChanged, this, &WordsWindow::narrow);
  connect(list_, &QListWidget::currentRowChanged, this, &WordsWindow::showMeaning);
  list_->setCurrentRow(0);
}

void WordsWindow::choose(std::size_t word) {
  search_->clear();
  list_->setCurrentRow(static_cast<int>(word));
}

void WordsWindow::narrow(const QString& text) {
  int first = -1;
  for (int row = 0; row < list_->count(); ++row) {
    const bool meant = isMeant(words_[static_cast<std::size_t>(row)], text.trimmed());
    list_->item(row)->setHidden(!meant);
    first = meant && first < 0 ? row : first;
  }
  list_->setCurrentRow(first);
}

void WordsWindow::showMeaning() {
  const int row = list_->currentRow();
  if (row < 0) {
    meaning_->setText(tr("No such word here."));
    return;
  }
  const TradeWord& word = words_[static_cast<std::size_t>(row)];
  QString text = QStringLiteral("<p><b style='font-size:large'>%1</b></p>")
                     .arg(toQString(word.word).toHtmlEscaped());
  if (!word.also.empty()) {
    QStringList also;
    for (const std::string& each : word.also) {
      also.append(toQString(each).toHtmlEscaped());
    }
    text += QStringLiteral("<p>%1</p>").arg(tr("also: %1").arg(also.join(QStringLiteral(", "))));
  }
  text += QStringLiteral("<p>%1</p><p style='color:%2'><small>%3</small></p>")
              .arg(toQString(word.meaning).toHtmlEscaped(), mutedText(palette()).name(),
                   toQString(word.basis).toHtmlEscaped());
  meaning_->setText(text);
}

void WordsWindow::showEvent(QShowEvent* event) {
  SideWindow::showEvent(event);
  search_->setFocus();
}

void WordsWindow::keyPressEvent(QKeyEvent* event) {
  const int by = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
  if (by == 0) {
    SideWindow::keyPressEvent(event);
    return;
  }
  // From the search, too, the arrows go along the words that are left.
  for (int row = list_->currentRow() + by; row >= 0 && row < list_->count(); row += by) {
    if (!list_->item(row)->isHidden()) {
      list_->setCurrentRow(row);
      break;
    }
  }
}

}  // namespace creaseline::desk
