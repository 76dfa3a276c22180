// SPDX-License-Identifier: MIT
#include "desk/designs_window.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <algorithm>

#include "creaseline/base/file.h"
#include "creaseline/catalogue/outline_files.h"
#include "desk/file_questions.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

LibraryWindow::Words wordsOfDesigns() {
  return {DesignsWindow::tr("Desi&gns"),
          DesignsWindow::tr("&New design"),
          DesignsWindow::tr("From a &file…"),
          DesignsWindow::tr("Duplicate the design"),
          DesignsWindow::tr("Remove the design from the order"),
          DesignsWindow::tr("The order has no designs yet. Add a new one, or one from a file.")};
}

// A folder by its links, so that a path from one to another is the same however they were named.
std::filesystem::path plainFolder(const std::filesystem::path& folder) {
  std::error_code error;
  const std::filesystem::path plain = std::filesystem::weakly_canonical(folder, error);
  return error ? folder : plain;
}

}  // namespace

DesignsWindow::DesignsWindow(Settings& settings, Document& document, QWidget* parent)
    : LibraryWindow(QStringLiteral("designs"), wordsOfDesigns(), settings, document, parent) {
  auto* right = new QWidget(this);
  form_ = new DesignForm(right);
  tables_ = new DesignTables(right);
  auto* layout = new QHBoxLayout(right);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(form_, 4);
  layout->addWidget(tables_, 6);
  connect(form_, &DesignForm::edited, this, [this](const OrderEdit& asked) { edit(asked); });
  connect(form_, &DesignForm::refused, this, [this](const QString& problem) {
    say(Severity::Stop, tr("The monogram stays as it is"), problem);
  });
  connect(form_, &DesignForm::drawingAsked, this, [this] { askForOutline(OutlineSource::Svg); });
  connect(form_, &DesignForm::pictureAsked, this, [this] { askForOutline(OutlineSource::Png); });
  connect(form_, &DesignForm::dotsPerInchAsked, this, &DesignsWindow::readPictureAgain);
  connect(form_, &DesignForm::pictureWidthGiven, this, &DesignsWindow::takeWidth);
  connect(tables_, &DesignTables::edited, this, [this](const OrderEdit& asked) { edit(asked); });
  setForm(right);
}

DesignEdits DesignsWindow::edits() const {
  return {*planned()->order(), planned()->units()};
}

std::vector<LibraryWindow::Entry> DesignsWindow::entries() const {
  std::vector<Entry> result;
  for (const Design& each : planned()->order()->designs) {
    result.push_back(
        {toQString(each.name), tr("%1 × %2, %n stitch(es)", "width, height", each.stitches)
                                   .arg(toQString(formatLength(each.width, planned()->units())),
                                        toQString(formatLength(each.height, planned()->units())))});
  }
  return result;
}

void DesignsWindow::showEntry(std::size_t index) {
  if (!waiting_.empty() && design(index).id != waitingFor_) {
    letPictureGo();
  }
  form_->show(planned(), index);
  tables_->show(planned(), index);
}

// ---- The list ----------------------------------------------------------------------------------

void DesignsWindow::addFresh() {
  if (edit(edits().add())) {
    chooseEntry(static_cast<int>(planned()->order()->designs.size()) - 1);
    form_->setFocus(Qt::TabFocusReason);  // as by Tab, ready to be typed over
  }
}

void DesignsWindow::addFromFile() {
  try {
    const auto loaded = askForDesign(this, folder());
    if (!loaded) {
      return;
    }
    if (document().orderInHand()->design(loaded->value.id) != nullptr) {
      say(Severity::Watch, tr("The order has this design already"),
          tr("A design with the id “%1” is in the list. Duplicate that one, or give it another id "
             "first.")
              .arg(toQString(loaded->value.id.text())));
      return;
    }
    document().referTo(loaded->original);
    if (edit(edits().addCopyOf(loaded->value))) {
      chooseEntry(static_cast<int>(planned()->order()->designs.size()) - 1);
    }
  } catch (const InputError& error) {
    say(Severity::Stop, tr("The design cannot be added"), toQString(error.what()));
  }
}

void DesignsWindow::duplicateEntry(std::size_t index) {
  OrderEdit asked = edits().duplicate(index);
  // The copy lies in the order itself, and its paths lead from there.
  Design& copy = asked.order.designs.at(index + 1);
  if (!copy.outlineFile.empty()) {
    const std::filesystem::path file =
        plainFolder(pathsFrom(design(index))) / toPath(toQString(copy.outlineFile));
    const std::filesystem::path from = document().state().folder;
    copy.outlineFile = toUtf8(pathText(from.empty() ? file.lexically_normal()
                                                    : file.lexically_relative(plainFolder(from))));
  }
  if (edit(asked)) {
    chooseEntry(static_cast<int>(index) + 1);
  }
}

void DesignsWindow::removeEntry(std::size_t index) {
  if (const auto problem = edits().removeProblem(index)) {
    say(Severity::Stop, tr("The design stays in the order"), *problem);
    return;
  }
  edit(edits().remove(index));
}

