// SPDX-License-Identifier: MIT
// The only code that touches the disk: bounded reads and atomic writes.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

namespace creaseline {

// The largest text file that any reader accepts.
inline constexpr std::size_t kLargestTextFile = std::size_t{16} * 1024 * 1024;

// Whole content of a regular file. Throws InputError if it is missing, unreadable, not a regular
// file, or larger than `limit` bytes (checked before reading).
std::string readFile(const std::filesystem::path& path, std::size_t limit = kLargestTextFile);

// Replaces or creates the file in one step: a temporary file in the same folder is written,
// flushed to the disk and renamed over the old one. On any failure the old file is untouched, the
// temporary file removed, and OutputError thrown.
void writeFileAtomically(const std::filesystem::path& path, std::string_view content);

}  // namespace creaseline
