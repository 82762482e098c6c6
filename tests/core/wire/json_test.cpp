#include "core/wire/json.hpp"

#include <doctest/doctest.h>

#include <ostream>

#include "core/base/random.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

using namespace std::string_literals;

Json read(std::string_view text) {
  Result<Json> json = json_from_text(text);
  REQUIRE(json.ok());
  return *std::move(json);
}

Fault refusal(std::string_view text) {
  const Result<Json> json = json_from_text(text);
  REQUIRE_FALSE(json.ok());
  REQUIRE(json.faults().size() == 1);
  CHECK(json.faults()[0].slug == "json-unreadable");
  return json.faults()[0];
}

std::string canonical(std::string_view text) {
  return canonical_json(read(text));
}

void append_utf8(std::string& out, std::uint32_t code) {
  if (code < 0x80) {
    out += static_cast<char>(code);
  } else if (code < 0x800) {
    out += static_cast<char>(0xC0U | code >> 6U);
  } else if (code < 0x10000) {
    out += static_cast<char>(0xE0U | code >> 12U);
    out += static_cast<char>(0x80U | (code >> 6U & 0x3FU));
  } else {
    out += static_cast<char>(0xF0U | code >> 18U);
    out += static_cast<char>(0x80U | (code >> 12U & 0x3FU));
    out += static_cast<char>(0x80U | (code >> 6U & 0x3FU));
  }
  if (code >= 0x80) out += static_cast<char>(0x80U | (code & 0x3FU));
}

// Code points on both sides of every border that matters to escaping and to the order of names.
std::uint32_t random_code(RandomStream& random) {
  constexpr std::uint32_t starts[] = {0x0,    0x20,   0x5B,   0x7E,    0x7FF,
                                      0xD7F0, 0xE000, 0xFFF0, 0x10000, 0x10FFF0};
  return starts[random.below(10)] + random.below(15);
}

struct RandomText {
  std::string utf8;
  std::u16string utf16;
};

RandomText random_text(RandomStream& random) {
  RandomText text;
  const std::uint32_t length = random.below(6);
  for (std::uint32_t i = 0; i < length; ++i) {
    const std::uint32_t code = random_code(random);
    append_utf8(text.utf8, code);
    if (code < 0x10000) {
      text.utf16 += static_cast<char16_t>(code);
    } else {
      text.utf16 += static_cast<char16_t>(0xD800 + ((code - 0x10000) >> 10U));
      text.utf16 += static_cast<char16_t>(0xDC00 + ((code - 0x10000) & 0x3FFU));
    }
  }
  return text;
}

std::int64_t random_integer(RandomStream& random) {
  const std::int64_t size = static_cast<std::int64_t>(random.next_u64() >> (11 + random.below(53)));
  return random.chance(0.5) ? size : -size;
}

Json random_json(RandomStream& random, int depth) {
  switch (random.below(depth > 0 ? 6 : 4)) {
    case 0:
      return Json();
    case 1:
      return Json(random.chance(0.5));
    case 2:
      return Json(random_integer(random));
    case 3:
      return Json(random_text(random).utf8);
    case 4: {
      JsonArray array;
      for (std::uint32_t i = random.below(4); i > 0; --i) {
        array.push_back(random_json(random, depth - 1));
      }
      return Json(std::move(array));
    }
    default: {
      JsonObject object;
      for (std::uint32_t i = random.below(4); i > 0; --i) {
        std::string name = random_text(random).utf8;
        object.emplace(std::move(name), random_json(random, depth - 1));
      }
      return Json(std::move(object));
    }
  }
}

std::string random_bytes(RandomStream& random) {
  constexpr std::string_view likely = "{}[]\":,\\ \n-0123456789.eEtrufalsn/";
  std::string bytes;
  for (std::uint32_t i = random.below(40); i > 0; --i) {
    const bool is_likely = random.chance(0.8);
    bytes += is_likely ? likely[random.below(static_cast<std::uint32_t>(likely.size()))]
                       : static_cast<char>(random.below(256));
  }
  return bytes;
}

// A text that was good until some bytes of it were changed, lost or doubled.
std::string damaged(RandomStream& random, std::string text) {
  for (std::uint32_t i = random.below(3); i > 0 && !text.empty(); --i) {
    const std::size_t at = random.below(static_cast<std::uint32_t>(text.size()));
    switch (random.below(3)) {
      case 0:
        text[at] = static_cast<char>(random.below(256));
        break;
      case 1:
        text.erase(at, 1 + random.below(4));
        break;
      default:
        text.insert(at, text.substr(at, 1 + random.below(4)));
        break;
    }
  }
  return text;
}

