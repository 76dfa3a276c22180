// SPDX-License-Identifier: MIT
#include "desk/garments_window.h"

#include <QClipboard>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QVBoxLayout>
#include <algorithm>

#include "creaseline/base/file.h"
#include "desk/chart_import_dialog.h"
#include "desk/file_questions.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

constexpr std::size_t kMostColumns = 100;

LibraryWindow::Words wordsOfGarments() {
  return {GarmentsWindow::tr("&Garments"),
          GarmentsWindow::tr("&New garment"),
          GarmentsWindow::tr("From a &file…"),
          GarmentsWindow::tr("Duplicate the garment"),
          GarmentsWindow::tr("Remove the garment from the order"),
          GarmentsWindow::tr("The order has no garments yet. Add a new one, or one from a file.")};
}

}  // namespace

GarmentsWindow::GarmentsWindow(Settings& settings, Document& document,
                               const std::filesystem::path& resources, QWidget* parent)
    : LibraryWindow(QStringLiteral("garments"), wordsOfGarments(), settings, document, parent),
      resources_(resources) {
  auto* column = new QWidget(this);
  form_ = new GarmentForm(column);
  chart_ = new ChartPanel(column);
  auto* layout = new QVBoxLayout(column);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(form_);
  layout->addWidget(chart_, 1);
  connect(form_, &GarmentForm::edited, this, [this](const OrderEdit& asked) { edit(asked); });
  connect(form_, &GarmentForm::refused, this, &GarmentsWindow::refuse);
  connect(chart_, &ChartPanel::edited, this, [this](const OrderEdit& asked) { edit(asked); });
  connect(chart_, &ChartPanel::pasteAsked, this, &GarmentsWindow::pasteChart);
  connect(chart_, &ChartPanel::importAsked, this, &GarmentsWindow::importChart);
  setForm(column);
}

GarmentEdits GarmentsWindow::edits() const {
  return {*planned()->order(), planned()->rules(), planned()->units()};
}

std::vector<LibraryWindow::Entry> GarmentsWindow::entries() const {
  std::vector<Entry> result;
  for (const Blank& each : planned()->order()->blanks) {
    const GarmentKind* kind = planned()->rules().kind(each.kind);
    result.push_back(
        {toQString(each.name), toQString(kind == nullptr ? each.kind.text() : kind->name)});
  }
  return result;
}

void GarmentsWindow::showEntry(std::size_t index) {
  form_->show(planned(), index);
  chart_->show(planned(), index);
}

void GarmentsWindow::refuse(const QString& problem) {
  say(Severity::Stop, tr("This kind does not go with the size chart"), problem);
}

// ---- The list ----------------------------------------------------------------------------------

void GarmentsWindow::addFresh() {
  if (edit(edits().add())) {
    chooseEntry(static_cast<int>(planned()->order()->blanks.size()) - 1);
    form_->setFocus(Qt::TabFocusReason);  // as by Tab, ready to be typed over
  }
}

void GarmentsWindow::addFromFile() {
  try {
    const auto loaded = askForGarment(this, folder(), planned()->rules());
    if (!loaded) {
      return;
    }
    // One whose id the order has already is taken up as a copy, which its file is not.
    if (document().orderInHand()->blank(loaded->value.id) == nullptr) {
      document().referTo(loaded->original);
    }
    if (edit(edits().addCopyOf(loaded->value))) {
      chooseEntry(static_cast<int>(planned()->order()->blanks.size()) - 1);
    }
  } catch (const InputError& error) {
    say(Severity::Stop, tr("The garment cannot be added"), toQString(error.what()));
  }
}

void GarmentsWindow::duplicateEntry(std::size_t index) {
  if (edit(edits().duplicate(index))) {
    chooseEntry(static_cast<int>(index) + 1);
  }
}

void GarmentsWindow::removeEntry(std::size_t index) {
  if (const auto problem = edits().removeProblem(index)) {
    say(Severity::Stop, tr("The garment stays in the order"), *problem);
    return;
  }
  edit(edits().remove(index));
}

