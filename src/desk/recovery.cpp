// SPDX-License-Identifier: MIT
#include "desk/recovery.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLockFile>
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

// Where this session keeps its work. Made, locked and removed by the jobs alone.
struct Recovery::Place {
  QString folder;
  std::unique_ptr<QLockFile> lock;

  void take();
};

// The work at one moment; what is null is saved.
struct Recovery::Drafts {
  std::shared_ptr<const Order> order;
  Original<Order> orderOriginal;
  std::shared_ptr<const Shop> shop;
  Original<Shop> shopOriginal;
  QJsonObject about;

  void write(const std::filesystem::path& folder) const;
};

void Recovery::Place::take() {
  if (lock) {
    return;
  }
  const std::string refused = "the folder cannot be made";
  if (!QDir().mkpath(folder)) {
    throw OutputError(toUtf8(folder), refused);
  }
  QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  auto made = lockOf(folder);
  if (!made->tryLock(0)) {
    throw OutputError(toUtf8(folder), refused);
  }
  lock = std::move(made);
}

void Recovery::Drafts::write(const std::filesystem::path& folder) const {
  SaveStyle style;
  style.folder = folder;
  const auto writeOne = [&folder](const auto& value, const QString& name, const auto& text) {
    const std::filesystem::path file = folder / toPath(name);
    if (value) {
      writeFileAtomically(file, text());
    } else {
      std::filesystem::remove(file);  // what is saved meanwhile is not to come back
    }
  };
  writeOne(order, kDraft, [&] { return recoveryText(*order, orderOriginal, style); });
  writeOne(shop, kShopDraft, [&] { return shopText(*shop, shopOriginal, style); });
  writeFileAtomically(folder / toPath(kAbout), QJsonDocument(about).toJson().toStdString());
}

Recovery::Recovery(const QString& folder, Document& document, QObject* parent)
    : QObject(parent), folder_(folder), document_(document), jobs_(*this) {
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

// Texts are built and written elsewhere: with a large order both take longer than a key press.
void Recovery::keep() {
  quiet_.stop();
  most_.stop();
  if (!document_.modified() && !document_.shopModified()) {
    return;
  }
  if (!mine_) {
    mine_ = std::make_shared<Place>();
    mine_->folder = folder_ + QLatin1Char('/') + QUuid::createUuid().toString(QUuid::WithoutBraces);
  }
  // What is taken over while this is being written is not in it.
  jobs_.start(
      [place = mine_, drafts = drafts(), replaced = takenOver_]() -> QString {
        try {
          place->take();
          drafts.write(toPath(place->folder));
        } catch (const std::exception& error) {
          return toQString(error.what());
        }
        if (replaced) {
          drop(*replaced);
        }
        return {};
      },
      [this, replaced = takenOver_](const QString& problem) { told(replaced, problem); });
}

void Recovery::told(const std::optional<LeftWork>& replaced, const QString& problem) {
  if (!problem.isEmpty()) {
    if (!std::exchange(complained_, true)) {
      Q_EMIT notKept(problem);
    }
    return;
  }
  complained_ = false;
  if (replaced && takenOver_ && takenOver_->folder == replaced->folder) {
    takenOver_.reset();
  }
}

Recovery::Drafts Recovery::drafts() const {
  Drafts drafts;
  if (document_.modified()) {
    drafts.order = document_.orderInHand();
    drafts.orderOriginal = document_.original();
  }
  if (document_.shopModified()) {
    drafts.shop = document_.shopInHand();
    drafts.shopOriginal = document_.shopOriginal();
  }
  const Order* order = document_.orderInHand().get();
  const QString name =
      order != nullptr ? toQString(order->id + " " + order->title).trimmed() : QString();
  drafts.about = {{QStringLiteral("order-file"), document_.orderFile()},
                  {QStringLiteral("order-name"), name},
                  {QStringLiteral("shop-file"), document_.shopFile()},
                  {QStringLiteral("kept"), QDateTime::currentDateTimeUtc().toString(Qt::ISODate)}};
  return drafts;
}

void Recovery::clear() {
  quiet_.stop();
  most_.stop();
  if (!mine_) {
    return;
  }
  jobs_.start(
      [place = std::exchange(mine_, nullptr)] {
        place->lock.reset();
        QDir(place->folder).removeRecursively();
        return true;
      },
      [](bool) {});
}

std::vector<LeftWork> Recovery::leftWork() const {
  std::vector<LeftWork> result;
  const QDir all(folder_);
  for (const QString& name : all.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QString folder = all.absoluteFilePath(name);
    if (mine_ && folder == QFileInfo(mine_->folder).absoluteFilePath()) {
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
