// SPDX-License-Identifier: MIT
// The verbs and options, and the help made from them.
#include "arguments.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <charconv>
#include <string_view>

namespace creaseline {

namespace {

constexpr std::array<std::string_view, 4> kVerbs = {"plan", "sheets", "check", "rules"};

constexpr const char* kExitCodes =
    "Exit codes:\n"
    "  0    planned, or all is well\n"
    "  1    planned, but something cannot be sewn as asked (a stop)\n"
    "  2    bad input, wrong usage, or output that cannot be written\n"
    "  130  cancelled; nothing was written\n";

// Everything that the options write into, before it is turned into Arguments.
struct Raw {
  Arguments arguments;
  std::string unit, mark;
  std::string paper = "a4";
  std::vector<std::string> kinds, variants;
  std::string pages;
};

void addOrderAndShop(CLI::App& verb, Raw& raw) {
  verb.add_option("ORDER", raw.arguments.order, "The order, a *.order.json file")
      ->required()
      ->type_name("");
  verb.add_option("--shop", raw.arguments.shop, "The shop: its machines, frames and stock")
      ->required()
      ->type_name("FILE");
}

void addUnits(CLI::App& verb, Raw& raw) {
  verb.add_option("--units", raw.unit, "Show lengths in: in, cm or mm (else as the shop does)")
      ->check(CLI::IsMember({"in", "cm", "mm"}))
      ->type_name("UNIT");
  verb.add_option("--mark", raw.mark, "Finest mark of an inch ruler: 8 or 16 to the inch")
      ->check(CLI::IsMember({"8", "16"}))
      ->type_name("N");
}

void addLanguage(CLI::App& verb, Raw& raw, const std::string& what) {
  verb.add_option("--language", raw.arguments.language,
                  what + " in this language: en, es or another there is (else en)")
      ->type_name("CODE");
}

void addOutput(CLI::App& verb, Raw& raw, const std::string& what, bool required) {
  verb.add_option("--output,-o", raw.arguments.output, what)->required(required)->type_name("FILE");
  verb.add_flag("--force,-f", raw.arguments.force, "Replace the output if it is there already");
}

void addRunning(CLI::App& verb, Raw& raw) {
  verb.add_option("--threads", raw.arguments.threads,
                  "Plan on so many threads (else all); the plan is the same")
      ->check(CLI::Range(1U, 256U))
      ->type_name("N");
  verb.add_flag("--quiet,-q", raw.arguments.quiet, "Errors only, no remarks and no progress");
}

void addPrices(CLI::App& verb, Raw& raw) {
  verb.add_flag_callback(
      "--no-prices", [&raw] { raw.arguments.prices = false; },
      "Leave the cost out, also where the shop has rates");
}

void addPlan(CLI::App& app, Raw& raw) {
  CLI::App* verb = app.add_subcommand("plan", "Plan an order: where, which frame, which backing");
  addOrderAndShop(*verb, raw);
  verb->add_flag("--json", raw.arguments.json, "Write JSON for programs, not text for people");
  addOutput(*verb, raw, "Write to FILE (else, or with -, to standard output)", false);
  addLanguage(*verb, raw, "Write");
  addUnits(*verb, raw);
  addPrices(*verb, raw);
  addRunning(*verb, raw);
  verb->footer(
      std::string("Examples:\n"
                  "  creaseline plan team.order.json --shop our.shop.json\n"
                  "  creaseline plan team.order.json --shop our.shop.json --units cm\n"
                  "  creaseline plan team.order.json --shop our.shop.json --language es\n"
                  "  creaseline plan team.order.json --shop our.shop.json --json -o plan.json\n"
                  "\n") +
      kExitCodes);
}

std::string kindsHelp() {
  std::string text = "Kinds of sheets (a * marks the usual set):\n";
  for (const SheetKind& kind : sheetKinds()) {
    text +=
        fmt::format("  {:<17} {} {}\n", kind.id, kind.usual ? '*' : ' ', kind.what.toStdString());
  }
  return text;
}

std::vector<std::string> kindIds() {
  std::vector<std::string> ids;
  for (const SheetKind& kind : sheetKinds()) {
    ids.push_back(kind.id);
  }
  return ids;
}

std::vector<std::string> paperNames() {
  std::vector<std::string> names;
  for (const auto& [paper, name] : EnumNames<Paper>::names) {
    names.emplace_back(name);
  }
  return names;
}

void addSheetChoice(CLI::App& verb, Raw& raw) {
  verb.add_option("--only", raw.kinds, "Draw these kinds of sheets alone, by comma (see below)")
      ->delimiter(',')
      ->allow_extra_args(false)
      // The kinds stand below with what they are; here they would be one long line.
      ->check(CLI::Validator(CLI::IsMember(kindIds())).description(""))
      ->type_name("KINDS");
  verb.add_option("--paper", raw.paper,
                  fmt::format("Paper: {} (else a4)", fmt::join(paperNames(), ", ")))
      ->check(CLI::IsMember(paperNames()))
      ->type_name("NAME");
  verb.add_option("--pages", raw.pages, "Write these pages alone: 3, 3-7 or 3-")
      ->type_name("RANGE");
  verb.add_option("--template-variants", raw.variants,
                  "Draw each template mirrored or turned as well")
      ->delimiter(',')
      ->allow_extra_args(false)
      ->check(CLI::IsMember({"mirrored", "turned"}))
      ->type_name("WAYS");
  verb.add_flag("--svg", raw.arguments.pictures,
                "Write an SVG picture of each page into the folder that --output names");
}

void addSheets(CLI::App& app, Raw& raw) {
  CLI::App* verb = app.add_subcommand("sheets", "Plan an order and draw its sheets (PDF or SVG)");
  addOrderAndShop(*verb, raw);
  addOutput(*verb, raw, "Write the PDF to FILE (with -, to standard output)", true);
  addSheetChoice(*verb, raw);
  addLanguage(*verb, raw, "Draw");
  addUnits(*verb, raw);
  addPrices(*verb, raw);
  addRunning(*verb, raw);
  verb->footer(
      kindsHelp() +
      "\nExamples:\n"
      "  creaseline sheets team.order.json --shop our.shop.json -o team.pdf\n"
      "  creaseline sheets team.order.json --shop our.shop.json -o team.pdf --paper letter\n"
      "  creaseline sheets team.order.json --shop our.shop.json -o gauges.pdf --only gauges\n"
      "  creaseline sheets team.order.json --shop our.shop.json -o pictures --svg\n"
      "\n"
      "Print at 100 %: each page carries a bar to measure.\n"
      "\n" +
      kExitCodes);
}

// "3", "3-7", "3-"; both ends from 1.
void readPages(const std::string& text, SheetOptions& options) {
  const auto number = [&](std::string_view part) {
    int value = 0;
    const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), value);
    if (error != std::errc() || end != part.data() + part.size() || value < 1) {
      throw UsageError(
          fmt::format("--pages: found '{}'; expected a page, or two with - between "
                      "them, such as 3-7 (see creaseline sheets --help)",
                      text));
    }
    return value;
  };
  const std::size_t dash = text.find('-');
  options.firstPage = number(std::string_view(text).substr(0, dash));
  if (dash == std::string::npos) {
    options.lastPage = options.firstPage;
  } else if (dash + 1 < text.size()) {
    options.lastPage = number(std::string_view(text).substr(dash + 1));
    if (options.lastPage < options.firstPage) {
      throw UsageError(
          fmt::format("--pages: found '{}'; the last page stands before the first "
                      "(see creaseline sheets --help)",
                      text));
    }
  }
}

