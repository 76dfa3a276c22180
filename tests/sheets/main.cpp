// SPDX-License-Identifier: MIT
// Fonts and painters need an application object; no window is ever shown.
#include <QGuiApplication>

#include "support/runner.h"

int main(int argc, char* argv[]) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  const QGuiApplication application(argc, argv);
  return creaseline::test::runTests(argc, argv);
}
