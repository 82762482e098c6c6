#include "core/base/fields.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace evenclaw {

namespace {

struct Wrap {
  int days = 0;
  std::string foot;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("days", &Wrap::days, "days it stays on");
    visit("foot", &Wrap::foot, "where it is");
  }
};

struct Plain {
  int days;
};

}  // namespace

TEST_CASE("fields are visited in order with name, member and doc") {
  const Wrap wrap{3, "LH"};
  std::vector<std::string> seen;
  for_each_field(wrap, [&](std::string_view name, const auto& member, std::string_view doc) {
    std::string line(name);
    if constexpr (std::is_same_v<decltype(member), const int&>) {
      line += "=" + std::to_string(member);
    } else {
      line += "=" + member;
    }
    seen.push_back(line + " " + std::string(doc));
  });
  CHECK(seen == std::vector<std::string>{"days=3 days it stays on", "foot=LH where it is"});
}

TEST_CASE("a field of a changeable value can be changed") {
  Wrap wrap;
  for_each_field(wrap, [](std::string_view name, auto& member, std::string_view) {
    if constexpr (std::is_same_v<decltype(member), int&>) member = static_cast<int>(name.size());
  });
  CHECK(wrap.days == 4);
  CHECK(wrap.foot.empty());
}

TEST_CASE("only types that name their fields have fields") {
  static_assert(HasFields<Wrap>);
  static_assert(!HasFields<Plain>);
  static_assert(!HasFields<int>);
  static_assert(!HasFields<std::string>);
  CHECK(Plain{2}.days == 2);
}

}  // namespace evenclaw
