// SPDX-License-Identifier: MIT
#include "base/system_reason.h"

#include <catch2/catch.hpp>

#include <cerrno>
#include <ios>

#include "support/spoken.h"

namespace creaseline {
namespace {

std::error_code systemError(int number) {
  return {number, std::generic_category()};
}

}  // namespace

TEST_CASE("in English the system's reasons are those of the C library", "[base][file]") {
  for (int number = 1; number <= EDQUOT + 20; ++number) {
    CAPTURE(number);
    CHECK(systemReason(systemError(number)) == systemError(number).message());
  }
}

TEST_CASE("in another language what the book lacks is said as the system says it", "[base][file]") {
  Phrasebook::Content content;
  content.language = "es";
  content.phrases = {{"Permission denied", "permiso denegado"},
                     {"Operation not permitted", "operación no permitida"}};
  const Phrasebook book(content);
  const Speaking speaking(book);
  CHECK(systemReason(systemError(EACCES)) == "permiso denegado");
  CHECK(systemReason({EACCES, std::system_category()}) == "permiso denegado");
  CHECK(systemReason(systemError(EIO)) == systemError(EIO).message());
  CHECK(systemReason(systemError(EDOM)) == systemError(EDOM).message());
  // The number of an error means another thing in another family of errors.
  const std::error_code other = std::make_error_code(std::io_errc::stream);
  REQUIRE(other.value() == EPERM);
  CHECK(systemReason(other) == other.message());
}

}  // namespace creaseline
