// SPDX-License-Identifier: MIT
// The desk: start of the program and its memory beside those of an empty window of Qt's, in turns
// and in processes of their own; the table while a design of 2,000 points is dragged; the longest
// time for which the window does not answer, with an order of 500 lines.
#include <fmt/format.h>
#include <sys/resource.h>

#include <QAction>
#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QMouseEvent>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <cmath>
#include <filesystem>
#include <iostream>
#include <numbers>

#include "bench/timing.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/catalogue/save.h"
#include "creaseline/desk/desk_window.h"
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

std::unique_ptr<DeskWindow> desk(const QTemporaryDir& folder) {
  const std::filesystem::path resources = source() / "resources";
  return std::make_unique<DeskWindow>(loadRules(resources), resources,
                                      folder.filePath(QStringLiteral("desk.ini")));
}

int startAs(const QString& what) {
  const QTemporaryDir folder;
  std::unique_ptr<QWidget> window;
  if (what == QStringLiteral("empty")) {
    window = std::make_unique<QMainWindow>();
    window->resize(1440, 900);
  } else {
    window = desk(folder);
  }
  window->show();
  if (!QTest::qWaitForWindowExposed(window.get())) {
    return 1;
  }
  if (what == QStringLiteral("demo")) {
    auto& shown = static_cast<DeskWindow&>(*window);
    shown.openShop(source() / "demo" / "workshop.shop.json");
    shown.openOrder(source() / "demo" / "regatta.order.json");
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

// The longest time between two beats of the event loop while something goes on.
class Beat {
 public:
  Beat() {
    clock_.start();
    timer_.setTimerType(Qt::PreciseTimer);
    QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] {
      const double now = static_cast<double>(clock_.nsecsElapsed()) / 1e6;
      longest_ = std::max(longest_, now - last_);
      last_ = now;
    });
    timer_.start(1);
  }
  // Milliseconds since the last call.
  double longest() {
    QTest::qWait(20);
    return std::exchange(longest_, 0.0);
  }

 private:
  QElapsedTimer clock_;
  QTimer timer_;
  double last_ = 0.0, longest_ = 0.0;
};

void measureWindow() {
  const QTemporaryDir folder;
  const auto window = desk(folder);
  window->resize(1440, 900);
  window->show();
  const std::filesystem::path file = largeOrder(folder);
  window->openShop(source() / "demo" / "workshop.shop.json");
  Beat beat;
  const auto tell = [&](const char* what) {
    fmt::print("longest without an answer, {} lines, {}: {:.0f} ms\n", kLines, what,
               beat.longest());
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
  const QApplication application(count, words);
  if (count > 1 && QString::fromLocal8Bit(words[1]) == QStringLiteral("window")) {
    measureWindow();
    return 0;
  }
  if (count > 1) {
    return startAs(QString::fromLocal8Bit(words[1]));
  }
  measureStart();
  measureWindow();
  return 0;
}
