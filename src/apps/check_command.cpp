// SPDX-License-Identifier: MIT
// creaseline check: reads every file as planning would, says what it is, and plans nothing.
#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <optional>

#include "commands.h"
#include "creaseline/base/file.h"
#include "error_text.h"
#include "interruption.h"
#include "output.h"
#include "planning_job.h"

namespace creaseline {

namespace {

namespace fs = std::filesystem;

enum class Format { Order, Shop, Blank, Design, Chart };

struct FormatName {
  Format format;
  const char* inFile;  // value of "format"
  const char* ending;  // of the file's name
};
constexpr FormatName kFormats[] = {{Format::Order, "creaseline-order", ".order.json"},
                                   {Format::Shop, "creaseline-shop", ".shop.json"},
                                   {Format::Blank, "creaseline-blank", ".blank.json"},
                                   {Format::Design, "creaseline-design", ".design.json"}};

std::string counted(std::size_t count, const char* one, const char* many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

// A file that is not whole JSON is taken for what its name says: the reader then tells where it
// breaks.
Format formatFromName(const fs::path& file) {
  const std::string name = file.filename().string();
  for (const FormatName& entry : kFormats) {
    if (name.ends_with(entry.ending)) {
      return entry.format;
    }
  }
  return Format::Blank;
}

// The value of the top-level key "format"; nothing if the text is not JSON at all.
std::optional<nlohmann::json> formatKey(const std::string& text) {
  using nlohmann::json;
  // Contents are dropped while reading; only the top level is of interest here.
  const json::parser_callback_t topLevel = [](int depth, json::parse_event_t event, json&) {
    const bool opens =
        event == json::parse_event_t::object_start || event == json::parse_event_t::array_start;
    return !(opens && depth > 0);
  };
  const json top = json::parse(text, topLevel, false);
  if (top.is_discarded()) {
    return std::nullopt;
  }
  return top.is_object() && top.contains("format") ? top["format"] : json();
}

Format recognise(const fs::path& file, const std::string& text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  const bool looksLikeJson =
      first != std::string::npos && (text[first] == '{' || text[first] == '[');
  if (file.extension() == ".csv" || (!looksLikeJson && file.extension() != ".json")) {
    return Format::Chart;
  }
  const std::optional<nlohmann::json> key = formatKey(text);
  if (!key) {
    return formatFromName(file);
  }
  std::string known;
  for (const FormatName& entry : kFormats) {
    if (*key == entry.inFile) {
      return entry.format;
    }
    known += fmt::format("{}\"{}\"", known.empty() ? "" : ", ", entry.inFile);
  }
  throw InputError({file.string(), "/format", key->is_null() ? "nothing" : key->dump(), known});
}

template <class T>
T take(Loaded<T> loaded, bool quiet) {
  writeNotes(loaded.notes, quiet);
  return std::move(loaded.value);
}

// One line about a file that is well.
std::string checked(const fs::path& file, const Rules& rules, bool quiet) {
  const std::string text = readFile(file);
  switch (recognise(file, text)) {
    case Format::Order: {
      const Order order = take(loadOrder(file, rules), quiet);
      return fmt::format(
          "order {}, {}, {}", order.id, counted(order.lines.size(), "line", "lines"),
          counted(static_cast<std::size_t>(order.garments()), "garment", "garments"));
    }
    case Format::Shop: {
      const Shop shop = take(loadShop(file, rules), quiet);
      return fmt::format("shop {}, {}, {}", shop.name,
                         counted(shop.machines.size(), "machine", "machines"),
                         counted(shop.frames.size(), "frame", "frames"));
    }
    case Format::Blank: {
      const Blank blank = take(loadBlank(file, rules), quiet);
      return fmt::format("blank {}, {}", blank.name,
                         counted(blank.chart.sizes.size(), "size", "sizes"));
    }
    case Format::Design: {
      const Design design = take(loadDesign(file), quiet);
      return fmt::format("design {}, {} stitches", design.name, design.stitches);
    }
    case Format::Chart:
      return fmt::format(
          "size chart, {}",
          counted(parseSizeChartCsv(text, file.string()).sizes.size(), "size", "sizes"));
  }
  return {};
}

}  // namespace

int runCheck(const Arguments& arguments, const fs::path& program) {
  const Rules rules = loadRules(findResources(program));
  int exitCode = kExitFine;
  for (const fs::path& file : arguments.files) {
    throwIfInterrupted();
    try {
      const std::string description = checked(file, rules, arguments.quiet);
      if (!arguments.quiet) {
        writeStandardOutput(fmt::format("{}: {}: fine\n", file.string(), description));
      }
    } catch (const InputError& error) {
      writeMessage(errorText(error));
      exitCode = kExitRefused;
    }
  }
  return exitCode;
}

}  // namespace creaseline
