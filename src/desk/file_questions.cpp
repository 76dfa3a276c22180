// SPDX-License-Identifier: MIT
#include "desk/file_questions.h"

#include <QCoreApplication>
#include <QFileDialog>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::FileQuestions)
};

}  // namespace

QString askWhereToSave(QWidget* parent, const QString& title, const QString& proposed,
                       const QString& filter, const QString& ending) {
  QString file = QFileDialog::getSaveFileName(parent, title, proposed, filter);
  if (!file.isEmpty() && !file.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)) {
    file += ending;
  }
  return file;
}

QString fileNameFor(std::string_view name, const QString& ending) {
  QString file = toQString(name);
  for (QChar& each : file) {
    if (!each.isLetterOrNumber() && each != QLatin1Char('-') && each != QLatin1Char('_')) {
      each = QLatin1Char('-');
    }
  }
  return file + ending;
}

std::optional<Loaded<Blank>> askForGarment(QWidget* parent, const QString& folder,
                                           const Rules& rules) {
  const QString file =
      QFileDialog::getOpenFileName(parent, Words::tr("Add a garment"), folder,
                                   Words::tr("Garments (*.blank.json);;JSON files (*.json)"));
  return file.isEmpty() ? std::nullopt : std::optional(loadBlank(toPath(file), rules));
}

std::optional<Loaded<Design>> askForDesign(QWidget* parent, const QString& folder) {
  const QString file =
      QFileDialog::getOpenFileName(parent, Words::tr("Add a design"), folder,
                                   Words::tr("Designs (*.design.json);;JSON files (*.json)"));
  return file.isEmpty() ? std::nullopt : std::optional(loadDesign(toPath(file)));
}

}  // namespace creaseline::desk
