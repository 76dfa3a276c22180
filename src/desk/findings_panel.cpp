// SPDX-License-Identifier: MIT
// Painting of findings and the buttons of their remedies.
#include "desk/findings_panel.h"

#include <QPainter>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <algorithm>
#include <optional>
#include <variant>

#include "desk/reason_sections.h"
#include "desk/text.h"
#include "desk/theme.h"

namespace creaseline::desk {

namespace {

constexpr int kPadding = 7;
constexpr int kBatch = 60;
constexpr int kLeastCharacters = 22;  // of a finding's text beside its word

const QString kTryIt = QStringLiteral("tryIt");

class FindingDelegate : public QStyledItemDelegate {
 public:
  explicit FindingDelegate(QListView* view) : QStyledItemDelegate(view), view_(view) {}

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const int width = view_->viewport()->width();
    const Layout layout = lay(option, index, QRect(0, 0, width, 0));
    return {width, layout.text.bottom() + 1 + kPadding};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    QStyleOptionViewItem item = option;
    initStyleOption(&item, index);
    item.text.clear();
    item.widget->style()->drawControl(QStyle::CE_ItemViewItem, &item, painter, item.widget);
    const bool selected = item.state & QStyle::State_Selected;
    const QPalette& palette = item.palette;
    const QColor plain = palette.color(selected ? QPalette::HighlightedText : QPalette::Text);
    const auto severity = static_cast<Severity>(index.data(FindingModel::SeverityRole).toInt());
    const QColor colour = selected ? plain : stateColour(severity, palette);
    const Layout layout = lay(option, index, option.rect);
    painter->save();
    paintState(*painter, layout.mark, severity, colour);
    painter->setFont(bold(option.font));
    painter->setPen(colour);
    painter->drawText(layout.word, Qt::AlignLeft | Qt::AlignTop, findingWord(severity));
    painter->setFont(option.font);
    painter->setPen(selected ? plain : mutedText(palette));
    painter->drawText(layout.place, Qt::AlignLeft | Qt::TextWordWrap, place(index));
    painter->setPen(plain);
    painter->drawText(layout.text, Qt::AlignLeft | Qt::TextWordWrap, index.data().toString());
    painter->setPen(hairline(palette));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->restore();
  }

 private:
  struct Layout {
    QRect mark, word, place, text;
  };

  static QFont bold(QFont font) {
    font.setBold(true);
    return font;
  }
  static QString place(const QModelIndex& index) {
    return index.data(FindingModel::PlaceRole).toString();
  }

  // Shape and word in a column of their own, place and text beside them; below them where the list
  // is narrow.
  static Layout lay(const QStyleOptionViewItem& option, const QModelIndex& index,
                    const QRect& cell) {
    const QFontMetrics metrics(option.font);
    const QFontMetrics boldMetrics(bold(option.font));
    const int side = metrics.ascent();
    int wordWidth = 0;
    for (const Severity severity : {Severity::Stop, Severity::Watch, Severity::Note}) {
      wordWidth = std::max(wordWidth, boldMetrics.horizontalAdvance(findingWord(severity)));
    }
    Layout layout;
    const int top = cell.top() + kPadding;
    layout.mark = QRect(cell.left() + kPadding, top + (metrics.height() - side) / 2, side, side);
    layout.word = QRect(layout.mark.right() + 6, top, wordWidth + 2, metrics.height());
    const int beside = layout.word.right() + 10;
    const bool narrow =
        cell.right() - kPadding - beside < kLeastCharacters * metrics.averageCharWidth();
    const int left = narrow ? cell.left() + kPadding : beside;
    const int begin = narrow ? layout.word.bottom() + 2 : top;
    const int width = std::max(80, cell.right() - kPadding - left);
    const int flags = Qt::AlignLeft | Qt::TextWordWrap;
    layout.place = metrics.boundingRect(QRect(left, begin, width, 10000), flags, place(index));
    layout.place.setWidth(width);
    layout.text = metrics.boundingRect(QRect(left, layout.place.bottom() + 2, width, 10000), flags,
                                       index.data().toString());
    layout.text.setWidth(width);
    return layout;
  }

  QListView* view_;
};

// Finds the heights of its rows a batch at a time, so that those of a long order do not hold up
// what is typed meanwhile. A row that is to be seen is gone to once its place is known.
class FindingsList : public QListView {
 public:
  explicit FindingsList(QWidget* parent) : QListView(parent) {
    setLayoutMode(QListView::Batched);
    setBatchSize(kBatch);
  }

  // A finding and the beginning of the next stay in view beside the remedies of the chosen one.
  [[nodiscard]] QSize minimumSizeHint() const override {
    constexpr int kLeastLines = 7;
    return {QListView::minimumSizeHint().width(), kLeastLines * fontMetrics().lineSpacing()};
  }

