#include "core/exchange/decoded_text.hpp"

#include <doctest/doctest.h>

#include "core/base/random.hpp"
#include "core/base/text.hpp"

using namespace evenclaw;
using namespace std::string_view_literals;

namespace {

/// "Windows-1252 Färse", or the line and what is wrong.
std::string decoded_as(std::string_view bytes) {
  const auto read = decoded_text(bytes);
  if (read) return std::string(word_of(read->encoding)) + " " + read->text;
  const Fault& fault = read.faults().front();
  CHECK(fault.slug == "file-unreadable");
  CHECK_FALSE(fault.remedy.empty());
  return std::to_string(fault.line) + " " + fault.message;
}

}  // namespace

TEST_CASE("the same word is read in every encoding a herd program writes") {
  CHECK(decoded_as("F\xc3\xa4rse"sv) == "UTF-8 Färse");
  CHECK(decoded_as("\xef\xbb\xbf"
                   "F\xc3\xa4rse"sv) == "UTF-8 Färse");
  CHECK(decoded_as("F\xe4rse"sv) == "Windows-1252 Färse");
  CHECK(decoded_as("\xff\xfe"
                   "F\0\xe4\0r\0s\0e\0"sv) == "UTF-16 LE Färse");
  CHECK(decoded_as("\xfe\xff\0F\0\xe4\0r\0s\0e"sv) == "UTF-16 BE Färse");
}

TEST_CASE("UTF-16 without a mark is told by its zero bytes") {
  CHECK(decoded_as("c\0o\0w\0"sv) == "UTF-16 LE cow");
  CHECK(decoded_as("\0c\0o\0w"sv) == "UTF-16 BE cow");
}

TEST_CASE("the euro sign and dashes of Windows-1252 and pairs of UTF-16 are read") {
  CHECK(decoded_as("\x80 \x96"sv) == "Windows-1252 € –");
  CHECK(decoded_as("\xff\xfe\x3d\xd8\x04\xdc"sv) == "UTF-16 LE 🐄");
}

TEST_CASE("a file cut off in the middle of a character is told with its line") {
  CHECK(decoded_as("\xff\xfe"
                   "c\0\n\0o"sv) == "2 the file is cut off in the middle of a character");
}

TEST_CASE("what is no text is refused with its line") {
  CHECK(decoded_as("cow\n\x01"sv) ==
        "2 a character that cannot be shown stands in it, so the file is no text");
  CHECK(decoded_as("cow\n\xe4\x81"sv) == "2 these bytes are text in no encoding that is known");
  CHECK(decoded_as("\xff\xfe\x00\xd8x\0"sv) == "1 these bytes are no text");
  CHECK(decoded_as("") == "UTF-8 ");
}

TEST_CASE("bytes of any kind become valid text or are refused") {
  for (std::uint64_t stream = 0; stream < 2000; ++stream) {
    RandomStream random(20261101, stream);
    std::string bytes;
    const std::uint32_t length = random.below(40);
    for (std::uint32_t i = 0; i < length; ++i) {
      bytes += static_cast<char>(random.chance(0.5) ? 'a' + random.below(26) : random.below(256));
    }
    CAPTURE(stream);
    const auto read = decoded_text(bytes);
    if (read) CHECK(is_utf8(read->text));
    if (!read) CHECK(read.faults().size() == 1);
  }
}
