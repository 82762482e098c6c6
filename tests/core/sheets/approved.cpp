#include "tests/core/sheets/approved.hpp"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>

namespace evenclaw {

namespace {

std::string line_at(const std::string& text, std::size_t at) {
  const std::size_t before = at == 0 ? std::string::npos : text.rfind('\n', at - 1);
  const std::size_t start = before == std::string::npos ? 0 : before + 1;
  return text.substr(start, text.find('\n', start) - start);
}

}  // namespace

std::string difference_to_approved(const std::string& name, const std::string& received,
                                   const std::string& folder) {
  const std::string path = "tests/approved/" + folder + '/' + name;
  const char* approve = std::getenv("EVENCLAW_APPROVE");
  if (approve != nullptr && std::string(approve) == "1") {
    std::ofstream(path, std::ios::binary) << received;
  }
  std::ifstream file(path, std::ios::binary);
  if (!file) return path + " is not there; EVENCLAW_APPROVE=1 writes it";
  const std::string approved{std::istreambuf_iterator<char>(file), {}};
  if (approved == received) return {};
  const auto places =
      std::mismatch(approved.begin(), approved.end(), received.begin(), received.end());
  const auto at = static_cast<std::size_t>(std::distance(approved.begin(), places.first));
  return path + " differs.\napproved: " + line_at(approved, at) +
         "\nreceived: " + line_at(received, at) + "\nEVENCLAW_APPROVE=1 writes it anew";
}

}  // namespace evenclaw
