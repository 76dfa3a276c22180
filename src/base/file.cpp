// SPDX-License-Identifier: MIT
// Reads and writes whole files through POSIX calls, each checked.
#include "creaseline/base/file.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "base/system_reason.h"
#include "base/worded.h"
#include "creaseline/base/digest.h"
#include "creaseline/base/error.h"

namespace creaseline {
namespace {

std::string reasonOf(int error) {
  return systemReason(std::error_code(error, std::generic_category()));
}

// Closes a file that was opened for reading. A number below zero is none.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number_ >= 0) {
      ::close(number_);
    }
  }
  [[nodiscard]] int number() const { return number_; }

 private:
  int number_;
};

[[noreturn]] void refuse(const std::filesystem::path& path, std::string found,
                         std::string expected) {
  throw InputError({path.string(), "", std::move(found), std::move(expected)});
}

// Fewer bytes than asked for only at the end of the file or on an error (errno set).
std::size_t readUpTo(int descriptor, char* to, std::size_t count) {
  std::size_t done = 0;
  errno = 0;
  while (done < count) {
    const ssize_t got = ::read(descriptor, to + done, count - done);
    if (got < 0 && errno == EINTR) {
      errno = 0;
      continue;
    }
    if (got <= 0) {
      break;
    }
    done += static_cast<std::size_t>(got);
  }
  return done;
}

bool writeAll(int descriptor, std::string_view content) {
  while (!content.empty()) {
    const ssize_t put = ::write(descriptor, content.data(), content.size());
    if (put < 0 && errno == EINTR) {
      continue;
    }
    if (put <= 0) {
      return false;
    }
    content.remove_prefix(static_cast<std::size_t>(put));
  }
  return true;
}

// A file beside the target that is removed again unless keepAs() moved it into place.
class TemporaryFile {
 public:
  explicit TemporaryFile(const std::filesystem::path& target) : target_(target) {
    constexpr int kAttempts = 100;
    for (int attempt = 0; attempt < kAttempts && descriptor_ < 0; ++attempt) {
      path_ = target;
      path_ += fmt::format(".{}-{}.part", ::getpid(), attempt);
      descriptor_ = ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
      if (descriptor_ < 0 && errno != EEXIST) {
        break;
      }
    }
    if (descriptor_ < 0) {
      throw OutputError(target.string(), reasonOf(errno));
    }
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  ~TemporaryFile() {
    if (descriptor_ >= 0) {
      ::close(descriptor_);
    }
    if (!path_.empty()) {
      ::unlink(path_.c_str());
    }
  }

  void fill(std::string_view content) {
    struct stat old {};
    const bool replaces = ::stat(target_.c_str(), &old) == 0;
    const bool filled = (!replaces || ::fchmod(descriptor_, old.st_mode & 07777U) == 0) &&
                        writeAll(descriptor_, content) && ::fsync(descriptor_) == 0;
    check(filled);
    const int descriptor = descriptor_;
    descriptor_ = -1;
    check(::close(descriptor) == 0);
  }

  void moveIntoPlace() {
    check(::rename(path_.c_str(), target_.c_str()) == 0);
    path_.clear();
  }

  // False if something is there already. Folders that know no hard links get a renaming instead.
  [[nodiscard]] bool moveIntoFreePlace() {
    if (::link(path_.c_str(), target_.c_str()) == 0) {
      return true;
    }
    if (errno == EEXIST) {
      return false;
    }
    std::error_code error;
    if (std::filesystem::exists(target_, error)) {
      return false;
    }
    moveIntoPlace();
    return true;
  }

 private:
  void check(bool ok) const {
    if (!ok) {
      throw OutputError(target_.string(), reasonOf(errno));
    }
  }

  std::filesystem::path target_;
  std::filesystem::path path_;
  int descriptor_ = -1;
};

// Makes the renaming itself last through a power cut. Some file systems refuse to flush a folder;
// the content is safe in either case, so that is no error.
void flushFolder(const std::filesystem::path& file) {
  const auto folder = file.has_parent_path() ? file.parent_path() : std::filesystem::path(".");
  const Descriptor descriptor(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (descriptor.number() >= 0) {
    ::fsync(descriptor.number());
  }
}

// The file that a link stands for, so that the link stays a link.
std::filesystem::path linkTarget(const std::filesystem::path& path) {
  std::error_code error;
  if (!std::filesystem::is_symlink(path, error)) {
    return path;
  }
  auto target = std::filesystem::canonical(path, error);
  if (error) {
    throw OutputError(path.string(), systemReason(error));
  }
  return target;
}

}  // namespace

std::string readFile(const std::filesystem::path& path, std::size_t limit) {
  // O_NONBLOCK: opening a pipe that nobody writes to must not wait.
  const Descriptor descriptor(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC));
  if (descriptor.number() < 0) {
    const int error = errno;
    refuse(path, error == ENOENT ? worded("no such file") : reasonOf(error),
           worded("a file that can be read"));
  }
  struct stat status {};
  if (::fstat(descriptor.number(), &status) != 0) {
    const int error = errno;
    refuse(path, reasonOf(error), worded("a file that can be read"));
  }
  if (!S_ISREG(status.st_mode)) {
    refuse(path, S_ISDIR(status.st_mode) ? worded("a folder") : worded("a device or pipe"),
           worded("a file"));
  }
  const auto size = static_cast<std::size_t>(status.st_size);
  if (size > limit) {
    refuse(path, worded("{} bytes", size), worded("at most {} bytes", limit));
  }
  // One byte more than announced shows whether the file grew meanwhile.
  std::string content(size + 1, '\0');
  const std::size_t got = readUpTo(descriptor.number(), content.data(), content.size());
  if (errno != 0) {
    const int error = errno;
    refuse(path, reasonOf(error), worded("a file that can be read"));
  }
  if (got > size) {
    refuse(path, worded("a file that is being written"), worded("a file at rest"));
  }
  content.resize(got);
  return content;
}

void writeFileAtomically(const std::filesystem::path& path, std::string_view content) {
  const std::filesystem::path target = linkTarget(path);
  TemporaryFile temporary(target);
  temporary.fill(content);
  temporary.moveIntoPlace();
  flushFolder(target);
}

FileStamp stampOf(const std::filesystem::path& path, std::size_t limit) {
  std::error_code error;
  if (!std::filesystem::exists(path, error) && !error) {
    return {};
  }
  return {contentDigest(readFile(path, limit))};
}

bool stillSays(const std::filesystem::path& path, const FileStamp& stamp) {
  try {
    return stampOf(path) == stamp;
  } catch (const InputError&) {
    return false;
  }
}

void writeFileIfUnchanged(const std::filesystem::path& path, std::string_view content,
                          const FileStamp& expected) {
  if (!stillSays(path, expected)) {
    throw ChangedOutside(path.string());
  }
  const std::filesystem::path target = linkTarget(path);
  TemporaryFile temporary(target);
  temporary.fill(content);
  if (expected.digest.empty()) {
    if (!temporary.moveIntoFreePlace()) {
      throw ChangedOutside(path.string());
    }
  } else {
    if (!stillSays(path, expected)) {
      throw ChangedOutside(path.string());
    }
    temporary.moveIntoPlace();
  }
  flushFolder(target);
}

}  // namespace creaseline
