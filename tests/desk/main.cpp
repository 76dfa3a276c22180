// SPDX-License-Identifier: MIT
// Runs the desk's tests with an application, off screen unless told otherwise. Listing the tests
// at build time runs this too, so the platform is chosen here and not only by CTest.
#include <QApplication>
#include <QFont>
#include <QStyleFactory>

#include "support/runner.h"

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  // Tests that choose no language look for English words, whatever the person's own is.
  qputenv("LANGUAGE", "en");
  QApplication application(argc, argv);
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  // A pinned font: sizes of texts do not depend on the machine's settings.
  QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 9));
  return creaseline::test::runTests(argc, argv);
}
