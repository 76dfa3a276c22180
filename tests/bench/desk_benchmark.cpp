// SPDX-License-Identifier: MIT
// The desk: start of the program and its memory beside those of an empty window of Qt's, in turns
// and in processes of their own; the table while a design of 2,000 points is dragged; the longest
// time for which the window does not answer, with an order of 500 lines.
#include <fmt/format.h>
#include <sys/resource.h>

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QMouseEvent>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <cmath>
#include <ctime>
#include <filesystem>
#include <iostream>
#include <numbers>
#include <optional>

#include "bench/timing.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/catalogue/save.h"
#include "creaseline/desk/desk_window.h"
#include "creaseline/desk/fonts_ahead.h"
#include "desk/table_canvas.h"
#include "desk/text.h"

namespace {

using namespace creaseline;
using desk::pathText;
using desk::TableCanvas;

constexpr int kRounds = 9;
constexpr int kLines = 500;
constexpr int kPoints = 2000;

std::filesystem::path source() {
  return std::filesystem::path(SOURCE_DIR);
}

double peakMegabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

bool planned(const QWidget& window) {
  return window.findChild<QAction*>(QStringLiteral("saveSheets"))->isEnabled();
}

// ---- Start, in a process of its own
// ---------------------------------------------------------------

struct Seen : QObject {
  bool painted = false, pressed = false;
  bool eventFilter(QObject*, QEvent* event) override {
    painted = painted || event->type() == QEvent::Paint;
    pressed = pressed || event->type() == QEvent::MouseButtonPress;
    return false;
  }
};

std::unique_ptr<DeskWindow> desk(const QTemporaryDir& folder, const DeskRules& rules) {
  return std::make_unique<DeskWindow>(rules, source() / "resources",
                                      folder.filePath(QStringLiteral("desk.ini")));
}

// Usable is what was painted and then answers: a press of the mouse that is sent after the first
// painting shows itself on what is pressed.
bool answers(QWidget& window, QWidget& pressed) {
  const auto* button = qobject_cast<QAbstractButton*>(&pressed);
  Seen seen;
  pressed.installEventFilter(&seen);
  window.show();
  while (!seen.painted) {
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }
  const QPointF at = pressed.rect().center();
  QCoreApplication::postEvent(&pressed,
                              new QMouseEvent(QEvent::MouseButtonPress, at, pressed.mapToGlobal(at),
                                              Qt::LeftButton, Qt::LeftButton, Qt::NoModifier));
  while (!seen.pressed) {
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }
  return button == nullptr || button->isDown();
}

int startAs(const QString& what, QApplication& application, std::optional<FontsAhead>& fonts) {
  const QTemporaryDir folder;
  if (what == QStringLiteral("empty")) {
    QMainWindow window;
    window.resize(1440, 900);
    auto* central = new QWidget(&window);
    window.setCentralWidget(central);
    if (!answers(window, *central)) {
      return 1;
    }
    std::cout << peakMegabytes() << std::endl;
    std::_Exit(0);
  }
  // As the program does.
  const auto rules = DeskRules::read(source() / "resources", application,
                                     [](const InputError&) { std::_Exit(2); });
  fonts->read();
  const auto window = desk(folder, rules);
  if (!answers(*window, *window->findChild<QPushButton*>(QStringLiteral("startDemo")))) {
    return 1;
  }
  if (what == QStringLiteral("demo")) {
    window->openShop(source() / "demo" / "workshop.shop.json");
    window->openOrder(source() / "demo" / "regatta.order.json");
    if (!QTest::qWaitFor([&] { return planned(*window); }, 60000)) {
      return 1;
    }
  }
  std::cout << peakMegabytes() << std::endl;
  // What the program leaves at its end is not part of its start.
  std::_Exit(0);
}

struct Start {
  double seconds = 0.0, megabytes = 0.0;
};

Start start(const QString& what) {
  QProcess process;
  QElapsedTimer clock;
  clock.start();
  process.start(QCoreApplication::applicationFilePath(), {what});
  if (!process.waitForFinished(60000) || process.exitCode() != 0) {
    throw std::runtime_error("the process \"" + what.toStdString() + "\" failed");
  }
  return {static_cast<double>(clock.nsecsElapsed()) / 1e9,
          process.readAllStandardOutput().trimmed().toDouble()};
}

void measureStart() {
  std::vector<double> empty, bare, ratios;
  double emptyMemory = 0.0, bareMemory = 0.0;
  start(QStringLiteral("empty"));
  start(QStringLiteral("desk"));
  for (int round = 0; round < kRounds; ++round) {
    const Start plain = start(QStringLiteral("empty"));
    const Start window = start(QStringLiteral("desk"));
    empty.push_back(plain.seconds);
    bare.push_back(window.seconds);
    ratios.push_back(window.seconds / plain.seconds);
    emptyMemory = plain.megabytes;
    bareMemory = window.megabytes;
  }
  const Start demo = start(QStringLiteral("demo"));
  fmt::print("start to a usable window, ms: empty window {:.0f}, desk {:.0f}, ratio {:.2f}\n",
             bench::median(empty) * 1e3, bench::median(bare) * 1e3, bench::median(ratios));
  fmt::print(
      "peak memory, MB: empty window {:.0f}, desk {:.0f}, desk with the demo planned {:.0f}\n",
      emptyMemory, bareMemory, demo.megabytes);
}

// ---- The window with a large order
// ----------------------------------------------------------------

Outline star() {
  Ring ring;
  for (int i = 0; i < kPoints; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / kPoints;
    const double radius = 40.0 + 4.0 * std::sin(61.0 * angle);
    ring.push_back({radius * std::cos(angle), radius * std::sin(angle)});
  }
  Outline outline;
  outline.pieces.push_back({std::move(ring), {}});
  return outline;
}

// The demo's lines again and again, with a design of many points.
std::filesystem::path largeOrder(const QTemporaryDir& folder) {
  Loaded<Order> demo =
      loadOrder(source() / "demo" / "regatta.order.json", loadRules(source() / "resources"));
  Order order = demo.value;
  for (Design& design : order.designs) {
    if (design.outlineFile.empty()) {
      continue;
    }
    design.outline = design.outline.transformed(Angle(), 1.0, {});
    design.outlineSource = OutlineSource::BoundingBox;
    design.outlineFile.clear();
    design.outline = Outline::rectangle(design.width, design.height);
  }
  Design& first = order.designs.front();
  first.outline = star();
  first.outlineSource = OutlineSource::Polygon;
  first.width = Length::fromMm(first.outline.bounds().width());
  first.height = Length::fromMm(first.outline.bounds().height());
  first.blocks.clear();
  first.pieces.clear();
  const std::vector<OrderLine> pattern = order.lines;
  order.lines.clear();
  for (int i = 0; i < kLines; ++i) {
    order.lines.push_back(pattern[static_cast<std::size_t>(i) % pattern.size()]);
    order.lines.back().id = std::to_string(i + 1);
    for (OrderPlacement& placement : order.lines.back().placements) {
      placement.moveDown = Length::fromMm(0.01 * i);  // no two lines ask the same
    }
  }
  const std::filesystem::path file =
      desk::toPath(folder.filePath(QStringLiteral("large.order.json")));
  static_cast<void>(saveOrder(file, order, {}));
  return file;
}

// Of the thread, so that it does not count what else the machine does.
double workedMilliseconds() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

// The longest time between two beats of the event loop while something goes on, and the most work
// that the thread did between two.
class Beat {
 public:
  Beat() {
    clock_.start();
    timer_.setTimerType(Qt::PreciseTimer);
    QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] {
      const double now = static_cast<double>(clock_.nsecsElapsed()) / 1e6;
      longest_.time = std::max(longest_.time, now - last_);
      last_ = now;
      const double worked = workedMilliseconds();
      longest_.work = std::max(longest_.work, worked - lastWorked_);
      lastWorked_ = worked;
    });
    timer_.start(1);
  }
  struct Longest {
    double time = 0.0, work = 0.0;  // milliseconds
  };
  // Since the last call.
  Longest longest() {
    QTest::qWait(20);
    return std::exchange(longest_, {});
  }

 private:
  QElapsedTimer clock_;
  QTimer timer_;
  double last_ = 0.0, lastWorked_ = workedMilliseconds();
  Longest longest_;
};