void takeSheetChoice(const Raw& raw, Arguments& arguments) {
  arguments.sheets.kinds = raw.kinds;
  for (const auto& [paper, name] : EnumNames<Paper>::names) {
    if (name == raw.paper) {
      arguments.sheets.paper = paper;
    }
  }
  for (const std::string& variant : raw.variants) {
    (variant == "mirrored" ? arguments.sheets.variants.mirrored
                           : arguments.sheets.variants.turned) = true;
  }
  if (!raw.pages.empty()) {
    readPages(raw.pages, arguments.pages);
  }
  if (arguments.pictures && arguments.output == "-") {
    throw UsageError(
        "--svg writes many files, so --output must name a folder (see creaseline sheets --help)");
  }
}

void addCheck(CLI::App& app, Raw& raw) {
  CLI::App* verb = app.add_subcommand("check", "Check files without planning");
  verb->add_option("FILES", raw.arguments.files,
                   "Orders (with all they refer to), shops, blanks, designs, charts (CSV)")
      ->required()
      ->type_name("");
  verb->add_flag("--quiet,-q", raw.arguments.quiet, "Errors only");
  verb->footer(
      std::string("Example:\n"
                  "  creaseline check team.order.json our.shop.json hoodie.csv\n"
                  "\n"
                  "Exit codes: 0 all files are well, 2 at least one is not\n"));
}

