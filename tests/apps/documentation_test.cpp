// SPDX-License-Identifier: MIT
// The manual of the command line is run, so that it cannot rot.
#include <catch2/catch.hpp>
#include <sstream>

#include "apps/command_line.h"

using namespace creaseline::support;

namespace {

// One command of the manual with the lines shown under it.
struct Shown {
  std::string command;
  std::vector<std::string> lines;
};

// Commands stand in console blocks behind "$ ". A shown line "..." stands for any lines.
std::vector<Shown> shownCommands(const std::string& manual) {
  std::vector<Shown> commands;
  std::istringstream stream(manual);
  bool inside = false;
  for (std::string line; std::getline(stream, line);) {
    if (line.starts_with("```")) {
      inside = line == "```console";
    } else if (inside && line.starts_with("$ ")) {
      commands.push_back({line.substr(2), {}});
    } else if (inside && !commands.empty()) {
      commands.back().lines.push_back(line);
    }
  }
  return commands;
}

std::vector<std::string> wordsOf(const std::string& command) {
  std::istringstream stream(command);
  std::vector<std::string> words;
  for (std::string word; stream >> word;) {
    words.push_back(word);
  }
  return words;
}

// Shown lines must come out in this order; "..." may stand for anything between.
void checkShown(const Shown& shown, const std::string& output) {
  std::size_t from = 0;
  for (const std::string& line : shown.lines) {
    if (line == "...") {
      continue;
    }
    const std::size_t at = output.find(line, from);
    INFO("line of the manual: " << line << "\noutput:\n" << output.substr(0, 4000));
    CHECK(at != std::string::npos);
    from = at == std::string::npos ? from : at + line.size();
  }
}

}  // namespace

TEST_CASE("every command of the manual does what the manual shows", "[apps][docs]") {
  const DemoCopy demo;
  const std::string manual = contentOf(SOURCE_DIR "/docs/command-line.md");
  const std::vector<Shown> commands = shownCommands(manual);
  REQUIRE(commands.size() >= 8);
  int lastCode = 0;
  for (const Shown& shown : commands) {
    CAPTURE(shown.command);
    if (shown.command == "echo $?") {
      REQUIRE(shown.lines.size() == 1);
      CHECK(shown.lines[0] == std::to_string(lastCode));
      continue;
    }
    std::vector<std::string> words = wordsOf(shown.command);
    REQUIRE(words.at(0) == "creaseline");
    words.erase(words.begin());
    const ProgramResult result = demo.run(words);
    lastCode = result.exitCode;
    CHECK(result.signal == 0);
    checkShown(shown, result.out + result.err);
  }
}

TEST_CASE("the manual names every option that the help names", "[apps][docs]") {
  const std::string manual = contentOf(SOURCE_DIR "/docs/command-line.md");
  for (const char* verb : {"plan", "sheets", "check", "rules"}) {
    std::istringstream help(runCreaseline({verb, "--help"}).out);
    std::size_t options = 0;
    for (std::string word; help >> word;) {
      const std::size_t comma = word.find(',');
      const std::string option = comma == std::string::npos ? word : word.substr(comma + 1);
      if (option.starts_with("--")) {
        CAPTURE(verb, option);
        CHECK(manual.find('`' + option) != std::string::npos);
        ++options;
      }
    }
    CHECK(options >= 2);
  }
}
