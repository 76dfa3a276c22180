// SPDX-License-Identifier: MIT
// Outlines from SVG: true size, curves, holes.
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <string>

#include "catalogue/outline_oracle.h"
#include "creaseline/catalogue/outline_files.h"

namespace creaseline {
namespace {

using namespace literals;
using test::OutlineOracle;
using test::ScratchFile;

constexpr double kPi = std::numbers::pi;
constexpr Length kTolerance = 0.05_mm;

// A page of 100 mm x 80 mm with a user unit of one millimetre.
std::string page(const std::string& content) {
  return "<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" "
         "height=\"80mm\" viewBox=\"0 0 100 80\">\n" +
         content + "\n</svg>\n";
}

Outline readText(const std::string& text, Length tolerance = kTolerance) {
  const ScratchFile file("drawing.svg", text);
  return readSvgOutline(file.path(), tolerance);
}

Outline readShape(const std::string& content, Length tolerance = kTolerance) {
  return readText(page(content), tolerance);
}

void checkSize(const Outline& outline, double width, double height, double margin = 1e-9) {
  const Box box = outline.bounds();
  CHECK(box.width() == Approx(width).margin(margin).epsilon(0.0));
  CHECK(box.height() == Approx(height).margin(margin).epsilon(0.0));
  CHECK(box.centre().x == Approx(0.0).margin(1e-9));
  CHECK(box.centre().y == Approx(0.0).margin(1e-9));
}

}  // namespace

TEST_CASE("a rectangle has the size and area that it was drawn with", "[catalogue][outline]") {
  const Outline outline = readShape("<rect x='10' y='20' width='40' height='25'/>");
  REQUIRE(outline.pieces.size() == 1);
  CHECK(outline.pieces[0].outer.size() == 4);
  checkSize(outline, 40, 25);
  CHECK(outline.area().squareMm() == Approx(1000.0));
}

TEST_CASE("curved shapes come within the tolerance of their areas", "[catalogue][outline]") {
  struct Row {
    std::string shape;
    double area, perimeter, width, height;
  };
  // Areas in closed form; perimeters are bounds from above.
  const Row row = GENERATE(values<Row>({
      {"<circle cx='50' cy='40' r='30'/>", kPi * 900, 2 * kPi * 30, 60, 60},
      {"<ellipse cx='50' cy='40' rx='40' ry='10'/>", kPi * 400, 2 * kPi * 40, 80, 20},
      {"<rect width='40' height='20' rx='5'/>", 800 - (4 - kPi) * 25, 120, 40, 20},
      {"<rect width='40' height='20' rx='30' ry='4'/>", 800 - (4 - kPi) * 20 * 4, 120, 40, 20},
      {"<path d='M20 40A30 30 0 0 1 80 40A30 30 0 0 1 20 40Z'/>", kPi * 900, 2 * kPi * 30, 60, 60},
      {"<path d='m20 40a30 30 0 1160 0 30 30 0 11-60 0z'/>", kPi * 900, 2 * kPi * 30, 60, 60},
      // An arc whose radius is too small for its chord is a half circle.
      {"<path d='M20 40A1 1 0 0 1 80 40Z'/>", kPi * 450, 160, 60, 30},
      // Parabola y = x (1 - x) scaled: area 2/3 of the base times the height.
      {"<path d='M10 50Q40 10 70 50Z'/>", 2.0 / 3.0 * 60 * 20, 160, 60, 20},
      // Cubic with all control points on a parabola's degree elevation: the same area.
      {"<path d='M10 50C30 23.3333333333 50 23.3333333333 70 50Z'/>", 800, 160, 60, 20},
      // A quarter of a circle, left for the two radii.
      {"<path d='M0 0H30A30 30 0 0 1 0 30Z'/>", kPi * 225, 110, 30, 30},
  }));
  CAPTURE(row.shape);
  for (const Length tolerance : {0.05_mm, 0.01_mm, 0.001_mm}) {
    const Outline outline = readShape(row.shape, tolerance);
    REQUIRE(outline.pieces.size() == 1);
    const double error = outline.area().squareMm() - row.area;
    CHECK(std::abs(error) <= tolerance.mm() * row.perimeter);
    checkSize(outline, row.width, row.height, 2.0 * tolerance.mm());  // on either side
  }
}

TEST_CASE("a smaller tolerance takes more points", "[catalogue][outline]") {
  const std::string circle = "<circle cx='50' cy='40' r='30'/>";
  CHECK(readShape(circle, 0.5_mm).pieces[0].outer.size() <
        readShape(circle, 0.01_mm).pieces[0].outer.size());
  CHECK_THROWS_AS(readShape(circle, 0_mm), std::invalid_argument);
}

TEST_CASE("every point of a flattened circle lies on it", "[catalogue][outline]") {
  const Outline outline = readShape("<circle cx='50' cy='40' r='30'/>");
  const Ring& ring = outline.pieces[0].outer;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    CHECK(norm(ring[i]) == Approx(30.0));
    CHECK(norm((ring[i] + ring[(i + 1) % ring.size()]) * 0.5) >= 30.0 - 0.05);
  }
}