// What must hold for any bytes: no exception, and a fault that can be shown, or a value.
void expect_sound(const std::string& text) {
  const Result<Json> json = json_from_text(text);
  if (json.ok()) {
    const std::string bytes = canonical_json(*json);
    REQUIRE(canonical(bytes) == bytes);
    return;
  }
  const Fault& fault = json.faults()[0];
  REQUIRE(fault.slug == "json-unreadable");
  REQUIRE_FALSE(fault.message.empty());
  REQUIRE(is_utf8(fault.token));
  REQUIRE(fault.line >= 1);
  REQUIRE(fault.column >= 1);
}

}  // namespace

TEST_CASE("names are sorted as in the example of RFC 8785, 3.2.3") {
  const std::string bytes = canonical(R"({
    "\u20ac": "Euro Sign",
    "\r": "Carriage Return",
    "\ufb33": "Hebrew Letter Dalet With Dagesh",
    "1": "One",
    "\ud83d\ude00": "Emoji: Grinning Face",
    "\u0080": "Control",
    "\u00f6": "Latin Small Letter O With Diaeresis"
  })");
  CHECK(bytes ==
        "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\xC2\x80\":\"Control\","
        "\"\xC3\xB6\":\"Latin Small Letter O With Diaeresis\",\"\xE2\x82\xAC\":\"Euro Sign\","
        "\"\xF0\x9F\x98\x80\":\"Emoji: Grinning Face\","
        "\"\xEF\xAC\xB3\":\"Hebrew Letter Dalet With Dagesh\"}");
}

TEST_CASE("strings and literals are written as in the example of RFC 8785, 3.2.2") {
  CHECK(canonical(R"({ "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
                       "literals": [null, true, false] })") ==
        "{\"literals\":[null,true,false],\"string\":\"\xE2\x82\xAC$\\u000f\\nA'B\\\"\\\\\\\\\\\"/"
        "\"}");
}

TEST_CASE("each control character has its one spelling") {
  CHECK(canonical_json(Json("\b\t\n\f\r\0\x1F\x7F"s)) == "\"\\b\\t\\n\\f\\r\\u0000\\u001f\x7F\"");
}

TEST_CASE("empty things are written without a space") {
  CHECK(canonical(" { } ") == "{}");
  CHECK(canonical("[ ]") == "[]");
  CHECK(canonical("\"\"") == "\"\"");
  CHECK(canonical("[{},[[]]]") == "[{},[[]]]");
}

TEST_CASE("integers are kept exactly up to 2^53 - 1") {
  CHECK(canonical("[0,-0,7,-7,9007199254740991,-9007199254740991]") ==
        "[0,0,7,-7,9007199254740991,-9007199254740991]");
}

TEST_CASE("the pretty form breaks lines for people and reads back") {
  const Json json = read(R"({"feet":["LH",4,{}],"note":"a: b","none":[]})");
  CHECK(pretty_json(json) ==
        "{\n  \"feet\": [\n    \"LH\",\n    4,\n    {}\n  ],\n  \"none\": [],\n"
        "  \"note\": \"a: b\"\n}");
  CHECK(read(pretty_json(json)) == json);
}

TEST_CASE("bytes that are no UTF-8 are written so that they can be read") {
  const std::string bytes = canonical_json(Json("heel \xFF bad"s));
  CHECK(bytes == "\"heel \xEF\xBF\xBD bad\"");
  CHECK(read(bytes) == Json("heel \xEF\xBF\xBD bad"s));
}

TEST_CASE("members are found by name, and nothing is found where there is none") {
  const Json json = read(R"({"cow":412})");
  REQUIRE(json.member("cow") != nullptr);
  CHECK(*json.member("cow") == Json(412));
  CHECK(json.member("calf") == nullptr);
  CHECK(Json(412).member("cow") == nullptr);
}

TEST_CASE("each kind of value is itself and no other") {
  CHECK(Json().is_null());
  CHECK(*Json(true).as_bool());
  CHECK(Json(true).as_integer() == nullptr);
  CHECK(*Json(1).as_integer() == 1);
  CHECK(Json(1).as_bool() == nullptr);
  CHECK(*Json("x").as_string() == "x");
  CHECK(Json(JsonArray{Json(1)}).as_array()->size() == 1);
  CHECK(Json(JsonArray{}).as_object() == nullptr);
  CHECK_FALSE(Json(JsonArray{}) == Json(JsonObject{}));
}

TEST_CASE("a fraction or an exponent is refused where it stands") {
  const Fault fraction = refusal("{\"cow\": 412,\n  \"height\": 7.5}");
  CHECK(fraction.token == "7.5");
  CHECK(fraction.line == 2);
  CHECK(fraction.column == 13);
  CHECK(refusal("[1e3]").token == "1e3");
  CHECK(refusal("-0.0").token == "-0.0");
  CHECK(refusal("1.5").column == 1);
}

