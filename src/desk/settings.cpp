// SPDX-License-Identifier: MIT
// Settings kept in an INI file.
#include "desk/settings.h"

#include <QLocale>

#include "desk/text.h"

namespace creaseline::desk {

namespace {

const QString kLanguage = QStringLiteral("window/language");
const QString kAppearance = QStringLiteral("window/appearance");
const QString kLengthUnit = QStringLiteral("units/length");
const QString kRulerMark = QStringLiteral("units/ruler-mark");
const QString kWeightUnit = QStringLiteral("units/weight");
const QString kPaper = QStringLiteral("sheets/paper");
const QString kSheetKind = QStringLiteral("sheets/kind-");
const QString kMirrored = QStringLiteral("sheets/templates-mirrored");
const QString kPrices = QStringLiteral("sheets/prices");
const QString kTurned = QStringLiteral("sheets/templates-turned");
const QString kRecentOrders = QStringLiteral("files/recent-orders");
const QString kGuided = QStringLiteral("window/guided");
const QString kLastShop = QStringLiteral("files/last-shop");
const QString kGeometry = QStringLiteral("window/geometry");
const QString kGeometryOf = QStringLiteral("window/geometry-");
const QString kSplitter = QStringLiteral("window/splitter-");

// A hand-edited file may hold any number; what is not an enumerator counts as never chosen.
template <class E>
std::optional<E> enumerator(const QVariant& stored, std::initializer_list<E> all) {
  bool isNumber = false;
  const int number = stored.toInt(&isNumber);
  for (const E candidate : all) {
    if (isNumber && static_cast<int>(candidate) == number) {
      return candidate;
    }
  }
  return std::nullopt;
}

}  // namespace

Settings::Settings(const QString& file) : store_(file, QSettings::IniFormat) {
}

std::optional<Language> Settings::language() const {
  return enumFromName<Language>(toUtf8(store_.value(kLanguage).toString()));
}

void Settings::setLanguage(std::optional<Language> language) {
  if (language) {
    store_.setValue(kLanguage, toQString(nameOf(*language)));
  } else {
    store_.remove(kLanguage);
  }
}

Appearance Settings::appearance() const {
  return enumFromName<Appearance>(toUtf8(store_.value(kAppearance).toString()))
      .value_or(Appearance::System);
}

void Settings::setAppearance(Appearance appearance) {
  store_.setValue(kAppearance, toQString(nameOf(appearance)));
}

std::optional<UnitChoice> Settings::units() const {
  const auto length =
      enumerator(store_.value(kLengthUnit),
                 {LengthUnit::Millimetre, LengthUnit::Centimetre, LengthUnit::Inch});
  const auto mark = enumerator(store_.value(kRulerMark), {RulerMark::Eighth, RulerMark::Sixteenth});
  const auto weight = enumerator(store_.value(kWeightUnit), {WeightUnit::GramsPerSquareMetre,
                                                             WeightUnit::OuncesPerSquareYard});
  if (!length || !mark || !weight) {
    return std::nullopt;
  }
  return UnitChoice{*length, *mark, *weight};
}

void Settings::setUnits(const UnitChoice& units) {
  store_.setValue(kLengthUnit, static_cast<int>(units.length));
  store_.setValue(kRulerMark, static_cast<int>(units.mark));
  store_.setValue(kWeightUnit, static_cast<int>(units.weight));
}

Paper Settings::paper() const {
  const QVariant stored = store_.value(kPaper);
  std::optional<Paper> chosen = enumFromName<Paper>(toUtf8(stored.toString()));
  if (!chosen) {
    // Before there were more than two, the paper was kept as a number.
    chosen = enumerator(stored, {Paper::A4, Paper::Letter});
  }
  const bool american = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
  return chosen.value_or(american ? Paper::Letter : Paper::A4);
}

void Settings::setPaper(Paper paper) {
  store_.setValue(kPaper, toQString(nameOf(paper)));
}

std::optional<bool> Settings::sheetTicked(const std::string& kind) const {
  const QString stored = store_.value(kSheetKind + toQString(kind)).toString();
  if (stored == QLatin1String("true") || stored == QLatin1String("false")) {
    return stored == QLatin1String("true");
  }
  return std::nullopt;
}

void Settings::setSheetTicked(const std::string& kind, bool ticked) {
  store_.setValue(kSheetKind + toQString(kind), ticked);
}

TemplateVariants Settings::templateVariants() const {
  return {store_.value(kMirrored).toBool(), store_.value(kTurned).toBool()};
}

void Settings::setTemplateVariants(const TemplateVariants& variants) {
  store_.setValue(kMirrored, variants.mirrored);
  store_.setValue(kTurned, variants.turned);
}

bool Settings::pricesOnSheets() const {
  return store_.value(kPrices, true).toBool();
}

void Settings::setPricesOnSheets(bool shown) {
  store_.setValue(kPrices, shown);
}

QStringList Settings::recentOrders() const {
  return store_.value(kRecentOrders).toStringList();
}

void Settings::addRecentOrder(const QString& file) {
  QStringList files = recentOrders();
  files.removeAll(file);
  files.prepend(file);
  while (files.size() > kRecentFiles) {
    files.removeLast();
  }
  store_.setValue(kRecentOrders, files);
}

void Settings::clearRecentOrders() {
  store_.remove(kRecentOrders);
}

bool Settings::guided() const {
  return store_.value(kGuided, false).toBool();
}

void Settings::setGuided(bool guided) {
  store_.setValue(kGuided, guided);
}

QString Settings::lastShop() const {
  return store_.value(kLastShop).toString();
}

void Settings::setLastShop(const QString& file) {
  store_.setValue(kLastShop, file);
}

QByteArray Settings::windowGeometry() const {
  return store_.value(kGeometry).toByteArray();
}

void Settings::setWindowGeometry(const QByteArray& geometry) {
  store_.setValue(kGeometry, geometry);
}

QByteArray Settings::geometryOf(const QString& window) const {
  return store_.value(kGeometryOf + window).toByteArray();
}

void Settings::setGeometryOf(const QString& window, const QByteArray& geometry) {
  store_.setValue(kGeometryOf + window, geometry);
}

QByteArray Settings::splitterState(const QString& name) const {
  return store_.value(kSplitter + name).toByteArray();
}

void Settings::setSplitterState(const QString& name, const QByteArray& state) {
  store_.setValue(kSplitter + name, state);
}

}  // namespace creaseline::desk