TEST_CASE("smooth and relative commands draw what the long forms draw", "[catalogue][outline]") {
  const std::string longForm = GENERATE(values<std::string>({
      "M10 40C10 20 30 20 30 40C30 60 50 60 50 40V70H10Z|M10 40C10 20 30 20 30 40S50 60 50 "
      "40V70H10Z",
      "M10 40Q20 20 30 40Q40 60 50 40V70H10Z|M10 40Q20 20 30 40T50 40V70H10Z",
      "M10 10L60 10L60 50L10 50Z|m10,10 50,0 0,40 -50,0z",
      "M10 10L60 10L60 50L10 50Z|M10 10h50v40h-5e1z",
      "M10.5 10.5L60 10L60 50Z|M10.5.5m0 10L60 10 60 50",
      "M10 40C10 20 30 20 30 40L30 70L10 70Z|m10 40c0-20 20-20 20 0v30h-20z",
      // With no curve before it, the first control point of S and T is the current point.
      "M10 40C10 40 30 20 30 40V70H10Z|M10 40S30 20 30 40V70H10Z",
      // After Z a drawing command begins where the closed part began.
      "M10 10H20V20ZM10 10H0V0Z|M10 10H20V20ZH0V0Z",
  }));
  const std::size_t bar = longForm.find('|');
  CAPTURE(longForm);
  const Outline first = readShape("<path d='" + longForm.substr(0, bar) + "'/>");
  const Outline second = readShape("<path d='" + longForm.substr(bar + 1) + "'/>");
  REQUIRE(first.pieces.size() == second.pieces.size());
  CHECK(first.area().squareMm() == Approx(second.area().squareMm()).epsilon(1e-9));
  checkSize(second, first.bounds().width(), first.bounds().height(), 1e-9);
}

TEST_CASE("the page's own size makes the scale", "[catalogue][outline]") {
  struct Row {
    std::string root;
    double width, height;
  };
  const Row row = GENERATE(values<Row>({
      {"width='100mm' height='80mm' viewBox='0 0 100 80'", 10, 20},
      {"width='10cm' height='8cm' viewBox='0 0 1000 800'", 1, 2},
      {"width='4in' height='4in' viewBox='0 0 10 10'", 101.6, 203.2},
      {"width='72pt' height='72pt' viewBox='-5 -5 10 10'", 25.4, 50.8},
      {"width='100mm' height='80mm'", 10 * 25.4 / 96, 20 * 25.4 / 96},
      // The smaller of the two scales, as preserveAspectRatio's default is "meet".
      {"width='100mm' height='40mm' viewBox='0 0 100 80'", 5, 10},
      {"width='100mm' height='40mm' viewBox='0 0 100 80' preserveAspectRatio='none'", 10, 10},
      {"width='100mm' height='40mm' viewBox='0 0 100 80' preserveAspectRatio='xMidYMid slice'", 10,
       20},
  }));
  CAPTURE(row.root);
  const Outline outline =
      readText("<svg " + row.root + "><rect x='3' y='4' width='10' height='20'/></svg>");
  checkSize(outline, row.width, row.height, 1e-9);
}

