// What holds for every document, tried on many random ones; on failure the seed is printed.
#include "report/pdf/layout.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <sstream>

#include "tests/report/pdf/random_document.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

constexpr double rounding = 1e-6;
constexpr std::uint64_t documents = 60;

struct Tried {
  std::uint64_t seed = 0;
  std::vector<std::string> words;
  Strips strips;
  std::vector<Page> pages;
};

/// Made once for all the rules that are tried on them.
const std::vector<Tried>& tried_documents() {
  static const std::vector<Tried> all = [] {
    std::vector<Tried> made;
    Typesetter typesetter = test::typesetter();
    for (std::uint64_t seed = 1; seed <= documents; ++seed) {
      test::RandomDocument random(seed);
      Strips strips = document_strips(random.document(), typesetter);
      std::vector<Page> pages = dealt_to_pages(strips);
      made.push_back({seed, random.words(), std::move(strips), std::move(pages)});
    }
    return made;
  }();
  return all;
}

/// Words as the generator hands them out, without what the form and the foot say.
std::vector<std::string> handed_out(const std::vector<std::string>& lines) {
  std::vector<std::string> words;
  for (const std::string& line : lines) {
    std::istringstream stream(line);
    for (std::string word; stream >> word;) {
      if (word.back() == '.') word.pop_back();  // behind what a line of a card is for
      const bool is_ours = word.size() == 3 && std::islower(word[0]) != 0;
      if (is_ours) words.push_back(word);
    }
  }
  return words;
}

double edge_of(const Strip& strip) {
  return strip.frame ? strip.frame->stroke + strip.frame->padding : 0;
}

/// The strips from `from` on that belong together, and how high they are with everything that has
/// to stand on their page.
struct Chain {
  std::size_t from = 0;
  std::size_t to = 0;  // one past the last
  double height = 0;
};

std::vector<Chain> chains_of(const Strips& strips) {
  std::vector<Chain> chains;
  for (std::size_t from = 0; from < strips.size();) {
    std::size_t to = from;
    while (strips[to].with_next && to + 1 < strips.size()) ++to;
    ++to;
    const Strips part(strips.begin() + static_cast<std::ptrdiff_t>(from),
                      strips.begin() + static_cast<std::ptrdiff_t>(to));
    double height = height_of(part) + 4 * edge_of(part.back());
    if (part.front().head) height += height_of(*part.front().head);
    chains.push_back({from, to, height});
    from = to;
  }
  return chains;
}

/// On which page each strip lies.
std::vector<std::size_t> page_of_each(const std::vector<Page>& pages, std::size_t strips) {
  std::vector<std::size_t> page_of(strips, pages.size());
  for (std::size_t page = 0; page < pages.size(); ++page) {
    for (const StripPlace& place : pages[page].places) {
      if (!place.repeated) page_of[place.strip] = page;
    }
  }
  return page_of;
}

std::vector<std::size_t> order_of(const std::vector<Page>& pages) {
  std::vector<std::size_t> order;
  for (const Page& page : pages) {
    for (const StripPlace& place : page.places) {
      if (!place.repeated) order.push_back(place.strip);
    }
  }
  return order;
}

}  // namespace

TEST_CASE("Every word of a document is set once, under its own block and in its order") {
  for (const Tried& tried : tried_documents()) {
    CAPTURE(tried.seed);
    const Strips& strips = tried.strips;
    std::vector<std::string> words = handed_out(test::lines_of(strips));
    std::vector<std::string> expected = tried.words;
    std::sort(words.begin(), words.end());
    std::sort(expected.begin(), expected.end());
    CHECK(words == expected);
    const auto block_before = [](const Strip& a, const Strip& b) { return a.block < b.block; };
    CHECK(std::is_sorted(strips.begin(), strips.end(), block_before));
  }
}

TEST_CASE("Every strip lies on one page, in order, below the one before it") {
  for (const Tried& tried : tried_documents()) {
    CAPTURE(tried.seed);
    const Strips& strips = tried.strips;
    const std::vector<Page>& pages = tried.pages;
    std::vector<std::size_t> all(strips.size());
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
    CHECK(order_of(pages) == all);
    for (const Page& page : pages) {
      double bottom = margin_top;
      for (const StripPlace& place : page.places) {
        CHECK(place.top >= bottom - rounding);
        bottom = place.bottom;
      }
    }
  }
}

