#include "core/paper/font_face.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("base64 gives the published values of RFC 4648") {
  const struct {
    const char* bytes;
    const char* text;
  } rows[] = {{"", ""},
              {"f", "Zg=="},
              {"fo", "Zm8="},
              {"foo", "Zm9v"},
              {"foob", "Zm9vYg=="},
              {"fooba", "Zm9vYmE="},
              {"foobar", "Zm9vYmFy"}};

  for (const auto& row : rows) CHECK(base64(row.bytes) == row.text);
}

TEST_CASE("base64 takes every byte") {
  CHECK(base64(std::string("\xff\xfe\x00\xfb", 4)) == "//4A+w==");
}

TEST_CASE("a text in a style sheet cannot end its string or its element") {
  CHECK(css_string("a\"b</style>\\") == "\"a\\22 b\\3c \\2f style\\3e \\5c \"");
  CHECK(css_string("Söhne 24") == "\"Söhne 24\"");
}

TEST_CASE("a font is carried inside the page") {
  CHECK(font_face({"B612", true, "foo"}) ==
        "@font-face{font-family:\"B612\";font-weight:bold;"
        "src:url(data:font/woff2;base64,Zm9v)format(\"woff2\")}\n");
}

}  // namespace evenclaw
