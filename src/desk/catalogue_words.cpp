// SPDX-License-Identifier: MIT
#include "desk/catalogue_words.h"

#include <QCollator>
#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "creaseline/base/phrasebook.h"
#include "desk/text.h"

namespace creaseline::desk {

namespace {

struct CatalogueWords {
  Q_DECLARE_TR_FUNCTIONS(creaseline::desk::CatalogueWords)
};

QString bodyMeasureWord(Measure measure) {
  switch (measure) {
    case Measure::BodyWidth:
      return CatalogueWords::tr("Pit to pit");
    case Measure::BodyLength:
      return CatalogueWords::tr("Body length");
    case Measure::NeckWidth:
      return CatalogueWords::tr("Neck width");
    case Measure::FrontNeckDrop:
      return CatalogueWords::tr("Front neck drop");
    case Measure::BackNeckDrop:
      return CatalogueWords::tr("Back neck drop");
    case Measure::ShoulderWidth:
      return CatalogueWords::tr("Shoulder width");
    case Measure::ShoulderDrop:
      return CatalogueWords::tr("Shoulder drop");
    case Measure::ArmholeDepth:
      return CatalogueWords::tr("Armhole depth");
    case Measure::SleeveLength:
      return CatalogueWords::tr("Sleeve length");
    case Measure::SleeveWidth:
      return CatalogueWords::tr("Sleeve width");
    case Measure::CuffWidth:
      return CatalogueWords::tr("Cuff width");
    case Measure::RibHeight:
      return CatalogueWords::tr("Hem rib height");
    case Measure::CuffHeight:
      return CatalogueWords::tr("Cuff height");
    case Measure::HoodHeight:
      return CatalogueWords::tr("Hood height");
    case Measure::HoodDepth:
      return CatalogueWords::tr("Hood depth");
    case Measure::PocketWidth:
      return CatalogueWords::tr("Pocket width");
    case Measure::PocketTopWidth:
      return CatalogueWords::tr("Pocket top width");
    case Measure::PocketHeight:
      return CatalogueWords::tr("Pocket height");
    case Measure::PocketAboveHem:
      return CatalogueWords::tr("Pocket above hem");
    case Measure::PlacketLength:
      return CatalogueWords::tr("Placket length");
    case Measure::PlacketWidth:
      return CatalogueWords::tr("Placket width");
    case Measure::CollarHeight:
      return CatalogueWords::tr("Collar height");
    case Measure::ZipWidth:
      return CatalogueWords::tr("Zip width");
    case Measure::ZipLength:
      return CatalogueWords::tr("Zip length");
    case Measure::YokeDepth:
      return CatalogueWords::tr("Yoke depth");
    case Measure::PocketFromCentre:
      return CatalogueWords::tr("Pocket from centre");
    case Measure::PocketBelowHps:
      return CatalogueWords::tr("Pocket below shoulder");
    case Measure::LegRise:
      return CatalogueWords::tr("Leg rise");
    case Measure::CrotchWidth:
      return CatalogueWords::tr("Crotch width");
    case Measure::TopWidth:
      return CatalogueWords::tr("Top width");
    case Measure::ShapedDepth:
      return CatalogueWords::tr("Shaped depth");
    case Measure::BorderHeight:
      return CatalogueWords::tr("Border height");
    case Measure::BorderAboveHem:
      return CatalogueWords::tr("Border above hem");
    case Measure::StrapFromCentre:
      return CatalogueWords::tr("Strap from centre");
    case Measure::WaistWidth:
      return CatalogueWords::tr("Waist width");
    case Measure::FrontRise:
      return CatalogueWords::tr("Front rise");
    case Measure::ThighWidth:
      return CatalogueWords::tr("Thigh width");
    case Measure::LegHemWidth:
      return CatalogueWords::tr("Leg hem width");
    case Measure::WaistbandHeight:
      return CatalogueWords::tr("Waistband height");
  }
  return {};
}

}  // namespace

QString uncapitalised(const QString& word) {
  return word.left(1).toLower() + word.mid(1);
}

QString measureWord(Measure measure, KindForm form) {
  if (form != KindForm::Body && measure == Measure::BodyWidth) {
    return form == KindForm::Flat ? CatalogueWords::tr("Full width")
                                  : CatalogueWords::tr("Hip width");
  }
  if (form != KindForm::Body && measure == Measure::BodyLength) {
    return CatalogueWords::tr("Length");
  }
  return bodyMeasureWord(measure);
}

std::vector<const GarmentKind*> kindsByName(const std::vector<GarmentKind>& kinds) {
  std::vector<const GarmentKind*> sorted;
  for (const GarmentKind& kind : kinds) {
    sorted.push_back(&kind);
  }
  QCollator collator{QLocale(toQString(spokenLanguage()))};
  collator.setCaseSensitivity(Qt::CaseInsensitive);
  std::stable_sort(sorted.begin(), sorted.end(),
                   [&collator](const GarmentKind* a, const GarmentKind* b) {
                     return collator.compare(toQString(a->name), toQString(b->name)) < 0;
                   });
  return sorted;
}

QString bandWord(SizeBand band) {
  switch (band) {
    case SizeBand::Infant:
      return CatalogueWords::tr("Infant");
    case SizeBand::Youth:
      return CatalogueWords::tr("Youth");
    case SizeBand::Adult:
      return CatalogueWords::tr("Adult up to XL");
    case SizeBand::AdultAboveXl:
      return CatalogueWords::tr("Adult above XL");
  }
  return {};
}

QString constructionWord(Construction construction) {
  switch (construction) {
    case Construction::Woven:
      return CatalogueWords::tr("Woven");
    case Construction::Knit:
      return CatalogueWords::tr("Knit");
    case Construction::Nonwoven:
      return CatalogueWords::tr("Nonwoven");
  }
  return {};
}

QString pileWord(Pile pile) {
  switch (pile) {
    case Pile::None:
      return CatalogueWords::tr("Smooth");
    case Pile::BrushedInside:
      return CatalogueWords::tr("Brushed inside");
    case Pile::Textured:
      return CatalogueWords::tr("Textured");
    case Pile::Loop:
      return CatalogueWords::tr("Loops");
    case Pile::High:
      return CatalogueWords::tr("High pile");
  }
  return {};
}

QString stretchWord(Stretch stretch) {
  switch (stretch) {
    case Stretch::None:
      return CatalogueWords::tr("None");
    case Stretch::Some:
      return CatalogueWords::tr("Some");
    case Stretch::High:
      return CatalogueWords::tr("High");
  }
  return {};
}

QString blockKindWord(BlockKind kind) {
  switch (kind) {
    case BlockKind::PlacementLine:
      return CatalogueWords::tr("Placement line");
    case BlockKind::TackDown:
      return CatalogueWords::tr("Tack-down");
    case BlockKind::Cover:
      return CatalogueWords::tr("Cover");
    case BlockKind::Sew:
      return CatalogueWords::tr("Sewing");
  }
  return {};
}

QString monogramStyleWord(MonogramStyle style) {
  switch (style) {
    case MonogramStyle::LargerCentre:
      return CatalogueWords::tr("Larger centre letter");
    case MonogramStyle::EqualLetters:
      return CatalogueWords::tr("Equal letters");
  }
  return {};
}

QString outlineSourceWord(OutlineSource source) {
  switch (source) {
    case OutlineSource::BoundingBox:
      return CatalogueWords::tr("Rectangle of its size");
    case OutlineSource::Polygon:
      return CatalogueWords::tr("Shapes kept with the design");
    case OutlineSource::Svg:
      return CatalogueWords::tr("Drawing");
    case OutlineSource::Png:
      return CatalogueWords::tr("Picture");
  }
  return {};
}

}  // namespace creaseline::desk
