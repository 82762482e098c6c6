// The file as a reader of PDF files sees it.
#include "report/pdf/pdf.hpp"

#include <doctest/doctest.h>

#include <cstdio>

#include "report/pdf/layout.hpp"
#include "tests/core/paper/invented_charts.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

/// What a program says of the file when it is run with it; a failing one says what failed.
std::string said_of(const std::string& pdf, const std::string& program,
                    const std::string& behind = "") {
  const TemporaryFolder folder;
  const std::string file = folder.file("page.pdf");
  write_bytes(file, pdf);
  FILE* pipe = popen((program + " " + file + " " + behind + " 2>&1").c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string said;
  char chunk[4096];
  for (std::size_t got = 0; (got = fread(chunk, 1, sizeof chunk, pipe)) > 0;) {
    said.append(chunk, got);
  }
  CHECK(pclose(pipe) == 0);
  return said;
}

std::string pdf_of(const Document& document) {
  const auto made = to_pdf(document, test::shipped_fonts());
  REQUIRE(made.ok());
  return *made;
}

Document three_cows() {
  return visit_sheet(three_cow_day());
}

/// Spaces, those that hold words together too, and line ends count for nothing.
std::string closed_up(std::string text) {
  const std::string holding = "\u00a0";
  for (auto at = text.find(holding); at != std::string::npos; at = text.find(holding, at)) {
    text.erase(at, holding.size());
  }
  std::erase_if(text, [](char one) { return one == ' ' || one == '\n' || one == '\f'; });
  return text;
}

}  // namespace

TEST_CASE("A visit of three cows with a box for the vet takes three sheets") {
  Typesetter typesetter = test::typesetter();
  CHECK(laid_out(three_cows(), typesetter).size() <= 3);
  CHECK(laid_out(visit_sheet(day_with_nothing_found()), typesetter).size() <= 2);
}

TEST_CASE("The text of a page can be read back in the order in which it is laid out") {
  Typesetter typesetter = test::typesetter();
  const Document document = three_cows();
  const std::string text = closed_up(said_of(pdf_of(document), "pdftotext -raw", "-"));
  std::size_t at = 0;
  for (const Page& page : laid_out(document, typesetter)) {
    for (const std::string& line : test::lines_on(page.pieces)) {
      CAPTURE(line);
      const std::size_t found = text.find(closed_up(line), at);
      REQUIRE(found != std::string::npos);
      at = found;
    }
  }
}

TEST_CASE("Every cow with a notice, a task or a card can be searched for") {
  const Document document = three_cows();
  const std::string text = said_of(pdf_of(document), "pdftotext", "-");
  int labels = 0;
  const auto stands = [&](const std::string& label) {
    CAPTURE(label);
    CHECK(text.find(label) != std::string::npos);
    ++labels;
  };
  for (const Block& block : document.blocks) {
    if (const auto* card = std::get_if<Card>(&block)) stands(card->label);
    if (const auto* list = std::get_if<TaskList>(&block)) {
      for (const TaskItem& item : list->items) stands(item.label);
    }
    if (const auto* notice = std::get_if<BoxedNotice>(&block)) {
      stands(notice->title);
      for (const NoticeItem& item : notice->items) stands(item.label);
    }
  }
  CHECK(labels > 5);
}

TEST_CASE("Both fonts lie in the file, cut down to what is used") {
  const std::string fonts = said_of(pdf_of(three_cows()), "pdffonts");
  CHECK(fonts.find("B612-Regular") != std::string::npos);
  CHECK(fonts.find("B612-Bold") != std::string::npos);
  CHECK(fonts.find(" no ") == std::string::npos);  // embedded, a subset, with its letters known
}

TEST_CASE("The file says its title, its pages on A4, and not when it was made") {
  const Document document = three_cows();
  Typesetter typesetter = test::typesetter();
  const std::string facts = said_of(pdf_of(document), "pdfinfo");
  CHECK(facts.find(document.title) != std::string::npos);
  CHECK(facts.find("(A4)") != std::string::npos);
  CHECK(facts.find("CreationDate") == std::string::npos);
  const std::string pages = std::to_string(laid_out(document, typesetter).size());
  CHECK(closed_up(facts).find("Pages:" + pages + "Encrypted") != std::string::npos);
}

TEST_CASE("Equal documents give equal bytes") {
  CHECK(pdf_of(three_cows()) == pdf_of(three_cows()));
}

TEST_CASE("A name with letters the shipped fonts lack still makes a page") {
  Document document;
  document.title = "Łukasz Nowák";
  CHECK(said_of(pdf_of(document), "pdftotext", "-").find("ukasz") != std::string::npos);
}

TEST_CASE("A name with characters that are no text does no harm") {
  Document document;
  document.title = "Home\n\x1b[31m Farm \xff";
  document.blocks = {Paragraph{{plain("\xe2\x80\xa8 two \xe2\x80\xa9 lines")}}};
  CHECK(said_of(pdf_of(document), "pdftotext", "-").find("Farm") != std::string::npos);
}

TEST_CASE("The words of a chart can be read in the PDF") {
  Document document;
  document.blocks = {to_figure(test::herds_chart()), to_figure(test::herd_multiples())};
  const std::string text = said_of(pdf_of(document), "pdftotext", "-");
  for (const char* words : {"Hollow Meadow", "cows that came lame, %", "Herd F", "month"}) {
    CAPTURE(words);
    CHECK(text.find(words) != std::string::npos);
  }
}

TEST_CASE("Without a font there is no page but a fault") {
  const auto made = to_pdf(Document{}, {{"no font at all"}});
  REQUIRE_FALSE(made.ok());
  CHECK(made.faults().front().slug == "print-failed");
}

}  // namespace evenclaw
