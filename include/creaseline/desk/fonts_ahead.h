// SPDX-License-Identifier: MIT
// The system's fonts, read beside the making of the first window instead of when it draws a text.
#pragma once

#include <future>

namespace creaseline {

class FontsAhead {
 public:
  // Begins with the settings of the system's fonts, which is most of the reading and needs no
  // application: made before it, so that both go on at once.
  FontsAhead();
  // Waits until the settings are read.
  ~FontsAhead() = default;
  FontsAhead(const FontsAhead&) = delete;
  FontsAhead& operator=(const FontsAhead&) = delete;

  // Goes on with the fonts, on a thread of its own, once the settings are read, and waits for them:
  // two that need the settings at once would both read them. Called with an application, before the
  // first text is measured.
  void read();

 private:
  std::future<void> settings_;
};

}  // namespace creaseline
