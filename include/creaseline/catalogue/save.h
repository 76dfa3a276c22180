// SPDX-License-Identifier: MIT
// Writing back of orders, shops, blanks and designs. What was read keeps what the program does not
// know: keys it has no use for, and the user's way of writing a value that has not changed.
//
// Loading what was saved gives the same struct, and saving that again the same text. A size's band
// that the chart does not give is not written; it follows from the size again.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "creaseline/base/units.h"
#include "creaseline/catalogue/original.h"
#include "creaseline/catalogue/shop.h"

namespace creaseline {

struct SaveStyle {
  // For lengths that are new or have changed: inches where they are whole 64ths, else millimetres.
  LengthUnit lengths = LengthUnit::Millimetre;
  // The folder in which the file will lie; empty: that of the original. Paths are written so that
  // they lead from there to the same files.
  std::filesystem::path folder;
};

// The text of one file. An order refers to the blanks and designs that `original` has files of,
// whatever has changed in them, and holds the others itself.
[[nodiscard]] std::string orderText(const Order& order, const Original<Order>& original = {},
                                    const SaveStyle& style = {});
[[nodiscard]] std::string shopText(const Shop& shop, const Original<Shop>& original = {},
                                   const SaveStyle& style = {});
[[nodiscard]] std::string blankText(const Blank& blank, const Original<Blank>& original = {},
                                    const SaveStyle& style = {});
[[nodiscard]] std::string designText(const Design& design, const Original<Design>& original = {},
                                     const SaveStyle& style = {});

// An order with all that has changed since it was read, in one text, for recovery after a crash:
// like orderText(), but a blank or design that differs from its file stands in the order itself.
// loadOrderDraft() reads it from `style.folder`.
[[nodiscard]] std::string recoveryText(const Order& order, const Original<Order>& original,
                                       const SaveStyle& style);

// What was written, as it would be read now: go on with these two.
template <class T>
struct Saved {
  T value;  // paths in it lead from the new place
  Original<T> original;
  std::vector<std::filesystem::path> written;  // files that were replaced or created
};

// Saves to `file`. Where that is the original's own file, it must still say what was read; any
// other file must not be there, or must say what `replaced` stands for (stampOf() when the user
// agreed to replace it). Throws ChangedOutside, before anything is written, if one of the files to
// be written is not as it was read: read it again, mergeOrders(), save with the new original.
// Throws OutputError if a file cannot be written.
//
// A blank or design that has changed is written to the file that it was read from, before the
// order that refers to it. Each file is replaced in one step, and one whose text stays the same is
// left alone; the files together are not one step.
//
// On a network folder without locks: each file is looked at again right before it is replaced.
// Another's save that falls between that look and the renaming (two system calls) is lost.
[[nodiscard]] Saved<Order> saveOrder(const std::filesystem::path& file, const Order& order,
                                     const Original<Order>& original, const SaveStyle& style = {},
                                     const FileStamp& replaced = {});
[[nodiscard]] Saved<Shop> saveShop(const std::filesystem::path& file, const Shop& shop,
                                   const Original<Shop>& original, const SaveStyle& style = {},
                                   const FileStamp& replaced = {});
[[nodiscard]] Saved<Blank> saveBlank(const std::filesystem::path& file, const Blank& blank,
                                     const Original<Blank>& original, const SaveStyle& style = {},
                                     const FileStamp& replaced = {});
[[nodiscard]] Saved<Design> saveDesign(const std::filesystem::path& file, const Design& design,
                                       const Original<Design>& original,
                                       const SaveStyle& style = {}, const FileStamp& replaced = {});

// The files of an original that do not say any more what was read: changed, or gone.
[[nodiscard]] std::vector<std::filesystem::path> changedOutside(const Original<Order>& original);
[[nodiscard]] std::vector<std::filesystem::path> changedOutside(const OriginalFile& original);

}  // namespace creaseline
