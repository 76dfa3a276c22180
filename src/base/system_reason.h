// SPDX-License-Identifier: MIT
// Why the system refused to read or write.
#pragma once

#include <string>
#include <system_error>

namespace creaseline {

// In the language spoken, for the errors that files meet; for all others the system's own words.
[[nodiscard]] std::string systemReason(const std::error_code& error);

}  // namespace creaseline
