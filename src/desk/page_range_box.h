// SPDX-License-Identifier: MIT
// Which pages to put out: all, the one on show, or from one to another.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>
#include <QWidget>
#include <optional>

namespace creaseline::desk {

// Both counted from 1; 0: from the first, to the last.
struct PageSpan {
  int first = 0, last = 0;
  bool operator==(const PageSpan&) const = default;
};

// "2-5", "2 – 5", "3": a span within `count` pages, or nothing. `count` 0: not known yet.
[[nodiscard]] std::optional<PageSpan> pageSpan(const QString& text, int count);

class PageRangeBox : public QWidget {
  Q_OBJECT

 public:
  explicit PageRangeBox(QWidget* parent = nullptr);

  // 0: not known yet.
  void setPages(int current, int count);
  // Nothing where what is typed is no range.
  [[nodiscard]] std::optional<PageSpan> span() const;

 Q_SIGNALS:
  void changed();

 private:
  void refresh();

  int current_ = 1, count_ = 0;
  QRadioButton *all_ = nullptr, *onShow_ = nullptr, *some_ = nullptr;
  QLineEdit* typed_ = nullptr;
  QLabel* problem_ = nullptr;
};

}  // namespace creaseline::desk
