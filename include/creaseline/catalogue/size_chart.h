// SPDX-License-Identifier: MIT
// Points of measure and the size chart of a blank.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "creaseline/base/length.h"
#include "creaseline/base/named_enum.h"
#include "creaseline/catalogue/identifiers.h"

namespace creaseline {

// Flat garment measures, as a size chart gives them. HPS: high point of the shoulder, where the
// shoulder seam meets the collar seam.
enum class Measure {
  // Pit to pit, flat: half the chest girth of the garment. Flat piece: its full width. Legs: across
  // the hips, flat.
  BodyWidth,
  BodyLength,     // HPS to hem; flat piece: top edge to bottom; legs: waist seam to hem
  NeckWidth,      // collar seam to collar seam at the HPS
  FrontNeckDrop,  // HPS down to the collar seam at centre front
  BackNeckDrop,   // HPS down to the collar seam at centre back
  ShoulderWidth,  // shoulder seam end to shoulder seam end, across
  ShoulderDrop,   // HPS down to the shoulder seam's outer end
  ArmholeDepth,   // HPS straight down to the level of the pit
  SleeveLength,   // shoulder seam's outer end to the cuff edge
  SleeveWidth,    // upper arm, flat, at the pit
  CuffWidth,      // cuff edge, flat
  RibHeight,      // hem rib, 0 if none
  CuffHeight,     // cuff rib, 0 if none
  HoodHeight,     // neck seam to crown, flat
  HoodDepth,      // face edge to back, flat, at the widest
  // Kangaroo pocket at its bottom, both halves together; a chest pocket; one side pocket, from the
  // side seam towards the centre.
  PocketWidth,
  PocketTopWidth,  // kangaroo pocket at its top
  PocketHeight,
  PocketAboveHem,  // pocket's lower edge above the hem edge
  PlacketLength,   // collar seam down to the end of the placket
  PlacketWidth,
  CollarHeight,      // polo collar or neck rib, as worn
  ZipWidth,          // zip tape and stitching that no needle or frame may meet, both sides together
  ZipLength,         // quarter zip: collar seam down to the end of the zip
  YokeDepth,         // collar seam at centre back down to the yoke seam
  PocketFromCentre,  // chest pocket: centre line to the pocket's middle
  PocketBelowHps,    // chest pocket: HPS straight down to the level of the pocket's opening
  LegRise,           // bodysuit: crotch up to where the leg opening meets the side seam
  CrotchWidth,       // bodysuit: crotch edge, flat
  TopWidth,          // flat piece: its top edge
  ShapedDepth,       // flat piece: top edge down to where it has its full width
  BorderHeight,      // towel: woven band, its lower edge up to its upper one
  BorderAboveHem,    // towel: hem edge up to the band's lower edge
  StrapFromCentre,   // bag: centre line to the middle of a strap
  WaistWidth,        // legs: at the waist seam, flat
  FrontRise,         // legs: waist seam down to the level of the crotch
  ThighWidth,        // legs: one leg at the crotch, flat
  LegHemWidth,       // legs: one leg at the hem, flat
  WaistbandHeight    // legs
};

// Youth sizes and adult sizes take different placement rules.
enum class SizeBand { Infant, Youth, Adult, AdultAboveXl };

// One size of a chart, with the measures that the chart gives.
struct ChartSize {
  SizeName name;
  SizeBand band = SizeBand::Adult;
  bool bandGiven = false;  // by the chart itself; otherwise read from the name or the body width
  std::map<Measure, Length> measures;
  std::set<Measure> proposed;  // of these: nobody measured them yet, so that they count as assumed
  bool operator==(const ChartSize&) const = default;
};

// Sizes in the chart's own order, smallest first. Names are distinct, at least one size.
struct SizeChart {
  std::vector<ChartSize> sizes;
  [[nodiscard]] const ChartSize* find(const SizeName& name) const;
  bool operator==(const SizeChart&) const = default;
};

// The band that a size's name tells: "YS", "Youth M", "Y10" are youth; "2XL", "XXL", "4X" are
// above XL; "XS" to "XL" adult; "6M", "18-24M" infant. Nothing for other names.
[[nodiscard]] std::optional<SizeBand> bandFromName(const SizeName& name);

template <>
struct EnumNames<Measure> {
  static constexpr std::pair<Measure, std::string_view> names[] = {
      {Measure::BodyWidth, "body-width"},
      {Measure::BodyLength, "body-length"},
      {Measure::NeckWidth, "neck-width"},
      {Measure::FrontNeckDrop, "front-neck-drop"},
      {Measure::BackNeckDrop, "back-neck-drop"},
      {Measure::ShoulderWidth, "shoulder-width"},
      {Measure::ShoulderDrop, "shoulder-drop"},
      {Measure::ArmholeDepth, "armhole-depth"},
      {Measure::SleeveLength, "sleeve-length"},
      {Measure::SleeveWidth, "sleeve-width"},
      {Measure::CuffWidth, "cuff-width"},
      {Measure::RibHeight, "rib-height"},
      {Measure::CuffHeight, "cuff-height"},
      {Measure::HoodHeight, "hood-height"},
      {Measure::HoodDepth, "hood-depth"},
      {Measure::PocketWidth, "pocket-width"},
      {Measure::PocketTopWidth, "pocket-top-width"},
      {Measure::PocketHeight, "pocket-height"},
      {Measure::PocketAboveHem, "pocket-above-hem"},
      {Measure::PlacketLength, "placket-length"},
      {Measure::PlacketWidth, "placket-width"},
      {Measure::CollarHeight, "collar-height"},
      {Measure::ZipWidth, "zip-width"},
      {Measure::ZipLength, "zip-length"},
      {Measure::YokeDepth, "yoke-depth"},
      {Measure::PocketFromCentre, "pocket-from-centre"},
      {Measure::PocketBelowHps, "pocket-below-hps"},
      {Measure::LegRise, "leg-rise"},
      {Measure::CrotchWidth, "crotch-width"},
      {Measure::TopWidth, "top-width"},
      {Measure::ShapedDepth, "shaped-depth"},
      {Measure::BorderHeight, "border-height"},
      {Measure::BorderAboveHem, "border-above-hem"},
      {Measure::StrapFromCentre, "strap-from-centre"},
      {Measure::WaistWidth, "waist-width"},
      {Measure::FrontRise, "front-rise"},
      {Measure::ThighWidth, "thigh-width"},
      {Measure::LegHemWidth, "leg-hem-width"},
      {Measure::WaistbandHeight, "waistband-height"}};
};
template <>
struct EnumNames<SizeBand> {
  static constexpr std::pair<SizeBand, std::string_view> names[] = {
      {SizeBand::Infant, "infant"},
      {SizeBand::Youth, "youth"},
      {SizeBand::Adult, "adult"},
      {SizeBand::AdultAboveXl, "adult-above-xl"}};
};

}  // namespace creaseline