void DesignsWindow::saveEntry(std::size_t index) {
  const Design saved = design(index);
  const auto file = askForFile(tr("Save the design to a file of its own"),
                               toQString(saved.id.text()), QStringLiteral(".design.json"));
  if (!file) {
    return;
  }
  // The path of its outline must lead to the same drawing, undone or not.
  const std::filesystem::path from = pathsFrom(saved);
  if (!saved.outlineFile.empty() &&
      (from.empty() || plainFolder(from) != plainFolder(file->parent_path()))) {
    say(Severity::Watch, tr("The design was not saved there"),
        from.empty()
            ? tr("Save the order first, so that the path to its outline is known.")
            : tr("Its outline is in %1. Save the design in %2, from where the path to it "
                 "leads.")
                  .arg(toQString(saved.outlineFile), QDir::toNativeSeparators(pathText(from))));
    return;
  }
  try {
    SaveStyle style;
    style.lengths = planned()->units().length;
    Original<Design> none;
    none.file = *file;
    document().referTo(saveDesign(*file, saved, none, style, stampOf(*file)).original);
    say(Severity::Note, tr("%1 has a file of its own").arg(toQString(saved.name)),
        tr("%1. Save the order as well, so that it refers to the file.")
            .arg(QDir::toNativeSeparators(pathText(*file))));
  } catch (const std::exception& error) {
    say(Severity::Stop, tr("The design was not saved"), toQString(error.what()));
  }
}

// ---- Outline -----------------------------------------------------------------------------------

const Original<Design>* DesignsWindow::ownFile(const Design& design) const {
  const auto& designs = document().original().designs;
  const auto found = std::find_if(
      designs.begin(), designs.end(),
      [&](const Original<Design>& each) { return each.value && each.value->id == design.id; });
  return found == designs.end() ? nullptr : &*found;
}

std::filesystem::path DesignsWindow::pathsFrom(const Design& design) const {
  if (const Original<Design>* own = ownFile(design)) {
    return own->file.parent_path();
  }
  return document().state().folder;
}

void DesignsWindow::askForOutline(OutlineSource source) {
  if (entry() < 0) {
    return;
  }
  const bool drawing = source == OutlineSource::Svg;
  const QString file = QFileDialog::getOpenFileName(
      this, drawing ? tr("Outline from a drawing") : tr("Outline from a picture"), folder(),
      drawing ? tr("Drawings (*.svg)") : tr("Pictures (*.png)"));
  if (!file.isEmpty()) {
    drawing ? takeOutline(source, toPath(file), 0.0) : takePicture(toPath(file));
  }
}

void DesignsWindow::takePicture(const std::filesystem::path& file) {
  letPictureGo();
  try {
    if (form_->dotsPerInch() > 0.0 || pngSaysItsSize(file)) {
      takeOutline(OutlineSource::Png, file, form_->dotsPerInch());
      return;
    }
    waiting_ = file;
    waitingFor_ = design(static_cast<std::size_t>(entry())).id;
    form_->askPictureWidth(pathText(file.filename()));
  } catch (const InputError& error) {
    say(Severity::Stop, tr("The outline cannot be taken"), toQString(error.what()));
  }
}

void DesignsWindow::takeWidth(Length width) {
  if (waiting_.empty()) {
    return;
  }
  try {
    const std::filesystem::path file = waiting_;
    takeOutline(OutlineSource::Png, file, pngDotsPerInchFor(file, width));
  } catch (const InputError& error) {
    say(Severity::Stop, tr("The outline cannot be taken"), toQString(error.what()));
  }
}

void DesignsWindow::letPictureGo() {
  waiting_.clear();
  form_->forgetPicture();
}

void DesignsWindow::takeOutline(OutlineSource source, const std::filesystem::path& file,
                                double dotsPerInch) {
  const auto index = static_cast<std::size_t>(entry());
  try {
    const Outline outline =
        source == OutlineSource::Svg ? readSvgOutline(file) : readPngOutline(file, dotsPerInch);
    if (const auto problem = edits().outlineProblem(index, outline)) {
      say(Severity::Stop, tr("The outline cannot be taken"), *problem);
      return;
    }
    const std::filesystem::path from = pathsFrom(design(index));
    const std::filesystem::path plain = plainFolder(file.parent_path()) / file.filename();
    const std::filesystem::path path =
        from.empty() ? plain : plain.lexically_relative(plainFolder(from));
    letPictureGo();
    edit(edits().outlineFromFile(index, source, outline, toUtf8(pathText(path)), dotsPerInch));
  } catch (const InputError& error) {
    say(Severity::Stop, tr("The outline cannot be taken"), toQString(error.what()));
  }
}

void DesignsWindow::readPictureAgain(double dotsPerInch) {
  if (form_->asksPictureWidth()) {
    takeOutline(OutlineSource::Png, std::filesystem::path(waiting_), dotsPerInch);
    return;
  }
  const Design& shown = design(static_cast<std::size_t>(entry()));
  takeOutline(OutlineSource::Png, pathsFrom(shown) / toPath(toQString(shown.outlineFile)),
              dotsPerInch);
}

}  // namespace creaseline::desk
