// SPDX-License-Identifier: MIT
#include "desk/message_bar.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QPainter>

#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kMarkColumn = 34;

}  // namespace

MessageBar::MessageBar(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("messageBar"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(kMarkColumn, 8, 10, 8);
  auto* words = new QVBoxLayout;
  words->setSpacing(2);
  headline_ = new QLabel(this);
  headline_->setObjectName(QStringLiteral("messageHeadline"));
  QFont bold = headline_->font();
  bold.setBold(true);
  headline_->setFont(bold);
  headline_->setWordWrap(true);
  detail_ = new QLabel(this);
  detail_->setObjectName(QStringLiteral("messageDetail"));
  detail_->setWordWrap(true);
  // Plain text: what a file holds is never taken for markup.
  headline_->setTextFormat(Qt::PlainText);
  detail_->setTextFormat(Qt::PlainText);
  detail_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  words->addWidget(headline_);
  words->addWidget(detail_);
  layout->addLayout(words, 1);
  const char* names[] = {"messageAction", "messageOtherAction"};
  for (std::size_t i = 0; i < 2; ++i) {
    actions_[i] = new QPushButton(this);
    actions_[i]->setObjectName(QString::fromLatin1(names[i]));
    connect(actions_[i], &QPushButton::clicked, this, [this, i] { answer(i); });
  }
  close_ = new QPushButton(tr("Hide"), this);
  close_->setObjectName(QStringLiteral("messageClose"));
  close_->setAccessibleName(tr("Hide the message"));
  layout->addWidget(actions_[0], 0, Qt::AlignVCenter);
  layout->addWidget(actions_[1], 0, Qt::AlignVCenter);
  layout->addWidget(close_, 0, Qt::AlignVCenter);
  connect(close_, &QPushButton::clicked, this, &QWidget::hide);
  hide();
}

void MessageBar::say(Severity severity, const QString& headline, const QString& detail,
                     const std::vector<Answer>& answers) {
  severity_ = severity;
  headline_->setText(headline);
  detail_->setText(detail);
  detail_->setVisible(!detail.isEmpty());
  answers_ = answers;
  for (std::size_t i = 0; i < 2; ++i) {
    actions_[i]->setText(i < answers_.size() ? answers_[i].label : QString());
    actions_[i]->setVisible(i < answers_.size());
  }
  setAccessibleName(headline);
  setAccessibleDescription(detail);
  show();
  update();
  QAccessibleEvent event(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&event);
}

void MessageBar::answer(std::size_t index) {
  if (index >= answers_.size()) {
    return;
  }
  // What it runs may say something new.
  const std::function<void()> run = answers_[index].run;
  hide();
  run();
}

void MessageBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette().color(QPalette::Base));
  const QColor colour = stateColour(severity_, palette());
  painter.fillRect(QRect(0, 0, 4, height()), colour);
  const int side = fontMetrics().ascent() + 2;
  paintState(painter, QRectF(12, (height() - side) / 2.0, side, side), severity_, colour);
  painter.setPen(hairline(palette()));
  painter.drawLine(rect().bottomLeft(), rect().bottomRight());
}

}  // namespace creaseline::desk
