#include "core/base/id.hpp"

#include <doctest/doctest.h>

#include <ostream>
#include <set>
#include <unordered_set>

#include "core/base/random.hpp"

namespace evenclaw {

namespace {

std::array<std::uint8_t, 10> random_bytes(RandomStream& random) {
  std::array<std::uint8_t, 10> bytes{};
  for (std::uint8_t& byte : bytes) byte = static_cast<std::uint8_t>(random.below(256));
  return bytes;
}

unsigned version_of(const Uuid& uuid) {
  return uuid.bytes[6] >> 4U;
}

unsigned variant_of(const Uuid& uuid) {
  return uuid.bytes[8] >> 6U;
}

}  // namespace

TEST_CASE("version 7 gives the example of RFC 9562, A.6") {
  const std::array<std::uint8_t, 10> random = {0x0C, 0xC3, 0x18, 0xC4, 0xDC,
                                               0x0C, 0x0C, 0x07, 0x39, 0x8F};
  CHECK(to_text(uuid_v7(0x017F22E279B0, random)) == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST_CASE("a derived id gives the SHA-256 example of RFC 9562, B.2") {
  const std::optional<Uuid> dns = uuid_from_text("6ba7b810-9dad-11d1-80b4-00c04fd430c8");
  REQUIRE(dns.has_value());
  const std::string name = std::string(dns->bytes.begin(), dns->bytes.end()) + "www.example.com";
  CHECK(to_text(uuid_derived(name)) == "5c146b14-3c52-8afd-938a-375d0df1fbf6");
}

TEST_CASE("version and variant stand whatever the random bytes are") {
  RandomStream random(7, 1);
  for (int i = 0; i < 500; ++i) {
    const Uuid uuid = uuid_v7(1'795'507'923'120 + i, random_bytes(random));
    REQUIRE(version_of(uuid) == 7);
    REQUIRE(variant_of(uuid) == 2);
    const Uuid derived = uuid_derived("cow " + std::to_string(i));
    REQUIRE(version_of(derived) == 8);
    REQUIRE(variant_of(derived) == 2);
  }
}

TEST_CASE("a later millisecond gives a greater id") {
  RandomStream random(7, 2);
  Uuid last = uuid_v7(0, random_bytes(random));
  for (std::int64_t ms = 1; ms < (std::int64_t{1} << 47); ms *= 3) {
    const Uuid next = uuid_v7(ms, random_bytes(random));
    REQUIRE(last < next);
    REQUIRE(to_text(last) < to_text(next));
    last = next;
  }
}

TEST_CASE("all 74 random bits of version 7 count") {
  const Uuid zeros = uuid_v7(0, {});
  int changed = 0;
  for (std::size_t bit = 0; bit < 80; ++bit) {
    std::array<std::uint8_t, 10> random{};
    random[bit / 8] = static_cast<std::uint8_t>(0x80U >> (bit % 8));
    changed += uuid_v7(0, random) == zeros ? 0 : 1;
  }
  CHECK(changed == 74);
}

TEST_CASE("equal names give equal ids, other names other ids") {
  CHECK(uuid_derived("herd 3 | 412") == uuid_derived("herd 3 | 412"));
  CHECK_FALSE(uuid_derived("herd 3 | 412") == uuid_derived("herd 3 | 413"));
  CHECK_FALSE(uuid_derived("").is_nil());
}

TEST_CASE("an id reads back in either case") {
  const Uuid uuid = uuid_derived("reads back");
  std::string capitals = to_text(uuid);
  for (char& c : capitals) {
    if (c >= 'a' && c <= 'f') c = static_cast<char>(c - 'a' + 'A');
  }
  CHECK(uuid_from_text(to_text(uuid)) == uuid);
  CHECK(uuid_from_text(capitals) == uuid);
}

TEST_CASE("what has not the form of an id is none") {
  for (const char* text :
       {"", "017f22e2-79b0-7cc3-98c4-dc0c0c07398", "017f22e2-79b0-7cc3-98c4-dc0c0c07398f0",
        "017f22e279b07cc398c4dc0c0c07398f", "017f22e2_79b0-7cc3-98c4-dc0c0c07398f",
        "017f22e2-79b0-7cc3-98c4-dc0c0c07398g", "{17f22e2-79b0-7cc3-98c4-dc0c0c07398}",
        "017f22e-279b0-7cc3-98c4-dc0c0c07398f"}) {
    CAPTURE(text);
    CHECK_FALSE(uuid_from_text(text).has_value());
  }
}

TEST_CASE("an id nobody gave is nil") {
  CHECK(Uuid{}.is_nil());
  CHECK(HerdId{}.is_nil());
  CHECK_FALSE(HerdId{uuid_derived("herd")}.is_nil());
  CHECK(to_text(HerdId{}) == "00000000-0000-0000-0000-000000000000");
}

TEST_CASE("ids can be kept in ordered and in hashed sets") {
  std::set<CowId> ordered;
  std::unordered_set<CowId> hashed;
  for (int i = 0; i < 1000; ++i) {
    const CowId cow{uuid_derived(std::to_string(i % 500))};
    ordered.insert(cow);
    hashed.insert(cow);
  }
  CHECK(ordered.size() == 500);
  CHECK(hashed.size() == 500);
}

TEST_CASE("a thousand ids hash to a thousand values") {
  std::set<std::size_t> values;
  for (int i = 0; i < 1000; ++i) {
    values.insert(std::hash<Uuid>{}(uuid_derived(std::to_string(i))));
  }
  CHECK(values.size() == 1000);
}

}  // namespace evenclaw
