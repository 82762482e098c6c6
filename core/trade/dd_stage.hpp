// Stages of digital dermatitis: what each means, and whether it is active.
#pragma once

#include <span>
#include <string_view>

#include "core/base/enum_words.hpp"

namespace evenclaw {

/// The M number when it was called, else the word that was said, never one turned into the other.
enum class DdStage { not_called, m0, m1, m2, m3, m4, m4_1, raw, scab, chronic };

template <>
struct EnumWords<DdStage> {
  static constexpr EnumWord<DdStage> table[] = {{DdStage::not_called, "not_called"},
                                                {DdStage::m0, "M0"},
                                                {DdStage::m1, "M1"},
                                                {DdStage::m2, "M2"},
                                                {DdStage::m3, "M3"},
                                                {DdStage::m4, "M4"},
                                                {DdStage::m4_1, "M4.1"},
                                                {DdStage::raw, "raw"},
                                                {DdStage::scab, "scab"},
                                                {DdStage::chronic, "chronic"}};
};

enum class DdActivity { none, active, healing, chronic };

template <>
struct EnumWords<DdActivity> {
  static constexpr EnumWord<DdActivity> table[] = {{DdActivity::none, "none"},
                                                   {DdActivity::active, "active"},
                                                   {DdActivity::healing, "healing"},
                                                   {DdActivity::chronic, "chronic"}};
};

struct DdStageFacts {
  DdStage stage;
  std::string_view meaning;  // in our own words
  std::string_view size;     // the size rule; "" when there is none
  DdActivity activity;
  std::string_view source;  // of meaning, size and activity
};

/// Every stage that can be called, `not_called` left out.
std::span<const DdStageFacts> all_dd_stages();

/// The facts of a stage that was called; null for `not_called`.
const DdStageFacts* facts_of(DdStage stage);

}  // namespace evenclaw
