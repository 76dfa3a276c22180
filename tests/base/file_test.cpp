// SPDX-License-Identifier: MIT
// Bounded reading and atomic writing.
#include "creaseline/base/file.h"

#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <string>

#include "creaseline/base/error.h"

namespace creaseline {
namespace {

namespace fs = std::filesystem;

// A folder of its own for one test, removed with everything in it.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    std::string pattern = (fs::temp_directory_path() / "creaseline-test-XXXXXX").string();
    REQUIRE(::mkdtemp(pattern.data()) != nullptr);
    path_ = pattern;
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }
  [[nodiscard]] fs::path operator/(const char* name) const { return path_ / name; }
  [[nodiscard]] std::size_t entries() const {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(path_), fs::directory_iterator()));
  }

 private:
  fs::path path_;
};

// While it lives no file can grow beyond the limit: a full disk that works for root as well.
class FileSizeLimit {
 public:
  explicit FileSizeLimit(rlim_t bytes) : oldHandler_(std::signal(SIGXFSZ, SIG_IGN)) {
    ::getrlimit(RLIMIT_FSIZE, &old_);
    rlimit limit = old_;
    limit.rlim_cur = bytes;
    ::setrlimit(RLIMIT_FSIZE, &limit);
  }
  FileSizeLimit(const FileSizeLimit&) = delete;
  FileSizeLimit& operator=(const FileSizeLimit&) = delete;
  ~FileSizeLimit() {
    ::setrlimit(RLIMIT_FSIZE, &old_);
    std::signal(SIGXFSZ, oldHandler_);
  }

 private:
  rlimit old_{};
  void (*oldHandler_)(int);
};

// While it lives the superuser works with the rights of nobody in particular.
class OrdinaryUser {
 public:
  OrdinaryUser() : old_(::geteuid()) { dropped_ = old_ == 0 && ::seteuid(kNobody) == 0; }
  OrdinaryUser(const OrdinaryUser&) = delete;
  OrdinaryUser& operator=(const OrdinaryUser&) = delete;
  ~OrdinaryUser() {
    if (dropped_ && ::seteuid(old_) != 0) {
      std::abort();  // all later tests would run with the wrong rights
    }
  }

 private:
  static constexpr uid_t kNobody = 65534;
  uid_t old_;
  bool dropped_ = false;
};

std::string refusalOf(const fs::path& path, std::size_t limit = kLargestTextFile) {
  try {
    readFile(path, limit);
  } catch (const InputError& error) {
    CHECK(error.details().file == path.string());
    return error.details().found;
  }
  return "";
}

}  // namespace

