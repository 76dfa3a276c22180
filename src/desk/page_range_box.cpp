// SPDX-License-Identifier: MIT
#include "desk/page_range_box.h"

#include <QHBoxLayout>
#include <QRegularExpression>

#include "desk/theme.h"

namespace creaseline::desk {

std::optional<PageSpan> pageSpan(const QString& text, int count) {
  static const QRegularExpression kForm(
      QStringLiteral("^\\s*(\\d{1,6})\\s*(?:[-–]\\s*(\\d{1,6})\\s*)?$"));
  const QRegularExpressionMatch match = kForm.match(text);
  if (!match.hasMatch()) {
    return std::nullopt;
  }
  PageSpan span;
  span.first = match.captured(1).toInt();
  span.last = match.captured(2).isEmpty() ? span.first : match.captured(2).toInt();
  if (span.first < 1 || span.last < span.first || (count > 0 && span.last > count)) {
    return std::nullopt;
  }
  return span;
}

PageRangeBox::PageRangeBox(QWidget* parent) : QWidget(parent) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  all_ = new QRadioButton(tr("&All pages"), this);
  all_->setObjectName(QStringLiteral("pagesAll"));
  all_->setChecked(true);
  onShow_ = new QRadioButton(this);
  onShow_->setObjectName(QStringLiteral("pagesOnShow"));
  some_ = new QRadioButton(tr("Pa&ges from-to:"), this);
  some_->setObjectName(QStringLiteral("pagesSome"));
  some_->setAccessibleName(tr("Pages from one to another"));
  typed_ = new QLineEdit(this);
  typed_->setObjectName(QStringLiteral("pagesTyped"));
  typed_->setAccessibleName(tr("First and last page, such as 2-5"));
  typed_->setPlaceholderText(tr("such as 2-5"));
  problem_ = new QLabel(this);
  problem_->setObjectName(QStringLiteral("pagesProblem"));
  problem_->setWordWrap(true);
  problem_->hide();
  auto* row = new QHBoxLayout;
  row->addWidget(some_);
  row->addWidget(typed_, 1);
  layout->addWidget(all_);
  layout->addWidget(onShow_);
  layout->addLayout(row);
  layout->addWidget(problem_);
  for (QRadioButton* choice : {all_, onShow_, some_}) {
    connect(choice, &QRadioButton::toggled, this, &PageRangeBox::refresh);
  }
  // Who chooses the range is going to type it.
  connect(some_, &QRadioButton::clicked, typed_,
          [this] { typed_->setFocus(Qt::OtherFocusReason); });
  connect(typed_, &QLineEdit::textEdited, this, [this] {
    some_->setChecked(true);
    refresh();
  });
  refresh();
}

void PageRangeBox::setPages(int current, int count) {
  current_ = current;
  count_ = count;
  refresh();
}

std::optional<PageSpan> PageRangeBox::span() const {
  if (all_->isChecked()) {
    return PageSpan{};
  }
  if (onShow_->isChecked()) {
    return PageSpan{current_, current_};
  }
  return pageSpan(typed_->text(), count_);
}

void PageRangeBox::refresh() {
  onShow_->setText(tr("The page on sho&w, %1").arg(current_));
  const bool wrong = !span().has_value();
  if (wrong) {
    const QString words = count_ > 0
                              ? tr("First and last page, between 1 and %1, such as 2-5").arg(count_)
                              : tr("First and last page, such as 2-5");
    // Nothing typed yet is no mistake.
    const bool mistaken = !typed_->text().isEmpty();
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, mistaken ? stateColour(Severity::Stop, palette())
                                                    : palette().color(QPalette::WindowText));
    problem_->setPalette(colours);
    problem_->setText(mistaken ? stateShape(Severity::Stop) + QLatin1Char(' ') + words : words);
  }
  problem_->setVisible(wrong);
  Q_EMIT changed();
}

}  // namespace creaseline::desk
