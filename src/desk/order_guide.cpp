// SPDX-License-Identifier: MIT
#include "desk/order_guide.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QStyle>
#include <QToolButton>
#include <QVBoxLayout>
#include <utility>

namespace creaseline::desk {

namespace {

constexpr int kBriefSteps = 2;
constexpr int kMostShare = 2;  // the guide may take up half of what it stands in

}  // namespace

OrderGuide::OrderGuide(QWidget* parent) : QWidget(parent), done_(StepCount, false) {
  setObjectName(QStringLiteral("orderGuide"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 6, 10, 8);
  layout->setSpacing(1);
  auto* top = new QHBoxLayout;
  auto* heading = new QLabel(tr("The way to an order"), this);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  top->addWidget(heading, 1);
  auto* close = new QToolButton(this);
  close->setObjectName(QStringLiteral("guideClose"));
  close->setAutoRaise(true);
  close->setFocusPolicy(Qt::TabFocus);
  close->setIcon(style()->standardIcon(QStyle::SP_TitleBarCloseButton));
  close->setAccessibleName(tr("Close the guide"));
  close->setToolTip(tr("Close the guide; Help brings it back"));
  connect(close, &QToolButton::clicked, this, &OrderGuide::closed);
  top->addWidget(close);
  layout->addLayout(top);
  const struct {
    const char* name;
    QString words, why;
  } kSteps[StepCount] = {
      {"guideShop", tr("Your shop: frames and machine"),
       tr("Which frames are on hand decides what can be sewn where")},
      {"guideGarment", tr("The garment and its size chart"),
       tr("Two measures of each size are enough to begin; charts can be pasted")},
      {"guideDesign", tr("The design: size and stitches"),
       tr("Its outline can come from a picture, else it counts as a rectangle")},
      {"guideLine", tr("A line for the garment"), tr("One line for each garment and colour")},
      {"guidePlace", tr("The place on it"),
       tr("Where the design is sewn; a line may have several")},
      {"guideQuantities", tr("How many of each size"), tr("Type them into the table")},
      {"guideSheets", tr("The sheets for the hooping station"),
       tr("Placement sheets, templates, run cards and lists")}};
  for (int i = 0; i < StepCount; ++i) {
    // Words beside a picture stand at the left, without a style sheet, which would keep the colours
    // of another appearance.
    auto* step = new QToolButton(this);
    step->setText(kSteps[i].words);
    step->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    step->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    step->setFocusPolicy(Qt::StrongFocus);
    step->setObjectName(QString::fromLatin1(kSteps[i].name));
    step->setAutoRaise(true);
    step->setToolTip(kSteps[i].why);
    connect(step, &QToolButton::clicked, this,
            [this, i] { Q_EMIT stepChosen(static_cast<Step>(i)); });
    layout->addWidget(step);
    steps_.push_back(step);
  }
  fullHeight_ = sizeHint().height();
  if (parent != nullptr) {
    parent->installEventFilter(this);
  }
  showSteps();
}

void OrderGuide::setDone(Step step, bool done) {
  if (done_[step] != done) {
    done_[step] = done;
    showSteps();
  }
}

OrderGuide::Step OrderGuide::next() const {
  int step = 0;
  while (step < StepCount && done_[static_cast<std::size_t>(step)]) {
    ++step;
  }
  return static_cast<Step>(step);
}

// Where all steps would leave the order little room, the next ones do.
bool OrderGuide::eventFilter(QObject* watched, QEvent* event) {
  if (watched == parent() && event->type() == QEvent::Resize) {
    const bool brief = parentWidget()->height() < kMostShare * fullHeight_;
    if (std::exchange(brief_, brief) != brief) {
      showSteps();
    }
  }
  return QWidget::eventFilter(watched, event);
}

// A tick, or the step's number; the next one stands out. Screen readers hear it as words.
void OrderGuide::showSteps() {
  for (int i = 0; i < StepCount; ++i) {
    QToolButton* button = steps_[static_cast<std::size_t>(i)];
    const bool done = done_[static_cast<std::size_t>(i)];
    button->setVisible(!brief_ || (i >= next() && i < next() + kBriefSteps));
    QPixmap mark(QSize(16, 16) * devicePixelRatio());
    mark.setDevicePixelRatio(devicePixelRatio());
    mark.fill(Qt::transparent);
    QPainter painter(&mark);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette().color(done ? QPalette::Text : QPalette::PlaceholderText), 1.6));
    if (done) {
      painter.drawPolyline(QPolygonF({{3.0, 8.5}, {6.5, 12.0}, {13.0, 4.0}}));
    } else {
      painter.drawText(QRectF(0.0, 0.0, 16.0, 16.0), Qt::AlignCenter, QString::number(i + 1));
    }
    painter.end();
    button->setIcon(QIcon(mark));
    QFont face = font();
    face.setBold(i == next());
    button->setFont(face);
    button->setAccessibleDescription(done ? tr("done") : tr("not done yet"));
  }
}

void OrderGuide::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if ((event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) &&
      steps_.size() == StepCount) {
    showSteps();
  }
}

}  // namespace creaseline::desk
