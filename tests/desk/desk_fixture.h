// SPDX-License-Identifier: MIT
// What the desk's tests share: a copy of the demo in a folder of its own, a window on it, waiting
// for conditions, and readable failures.
#pragma once

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QTreeView>
#include <catch2/catch.hpp>
#include <filesystem>
#include <functional>
#include <memory>
#include <ostream>

#include "creaseline/catalogue/load.h"
#include "creaseline/desk/desk_window.h"
#include "creaseline/planning/planner.h"
#include "desk/planned_order.h"
#include "desk/settings.h"
#include "desk/sheets_dialog.h"
#include "desk/text.h"

namespace Catch {
template <>
struct StringMaker<QString> {
  static std::string convert(const QString& text) { return text.toStdString(); }
};
}  // namespace Catch

namespace creaseline::desk {

inline constexpr int kWaitMs = 20000;

inline std::filesystem::path resourcesFolder() {
  return std::filesystem::path(SOURCE_DIR) / "resources";
}
inline const Rules& shippedRules() {
  static const Rules rules = loadRules(resourcesFolder());
  return rules;
}
inline std::shared_ptr<const Rules> sharedRules() {
  return {&shippedRules(), [](const Rules*) {}};
}
inline bool waitFor(const std::function<bool()>& condition) {
  return QTest::qWaitFor(condition, kWaitMs);
}

// The demo's files, copied so that a test may change them. Most tests need no more than the first
// lines of the order, and plan faster so.
class DemoCopy {
 public:
  static constexpr qsizetype kFewLines = 3;

  explicit DemoCopy(qsizetype lines = kFewLines) {
    std::filesystem::copy(std::filesystem::path(SOURCE_DIR) / "demo", folder(),
                          std::filesystem::copy_options::recursive |
                              std::filesystem::copy_options::overwrite_existing);
    QJsonObject order = QJsonDocument::fromJson(read(this->order())).object();
    QJsonArray kept = order[QStringLiteral("lines")].toArray();
    while (kept.size() > lines) {
      kept.removeLast();
    }
    order[QStringLiteral("lines")] = kept;
    replace(this->order(), QJsonDocument(order).toJson());
  }
  [[nodiscard]] std::filesystem::path folder() const { return toPath(folder_.path()); }
  [[nodiscard]] std::filesystem::path order() const { return folder() / "regatta.order.json"; }
  [[nodiscard]] std::filesystem::path shop() const { return folder() / "workshop.shop.json"; }
  [[nodiscard]] QString settings() const { return folder_.filePath(QStringLiteral("desk.ini")); }

  static QByteArray read(const std::filesystem::path& file) {
    QFile content(pathText(file));
    REQUIRE(content.open(QIODevice::ReadOnly));
    return content.readAll();
  }
  // Written beside and renamed over, as editors do.
  static void replace(const std::filesystem::path& file, const QByteArray& content) {
    const std::filesystem::path fresh = file.parent_path() / "fresh.tmp";
    QFile out(pathText(fresh));
    REQUIRE(out.open(QIODevice::WriteOnly));
    REQUIRE(out.write(content) == content.size());
    out.close();
    std::filesystem::rename(fresh, file);
  }
  // Replaces the first occurrence, which must exist.
  static void edit(const std::filesystem::path& file, const QByteArray& from,
                   const QByteArray& to) {
    QByteArray content = read(file);
    const qsizetype at = content.indexOf(from);
    REQUIRE(at >= 0);
    content.replace(at, from.size(), to);
    replace(file, content);
  }

 private:
  QTemporaryDir folder_;
};

// The demo's first lines planned without a window; made once for all tests that only read it.
inline std::shared_ptr<const PlannedOrder> plannedDemo() {
  static const std::shared_ptr<const PlannedOrder> planned = [] {
    const DemoCopy demo;
    auto order = std::make_shared<const Order>(loadOrder(demo.order(), shippedRules()).value);
    auto shop = std::make_shared<const Shop>(loadShop(demo.shop(), shippedRules()).value);
    auto plan = std::make_shared<const Plan>(planOrder(*order, *shop, shippedRules()));
    const UnitChoice units = shop->units;
    return std::make_shared<const PlannedOrder>(order, shop, plan, sharedRules(), units);
  }();
  return planned;
}

inline const Order& demoOrder() {
  return *plannedDemo()->order();
}

// Off screen a second window is not made active by being shown, as it is on a desktop.
inline void activate(QWidget& window) {
  QApplication::setActiveWindow(&window);
  REQUIRE(waitFor([&window] { return QApplication::activeWindow() == &window; }));
}

// A window on a copy of the demo, shown and active.
class DeskOnDemo {
 public:
  explicit DeskOnDemo(qsizetype lines = DemoCopy::kFewLines, Language language = Language::English)
      : demo(lines) {
    if (language != Language::English) {
      Settings(demo.settings()).setLanguage(language);
    }
    window = std::make_unique<DeskWindow>(shippedRules(), resourcesFolder(), demo.settings());
    window->resize(1440, 900);
    window->show();
    REQUIRE(QTest::qWaitForWindowActive(window.get()));
  }
  void openDemo() {
    window->openShop(demo.shop());
    window->openOrder(demo.order());
    REQUIRE(waitForPlan());
  }
  // It can be copied as soon as it is on screen and up to date.
  bool waitForPlan() {
    return waitFor([this] { return action("copyPlan").isEnabled(); });
  }
  template <class T>
  T& find(const char* name) {
    T* found = window->findChild<T*>(QString::fromLatin1(name));
    CAPTURE(name);
    REQUIRE(found != nullptr);
    return *found;
  }
  // Returns once the order is in its file.
  void save() {
    action("saveOrder").trigger();
    REQUIRE(waitFor([this] { return !window->isWindowModified(); }));
  }
  // By its action; returns once the first page is on show.
  SheetsDialog& openSheets(const char* by) {
    action(by).trigger();
    auto& sheets = find<SheetsDialog>("sheets");
    REQUIRE(QTest::qWaitForWindowActive(&sheets));
    REQUIRE(waitFor([&] { return !find<SheetPreview>("sheetPreview").picture().isNull(); }));
    return sheets;
  }
  QAction& action(const char* name) { return find<QAction>(name); }
  QString label(const char* name) { return find<QLabel>(name).text(); }
  QTreeView& order() { return find<QTreeView>("order"); }
  QListView& sizes() { return find<QListView>("sizes"); }
  QListView& findings() { return find<QListView>("findings"); }

  DemoCopy demo;
  std::unique_ptr<DeskWindow> window;
};

inline QString undoText(DeskOnDemo& desk) {
  return desk.action("undo").text();
}

// Answers the next file dialog with a path, typed.
inline void answerFileDialog(DeskOnDemo& desk, const std::filesystem::path& file) {
  auto* timer = new QTimer(desk.window.get());
  timer->setInterval(50);
  QObject::connect(timer, &QTimer::timeout, desk.window.get(), [timer, file] {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    if (dialog == nullptr) {
      return;
    }
    timer->stop();
    auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
    name->setText(pathText(file));
    QTest::keyClick(name, Qt::Key_Return);
  });
  timer->start();
}

// Clicks the middle of an item, as a person would.
inline void clickItem(QAbstractItemView& view, const QModelIndex& index) {
  REQUIRE(index.isValid());
  view.scrollTo(index);
  QTest::mouseClick(view.viewport(), Qt::LeftButton, Qt::NoModifier,
                    view.visualRect(index).center());
}

}  // namespace creaseline::desk
