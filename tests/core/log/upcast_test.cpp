#include "core/log/upcast.hpp"

#include <doctest/doctest.h>

#include "core/log/body.hpp"

namespace evenclaw {

namespace {

// An invented kind whose second version named a length in tenths and whose third added a claw.
Json to_tenths(Json body) {
  const std::int64_t mm = *body.member("mm")->as_integer();
  body.as_object()->erase("mm");
  body.as_object()->emplace("tenths", Json(mm * 10));
  return body;
}

Json with_claw(Json body) {
  body.as_object()->emplace("claw", Json(std::string("not_called")));
  return body;
}

constexpr UpCaster steps[] = {{"measured", 1, to_tenths}, {"measured", 2, with_claw}};

std::string cast(std::int32_t from, std::int32_t to, std::span<const UpCaster> with = steps) {
  const Json body = *json_from_text(from == 1 ? R"({"mm":75})" : R"({"tenths":750})");
  const std::optional<Json> result = up_cast(body, {"measured", from}, to, with);
  return result ? canonical_json(*result) : "nothing";
}

}  // namespace

TEST_CASE("an old body goes through every step up to the wanted version") {
  CHECK(cast(1, 3) == R"({"claw":"not_called","tenths":750})");
  CHECK(cast(2, 3) == R"({"claw":"not_called","tenths":750})");
  CHECK(cast(1, 2) == R"({"tenths":750})");
}

TEST_CASE("a body of the wanted version stays as it is") {
  CHECK(cast(1, 1) == R"({"mm":75})");
}

TEST_CASE("a newer body or a missing step gives nothing") {
  CHECK(cast(2, 1) == "nothing");
  CHECK(cast(1, 4) == "nothing");
  CHECK(cast(1, 3, std::span(steps).subspan(1)) == "nothing");
}

TEST_CASE("every kind beyond its first version has all its steps") {
  for (const std::string_view kind : all_kinds()) {
    const std::int32_t version = *current_version(kind);
    std::int32_t found = 0;
    for (const UpCaster& step : all_up_casters()) {
      if (step.kind == kind && step.from < version) ++found;
    }
    CHECK(found == version - 1);
  }
}

}  // namespace evenclaw
