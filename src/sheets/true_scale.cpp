// SPDX-License-Identifier: MIT
#include "sheets/true_scale.h"

#include <algorithm>
#include <memory>

#include "sheets/clipping.h"
#include "sheets/figure_painter.h"
#include "sheets/text.h"
#include "sheets/tiling.h"
#include "sheets/typography.h"

namespace creaseline {

using lettering::TextStyle;
using sheets::printed;
using typography::kStrong;
using typography::kText;

namespace {

constexpr double kMapHeight = 13.0;
constexpr double kMapRoom = 16.0;  // of map and tile's words, above the tile
constexpr double kMapWidth = 26.0;
constexpr double kTrueFigureGap = 6.0;  // between two figures on a page

struct JoinMark {
  QPointF at;
  bool upright = false;  // the join runs from top to bottom
  QString name;
};

// Where a word goes on which tile.
using WordPlace = FigureOnPaper::WordPlace;

class TiledFigure {
 public:
  TiledFigure(FigureOnPaper figure, Tiling tiling)
      : figure_(std::move(figure)), tiling_(std::move(tiling)) {
    placeWords();
    placeMarks();
  }

  [[nodiscard]] const Tiling& tiling() const { return tiling_; }

  void paintTile(QPainter& painter, std::size_t index, const QRectF& body) const {
    const Tile& tile = tiling_.tiles[index];
    paintMap(painter, tile, {body.right() - kMapWidth, body.top()});
    paintTileWords(painter, tile, body);
    painter.save();
    painter.translate(body.left(), body.top() + kMapRoom);
    figure_.paint(painter, tile.window, words_[index]);
    painter.translate(-tile.window.topLeft());
    paintJoins(painter, tile);
    painter.restore();
  }

 private:
  // Each word on every tile that shows it whole; a word that none does is moved into the tile that
  // shows most of it.
  void placeWords() {
    words_.resize(tiling_.tiles.size());
    for (const WordPlace& word : figure_.allWords()) {
      bool whole = false;
      std::size_t best = 0;
      double most = -1.0;
      for (std::size_t i = 0; i < tiling_.tiles.size(); ++i) {
        const QRectF& window = tiling_.tiles[i].window;
        if (window.contains(word.box)) {
          words_[i].push_back(word);
          whole = true;
        }
        const QRectF part = window.intersected(word.box);
        if (part.width() * part.height() > most) {
          most = part.width() * part.height();
          best = i;
        }
      }
      if (!whole) {
        const QRectF& window = tiling_.tiles[best].window;
        QRectF box = word.box;
        box.moveLeft(std::clamp(box.left(), window.left(),
                                std::max(window.left(), window.right() - box.width())));
        box.moveTop(std::clamp(box.top(), window.top(),
                               std::max(window.top(), window.bottom() - box.height())));
        words_[best].push_back({word.index, box});
      }
    }
  }

  void placeMarks() {
    int number = 1;
    const auto extent = [](std::size_t index, const std::vector<double>& joins, double length) {
      return std::pair(index == 0 ? 0.0 : joins[index - 1],
                       index == joins.size() ? length : joins[index]);
    };
    for (std::size_t row = 0; row <= tiling_.rowJoins.size(); ++row) {
      const auto [from, to] = extent(row, tiling_.rowJoins, figure_.size().height());
      for (const double x : tiling_.columnJoins) {
        addPair(number++, {x, from}, {x, to}, true);
      }
    }
    for (std::size_t column = 0; column <= tiling_.columnJoins.size(); ++column) {
      const auto [from, to] = extent(column, tiling_.columnJoins, figure_.size().width());
      for (const double y : tiling_.rowJoins) {
        addPair(number++, {from, y}, {to, y}, false);
      }
    }
  }

  void addPair(int number, QPointF from, QPointF to, bool upright) {
    marks_.push_back({freeSpot(from, to, 0.25), upright, QStringLiteral("%1a").arg(number)});
    marks_.push_back({freeSpot(from, to, 0.75), upright, QStringLiteral("%1b").arg(number)});
  }