void addRules(CLI::App& app, Raw& raw) {
  CLI::App* verb =
      app.add_subcommand("rules", "Show every rule of placement and backing with its basis");
  addOutput(*verb, raw, "Write Markdown to FILE (else, or with -, to standard output)", false);
  verb->footer("Example:\n  creaseline rules -o rules.md\n");
}

std::string topHelp() {
  return fmt::format(
      "Creaseline plans garment embroidery: for every garment, size and location where the\n"
      "design goes, which frame holds it and with how much room, and which backing it needs.\n"
      "\n"
      "Usage: creaseline VERB ...\n"
      "\n"
      "Verbs:\n"
      "  plan ORDER --shop SHOP                 plan an order, as text or as JSON\n"
      "  sheets ORDER --shop SHOP --output PDF  draw its sheets, templates and gauges\n"
      "  check FILES...                         check files without planning\n"
      "  rules                                  show every rule with its basis\n"
      "\n"
      "  creaseline VERB --help                 the options of a verb\n"
      "  creaseline --version                   the version\n"
      "\n"
      "Examples:\n"
      "  creaseline plan team.order.json --shop our.shop.json\n"
      "  creaseline sheets team.order.json --shop our.shop.json --output team.pdf\n"
      "  creaseline check team.order.json our.shop.json\n"
      "\n"
      "{}",
      kExitCodes);
}

// The first word decides; the library would only miss a verb, not name what stands in its place.
void refuseUnknownVerb(std::string_view word) {
  const bool verb = std::find(kVerbs.begin(), kVerbs.end(), word) != kVerbs.end();
  if (verb || word == "--help" || word == "-h" || word == "--version") {
    return;
  }
  throw UsageError(fmt::format("found {} '{}'; expected {} (see creaseline --help)",
                               word.starts_with('-') ? "the option" : "the verb", word,
                               fmt::join(kVerbs, ", ")));
}

Verb verbOf(const CLI::App& app) {
  for (const auto& [name, verb] :
       {std::pair{"plan", Verb::Plan}, std::pair{"sheets", Verb::Sheets},
        std::pair{"check", Verb::Check}, std::pair{"rules", Verb::Rules}}) {
    if (app.got_subcommand(name)) {
      return verb;
    }
  }
  return Verb::Show;
}

// Only the words; the library's own message ends with advice of its own in some cases.
std::string usageMessage(const CLI::App& app, const CLI::ParseError& error) {
  const auto verbs = app.get_subcommands();
  std::string message = error.what();
  std::replace(message.begin(), message.end(), '\n', ' ');
  while (!message.empty() && (message.back() == ' ' || message.back() == '.')) {
    message.pop_back();
  }
  return fmt::format("{} (see creaseline {}--help)", message,
                     verbs.empty() ? std::string() : verbs.front()->get_name() + ' ');
}

}  // namespace

Arguments parseArguments(int count, const char* const* words) {
  if (count < 2) {
    throw UsageError("no verb; expected plan, sheets, check or rules (see creaseline --help)");
  }
  refuseUnknownVerb(words[1]);

  Raw raw;
  CLI::App app("", "creaseline");
  app.get_formatter()->column_width(30);
  app.get_formatter()->label("Positionals", "Arguments");
  app.get_formatter()->label("REQUIRED", "(needed)");
  app.set_help_flag("--help,-h", "Show this help");
  app.set_version_flag("--version", std::string("creaseline ") + CREASELINE_VERSION);
  app.require_subcommand(1);
  addPlan(app, raw);
  addSheets(app, raw);
  addCheck(app, raw);
  addRules(app, raw);
  try {
    app.parse(count, words);
  } catch (const CLI::CallForHelp&) {
    const auto verbs = app.get_subcommands();
    raw.arguments.text = verbs.empty() ? topHelp() : verbs.front()->help("creaseline");
    return raw.arguments;
  } catch (const CLI::CallForVersion& version) {
    raw.arguments.text = std::string(version.what()) + '\n';
    return raw.arguments;
  } catch (const CLI::ParseError& error) {
    throw UsageError(usageMessage(app, error));
  }

  Arguments& arguments = raw.arguments;
  arguments.verb = verbOf(app);
  takeSheetChoice(raw, arguments);
  if (!raw.unit.empty()) {
    arguments.unit = raw.unit == "in"   ? LengthUnit::Inch
                     : raw.unit == "cm" ? LengthUnit::Centimetre
                                        : LengthUnit::Millimetre;
  }
  if (!raw.mark.empty()) {
    arguments.mark = raw.mark == "16" ? RulerMark::Sixteenth : RulerMark::Eighth;
  }
  return arguments;
}

}  // namespace creaseline
