// SPDX-License-Identifier: MIT
// PDF files as an independent reader sees them (pdfinfo of poppler).
#pragma once

#include <QProcess>
#include <QString>

#include "desk_fixture.h"

namespace creaseline::desk {

// -1 where it is no PDF.
inline int pdfPages(const QString& pdf) {
  QProcess info;
  info.start(QStringLiteral("pdfinfo"), {pdf});
  REQUIRE(info.waitForFinished(kWaitMs));
  for (const QByteArray& line : info.readAllStandardOutput().split('\n')) {
    if (line.startsWith("Pages:")) {
      return line.mid(6).trimmed().toInt();
    }
  }
  return -1;
}

}  // namespace creaseline::desk
