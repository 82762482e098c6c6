// Writes the pages of docs/ that are made from the sources, or checks that they are up to date.
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "core/base/errors.hpp"
#include "core/log/body.hpp"
#include "core/log/entry.hpp"
#include "core/sheets/visit_lines.hpp"
#include "core/trade/rows.hpp"
#include "core/wire/field_docs.hpp"
#include "tools/demo_figures.hpp"
#include "tools/demo_pages.hpp"
#include "tools/vocabulary_page.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

struct Page {
  std::string path;  // below the docs folder
  std::string text;
};

// A bar would end the cell of a table.
std::string cell(std::string_view text) {
  std::string escaped;
  for (const char letter : text) {
    if (letter == '|') escaped += '\\';
    escaped += letter;
  }
  return escaped;
}

std::string errors_page() {
  std::string page =
      "# Everything that can go wrong\n\n"
      "Made from core/base/errors.cpp by tools/generated_docs.sh; do not edit. The slug in front "
      "is the\nsame wherever the fault is told: on the command line, with `--json`, in tests.\n";
  for (const ErrorKind& error : all_errors()) {
    page += "\n## " + std::string(error.slug) + "\n\n";
    page += "- What happened: " + std::string(error.meaning) + "\n";
    page += "- What is safe: " + std::string(error.safe) + "\n";
    page += "- What to do: " + std::string(error.what_to_do) + "\n";
  }
  return page;
}

template <HasFields T>
std::string field_table() {
  std::string table = "\n| name | holds | may be absent | meaning |\n|---|---|---|---|\n";
  for (const FieldDoc& field : field_docs<T>()) {
    table += "| `" + field.path + "` | " + cell(type_told(field)) + " | " +
             (field.may_be_absent ? "yes" : "") + " | " + cell(field.doc) + " |\n";
  }
  return table;
}

template <class Body>
std::string kind_section() {
  return "\n### " + std::string(Body::kind) + ", version " + std::to_string(Body::version) + "\n" +
         field_table<Body>();
}

template <class... Bodies>
std::string kind_sections(const std::tuple<Bodies...>*) {
  return (kind_section<Bodies>() + ...);
}

std::string row_sections() {
  std::string sections;
  const auto add = [&sections](const auto& rows) {
    using Row = typename std::decay_t<decltype(rows)>::value_type;
    sections += "\n### " + std::string(Row::table) + "\n\nKey: the first " +
                std::to_string(Row::key_columns) + " columns.\n" + field_table<Row>();
  };
  const Rows rows;
  for_each_table(rows, add);
  return sections;
}

std::string dictionary_page() {
  return "# Data dictionary\n\n"
         "Made from the `fields()` of the value types by tools/generated_docs.sh; do not edit. The "
         "same\nlists give the JSON and the columns of the stores. `[]` marks a list, a dot a "
         "member of "
         "a\nmember.\n\n"
         "## The envelope of every entry\n" +
         field_table<Envelope>() + "\n## The body of each kind of entry\n" +
         kind_sections(static_cast<const AllBodies*>(nullptr)) + "\n## The rows of the picture\n" +
         row_sections() +
         "\n## The lines of `evenclaw sheet --csv`\n\nOne flat list, CSV as in RFC 4180, UTF-8. A "
         "text that begins with `=`, `+`, `-` or `@` has an\napostrophe before it, so that no "
         "spreadsheet runs it.\n" +
         field_table<VisitLine>();
}

std::string read_file(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

bool write_page(const std::filesystem::path& docs, const Page& page) {
  std::filesystem::create_directories((docs / page.path).parent_path());
  std::ofstream file(docs / page.path, std::ios::binary);
  file << page.text;
  return file.good();
}

bool is_current(const std::filesystem::path& docs, const Page& page) {
  if (read_file(docs / page.path) == page.text) return true;
  std::cerr << (docs / page.path).string()
            << " is out of date: tools/generated_docs.sh build/dev --write\n";
  return false;
}

int generate(std::string_view mode, const std::filesystem::path& docs) {
  std::vector<Page> pages = {{"errors.md", errors_page()},
                             {"format/data-dictionary.md", dictionary_page()},
                             {"format/vocabulary.md", vocabulary_page()},
                             {"format/demo-truth.md", demo_truth_page()},
                             {"method/demo-parameters.md", demo_parameters_page()}};
  const DemoFigures figures = demo_figures();
  pages.push_back({"method/demo-figures.md", figures.page});
  for (const DemoFigures::Plot& plot : figures.plots) {
    pages.push_back({"method/demo-figures-" + plot.name + ".svg", plot.svg});
  }
  bool good = figures.all_within;
  if (!good) std::cerr << "a figure of the demo lies outside the published range\n";
  for (const Page& page : pages) {
    good = (mode == "--write" ? write_page(docs, page) : is_current(docs, page)) && good;
  }
  return good ? 0 : 1;
}

}  // namespace

int main(int count, char** words) {
  const std::vector<std::string_view> given(words + 1, words + count);
  if (given.size() != 2 || (given[0] != "--check" && given[0] != "--write")) {
    std::cerr << "docs_generator --check|--write DOCS\n";
    return 2;
  }
  return generate(given[0], given[1]);
}
