// SPDX-License-Identifier: MIT
// What a side of a panel is, in words that can be felt on cloth.
#pragma once

#include "creaseline/base/named_enum.h"

namespace creaseline {

enum class EdgeName {
  CollarSeam,
  ShoulderSeam,
  Armhole,
  SideSeam,
  Hem,
  CuffEdge,
  Fold,        // edge of a flat-laid sleeve or hood where the cloth goes round to the other side
  FaceEdge,    // hood
  NeckSeam,    // hood
  CrownSeam,   // hood
  ArmOpening,  // armhole of a garment without sleeves
  LegOpening,  // bodysuit
  TopEdge,     // flat piece: an open edge, the mouth of a bag
  SideEdge,    // flat piece: an open edge
  BottomSeam,  // flat piece: the bottom of a bag
  TurnUpFold,  // flat piece: where a cuff is turned up, cloth goes on behind it
  WaistSeam,   // leg: lower edge of the waistband
  Inseam,      // leg
  CrotchSeam   // leg: centre seam from the waist to the crotch
};

template <>
struct EnumNames<EdgeName> {
  static constexpr std::pair<EdgeName, std::string_view> names[] = {
      {EdgeName::CollarSeam, "collar-seam"},
      {EdgeName::ShoulderSeam, "shoulder-seam"},
      {EdgeName::Armhole, "armhole"},
      {EdgeName::SideSeam, "side-seam"},
      {EdgeName::Hem, "hem"},
      {EdgeName::CuffEdge, "cuff-edge"},
      {EdgeName::Fold, "fold"},
      {EdgeName::FaceEdge, "face-edge"},
      {EdgeName::NeckSeam, "neck-seam"},
      {EdgeName::CrownSeam, "crown-seam"},
      {EdgeName::ArmOpening, "arm-opening"},
      {EdgeName::LegOpening, "leg-opening"},
      {EdgeName::TopEdge, "top-edge"},
      {EdgeName::SideEdge, "side-edge"},
      {EdgeName::BottomSeam, "bottom-seam"},
      {EdgeName::TurnUpFold, "turn-up-fold"},
      {EdgeName::WaistSeam, "waist-seam"},
      {EdgeName::Inseam, "inseam"},
      {EdgeName::CrotchSeam, "crotch-seam"}};
};

}  // namespace creaseline
