// SPDX-License-Identifier: MIT
#include "sheets/page_code.h"

#include <qrencode.h>

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace creaseline {

namespace {

constexpr int kQuietModules = 4;  // on each side, as the standard asks
// With more modules than these one becomes smaller than 0.3 mm, which office printers and phone
// cameras no longer manage reliably (from memory).
constexpr int kLargestVersion = 10;  // 57 modules

// Says that the bytes are UTF-8; readers guess otherwise, and guess wrong (AIM ECI 26).
constexpr unsigned kUtf8Designator = 26;

using Code = std::unique_ptr<QRcode, decltype(&QRcode_free)>;
using CodeInput = std::unique_ptr<QRinput, decltype(&QRinput_free)>;

Code encoded(const QByteArray& text, QRecLevel level) {
  const CodeInput input(QRinput_new2(0, level), &QRinput_free);
  const auto* bytes = reinterpret_cast<const unsigned char*>(text.constData());
  if (input == nullptr || QRinput_appendECIheader(input.get(), kUtf8Designator) != 0 ||
      QRinput_append(input.get(), QR_MODE_8, static_cast<int>(text.size()), bytes) != 0) {
    return {nullptr, &QRcode_free};
  }
  return {QRcode_encodeInput(input.get()), &QRcode_free};
}

Code encoded(const QByteArray& text) {
  // A quarter of the modules may be wet, torn or scribbled on (level Q); less where it is long.
  for (const QRecLevel level : {QR_ECLEVEL_Q, QR_ECLEVEL_M, QR_ECLEVEL_L}) {
    Code code = encoded(text, level);
    if (code && code->version <= kLargestVersion) {
      return code;
    }
  }
  return {nullptr, &QRcode_free};
}

Code fitting(QString text) {
  while (true) {
    if (Code code = encoded(text.toUtf8())) {
      return code;
    }
    if (text.isEmpty()) {
      throw std::runtime_error("no page code can be made");  // out of memory
    }
    text.chop(std::min<qsizetype>(8, text.size()));
  }
}

}  // namespace

QString pageCodeText(const QString& orderId, int number, int count, const QString& about) {
  QString text = QStringLiteral("Creaseline %1 page %2/%3").arg(orderId).arg(number).arg(count);
  if (!about.isEmpty()) {
    text += u' ' + about;
  }
  return text;
}

QString pageCodePart(const PlacementPlan& plan) {
  if (!plan.part) {
    return {};
  }
  const QString text = QStringLiteral(", part %1 of %2").arg(plan.part->number).arg(plan.part->of);
  if (!plan.part->cell) {
    return text;
  }
  const GridCell& cell = *plan.part->cell;
  const QString place = cell.firstCuts == CutDirection::Upright
                            ? QStringLiteral(" (column %1, row %2)")
                            : QStringLiteral(" (row %1, column %2)");
  return text + place.arg(cell.strip).arg(cell.place);
}

void paintPageCode(QPainter& painter, QPointF topLeft, const QString& text) {
  const Code code = fitting(text);
  const double module = kPageCodeSize / (code->width + 2 * kQuietModules);
  painter.save();
  painter.translate(topLeft + QPointF(kQuietModules * module, kQuietModules * module));
  // Neighbours in a row are one bar: fewer shapes, and no hairlines between them.
  for (int y = 0; y < code->width; ++y) {
    const unsigned char* row = code->data + y * code->width;
    for (int x = 0; x < code->width;) {
      int end = x;
      while (end < code->width && (row[end] & 1) != 0) {
        ++end;
      }
      if (end > x) {
        painter.fillRect(QRectF(x * module, y * module, (end - x) * module, module), Qt::black);
      }
      x = std::max(end, x + 1);
    }
  }
  painter.restore();
}

}  // namespace creaseline