TEST_CASE("Nothing lies beyond the margins") {
  for (const Tried& tried : tried_documents()) {
    CAPTURE(tried.seed);
    const double most_down = paper_height - margin_bottom + rounding;
    for (const Page& page : tried.pages) {
      for (const Piece& piece : page.pieces) {
        const Extent extent = extent_of(piece);
        CHECK(extent.left >= margin_side - rounding);
        CHECK(extent.right <= paper_width - margin_side + 0.01);
        CHECK(extent.top >= margin_top - rounding);
        CHECK(extent.bottom <= most_down);
      }
    }
  }
}

TEST_CASE("A foot of many words keeps to the paper and to two lines") {
  Typesetter typesetter = test::typesetter();
  Document document;
  for (int i = 0; i < 99; ++i) document.foot += "what and when and which ";
  const std::vector<Page> pages = laid_out(document, typesetter);
  CHECK(pages[0].pieces.size() == 3);
  for (const Piece& piece : pages[0].pieces) {
    CHECK(extent_of(piece).top > paper_height - margin_bottom);
    CHECK(extent_of(piece).bottom < paper_height - 4);
  }
}

TEST_CASE("What belongs together is on one page unless it is higher than a page") {
  int parted = 0;
  for (const Tried& tried : tried_documents()) {
    CAPTURE(tried.seed);
    const Strips& strips = tried.strips;
    const auto page_of = page_of_each(tried.pages, strips.size());
    for (const Chain& chain : chains_of(strips)) {
      const bool is_parted = page_of[chain.from] != page_of[chain.to - 1];
      if (is_parted) ++parted;
      CAPTURE(chain.height);
      CHECK_FALSE((is_parted && chain.height <= column_height));
    }
  }
  CHECK(parted > 0);  // the rule was tried on such too
}

TEST_CASE("A page that goes on with a table, a box or a task list begins with its head") {
  int repeated = 0;
  for (const Tried& tried : tried_documents()) {
    CAPTURE(tried.seed);
    const Strips& strips = tried.strips;
    const std::vector<Page>& pages = tried.pages;
    for (std::size_t page = 1; page < pages.size(); ++page) {
      if (pages[page].places.empty()) continue;
      const std::size_t first = pages[page].places.front().strip;
      const bool goes_on = strips[first].head && strips[first - 1].head == strips[first].head &&
                           !strips[first].head->empty();
      CHECK(pages[page].places.front().repeated == goes_on);
      if (goes_on) ++repeated;
    }
  }
  CHECK(repeated > 0);
}

TEST_CASE("Every page says which one it is") {
  Typesetter typesetter = test::typesetter();
  Document document;
  document.blocks = {Paragraph{{plain("one")}}, PageBreak{}, Paragraph{{plain("two")}}};
  const std::vector<Page> pages = laid_out(document, typesetter);
  REQUIRE(pages.size() == 2);
  CHECK(test::lines_on(pages[0].pieces) == std::vector<std::string>{"one", "page 1 of 2"});
  CHECK(test::lines_on(pages[1].pieces) == std::vector<std::string>{"two", "page 2 of 2"});
}

TEST_CASE("The heading that says by when stands again over tasks on the next page") {
  Typesetter typesetter = test::typesetter();
  TaskList list;
  for (int cow = 100; cow < 160; ++cow) {
    list.items.push_back({std::to_string(cow), {}, {{plain("wrap off")}}});
  }
  Document document;
  document.blocks = {Heading{3, "By Tue 1 Dec", "for the farm"}, list};
  for (const Page& page : laid_out(document, typesetter)) {
    CHECK(test::lines_on(page.pieces).front() == "By Tue 1 Dec  for the farm");
  }
}

TEST_CASE("A heading with nothing behind it, and breaks with nothing between, make no empty page") {
  Typesetter typesetter = test::typesetter();
  Document document;
  document.blocks = {PageBreak{}, PageBreak{}, Heading{2, "Last"}, PageBreak{}};
  CHECK(laid_out(document, typesetter).size() == 1);
  CHECK(laid_out(Document{}, typesetter).size() == 1);
}

}  // namespace evenclaw
