#include "core/trade/reason.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace evenclaw;

namespace {

std::optional<ReasonSet> from(std::string_view text) {
  return value_from_text(text, std::type_identity<ReasonSet>{});
}

}  // namespace

TEST_CASE("a set of reasons is written in the order of the reasons and reads back") {
  const ReasonSet both{Reason::fresh, Reason::lame};
  CHECK(to_text(both) == "lame fresh");
  CHECK(from("lame fresh") == both);
  CHECK(to_text(ReasonSet{}).empty());
  CHECK(from("") == ReasonSet{});
}

TEST_CASE("what is no set of reasons is not read") {
  for (const char* text : {"lame lame", "lame ", " lame", "limping", "lame,fresh"}) {
    CAPTURE(text);
    CHECK_FALSE(from(text));
  }
}
