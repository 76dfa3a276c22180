// SPDX-License-Identifier: MIT
// Puts "%n garment(s)" right in English: "1 garment", "2 garments". A translation into another
// language that is installed later comes first and replaces it.
#pragma once

#include <QTranslator>

namespace creaseline::desk {

class EnglishPlurals : public QTranslator {
  Q_OBJECT

 public:
  using QTranslator::QTranslator;

  [[nodiscard]] QString translate(const char* context, const char* sourceText,
                                  const char* disambiguation = nullptr,
                                  int count = -1) const override;
  // An empty translator is not asked.
  [[nodiscard]] bool isEmpty() const override { return false; }
};

}  // namespace creaseline::desk
