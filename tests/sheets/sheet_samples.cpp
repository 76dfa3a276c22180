// SPDX-License-Identifier: MIT
#include "sheets/sheet_samples.h"

namespace creaseline::sample {

using namespace creaseline::literals;

namespace {

const std::string kLongName = "the quite remarkably long-winded name of a thing on an order";
static_assert(sizeof("the quite remarkably long-winded name of a thing on an order") == 61);
const std::string kUnbroken(60, 'W');

}  // namespace

std::unique_ptr<Sheets> written(Order order, Shop shop, Paper paper, const std::string& kind) {
  auto sheets = std::make_unique<Sheets>();
  sheets->order = std::move(order);
  sheets->shop = std::move(shop);
  sheets->plan = planOrder(sheets->order, sheets->shop, shippedRules());
  sheets->pdf = sheets->folder.filePath(QStringLiteral("sheets.pdf"));
  SheetChoice choice;
  choice.kinds = {kind};
  choice.paper = paper;
  const SheetContext context{sheets->plan, sheets->order, sheets->shop, shippedRules(), kInches};
  sheets->written = writeSheets(sheetSet(context, choice), sheets->pdf.toStdString());
  return sheets;
}

Order chestOrder() {
  Order made = order(blank("pullover-hoodie"), design("crest", 120_mm, 90_mm), "centre-chest",
                     {"YM", "M", "XL", "2XL"});
  made.id = "2026-118";
  made.customer = "Ferry crew";
  made.due = "2026-12-04";
  return made;
}

Shop chestShop() {
  return shop({frame("a", 160_mm, 130_mm, 20_mm)});
}

Order longOrder() {
  Blank blank = sample::blank("pullover-hoodie");
  const ChartSize adult = blank.chart.sizes.at(1);
  blank.chart.sizes.clear();
  std::vector<std::string> sizes;
  for (int i = 1; i <= 12; ++i) {
    ChartSize size = adult;
    sizes.push_back("size " + std::to_string(i));
    size.name = SizeName(sizes.back());
    blank.chart.sizes.push_back(size);
  }
  blank.name = kLongName;
  blank.colours.front().name = kLongName;
  Design design = sample::design("crest", 120_mm, 90_mm);
  design.name = kUnbroken;
  design.blocks.clear();
  for (int i = 0; i < 30; ++i) {
    design.blocks.push_back(
        {i % 2 == 0 ? kLongName : kUnbroken, {0, 40, 90}, 216, BlockKind::Sew, {}});
  }
  design.stitches = 30 * 216;
  Order made = order(blank, design, "centre-chest", sizes);
  made.title = kLongName;
  made.customer = kUnbroken;
  made.lines.front().colour = kLongName;
  made.lines.front().note = kLongName + " " + kUnbroken;
  return made;
}

}  // namespace creaseline::sample
