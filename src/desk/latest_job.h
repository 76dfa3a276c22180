// SPDX-License-Identifier: MIT
// Work on a thread of its own of which only the newest counts: what was asked for before is not
// reported any more.
#pragma once

#include <QMetaObject>
#include <QObject>
#include <QThreadPool>
#include <memory>
#include <utility>

namespace creaseline::desk {

class LatestJob {
 public:
  // `context` lives in the GUI thread and outlives the job.
  explicit LatestJob(QObject& context) : context_(context) { pool_.setMaxThreadCount(1); }
  ~LatestJob() {
    forget();
    pool_.waitForDone();
  }
  LatestJob(const LatestJob&) = delete;
  LatestJob& operator=(const LatestJob&) = delete;

  // `work` must hold what it looks at; `done` gets its result in the GUI thread.
  template <class Work, class Done>
  void start(Work work, Done done) {
    forget();
    pool_.start([this, generation = generation_, work = std::move(work), done = std::move(done)] {
      auto result = std::make_shared<decltype(work())>(work());
      QMetaObject::invokeMethod(
          &context_,
          [this, generation, result, done] {
            if (generation == generation_) {
              running_ = false;
              done(std::move(*result));
            }
          },
          Qt::QueuedConnection);
    });
    running_ = true;
  }
  void forget() {
    ++generation_;
    running_ = false;
    pool_.clear();
  }
  [[nodiscard]] bool running() const { return running_; }

 private:
  QObject& context_;
  QThreadPool pool_;
  quint64 generation_ = 0;
  bool running_ = false;
};

}  // namespace creaseline::desk
