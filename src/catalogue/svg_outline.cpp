// SPDX-License-Identifier: MIT
// Walks an SVG document with expat and collects its filled shapes. Expat itself opens no file and
// no connection; a DOCTYPE is refused, so that there are no entities either.
#include <expat.h>

#include <algorithm>
#include <cmath>
#include <exception>
#include <iterator>
#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/quoted_text.h"
#include "base/worded.h"
#include "catalogue/filled_rings.h"
#include "catalogue/svg_attributes.h"
#include "catalogue/svg_shapes.h"
#include "creaseline/base/error.h"
#include "creaseline/base/file.h"
#include "creaseline/catalogue/outline_files.h"

namespace creaseline {
namespace {

constexpr std::size_t kLargestSvg = std::size_t{4} * 1024 * 1024;
constexpr std::size_t kMostNesting = 64;
constexpr std::size_t kMostPoints = 200'000;
constexpr std::string_view kSvgNamespace = "http://www.w3.org/2000/svg";
constexpr char kNamespaceEnd = '|';

// What an element means for the outline.
enum class Role { Group, Shape, Style, Skipped, Refused };

struct ElementRole {
  std::string_view name;
  Role role;
  std::string_view advice;  // for refused ones
};

constexpr std::string_view kTextAdvice =
    toBeWorded("text turned into paths, as fonts are never fetched");
constexpr std::string_view kPictureAdvice = toBeWorded("filled shapes only; remove the picture");
constexpr std::string_view kUseAdvice =
    toBeWorded("shapes in place of references; expand or unlink the clones");
constexpr ElementRole kRoles[] = {
    {"g", Role::Group, ""},
    {"a", Role::Group, ""},
    {"path", Role::Shape, ""},
    {"rect", Role::Shape, ""},
    {"circle", Role::Shape, ""},
    {"ellipse", Role::Shape, ""},
    {"polygon", Role::Shape, ""},
    {"polyline", Role::Shape, ""},
    {"style", Role::Style, ""},
    {"text", Role::Refused, kTextAdvice},
    {"tspan", Role::Refused, kTextAdvice},
    {"tref", Role::Refused, kTextAdvice},
    {"textPath", Role::Refused, kTextAdvice},
    {"image", Role::Refused, kPictureAdvice},
    {"foreignObject", Role::Refused, kPictureAdvice},
    {"use", Role::Refused, kUseAdvice},
    {"svg", Role::Refused,
     toBeWorded("one drawing; move the inner one's shapes into the outer one")},
    {"switch", Role::Refused, toBeWorded("shapes that are always shown")},
};

// Everything else, such as metadata, definitions and scripts, draws nothing by itself.
ElementRole roleOf(std::string_view name) {
  for (const ElementRole& entry : kRoles) {
    if (entry.name == name) {
      return entry;
    }
  }
  return {name, Role::Skipped, ""};
}

// The element's name if it is of SVG or of no namespace; empty for all others.
std::string_view localName(std::string_view name) {
  const std::size_t end = name.rfind(kNamespaceEnd);
  if (end == std::string_view::npos) {
    return name;
  }
  return name.substr(0, end) == kSvgNamespace ? name.substr(end + 1) : std::string_view();
}

// What is wrong with files of this kind most often, as expat words it; the rest stays in its words.
constexpr std::string_view kParserWords[] = {
    toBeWorded("syntax error"),
    toBeWorded("no element found"),
    toBeWorded("not well-formed (invalid token)"),
    toBeWorded("unclosed token"),
    toBeWorded("mismatched tag"),
    toBeWorded("duplicate attribute"),
    toBeWorded("junk after document element"),
    toBeWorded("undefined entity"),
    toBeWorded("unknown encoding"),
    toBeWorded("unclosed CDATA section"),
    toBeWorded("unbound prefix"),
};

std::string saidByParser(std::string_view text) {
  const bool known =
      std::find(std::begin(kParserWords), std::end(kParserWords), text) != std::end(kParserWords);
  return known ? inLanguage(text) : std::string(text);
}

struct Level {
  Affine toMm;
  SvgPaint paint;
  bool skipped = false;  // with all that is inside
  bool style = false;
};

class SvgReader {
 public:
  SvgReader(const std::filesystem::path& file, double toleranceMm)
      : file_(file.string()),
        toleranceMm_(toleranceMm),
        parser_(XML_ParserCreateNS(nullptr, kNamespaceEnd), &XML_ParserFree) {
    if (!parser_) {
      throw std::bad_alloc();
    }
    XML_SetUserData(parser_.get(), this);
    XML_SetElementHandler(
        parser_.get(),
        [](void* self, const char* name, const char** attributes) {
          static_cast<SvgReader*>(self)->guarded(
              [&](SvgReader& reader) { reader.begin(name, attributes); });
        },
        [](void* self, const char*) {
          static_cast<SvgReader*>(self)->guarded([](SvgReader& reader) { reader.end(); });
        });
    XML_SetCharacterDataHandler(parser_.get(), [](void* self, const char* text, int length) {
      static_cast<SvgReader*>(self)->guarded([&](SvgReader& reader) {
        reader.characters({text, static_cast<std::size_t>(length)});
      });
    });
    XML_SetStartDoctypeDeclHandler(
        parser_.get(), [](void* self, const char*, const char*, const char*, int) {
          static_cast<SvgReader*>(self)->guarded([](SvgReader& reader) {
            reader.refuse(worded("a DOCTYPE"),
                          worded("a document without it; entities are never expanded"));
          });
        });
  }

