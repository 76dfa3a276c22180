// SPDX-License-Identifier: MIT
// What a file said when it was read: its text as parsed, so that keys which the program does not
// know and the user's way of writing a number are kept on saving; its stamp, so that another's
// changes are noticed; and the value read, so that only what changed is written. Cheap to copy.
#pragma once

#include <filesystem>
#include <memory>
#include <vector>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/blank.h"
#include "creaseline/catalogue/design.h"
#include "creaseline/catalogue/order.h"

namespace creaseline {

struct JsonNode;  // parsed JSON, private to the catalogue

struct OriginalFile {
  std::filesystem::path file;  // as the reader opened it
  FileStamp stamp;
  std::shared_ptr<const JsonNode> text;  // null: not read from a file
};

template <class T>
struct Original : OriginalFile {
  std::shared_ptr<const T> value;  // null: something new
};

// An order also has the blanks and designs that it refers to by file. One that is added here by
// whoever read it (loadBlank(...).original) is referred to from the next saving on; a blank or
// design that is in none of these lists is written into the order itself.
template <>
struct Original<Order> : OriginalFile {
  std::shared_ptr<const Order> value;
  std::vector<Original<Blank>> blanks;
  std::vector<Original<Design>> designs;
};

}  // namespace creaseline
