// SPDX-License-Identifier: MIT
// Error messages and the names of enumerators.
#include "creaseline/base/error.h"

#include <catch2/catch.hpp>
#include <string>

#include "creaseline/base/identifier.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/base/result.h"
#include "support/spoken.h"

namespace creaseline {
namespace {

enum class Side { Left, Right, Unnamed };

struct FrameTag;
struct DesignTag;
static_assert(!std::is_convertible_v<Identifier<FrameTag>, Identifier<DesignTag>>);
static_assert(!std::is_constructible_v<Identifier<FrameTag>, Identifier<DesignTag>>);
static_assert(!std::is_convertible_v<std::string, Identifier<FrameTag>>);

}  // namespace

template <>
struct EnumNames<Side> {
  static constexpr std::pair<Side, std::string_view> names[] = {{Side::Left, "left"},
                                                                {Side::Right, "right"}};
};

TEST_CASE("an input error names file, place, what was found and what is expected",
          "[base][error]") {
  const InputError error(
      InputError::Details{"a.shop.json", "/frames/0/window", "\"round\"", "an ellipse"});
  CHECK(error.what() ==
        std::string("a.shop.json: /frames/0/window: found \"round\", expected an ellipse"));
  CHECK(error.details().where == "/frames/0/window");
}

TEST_CASE("an input error leaves out what is not known", "[base][error]") {
  CHECK(InputError(InputError::Details{"a.json", "", "", "an object"}).what() ==
        std::string("a.json: expected an object"));
  CHECK(InputError(InputError::Details{"a.json", "line 3", "'{'", ""}).what() ==
        std::string("a.json: line 3: found '{'"));
  CHECK(InputError(InputError::Details{"", "line 3", "'{'", "a number"}).what() ==
        std::string("line 3: found '{', expected a number"));
}

TEST_CASE("an error is put together in the language spoken", "[base][error]") {
  Phrasebook::Content content;
  content.phrases = {{"found {}", "encontrado: {}"},
                     {"expected {}", "esperado: {}"},
                     {"found {}, expected {}", "esperado: {1}; encontrado: {0}"},
                     {"{}: cannot be written: {}", "no se puede escribir {}: {}"},
                     {"it was changed by somebody else since it was read", "otra persona"}};
  const Phrasebook book(content);
  const Speaking speaking(book);
  CHECK(InputError({"a.json", "/x", "1", "2"}).what() ==
        std::string("a.json: /x: esperado: 2; encontrado: 1"));
  CHECK(InputError({"a.json", "", "1", ""}).what() == std::string("a.json: encontrado: 1"));
  CHECK(InputError({"a.json", "", "", "2"}).what() == std::string("a.json: esperado: 2"));
  CHECK(ChangedOutside("a.json").what() ==
        std::string("no se puede escribir a.json: otra persona"));
}

TEST_CASE("an input error shortens what was found to one line", "[base][error]") {
  const InputError error(InputError::Details{"a.json", "", std::string(5000, 'x') + "\n", "less"});
  CHECK(error.details().found.size() < 130);
  CHECK(std::string(error.what()).size() < 200);
  const InputError lines(InputError::Details{"a.json", "", "one\ntwo\x1b[31m", ""});
  CHECK(lines.details().found == "one two [31m");
}

TEST_CASE("a shortened text keeps its characters whole", "[base][error]") {
  std::string text;
  for (int i = 0; i < 100; ++i) {
    text += "½";  // two bytes each
  }
  for (const std::string prefix : {"", "x"}) {
    const std::string found =
        InputError(InputError::Details{"a.json", "", prefix + text, ""}).details().found;
    REQUIRE(found.size() > prefix.size() + 3);
    CHECK(found.ends_with("½..."));
    CHECK((found.size() - prefix.size() - 3) % 2 == 0);
  }
}

TEST_CASE("an output error names file and reason", "[base][error]") {
  CHECK(OutputError("plan.json", "No space left on device").what() ==
        std::string("plan.json: cannot be written: No space left on device"));
}

TEST_CASE("a result holds a value or the reason for its absence", "[base][error]") {
  const Result<int> good(3);
  CHECK(good.ok());
  CHECK(*good == 3);
  const Result<int> bad(Refusal{"no number"});
  CHECK_FALSE(bad);
  CHECK(bad.message() == "no number");
  CHECK_THROWS_AS(bad.value(), std::bad_variant_access);
}

TEST_CASE("enumerators are found by their names", "[base][error]") {
  CHECK(nameOf(Side::Left) == "left");
  CHECK(nameOf(Side::Unnamed) == "?");
  CHECK(enumFromName<Side>("right") == Side::Right);
  CHECK_FALSE(enumFromName<Side>("Right").has_value());
  CHECK(allNames<Side>() == "left, right");
}

TEST_CASE("an identifier keeps its text", "[base][error]") {
  CHECK(Identifier<FrameTag>("large").text() == "large");
  CHECK(Identifier<FrameTag>().empty());
  CHECK(Identifier<FrameTag>("a") < Identifier<FrameTag>("b"));
}

}  // namespace creaseline
