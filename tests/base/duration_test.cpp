// SPDX-License-Identifier: MIT
// Times as they stand in the defaults, and as run cards show them.
#include "creaseline/base/duration.h"

#include <catch2/catch.hpp>

using namespace creaseline;

TEST_CASE("a time is read with its unit", "[base][duration]") {
  const auto milliseconds = [](std::string_view text) {
    return parseDuration(text).value().milliseconds();
  };
  CHECK(milliseconds("8 s") == 8'000);
  CHECK(milliseconds("90sec") == 90'000);
  CHECK(milliseconds("1 second") == 1'000);
  CHECK(milliseconds("2 min") == 120'000);
  CHECK(milliseconds("1,5 minutes") == 90'000);
  CHECK(milliseconds("1 1/2 h") == 5'400'000);
  CHECK(milliseconds("0 s") == 0);
  CHECK(milliseconds("0.0004 s") == 0);
  CHECK(milliseconds("1000 hours") == 3'600'000'000);
}

TEST_CASE("what is not one time is refused with what to write instead", "[base][duration]") {
  for (const char* text :
       {"", "s", "8", "8 seks", "8 s 5", "2 min 30 s", "-1 s", "1001 h", "8 mm", "inf s"}) {
    CAPTURE(text);
    const Result<Duration> result = parseDuration(text);
    REQUIRE_FALSE(result.ok());
    CHECK(result.message().find(';') != std::string::npos);
  }
}

TEST_CASE("a time is shown to the second below ten minutes, else to the minute",
          "[base][duration]") {
  const auto shown = [](double seconds) { return formatDuration(Duration::fromSeconds(seconds)); };
  CHECK(shown(0.0) == "0 s");
  CHECK(shown(0.5) == "1 s");
  CHECK(shown(45.4) == "45 s");
  CHECK(shown(59.6) == "1 min");
  CHECK(shown(120.0) == "2 min");
  CHECK(shown(570.0) == "9 min 30 s");
  CHECK(shown(599.4) == "9 min 59 s");
  CHECK(shown(599.6) == "10 min");
  CHECK(shown(1'525.0) == "25 min");
  CHECK(shown(3'570.0) == "1 h");
  CHECK(shown(11'100.0) == "3 h 5 min");
  CHECK(shown(90'000.0) == "25 h");
}

TEST_CASE("sums of times do not depend on their order", "[base][duration]") {
  Duration forwards, backwards;
  for (int i = 1; i <= 1000; ++i) {
    forwards += Duration::fromSeconds(i / 7.0);
    backwards += Duration::fromSeconds((1001 - i) / 7.0);
  }
  CHECK(forwards == backwards);
  CHECK(Duration::fromSeconds(1.5) * 3 == Duration::fromMilliseconds(4'500));
}