  void scrollTo(const QModelIndex& index, ScrollHint hint) override {
    sought_ = visualRect(index).isValid() ? QPersistentModelIndex() : QPersistentModelIndex(index);
    QListView::scrollTo(index, hint);
  }

 protected:
  // Heights follow from the width, which the list itself has no mind to see.
  void resizeEvent(QResizeEvent* event) override {
    QListView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
      scheduleDelayedItemsLayout();
    }
  }

  void timerEvent(QTimerEvent* event) override {
    QListView::timerEvent(event);
    if (sought_.isValid() && visualRect(sought_).isValid()) {
      updateGeometries();  // so that the bar reaches as far as the row
      scrollTo(sought_, EnsureVisible);
    }
  }

 private:
  QPersistentModelIndex sought_;
};

// As high as what it holds where there is room; where there is not, it scrolls before words are
// cut.
class RemediesArea : public QScrollArea {
 public:
  explicit RemediesArea(QWidget* content, QWidget* parent) : QScrollArea(parent) {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    setWidget(content);
    content->installEventFilter(this);
  }

  [[nodiscard]] QSize sizeHint() const override {
    const int bar = verticalScrollBar()->sizeHint().width();
    const int height = widget()->heightForWidth(std::max(1, width() - bar));
    return {widget()->sizeHint().width() + bar, std::max(height, widget()->sizeHint().height())};
  }
  [[nodiscard]] QSize minimumSizeHint() const override {
    constexpr int kLeastLines = 6;
    return {widget()->minimumSizeHint().width(),
            std::min(sizeHint().height(), kLeastLines * fontMetrics().lineSpacing())};
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::LayoutRequest) {
      updateGeometry();
    }
    return QScrollArea::eventFilter(watched, event);
  }
  void resizeEvent(QResizeEvent* event) override {
    QScrollArea::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
      updateGeometry();
    }
  }
};

}  // namespace

FindingsPanel::FindingsPanel(QWidget* parent) : QWidget(parent) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  list_ = new FindingsList(this);
  list_->setObjectName(QStringLiteral("findings"));
  list_->setAccessibleName(tr("Findings"));
  list_->setFrameShape(QFrame::NoFrame);
  list_->setResizeMode(QListView::Adjust);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  // Always there, because its coming would narrow rows whose height has been found already.
  list_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  list_->setItemDelegate(new FindingDelegate(list_));
  list_->setModel(&model_);
  empty_ = new QLabel(this);
  empty_->setWordWrap(true);
  empty_->setMargin(10);
  remedies_ = new QWidget;
  remedies_->setObjectName(QStringLiteral("remedies"));
  remediesLayout_ = new QVBoxLayout(remedies_);
  remediesLayout_->setContentsMargins(10, 8, 10, 10);
  remediesLayout_->setSpacing(4);
  layout->addWidget(empty_);
  layout->addWidget(list_, 1);
  remediesArea_ = new RemediesArea(remedies_, this);
  layout->addWidget(remediesArea_);
  remediesArea_->hide();
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& current) { showRemedies(current.row()); });
  const auto jump = [this](const QModelIndex& index) {
    if (const Finding* finding = model_.finding(index.row())) {
      Q_EMIT jumpRequested(*finding);
    }
  };
  connect(list_, &QListView::clicked, this, jump);
  // Enter; a double click has already jumped by its first click, and jumping again does no harm.
  connect(list_, &QListView::activated, this, jump);
  // Another window is not opened by a mere click.
  connect(list_, &QListView::activated, this, [this](const QModelIndex& index) {
    if (const IdleHouseRule* idle = model_.idleRule(index.row())) {
      Q_EMIT houseRuleRequested(idle->rule);
    }
  });
}

void FindingsPanel::setPlanned(std::shared_ptr<const PlannedOrder> planned) {
  std::optional<Finding> chosen;
  if (const Finding* finding = model_.finding(list_->currentIndex().row())) {
    chosen = *finding;
  }
  const bool hasPlan = planned && planned->plan() != nullptr;
  const int hoopings = hasPlan ? planned->plan()->counts.placements : 0;
  if (!model_.setPlanned(std::move(planned))) {
    return;
  }
  clearRemedies();
  // The same finding stays chosen in a new plan, if it is still there.
  for (int row = 0; chosen && row < model_.rowCount(); ++row) {
    const Finding* candidate = model_.finding(row);
    if (candidate == nullptr) {
      break;  // house rules come after all findings
    }
    if (candidate->code == chosen->code && candidate->line == chosen->line &&
        candidate->placement == chosen->placement && candidate->sizes == chosen->sizes) {
      list_->setCurrentIndex(model_.index(row, 0));
      break;
    }
  }
  const bool none = model_.rowCount() == 0;
  empty_->setText(!hasPlan ? tr("No plan yet.")
                  : hoopings == 0
                      ? tr("Nothing is ordered yet: a line needs quantities and a place.")
                      : tr("Nothing to say: everything can be sewn as ordered."));
  empty_->setVisible(none);
  list_->setVisible(!none);
}

