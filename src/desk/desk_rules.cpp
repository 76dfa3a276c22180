// SPDX-License-Identifier: MIT
#include "creaseline/desk/desk_rules.h"

#include <utility>

#include "creaseline/catalogue/load.h"

namespace creaseline {

DeskRules::DeskRules(std::shared_ptr<const Rules> rules) {
  std::promise<std::shared_ptr<const Rules>> there;
  there.set_value(std::move(rules));
  rules_ = there.get_future().share();
}

DeskRules::DeskRules(Rules rules) : DeskRules(std::make_shared<const Rules>(std::move(rules))) {
}

DeskRules::DeskRules(std::shared_future<std::shared_ptr<const Rules>> rules)
    : rules_(std::move(rules)) {
}

DeskRules DeskRules::read(const std::filesystem::path& resources, QObject& context,
                          const std::function<void(const InputError&)>& failed) {
  const auto load = [resources, &context, failed]() -> std::shared_ptr<const Rules> {
    try {
      return std::make_shared<const Rules>(loadRules(resources));
    } catch (const InputError& error) {
      QMetaObject::invokeMethod(
          &context, [failed, error] { failed(error); }, Qt::QueuedConnection);
      throw;
    }
  };
  return DeskRules(std::async(std::launch::async, load).share());
}

}  // namespace creaseline
