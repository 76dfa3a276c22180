// SPDX-License-Identifier: MIT
// Result: a value, or the reason why a text could not be read. For failures that are ordinary
// while somebody types. Broken files are reported by InputError (error.h) instead.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace creaseline {

// Why a text was refused, fit to be shown beside the field.
struct Refusal {
  std::string message;  // what is wrong and what is expected, one sentence without a full stop
};

template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : content_(std::move(value)) {}            // NOLINT(google-explicit-constructor)
  Result(Refusal refusal) : content_(std::move(refusal)) {}  // NOLINT(google-explicit-constructor)

  [[nodiscard]] bool ok() const { return std::holds_alternative<T>(content_); }
  explicit operator bool() const { return ok(); }
  // Precondition: ok(). std::bad_variant_access otherwise.
  [[nodiscard]] const T& value() const { return std::get<T>(content_); }
  [[nodiscard]] const T& operator*() const { return value(); }
  [[nodiscard]] const T* operator->() const { return &value(); }
  // Precondition: !ok().
  [[nodiscard]] const std::string& message() const { return std::get<Refusal>(content_).message; }

 private:
  std::variant<T, Refusal> content_;
};

}  // namespace creaseline