void FindingsPanel::setRemediesEnabled(bool enabled) {
  remediesEnabled_ = enabled;
  for (auto* button : remedies_->findChildren<QPushButton*>(kTryIt)) {
    button->setEnabled(enabled);
  }
}

void FindingsPanel::clearRemedies() {
  while (QLayoutItem* item = remediesLayout_->takeAt(0)) {
    if (item->widget() != nullptr) {
      item->widget()->hide();
      item->widget()->deleteLater();
    }
    delete item;
  }
  remediesArea_->hide();
}

void FindingsPanel::showRemedies(int row) {
  clearRemedies();
  if (const IdleHouseRule* idle = model_.idleRule(row)) {
    auto* button = new QPushButton(tr("Open the house rule…"), remedies_);
    button->setObjectName(QStringLiteral("findingHouseRule"));
    connect(button, &QPushButton::clicked, this,
            [this, rule = idle->rule] { Q_EMIT houseRuleRequested(rule); });
    remediesLayout_->addWidget(button, 0, Qt::AlignLeft);
  }
  if (const Finding* finding = model_.finding(row)) {
    addReasonAndRemedies(*finding);
  }
  // By Tab from the finding to what would help.
  QWidget* before = list_;
  for (int i = 0; i < remediesLayout_->count(); ++i) {
    QWidget* shown = remediesLayout_->itemAt(i)->widget();
    auto* button = qobject_cast<QPushButton*>(shown);
    button = button == nullptr ? shown->findChild<QPushButton*>() : button;
    if (button != nullptr) {
      setTabOrder(before, button);
      before = button;
    }
  }
  // At last, since what is added to a row on show comes a moment later.
  remediesArea_->setVisible(remediesLayout_->count() > 0);
}

void FindingsPanel::addReasonAndRemedies(const Finding& finding) {
  if (finding.reason) {
    remediesLayout_->addWidget(reasonLabel(*finding.reason));
  }
  if (finding.remedies.empty()) {
    return;
  }
  auto* heading = new QLabel(tr("What would help (each planned and checked):"), remedies_);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  heading->setWordWrap(true);
  remediesLayout_->addWidget(heading);
  for (const Remedy& remedy : finding.remedies) {
    remediesLayout_->addWidget(remedyRow(finding, remedy));
  }
}

// Which rule or figure sets the limit, and what would change it.
QLabel* FindingsPanel::reasonLabel(const Reason& reason) {
  const QString text = capitalised(toQString(reason.text));
  const QString source = sourceOf(reason);
  auto* label = new QLabel(
      source.isEmpty() ? text : tr("%1: %2", "reason: its source").arg(text, source), remedies_);
  label->setObjectName(QStringLiteral("findingReason"));
  label->setWordWrap(true);
  return label;
}

// A change of the order can be tried at once; to where what has to be bought or measured is
// entered, a button leads.
QWidget* FindingsPanel::remedyRow(const Finding& finding, const Remedy& remedy) {
  auto* row = new QWidget(remedies_);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 2, 0, 2);
  const QString text = capitalised(toQString(remedy.text));
  const QString result = toQString(remedy.result);
  const QString whole = result.isEmpty() ? text : tr("%1: %2", "remedy: result").arg(text, result);
  auto* label = new QLabel(whole, row);
  label->setWordWrap(true);
  layout->addWidget(label, 1);
  if (const auto* change = std::get_if<ShopChange>(&remedy.change)) {
    auto* button = new QPushButton(tr("Go there"), row);
    button->setObjectName(QStringLiteral("goThere"));
    button->setToolTip(tr("Opens the window in which it is entered"));
    button->setAccessibleName(tr("Go to where it is entered: %1").arg(text));
    layout->addWidget(button, 0, Qt::AlignTop);
    connect(button, &QPushButton::clicked, this,
            [this, finding, change = *change] { Q_EMIT leadRequested(finding, change); });
  } else if (!std::holds_alternative<StitchesChange>(remedy.change)) {
    auto* button = new QPushButton(tr("Try it"), row);
    button->setObjectName(kTryIt);
    button->setAccessibleName(tr("Try: %1").arg(text));
    button->setEnabled(remediesEnabled_);
    layout->addWidget(button, 0, Qt::AlignTop);
    connect(button, &QPushButton::clicked, this,
            [this, finding, remedy] { Q_EMIT remedyRequested(finding, remedy); });
  }
  return row;
}

}  // namespace creaseline::desk