TEST_CASE("an integer that other readers would round is refused") {
  for (const char* number : {"9007199254740992", "-9007199254740992", "18446744073709551616",
                             "-9223372036854775809", "123456789012345678901234567890"}) {
    CAPTURE(number);
    const Fault fault = refusal("[0, "s + number + "]");
    CHECK(fault.token == number);
    CHECK(fault.column == 5);
    CHECK(fault.message.find("whole number") != std::string::npos);
  }
}

TEST_CASE("a name given twice is refused at the second") {
  const Fault fault = refusal("{\"cow\": 1,\n \"calf\": 2, \"cow\": 1}");
  CHECK(fault.token == "cow");
  CHECK(fault.line == 2);
  CHECK(fault.column == 13);
  const Fault escaped = refusal(R"({"a\\\"":1, "a\\\u0022":2})");
  CHECK(escaped.token == "a\\\"");
  CHECK(escaped.column == 13);
}

TEST_CASE("the same name in two objects is fine") {
  CHECK(canonical(R"([{"cow":1},{"cow":2,"x":{"cow":3}}])") ==
        R"([{"cow":1},{"cow":2,"x":{"cow":3}}])");
}

TEST_CASE("columns count characters, not bytes") {
  CHECK(refusal("[\"Müller €\", x]").column == 14);
}

TEST_CASE("64 levels are read, 65 are refused at the bracket too many") {
  const std::string deepest = std::string(64, '[') + std::string(64, ']');
  CHECK(canonical(deepest) == deepest);
  const Fault fault = refusal(std::string(65, '[') + std::string(65, ']'));
  CHECK(fault.column == 65);
  std::string objects;
  for (int i = 0; i < 65; ++i) objects += "{\"a\":";
  CHECK(refusal(objects).message == refusal(std::string(1'000'000, '[')).message);
}

TEST_CASE("what is no JSON is refused where it begins to be none") {
  struct Wrong {
    std::string text;
    int column;
  };

  const Wrong wrongs[] = {{"", 1},          {"  ", 3},    {"[1", 3},         {"[1,]", 4},
                          {"{\"a\" 1}", 6}, {"{a:1}", 2}, {"nul", 4},        {"[1] 2", 5},
                          {"// no", 1},     {"'a'", 1},   {"\"a", 3},        {"\"\n\"", 2},
                          {"[01]", 3},      {"+1", 1},    {"[1 2]", 4},      {"\"\\x\"", 3},
                          {"\"\\u12\"", 6}, {"NaN", 1},   {"{\"a\":1,}", 8}, {"\0"s, 1}};
  for (const Wrong& wrong : wrongs) {
    CAPTURE(wrong.text);
    const Fault fault = refusal(wrong.text);
    CHECK(fault.line == 1);
    CHECK(fault.column == wrong.column);
  }
}

TEST_CASE("invalid UTF-8 and lone surrogates are refused") {
  for (const std::string& text :
       {"\"\xFF\""s, "\"\xC0\x80\""s, "\"\xED\xA0\x80\""s, "\"\xF4\x90\x80\x80\""s, "\"\xC3"s,
        R"("\ud83d")"s, R"("\ude00")"s, R"("\ud83dx")"s, R"("\ud83d\u0041")"s}) {
    CAPTURE(text.size());
    CHECK(is_utf8(refusal(text).token));
  }
}

TEST_CASE("a very long token is shown shortened") {
  CHECK(refusal("[1." + std::string(500, '5') + "]").token.size() < 60);
}

TEST_CASE("names are ordered by their UTF-16 code units") {
  RandomStream random(13, 1);
  const JsonNameLess less;
  for (int i = 0; i < 20000; ++i) {
    const RandomText a = random_text(random);
    const RandomText b = random_text(random);
    REQUIRE(less(a.utf8, b.utf8) == (a.utf16 < b.utf16));
    REQUIRE_FALSE(less(a.utf8, a.utf8));
  }
}

TEST_CASE("reading canonical bytes and writing them again changes nothing") {
  RandomStream random(13, 2);
  for (int i = 0; i < 3000; ++i) {
    const Json json = random_json(random, 4);
    const std::string bytes = canonical_json(json);
    REQUIRE(is_utf8(bytes));
    const Json again = read(bytes);
    REQUIRE(again == json);
    REQUIRE(canonical_json(again) == bytes);
    REQUIRE(read(pretty_json(json)) == json);
  }
}

TEST_CASE("any bytes give a value or a fault with its place, never an exception") {
  RandomStream random(13, 3);
  for (int i = 0; i < 20000; ++i) expect_sound(random_bytes(random));
}

TEST_CASE("a damaged text gives a value or a fault with its place, never an exception") {
  RandomStream random(13, 4);
  for (int i = 0; i < 5000; ++i) {
    expect_sound(damaged(random, canonical_json(random_json(random, 3))));
  }
}

}  // namespace evenclaw