TEST_CASE("a file is read back as it was written", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "plan.json";
  const std::string content = std::string("line\r\n\0", 7) + std::string(100'000, 'x');
  writeFileAtomically(file, content);
  CHECK(readFile(file) == content);
  writeFileAtomically(file, "");
  CHECK(readFile(file).empty());
  CHECK(folder.entries() == 1);
}

TEST_CASE("a missing file, a folder and a pipe are refused", "[base][file]") {
  const TemporaryFolder folder;
  CHECK(refusalOf(folder / "missing.json") == "no such file");
  fs::create_directory(folder / "folder");
  CHECK(refusalOf(folder / "folder") == "a folder");
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  CHECK(refusalOf(folder / "pipe") == "a device or pipe");
  CHECK(refusalOf("/dev/zero") == "a device or pipe");
  CHECK(refusalOf("") == "no such file");
}

TEST_CASE("a file above the size limit is refused unread", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "large.json";
  writeFileAtomically(file, "0123456789");
  CHECK(readFile(file, 10) == "0123456789");
  CHECK(refusalOf(file, 9) == "10 bytes");
  // 100 GB that take no room: reading them would run out of memory.
  fs::resize_file(file, 100'000'000'000);
  CHECK(refusalOf(file) == "100000000000 bytes");
}

TEST_CASE("writing over a folder fails and leaves it as it was", "[base][file]") {
  const TemporaryFolder folder;
  fs::create_directory(folder / "target");
  writeFileAtomically(folder / "target/inside.txt", "kept");
  CHECK_THROWS_AS(writeFileAtomically(folder / "target", "new"), OutputError);
  CHECK(readFile(folder / "target/inside.txt") == "kept");
  CHECK(folder.entries() == 1);
}

TEST_CASE("a full disk leaves the old content and no temporary file", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "plan.json";
  writeFileAtomically(file, "old content");
  {
    const FileSizeLimit limit(1000);
    CHECK_THROWS_AS(writeFileAtomically(file, std::string(100'000, 'x')), OutputError);
  }
  CHECK(readFile(file) == "old content");
  CHECK(folder.entries() == 1);
  writeFileAtomically(file, std::string(100'000, 'x'));
  CHECK(readFile(file).size() == 100'000);
}

TEST_CASE("writing into a folder that is not there fails", "[base][file]") {
  const TemporaryFolder folder;
  CHECK_THROWS_AS(writeFileAtomically(folder / "missing/plan.json", "new"), OutputError);
  writeFileAtomically(folder / "file", "kept");
  CHECK_THROWS_AS(writeFileAtomically(folder / "file/plan.json", "new"), OutputError);
  CHECK(readFile(folder / "file") == "kept");
}

TEST_CASE("writing into a read-only folder fails and keeps the old content", "[base][file]") {
  const OrdinaryUser user;
  if (::geteuid() == 0) {
    WARN("skipped: permissions do not bind the superuser, who cannot step back here");
    return;
  }
  const TemporaryFolder folder;
  fs::create_directory(folder / "closed");
  const fs::path file = folder / "closed/plan.json";
  writeFileAtomically(file, "old content");
  fs::permissions(folder / "closed", fs::perms::owner_read | fs::perms::owner_exec);
  CHECK_THROWS_AS(writeFileAtomically(file, "new"), OutputError);
  CHECK(readFile(file) == "old content");
  fs::permissions(folder / "closed", fs::perms::owner_all);
  CHECK(std::distance(fs::directory_iterator(folder / "closed"), fs::directory_iterator()) == 1);
}

TEST_CASE("a replaced file keeps its permissions", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "plan.json";
  writeFileAtomically(file, "old");
  fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write);
  writeFileAtomically(file, "new");
  CHECK(fs::status(file).permissions() == (fs::perms::owner_read | fs::perms::owner_write));
}

TEST_CASE("writing through a link changes the file behind it", "[base][file]") {
  const TemporaryFolder folder;
  writeFileAtomically(folder / "real.json", "old");
  fs::create_symlink("real.json", folder / "link.json");
  writeFileAtomically(folder / "link.json", "new");
  CHECK(fs::is_symlink(folder / "link.json"));
  CHECK(readFile(folder / "real.json") == "new");
  fs::create_symlink("nowhere.json", folder / "dangling.json");
  CHECK_THROWS_AS(writeFileAtomically(folder / "dangling.json", "new"), OutputError);
}

TEST_CASE("a file is replaced only while it says what it said", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "order.json";
  writeFileAtomically(file, "first");
  const FileStamp read = stampOf(file);

  writeFileIfUnchanged(file, "second", read);
  CHECK(readFile(file) == "second");

  CHECK_THROWS_AS(writeFileIfUnchanged(file, "third", read), ChangedOutside);
  CHECK(readFile(file) == "second");
  CHECK(folder.entries() == 1);
}

TEST_CASE("the content of a file counts, not its time", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "order.json";
  writeFileAtomically(file, "same");
  const FileStamp read = stampOf(file);

  writeFileAtomically(file, "same");
  fs::last_write_time(file, fs::last_write_time(file) + std::chrono::hours(2));
  writeFileIfUnchanged(file, "new", read);
  CHECK(readFile(file) == "new");

  // As long, and with the old time: still another content.
  const auto time = fs::last_write_time(file);
  const FileStamp again = stampOf(file);
  writeFileAtomically(file, "NEW");
  fs::last_write_time(file, time);
  CHECK_THROWS_AS(writeFileIfUnchanged(file, "mine", again), ChangedOutside);
}

TEST_CASE("a new file never replaces one that somebody put there", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "order.json";
  CHECK(stampOf(file) == FileStamp{});
  writeFileIfUnchanged(file, "mine", FileStamp{});
  CHECK(readFile(file) == "mine");
  CHECK_THROWS_AS(writeFileIfUnchanged(file, "again", FileStamp{}), ChangedOutside);
  CHECK(readFile(file) == "mine");
  CHECK(folder.entries() == 1);
}

TEST_CASE("a file that was taken away, or became a folder, counts as changed", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "order.json";
  writeFileAtomically(file, "first");
  const FileStamp read = stampOf(file);
  fs::remove(file);
  CHECK_THROWS_AS(writeFileIfUnchanged(file, "mine", read), ChangedOutside);
  CHECK_FALSE(fs::exists(file));
  fs::create_directory(file);
  CHECK_THROWS_AS(writeFileIfUnchanged(file, "mine", read), ChangedOutside);
  CHECK(fs::is_directory(file));
}

TEST_CASE("the error of a changed file names it", "[base][file]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "order.json";
  writeFileAtomically(file, "theirs");
  try {
    writeFileIfUnchanged(file, "mine", FileStamp{"another"});
    FAIL("no error");
  } catch (const ChangedOutside& error) {
    CHECK(error.file() == file.string());
    CHECK(std::string(error.what()).find("changed by somebody else") != std::string::npos);
  }
}

}  // namespace creaseline
