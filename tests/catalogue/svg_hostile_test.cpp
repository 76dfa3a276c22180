// SPDX-License-Identifier: MIT
// SVG files that are broken, hostile or not fit for an outline: one clear refusal each, and
// nothing is fetched.
#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "catalogue/outline_oracle.h"
#include "creaseline/catalogue/outline_files.h"

namespace creaseline {
namespace {

using test::ScratchFile;

const std::string kRoot =
    "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
    "width='100mm' height='80mm' viewBox='0 0 100 80'>";
const std::string kRect = "<rect width='10' height='20'/>";

InputError::Details refusalOfText(const std::string& text) {
  const ScratchFile file("drawing.svg", text);
  return test::refusalOf([&] { static_cast<void>(readSvgOutline(file.path())); });
}

InputError::Details refusalOfShape(const std::string& content) {
  return refusalOfText(kRoot + "\n" + content + "</svg>");
}

std::string repeated(const std::string& text, int times) {
  std::string result;
  for (int i = 0; i < times; ++i) {
    result += text;
  }
  return result;
}

// A server on this machine that counts whether anybody called.
class Listener {
 public:
  Listener() : socket_(::socket(AF_INET, SOCK_STREAM, 0)) {
    REQUIRE(socket_ >= 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = ::htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof(address);
    auto* plain = reinterpret_cast<sockaddr*>(&address);
    REQUIRE(::bind(socket_, plain, size) == 0);
    REQUIRE(::listen(socket_, 4) == 0);
    REQUIRE(::getsockname(socket_, plain, &size) == 0);
    port_ = ::ntohs(address.sin_port);
  }
  Listener(const Listener&) = delete;
  Listener& operator=(const Listener&) = delete;
  ~Listener() { ::close(socket_); }
  [[nodiscard]] std::string url() const {
    return "http://127.0.0.1:" + std::to_string(port_) + "/picture.png";
  }
  [[nodiscard]] bool called() const {
    pollfd waiting{socket_, POLLIN, 0};
    return ::poll(&waiting, 1, 20) > 0;
  }

 private:
  int socket_;
  int port_ = 0;
};

}  // namespace

TEST_CASE("a broken or unfit SVG is refused with its line and a remedy", "[catalogue][outline]") {
  struct Row {
    std::string content, found, expected;
  };
  const Row row = GENERATE(values<Row>({
      {"<text x='1' y='2'>Name</text>", "text", "paths"},
      {"<g><image width='5' height='5'/></g>", "image", "picture"},
      {"<use xlink:href='#a'/>", "use", "references"},
      {"<svg width='10mm' height='10mm'/>", "svg", "one drawing"},
      {"<foreignObject/>", "foreignObject", "filled shapes"},
      {"<g clip-path='url(#c)'>" + kRect + "</g>", "clip-path", "cut"},
      {"<rect width='1' height='1' style='mask:url(#m)'/>", "mask", "cut"},
      {"<style>.a{fill:none}</style>", "'none'", "attribute"},
      {"<style>@import url(http://192.0.2.1/a.css);</style>", "'@import'", "not followed"},
      {"<rect width='-1' height='1'/>", "width '-1'", "SVG 1.1"},
      {"<rect width='10%' height='1'/>", "width '10%'", "SVG 1.1"},
      {"<rect width='nan' height='1'/>", "width 'nan'", "SVG 1.1"},
      {"<circle r='1em'/>", "r '1em'", "SVG 1.1"},
      {"<path d='10 10H20V20Z'/>", "path data", "SVG 1.1"},
      {"<path d='L10 10H20V20Z'/>", "does not begin with M", "SVG 1.1"},
      {"<path d='M10 10H20V20ZX'/>", "'X'", "SVG 1.1"},
      {"<path d='M10 10H20V'/>", "'V'", "SVG 1.1"},
      {"<path d='M10 10L20'/>", "'L'", "SVG 1.1"},
      {"<path d='M10 10A5 5 0 2 1 20 20Z'/>", "'A'", "SVG 1.1"},
      {"<path d='MNaN 10L20 30Z'/>", "'M'", "SVG 1.1"},
      {"<path d='M10 inf L20 30Z'/>", "'M'", "SVG 1.1"},
      {"<path d='M0 0L1e308 0L1e308 1e308Z'/>", "out of range", "1000 m"},
      {"<path d='M0 0C1e308 0 -1e308 5 10 10Z'/>", "out of range", "SVG 1.1"},
      {"<path d='M0 0A1e308 1e308 0 0 1 1e308 1e308Z'/>", "out of range", ""},
      {"<path d='M0 0L1e999 0L5 5Z'/>", "'L'", "SVG 1.1"},
      {"<circle r='1e308'/>", "out of range", ""},
      {"<ellipse rx='1e300' ry='1'/>", "out of range", ""},
      {"<polygon points='0,0 10,0 10'/>", "where two numbers are due", "SVG 1.1"},
      {"<polygon points='0,0 10,x 10,10'/>", "'x 10,10'", "SVG 1.1"},
      {"<g transform='spin(3)'/>", "'spin(3)'", "transform"},
      {"<g transform='scale(1,2,3)'/>", "transform", "transform"},
      {"<g transform='scale(1'/>", "transform", "transform"},
      {"<g transform='scale(nan)'/>", "transform", "transform"},
      {"<g transform='scale(1e200)'><g transform='scale(1e200)'>" + kRect + "</g></g>",
       "out of range", "1000 m"},
      {"<path d='M0 0L20 20L20 0L0 20Z'/>", "crosses itself at (10.00 mm, 10.00 mm)", "unite"},
      {"<g transform='translate(30 5)'><path d='M0 0L20 20L20 0L0 20Z'/></g>",
       "crosses itself at (40.00 mm, 15.00 mm)", "unite"},
      {"<path fill-rule='evenodd' d='M0 0H20V10H0Z M10 5H30V15H10Z'/>", "cross each other",
       "unite"},
      {"<path d='M0 0H20V10H0Z M10 5V15H30V5Z'/>", "cross each other", "unite"},
      {"<path fill-rule='evenodd' d='M0 0H20V20H0Z M10 10L-10 -10L10 -10L10 0Z'/>",
       "cross each other", "unite"},
      {"", "no filled shape", "filled"},
      {"<rect width='5' height='5' fill='none'/>", "no filled shape", "filled"},
      {"<g>" + kRect, "mismatched tag", "SVG document"},
      {kRect + "<rect", "not well-formed", "SVG document"},
      {"<rect width='5' width='6'/>", "duplicate attribute", "SVG document"},
      {"&undefined;", "undefined entity", "SVG document"},
      {"\xff\xfe", "not well-formed", "SVG document"},
  }));
  CAPTURE(row.content);
  const InputError::Details details = refusalOfShape(row.content);
  CHECK_THAT(details.found, Catch::Contains(row.found));
  CHECK_THAT(details.expected, Catch::Contains(row.expected));
  CHECK_THAT(details.file, Catch::EndsWith("drawing.svg"));
  if (row.found != "no filled shape") {
    CHECK_THAT(details.where, Catch::StartsWith("line 2"));
  }
}

TEST_CASE("an SVG without a true size is refused", "[catalogue][outline]") {
  const std::string root = GENERATE(values<std::string>({
      "",
      "viewBox='0 0 100 80'",
      "width='100' height='80'",
      "width='100px' height='80px'",
      "width='100%' height='100%'",
      "width='100mm'",
      "width='0mm' height='80mm'",
      "width='-5mm' height='80mm'",
      "width='nanmm' height='80mm'",
      "width='1e308in' height='80mm'",
      "width='100 mm x' height='80mm'",
      "width='100mm' height='80mm' viewBox='0 0 0 80'",
      "width='100mm' height='80mm' viewBox='0 0 100'",
      "width='100mm' height='80mm' viewBox='0 0 nan 80'",
      "width='100mm' height='80mm' viewBox='0 0 100 80 7'",
  }));
  CAPTURE(root);
  const auto details = refusalOfText("<svg " + root + ">" + kRect + "</svg>");
  CHECK_THAT(details.expected, Catch::Contains("mm, cm, in or pt"));
}

TEST_CASE("what is no SVG is refused", "[catalogue][outline]") {
  CHECK_THAT(refusalOfText("").found, Catch::Contains("no element"));
  CHECK_THAT(refusalOfText("<html/>").found, Catch::Contains("html"));
  CHECK_THAT(refusalOfText("{\"format\":1}").found, Catch::Contains("not well-formed"));
  CHECK_THAT(refusalOfText(kRoot + kRect).found, Catch::Contains("no element"));
  CHECK_THAT(refusalOfText("<svg xmlns='urn:other' width='1mm' height='1mm'/>").expected,
             Catch::Contains("svg"));
  const auto missing = test::refusalOf([] { static_cast<void>(readSvgOutline("missing.svg")); });
  CHECK(missing.found == "no such file");
}

TEST_CASE("entities are never expanded", "[catalogue][outline]") {
  const ScratchFile secret("secret.txt", "M0 0H10V10Z");
  const std::vector<std::string> doctypes{
      "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://192.0.2.1/svg11.dtd'>",
      "<!DOCTYPE svg [<!ENTITY d SYSTEM 'file://" + secret.path().string() + "'>]>",
      "<!DOCTYPE svg [<!ENTITY a 'xxxxxxxxxx'>"
      "<!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;'><!ENTITY c '&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;'>"
      "<!ENTITY d '&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;'><!ENTITY e '&d;&d;&d;&d;&d;&d;&d;&d;&d;&d;'>"
      "<!ENTITY f '&e;&e;&e;&e;&e;&e;&e;&e;&e;&e;'><!ENTITY g '&f;&f;&f;&f;&f;&f;&f;&f;&f;&f;'>"
      "<!ENTITY h '&g;&g;&g;&g;&g;&g;&g;&g;&g;&g;'><!ENTITY i '&h;&h;&h;&h;&h;&h;&h;&h;&h;&h;'>]>",
      "<!DOCTYPE svg [<!ENTITY % x SYSTEM 'http://192.0.2.1/x.dtd'> %x;]>",
  };
  for (const std::string& doctype : doctypes) {
    CAPTURE(doctype);
    const auto details = refusalOfText(doctype + kRoot + "<path d='M0 0H5V5Z'/>&d;&i;</svg>");
    CHECK(details.found == "a DOCTYPE");
    CHECK_THAT(details.where, Catch::StartsWith("line 1"));
  }
}

TEST_CASE("nothing that a drawing refers to is fetched", "[catalogue][outline]") {
  const Listener server;
  const std::string url = server.url();
  for (const std::string& content :
       {"<image xlink:href='" + url + "' width='5' height='5'/>", "<use href='" + url + "#a'/>",
        "<style>@import url(" + url + ");</style>", "<g style='clip-path:url(" + url + ")'/>"}) {
    CAPTURE(content);
    refusalOfShape(content);
  }
  const ScratchFile file("drawing.svg",
                         "<?xml-stylesheet href='" + url + "'?>" + kRoot + "<script href='" + url +
                             "'/><rect width='10' height='20' fill='url(" + url + ")'/></svg>");
  CHECK(readSvgOutline(file.path()).area().squareMm() == Approx(200.0));
  CHECK_FALSE(server.called());
}

TEST_CASE("nesting is bounded at 64 levels", "[catalogue][outline]") {
  const auto nested = [](int groups) {
    return kRoot + repeated("<g>", groups) + kRect + repeated("</g>", groups) + "</svg>";
  };
  const ScratchFile deepest("drawing.svg", nested(62));  // with the root and the shape: 64
  CHECK(readSvgOutline(deepest.path()).area().squareMm() == Approx(200.0));
  CHECK_THAT(refusalOfText(nested(63)).found, Catch::Contains("deeper than 64"));
  CHECK_THAT(refusalOfText(nested(100'000)).found, Catch::Contains("deeper than 64"));
  const std::string skipped = "<defs>" + repeated("<g>", 99) + repeated("</g>", 99) + "</defs>";
  CHECK_THAT(refusalOfShape(skipped).found, Catch::Contains("deeper than 64"));
}

TEST_CASE("points and bytes are bounded", "[catalogue][outline]") {
  const std::string zigzag = "<path d='M0 0" + repeated("h1v1", 110'000) + "V0Z'/>";
  CHECK_THAT(refusalOfShape(zigzag).found, Catch::Contains("points"));
  const std::string polygon = "<polygon points='" + repeated("1 2 ", 210'000) + "'/>";
  CHECK_THAT(refusalOfShape(polygon).found, Catch::Contains("points"));
  const std::string circles = repeated("<circle r='1e5'/>", 300);
  CHECK_THAT(refusalOfShape(circles).found, Catch::Contains("points"));
  const std::string squares = "<path d='" + repeated("m2 2h1v1h-1z", 10'001) + "'/>";
  CHECK_THAT(refusalOfShape(squares).found, Catch::Contains("rings"));
  const std::string large = "<!--" + std::string(5'000'000, ' ') + "-->" + kRect;
  CHECK_THAT(refusalOfShape(large).expected, Catch::Contains("4194304 bytes"));
}

}  // namespace creaseline
