// SPDX-License-Identifier: MIT
// What the tests of the readers share: paths, the shipped rules, and a folder of their own.
#pragma once

#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/load.h"

namespace creaseline::testing {

inline std::filesystem::path goodFile(std::string_view name) {
  return std::filesystem::path(TEST_DATA) / "good" / name;
}

inline const Rules& shippedRules() {
  static const Rules rules = loadRules(std::filesystem::path(SOURCE_DIR) / "resources");
  return rules;
}

// A new folder that is removed with all its files at the end of the test.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "catalogue-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
      throw std::runtime_error("no temporary folder");
    }
    path_ = pattern;
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  [[nodiscard]] std::filesystem::path write(const std::string& name,
                                            std::string_view content) const {
    const std::filesystem::path file = path_ / name;
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary)
        .write(content.data(), static_cast<std::streamsize>(content.size()));
    return file;
  }
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

inline std::string contentOf(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

// The text with the first `from` replaced. A test that replaces nothing is wrong.
inline std::string replaced(std::string text, std::string_view from, std::string_view to) {
  const std::size_t at = text.find(from);
  if (at == std::string::npos) {
    throw std::logic_error("nothing to replace: " + std::string(from));
  }
  return text.replace(at, from.size(), to);
}

// The message of the InputError that `read` throws, or "" if it throws none.
template <class Read>
std::string inputErrorOf(Read read) {
  try {
    static_cast<void>(read());
  } catch (const InputError& error) {
    return error.what();
  }
  return {};
}

}  // namespace creaseline::testing
