// SPDX-License-Identifier: MIT
#include "desk/file_watch.h"

#include <QSignalSpy>

#include "desk_fixture.h"

using namespace creaseline::desk;

namespace {

void write(const QString& file, const QByteArray& content) {
  QFile out(file);
  REQUIRE(out.open(QIODevice::WriteOnly));
  out.write(content);
}

}  // namespace

TEST_CASE("A watched file is seen to change each time it is renamed over", "[desk][watch]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("a.json"));
  write(file, "0");
  FileWatch watch;
  watch.watch({file});
  QSignalSpy changes(&watch, &FileWatch::changed);
  for (int round = 1; round <= 3; ++round) {
    DemoCopy::replace(toPath(file), QByteArray(round + 1, 'x'));
    CAPTURE(round);
    CHECK(waitFor([&] { return changes.size() == round; }));
  }
}

TEST_CASE("A burst of writes is one change", "[desk][watch]") {
  const QTemporaryDir folder;
  const QString first = folder.filePath(QStringLiteral("a.json"));
  const QString second = folder.filePath(QStringLiteral("b.json"));
  write(first, "0");
  write(second, "0");
  FileWatch watch;
  watch.watch({first, second, first});
  QSignalSpy changes(&watch, &FileWatch::changed);
  for (int i = 2; i < 8; ++i) {
    write(first, QByteArray(i, 'x'));
    write(second, QByteArray(i, 'y'));
    QTest::qWait(FileWatch::kSettleMs / 10);
  }
  REQUIRE(waitFor([&] { return !changes.isEmpty(); }));
  QTest::qWait(3 * FileWatch::kSettleMs);
  CHECK(changes.size() == 1);
  CHECK(changes.first().first().toStringList().size() == 2);
}

TEST_CASE("A file that goes and comes back is seen both times", "[desk][watch]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("a.json"));
  write(file, "0");
  FileWatch watch;
  watch.watch({file});
  QSignalSpy changes(&watch, &FileWatch::changed);
  REQUIRE(QFile::remove(file));
  CHECK(waitFor([&] { return changes.size() == 1; }));
  write(file, "00");
  CHECK(waitFor([&] { return changes.size() == 2; }));
}

TEST_CASE("Other files in the folder are nobody's business", "[desk][watch]") {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("a.json"));
  write(file, "0");
  FileWatch watch;
  watch.watch({file});
  const QSignalSpy changes(&watch, &FileWatch::changed);
  write(folder.filePath(QStringLiteral("other.json")), "1");
  QTest::qWait(4 * FileWatch::kSettleMs);
  CHECK(changes.isEmpty());
}
