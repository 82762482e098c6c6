#include "core/sheets/words.hpp"

namespace evenclaw {

namespace {

using S = Saying;

constexpr Worded<Foot> feet[] = {{Foot::lf, "left front"},
                                 {Foot::rf, "right front"},
                                 {Foot::lh, "left hind"},
                                 {Foot::rh, "right hind"}};

constexpr Worded<Claw> claws[] = {
    {Claw::outside, "outside"}, {Claw::inside, "inside"}, {Claw::both, "both"}};

constexpr Worded<Lesion> lesions[] = {{Lesion::other, "something else"}};

constexpr Worded<Place> places_beside_white_line[] = {{Place::white_line_toe, "toe"},
                                                      {Place::white_line_side, "side"},
                                                      {Place::white_line_heel, "heel"}};

constexpr Worded<Degree> degrees[] = {
    {Degree::slight, "slight"}, {Degree::plain, "plain"}, {Degree::bad, "bad"}};

constexpr Worded<DdStage> stages[] = {
    {DdStage::m0, "M0"},   {DdStage::m1, "M1"},     {DdStage::m2, "M2"},
    {DdStage::m3, "M3"},   {DdStage::m4, "M4"},     {DdStage::m4_1, "M4.1"},
    {DdStage::raw, "raw"}, {DdStage::scab, "scab"}, {DdStage::chronic, "chronic"}};

constexpr Worded<AnimalKind> animals[] = {
    {AnimalKind::animals, "animals"},       {AnimalKind::cows, "cows"},
    {AnimalKind::dry_cows, "dry cows"},     {AnimalKind::heifers, "heifers"},
    {AnimalKind::youngstock, "youngstock"}, {AnimalKind::bulls, "bulls"}};

constexpr Worded<FootState> states[] = {{FootState::unsaid, "nobody said whether lifted"},
                                        {FootState::not_lifted, "not lifted"},
                                        {FootState::nothing_found, "nothing found"}};

constexpr Worded<Reason> reasons[] = {{Reason::not_called, "reason not called"},
                                      {Reason::routine, "routine"},
                                      {Reason::lame, "lame"},
                                      {Reason::recheck, "recheck"},
                                      {Reason::dry_off, "dry-off"},
                                      {Reason::heifer, "heifer"},
                                      {Reason::fresh, "fresh"},
                                      {Reason::other, "another reason"}};

constexpr Worded<ActionKind> acts[] = {
    {ActionKind::opened, "opened"},
    {ActionKind::loose_horn_off, "loose horn taken off"},
    {ActionKind::modelled, "modelled"},
    {ActionKind::claw_missing, "claw missing"},
    {ActionKind::block_on, "block on"},
    {ActionKind::block_stacked, "second block stacked"},
    {ActionKind::block_refitted, "old block lost, new one on"},
    {ActionKind::block_again, "blocked again, not healed"},
    {ActionKind::block_off, "block taken off"},
    {ActionKind::block_came_off, "block had come off by itself"},
    {ActionKind::block_still_on, "block still on"},
    {ActionKind::block_unknown, "nobody knows about the block"},
    {ActionKind::wrap_on, "wrap on"},
    {ActionKind::wrap_off, "wrap taken off"},
    {ActionKind::wrap_came_off, "wrap had come off by itself"},
    {ActionKind::wrap_still_on, "wrap still on"},
    {ActionKind::wrap_unknown, "nobody knows about the wrap"},
    {ActionKind::spray, "spray"},
    {ActionKind::paste, "paste"},
    {ActionKind::powder, "powder"},
    {ActionKind::gel, "gel"},
    {ActionKind::see_again, "see again"},
    {ActionKind::watch_her_walk, "watch her walk"},
    {ActionKind::vet, "vet asked for"},
    {ActionKind::told_farmer, "farmer told"},
    {ActionKind::marked, "marked"},
    {ActionKind::to_straw, "to straw"},
    {ActionKind::near_parlour, "to be kept near the parlour"},
    {ActionKind::short_walk, "short walks only"},
    {ActionKind::cull_advised, "culling advised"},
    {ActionKind::pain_relief_asked, "pain relief asked for"},
    {ActionKind::pain_relief_given, "pain relief given"},
    {ActionKind::photo, "photo taken"},
    {ActionKind::vet_plan, "treated by the vet's plan"},
    {ActionKind::bleeding, "bleeding that does not stop"},
    {ActionKind::bone_showing, "bone showing"},
    {ActionKind::pus_above, "pus above the coronet"},
    {ActionKind::blisters, "blisters"},
    {ActionKind::went_down, "went down in the crush"},
    {ActionKind::near_calving, "near calving"},
    {ActionKind::heavy_in_calf, "heavy in calf"},
    {ActionKind::sore_mouth, "sore mouth"},
    {ActionKind::fever, "fever"},
    {ActionKind::given, "medicine given"},
    {ActionKind::injected, "injected"},
    {ActionKind::anaesthetised, "anaesthetised"},
    {ActionKind::amputated, "claw amputated"},
    {ActionKind::withheld, "milk and meat held back"},
    {ActionKind::milk_withheld, "milk held back"},
    {ActionKind::meat_withheld, "meat held back"},
    {ActionKind::no_withdrawal, "no withdrawal"},
    {ActionKind::kicks, "kicks"},
    {ActionKind::jumps, "jumps"},
    {ActionKind::lies_down, "lies down in the crush"},
    {ActionKind::needs_hoist, "needs the hoist"},
    {ActionKind::kicks_no_more, "no longer kicks"},
    {ActionKind::jumps_no_more, "no longer jumps"},
    {ActionKind::lies_down_no_more, "no longer lies down in the crush"},
    {ActionKind::hoist_no_more, "no longer needs the hoist"}};

constexpr Worded<Material> materials[] = {
    {Material::wood, "wood"},  {Material::rubber, "rubber"},   {Material::plastic, "plastic"},
    {Material::shoe, "shoe"},  {Material::glue_on, "glue-on"}, {Material::band, "band"},
    {Material::paint, "paint"}};

constexpr Worded<ByWhom> by_whoms[] = {{ByWhom::farmer, "farmer"}, {ByWhom::vet, "vet"}};

constexpr Worded<Milking> milkings[] = {{Milking::morning, "morning"},
                                        {Milking::evening, "evening"}};

constexpr Worded<MeasureKind> measures[] = {{MeasureKind::toe_length, "toe length"},
                                            {MeasureKind::heel_height, "heel height"},
                                            {MeasureKind::sole_thickness, "sole thickness"}};

constexpr Worded<Weekday> weekdays[] = {{Weekday::monday, "Mon"},    {Weekday::tuesday, "Tue"},
                                        {Weekday::wednesday, "Wed"}, {Weekday::thursday, "Thu"},
                                        {Weekday::friday, "Fri"},    {Weekday::saturday, "Sat"},
                                        {Weekday::sunday, "Sun"}};

constexpr std::string_view months[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                       "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

constexpr Worded<Saying> sayings[] = {
    {S::and_joined, "{head} and {last}"},
    {S::claw_named, "{claw} claw"},
    {S::claw_not_called, "claw not called"},
    {S::both_claws, "both claws"},
    {S::at_claw, "{what}, {claw}"},
    {S::beside_code, "{words} ({code})"},
    {S::zone_named, "zone {n}"},
    {S::claw_gone, "{claw} missing"},
    {S::a_claw, "a claw"},
    {S::dd_in_it, "digital dermatitis in it"},
    {S::with_product, "{what} ({product})"},
    {S::off_by, "{what}, off by {date}"},
    {S::by_date, "{what} by {date}"},
    {S::held_back_to, "{what} up to and with {date}"},
    {S::held_back_to_milking, "{what} up to and with the {milking} milking of {date}"},
    {S::directed_by, "{what}, on the {who}'s direction"},
    {S::in_doubt_number, "{number}?"},
    {S::no_number, "no number"},
    {S::lame_on, "lame on {feet}"},
    {S::lame_leg_not_called, "lame, leg not called"},
    {S::mobility, "mobility {n} of {of}"},
    {S::walks_sound, "walks sound"},
    {S::four_feet, "all four feet"},
    {S::hind_feet, "both hind feet"},
    {S::front_feet, "both front feet"},
    {S::no_feet, "none named"},

    {S::visit_kind, "Claw trimming visit"},
    {S::due_kind, "What is due"},
    {S::title, "{herd}, {date}"},
    {S::called_by, "Called by"},
    {S::written_by, "Written by"},
    {S::person_with_cows, "{name} ({n} cow)|{name} ({n} cows)"},
    {S::person_not_said, "nobody named"},
    {S::todays_feet, "Today's feet"},
    {S::times, "Times"},
    {S::times_not_known, "from paper, not known"},
    {S::sheet_foot, "{herd}, visit of {day}. Sheet made {printed} with Evenclaw {version}."},
    {S::visit_open, "The visit is not closed yet: this sheet may still change."},

    {S::vet_today_title, "VET TODAY"},
    {S::vet_title, "VET"},
    {S::vet_ring_today, "ring today"},
    {S::vet_late, "late since {date}, ring today"},
    {S::vet_by, "ring by {date}"},
    {S::vet_asked_on, "asked for on {date}"},
    {S::vet_reason_not_called, "reason not called"},
    {S::vet_came_lame, "came lame"},
    {S::vet_decides,
     "The farm rings the vet. Diagnosis, medicines, pain relief and surgery are the vet's."},
    {S::no_vet, "No vet was asked for at this visit, and none is still due from earlier."},
    {S::withdrawal_title, "MILK AND MEAT"},
    {S::withdrawal_ask,
     "No withdrawal time was recorded. The label and the vet say how long; make sure before milk "
     "or meat is sold."},
    {S::withdrawal_told,
     "The farm keeps milk and meat back as the label or the vet states it, and takes the marks "
     "off afterwards."},
    {S::withdrawal_ask_of_these,
     "Where no end is named, no withdrawal time was recorded: the label and the vet say how long; "
     "make sure before milk or meat is sold."},
    {S::its_time_is_over, "its time is over"},
    {S::to_do, "To do, by date"},
    {S::task_count, "{n} task|{n} tasks"},
    {S::on_cows, "{tasks} on {n} cow|{tasks} on {n} cows"},
    {S::nothing_to_do, "Nothing is left to do."},
    {S::nothing_else_to_do, "Nothing else is left to do: the rest stands above."},
    {S::by_day, "by {date}"},
    {S::today, "today"},
    {S::for_farmer, "for the farm"},
    {S::for_trimmer, "for the trimmer"},
    {S::for_vet, "for the vet"},
    {S::other_owner, "{owner}: {words}"},
    {S::done_on, "done on"},
    {S::from_day, "not before {date}"},
    {S::late, "late"},
    {S::not_done_title, "Not done, and why"},
    {S::everything_done,
     "Every cow that came was done, and every foot meant for today was lifted."},
    {S::was_not_done, "not done"},
    {S::was_unfinished, "not finished"},
    {S::with_reason, "{what}: {why}"},
    {S::foot_not_lifted, "{feet} not lifted"},
    {S::feet_unsaid, "nobody said whether lifted: {feet}"},
    {S::feet_not_judged, "nobody said what was found: {feet}"},
    {S::was_not_seen, "not seen"},
    {S::record_removed, "was there; a record of her was removed on {date}"},
    {S::record_is_removed, "was there; a record of her was removed"},
    {S::a_cow, "A cow"},
    {S::told_title, "Told at this visit"},
    {S::number_in_doubt, "her number is in doubt"},
    {S::has_no_number, "she has no number yet"},
    {S::the_day, "The day in three sentences"},
    {S::looked_at, "Feet were lifted on {n} of {of} cows that came or were expected."},
    {S::looked_at_nobody, "No cow was called at this visit."},
    {S::all_removed, "What was called at this visit was removed."},
    {S::found_on, "Something was found on {n} of {of} cows with feet lifted{percent}"},
    {S::found_nothing, "Nothing was found on {of} of {of} cows with feet lifted."},
    {S::most_often, ", most often {list}"},
    {S::such_as, ", such as {list}"},
    {S::lesion_share, "{lesion} ({n} of {of})"},
    {S::percent, " ({n} %)"},
    {S::came_lame, "{n} of {of} cows that were in the crush came lame"},
    {S::cause_found, "; for {n} of {of} something was found on a lame leg"},
    {S::leg_not_called, "; for {n} of {of} the lame leg was not called"},
    {S::ring_title, "Ring the trimmer when"},
    {S::ring_block, "a cow with a block walks worse than today, or has lost it early;"},
    {S::ring_wrap, "a wrap has slipped, cuts in, or cannot be taken off on its day;"},
    {S::ring_found, "a cow with something found does not walk better within a week."},
    {S::ring_anything, "a cow goes lame before the next visit."},
    {S::ring_vet,
     "Ring the vet the same day when a cow will not put the foot down, has fever, or a foot is "
     "swollen above the claws or smells."},
    {S::cautions_title, "Take care"},
    {S::caution_wrap,
     "Take every wrap off by its day, also when it looks good: a forgotten wrap cuts in."},
    {S::caution_block,
     "Leave a block on until its check, unless she walks worse; one left on too long tips her "
     "back on the heel."},
    {S::caution_lame, "Have a lame cow seen within days: waiting makes her harder to cure."},
    {S::caution_medicine,
     "Medicines, pain relief, numbing and surgery are not for the trimmer or the farm to choose."},
    {S::status_practice, "Common practice, no source."},
    {S::status_block, "AHDB: check at about 4 weeks; too long is an error."},
    {S::status_lame, "Thomas 2016, Vet Rec 178:116."},
    {S::status_law, "The vet decides; local law says who may do what."},

    {S::cow_by_cow, "Cow by cow"},
    {S::how_to_read,
     "Where no degree (slight, plain, bad) or place stands, none was called. The letters in "
     "brackets are the ICAR codes; \"other\" has none."},
    {S::found_or_done, "Found, done or still open"},
    {S::nothing_found_title, "Nothing found"},
    {S::of_cows, "{n} of {of} cows that were called"},
    {S::column_cow, "Cow"},
    {S::column_reason, "Came for"},
    {S::column_feet, "Feet"},
    {S::lifted_not_said, "lifted, nobody said whether anything was found"},
    {S::found_not_said, "nobody said what was found"},
    {S::state_of_feet, "{state}: {feet}"},
    {S::found_since, "there since {date}"},
    {S::cow_called_by, "called by {name}"},
    {S::called_twice, "called more than once, all kept: {calls}"},
    {S::call_first, "first {what}"},
    {S::call_then, "then {what}"},
    {S::trimmed, "trimmed"},
    {S::not_trimmed, "not trimmed"},
    {S::before, "since {date}: {what}"},
    {S::no_longer_found, "not found any more: {what} of {date}"},
    {S::block_since, "block on since {date}, {claw}"},
    {S::wrap_since, "wrap on since {date}"},
    {S::since_unknown, "{what}: nobody knows whether it still is"},
    {S::the_cow, "The cow"},
    {S::note, "Note"},
    {S::asked, "Asked"},
    {S::stopped, "Stop"},
    {S::noted, "Noted"},
    {S::decided, "{what} Decided: {decision}."},
    {S::not_answered, "{what} Not answered."},
    {S::go_ahead, "go ahead anyway"},
    {S::still_asked, "Still asked"},

    {S::track_of, "Feet of {cow}, seen from above, she walks away:"},
    {S::track_found, "{where} filled, found today;"},
    {S::track_skin, "{foot} diamond on the skin, found today;"},
    {S::track_claw_open, "{foot} grey, claw not called;"},
    {S::track_wrap, "{foot} ring, wrap on;"},
    {S::track_block, "{foot} bar under the {claw}, block on;"},
    {S::track_earlier, "{foot} {n} dot, found there before;|{foot} {n} dots, found there before;"},
    {S::track_not_lifted, "{feet} thin, not lifted;"},
    {S::track_unsaid, "{feet} dashed, nobody said whether lifted;"},
    {S::track_nothing, "nothing found;"},
    {S::key_label, "How to read the drawings of her feet"},
    {S::key_found, "found today"},
    {S::key_claw_open, "claw not called"},
    {S::key_skin, "on the skin"},
    {S::key_wrap, "wrap on"},
    {S::key_block, "block on"},
    {S::key_earlier, "there before"},
    {S::key_not_lifted, "not lifted"},
    {S::key_unsaid, "not said"},
    {S::mark_label, "Evenclaw"},
    {S::batches_title, "Counted together"},
    {S::batch_lifted, "{feet} lifted"},
    {S::batch_feet_unsaid, "nobody said which feet were lifted"},
    {S::batch_nothing_found, "nothing found on {n}"},
    {S::batch_trimmed, "{n} trimmed"},
    {S::batch_not_trimmed, "{n} not trimmed"},
    {S::batch_apart, "called on her own: {who}"},
    {S::only_counted, "No cow was called by herself; {n} animals were counted together."},
    {S::careful_title, "Careful in the crush"},
    {S::careful, "careful: {what}"},
    {S::due_held_back, "Milk and meat held back"},
    {S::due_late, "Late"},
    {S::due_now, "To be done now"},
    {S::due_coming, "Coming"},
    {S::nothing_due, "Nothing is due."},
    {S::due_foot, "{herd}, seen on {date}. Made with Evenclaw {version}."},
    {S::yard_title, "Before leaving the yard"},
    {S::yard_source, "({what})"},
    {S::writing_title, "To write in by the crush"},
    {S::writing_how,
     "In the order it is called. Tick only a foot that was lifted and had nothing; a line left "
     "empty says nothing. Typed later with: evenclaw start HERD --day DAY --from-paper"},
    {S::writing_cow, "Cow"},
    {S::writing_came_for, "Came for"},
    {S::writing_lame_on, "Lame on"},
    {S::writing_claw, "claw"},
    {S::writing_what, "what"},
    {S::writing_where, "where"},
    {S::writing_how_bad, "how bad"},
    {S::writing_done, "done to it"},
    {S::writing_of_her, "Of her"},
    {S::writing_see_again, "See again"},
    {S::writing_vet_told, "Vet, farmer told"}};

constexpr WordingTables tables = {
    "en",     feet,     claws,    lesions,  {},     places_beside_white_line,
    degrees,  stages,   states,   reasons,  acts,   materials,
    by_whoms, milkings, measures, weekdays, months, sayings,
    animals};

constexpr Wording wording(tables);

}  // namespace

const Wording& english_wording() {
  return wording;
}

}  // namespace evenclaw
