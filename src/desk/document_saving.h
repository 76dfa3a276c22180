// SPDX-License-Identifier: MIT
// How a document writes an order or a shop: elsewhere, and tells of it when it is done.
#pragma once

#include <exception>
#include <filesystem>
#include <optional>
#include <utility>

#include "desk/document.h"
#include "desk/text.h"

namespace creaseline::desk {

// A file that is gone is not looked for where the user has chosen to write it again: `replaced`
// says that nothing is there. Asks the disk, so that it is for where the file is written.
template <class T>
Original<T> savedAnew(Original<T> original, const std::filesystem::path& file,
                      const FileStamp& replaced) {
  if (original.file == file && !std::filesystem::exists(file)) {
    original.stamp = replaced;
  }
  return original;
}

template <class T>
struct Document::Written {
  std::optional<Saved<T>> saved;
  SaveResult result = SaveResult::NotWritten;
  QString problem;
};

template <class T>
Document::Written<T> Document::tryTo(const std::function<Saved<T>()>& save) {
  Written<T> written;
  try {
    written.saved = save();
    written.result = SaveResult::Saved;
  } catch (const ChangedOutside& error) {
    written.result = SaveResult::ChangedOutside;
    written.problem = toQString(error.what());
  } catch (const std::exception& error) {
    written.problem = toQString(error.what());
  }
  return written;
}

template <class T>
void Document::write(std::function<Saved<T>()> save, std::function<void(Saved<T>)> take,
                     void (Document::*tell)(SaveResult)) {
  ++saves_;
  saver_.start([save = std::move(save)] { return tryTo<T>(save); },
               [this, take = std::move(take), tell](Written<T> written) {
                 if (written.saved) {
                   take(std::move(*written.saved));
                 }
                 concludeSaving(written.result, written.problem);
                 Q_EMIT(this->*tell)(written.result);
               });
}

}  // namespace creaseline::desk