TEST_CASE("transforms nest as SVG says", "[catalogue][outline]") {
  struct Row {
    std::string content;
    double width, height;
  };
  const std::string rect = "<rect width='10' height='20'/>";
  const Row row = GENERATE_COPY(values<Row>({
      {"<g transform='translate(5,6)'>" + rect + "</g>", 10, 20},
      {"<g transform='rotate(90)'>" + rect + "</g>", 20, 10},
      {"<g transform='rotate(90 5 5)'>" + rect + "</g>", 20, 10},
      {"<g transform='scale(2) translate(3)'><g transform='scale(1 .5)'>" + rect + "</g></g>", 20,
       20},
      {"<g transform='matrix(0 1 -1 0 7 8)'>" + rect + "</g>", 20, 10},
      {"<g transform='skewX(45)'>" + rect + "</g>", 30, 20},
      {"<g transform='skewY(45)'>" + rect + "</g>", 10, 30},
      {"<g transform='scale(-1 1)'>" + rect + "</g>", 10, 20},
      {"<g transform='rotate(45) rotate(-45)'>" + rect + "</g>", 10, 20},
  }));
  CAPTURE(row.content);
  checkSize(readShape(row.content), row.width, row.height, 1e-9);
}

TEST_CASE("a scaled-up curve is as fine as one drawn large", "[catalogue][outline]") {
  const Outline outline = readShape("<g transform='scale(30)'><circle r='1'/></g>");
  CHECK(outline.area().squareMm() == Approx(kPi * 900).margin(0.05 * 2 * kPi * 30));
  CHECK(outline.pieces[0].outer.size() > 20);
}

TEST_CASE("the fill rule decides what is a hole", "[catalogue][outline]") {
  struct Row {
    std::string attributes;
    std::string innerRing;  // within a ring drawn clockwise to the viewer
    std::size_t pieces, holes;
    double area;
  };
  const std::string same = "M10 10H30V30H10Z";
  const std::string against = "M10 10V30H30V10Z";
  const std::string island = same + "M15 15H25V25H15Z";
  const Row row = GENERATE_COPY(values<Row>({
      {"", same, 1, 0, 1600},
      {"", against, 1, 1, 1200},
      {"fill-rule='evenodd'", same, 1, 1, 1200},
      {"fill-rule='evenodd'", against, 1, 1, 1200},
      {"style='fill:#123456;fill-rule:evenodd'", island, 2, 1, 1300},
      {"", island, 1, 0, 1600},
      {"", against + "M15 15H25V25H15Z", 2, 1, 1300},
  }));
  CAPTURE(row.attributes, row.innerRing);
  const Outline outline =
      readShape("<path " + row.attributes + " d='M0 0H40V40H0Z" + row.innerRing + "'/>");
  REQUIRE(outline.pieces.size() == row.pieces);
  CHECK(outline.pieces[0].holes.size() == row.holes);
  CHECK(outline.area().squareMm() == Approx(row.area));
  const OutlineOracle geos;
  double area = 0.0;
  for (const Piece& piece : outline.pieces) {
    CHECK(geos.valid(geos.polygon(piece)));
    area += geos.area(geos.polygon(piece));
  }
  CHECK(area == Approx(row.area));
}

