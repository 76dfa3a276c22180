// SPDX-License-Identifier: MIT
// The window "Garments": the order's garments with fabric, colours and size chart.
#pragma once

#include <filesystem>
#include <optional>

#include "creaseline/catalogue/chart_import.h"
#include "desk/chart_panel.h"
#include "desk/garment_form.h"
#include "desk/library_window.h"

namespace creaseline::desk {

class GarmentsWindow : public LibraryWindow {
  Q_OBJECT

 public:
  // `resources`: where the words for points of measure lie.
  GarmentsWindow(Settings& settings, Document& document, const std::filesystem::path& resources,
                 QWidget* parent);

 protected:
  [[nodiscard]] std::vector<Entry> entries() const override;
  void showEntry(std::size_t index) override;
  void addFresh() override;
  void addFromFile() override;
  void duplicateEntry(std::size_t index) override;
  void removeEntry(std::size_t index) override;
  void saveEntry(std::size_t index) override;

 private:
  [[nodiscard]] GarmentEdits edits() const;
  [[nodiscard]] const Blank& blank(std::size_t index) const {
    return planned()->order()->blanks.at(index);
  }
  void pasteChart();
  void importChart();
  void preview(const std::string& text, const QString& source);
  void refuse(const QString& problem);

  std::filesystem::path resources_;
  std::optional<MeasureWords> words_;  // read when they are first needed
  GarmentForm* form_ = nullptr;
  ChartPanel* chart_ = nullptr;
};

}  // namespace creaseline::desk
