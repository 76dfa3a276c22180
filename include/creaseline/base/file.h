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

// What a file said when it was looked at, by its content; times of files lie on network folders.
struct FileStamp {
  std::string digest;  // contentDigest(); empty: there was no file
  bool operator==(const FileStamp&) const = default;
};

// Of the file as it is now. Throws InputError if there is something that cannot be read.
[[nodiscard]] FileStamp stampOf(const std::filesystem::path& path,
                                std::size_t limit = kLargestTextFile);

// Whether the file says now what the stamp stands for; false too for what cannot be read.
[[nodiscard]] bool stillSays(const std::filesystem::path& path, const FileStamp& stamp);

// Like writeFileAtomically(), but throws ChangedOutside, and leaves all as it is, if the file does
// not say any more what `expected` stands for. A file that must not be there yet is created in one
// step that never replaces another's. Otherwise the last look is taken after the new content is
// written and flushed, right before the renaming: another's save that falls between these two
// system calls is not seen. POSIX has no renaming that compares.
void writeFileIfUnchanged(const std::filesystem::path& path, std::string_view content,
                          const FileStamp& expected);

}  // namespace creaseline
