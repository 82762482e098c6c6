#include "core/log/upcast.hpp"

#include <algorithm>
#include <utility>

namespace evenclaw {

namespace {

// Turn 1 knew fewer words, and none of the members that version 2 has more; absent, each of those
// says that nothing was said of it.
Json turn_1_to_2(Json body) {
  return body;
}

// Version 1 did not keep whom a doubtful name was read as.
Json news_unread_1_to_2(Json body) {
  return body;
}

// Version 1 knew a number and since when; absent, the rest says that nobody told it.
Json cow_registered_1_to_2(Json body) {
  return body;
}

// Version 2 knew no calving and no drying off; absent, nobody told them.
Json cow_registered_2_to_3(Json body) {
  return body;
}

// Turn 2 knew no list of medicines: a product of then is one that stands on no list, which is what
// the absence of the newer members says.
Json turn_2_to_3(Json body) {
  return body;
}

// Turn 3 had no words for how a cow has to be handled.
Json turn_3_to_4(Json body) {
  return body;
}

// Version 1 had no news of how a cow has to be handled.
Json task_closed_1_to_2(Json body) {
  return body;
}

// Version 1 could not say that a visit was typed from paper.
Json visit_opened_1_to_2(Json body) {
  return body;
}

constexpr UpCaster up_casters[] = {{"visit_opened", 1, visit_opened_1_to_2},
                                   {"turn", 1, turn_1_to_2},
                                   {"turn", 2, turn_2_to_3},
                                   {"turn", 3, turn_3_to_4},
                                   {"task_closed", 1, task_closed_1_to_2},
                                   {"news_unread", 1, news_unread_1_to_2},
                                   {"cow_registered", 1, cow_registered_1_to_2},
                                   {"cow_registered", 2, cow_registered_2_to_3}};

}  // namespace

std::span<const UpCaster> all_up_casters() {
  return up_casters;
}

std::optional<Json> up_cast(Json body, BodyForm form, std::int32_t to,
                            std::span<const UpCaster> casters) {
  if (form.version > to) return std::nullopt;
  for (std::int32_t at = form.version; at < to; ++at) {
    const auto step = std::find_if(casters.begin(), casters.end(), [&](const UpCaster& caster) {
      return caster.kind == form.kind && caster.from == at;
    });
    if (step == casters.end()) return std::nullopt;
    body = step->cast(std::move(body));
  }
  return body;
}

}  // namespace evenclaw
