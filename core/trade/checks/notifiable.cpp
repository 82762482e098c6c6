// Signs of a disease that must be reported: then nothing else matters.
#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"

namespace evenclaw {

std::vector<Firing> notifiable_signs(const Situation& situation) {
  const Turn& turn = situation.turn;
  const int signs = static_cast<int>(was_called(turn, ActionKind::sore_mouth)) +
                    static_cast<int>(was_called(turn, ActionKind::blisters)) +
                    static_cast<int>(was_called(turn, ActionKind::fever));
  const bool others_too = situation.past.so_far.cows_with_sores > 0;
  if (signs == 0 || (signs == 1 && !others_too)) return {};
  Firing firing;
  firing.warning.words =
      "Could be notifiable: nobody and nothing leaves. Ring the vet or the authority now.";
  firing.warning.answers = {offered_go_ahead(situation.language)};
  firing.causes = {{std::nullopt, About::signs_of_disease}};
  return {firing};
}

}  // namespace evenclaw