void measureWindow() {
  const QTemporaryDir folder;
  const auto window = desk(folder, loadRules(source() / "resources"));
  window->resize(1440, 900);
  window->show();
  const std::filesystem::path file = largeOrder(folder);
  window->openShop(source() / "demo" / "workshop.shop.json");
  Beat beat;
  const auto tell = [&](const char* what) {
    const Beat::Longest longest = beat.longest();
    fmt::print(
        "longest without an answer, {} lines, {}: {:.0f} ms, at most {:.0f} ms of own work\n",
        kLines, what, longest.time, longest.work);
  };
  QTest::qWait(300);
  beat.longest();
  const auto wait = [&] {
    if (!QTest::qWaitFor([&] { return planned(*window); }, 120000)) {
      throw std::runtime_error("the order was not planned");
    }
  };
  window->openOrder(file);
  QTest::qWait(50);
  wait();
  tell("opened and planned");
  auto* title = window->findChild<QLineEdit*>(QStringLiteral("orderTitleEdit"));
  title->setText(QStringLiteral("Another"));
  Q_EMIT title->textEdited(title->text());
  Q_EMIT title->editingFinished();
  QTest::qWait(50);
  wait();
  tell("its title changed");
  window->findChild<QAction*>(QStringLiteral("saveOrder"))->trigger();
  if (!QTest::qWaitFor([&] { return !window->isWindowModified(); }, 60000)) {
    throw std::runtime_error("the order was not saved");
  }
  tell("saved");

  auto& table = *window->findChild<TableCanvas*>(QStringLiteral("table"));
  table.setFocus();
  const QPointF at = *table.designAt();
  QTest::mousePress(&table, Qt::LeftButton, {}, at.toPoint());
  std::vector<double> steps;
  std::vector<double> paints;
  QImage picture(table.size(), QImage::Format_ARGB32_Premultiplied);
  for (int i = 1; i <= 60; ++i) {
    const QPointF to = at + QPointF(i % 7, i * 0.7);
    QMouseEvent move(QEvent::MouseMove, to, table.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                     Qt::ControlModifier);
    QElapsedTimer clock;
    clock.start();
    QApplication::sendEvent(&table, &move);
    steps.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    clock.restart();
    table.render(&picture);
    paints.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
  }
  QTest::keyClick(&table, Qt::Key_Escape);
  QTest::mouseRelease(&table, Qt::LeftButton, {}, at.toPoint());
  fmt::print("dragging a design of {} points, ms: planned in {:.1f}, painted in {:.1f}\n", kPoints,
             bench::median(steps), bench::median(paints));
}

}  // namespace

int main(int count, char** words) {
  const std::string what = count > 1 ? words[1] : "";
  // An empty window has no use for fonts.
  std::optional<FontsAhead> fonts;
  if (what != "empty") {
    fonts.emplace();
  }
  QApplication application(count, words);
  if (what == "window") {
    measureWindow();
    return 0;
  }
  if (!what.empty()) {
    return startAs(QString::fromStdString(what), application, fonts);
  }
  measureStart();
  measureWindow();
  return 0;
}
