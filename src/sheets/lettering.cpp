// SPDX-License-Identifier: MIT
// Text at one reference size, scaled by the painter: QFont knows only whole pixels and
// device-dependent points, neither of which serves a painter whose unit is the millimetre.
#include "sheets/lettering.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QHash>
#include <algorithm>

#include "base/worded.h"

namespace creaseline::lettering {
namespace {

constexpr int kReferencePixels = 200;  // large enough that rounded advances do not show
const QString kFamily = QStringLiteral("DejaVu Sans");

const QFont& font(bool bold) {
  static const auto make = [](bool heavy) {
    QFont result(kFamily);
    result.setStyleHint(QFont::SansSerif);
    result.setPixelSize(kReferencePixels);
    result.setHintingPreference(QFont::PreferNoHinting);
    result.setBold(heavy);
    result.setKerning(true);
    return result;
  };
  static const QFont regular = make(false);
  static const QFont heavy = make(true);
  return bold ? heavy : regular;
}

// Shaping a text is most of the work of laying out a page, and pages repeat their texts: when they
// are counted and when they are painted, and from page to page. So widths are kept for a while.
double referenceWidth(const QString& text, bool bold) {
  constexpr qsizetype kMostKept = 20'000;
  thread_local QHash<QString, double> regular;
  thread_local QHash<QString, double> heavy;
  QHash<QString, double>& kept = bold ? heavy : regular;
  if (const auto known = kept.constFind(text); known != kept.constEnd()) {
    return *known;
  }
  if (kept.size() >= kMostKept) {
    kept.clear();
  }
  const double width = QFontMetricsF(font(bold)).horizontalAdvance(text);
  kept.insert(text, width);
  return width;
}

// Leading part of a word that fits, at least one character; surrogate pairs stay whole.
qsizetype fittingPart(const QString& word, TextStyle style, double width) {
  qsizetype count = 1;
  while (count < word.size() && textWidth(word.left(count + 1), style) <= width) {
    ++count;
  }
  if (count < word.size() && word.at(count - 1).isHighSurrogate()) {
    ++count;
  }
  return count;
}

bool isFraction(QStringView word) {
  const qsizetype bar = word.indexOf(u'/');
  return bar > 0 && bar + 1 < word.size() && word.front().isDigit() && word.at(bar + 1).isDigit();
}

bool isUnit(QStringView word) {
  static const QStringList kUnits = {
      QStringLiteral("in"),   QStringLiteral("mm"),     QStringLiteral("cm"), QStringLiteral("m"),
      QStringLiteral("yd"),   QStringLiteral("s"),      QStringLiteral("h"),  QStringLiteral("min"),
      QStringLiteral("g/m²"), QStringLiteral("oz/yd²"), QStringLiteral("%")};
  while (!word.isEmpty() && QStringView(u".,;:)”").contains(word.back())) {
    word.chop(1);
  }
  return kUnits.contains(word);
}

// Words between which a line may break: a number stays with its fraction and its unit.
QStringList breakableWords(const QString& paragraph) {
  QStringList words;
  for (const QString& word : paragraph.split(u' ', Qt::SkipEmptyParts)) {
    const bool afterNumber = !words.isEmpty() && words.back().back().isDigit();
    if (afterNumber && (isFraction(word) || isUnit(word))) {
      words.back() += u' ' + word;
    } else {
      words << word;
    }
  }
  return words;
}

}  // namespace

double textWidth(const QString& text, TextStyle style) {
  return referenceWidth(text, style.bold) * style.size / kReferencePixels;
}

QStringList wrapped(const QString& text, TextStyle style, double width) {
  QStringList lines;
  for (const QString& paragraph : text.split(u'\n')) {
    QString line;
    for (QString word : breakableWords(paragraph)) {
      const QString longer = line.isEmpty() ? word : line + u' ' + word;
      if (textWidth(longer, style) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines << line;
      }
      while (textWidth(word, style) > width && word.size() > 1) {
        const qsizetype part = fittingPart(word, style, width);
        if (part >= word.size()) {
          break;
        }
        lines << word.left(part);
        word = word.mid(part);
      }
      line = word;
    }
    lines << line;
  }
  return lines;
}

double widestWord(const QString& text, TextStyle style) {
  double widest = 0.0;
  for (const QString& word : breakableWords(text)) {
    widest = std::max(widest, textWidth(word, style));
  }
  return widest;
}

QString elided(const QString& text, TextStyle style, double width) {
  return QFontMetricsF(font(style.bold))
      .elidedText(text, Qt::ElideRight, width * kReferencePixels / style.size);
}

double wrappedHeight(const QString& text, TextStyle style, double width) {
  return static_cast<double>(wrapped(text, style, width).size()) * lineHeight(style);
}

void draw(QPainter& painter, QPointF topLeft, const QString& text, TextStyle style,
          const QColor& colour) {
  if (text.isEmpty()) {
    return;
  }
  painter.save();
  painter.translate(topLeft.x(), topLeft.y() + baseline(style));
  const double factor = style.size / kReferencePixels;
  painter.scale(factor, factor);
  painter.setFont(font(style.bold));
  painter.setPen(colour);
  painter.drawText(QPointF(0.0, 0.0), text);
  painter.restore();
}

double drawWrapped(QPainter& painter, QPointF topLeft, double width, const QString& text,
                   TextStyle style, const QColor& colour) {
  double y = 0.0;
  for (const QString& line : wrapped(text, style, width)) {
    draw(painter, topLeft + QPointF(0.0, y), line, style, colour);
    y += lineHeight(style);
  }
  return y;
}

std::string missingFontNote() {
  if (QFontDatabase::hasFamily(kFamily)) {
    return {};
  }
  return worded(
      "the font DejaVu Sans is missing, so the sheets use another one and may look uneven; install "
      "the package fonts-dejavu-core");
}

}  // namespace creaseline::lettering
