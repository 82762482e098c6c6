// Approved output: what a person has read and found right, kept under tests/approved.
#pragma once

#include <string>

namespace evenclaw {

/// "" when `received` equals the approved file, else the first line that differs and how to approve
/// it. With EVENCLAW_APPROVE=1 in the environment the file is written anew first: read the
/// difference before keeping it. `name` is a file name in that folder of tests/approved.
std::string difference_to_approved(const std::string& name, const std::string& received,
                                   const std::string& folder = "sheets");

}  // namespace evenclaw
