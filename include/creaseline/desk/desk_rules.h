// SPDX-License-Identifier: MIT
// The shipped rules, read while the window is being made: nothing needs them before an order.
#pragma once

#include <QObject>
#include <filesystem>
#include <functional>
#include <future>
#include <memory>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/rules.h"

namespace creaseline {

class DeskRules {
 public:
  // There already.
  DeskRules(std::shared_ptr<const Rules> rules);  // NOLINT(google-explicit-constructor)
  DeskRules(Rules rules);                         // NOLINT(google-explicit-constructor)
  // Begins to read them on a thread of their own. If they cannot be read, `failed` is called in the
  // thread of `context`, which must outlive the reading.
  static DeskRules read(const std::filesystem::path& resources, QObject& context,
                        const std::function<void(const InputError&)>& failed);

  // Waits until they are read. Throws InputError as loadRules() does. From any thread.
  [[nodiscard]] std::shared_ptr<const Rules> get() const { return rules_.get(); }

 private:
  explicit DeskRules(std::shared_future<std::shared_ptr<const Rules>> rules);

  std::shared_future<std::shared_ptr<const Rules>> rules_;
};

}  // namespace creaseline
