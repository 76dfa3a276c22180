// SPDX-License-Identifier: MIT
// Debounced watching of files and their folders.
#include "desk/file_watch.h"

#include <QFileInfo>

namespace creaseline::desk {

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
  settleTimer_.setSingleShot(true);
  settleTimer_.setInterval(kSettleMs);
  connect(&settleTimer_, &QTimer::timeout, this, &FileWatch::settle);
  const auto restart = [this] { settleTimer_.start(); };
  connect(&watcher_, &QFileSystemWatcher::fileChanged, this, restart);
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, restart);
}

void FileWatch::watch(const QStringList& files) {
  settleTimer_.stop();
  if (!watcher_.files().isEmpty()) {
    watcher_.removePaths(watcher_.files());
  }
  if (!watcher_.directories().isEmpty()) {
    watcher_.removePaths(watcher_.directories());
  }
  files_ = files;
  files_.removeDuplicates();
  seen_.clear();
  addPaths();
  for (const QString& file : std::as_const(files_)) {
    seen_.insert(file, stampOf(file));
  }
}

FileWatch::Stamp FileWatch::stampOf(const QString& file) {
  const QFileInfo info(file);
  if (!info.exists()) {
    return {};
  }
  return {true, info.size(), info.lastModified()};
}

void FileWatch::addPaths() {
  for (const QString& file : std::as_const(files_)) {
    const QFileInfo info(file);
    if (info.exists() && !watcher_.files().contains(file)) {
      watcher_.addPath(file);
    }
    const QString folder = info.absolutePath();
    if (QFileInfo::exists(folder) && !watcher_.directories().contains(folder)) {
      watcher_.addPath(folder);
    }
  }
}

void FileWatch::settle() {
  addPaths();
  QStringList changes;
  for (const QString& file : std::as_const(files_)) {
    const Stamp now = stampOf(file);
    if (seen_.value(file) != now) {
      seen_.insert(file, now);
      changes.append(file);
    }
  }
  if (!changes.isEmpty()) {
    Q_EMIT changed(changes);
  }
}

}  // namespace creaseline::desk
