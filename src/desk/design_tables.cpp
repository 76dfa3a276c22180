// SPDX-License-Identifier: MIT
#include "desk/design_tables.h"

#include <QLocale>
#include <QVBoxLayout>

#include "creaseline/catalogue/field_check.h"
#include "desk/catalogue_words.h"
#include "desk/form_parts.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

std::size_t at(int row) {
  return static_cast<std::size_t>(row);
}

}  // namespace

DesignTables::DesignTables(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("designTables"));
  blocks_ = buildBlocks();
  pieces_ = buildPieces();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(blocks_, 3);
  layout->addWidget(pieces_, 2);
}

DesignEdits DesignTables::edits() const {
  return {*planned_->order(), planned_->units()};
}

void DesignTables::show(const std::shared_ptr<const PlannedOrder>& planned, std::size_t index) {
  planned_ = planned;
  design_ = index;
  const Design& shown = design();
  const int blocks = static_cast<int>(shown.blocks.size());
  blocks_->show(blocks);
  blocks_->setNote(
      blocks == 0
          ? tr("No blocks: the design has one total of stitches. A block that "
               "is added takes it over.")
          : tr("In sewing order. Together %1 stitches, the design's total.").arg(shown.stitches));
  pieces_->show(static_cast<int>(shown.pieces.size()));
}

// ---- Thread blocks -----------------------------------------------------------------------------

void DesignTables::changeBlock(int row, const std::function<void(ThreadBlock&)>& change) {
  ThreadBlock changed = block(row);
  change(changed);
  Q_EMIT edited(edits().block(design_, at(row), changed));
}

std::optional<QString> DesignTables::blockProblem(
    int row, const std::function<void(ThreadBlock&)>& change) const {
  ThreadBlock changed = block(row);
  change(changed);
  return edits().blockProblem(design_, at(row), changed);
}

EntryColumn DesignTables::threadColumn() {
  return {tr("Thread"), [this](int row) { return toQString(block(row).thread); },
          [](int, const QString& text) { return problemOf(checkLabel(toUtf8(text), false)); },
          [this](int row, const QString& text) {
            changeBlock(row,
                        [&](ThreadBlock& changed) { changed.thread = toUtf8(text.trimmed()); });
          }};
}

EntryColumn DesignTables::colourColumn() {
  EntryColumn column{
      tr("Colour"), [this](int row) { return toQString(colourText(block(row).colour)); },
      [](int, const QString& text) { return problemOf(typedColour(text)); },
      [this](int row, const QString& text) {
        changeBlock(row, [&](ThreadBlock& changed) { changed.colour = *typedColour(text); });
      }};
  column.sample = [this](int row) {
    const Colour shown = block(row).colour;
    return QColor(shown.red, shown.green, shown.blue);
  };
  return column;
}

EntryColumn DesignTables::stitchesColumn() {
  EntryColumn column{
      tr("Stitches"), [this](int row) { return QString::number(block(row).stitches); },
      [this](int row, const QString& text) -> std::optional<QString> {
        const auto stitches = checkStitches(toUtf8(text));
        return stitches
                   ? blockProblem(row, [&](ThreadBlock& changed) { changed.stitches = *stitches; })
                   : problemOf(stitches);
      },
      [this](int row, const QString& text) {
        changeBlock(row,
                    [&](ThreadBlock& changed) { changed.stitches = *checkStitches(toUtf8(text)); });
      }};
  column.number = true;
  return column;
}

std::optional<BlockKind> DesignTables::kindOf(const QString& word) {
  for (const auto& entry : EnumNames<BlockKind>::names) {
    if (blockKindWord(entry.first) == word) {
      return entry.first;
    }
  }
  return std::nullopt;
}

EntryColumn DesignTables::kindColumn() {
  EntryColumn column{
      tr("What it does"), [this](int row) { return blockKindWord(block(row).kind); },
      [this](int row, const QString& text) -> std::optional<QString> {
        const auto kind = kindOf(text);
        return kind ? blockProblem(row, [&](ThreadBlock& changed) { changed.kind = *kind; })
                    : std::optional(tr("Choose one of the list"));
      },
      [this](int row, const QString& text) {
        changeBlock(row, [&](ThreadBlock& changed) { changed.kind = *kindOf(text); });
      }};
  column.choices = [](int) {
    QStringList words;
    for (const auto& entry : EnumNames<BlockKind>::names) {
      words.append(blockKindWord(entry.first));
    }
    return words;
  };
  return column;
}

QStringList DesignTables::pieceNames() const {
  QStringList names{tr("every", "appliqué piece")};
  for (const AppliquePiece& each : design().pieces) {
    names.append(toQString(each.name));
  }
  return names;
}

std::string DesignTables::pieceOf(const QString& text) const {
  const bool every = text.isEmpty() || text == pieceNames().first();
  return every ? std::string() : toUtf8(text);
}

