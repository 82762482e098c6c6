#include "core/paper/html.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

namespace {

Document with(std::vector<Block> blocks) {
  Document document;
  document.title = "Hollow Meadow";
  document.blocks = std::move(blocks);
  return document;
}

bool holds(const std::string& html, const std::string& part) {
  return html.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("a page names its language, its title and one heading of the first level") {
  Document document = with({});
  document.language = "nl";
  document.kind = "Visit";
  document.facts = {{"Called by", "Anna"}};
  const std::string html = to_html(document);
  CHECK(holds(html, "<html lang=\"nl\">"));
  CHECK(holds(html, "<title>Hollow Meadow</title>"));
  CHECK(holds(html, "<h1>Hollow Meadow</h1>"));
  CHECK(holds(html, "<dt>Called by</dt><dd>Anna</dd>"));
}

TEST_CASE("every text of every block is escaped") {
  const Runs evil = {plain("<i>"), strong("<b>"), quiet("<u>")};
  Document document =
      with({Heading{2, "<h>", "<a>"}, Paragraph{evil}, Bullets{{evil}},
            BoxedNotice{"<n>", {{"<l>", {evil}}}, evil}, TaskList{"<d>", {{"<l>", evil, {evil}}}},
            Table{"<c>", {{"<head>"}}, {{evil}}}, Card{"<k>", evil, {{"<t>", evil}}}, Note{evil}});
  document.title = "<title>";
  document.foot = "</style><script>";
  document.facts = {{"<f>", "<v>"}};
  const std::string html = to_html(document);
  for (const char* tag : {"<i>", "<b>", "<u>", "<h>", "<a>", "<n>", "<l>", "<d>", "<c>",
                          "<head>head", "<k>", "<t>", "<f>", "<v>", "<script>", "<title><title>"}) {
    if (std::string(tag) == "<i>") continue;  // the line to write on is an <i>
    CHECK_MESSAGE(!holds(html, tag), tag);
  }
  CHECK(holds(html, "&lt;script&gt;"));
}

TEST_CASE("a page holds no script and refers to nothing outside") {
  Document document = with({Heading{2, "To do"}, Figure{{10, 10, {}}, "drawing"}});
  const std::string html = to_html(document, {{"B612", false, "bytes"}});
  for (const char* word :
       {"<script", "http:", "https:", "//", "src=", "href", "@import", "onload"}) {
    CHECK_MESSAGE(!holds(html, word), word);
  }
  CHECK(holds(html, "default-src 'none'"));
}

TEST_CASE("cards are headed one level below the heading they stand under") {
  const std::string html = to_html(with({Heading{2, "Cows"}, Card{"9", {}, {}}, Heading{3, "Found"},
                                         Card{"412", {plain("lame")}, {{"Left hind", {}}}}}));
  CHECK(holds(html, "<h3 class=\"label\">9</h3>"));
  CHECK(holds(html, "<h4 class=\"label\">412</h4>"));
  CHECK(holds(html, "<dt>Left hind</dt>"));
}

TEST_CASE("a long label is set smaller") {
  const std::string number = "DE0012345678901";
  CHECK(holds(to_html(with({Card{number, {}, {}}})), "class=\"label long\""));
  CHECK(holds(to_html(with({TaskList{"", {{number, {}, {}}}}})), "class=\"label long\""));
  CHECK_FALSE(holds(to_html(with({TaskList{"", {{"412", {}, {}}}}})), "class=\"label long\""));
}

TEST_CASE("tables tell which cells are heads of what") {
  const std::string html =
      to_html(with({Table{"", {{"Cow"}, {"Cows", Align::end}}, {{{plain("412")}, {plain("3")}}}}}));
  CHECK(holds(html, "<th scope=\"col\">Cow</th><th scope=\"col\" class=\"end\">Cows</th>"));
  CHECK(holds(html, "<th scope=\"row\">412</th><td class=\"end\">3</td>"));
}

TEST_CASE("what a cow without a number looks like may be parted where her number stands") {
  const std::string html =
      to_html(with({Table{"", {{"Cow"}, {"Why"}}, {{{plain("red heifer")}, {plain("lame")}}}}}));
  CHECK(holds(html, "<th scope=\"row\" class=\"long\">red heifer</th>"));
}

TEST_CASE("several short numbers beside a notice are as large as one, a long name is not") {
  const auto html = [](const char* label) {
    return to_html(with({BoxedNotice{"VET", {{label, {{plain("ring")}}}}, {}}}));
  };
  CHECK(holds(html("116, 124 and 150"), "class=\"label\""));
  CHECK(holds(html("116 and DE0012345678"), "class=\"label long\""));
}

TEST_CASE("a short notice stays on one printed page, a long one may be parted") {
  const auto notice = [](int cows) {
    BoxedNotice box{"VET TODAY", {}, {}};
    for (int i = 0; i < cows; ++i) box.items.push_back({std::to_string(i), {{plain("lame")}}});
    return to_html(with({std::move(box)}));
  };
  CHECK(holds(notice(16), "<section class=\"notice short\">"));
  CHECK(holds(notice(17), "<section class=\"notice\">"));
}

TEST_CASE("every line of a task has its own box and its own place to write") {
  const std::string html =
      to_html(with({TaskList{"done on", {{"412", {}, {{plain("a")}, {plain("b")}}}}}}));
  const std::string line_a =
      "<span class=\"box\" aria-hidden=\"true\"></span><p>a</p>"
      "<span class=\"done\">done on<i></i></span>";
  CHECK(holds(html, line_a));
  CHECK(holds(html, "<p>b</p><span class=\"done\">"));
}

TEST_CASE("the heading of a task list is printed again where the list goes on") {
  const std::string html =
      to_html(with({Heading{3, "By Thu 26 Nov", "for the farm"}, TaskList{"", {{"412", {}, {}}}}}));
  CHECK(holds(html,
              "<div class=\"todo\">\n<div class=\"by\"><h3>By Thu 26 Nov <span "
              "class=\"aside\">for the farm</span></h3></div>\n<ul class=\"tasks\">"));
  CHECK(holds(html, ".by{display:table-header-group}"));
}

TEST_CASE("a heading above anything else stands as it is") {
  const std::string html = to_html(with({Heading{2, "To do"}, Paragraph{}, TaskList{}}));
  CHECK(holds(html, "\n<h2>To do</h2>\n<p></p>\n<div class=\"todo\">\n<ul"));
}

TEST_CASE("rows headed by words are set no larger than the rest") {
  Table table{"", {{"What"}}, {{{plain("Blocks put on")}}}};
  CHECK(holds(to_html(with({table})), "<table>"));
  table.head = RowHead::words;
  CHECK(holds(to_html(with({table})), "<table class=\"words\">"));
}

TEST_CASE("every printed page says which one it is of how many") {
  Document document = with({});
  CHECK(holds(to_html(document),
              "@bottom-right{content:\"page \"counter(page)\" of \"counter(pages)"));
}

TEST_CASE("what follows a page break starts a page") {
  const std::string html =
      to_html(with({PageBreak{}, Heading{2, "Cow by cow"}, Heading{2, "After"}}));
  CHECK(holds(html, "<h2 class=\"page\">Cow by cow</h2>"));
  CHECK(holds(html, "<h2>After</h2>"));
}

TEST_CASE("a table or a card behind a page break starts a page as well") {
  Table table;
  table.columns = {{"Cow"}};
  const std::string html = to_html(with({PageBreak{}, table, PageBreak{}, Card{"412", {}, {}}}));
  CHECK(holds(html, "<div class=\"page\">\n<table"));
  CHECK(holds(html, "<div class=\"page\">\n<article"));
  CHECK_FALSE(holds(to_html(with({table})), "<div class=\"page\">"));
}

TEST_CASE("columns to write in that ask for no share get none, and the form is made") {
  WritingForm form;
  form.columns = {{"Found", 0}, {"Done", 0}};
  form.rows = {"LH"};
  form.items = {{"412", {}}};
  CHECK(holds(to_html(with({form})), "width:0%"));
}

TEST_CASE("the foot stands on every printed page as a safe style string") {
  Document document = with({});
  document.foot = "A \"herd\"";
  CHECK(holds(to_html(document), "@bottom-left{content:\"A \\22 herd\\22 \""));
}

TEST_CASE("equal documents give equal pages") {
  const Document document = with({Heading{2, "To do"}, Paragraph{{plain("nothing")}}});
  CHECK(to_html(document) == to_html(document));
}

TEST_CASE("words with a line to write on keep the line behind them") {
  Document document;
  document.blocks = {Blank{"Name & telephone"}};
  CHECK(to_html(document).find("<p class=\"blank\">Name &amp; telephone<i></i></p>") !=
        std::string::npos);
}

}  // namespace evenclaw
