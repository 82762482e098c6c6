#include "cli/shipped.hpp"

#include "embedded/example_calls.hpp"
#include "embedded/font_files.hpp"
#include "embedded/print_font_files.hpp"

namespace evenclaw::cli {

std::vector<FontFile> fonts() {
  std::vector<FontFile> all;
  for (const EmbeddedFile& file : font_files()) {
    all.push_back({"B612", file.name.find("bold") != std::string_view::npos, file.text});
  }
  return all;
}

std::vector<PrintFont> print_fonts() {
  std::vector<PrintFont> all;
  for (const EmbeddedFile& file : print_font_files()) all.push_back({file.text});
  return all;
}

std::vector<ExampleVisit> example_visits() {
  std::vector<ExampleVisit> all;
  for (const EmbeddedFile& file : example_calls()) all.push_back({file.name, file.text});
  return all;
}

}  // namespace evenclaw::cli
