// SPDX-License-Identifier: MIT
// The language of reports and sheets. Help and messages are English whatever it is.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "arguments.h"
#include "creaseline/base/phrasebook.h"

namespace creaseline {

// ISO 639-1 codes of English and of every phrasebook in the resources, in order.
[[nodiscard]] std::vector<std::string> languagesIn(const std::filesystem::path& resources);

// The book of the language that the arguments ask for, kept as long as the program runs; null for
// English. Throws UsageError, naming those there are, for a language without a book, and InputError
// for a book that cannot be read.
[[nodiscard]] const Phrasebook* bookFor(const Arguments& arguments,
                                        const std::filesystem::path& resources);

}  // namespace creaseline
