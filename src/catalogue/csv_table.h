// SPDX-License-Identifier: MIT
// Splits CSV text into records and cells (RFC 4180, with the separators that spreadsheets use).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace creaseline {

struct CsvRecord {
  std::size_t line = 0;  // of its first character, from 1
  std::vector<std::string> cells;
  [[nodiscard]] bool blank() const;
};

// Comma, semicolon or tab, whichever the first line uses: a semicolon or tab outside quotes wins
// over commas, which may be decimal. A byte-order mark is skipped; LF, CR and CRLF end a record.
// Spaces around cells are dropped. Throws InputError for text that is not UTF-8, has control
// characters, or leaves a quote open.
[[nodiscard]] std::vector<CsvRecord> splitCsv(std::string_view text, const std::string& file);
// The same with a separator that is known.
[[nodiscard]] std::vector<CsvRecord> splitCsv(std::string_view text, const std::string& file,
                                              char separator);

}  // namespace creaseline
