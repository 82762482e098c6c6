#include "core/base/digest.hpp"

#include <doctest/doctest.h>

#include <ostream>

namespace evenclaw {

namespace {

struct Vector {
  std::string message;
  const char* digest;
};

}  // namespace

TEST_CASE("SHA-256 gives the example digests of its standard") {
  const Vector vectors[] = {
      {"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
      {"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
      {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
       "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
      {std::string(1'000'000, 'a'),
       "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"}};
  for (const Vector& vector : vectors) {
    CAPTURE(vector.message.size());
    CHECK(to_text(sha256(vector.message)) == vector.digest);
  }
}

TEST_CASE("lengths around a block boundary are padded rightly") {
  const Vector vectors[] = {
      {std::string(55, 'a'), "9f4390f8d30c2dd92ec9f095b65e2b9ae9b0a925a5258e241c9f1e910f734318"},
      {std::string(56, 'a'), "b35439a4ac6f0948b6d6f9e3c6af0f5f590ce20f1bde7090ef7970686ec6738a"},
      {std::string(63, 'a'), "7d3e74a05d7db15bce4ad9ec0658ea98e3f06eeecf16b4c6fff2da457ddc2f34"},
      {std::string(64, 'a'), "ffe054fe7ae0cb6dc65c3af9b61d5209f439851db43d0ba5997337df154668eb"},
      {std::string(65, 'a'), "635361c48bb9eab14198e76ea8ab7f1a41685d6ad62aa9146d301d4f17eb0ae0"}};
  for (const Vector& vector : vectors) {
    CAPTURE(vector.message.size());
    CHECK(to_text(sha256(vector.message)) == vector.digest);
  }
}

TEST_CASE("a digest reads back from its 64 digits") {
  const Digest digest = sha256("412 nothing found");
  CHECK(digest_from_text(to_text(digest)) == digest);
}

TEST_CASE("only 64 lower-case hex digits are a digest") {
  const std::string good = to_text(sha256("abc"));
  CHECK_FALSE(digest_from_text("").has_value());
  CHECK_FALSE(digest_from_text(good.substr(1)).has_value());
  CHECK_FALSE(digest_from_text(good + "0").has_value());
  CHECK_FALSE(digest_from_text("B" + good.substr(1)).has_value());
  CHECK_FALSE(digest_from_text("g" + good.substr(1)).has_value());
  CHECK_FALSE(digest_from_text(good.substr(1) + " ").has_value());
}

TEST_CASE("digests are ordered like their texts") {
  const Digest a = sha256("a");
  const Digest b = sha256("b");
  CHECK((a < b) == (to_text(a) < to_text(b)));
  CHECK_FALSE(a == b);
}

}  // namespace evenclaw
