// SPDX-License-Identifier: MIT
// SHA-256 against published results.
#include "creaseline/base/digest.h"

#include <catch2/catch.hpp>
#include <set>
#include <string>

namespace creaseline {
namespace {

// NIST, "Examples with Intermediate Values", SHA-256; the last one is from FIPS 180-2, appendix
// B.3.
TEST_CASE("digests are those that the standard publishes", "[base][digest]") {
  CHECK(contentDigest("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  CHECK(contentDigest("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(contentDigest("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  CHECK(contentDigest(std::string(1'000'000, 'a')) ==
        "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("texts of all lengths round a block have digests of their own", "[base][digest]") {
  std::set<std::string> digests;
  for (std::size_t size = 0; size <= 200; ++size) {
    digests.insert(contentDigest(std::string(size, '\0')));
  }
  CHECK(digests.size() == 201);
}

}  // namespace
}  // namespace creaseline
