#include "core/trade/leaving_yard.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view practice = "common practice, no source";
constexpr std::string_view protocols =
    "protocols of AHDB, nacft.co.uk and farmersforum.com; Gillespie 2020, BMC Vet Res "
    "s12917-020-02552-8";

constexpr YardTask yard_tasks[] = {
    {"crush, boots and waterproofs washed with soap, then disinfected", practice},
    {"knives washed with soap, then 20 s in 2 % peroxygen, 2 % sodium hypochlorite or iodophor "
     "1:100",
     protocols},
    {"discs and rasps as the knives", practice},
    {"damaged gloves changed", protocols},
    {"next on the round: no herd that is healthier than this one", practice}};

}  // namespace

std::span<const YardTask> before_leaving_the_yard() {
  return yard_tasks;
}

}  // namespace evenclaw
