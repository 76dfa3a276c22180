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
const QString kShopDraft = QStringLiteral("draft.shop.json");
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
  connect(&document_, &Document::shopEdited, this, &Recovery::schedule);
  connect(&document_, &Document::recoveryEnded, this, [this](bool inHand) {
    auto work = std::exchange(awaited_, std::nullopt);
    if (inHand) {
      takenOver_ = std::move(work);
    }
  });
  for (const auto changed : {&Document::modifiedChanged, &Document::shopModifiedChanged}) {
    connect(&document_, changed, this, [this] {
      if (document_.modified() || document_.shopModified()) {
        schedule();
      } else {
        clear();
      }
    });
  }
}

Recovery::~Recovery() {
  clear();
}

void Recovery::takeUp(const LeftWork& work) {
  // What is still awaited is let go by that and stays where it is.
  auto before = std::exchange(awaited_, work);
  try {
    document_.recover({work.orderFile, work.draft, work.shopFile, work.shopDraft});
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
  if (!document_.modified() && !document_.shopModified()) {
    return;
  }
  try {
    if (!takeFolder()) {
      throw OutputError(toUtf8(folder_), "the folder cannot be made");
    }
    keepDrafts(toPath(mine_));
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

// What is saved meanwhile is not to come back.
void Recovery::keepDrafts(const std::filesystem::path& folder) {
  SaveStyle style;
  style.folder = folder;
  const auto keepOne = [&folder](bool modified, const QString& name, const auto& text) {
    const std::filesystem::path file = folder / toPath(name);
    if (modified) {
      writeFileAtomically(file, text());
    } else {
      std::filesystem::remove(file);
    }
  };
  keepOne(document_.modified(), kDraft,
          [&] { return recoveryText(*document_.orderInHand(), document_.original(), style); });
  keepOne(document_.shopModified(), kShopDraft,
          [&] { return shopText(*document_.shopInHand(), document_.shopOriginal(), style); });
  const Order* order = document_.orderInHand().get();
  const QString name =
      order != nullptr ? toQString(order->id + " " + order->title).trimmed() : QString();
  const QJsonObject about{
      {QStringLiteral("order-file"), document_.orderFile()},
      {QStringLiteral("order-name"), name},
      {QStringLiteral("shop-file"), document_.shopFile()},
      {QStringLiteral("kept"), QDateTime::currentDateTimeUtc().toString(Qt::ISODate)}};
  writeFileAtomically(folder / toPath(kAbout), QJsonDocument(about).toJson().toStdString());
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
    const auto kept = [&folder](const QString& draft) {
      const QString file = folder + QLatin1Char('/') + draft;
      return QFileInfo::exists(file) ? toPath(file) : std::filesystem::path();
    };
    work.draft = kept(kDraft);
    work.shopDraft = kept(kShopDraft);
    QFile about(folder + QLatin1Char('/') + kAbout);
    if ((work.draft.empty() && work.shopDraft.empty()) || !about.open(QIODevice::ReadOnly)) {
      continue;  // ended before anything was kept
    }
    const QJsonObject said = QJsonDocument::fromJson(about.readAll()).object();
    work.orderFile = said[QStringLiteral("order-file")].toString();
    work.shopFile = said[QStringLiteral("shop-file")].toString();
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
