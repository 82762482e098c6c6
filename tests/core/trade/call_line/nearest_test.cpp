#include "core/trade/call_line/nearest.hpp"

#include <doctest/doctest.h>

#include "core/trade/call_line/grammar.hpp"

using namespace evenclaw;

namespace {

std::string_view nearest_to(std::string_view line, std::size_t unknown, std::size_t earliest = 0) {
  const std::vector<Token> tokens = tokens_of(line);
  return nearest_phrase(tokens, unknown, earliest, kinds_after(Spot::turn), english()).words;
}

}  // namespace

TEST_CASE("a slip of the finger finds the word that was meant") {
  CHECK(nearest_to("outsde", 0) == "outside");
  CHECK(nearest_to("wrpa on", 0) == "wrap on");
  CHECK(nearest_to("blok taken off", 0) == "block taken off");
  CHECK(nearest_to("white lien abscess", 0) == "white line abscess");
  CHECK(nearest_to("white line abces", 2) == "white line abscess");
}

TEST_CASE("what is like no word has no nearest word") {
  CHECK(nearest_to("xylophone", 0).empty());
  CHECK(nearest_to("qqqq", 0).empty());
  CHECK(nearest_to("blk inside", 0).empty());
}

TEST_CASE("words before the earliest are not drawn in") {
  const std::vector<Token> tokens = tokens_of("white line abces");
  const auto kinds = kinds_after(Spot::turn);
  CHECK(nearest_phrase(tokens, 2, 2, kinds, english()).first_token == 2);
  CHECK(nearest_phrase(tokens, 2, 0, kinds, english()).first_token == 0);
}

TEST_CASE("a product name that looks like a known word is taken for a slip") {
  const auto looks = [](std::string_view word) {
    return looks_like_a_slip(tokens_of(word).front(), english());
  };
  CHECK(looks("wrpa"));
  CHECK(looks("outsid"));
  CHECK_FALSE(looks("bluemix"));
  CHECK_FALSE(looks("terramix"));
}

TEST_CASE("what is near is proposed, and nothing where nothing is") {
  Nearest near;
  CHECK(meant_by(near).empty());
  near.words = "lame";
  CHECK(meant_by(near) == "did you mean \"lame\"?");
}

TEST_CASE("a line is read with its slips mended, and what is a slip of nothing stays") {
  constexpr TermKind kinds[] = {TermKind::news, TermKind::gone, TermKind::block_act};
  CHECK(with_slips_mended("300 blok gone, stil lame", kinds, english()) ==
        "300 block gone, still lame");
  CHECK(with_slips_mended("300 wrap off, bluemix", kinds, english()) == "300 wrap off, bluemix");
  CHECK(with_slips_mended("", kinds, english()).empty());
}
