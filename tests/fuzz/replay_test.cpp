// What a fuzz target was fed once is fed to it again, and so are inputs made from it by a few
// changes, the same ones on every machine. Finding new ones is tools/fuzz.sh; this keeps what was
// found, within the build whose sanitizers every test runs in.
#include <doctest/doctest.h>

#include <algorithm>
#include <csignal>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/hex.hpp"
#include "core/base/random.hpp"
#include "tests/fuzz/base64.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

using namespace evenclaw;

namespace {

constexpr std::string_view target = EVENCLAW_FUZZ_TARGET;
constexpr std::size_t longest = 4096;

std::string whole_file(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  REQUIRE_MESSAGE(in.good(), path.string());
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

/// The seeds and what was kept of the corpus, in an order that no file system decides.
std::vector<std::string> kept_inputs() {
  const std::string of(target);
  std::vector<std::string> inputs;
  for (const auto& seed : std::filesystem::directory_iterator("tests/fuzz/seeds/" + of)) {
    inputs.push_back(whole_file(seed.path()));
  }
  std::sort(inputs.begin(), inputs.end());
  std::ifstream corpus("tests/fuzz/corpus/" + of + ".txt");
  REQUIRE_MESSAGE(corpus.good(), of);
  for (std::string line; std::getline(corpus, line);) {
    const auto input = test::from_base64(line);
    REQUIRE_MESSAGE(input.has_value(), line);
    inputs.push_back(*input);
  }
  return inputs;
}

std::size_t any_below(RandomStream& draw, std::size_t bound) {
  return draw.below(static_cast<std::uint32_t>(bound));
}

std::string_view any_part(RandomStream& draw, std::string_view of) {
  constexpr std::size_t most = 24;
  if (of.empty()) return {};
  const std::size_t from = any_below(draw, of.size());
  return of.substr(from, 1 + any_below(draw, most));
}

void change(std::string& input, RandomStream& draw, const std::vector<std::string>& inputs) {
  constexpr std::uint32_t ways = 5;
  const std::uint32_t way = draw.below(ways);
  const std::size_t at = any_below(draw, input.size() + 1);
  const std::string_view other = inputs[any_below(draw, inputs.size())];
  if (way == 0) {
    input.insert(at, any_part(draw, other));
  } else if (way == 1) {
    input.erase(at, any_part(draw, input).size());
  } else if (way == 2) {
    input.insert(at, std::string(any_part(draw, input)));
  } else if (way == 3) {
    input.insert(at, 1, static_cast<char>(draw.below(256)));
  } else if (at < input.size()) {
    input[at] = static_cast<char>(input[at] ^ (1 << draw.below(8)));
  }
}

std::string changed_input(std::uint64_t stream, const std::vector<std::string>& inputs) {
  RandomStream draw(1, stream);
  std::string input = inputs[any_below(draw, inputs.size())];
  const std::uint32_t changes = 1 + draw.below(6);
  for (std::uint32_t i = 0; i < changes; ++i) change(input, draw, inputs);
  return input.substr(0, longest);
}

/// What the target is being fed, for when it breaks.
const std::string*& fed() {
  static const std::string* input = nullptr;
  return input;
}

void tell_what_was_fed(int signal) {
  std::string hex;
  for (const char byte : *fed()) append_hex(hex, static_cast<std::uint8_t>(byte));
  static_cast<void>(std::fprintf(stderr, "%.*s broke, fed in hex: %s\n",
                                 static_cast<int>(target.size()), target.data(), hex.c_str()));
  std::signal(signal, SIG_DFL);
  static_cast<void>(std::raise(signal));
}

/// A target that breaks aborts, which ends the program and tells the input.
void feed(const std::string& input) {
  fed() = &input;
  std::signal(SIGABRT, tell_what_was_fed);
  LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(input.data()), input.size());
}

/// EVENCLAW_FUZZ_RUNS says how many inputs are made.
std::uint64_t runs() {
  const char* text = std::getenv("EVENCLAW_FUZZ_RUNS");
  return text == nullptr ? EVENCLAW_FUZZ_USUAL_RUNS : std::strtoull(text, nullptr, 10);
}

}  // namespace

TEST_CASE("what the fuzz target was fed before does not break it") {
  const std::vector<std::string> inputs = kept_inputs();
  CHECK(inputs.size() > 10);
  for (const std::string& input : inputs) feed(input);
}

TEST_CASE("inputs made from those by a few changes do not break the fuzz target either") {
  const std::vector<std::string> inputs = kept_inputs();
  std::size_t different = 0;
  for (std::uint64_t stream = 0; stream < runs(); ++stream) {
    const std::string input = changed_input(stream, inputs);
    if (std::find(inputs.begin(), inputs.end(), input) == inputs.end()) ++different;
    feed(input);
  }
  CHECK(different * 2 > runs());
}