  Outline read(const std::string& content) {
    const auto status =
        XML_Parse(parser_.get(), content.data(), static_cast<int>(content.size()), XML_TRUE);
    if (failure_) {
      std::rethrow_exception(failure_);
    }
    if (status != XML_STATUS_OK) {
      refuse(saidByParser(XML_ErrorString(XML_GetErrorCode(parser_.get()))),
             worded("an SVG document"));
    }
    if (outline_.empty()) {
      throw InputError(
          {file_, "", worded("no filled shape"), worded("at least one shape that is filled")});
    }
    return outline_.centred();
  }

 private:
  // No exception may pass through expat, which is C. The first one is kept and parsing stops.
  template <class Action>
  void guarded(Action action) noexcept {
    if (failure_) {
      return;
    }
    try {
      action(*this);
    } catch (...) {
      failure_ = std::current_exception();
      XML_StopParser(parser_.get(), XML_FALSE);
    }
  }

  [[noreturn]] void refuse(std::string found, std::string expected) const {
    const auto line = XML_GetCurrentLineNumber(parser_.get());
    throw InputError({file_,
                      element_.empty() ? worded("line {}", line)
                                       : worded("line {}, element {}", line, quotedText(element_)),
                      std::move(found), std::move(expected)});
  }

  void begin(const char* name, const char** namesAndValues) {
    if (levels_.size() == kMostNesting) {
      refuse(worded("elements nested deeper than {}", kMostNesting),
             worded("at most {} levels", kMostNesting));
    }
    const std::string_view local = localName(name);
    if (!levels_.empty() && levels_.back().skipped) {
      levels_.push_back(levels_.back());
      return;
    }
    element_ = local;
    const SvgAttributes attributes(namesAndValues);
    if (levels_.empty()) {
      beginRoot(local, attributes);
      return;
    }
    const ElementRole role = roleOf(local);
    if (role.role == Role::Refused) {
      refuse(quotedText(local), inLanguage(role.advice));
    }
    Level level = innerLevel(attributes);
    level.style = role.role == Role::Style;
    level.skipped = level.skipped || role.role == Role::Skipped;
    levels_.push_back(level);
    if (role.role == Role::Shape && !level.skipped && level.paint.filled && level.paint.visible) {
      addShape(local, attributes, level);
    }
  }

  void beginRoot(std::string_view local, const SvgAttributes& attributes) {
    if (local != "svg") {
      refuse(quotedText(local), worded("the root element 'svg'"));
    }
    const auto toMm = viewportMap(attributes);
    if (!toMm) {
      refuse(toMm.message(),
             worded("a true size: width and height in mm, cm, in or pt, and a sound viewBox"));
    }
    levels_.push_back({*toMm, SvgPaint().inheritedBy(attributes), isHidden(attributes), false});
  }

  static bool isHidden(const SvgAttributes& attributes) {
    return attributes.value("display") == "none" || isSvgZero(attributes.value("opacity"));
  }

