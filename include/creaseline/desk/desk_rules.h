// SPDX-License-Identifier: MIT
// The shipped rules, read beside the window: nothing needs them before an order.
#pragma once

#include <QObject>
#include <filesystem>
#include <functional>
#include <future>
#include <memory>
#include <mutex>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/rules.h"

namespace creaseline {

class DeskRules {
 public:
  // There already.
  DeskRules(std::shared_ptr<const Rules> rules);  // NOLINT(google-explicit-constructor)
  DeskRules(Rules rules);                         // NOLINT(google-explicit-constructor)
  // To be read on a thread of their own, when begin() or get() asks for it. If they cannot be read,
  // `failed` is called in the thread of `context`, which must outlive the reading.
  static DeskRules read(const std::filesystem::path& resources, QObject& context,
                        const std::function<void(const InputError&)>& failed);

  // Begins to read them, unless that has begun. From any thread.
  void begin() const;
  // Waits until they are read. Throws InputError as loadRules() does. From any thread.
  [[nodiscard]] std::shared_ptr<const Rules> get() const;

 private:
  using Load = std::function<std::shared_ptr<const Rules>()>;
  // One for all copies.
  struct Reading {
    std::once_flag begun;
    Load load;
    std::shared_future<std::shared_ptr<const Rules>> rules;
  };
  explicit DeskRules(Load load);

  std::shared_ptr<Reading> reading_;
};

}  // namespace creaseline