void GarmentsWindow::saveEntry(std::size_t index) {
  const Blank saved = blank(index);
  const auto file = askForFile(tr("Save the garment to a file of its own"),
                               toQString(saved.id.text()), QStringLiteral(".blank.json"));
  if (!file) {
    return;
  }
  try {
    SaveStyle style;
    style.lengths = planned()->units().length;
    // The dialog has asked whether a file that is there may go.
    document().referTo(saveBlank(*file, saved, {}, style, stampOf(*file)).original);
    say(Severity::Note, tr("%1 has a file of its own").arg(toQString(saved.name)),
        tr("%1. Save the order as well, so that it refers to the file.")
            .arg(QDir::toNativeSeparators(pathText(*file))));
  } catch (const std::exception& error) {
    say(Severity::Stop, tr("The garment was not saved"), toQString(error.what()));
  }
}

// ---- Charts from elsewhere ---------------------------------------------------------------------

void GarmentsWindow::pasteChart() {
  const QString text = QGuiApplication::clipboard()->text();
  if (text.trimmed().isEmpty()) {
    say(Severity::Watch, tr("There is no table on the clipboard"),
        tr("Copy the size chart in a spreadsheet or on a page, with its titles, and paste again."));
    return;
  }
  preview(toUtf8(text), tr("the clipboard"));
}

void GarmentsWindow::importChart() {
  const QString file = QFileDialog::getOpenFileName(
      this, tr("Import a size chart"), folder(), tr("Tables (*.csv *.tsv *.txt);;All files (*)"));
  if (file.isEmpty()) {
    return;
  }
  try {
    preview(readFile(toPath(file)), QFileInfo(file).fileName());
  } catch (const InputError& error) {
    say(Severity::Stop, tr("The file cannot be read"), toQString(error.what()));
  }
}

void GarmentsWindow::preview(const std::string& text, const QString& source) {
  if (entry() < 0) {
    return;
  }
  ChartImport table;
  try {
    if (!words_) {
      words_ = loadMeasureWords(resources_);
    }
    table = importTable(text, *words_);
  } catch (const InputError& error) {
    say(Severity::Stop, tr("The table cannot be read"), toQString(error.what()));
    return;
  }
  if (table.columns.size() > kMostColumns) {
    table.problems.push_back({{}, toUtf8(tr("it has more columns than any size chart"))});
  }
  if (!table.problems.empty()) {
    say(Severity::Stop, tr("There is no size chart in %1").arg(source),
        capitalised(toQString(table.problems.front().text)));
    return;
  }
  const BlankId id = blank(static_cast<std::size_t>(entry())).id;
  const auto index = [this, id]() -> std::optional<std::size_t> {
    const auto& blanks = planned()->order()->blanks;
    for (std::size_t i = 0; i < blanks.size(); ++i) {
      if (blanks[i].id == id) {
        return i;
      }
    }
    return std::nullopt;
  };
  const auto judge = [this, index](const SizeChart& chart) {
    ChartImportDialog::Verdict verdict;
    const auto at = index();
    if (!at) {
      verdict.problems.push_back({{}, toUtf8(tr("the garment is gone"))});
    } else if (const auto problem = edits().chartProblem(*at, chart)) {
      verdict.problems.push_back({{}, toUtf8(*problem)});
    } else if (const auto lost = edits().sizesLost(*at, chart); !lost.empty()) {
      QStringList names;
      for (const SizeName& each : lost) {
        names.append(toQString(each.text()));
      }
      verdict.remarks.append(
          tr("Lines of the order lose what this chart lacks: %1.").arg(listed(names)));
    }
    return verdict;
  };
  const GarmentKind* kind = planned()->rules().kind(blank(static_cast<std::size_t>(entry())).kind);
  auto* dialog = new ChartImportDialog(std::move(table), source,
                                       kind == nullptr ? KindForm::Body : kind->form, judge, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog, index] {
    if (const auto at = index()) {
      edit(edits().chart(*at, dialog->chart()));
    }
  });
  dialog->open();
}

}  // namespace creaseline::desk