EntryColumn DesignTables::pieceColumn() {
  EntryColumn column{tr("Piece"),
                     [this](int row) {
                       const ThreadBlock& shown = block(row);
                       return !shown.piece.empty()           ? toQString(shown.piece)
                              : shown.kind == BlockKind::Sew ? QString()
                                                             : pieceNames().first();
                     },
                     [this](int, const QString& text) -> std::optional<QString> {
                       return text.isEmpty() || pieceNames().contains(text)
                                  ? std::nullopt
                                  : std::optional(tr("Choose one of the list"));
                     },
                     [this](int row, const QString& text) {
                       changeBlock(row,
                                   [&](ThreadBlock& changed) { changed.piece = pieceOf(text); });
                     }};
  column.choices = [this](int) { return pieceNames(); };
  return column;
}

EntryTable* DesignTables::buildBlocks() {
  EntryTable::Deeds deeds;
  deeds.add = [this] {
    const int row = blocks_->table().row();
    const int count = static_cast<int>(design().blocks.size());
    const int place = row < 0 ? count : row + 1;
    Q_EMIT edited(edits().addBlock(design_, at(place)));
    blocks_->chooseRow(place);
  };
  deeds.remove = [this](int row) { Q_EMIT edited(edits().removeBlock(design_, at(row))); };
  deeds.shift = [this](int row, int by) {
    Q_EMIT edited(edits().shiftBlock(design_, at(row), by));
  };
  deeds.colourColumn = 1;
  auto* made = new EntryTable(
      QStringLiteral("designBlocks"), tr("Thread blocks"), tr("thread block"),
      {threadColumn(), colourColumn(), stitchesColumn(), kindColumn(), pieceColumn()}, deeds, this);
  made->setColumnWidths({16, 15, 12, 18});
  return made;
}

// ---- Appliqué pieces ---------------------------------------------------------------------------

void DesignTables::changePiece(int row, const std::function<void(AppliquePiece&)>& change) {
  AppliquePiece changed = piece(row);
  change(changed);
  Q_EMIT edited(edits().piece(design_, at(row), changed));
}

EntryColumn DesignTables::pieceNameColumn() {
  return {tr("Name"), [this](int row) { return toQString(piece(row).name); },
          [this](int row, const QString& text) -> std::optional<QString> {
            std::vector<std::string> others;
            for (const AppliquePiece& each : design().pieces) {
              if (&each != &piece(row)) {
                others.push_back(each.name);
              }
            }
            return problemOf(checkDistinct(toUtf8(text), others, "piece"));
          },
          [this](int row, const QString& text) {
            changePiece(row,
                        [&](AppliquePiece& changed) { changed.name = toUtf8(text.trimmed()); });
          }};
}

EntryColumn DesignTables::pieceFabricColumn() {
  return {tr("Fabric"), [this](int row) { return toQString(piece(row).fabric); },
          [](int, const QString& text) { return problemOf(checkLabel(toUtf8(text), false)); },
          [this](int row, const QString& text) {
            changePiece(row,
                        [&](AppliquePiece& changed) { changed.fabric = toUtf8(text.trimmed()); });
          }};
}

EntryColumn DesignTables::pieceSideColumn(const QString& title, Length AppliquePiece::*side) {
  EntryColumn column{title,
                     [this, side](int row) {
                       return toQString(fieldText(piece(row).*side, planned_->units().length));
                     },
                     [this](int, const QString& text) {
                       return problemOf(checkDesignSide(toUtf8(text), planned_->units().length));
                     },
                     [this, side](int row, const QString& text) {
                       changePiece(row, [&](AppliquePiece& changed) {
                         changed.*side = *checkDesignSide(toUtf8(text), planned_->units().length);
                       });
                     }};
  column.number = true;
  return column;
}

EntryTable* DesignTables::buildPieces() {
  EntryTable::Deeds deeds;
  deeds.add = [this] {
    Q_EMIT edited(edits().addPiece(design_));
    pieces_->chooseRow(static_cast<int>(design().pieces.size()) - 1);
  };
  deeds.remove = [this](int row) {
    const auto problem = edits().removePieceProblem(design_, at(row));
    pieces_->say(problem.value_or(QString()));
    if (!problem) {
      Q_EMIT edited(edits().removePiece(design_, at(row)));
    }
  };
  deeds.shift = [this](int row, int by) {
    Q_EMIT edited(edits().shiftPiece(design_, at(row), by));
  };
  auto* made = new EntryTable(
      QStringLiteral("designPieces"), tr("Appliqué pieces"), tr("appliqué piece"),
      {pieceNameColumn(), pieceFabricColumn(), pieceSideColumn(tr("Width"), &AppliquePiece::width),
       pieceSideColumn(tr("Height"), &AppliquePiece::height)},
      deeds, this);
  made->setColumnWidths({18, 24, 14});
  made->setNote(tr("Cut from fabric, laid on and covered by the blocks above."));
  return made;
}

}  // namespace creaseline::desk
