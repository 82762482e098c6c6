// What the drawing of her feet says in words, and the words of its key.
#pragma once

namespace evenclaw {

// As a Saying, {name} is filled in; what each takes stands beside it.
enum class TrackSaying {
  feet_of,     // {cow}
  found,       // {where}
  on_skin,     // {foot}
  claw_open,   // {foot}
  wrap,        // {foot}
  wrap_open,   // {foot}
  block,       // {foot} {claw}
  block_open,  // {foot} {claw}
  earlier,     // {foot} {n}
  not_lifted,  // {feet}
  unsaid,      // {feet}
  nothing,
  key_label,
  key_nothing,
  key_found,
  key_claw_open,
  key_skin,
  key_wrap,
  key_block,
  key_in_doubt,
  key_earlier,
  key_not_lifted,
  key_unsaid,
  mark_label,
  count_ends  // how many there are; stays the last
};

}  // namespace evenclaw
