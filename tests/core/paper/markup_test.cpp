#include "core/paper/markup.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("what could be read as markup is escaped") {
  CHECK(escaped("a < b & \"c\" > 'd'") == "a &lt; b &amp; &quot;c&quot; &gt; &#39;d&#39;");
  CHECK(escaped("&amp;") == "&amp;amp;");
}

TEST_CASE("letters beyond ASCII pass as they are") {
  CHECK(escaped("Söhne žluťoučký 牛") == "Söhne žluťoučký 牛");
}

TEST_CASE("broken bytes become the replacement character and never vanish") {
  CHECK(escaped("a\xff\xc3(") == "a\xEF\xBF\xBD\xEF\xBF\xBD(");
}

TEST_CASE("control characters that a terminal could obey are left out") {
  CHECK(printable("a\x1b[31mb\x7f") == "a[31mb");
  CHECK(printable("a\xc2\x9b\x31mb") == "a1mb");
  CHECK(printable(std::string("a\0b", 3)) == "ab");
}

TEST_CASE("line ends and tabs become spaces") {
  CHECK(printable("one\ntwo\tthree") == "one two three");
}

TEST_CASE("lengths have at most two decimals and none for nothing") {
  const struct {
    double value;
    const char* text;
  } rows[] = {{0, "0"},      {12, "12"},   {12.5, "12.5"},    {0.05, "0.05"},   {-0.25, "-0.25"},
              {-0.001, "0"}, {1.999, "2"}, {3.14159, "3.14"}, {-7.106, "-7.11"}};

  for (const auto& row : rows) CHECK(decimal(row.value) == row.text);
}

TEST_CASE("a length beyond every page stays a number") {
  CHECK(decimal(1e300) == "1000000000");
  CHECK(decimal(-1e300) == "-1000000000");
}

TEST_CASE("a word that no column holds may be parted, words of a usual length are left alone") {
  CHECK(escaped_prose("digital dermatitis <DD>") == "digital dermatitis &lt;DD&gt;");
  CHECK(escaped_prose("fünfundzwanzigjährige") == "fünfundzwa<wbr>nzigjährig<wbr>e");
  CHECK(escaped_prose("5\u00a0of\u00a018 cows, Wilhelmina-Antoinette") ==
        "5\u00a0of\u00a018 cows, Wilhelmina-Antoinette");
}

}  // namespace evenclaw
