// SPDX-License-Identifier: MIT
// What a design is sewn with: its thread blocks in sewing order and its appliqué pieces.
#pragma once

#include <QWidget>
#include <memory>

#include "desk/design_edits.h"
#include "desk/entry_table.h"

namespace creaseline::desk {

class DesignTables : public QWidget {
  Q_OBJECT

 public:
  explicit DesignTables(QWidget* parent = nullptr);
  void show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t design);

 Q_SIGNALS:
  void edited(const creaseline::desk::OrderEdit& edit);

 private:
  EntryTable* buildBlocks();
  EntryTable* buildPieces();
  EntryColumn threadColumn();
  EntryColumn colourColumn();
  EntryColumn stitchesColumn();
  EntryColumn kindColumn();
  EntryColumn pieceColumn();
  EntryColumn pieceNameColumn();
  EntryColumn pieceFabricColumn();
  EntryColumn pieceSideColumn(const QString& title, Length AppliquePiece::*side);
  void changeBlock(int row, const std::function<void(ThreadBlock&)>& change);
  void changePiece(int row, const std::function<void(AppliquePiece&)>& change);
  [[nodiscard]] DesignEdits edits() const;
  [[nodiscard]] const Design& design() const { return planned_->order()->designs.at(design_); }
  [[nodiscard]] const ThreadBlock& block(int row) const {
    return design().blocks.at(static_cast<std::size_t>(row));
  }
  [[nodiscard]] const AppliquePiece& piece(int row) const {
    return design().pieces.at(static_cast<std::size_t>(row));
  }
  [[nodiscard]] std::optional<QString> blockProblem(
      int row, const std::function<void(ThreadBlock&)>& change) const;
  [[nodiscard]] static std::optional<BlockKind> kindOf(const QString& word);
  [[nodiscard]] QStringList pieceNames() const;
  [[nodiscard]] std::string pieceOf(const QString& text) const;

  std::shared_ptr<const PlannedOrder> planned_;
  std::size_t design_ = 0;
  EntryTable *blocks_ = nullptr, *pieces_ = nullptr;
};

}  // namespace creaseline::desk
