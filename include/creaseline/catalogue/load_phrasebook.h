// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

#include "creaseline/base/phrasebook.h"

namespace creaseline {

// The file of one language, resources/translations/LANGUAGE.phrases.json.
[[nodiscard]] std::filesystem::path phrasebookFile(const std::filesystem::path& resources,
                                                   const std::string& language);

// Reads the language named as ISO 639-1 does ("es"). Throws InputError if the file is missing,
// broken or for another language, or holds an English text twice.
[[nodiscard]] Phrasebook loadPhrasebook(const std::filesystem::path& resources,
                                        const std::string& language);

}  // namespace creaseline
