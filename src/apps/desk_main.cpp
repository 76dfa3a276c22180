// SPDX-License-Identifier: MIT
// The desk's program: opens the window and the files named on the command line.
#include <QApplication>
#include <QCommandLineParser>
#include <QFileInfo>
#include <QMessageBox>
#include <QStandardPaths>
#include <QTextStream>
#include <filesystem>

#include "creaseline/base/error.h"
#include "creaseline/catalogue/load.h"
#include "creaseline/desk/desk_language.h"
#include "creaseline/desk/desk_rules.h"
#include "creaseline/desk/desk_window.h"
#include "creaseline/desk/fonts_ahead.h"

namespace {

std::filesystem::path pathOf(const QString& text) {
  return std::filesystem::path(text.toStdU16String());
}

QString settingsFile() {
  return QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) +
         QStringLiteral("/desk.ini");
}

// Without the shipped rules nothing can be planned: say so where the user looks, and end.
int refuse(const creaseline::InputError& error) {
  const QString message = QString::fromUtf8(error.what());
  QTextStream(stderr) << "creaseline-desk: error: " << message << '\n';
  QMessageBox::critical(nullptr, QApplication::applicationDisplayName(), message);
  return 2;
}

}  // namespace

int main(int count, char** words) {
  creaseline::FontsAhead fonts;
  QApplication application(count, words);
  QApplication::setApplicationName(QStringLiteral("creaseline"));
  QApplication::setApplicationDisplayName(QStringLiteral("Creaseline"));
  QApplication::setApplicationVersion(QStringLiteral(CREASELINE_VERSION));

  creaseline::DeskLanguage language(settingsFile());

  QCommandLineParser parser;
  parser.setApplicationDescription(
      QApplication::translate("main", "Shows an order planned against a shop."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument(
      QStringLiteral("files"),
      QApplication::translate("main", "An order and a shop to open, in any order."),
      QStringLiteral("[FILES...]"));
  parser.process(application);

  try {
    const std::filesystem::path resources =
        creaseline::findResources(pathOf(QApplication::applicationFilePath()));
    language.readPhrases(resources);
    const auto rules = creaseline::DeskRules::read(
        resources, application,
        [](const creaseline::InputError& error) { QApplication::exit(refuse(error)); });
    fonts.read();
    creaseline::DeskWindow window(rules, resources, settingsFile());
    for (const QString& file : parser.positionalArguments()) {
      window.openFile(pathOf(file));
    }
    window.show();
    return QApplication::exec();
  } catch (const creaseline::InputError& error) {
    return refuse(error);
  }
}
