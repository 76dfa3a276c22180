// SPDX-License-Identifier: MIT
// Work on a thread of its own, one piece after the other: none overtakes another, none is dropped.
#pragma once

#include <QMetaObject>
#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <deque>
#include <functional>
#include <memory>
#include <utility>

namespace creaseline::desk {

class OrderedJobs {
 public:
  // `context` lives in the GUI thread and outlives the jobs.
  explicit OrderedJobs(QObject& context) : context_(context) { pool_.setMaxThreadCount(1); }
  // Waits for all that was started; what came of it is not told any more.
  ~OrderedJobs() { pool_.waitForDone(); }
  OrderedJobs(const OrderedJobs&) = delete;
  OrderedJobs& operator=(const OrderedJobs&) = delete;

  // `work` must hold what it looks at and throw nothing; `done` gets its result in the GUI thread.
  template <class Work, class Done>
  void start(Work work, Done done) {
    auto job = std::make_shared<Job>();
    jobs_.push_back(job);
    pool_.start([this, job, work = std::move(work), done = std::move(done)] {
      auto result = std::make_shared<decltype(work())>(work());
      job->tell = [result, done] { done(std::move(*result)); };
      job->ready = true;
      QMetaObject::invokeMethod(
          &context_, [this] { tellReady(); }, Qt::QueuedConnection);
    });
  }
  // Waits until all is done and told.
  void finish() {
    while (running()) {
      pool_.waitForDone();
      tellReady();
    }
  }
  // Whether something is still to be told.
  [[nodiscard]] bool running() const { return !jobs_.empty(); }

 private:
  struct Job {
    std::function<void()> tell;
    std::atomic<bool> ready = false;
  };

  void tellReady() {
    while (!jobs_.empty() && jobs_.front()->ready) {
      const auto job = std::move(jobs_.front());
      jobs_.pop_front();
      job->tell();
    }
  }

  QObject& context_;
  QThreadPool pool_;
  std::deque<std::shared_ptr<Job>> jobs_;
};

}  // namespace creaseline::desk