  // Near that share of the join, off crosses and words.
  [[nodiscard]] QPointF freeSpot(QPointF from, QPointF to, double share) const {
    constexpr double kStep = 0.04;
    constexpr int kSteps = 5;
    std::vector<QRectF> taken = figure_.exact();
    taken.insert(taken.end(), figure_.words().begin(), figure_.words().end());
    const QPointF room(2.0 * kJoinMarkRadius, 2.0 * kJoinMarkRadius);
    for (int step = 0; step <= kSteps; ++step) {
      for (const double sign : {1.0, -1.0}) {
        const QPointF at = from + (to - from) * (share + sign * step * kStep);
        const QRectF spot(at - room, at + room);
        if (std::none_of(taken.begin(), taken.end(),
                         [&](const QRectF& box) { return box.intersects(spot); })) {
          return at;
        }
      }
    }
    return from + (to - from) * share;
  }

  void paintJoins(QPainter& painter, const Tile& tile) const {
    const QRectF& window = tile.window;
    QPen pen(Qt::black, 0.25);
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    const auto dotted = [&painter](QPointF from, QPointF to) {
      for (const QPolygonF& dot : dashes({from, to}, {0.8, 1.0})) {
        painter.drawPolyline(dot);
      }
    };
    for (const double x : tiling_.columnJoins) {
      if (x > window.left() && x < window.right()) {
        dotted({x, window.top()}, {x, window.bottom()});
      }
    }
    for (const double y : tiling_.rowJoins) {
      if (y > window.top() && y < window.bottom()) {
        dotted({window.left(), y}, {window.right(), y});
      }
    }
    for (const JoinMark& mark : marks_) {
      if (window.contains(mark.at)) {
        paintMark(painter, mark, window);
      }
    }
  }

  // The name stands on the part of this tile that stays.
  static void paintMark(QPainter& painter, const JoinMark& mark, const QRectF& window) {
    // With white round it, so that its edge can be seen on any line.
    constexpr double kHalo = kJoinMarkRadius + 0.6;
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::white);
    painter.drawEllipse(mark.at, kHalo, kHalo);
    painter.setBrush(Qt::black);
    painter.drawEllipse(mark.at, kJoinMarkRadius, kJoinMarkRadius);
    painter.setBrush(Qt::NoBrush);
    const double width = lettering::textWidth(mark.name, kStrong);
    const double height = lettering::lineHeight(kStrong);
    QPointF corner = mark.at;
    if (mark.upright) {
      const bool stays = mark.at.x() > window.center().x();
      corner += {stays ? -kHalo - width : kHalo, -height / 2.0};
    } else {
      const bool stays = mark.at.y() > window.center().y();
      corner += {-width / 2.0, stays ? -kHalo - height : kHalo};
    }
    painter.fillRect(QRectF(corner, QSizeF(width, height)), Qt::white);
    lettering::draw(painter, corner, mark.name, kStrong, Qt::black);
  }

  void paintMap(QPainter& painter, const Tile& current, QPointF corner) const {
    const double scale =
        std::min(kMapWidth / figure_.size().width(), kMapHeight / figure_.size().height());
    const double left = corner.x() + kMapWidth - figure_.size().width() * scale;
    for (const Tile& tile : tiling_.tiles) {
      const auto row = static_cast<std::size_t>(tile.row);
      const auto column = static_cast<std::size_t>(tile.column);
      // Without the overlap, as the tiles lie when joined.
      const double x0 = column == 0 ? 0.0 : tiling_.columnJoins[column - 1];
      const double y0 = row == 0 ? 0.0 : tiling_.rowJoins[row - 1];
      const double x1 = column == tiling_.columnJoins.size() ? figure_.size().width()
                                                             : tiling_.columnJoins[column];
      const double y1 =
          row == tiling_.rowJoins.size() ? figure_.size().height() : tiling_.rowJoins[row];
      painter.setPen(QPen(Qt::black, 0.25));
      painter.setBrush(&tile == &current ? QBrush(QColor(90, 90, 90)) : QBrush(Qt::NoBrush));
      painter.drawRect(
          QRectF(left + x0 * scale, corner.y() + y0 * scale, (x1 - x0) * scale, (y1 - y0) * scale));
    }
    painter.setBrush(Qt::NoBrush);
  }

  void paintTileWords(QPainter& painter, const Tile& tile, const QRectF& body) const {
    const QString place = printed("Tile %1 of %2: row %3 of %4, column %5 of %6",
                                  tile.row * tiling_.columns + tile.column + 1, tiling_.count(),
                                  tile.row + 1, tiling_.rows, tile.column + 1, tiling_.columns);
    const double width = body.width() - kMapWidth - 4.0;
    const double used =
        lettering::drawWrapped(painter, body.topLeft(), width, place, kStrong, Qt::black);
    lettering::drawWrapped(painter, body.topLeft() + QPointF(0.0, used), width, howToJoin(tile),
                           kText, Qt::black);
  }

