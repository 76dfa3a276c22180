// SPDX-License-Identifier: MIT
// The window "Designs": the order's designs with size, outline, thread blocks and pieces.
#pragma once

#include "desk/design_form.h"
#include "desk/design_tables.h"
#include "desk/library_window.h"

namespace creaseline::desk {

class DesignsWindow : public LibraryWindow {
  Q_OBJECT

 public:
  DesignsWindow(Settings& settings, Document& document, QWidget* parent);

 protected:
  [[nodiscard]] std::vector<Entry> entries() const override;
  void showEntry(std::size_t index) override;
  void addFresh() override;
  void addFromFile() override;
  void duplicateEntry(std::size_t index) override;
  void removeEntry(std::size_t index) override;
  void saveEntry(std::size_t index) override;

 private:
  [[nodiscard]] DesignEdits edits() const;
  [[nodiscard]] const Design& design(std::size_t index) const {
    return planned()->order()->designs.at(index);
  }
  // The file of its own that the design lies in, if any.
  [[nodiscard]] const Original<Design>* ownFile(const Design& design) const;
  // That the path of an outline leads from; empty: the order is in no file yet.
  [[nodiscard]] std::filesystem::path pathsFrom(const Design& design) const;
  void askForOutline(OutlineSource source);
  void takeOutline(OutlineSource source, const std::filesystem::path& file, double dotsPerInch);
  void readPictureAgain(double dotsPerInch);
  // A picture that does not say how large it is waits for its width.
  void takePicture(const std::filesystem::path& file);
  void takeWidth(Length width);
  void letPictureGo();

  DesignForm* form_ = nullptr;
  DesignTables* tables_ = nullptr;
  std::filesystem::path waiting_;  // that picture; empty: none
  DesignId waitingFor_;            // the design that it is for
};

}  // namespace creaseline::desk
