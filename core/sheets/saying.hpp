// Every sentence and label of the sheets by name; a language gives each its words.
#pragma once

namespace evenclaw {

// {name} is filled in; "one|many" chooses by the fill named n. What each takes stands beside it.
enum class Saying {
  and_joined,  // {head} {last}
  claw_named,  // {claw}
  claw_not_called,
  both_claws,
  at_claw,     // {what} {claw}
  zone_named,  // {n}
  claw_gone,   // {claw}
  a_claw,
  dd_in_it,
  in_brackets,           // {what} {aside}
  off_by,                // {what} {date}
  by_date,               // {what} {date}
  held_back_to,          // {what} {date}
  held_back_to_milking,  // {what} {date} {milking}
  directed_by,           // {what} {who}
  in_doubt_number,       // {number}
  no_number,
  lame_on,  // {feet}
  lame_leg_not_called,
  walks_sound,
  mobility,  // {n} {of}
  four_feet,
  hind_feet,
  front_feet,
  no_feet,
  // head and foot of a document
  visit_kind,
  due_kind,
  title,  // {herd} {date}
  called_by,
  written_by,
  person_with_cows,  // {name} {n}
  person_not_said,
  todays_feet,
  times,
  times_not_known,
  made,
  made_later,  // {date}
  sheet_foot,  // {herd} {day} {printed} {version}
  visit_open,
  // the farmer's page
  vet_today_title,
  vet_title,
  box_continued,  // {what}
  vet_ring_today,
  vet_by,  // {date}
  vet_came_lame,
  vet_decides,
  no_vet,
  nobody_answered,
  was_gone_past,
  ask_what_was_meant,
  leave_foot_alone,
  let_her_be,
  nothing_off_toe,
  stop_bleeding,
  no_wrap_on_foul,
  no_block_both_hurt,
  nothing_leaves,
  left_alone_status,
  nothing_held_back,
  withdrawal_title,
  withdrawal_ask_title,
  withdrawal_ask,
  withdrawal_told,
  withdrawal_ask_of_these,
  withdrawal_ask_line,
  milk_not_spoken_of,
  meat_not_spoken_of,
  milk_not_known,
  meat_not_known,
  its_time_is_over,
  done_on_day,  // {what} {date}
  as_label_states,
  as_vet_states,
  directed_by_name,  // {name}
  nobody_directed,
  no_mark_called,
  tell_the_buyer,           // {date}
  tell_the_slaughterhouse,  // {date}
  tell_who_has_her,         // {date}
  stay_near_title,
  stay_near_note,
  vet_is_asked_for,
  vet_is_not_asked_for,
  came_lame_on,     // {feet}
  not_lifted_then,  // {what} {date}
  told_still_lame,  // {date}
  cow_count,        // {n}
  wears_block,      // {where}
  wears_wrap,       // {where}
  block_worn,       // {where}
  wrap_worn,        // {where}
  is_held_back,
  column_why,
  also_said_title,
  pain_not_talked_of,
  to_do,
  task_count,  // {n}
  on_cows,     // {tasks} {n}
  nothing_to_do,
  nothing_else_to_do,
  by_day,  // {date}
  today,
  for_farmer,
  for_trimmer,
  for_vet,
  done_on,
  from_day,      // {date}
  day_in_doubt,  // {what} {date}
  was_due_by,    // {date}
  not_done_title,
  everything_done,
  was_not_done,
  was_unfinished,
  with_reason,      // {what} {why}
  raw_left,         // {feet}
  foot_not_lifted,  // {feet}
  feet_unsaid,      // {feet}
  feet_not_judged,  // {feet}
  was_not_seen,
  record_removed,     // {date}
  record_is_removed,  // the day is not known
  a_cow,
  told_title,
  settled_title,
  settled_on,  // {tasks} {date}
  which_number_title,
  which_number_note,
  the_day,
  looked_at,  // {n} {of}
  looked_at_nobody,
  all_removed,
  found_on,  // {n} {of} {whom} {percent}
  cows_with_feet_lifted,
  cows_said_of,
  not_counted_as_found,  // {list}
  found_nothing,         // {of} {whom}
  most_often,            // {list}
  such_as,               // {list}: no lesion was found more often than another
  lesion_share,          // {lesion} {n} {of}
  percent,               // {n}
  came_lame,             // {n} {of}
  cause_found,           // {n} {of}
  cause_not_found,       // {n} {of}
  leg_not_called,        // {n} {of}
  // against last time: {date} {n_then} {of_then} {n_now} {of_now}, {range}; the last {low} {high}
  fewer_than_then,
  more_than_then,
  no_difference_shown,
  from_to,         // {low} {high}
  last_time_note,  // {n_both}
  work_title,
  work_note,
  column_work,
  column_count,
  column_on_cows,
  work_cows,
  work_not_finished,
  work_feet,
  work_not_trimmed,
  work_blocks_on,
  work_blocks_again,
  work_blocks_stacked,
  work_blocks_refitted,
  work_blocks_off,
  work_wraps_on,
  work_wraps_off,
  work_product,
  work_animals,
  work_animals_feet,
  ring_title,
  ring_whom,
  ring_block,
  ring_wrap,
  ring_found,
  ring_anything,
  ring_vet,
  cautions_title,
  caution_wrap,
  caution_block,
  caution_lame,
  caution_medicine,
  status_practice,
  status_block,
  status_lame,
  status_law,
  // the vet's page
  vet_signs_title,
  stop_gone_past,  // {date}
  stop_of_day,     // {date}
  vet_again_title,
  vet_found_title,
  of_findings,     // {n} {of}
  on_feet_lifted,  // {n} {of}
  n_of,            // {n} {of}
  no_more_called,
  came_back,
  found_at_visits,  // {n}
  grew_worse,
  column_foot,
  column_where,
  column_found,
  column_before,
  vet_unexplained_title,
  of_lame,  // {n} {of}
  vet_cut_title,
  on_feet_where,  // {what} {n} {of} {where}
  vet_medicines_title,
  column_medicine,
  column_withdrawal,
  withdrawal_not_said,
  withdrawal_by_mouth,  // {what}
  withdrawal_of_which,  // {what}
  withdrawal_none,
  milk_till,  // {date}
  meat_till,  // {date}
  vet_dd_title,
  stage_not_called,
  stage_on,  // {stage} {n}
  vet_mobility_title,
  score_on_cows,    // {score} {n}
  scored_on_scale,  // {scale} {n} {of} {list}
  cow_by_cow,
  how_to_read,
  found_or_done,
  of_cows,  // {n} {of}
  column_cow,
  column_reason,
  column_cows,
  column_feet,
  lifted_not_said,
  found_not_said,
  found_since,    // {date}
  cow_called_by,  // {name}
  called_twice,   // {calls}
  call_first,     // {what}
  call_then,      // {what}
  trimmed,
  not_trimmed,
  before,            // {date} {what}
  no_longer_found,   // {what} {date}
  not_called_again,  // {what} {date}
  block_since,       // {date} {claw}
  wrap_since,        // {date}
  block_put_on,      // {date} {claw}
  wrap_put_on,       // {date}
  not_seen_today,    // {what}
  put_on_not_seen,   // {what} {date}
  nobody_knew,       // {what} {date}
  since_unknown,     // {what}
  the_cow,
  note,
  asked,
  stopped,
  noted,
  decided,       // {what} {decision}
  not_answered,  // {what}
  go_ahead,
  still_asked,
  batches_title,
  batch_lifted,  // {feet}
  batch_feet_unsaid,
  batch_nothing_found,  // {n}
  batch_trimmed,        // {n}
  batch_not_trimmed,    // {n}
  batch_apart,          // {who}
  only_counted,         // {n}
  careful_title,
  careful,  // {what}
  due_held_back,
  due_late,
  due_now,
  due_coming,
  nothing_due,
  due_foot,  // {herd} {date} {version}
  yard_title,
  writing_title,
  writing_how,
  writing_lame_on,
  writing_claw,
  writing_what,
  writing_where,
  writing_how_bad,
  writing_done,
  writing_of_her,
  writing_see_again,
  writing_vet_told,
  count_ends  // how many there are; stays the last
};

}  // namespace evenclaw
