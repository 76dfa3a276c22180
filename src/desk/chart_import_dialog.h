// SPDX-License-Identifier: MIT
// The preview of a size chart from the clipboard or a file: what each column is and in which unit
// stands over it, to be put right; what is wrong is listed with line and column; only a chart
// without problems can be taken.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <functional>
#include <vector>

#include "creaseline/catalogue/chart_import.h"
#include "creaseline/catalogue/garment_kind.h"

namespace creaseline::desk {

class ChartImportDialog : public QDialog {
  Q_OBJECT

 public:
  // What speaks against a chart that could be read as such: problems that forbid to take it, and
  // remarks that do not.
  struct Verdict {
    std::vector<ImportProblem> problems;
    QStringList remarks;
  };
  using Judge = std::function<Verdict(const SizeChart&)>;

  // `source`: where the table is from, for the title; `form` names the points of measure.
  ChartImportDialog(ChartImport table, const QString& source, KindForm form, Judge judge,
                    QWidget* parent);

  // Of what is chosen; usable once the button to take it can be pressed.
  [[nodiscard]] const SizeChart& chart() const { return result_.chart; }

 private:
  static constexpr int kRoleRow = 0, kUnitRow = 1, kGirthRow = 2, kChoiceRows = 3;

  void build(const QString& source);
  QLayout* buildUnitOfAll();
  void buildTable();
  void buildColumn(int column);
  QComboBox* roleChoice(int column);
  QComboBox* unitChoice(int column);
  QCheckBox* girthChoice(int column);
  void fillCells();
  void takeTyped(const QTableWidgetItem* item);
  void markCells();
  void setRole(int column, int index);
  void judge();
  void showProblems(const std::vector<ImportProblem>& problems);
  void jumpTo(int problem);
  [[nodiscard]] QString columnName(int column) const;
  [[nodiscard]] ImportColumn& columnAt(int column) {
    return table_.columns.at(static_cast<std::size_t>(column));
  }

  ChartImport table_;
  KindForm form_;
  Judge judge_;
  ImportedChart result_;
  std::vector<TablePlace> places_;  // of the problems listed
  QComboBox* unitOfAll_ = nullptr;
  QTableWidget* cells_ = nullptr;
  std::vector<QComboBox*> roles_, units_;
  std::vector<QCheckBox*> girths_;
  QLabel* summary_ = nullptr;
  QListWidget* problems_ = nullptr;
  QLabel* heading_ = nullptr;
  QPushButton *take_ = nullptr, *cancel_ = nullptr;
};

}  // namespace creaseline::desk
