// SPDX-License-Identifier: MIT
#include "desk/catalogue_words.h"

#include <QCoreApplication>

namespace creaseline::desk {

namespace {

struct CatalogueWords {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::CatalogueWords)
};

QString tr(const char* text) {
  return CatalogueWords::tr(text);
}

QString bodyMeasureWord(Measure measure) {
  switch (measure) {
    case Measure::BodyWidth:
      return tr("Pit to pit");
    case Measure::BodyLength:
      return tr("Body length");
    case Measure::NeckWidth:
      return tr("Neck width");
    case Measure::FrontNeckDrop:
      return tr("Front neck drop");
    case Measure::BackNeckDrop:
      return tr("Back neck drop");
    case Measure::ShoulderWidth:
      return tr("Shoulder width");
    case Measure::ShoulderDrop:
      return tr("Shoulder drop");
    case Measure::ArmholeDepth:
      return tr("Armhole depth");
    case Measure::SleeveLength:
      return tr("Sleeve length");
    case Measure::SleeveWidth:
      return tr("Sleeve width");
    case Measure::CuffWidth:
      return tr("Cuff width");
    case Measure::RibHeight:
      return tr("Hem rib height");
    case Measure::CuffHeight:
      return tr("Cuff height");
    case Measure::HoodHeight:
      return tr("Hood height");
    case Measure::HoodDepth:
      return tr("Hood depth");
    case Measure::PocketWidth:
      return tr("Pocket width");
    case Measure::PocketTopWidth:
      return tr("Pocket top width");
    case Measure::PocketHeight:
      return tr("Pocket height");
    case Measure::PocketAboveHem:
      return tr("Pocket above hem");
    case Measure::PlacketLength:
      return tr("Placket length");
    case Measure::PlacketWidth:
      return tr("Placket width");
    case Measure::CollarHeight:
      return tr("Collar height");
    case Measure::ZipWidth:
      return tr("Zip width");
    case Measure::ZipLength:
      return tr("Zip length");
    case Measure::YokeDepth:
      return tr("Yoke depth");
    case Measure::PocketFromCentre:
      return tr("Pocket from centre");
    case Measure::PocketBelowHps:
      return tr("Pocket below shoulder");
    case Measure::LegRise:
      return tr("Leg rise");
    case Measure::CrotchWidth:
      return tr("Crotch width");
    case Measure::TopWidth:
      return tr("Top width");
    case Measure::ShapedDepth:
      return tr("Shaped depth");
    case Measure::BorderHeight:
      return tr("Border height");
    case Measure::BorderAboveHem:
      return tr("Border above hem");
    case Measure::StrapFromCentre:
      return tr("Strap from centre");
    case Measure::WaistWidth:
      return tr("Waist width");
    case Measure::FrontRise:
      return tr("Front rise");
    case Measure::ThighWidth:
      return tr("Thigh width");
    case Measure::LegHemWidth:
      return tr("Leg hem width");
    case Measure::WaistbandHeight:
      return tr("Waistband height");
  }
  return {};
}

}  // namespace

QString uncapitalised(const QString& word) {
  return word.left(1).toLower() + word.mid(1);
}

QString measureWord(Measure measure, KindForm form) {
  if (form != KindForm::Body && measure == Measure::BodyWidth) {
    return form == KindForm::Flat ? tr("Full width") : tr("Hip width");
  }
  if (form != KindForm::Body && measure == Measure::BodyLength) {
    return tr("Length");
  }
  return bodyMeasureWord(measure);
}

QString bandWord(SizeBand band) {
  switch (band) {
    case SizeBand::Infant:
      return tr("Infant");
    case SizeBand::Youth:
      return tr("Youth");
    case SizeBand::Adult:
      return tr("Adult up to XL");
    case SizeBand::AdultAboveXl:
      return tr("Adult above XL");
  }
  return {};
}

QString constructionWord(Construction construction) {
  switch (construction) {
    case Construction::Woven:
      return tr("Woven");
    case Construction::Knit:
      return tr("Knit");
    case Construction::Nonwoven:
      return tr("Nonwoven");
  }
  return {};
}

QString pileWord(Pile pile) {
  switch (pile) {
    case Pile::None:
      return tr("Smooth");
    case Pile::BrushedInside:
      return tr("Brushed inside");
    case Pile::Textured:
      return tr("Textured");
    case Pile::Loop:
      return tr("Loops");
    case Pile::High:
      return tr("High pile");
  }
  return {};
}

QString stretchWord(Stretch stretch) {
  switch (stretch) {
    case Stretch::None:
      return tr("None");
    case Stretch::Some:
      return tr("Some");
    case Stretch::High:
      return tr("High");
  }
  return {};
}

QString blockKindWord(BlockKind kind) {
  switch (kind) {
    case BlockKind::PlacementLine:
      return tr("Placement line");
    case BlockKind::TackDown:
      return tr("Tack-down");
    case BlockKind::Cover:
      return tr("Cover");
    case BlockKind::Sew:
      return tr("Sewing");
  }
  return {};
}

QString monogramStyleWord(MonogramStyle style) {
  switch (style) {
    case MonogramStyle::LargerCentre:
      return tr("Larger centre letter");
    case MonogramStyle::EqualLetters:
      return tr("Equal letters");
  }
  return {};
}

QString outlineSourceWord(OutlineSource source) {
  switch (source) {
    case OutlineSource::BoundingBox:
      return tr("Rectangle of its size");
    case OutlineSource::Polygon:
      return tr("Shapes kept with the design");
    case OutlineSource::Svg:
      return tr("Drawing");
    case OutlineSource::Png:
      return tr("Picture");
  }
  return {};
}

}  // namespace creaseline::desk
