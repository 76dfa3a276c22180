// SPDX-License-Identifier: MIT
#include "desk/plan_runner.h"

#include "desk_fixture.h"

using namespace creaseline;
using namespace creaseline::desk;

namespace {

std::shared_ptr<const Rules> rules() {
  return {&shippedRules(), [](const Rules*) {}};
}

PlanJob demoJob(const std::string& orderId) {
  auto order = std::make_shared<Order>(*plannedDemo()->order());
  order->id = orderId;
  PlanJob job;
  job.order = std::move(order);
  job.shop = std::shared_ptr<const Shop>(plannedDemo(), plannedDemo()->shop());
  return job;
}

}  // namespace

TEST_CASE("The newest request wins and older ones are never reported", "[desk][runner]") {
  PlanRunner runner(rules());
  std::vector<std::string> reported;
  QObject::connect(&runner, &PlanRunner::finished, &runner, [&](const PlanOutcome& outcome) {
    REQUIRE(outcome.plan != nullptr);
    reported.push_back(outcome.plan->orderId);
  });
  for (int i = 0; i < 6; ++i) {
    runner.request(demoJob(std::to_string(i)));
  }
  CHECK(runner.busy());
  REQUIRE(waitFor([&] { return !runner.busy(); }));
  CHECK(reported == std::vector<std::string>{"5"});
}

TEST_CASE("A cancelled request reports nothing and the next one works", "[desk][runner]") {
  PlanRunner runner(rules());
  int reports = 0;
  QObject::connect(&runner, &PlanRunner::finished, &runner, [&](const PlanOutcome&) { ++reports; });
  runner.request(demoJob("first"));
  runner.cancel();
  CHECK_FALSE(runner.busy());
  runner.request(demoJob("second"));
  REQUIRE(waitFor([&] { return !runner.busy(); }));
  CHECK(reports == 1);
}

TEST_CASE("A runner may go while it plans", "[desk][runner]") {
  auto runner = std::make_unique<PlanRunner>(rules());
  bool reported = false;
  QObject::connect(runner.get(), &PlanRunner::finished, runner.get(),
                   [&](const PlanOutcome&) { reported = true; });
  runner->request(demoJob("gone"));
  runner.reset();
  QCoreApplication::processEvents();
  CHECK_FALSE(reported);
}

TEST_CASE("A broken file comes back as its error with the stage", "[desk][runner]") {
  const DemoCopy demo;
  DemoCopy::replace(demo.shop(), "{\"format\": \"creaseline-shop\",");
  PlanRunner runner(rules());
  PlanOutcome got;
  QObject::connect(&runner, &PlanRunner::finished, &runner,
                   [&](const PlanOutcome& outcome) { got = outcome; });
  PlanJob job;
  job.orderFile = demo.order();
  job.shopFile = demo.shop();
  runner.request(job);
  REQUIRE(waitFor([&] { return !runner.busy(); }));
  REQUIRE(got.error.has_value());
  CHECK(got.stage == PlanStage::Shop);
  CHECK(got.error->file == demo.shop().string());
  CHECK_FALSE(got.error->expected.empty());
  CHECK(got.order != nullptr);
  CHECK(got.plan == nullptr);
}

TEST_CASE("Progress grows from nothing to at most all", "[desk][runner]") {
  PlanRunner runner(rules());
  std::vector<double> shares;
  QObject::connect(&runner, &PlanRunner::progressed, &runner,
                   [&](double share) { shares.push_back(share); });
  runner.request(demoJob("progress"));
  REQUIRE(waitFor([&] { return !runner.busy(); }));
  CHECK_FALSE(shares.empty());
  CHECK(std::is_sorted(shares.begin(), shares.end()));
  CHECK(shares.back() <= 1.0);
}