TEST_CASE("letters keep their counters", "[catalogue][outline]") {
  // An O, a B with two counters, and an i of two parts, in one path.
  const Outline outline = readShape(
      "<path fill-rule='evenodd' d='M10 10a8 8 0 1 0 .001 0zm0 4a4 4 0 1 1 -.001 0z"
      "M30 10h12v20h-12zm3 3h6v5h-6zm0 8h6v6h-6z M50 10h4v4h-4z M50 16h4v14h-4z'/>");
  REQUIRE(outline.pieces.size() == 4);
  CHECK(outline.pieces[0].holes.size() == 1);
  CHECK(outline.pieces[1].holes.size() == 2);
  CHECK(outline.pieces[2].holes.empty());
  CHECK(outline.pieces[1].holes[0].size() == 4);
  const double expected = kPi * (64 - 16) + (240 - 30 - 36) + 16 + 56;
  CHECK(outline.area().squareMm() == Approx(expected).margin(0.05 * 2 * kPi * 12));
  const OutlineOracle geos;
  CHECK(geos.area(geos.unionOf(outline)) == Approx(outline.area().squareMm()));
}

TEST_CASE("strokes of script that overlap become pieces of their own", "[catalogue][outline]") {
  const Outline outline = readShape("<path d='M0 0H20V10H0Z M10 5H30V15H10Z'/>");
  REQUIRE(outline.pieces.size() == 2);
  const OutlineOracle geos;
  CHECK(geos.area(geos.unionOf(outline)) == Approx(350.0));
}

TEST_CASE("what is not filled or not shown is left out", "[catalogue][outline]") {
  const std::string hidden = GENERATE(values<std::string>({
      "<rect width='90' height='70' fill='none' stroke='black'/>",
      "<rect width='90' height='70' style='fill : none'/>",
      "<g fill='none'><rect width='90' height='70'/></g>",
      "<g display='none'><rect width='90' height='70'/></g>",
      "<rect width='90' height='70' visibility='hidden'/>",
      "<rect width='90' height='70' opacity='0'/>",
      "<rect width='90' height='70' fill-opacity='0.0'/>",
      "<defs><rect width='90' height='70'/></defs>",
      "<clipPath id='c'><rect width='90' height='70'/></clipPath>",
      "<symbol><text>never shown</text></symbol>",
      "<x:thing xmlns:x='urn:x'><rect width='90' height='70'/></x:thing>",
      "<metadata><rect width='90' height='70'/></metadata>",
      "<script href='http://192.0.2.1/x.js'>rect()</script>",
      "<line x1='0' y1='0' x2='90' y2='70' stroke='black'/>",
      "<rect width='0' height='70'/>",
      "<circle r='0'/>",
      "<path d='M0 0H90'/>",
      "<path d=''/>",
      "<polygon points=''/>",
      "<g transform='scale(0)'><rect width='90' height='70'/></g>",
      "<style>.a { fill: #ff0000 }</style>",
      "<!-- <rect width='90' height='70'/> -->",
  }));
  CAPTURE(hidden);
  const Outline outline =
      readShape(hidden + "<g fill='none'><rect x='5' width='10' height='20' fill='red'/></g>");
  REQUIRE(outline.pieces.size() == 1);
  checkSize(outline, 10, 20);
}

TEST_CASE("a star is read as a polygon with its known area", "[catalogue][outline]") {
  // Ten points at radii 30 and 12, 36 degrees apart: area = 5 * 30 * 12 * sin(36 degrees).
  std::string points;
  for (int i = 0; i < 10; ++i) {
    const double radius = i % 2 == 0 ? 30.0 : 12.0;
    points += std::to_string(50 + radius * std::cos(i * kPi / 5)) + "," +
              std::to_string(40 + radius * std::sin(i * kPi / 5)) + " ";
  }
  const std::string element = GENERATE("polygon", "polyline");
  const Outline outline = readShape("<" + element + " points='" + points + "'/>");
  REQUIRE(outline.pieces.size() == 1);
  CHECK(outline.pieces[0].outer.size() == 10);
  CHECK(outline.area().squareMm() == Approx(5 * 30 * 12 * std::sin(kPi / 5)).epsilon(1e-6));
}

}  // namespace creaseline
