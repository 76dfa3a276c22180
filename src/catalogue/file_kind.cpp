// SPDX-License-Identifier: MIT
// Heads of files and references between them.
#include "catalogue/file_kind.h"

#include <cmath>
#include <limits>

#include "base/worded.h"

namespace creaseline {

namespace {

void checkFormat(const JsonCursor& format, FileKind kind) {
  const std::string text = format.label();
  if (text == nameOf(kind)) {
    return;
  }
  if (enumFromName<FileKind>(text)) {
    format.fail(worded("a file of another kind, {}", inQuotes(text)), inQuotes(nameOf(kind)));
  }
  format.failShown(inQuotes(nameOf(kind)));
}

void checkVersion(const JsonCursor& version) {
  const std::string expected = worded("a format version, a whole number up to {}", kFileVersion);
  if (!version.isNumber()) {
    version.failShown(expected);
  }
  const double number =
      version.number(std::numeric_limits<double>::lowest(), std::numeric_limits<double>::max());
  if (number > kFileVersion) {
    version.fail(worded("format version {}, written by a newer Creaseline", number),
                 worded("up to {}, which is what this program reads", kFileVersion));
  }
  if (number < 1.0 || std::floor(number) != number) {
    version.failShown(expected);
  }
}

}  // namespace

void requireHead(JsonObject& top, FileKind kind) {
  checkFormat(top.at("format"), kind);
  checkVersion(top.at("version"));
}

void checkHead(JsonObject& top, FileKind kind) {
  if (const auto format = top.find("format")) {
    checkFormat(*format, kind);
  }
  if (const auto version = top.find("version")) {
    checkVersion(*version);
  }
}

std::filesystem::path referredFile(const JsonCursor& at) {
  const std::string text = at.label();
  if (text.find_first_of(":\\") != std::string::npos || text.front() == '/') {
    at.failShown(
        worded("a path relative to this file, with forward slashes, such as \"blanks/tee.json\""));
  }
  const std::filesystem::path path = (at.folder() / text).lexically_normal();
  std::error_code error;
  if (!std::filesystem::exists(path, error)) {
    at.failShown(worded("a file that is there; {} is missing", inQuotes(path.string(), 200)));
  }
  return path;
}

}  // namespace creaseline
