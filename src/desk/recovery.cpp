// SPDX-License-Identifier: MIT
#include "desk/recovery.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>
#include <algorithm>
#include <utility>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/save.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

const QString kDraft = QStringLiteral("draft.order.json");
const QString kAbout = QStringLiteral("about.json");
const QString kLock = QStringLiteral("lock");

std::unique_ptr<QLockFile> lockOf(const QString& folder) {
  auto lock = std::make_unique<QLockFile>(folder + QLatin1Char('/') + kLock);
  // A lock is given up by the end of its process alone, never by age.
  lock->setStaleLockTime(0);
  return lock;
}

}  // namespace

Recovery::Recovery(const QString& folder, Document& document, QObject* parent)
    : QObject(parent), folder_(folder), document_(document) {
  for (QTimer* timer : {&quiet_, &most_}) {
    timer->setSingleShot(true);
    connect(timer, &QTimer::timeout, this, &Recovery::keep);
  }
  quiet_.setInterval(kQuietMs);
  most_.setInterval(kMostMs);
  connect(&document_, &Document::edited, this, &Recovery::schedule);
  connect(&document_, &Document::recoveryEnded, this, [this](bool inHand) {
    auto work = std::exchange(awaited_, std::nullopt);
    if (inHand) {
      takenOver_ = std::move(work);
    }
  });
  connect(&document_, &Document::modifiedChanged, this, [this](bool modified) {
    if (modified) {
      schedule();
    } else {
      clear();
    }
  });
}

Recovery::~Recovery() {
  clear();
}

void Recovery::takeUp(const LeftWork& work) {
  // What is still awaited is let go by that and stays where it is.
  auto before = std::exchange(awaited_, work);
  try {
    document_.recover(work.orderFile, work.draft);
  } catch (...) {
    awaited_ = std::move(before);
    throw;
  }
}

void Recovery::schedule() {
  quiet_.start();
  if (!most_.isActive()) {
    most_.start();
  }
}

bool Recovery::takeFolder() {
  if (!mine_.isEmpty()) {
    return true;
  }
  const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces);
  const QString made = folder_ + QLatin1Char('/') + name;
  if (!QDir().mkpath(made)) {
    return false;
  }
  QFile::setPermissions(made, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  lock_ = lockOf(made);
  if (!lock_->tryLock(0)) {
    lock_.reset();
    return false;
  }
  mine_ = made;
  return true;
}

void Recovery::keep() {
  quiet_.stop();
  most_.stop();
  if (!document_.modified()) {
    return;
  }
  try {
    if (!takeFolder()) {
      throw OutputError(toUtf8(folder_), "the folder cannot be made");
    }
    const std::filesystem::path folder = toPath(mine_);
    const Order& order = *document_.orderInHand();
    SaveStyle style;
    style.folder = folder;
    writeFileAtomically(folder / toPath(kDraft), recoveryText(order, document_.original(), style));
    const QJsonObject about{
        {QStringLiteral("order-file"), document_.orderFile()},
        {QStringLiteral("order-name"), toQString(order.id + " " + order.title).trimmed()},
        {QStringLiteral("kept"), QDateTime::currentDateTimeUtc().toString(Qt::ISODate)}};
    writeFileAtomically(folder / toPath(kAbout), QJsonDocument(about).toJson().toStdString());
    complained_ = false;
    if (const auto old = std::exchange(takenOver_, std::nullopt)) {
      drop(*old);
    }
  } catch (const std::exception& error) {
    if (!std::exchange(complained_, true)) {
      Q_EMIT notKept(toQString(error.what()));
    }
  }
}

void Recovery::clear() {
  quiet_.stop();
  most_.stop();
  if (mine_.isEmpty()) {
    return;
  }
  lock_.reset();
  QDir(mine_).removeRecursively();
  mine_.clear();
}

std::vector<LeftWork> Recovery::leftWork() const {
  std::vector<LeftWork> result;
  const QDir all(folder_);
  for (const QString& name : all.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QString folder = all.absoluteFilePath(name);
    if (folder == QFileInfo(mine_).absoluteFilePath()) {
      continue;
    }
    const auto lock = lockOf(folder);
    if (!lock->tryLock(0)) {
      continue;  // another desk is at work there
    }
    LeftWork work;
    work.folder = toPath(folder);
    work.draft = toPath(folder + QLatin1Char('/') + kDraft);
    QFile about(folder + QLatin1Char('/') + kAbout);
    if (!QFileInfo::exists(pathText(work.draft)) || !about.open(QIODevice::ReadOnly)) {
      continue;  // ended before anything was kept
    }
    const QJsonObject said = QJsonDocument::fromJson(about.readAll()).object();
    work.orderFile = said[QStringLiteral("order-file")].toString();
    work.orderName = said[QStringLiteral("order-name")].toString();
    work.kept = QDateTime::fromString(said[QStringLiteral("kept")].toString(), Qt::ISODate);
    result.push_back(std::move(work));
  }
  std::sort(result.begin(), result.end(),
            [](const LeftWork& left, const LeftWork& right) { return left.kept > right.kept; });
  return result;
}

void Recovery::drop(const LeftWork& work) {
  QDir(pathText(work.folder)).removeRecursively();
}

}  // namespace creaseline::desk
