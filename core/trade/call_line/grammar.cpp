#include "core/trade/call_line/grammar.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>

namespace evenclaw {

namespace {

using S = Spot;
using K = TermKind;
using B = LineBuilder;

// Rows of one spot stand together, likeliest first: that is the order in which they are offered.
constexpr Step step_table[] = {
    {S::first_without_cow, K::number, S::cow, &B::name_cow},
    {S::first_without_cow, K::no_number, S::looks, &B::name_unnumbered},
    {S::first_without_cow, K::conjunction, S::first_without_cow},
    {S::first_without_cow, K::comma, S::first_without_cow},
    {S::first_without_cow, K::strong, S::first_without_cow},

    {S::first_with_cow, K::foot, S::feet, &B::name_feet},
    {S::first_with_cow, K::number, S::cow, &B::name_cow},
    {S::first_with_cow, K::no_number, S::looks, &B::name_unnumbered},
    {S::first_with_cow, K::only, S::only_feet},
    {S::first_with_cow, K::conjunction, S::first_with_cow},
    {S::first_with_cow, K::comma, S::first_with_cow},
    {S::first_with_cow, K::strong, S::first_with_cow},

    {S::visit, K::today, S::today, &B::say_today},
    {S::visit, K::caller, S::caller},
    {S::visit, K::writer, S::writer},
    {S::visit, K::comma, S::visit},
    {S::visit, K::strong, S::visit},

    {S::today, K::feet, S::today_feet, &B::add_todays_feet},
    {S::today, K::foot, S::today_feet, &B::add_todays_feet},
    {S::today, K::colon, S::today},
    {S::today_feet, K::foot, S::today_feet, &B::add_todays_feet},
    {S::today_feet, K::feet, S::today_feet, &B::add_todays_feet},
    {S::today_feet, K::conjunction, S::today},
    {S::today_feet, K::comma, S::today_feet},

    {S::caller, K::colon, S::caller},
    {S::caller, K::text, S::visit, &B::say_caller},
    {S::writer, K::colon, S::writer},
    {S::writer, K::text, S::visit, &B::say_writer},

    {S::cow, K::alternative, S::cow_or},
    {S::cow, K::doubt, S::cow, &B::doubt_cow},
    {S::cow, K::unreadable, S::cow, &B::doubt_cow},
    {S::cow, K::comma, S::cow, &B::mark_weak},
    {S::cow, K::only, S::only_feet},
    {S::cow_or, K::number, S::cow, &B::add_alternative},
    {S::looks, K::comma, S::looks},
    {S::looks, K::colon, S::looks},
    {S::looks, K::doubt, S::looks},
    {S::looks, K::text, S::turn, &B::add_looks},

    {S::turn, K::foot, S::feet, &B::name_feet},
    {S::turn, K::claw, S::loose, &B::hold_detail},
    {S::turn, K::lesion, S::finding, &B::open_finding},
    {S::turn, K::rest_fine, S::turn, &B::say_rest_fine},
    {S::turn, K::foot_state, S::turn, &B::say_foot_state},
    {S::turn, K::nothing_after_all, S::turn, &B::say_nothing_after_all},
    {S::turn, K::lame, S::lame, &B::say_lame},
    {S::turn, K::degree, S::loose, &B::hold_detail},
    {S::turn, K::block_act, S::block, &B::open_act},
    {S::turn, K::block_of, S::block, &B::open_block_of},
    {S::turn, K::wrap_act, S::wrap, &B::open_act},
    {S::turn, K::off, S::time, &B::expect_off},
    {S::turn, K::farmer_off, S::time, &B::expect_farmer_off},
    {S::turn, K::opened_act, S::opened, &B::open_act},
    {S::turn, K::product_act, S::product, &B::open_act},
    {S::turn, K::both, S::both_done, &B::name_both},
    {S::turn, K::see_again, S::see_again, &B::open_act},
    {S::turn, K::watch, S::watch, &B::open_act},
    {S::turn, K::plain_act, S::turn, &B::open_act},
    {S::turn, K::withheld_act, S::withheld, &B::open_act},
    {S::turn, K::handling, S::turn, &B::open_act},
    {S::turn, K::beware, S::beware},
    {S::turn, K::mark_of, S::turn, &B::open_mark_of},
    {S::turn, K::material, S::turn, &B::take_detail},
    {S::turn, K::by_whom, S::turn, &B::take_detail},
    {S::turn, K::directed_by, S::turn, &B::take_detail},
    {S::turn, K::milking, S::turn, &B::take_detail},
    {S::turn, K::feet, S::feet, &B::name_feet},
    {S::turn, K::stage, S::loose, &B::hold_detail},
    {S::turn, K::nicked, S::nicked, &B::begin_nick},
    {S::turn, K::blood, S::finding, &B::say_blood},
    {S::turn, K::compared, S::loose, &B::hold_detail},
    {S::turn, K::as_last_time, S::turn, &B::say_known},
    {S::turn, K::still_on_her, S::turn, &B::say_still_on_her},
    {S::turn, K::off_with_it, S::turn, &B::say_off_with_it},
    {S::turn, K::stump_known, S::turn, &B::say_known},
    {S::turn, K::other_claw, S::turn, &B::say_known},
    {S::turn, K::one_side, S::turn, &B::take_detail},
    {S::turn, K::place, S::loose_place, &B::hold_detail},
    {S::turn, K::white_line_side, S::loose, &B::hold_detail},
    {S::turn, K::white_line_place, S::finding, &B::open_white_line_at},
    {S::turn, K::zone, S::loose, &B::hold_detail},
    {S::turn, K::quoted, S::turn, &B::take_detail},
    {S::turn, K::dd_in_it, S::turn, &B::take_detail},
    {S::turn, K::other_lesion, S::other_words, &B::open_finding},
    {S::turn, K::trimmed, S::turn, &B::say_trimmed},
    {S::turn, K::measure, S::measure, &B::open_measure},
    {S::turn, K::reason, S::turn, &B::say_reason},
    {S::turn, K::came_for, S::came_for},
    {S::turn, K::walks_sound, S::turn, &B::say_walks_sound},
    {S::turn, K::mobility, S::mobility, &B::begin_mobility},
    {S::turn, K::other_foot, S::turn, &B::name_other_foot},
    {S::turn, K::whole_cow, S::turn, &B::name_whole_cow},
    {S::turn, K::note, S::note},
    {S::turn, K::kept_word, S::turn, &B::say_note},
    {S::turn, K::denied, S::turn, &B::deny},
    {S::turn, K::done, S::ended, &B::say_done},
    {S::turn, K::turn_end, S::turn_end, &B::say_end},
    {S::turn, K::turn_end_why, S::turn_end, &B::say_end_and_why},
    {S::turn, K::correction, S::correction},
    {S::turn, K::go_ahead, S::turn, &B::say_go_ahead},
    {S::turn, K::comma, S::turn, &B::mark_weak},
    {S::turn, K::conjunction, S::turn, &B::mark_weak},
    {S::turn, K::colon, S::turn, &B::mark_weak},
    {S::turn, K::strong, S::turn, &B::mark_strong},

    {S::lame, K::foot, S::lame_feet, &B::add_lame_feet},
    {S::lame, K::feet, S::lame_feet, &B::add_lame_feet},
    {S::lame, K::time_in, S::lame_on},
    {S::lame_on, K::foot, S::lame_feet, &B::add_lame_feet},
    {S::lame_on, K::feet, S::lame_feet, &B::add_lame_feet},
    {S::lame, K::number, S::lame_number, &B::begin_lame_score},
    {S::lame_feet, K::number, S::lame_number, &B::begin_lame_score},
    {S::lame_number, K::out_of, S::lame_of},
    {S::lame_number, K::conjunction, S::lame_of, &B::check_slash},
    {S::lame_of, K::number, S::lame_scored, &B::say_mobility},
    {S::lame_scored, K::foot, S::lame_feet, &B::add_lame_feet},
    {S::lame_scored, K::feet, S::lame_feet, &B::add_lame_feet},
    {S::lame_feet, K::conjunction, S::lame_and},
    {S::lame_feet, K::foot_state, S::turn, &B::say_state_of_lame_feet},
    {S::lame_and, K::foot, S::lame_feet, &B::add_lame_feet},
    {S::lame_and, K::feet, S::lame_feet, &B::add_lame_feet},
    {S::lame_and, K::foot_state, S::turn, &B::say_state_of_lame_feet},
    {S::came_for, K::colon, S::came_for},
    {S::came_for, K::text, S::turn, &B::say_other_reason},

    {S::feet, K::foot, S::feet, &B::name_more_feet},
    {S::feet, K::feet, S::feet, &B::name_more_feet},
    {S::feet, K::comma, S::feet},
    {S::feet, K::conjunction, S::feet},
    {S::feet, K::colon, S::feet},

    {S::only_feet, K::feet, S::turn, &B::name_only_feet},
    {S::only_feet, K::foot, S::turn, &B::name_only_feet},

    {S::loose, K::lesion, S::finding, &B::open_finding},
    {S::loose, K::other_lesion, S::other_words, &B::open_finding},
    {S::loose, K::white_line_place, S::finding, &B::open_white_line_at},
    {S::loose, K::degree, S::loose, &B::hold_detail},
    {S::loose, K::stage, S::loose, &B::hold_detail},
    {S::loose, K::claw, S::loose, &B::hold_detail},
    {S::loose, K::place, S::loose_place, &B::hold_detail},
    {S::loose, K::white_line_side, S::loose, &B::hold_detail},
    {S::loose, K::zone, S::loose, &B::hold_detail},
    {S::loose, K::block_act, S::block, &B::open_act},
    {S::loose, K::block_of, S::block, &B::open_block_of},
    {S::loose, K::wrap_act, S::wrap, &B::open_act},
    {S::loose, K::opened_act, S::opened, &B::open_act},
    {S::loose, K::measure, S::measure, &B::open_measure},
    {S::loose, K::gone, S::opened, &B::open_missing_claw},
    {S::loose, K::blood, S::finding, &B::say_blood},
    {S::loose, K::compared, S::loose, &B::hold_detail},
    {S::loose, K::comma, S::loose, &B::pause_loose},
    {S::loose_place, K::number, S::measure_number, &B::measure_held_place},

    {S::finding, K::place, S::finding, &B::take_detail},
    {S::finding, K::stage, S::finding, &B::take_detail},
    {S::finding, K::degree, S::finding, &B::take_detail},
    {S::finding, K::white_line_side, S::finding, &B::take_detail},
    {S::finding, K::white_line_place, S::finding, &B::take_detail},
    {S::finding, K::zone, S::finding, &B::take_detail},
    {S::finding, K::quoted, S::finding, &B::take_detail},
    {S::finding, K::claw, S::loose, &B::hold_claw_after_finding},
    {S::finding, K::dd_in_it, S::finding, &B::take_detail},
    {S::finding, K::one_side, S::finding, &B::take_detail},
    {S::finding, K::compared, S::finding, &B::take_detail},
    {S::finding, K::time_in, S::finding_on},
    {S::finding_on, K::both, S::finding, &B::check_both},
    {S::finding_on, K::claw, S::finding, &B::take_detail},
    {S::nicked, K::foot, S::finding, &B::nick_foot},
    {S::nicked, K::other_foot, S::finding, &B::nick_foot},
    {S::other_words, K::quoted, S::finding, &B::take_detail},
    {S::other_words, K::colon, S::other_text},
    {S::other_text, K::text, S::finding, &B::take_detail},

    {S::block, K::claw, S::block, &B::take_detail},
    {S::block, K::material, S::block, &B::take_detail},
    {S::block, K::block_of, S::block, &B::take_detail},
    {S::block, K::off, S::time, &B::expect_off},
    {S::block, K::good_claw, S::turn, &B::refuse_good_claw},
    {S::wrap, K::off, S::time, &B::expect_off},
    {S::wrap, K::both, S::wrap, &B::done_on_both},
    {S::opened, K::claw, S::opened, &B::take_detail},
    {S::product, K::with, S::product_name},
    {S::product, K::quoted, S::turn, &B::take_detail},
    {S::product, K::unknown_word, S::turn, &B::take_detail},
    {S::product, K::both, S::turn, &B::done_on_both},
    {S::both_done, K::wrap_act, S::wrap, &B::open_act},
    {S::both_done, K::block_act, S::block, &B::open_act},
    {S::both_done, K::product_act, S::product, &B::open_act},
    {S::both_done, K::trimmed, S::turn, &B::say_trimmed},
    {S::both_done, K::foot_state, S::turn, &B::say_foot_state},
    {S::product, K::only, S::turn, &B::take_detail},
    {S::product, K::by_whom, S::product, &B::take_detail},
    {S::product, K::directed_by, S::product, &B::take_detail},
    {S::product_name, K::text, S::turn, &B::take_detail},

    {S::see_again, K::number, S::time_number, &B::keep_number},
    {S::see_again, K::weekday, S::turn, &B::time_on_weekday},
    {S::see_again, K::days_word, S::turn, &B::time_in_words},
    {S::see_again, K::date, S::turn, &B::time_on_date},
    {S::see_again, K::time_in, S::time},
    {S::see_again, K::comma, S::see_again},
    {S::watch, K::number, S::time_number, &B::keep_number},
    {S::watch, K::weekday, S::turn, &B::time_on_weekday},
    {S::watch, K::days_word, S::turn, &B::time_in_words},
    {S::watch, K::time_in, S::time},
    {S::watch, K::date, S::turn, &B::time_on_date},
    {S::watch, K::comma, S::watch},
    {S::withheld, K::till, S::time},
    {S::withheld, K::number, S::time_number, &B::keep_number},
    {S::withheld, K::weekday, S::turn, &B::time_on_weekday},
    {S::withheld, K::days_word, S::turn, &B::time_in_words},
    {S::withheld, K::date, S::turn, &B::time_on_date},
    {S::withheld, K::time_in, S::time},
    {S::withheld, K::comma, S::withheld},
    {S::beware, K::handling, S::turn, &B::open_act},
    {S::beware, K::comma, S::beware},
    {S::beware, K::colon, S::beware},
    {S::time, K::number, S::time_number, &B::keep_number},
    {S::time, K::weekday, S::turn, &B::time_on_weekday},
    {S::time, K::days_word, S::turn, &B::time_in_words},
    {S::time, K::date, S::turn, &B::time_on_date},
    {S::time, K::time_in, S::time},
    {S::time_number, K::day_unit, S::turn, &B::time_in_days},
    {S::time_number, K::week_unit, S::turn, &B::time_in_weeks},

    {S::measure, K::number, S::measure_number, &B::keep_number},
    {S::measure, K::claw, S::measure, &B::take_detail},
    {S::measure_number, K::mm, S::measured, &B::length_in_mm},
    {S::measure_number, K::cm, S::measured, &B::length_in_cm},
    {S::measured, K::measure_tail, S::turn},

    {S::mobility, K::number, S::mobility_number, &B::keep_number},
    {S::mobility_number, K::out_of, S::mobility_of},
    {S::mobility_number, K::conjunction, S::mobility_of, &B::check_slash},
    {S::mobility_of, K::number, S::turn, &B::say_mobility},

    {S::note, K::colon, S::note_text},
    {S::note, K::text, S::turn, &B::say_note},
    {S::note_text, K::text, S::turn, &B::say_note},
    {S::turn_end, K::comma, S::turn_end},
    {S::turn_end, K::colon, S::turn_end},
    {S::turn_end, K::text, S::turn, &B::add_end_reason},
    {S::correction, K::foot, S::corrected, &B::correct_foot},
    {S::correction, K::claw, S::corrected, &B::correct_claw},
    {S::correction, K::number, S::cow, &B::correct_cow},
    {S::correction, K::stage, S::corrected, &B::correct_detail},
    {S::correction, K::degree, S::corrected, &B::correct_detail},
    {S::correction, K::place, S::corrected, &B::correct_detail},
    {S::correction, K::mobility, S::mobility, &B::correct_mobility},
    {S::correction, K::lame, S::lame, &B::correct_to_lame},
    {S::correction, K::denied, S::lame, &B::take_back_denied},
    {S::correction, K::correction, S::taking_back, &B::begin_taking_back},
    {S::correction, K::negation, S::taking_back, &B::begin_taking_back},
    {S::correction, K::foot_state, S::turn, &B::correct_to_nothing},
    {S::correction, K::nothing_after_all, S::turn, &B::say_nothing_after_all},
    {S::correction, K::lesion, S::finding, &B::find_instead},
    {S::correction, K::not_that, S::turn, &B::refuse_wrong_alone},
    {S::correction, K::comma, S::correction},
    {S::correction, K::other_side, S::correction},
    {S::correction, K::only, S::correction},
    {S::corrected, K::meant, S::turn},
    {S::corrected, K::lesion, S::finding, &B::find_instead_on_claw},
    {S::taking_back, K::lesion, S::finding, &B::open_finding},
    {S::taking_back, K::white_line_place, S::finding, &B::open_white_line_at},
    {S::taking_back, K::other_lesion, S::other_words, &B::open_finding},
    {S::taking_back, K::claw, S::taking_back, &B::hold_detail},
    {S::taking_back, K::block_act, S::block, &B::open_act},
    {S::taking_back, K::block_of, S::block, &B::open_block_of},
    {S::taking_back, K::wrap_act, S::wrap, &B::open_act},
    {S::taking_back, K::opened_act, S::opened, &B::open_act},
    {S::taking_back, K::product_act, S::product, &B::open_act},
    {S::taking_back, K::see_again, S::turn, &B::open_act},
    {S::taking_back, K::watch, S::turn, &B::open_act},
    {S::taking_back, K::plain_act, S::turn, &B::open_act},
    {S::taking_back, K::withheld_act, S::turn, &B::open_act},
    {S::taking_back, K::handling, S::turn, &B::open_act},
    {S::taking_back, K::measure, S::measure_back, &B::open_measure},
    {S::taking_back, K::place, S::place_back, &B::hold_detail},
    {S::taking_back, K::number, S::measure_number, &B::open_length_taken_back},
    {S::taking_back, K::lame, S::lame, &B::say_lame},
    {S::taking_back, K::reason, S::turn, &B::say_reason},
    {S::taking_back, K::came_for, S::came_for},
    {S::taking_back, K::mark_of, S::turn, &B::open_mark_of},
    {S::taking_back, K::comma, S::taking_back},
    {S::measure_back, K::number, S::measure_number, &B::keep_number},
    {S::measure_back, K::claw, S::measure_back, &B::take_detail},
    {S::place_back, K::number, S::measure_number, &B::measure_held_place},
    {S::ended, K::comma, S::ended},
    {S::ended, K::strong, S::ended},

    {S::news_first, K::number, S::news_number, &B::add_news_number},
    {S::news_first, K::news_lead, S::news_first},
    {S::news_first, K::comma, S::news_first},
    {S::news_first, K::conjunction, S::news_first},
    {S::news_first, K::strong, S::news_first},
    {S::news_first, K::colon, S::news_first},
    {S::news_number, K::gone, S::news_said, &B::say_news},
    {S::news_number, K::news, S::news_said, &B::say_news},
    {S::news_number, K::wrap_act, S::news_said, &B::say_news},
    {S::news_number, K::block_act, S::news_said, &B::say_news},
    {S::news_number, K::walks_sound, S::news_said, &B::say_news},
    {S::news_number, K::handling, S::news_said, &B::say_news},
    {S::news_number, K::foot, S::news_feet, &B::add_news_feet},
    {S::news_number, K::feet, S::news_feet, &B::add_news_feet},
    {S::news_number, K::number, S::news_number, &B::add_news_number},
    {S::news_number, K::comma, S::news_number},
    {S::news_number, K::conjunction, S::news_number},
    {S::news_number, K::colon, S::news_number},
    {S::news_feet, K::gone, S::news_said, &B::say_news},
    {S::news_feet, K::news, S::news_said, &B::say_news},
    {S::news_feet, K::wrap_act, S::news_said, &B::say_news},
    {S::news_feet, K::block_act, S::news_said, &B::say_news},
    {S::news_feet, K::walks_sound, S::news_said, &B::say_news},
    {S::news_feet, K::foot, S::news_feet, &B::add_news_feet},
    {S::news_feet, K::conjunction, S::news_feet},
    {S::news_said, K::foot, S::news_said, &B::add_news_feet},
    {S::news_said, K::feet, S::news_said, &B::add_news_feet},
    {S::news_said, K::comma, S::news_more},
    {S::news_said, K::conjunction, S::news_more},
    {S::news_said, K::strong, S::news_next},
    {S::news_more, K::foot, S::news_said, &B::add_news_feet},
    {S::news_more, K::feet, S::news_said, &B::add_news_feet},
    {S::news_more, K::number, S::news_number, &B::add_news_number},
    {S::news_more, K::gone, S::news_said, &B::say_news},
    {S::news_more, K::news, S::news_said, &B::say_news},
    {S::news_more, K::wrap_act, S::news_said, &B::say_news},
    {S::news_more, K::block_act, S::news_said, &B::say_news},
    {S::news_more, K::walks_sound, S::news_said, &B::say_news},
    {S::news_more, K::handling, S::news_said, &B::say_news},
    {S::news_next, K::number, S::news_number, &B::add_news_number},
    {S::news_next, K::comma, S::news_next},
    {S::news_next, K::strong, S::news_next},

    {S::batch_first, K::number, S::batch_number, &B::count_batch},
    {S::batch_first, K::correction, S::batch_first, &B::correct_batch},
    {S::batch_first, K::comma, S::batch_first},
    {S::batch_number, K::animals, S::batch, &B::name_animals},
    {S::batch, K::text, S::batch, &B::place_batch},
    {S::batch, K::comma, S::batch},
    {S::batch, K::colon, S::batch},
    {S::batch_told, K::rest_fine, S::batch_told, &B::say_batch_state},
    {S::batch_told, K::foot_state, S::batch_told, &B::say_batch_state},
    {S::batch_told, K::all_trimmed, S::batch_told, &B::say_batch_state},
    {S::batch_told, K::trimmed, S::batch_told, &B::say_batch_state},
    {S::batch_told, K::only, S::batch_only},
    {S::batch_told, K::feet, S::batch_told, &B::add_batch_feet},
    {S::batch_told, K::foot, S::batch_told, &B::add_batch_feet},
    {S::batch_told, K::bar, S::batch_bar},
    {S::batch_told, K::comma, S::batch_told},
    {S::batch_told, K::conjunction, S::batch_told},
    {S::batch_told, K::strong, S::batch_told},
    {S::batch_only, K::feet, S::batch_told, &B::add_batch_feet},
    {S::batch_only, K::foot, S::batch_told, &B::add_batch_feet},
    {S::batch_bar, K::number, S::batch_apart, &B::add_apart_number},
    {S::batch_bar, K::text, S::batch_apart, &B::add_apart_looks},
    {S::batch_apart, K::conjunction, S::batch_bar},
    {S::batch_apart, K::comma, S::batch_more},
    {S::batch_more, K::number, S::batch_apart, &B::add_apart_number},
    {S::batch_more, K::conjunction, S::batch_bar},
    {S::batch_more, K::comma, S::batch_more},
};

constexpr std::size_t index_of(Spot spot) {
  return static_cast<std::size_t>(spot);
}

constexpr std::size_t index_of(TermKind kind) {
  return static_cast<std::size_t>(kind);
}

// For each spot and kind one more than the index of the step, 0 for none.
using StepIndex = std::array<std::array<std::uint16_t, term_kind_count>, spot_count>;

constexpr StepIndex make_step_index() {
  StepIndex index{};
  for (std::size_t row = 0; row < std::size(step_table); ++row) {
    index[index_of(step_table[row].from)][index_of(step_table[row].on)] =
        static_cast<std::uint16_t>(row + 1);
  }
  return index;
}

constexpr StepIndex step_index = make_step_index();

}  // namespace

const Step* step_from(Spot spot, TermKind kind) {
  for (;;) {
    const std::uint16_t found = step_index[index_of(spot)][index_of(kind)];
    if (found != 0) return &step_table[found - 1];
    const Spot otherwise = facts_of(spot).otherwise;
    if (otherwise == spot) return nullptr;
    spot = otherwise;
  }
}

std::vector<TermKind> kinds_after(Spot spot) {
  std::vector<TermKind> kinds;
  std::array<bool, term_kind_count> is_known{};
  for (;;) {
    for (const Step& step : step_table) {
      if (step.from != spot || is_known[index_of(step.on)]) continue;
      is_known[index_of(step.on)] = true;
      kinds.push_back(step.on);
    }
    const Spot otherwise = facts_of(spot).otherwise;
    if (otherwise == spot) return kinds;
    spot = otherwise;
  }
}

}  // namespace evenclaw
