#include "core/wire/value_json.hpp"

namespace evenclaw::value_json_detail {

void Reader::expected(std::string_view what, const Json& found) {
  constexpr std::size_t max_shown = 40;
  Fault fault{"json-unreadable", {}, path_};
  fault.message = (path_.empty() ? std::string("the value") : path_) + ": expected " +
                  std::string(what) + ", found " + shortened(canonical_json(found), max_shown);
  faults_.push_back(std::move(fault));
}

}  // namespace evenclaw::value_json_detail
