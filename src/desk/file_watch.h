// SPDX-License-Identifier: MIT
// Says when one of a set of files has changed on disk, once per burst of writes.
#pragma once

#include <QDateTime>
#include <QFileSystemWatcher>
#include <QHash>
#include <QObject>
#include <QStringList>
#include <QTimer>

namespace creaseline::desk {

// Editors save by renaming a new file over the old one, which ends a plain watch on the file. So
// the folders are watched too, and after each burst the files are compared by size and time and
// watched again. A file that is still missing when the burst is over counts as changed.
class FileWatch : public QObject {
  Q_OBJECT

 public:
  static constexpr int kSettleMs = 250;  // quiet time that ends a burst

  explicit FileWatch(QObject* parent = nullptr);

  // Replaces the set; the files as they are now count as seen.
  void watch(const QStringList& files);
  [[nodiscard]] QStringList files() const { return files_; }

 Q_SIGNALS:
  void changed(const QStringList& files);

 private:
  struct Stamp {
    bool exists = false;
    qint64 size = 0;
    QDateTime modified;
    bool operator==(const Stamp&) const = default;
  };
  static Stamp stampOf(const QString& file);
  void settle();
  void addPaths();

  QFileSystemWatcher watcher_;
  QTimer settleTimer_;
  QStringList files_;
  QHash<QString, Stamp> seen_;
};

}  // namespace creaseline::desk
