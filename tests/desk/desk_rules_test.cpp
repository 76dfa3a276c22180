// SPDX-License-Identifier: MIT
#include "creaseline/desk/desk_rules.h"

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

TEST_CASE("Rules are read when somebody asks, once for all copies", "[desk][rules]") {
  QObject context;
  const auto rules = DeskRules::read(resourcesFolder(), context, [](const InputError&) {});
  const DeskRules copy = rules;
  rules.begin();
  copy.begin();
  const auto read = copy.get();
  CHECK(read == rules.get());
  CHECK(read->locations.size() == shippedRules().locations.size());
}

TEST_CASE("Rules that cannot be read are told of, and thrown", "[desk][rules]") {
  const QTemporaryDir empty;
  QObject context;
  QString told;
  const auto rules =
      DeskRules::read(toPath(empty.path()), context,
                      [&told](const InputError& error) { told = QString::fromUtf8(error.what()); });
  QTest::qWait(20);
  CHECK(told.isEmpty());  // nobody has asked yet
  rules.begin();
  CHECK(waitFor([&] { return !told.isEmpty(); }));
  CHECK_THROWS_AS(rules.get(), InputError);
}
