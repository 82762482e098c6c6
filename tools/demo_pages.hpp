// The pages of docs/ that tell of the invented business: its truth file and its parameters.
#pragma once

#include <string>

namespace evenclaw {

std::string demo_truth_page();
std::string demo_parameters_page();

}  // namespace evenclaw
