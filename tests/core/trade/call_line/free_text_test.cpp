#include "core/trade/call_line/free_text.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("words that describe are printed bare, others in quotes") {
  struct Row {
    const char* words;
    TextExtent extent;
    const char* printed;
  };

  constexpr Row rows[] = {
      {"brown heifer, white star", TextExtent::to_strong, "brown heifer, white star"},
      {"brown; white", TextExtent::to_strong, "\"brown; white\""},
      {"brown, lame LH", TextExtent::to_strong, "\"brown, lame LH\""},
      {"lame on the road", TextExtent::to_strong, "lame on the road"},
      {"says \"moo\"", TextExtent::to_strong, "\"says \"\"moo\"\"\""},
      {" brown", TextExtent::to_strong, "\" brown\""},
      {", brown", TextExtent::to_strong, "\", brown\""},
      {"went down in the crush", TextExtent::to_strong, "\"went down in the crush\""},
      {"went down in the crush", TextExtent::of_an_end, "went down in the crush"},
      {"near calving, fever", TextExtent::of_an_end, "near calving, fever"},
      {"fever, vet", TextExtent::of_an_end, "\"fever, vet\""},
      {"blisters LH", TextExtent::of_an_end, "\"blisters LH\""},
      {"418", TextExtent::of_an_end, "\"418\""},
      {"bluemix", TextExtent::to_separator, "bluemix"},
      {"blue, green", TextExtent::to_separator, "\"blue, green\""},
      {"blue wrap", TextExtent::to_separator, "\"blue wrap\""},
      {"12 blue", TextExtent::to_separator, "12 blue"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.words);
    CHECK(printed_text(row.words, row.extent, english()) == row.printed);
  }
}

TEST_CASE("free words end at the first separator, a strong one, or the end of the line") {
  const std::vector<Token> tokens = tokens_of("brown, white; LH");
  CHECK(text_token_count(tokens, 0, TextExtent::to_separator) == 1);
  CHECK(text_token_count(tokens, 0, TextExtent::to_strong) == 3);
  CHECK(text_token_count(tokens, 0, TextExtent::to_line_end) == 5);
}

TEST_CASE("a note may hold any words") {
  CHECK_FALSE(could_be_calls(tokens_of("LH SU"), TextExtent::to_line_end, english()));
  CHECK(could_be_calls(tokens_of("LH SU"), TextExtent::to_strong, english()));
  CHECK_FALSE(could_be_calls(tokens_of("brown heifer"), TextExtent::to_strong, english()));
}

TEST_CASE("a note that names a foot and a lesion may hold a finding") {
  CHECK(may_tell_of_a_finding("kicks; LH SU outside heel bad", english()));
  CHECK_FALSE(may_tell_of_a_finding("kicks with the LH", english()));
  CHECK_FALSE(may_tell_of_a_finding("had a sole ulcer last year", english()));
}

TEST_CASE("a note that holds an act or a task may have been meant as a call") {
  for (const char* words : {"see again 14d, vet", "vet; wrap on", "block on inside", "spray twice",
                            "told the farmer", "watch her walk in 14d", "milk withheld till Thu"}) {
    CAPTURE(words);
    CHECK(may_tell_of_a_finding(words, english()));
  }
  CHECK_FALSE(may_tell_of_a_finding("vet not needed", english()));
  CHECK_FALSE(may_tell_of_a_finding("stands well, brown heifer", english()));
}

TEST_CASE("what is called of a foot is no description, whatever stands before it") {
  const auto is_unclear = [](const char* words) {
    return could_be_calls(tokens_of(words), TextExtent::to_strong, english());
  };
  CHECK(is_unclear("brown heifer LH SU"));
  CHECK(is_unclear("brown heifer lame on LH"));
  CHECK_FALSE(is_unclear("brown heifer, white LH"));
  CHECK_FALSE(is_unclear("kicked when the LH was up"));
}

TEST_CASE("what she looks like is quoted when it could be her number") {
  CHECK(printed_text("418", TextExtent::to_strong, english()) == "\"418\"");
  CHECK(printed_text("2 white stars", TextExtent::to_strong, english()) == "2 white stars");
  CHECK(printed_text("826000000600001", TextExtent::to_strong, english()) == "826000000600001");
}