  Level innerLevel(const SvgAttributes& attributes) const {
    Level level = levels_.back();
    level.style = false;
    level.skipped = isHidden(attributes);
    level.paint = level.paint.inheritedBy(attributes);
    for (const auto& [name, found] : {std::pair("clip-path", toBeWorded("a clip-path")),
                                      std::pair("mask", toBeWorded("a mask"))}) {
      if (attributes.has(name) && attributes.value(name) != "none" && !level.skipped) {
        refuse(inLanguage(found), worded("shapes that are cut already; release or apply it"));
      }
    }
    const auto transform = parseTransform(attributes.value("transform"));
    if (!transform) {
      refuse(transform.message(), worded("a transform of SVG 1.1, such as translate(10 20)"));
    }
    level.toMm = level.toMm.after(*transform);
    return level;
  }

  // Colours of a style sheet do not matter; what hides or moves shapes does.
  void characters(std::string_view text) {
    if (levels_.empty() || !levels_.back().style) {
      return;
    }
    style_ += text;
  }

  void end() {
    if (levels_.back().style) {
      for (const std::string_view word : {"none", "transparent", "hidden", "transform", "fill-rule",
                                          "clip-path", "mask", "opacity", "@import"}) {
        if (style_.find(word) != std::string::npos) {
          refuse(
              worded("a style sheet with {}", quotedText(word)),
              worded("that written as an attribute of each shape; style sheets are not followed"));
        }
      }
      style_.clear();
    }
    levels_.pop_back();
  }

  void addShape(std::string_view local, const SvgAttributes& attributes, const Level& level) {
    const double stretch = level.toMm.largestStretch();
    if (!std::isfinite(stretch)) {
      refuse(worded("a transform out of range"), worded("coordinates of at most 1000 m"));
    }
    if (stretch == 0.0) {
      return;
    }
    const std::size_t room = kMostPoints - points_;
    const CurveFlattener flattener(toleranceMm_ / stretch, room);
    const auto shape = shapeRings(local, attributes, flattener, room);
    if (!shape->ok()) {
      refuse(shape->message(),
             worded("a shape of SVG 1.1 with at most {} points in the whole file", kMostPoints));
    }
    std::vector<Ring> rings;
    for (const Polyline& chain : shape->value()) {
      points_ += chain.size();
      if (Ring ring = tidyRing(inMm(chain, level.toMm)); !ring.empty()) {
        checkRing(ring);
        rings.push_back(std::move(ring));
      }
    }
    ringCount_ += rings.size();
    if (ringCount_ > kMostRings) {
      refuse(worded("more than {} rings", kMostRings), worded("a drawing of fewer parts"));
    }
    addPieces(rings, level.paint.rule);
  }

  Ring inMm(const Polyline& chain, const Affine& toMm) const {
    Ring ring;
    ring.reserve(chain.size());
    for (const Point& point : chain) {
      const Point mm = toMm(point);
      if (!(std::abs(mm.x) <= Length::kLimitMm && std::abs(mm.y) <= Length::kLimitMm)) {
        refuse(worded("a point out of range"), worded("coordinates of at most 1000 m"));
      }
      ring.push_back(mm);
    }
    return ring;
  }

  void checkRing(const Ring& ring) const {
    if (const auto at = selfCrossing(ring)) {
      refuse(worded("an outline that crosses itself at {}", placeText(*at)),
             worded("outlines without crossings; unite the shape with itself"));
    }
  }

  void addPieces(const std::vector<Ring>& rings, FillRule rule) {
    FilledRings filled = fillRings(rings, rule);
    if (filled.crossing) {
      refuse(worded("outlines that cross each other at {}", placeText(*filled.crossing)),
             worded("outlines without crossings; unite the shapes"));
    }
    for (Piece& piece : filled.pieces) {
      outline_.pieces.push_back(std::move(piece));
    }
  }

  // As the drawing program shows it: from the page's top left corner.
  static std::string placeText(Point at) { return worded("({:.2f} mm, {:.2f} mm)", at.x, at.y); }

  std::string file_;
  double toleranceMm_;
  std::unique_ptr<XML_ParserStruct, decltype(&XML_ParserFree)> parser_;
  std::exception_ptr failure_;
  std::vector<Level> levels_;
  std::string element_;
  std::string style_;
  std::size_t points_ = 0;
  std::size_t ringCount_ = 0;
  Outline outline_;
};

}  // namespace

Outline readSvgOutline(const std::filesystem::path& file, Length tolerance) {
  if (tolerance <= Length()) {
    throw std::invalid_argument("the tolerance of an outline must be above zero");
  }
  return SvgReader(file, tolerance.mm()).read(readFile(file, kLargestSvg));
}

}  // namespace creaseline
