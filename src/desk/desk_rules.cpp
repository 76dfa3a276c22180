// SPDX-License-Identifier: MIT
#include "creaseline/desk/desk_rules.h"

#include <utility>

#include "creaseline/catalogue/load.h"

namespace creaseline {

DeskRules::DeskRules(std::shared_ptr<const Rules> rules)
    : DeskRules(Load([rules = std::move(rules)] { return rules; })) {
}

DeskRules::DeskRules(Rules rules) : DeskRules(std::make_shared<const Rules>(std::move(rules))) {
}

DeskRules::DeskRules(Load load) : reading_(std::make_shared<Reading>()) {
  reading_->load = std::move(load);
}

void DeskRules::begin() const {
  std::call_once(reading_->begun, [this] {
    reading_->rules = std::async(std::launch::async, std::move(reading_->load)).share();
  });
}

std::shared_ptr<const Rules> DeskRules::get() const {
  begin();
  return reading_->rules.get();
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
  return DeskRules(Load(load));
}

}  // namespace creaseline
