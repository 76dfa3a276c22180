// SPDX-License-Identifier: MIT
// The system says its reasons in the language of its locale, which need not be the one spoken here.
#include "base/system_reason.h"

#include <algorithm>
#include <cerrno>
#include <iterator>
#include <string_view>
#include <utility>

#include "base/worded.h"

namespace creaseline {
namespace {

// In English as the C library words them.
constexpr std::pair<int, std::string_view> kReasons[] = {
    {EPERM, toBeWorded("Operation not permitted")},
    {ENOENT, toBeWorded("No such file or directory")},
    {EIO, toBeWorded("Input/output error")},
    {ENXIO, toBeWorded("No such device or address")},
    {EACCES, toBeWorded("Permission denied")},
    {EBUSY, toBeWorded("Device or resource busy")},
    {EEXIST, toBeWorded("File exists")},
    {ENOTDIR, toBeWorded("Not a directory")},
    {EISDIR, toBeWorded("Is a directory")},
    {EMFILE, toBeWorded("Too many open files")},
    {EFBIG, toBeWorded("File too large")},
    {ENOSPC, toBeWorded("No space left on device")},
    {EROFS, toBeWorded("Read-only file system")},
    {ENAMETOOLONG, toBeWorded("File name too long")},
    {ELOOP, toBeWorded("Too many levels of symbolic links")},
    {EDQUOT, toBeWorded("Disk quota exceeded")},
    {ESTALE, toBeWorded("Stale file handle")},
};

}  // namespace

std::string systemReason(const std::error_code& error) {
  const bool ofSystem =
      error.category() == std::generic_category() || error.category() == std::system_category();
  const auto known =
      std::find_if(std::begin(kReasons), std::end(kReasons),
                   [&](const auto& reason) { return reason.first == error.value(); });
  return ofSystem && known != std::end(kReasons) ? inLanguage(known->second) : error.message();
}

}  // namespace creaseline
