// SPDX-License-Identifier: MIT
// creaseline sheets: the only verb that draws, and so the only one that starts Qt.
#include <fmt/format.h>
#include <stdlib.h>

#include <QGuiApplication>
#include <QHashSeed>
#include <optional>

#include "commands.h"
#include "creaseline/base/error.h"
#include "creaseline/base/file.h"
#include "creaseline/sheets/sheet_kind.h"
#include "creaseline/sheets/sheet_set.h"
#include "interruption.h"
#include "output.h"
#include "planning_job.h"
#include "progress_line.h"

namespace creaseline {

namespace {

namespace fs = std::filesystem;

// The sheets are larger than any text that we read.
constexpr std::size_t kLargestSheets = std::size_t{1024} * 1024 * 1024;

// A folder of our own for a PDF on its way to standard output; gone with the object.
class PassingFolder {
 public:
  PassingFolder() {
    std::string name = (fs::temp_directory_path() / "creaseline-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) {
      throw OutputError(name, "no folder can be made there");
    }
    path_ = name;
  }
  ~PassingFolder() {
    std::error_code ignored;  // nothing sensible can be done about a folder that stays
    fs::remove_all(path_, ignored);
  }
  PassingFolder(const PassingFolder&) = delete;
  PassingFolder& operator=(const PassingFolder&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

// The drawing library remarks on the machine it runs on (no runtime folder, no display), which is
// no business of the user's. What matters for the sheets comes back in WrittenSheets::notes.
void passOnFailures(QtMsgType kind, const QMessageLogContext& /*context*/, const QString& text) {
  if (kind == QtCriticalMsg || kind == QtFatalMsg) {
    writeMessage("drawing: " + text.toStdString());
  }
}

// Neither a display nor the user's locale has a say in what is drawn.
void chooseSurroundings() {
  qInstallMessageHandler(passOnFailures);
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("LC_ALL", "C.UTF-8");
}

SheetDocument documentOf(const PlanningJob& job, const Plan& plan, const Arguments& arguments) {
  return sheetSet({plan, job.order, job.shop, job.rules, job.units}, arguments.sheets);
}

SheetOptions optionsOf(const Arguments& arguments, ProgressLine& line) {
  SheetOptions options = arguments.pages;
  options.cancel = &interruptionFlag();
  options.progress = [&line](double share) { line.show(share); };
  return options;
}

WrittenSheets writeTo(const fs::path& path, const SheetDocument& document,
                      const Arguments& arguments) {
  ProgressLine line("drawing", !arguments.quiet);
  const SheetOptions options = optionsOf(arguments, line);
  return arguments.pictures ? writeSheetPictures(document, path, options)
                            : writeSheets(document, path, options);
}

WrittenSheets writeToStandardOutput(const SheetDocument& document, const Arguments& arguments) {
  const PassingFolder folder;
  const fs::path path = folder.path() / "sheets.pdf";
  WrittenSheets written = writeTo(path, document, arguments);
  writeStandardOutput(readFile(path, kLargestSheets));
  return written;
}

// Where the result goes, refused before any work is done.
std::optional<fs::path> checkedTarget(const Arguments& arguments, const PlanningJob& job) {
  if (arguments.pictures) {
    return outputFolder(arguments.output, arguments.force);
  }
  const Output output(arguments.output, arguments.force, job.inputs);
  return output.isStandardOutput() ? std::nullopt : std::optional(output.path());
}

}  // namespace

int runSheets(const Arguments& arguments, const fs::path& program) {
  const PlanningJob job = readJob(arguments, program);
  const std::optional<fs::path> target = checkedTarget(arguments, job);
  const Plan plan = planJob(job, arguments);

  chooseSurroundings();
  // Qt writes a file's fonts in the order of a hash, which it salts anew for each process.
  QHashSeed::setDeterministicGlobalSeed();
  int count = 1;
  char name[] = "creaseline";
  char* words[] = {name, nullptr};
  const QGuiApplication application(count, words);
  const SheetDocument document = documentOf(job, plan, arguments);
  const WrittenSheets written =
      target ? writeTo(*target, document, arguments) : writeToStandardOutput(document, arguments);
  if (!arguments.quiet) {
    for (const std::string& note : written.notes) {
      writeMessage("note: " + note);
    }
    if (target) {
      writeMessage(fmt::format("wrote {}: {} {}; {}", arguments.output, written.pages,
                               written.pages == 1 ? "page" : "pages", summaryOf(plan)));
    }
  }
  return exitCodeOf(plan);
}

}  // namespace creaseline