  [[nodiscard]] static QString howToJoin(const Tile& tile) {
    if (tile.row == 0 && tile.column == 0) {
      return printed(
          "Do not cut the dotted lines of this tile: its neighbours are cut and laid on it so that "
          "marks of the same name meet.");
    }
    const QString sides = tile.row == 0      ? printed("at the left")
                          : tile.column == 0 ? printed("at the top")
                                             : printed("at the left and at the top");
    return printed(
        "Cut along the dotted line %1, lay it on the same line of the neighbour so that marks of "
        "the same name meet, and tape.",
        sides);
  }

  FigureOnPaper figure_;
  Tiling tiling_;
  std::vector<std::vector<WordPlace>> words_;  // of each tile
  std::vector<JoinMark> marks_;
};

QSizeF tileRoom(const QRectF& body) {
  return {body.width(), body.height() - kMapRoom};
}

int pagesFor(QSizeF size, const QRectF& body) {
  if (size.width() <= body.width() && size.height() <= body.height()) {
    return 1;
  }
  const QSizeF room = tileRoom(body);
  return tilesFor(size.width(), room.width()) * tilesFor(size.height(), room.height());
}

// Lying as it takes fewer pages; upright if that is the same.
FigureOnPaper layOut(const Figure& figure, const QRectF& body) {
  const QSizeF size(figure.bounds.width(), figure.bounds.height());
  return {figure, pagesFor(size.transposed(), body) < pagesFor(size, body)};
}

using Figures = std::vector<FigureOnPaper>;

// One below the other, each in the middle.
SheetPage pageOf(SheetPage page, Figures figures) {
  page.body = [figures = std::make_shared<const Figures>(std::move(figures))](QPainter& painter,
                                                                              const QRectF& body) {
    double y = body.top();
    for (const FigureOnPaper& figure : *figures) {
      painter.save();
      painter.translate(body.center().x() - figure.size().width() / 2.0, y);
      figure.paint(painter, QRectF(QPointF(), figure.size()), figure.allWords());
      painter.restore();
      y += figure.size().height() + kTrueFigureGap;
    }
  };
  return page;
}

void addTiles(std::vector<SheetPage>& pages, const SheetPage& page, FigureOnPaper figure,
              const QRectF& body) {
  Tiling tiling = tiled(figure.size(), tileRoom(body), figure.words(), figure.exact());
  const auto shared = std::make_shared<const TiledFigure>(std::move(figure), std::move(tiling));
  for (std::size_t i = 0; i < shared->tiling().tiles.size(); ++i) {
    SheetPage tile = page;
    tile.body = [shared, i](QPainter& painter, const QRectF& area) {
      shared->paintTile(painter, i, area);
    };
    pages.push_back(std::move(tile));
  }
}

double heightOf(const Figures& figures) {
  double height = 0.0;
  for (const FigureOnPaper& figure : figures) {
    height += figure.size().height() + kTrueFigureGap;
  }
  return height;
}

}  // namespace

std::vector<SheetPage> trueScalePages(const SheetHead& head, const SheetPage& page,
                                      const std::vector<Figure>& figures) {
  SheetPage model = page;
  model.trueScale = true;
  const QRectF body = sheetBody(head, model);
  std::vector<SheetPage> pages;
  Figures waiting;
  const auto finish = [&] {
    if (!waiting.empty()) {
      pages.push_back(pageOf(model, std::move(waiting)));
      waiting.clear();
    }
  };
  for (const Figure& figure : figures) {
    FigureOnPaper laid = layOut(figure, body);
    if (pagesFor(laid.size(), body) > 1) {
      finish();
      addTiles(pages, model, std::move(laid), body);
      continue;
    }
    if (heightOf(waiting) + laid.size().height() > body.height()) {
      finish();
    }
    waiting.push_back(std::move(laid));
  }
  finish();
  return pages;
}

std::vector<SheetPage> trueScalePages(const SheetHead& head, SheetPage page, const Figure& figure) {
  return trueScalePages(head, page, std::vector<Figure>{figure});
}

}  // namespace creaseline
