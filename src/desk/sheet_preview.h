// SPDX-License-Identifier: MIT
// Shows one page on the table's ground, whole or in the size that it has on paper. The picture of
// the page is made elsewhere, for the scale that this asks for.
#pragma once

#include <QAbstractScrollArea>
#include <QImage>
#include <QSizeF>
#include <QString>

namespace creaseline::desk {

class SheetPreview : public QAbstractScrollArea {
  Q_OBJECT

 public:
  enum class Zoom { FitPage, ActualSize };

  explicit SheetPreview(QWidget* parent = nullptr);

  void setZoom(Zoom zoom);
  [[nodiscard]] Zoom zoom() const { return zoom_; }
  // Millimetres. The page that is shown is stretched into it until a new picture comes.
  void setPaper(const QSizeF& paper);
  void setPicture(const QImage& picture);
  [[nodiscard]] const QImage& picture() const { return picture_; }
  // Words instead of a page.
  void say(const QString& words);
  [[nodiscard]] const QString& words() const { return words_; }

  // Logical pixels a millimetre; ActualSize takes 96 pixels for an inch, as the desk's table does.
  [[nodiscard]] double pixelsPerMm() const;
  [[nodiscard]] int percentOfTrueSize() const;

 Q_SIGNALS:
  void scaleChanged();
  // The wheel was turned past the page's end: -1 back, 1 on.
  void turned(int pages);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 private:
  [[nodiscard]] QRectF pageRect() const;
  void updateScrollBars();

  Zoom zoom_ = Zoom::FitPage;
  QSizeF paper_{210.0, 297.0};
  QImage picture_;
  QString words_;
  int wheel_ = 0;  // turned so far, in eighths of a degree
};

}  // namespace creaseline::desk
