// SPDX-License-Identifier: MIT
// Fonts and painters need an application object; no window is ever shown.
#define CATCH_CONFIG_RUNNER
#include <QGuiApplication>
#include <catch2/catch.hpp>

int main(int argc, char* argv[]) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  const QGuiApplication application(argc, argv);
  return Catch::Session().run(argc, argv);
}
