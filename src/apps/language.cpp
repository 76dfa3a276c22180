// SPDX-License-Identifier: MIT
#include "language.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "creaseline/catalogue/load_phrasebook.h"

namespace creaseline {

namespace {

constexpr std::string_view kEnglish = "en";

}  // namespace

std::vector<std::string> languagesIn(const std::filesystem::path& resources) {
  std::vector<std::string> languages = {std::string(kEnglish)};
  // The folder is that of any language's book, and the ending what follows its code.
  const std::filesystem::path unnamed = phrasebookFile(resources, "");
  const std::string ending = unnamed.filename().string();
  std::error_code error;
  for (std::filesystem::directory_iterator entry(unnamed.parent_path(), error), end;
       !error && entry != end; entry.increment(error)) {
    const std::string name = entry->path().filename().string();
    if (name.size() > ending.size() && name.ends_with(ending)) {
      languages.push_back(name.substr(0, name.size() - ending.size()));
    }
  }
  std::sort(languages.begin(), languages.end());
  return languages;
}

const Phrasebook* bookFor(const Arguments& arguments, const std::filesystem::path& resources) {
  const std::string& wanted = arguments.language;
  const std::vector<std::string> languages = languagesIn(resources);
  if (std::find(languages.begin(), languages.end(), wanted) == languages.end()) {
    throw UsageError(fmt::format("--language: found '{}'; expected {} (see creaseline {} --help)",
                                 wanted, fmt::join(languages, ", "),
                                 arguments.verb == Verb::Plan ? "plan" : "sheets"));
  }
  if (wanted == kEnglish) {
    return nullptr;
  }
  static std::optional<Phrasebook> book;
  book.emplace(loadPhrasebook(resources, wanted));
  return &*book;
}

}  // namespace creaseline
