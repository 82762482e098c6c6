#include "core/trade/check.hpp"

#include <algorithm>
#include <array>

#include "core/trade/checks/situation.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view still_on_slug = "still-on-not-mentioned";
constexpr std::string_view notifiable_slug = "notifiable-signs";

// Stops, then asks, then notes. The order decides between two of one rank that share a cause: a
// wrap told of on the wrong foot is a slip, not a wrap forgotten.
constexpr std::array rules = {
    CheckRule{notifiable_slug, Rank::stop,
              "Sore mouths, blisters and fever can be a disease the law wants reported; it travels "
              "with people and tools.",
              "common practice; foot-and-mouth signs from memory, who must be rung is local law",
              "412\nsore mouth; fever", "412\nsore mouth"},
    CheckRule{"block-on-painful-claw", Rank::stop,
              "A block puts her whole weight on that claw; it belongs on the good one.",
              "block on the sound claw only: Cattle Lameness claw trimming group, Cramer 2015 "
              "(University of Minnesota)",
              "412\nLH outside sole ulcer, plain; block on outside",
              "412\nLH outside sole ulcer, plain; block on inside; pain relief given"},
    CheckRule{"both-claws-blocked", Rank::stop,
              "A block rests the other claw; with one on both neither is rested.",
              "common practice, no source",
              "412\nLH outside sole ulcer; block on inside\n---\n412\nLH inside white line "
              "abscess; block on outside",
              "412\nLH outside sole ulcer; block on inside\n---\n412\nLH outside sole ulcer; block "
              "refitted inside"},
    CheckRule{"pus-above-the-horn", Rank::stop,
              "A discharging hole above the horn comes from deep inside, often from the joint.",
              "a septic joint needs the vet: grainews.ca 2018, Van Metre (docslib 8162165)",
              "412\nRH outside white line abscess side; pus above the coronet",
              "412\nRH outside white line abscess side; pus above the coronet; vet"},
    CheckRule{
        "toe-or-bone", Rank::stop,
        "Dead bone does not heal by trimming; it often has to be taken off, under anaesthesia.",
        "toe necrosis and bare bone often end in amputation: a webinar of Atkinson "
        "(thewebinarvet.com)",
        "412\nLH outside toe necrosis", "412\nLH outside toe necrosis; vet"},
    CheckRule{"swollen-on-one-side", Rank::stop,
              "A swelling above one claw can be an infected joint, which trimming does not reach.",
              "a septic joint needs the vet: grainews.ca 2018, Van Metre (docslib 8162165)",
              "412\nRH outside white line abscess heel; swollen above the outside claw only",
              "412\nRH outside white line abscess heel; swollen above the outside claw only; vet"},
    CheckRule{"bleeding-goes-on", Rank::stop,
              "Blood that does not stop means a vessel was reached; cutting on makes it worse.",
              "common practice, no source", "412\nLH outside sole ulcer; bleeding does not stop",
              "412\nLH outside sole ulcer; bleeding does not stop; vet"},
    CheckRule{"down-in-the-crush", Rank::stop,
              "A cow that goes down in the crush can be hurt, ill or worn out.",
              "common practice, no source", "412 dry off\nwent down in the crush",
              "412 dry off\nwent down in the crush; vet"},
    CheckRule{"foul-without-the-vet", Rank::stop,
              "Foul needs the vet's medicine soon, before it reaches the joint, and a stick may "
              "lie between.",
              "a prompt injection by the vet's prescription, look for stick or stone: Blowey, "
              "extract of a book on lameness",
              "412 lame RH\nRH foul", "412 lame RH\nRH foul; by the vet's plan"},
    CheckRule{"lame-nothing-found", Rank::stop,
              "A lame cow has a cause; when the foot shows none, it is deeper or higher up.",
              "common practice, no source; a cow lame for weeks seldom gets sound again: Thomas "
              "2016, Vet Rec 178:116",
              "412 lame LH\nLH nothing found", "412 lame LH\nLH nothing found; vet"},
    CheckRule{
        "worst-walk-needs-the-vet", Rank::stop,
        "At the worst score, trimming that found no cause, or a swelling, or did not help, is not "
        "enough.",
        "very lame: urgent attention and further professional advice: AHDB/DairyCo mobility score",
        "412 lame; mobility 3 of 3; to straw; see again 5d\nall four nothing found",
        "412 lame; mobility 3 of 3; to straw; see again 5d; vet\nall four nothing found"},
    CheckRule{
        "lame-on-two-legs", Rank::stop,
        "Pain in two legs at once can come from the joints or from an illness of the whole cow.",
        "common practice, no source", "412 lame LH and RH\nboth hinds outside sole ulcer",
        "412 lame LH and RH; vet\nboth hinds outside sole ulcer"},
    CheckRule{
        "toe-far-too-short", Rank::stop,
        "At less than 70 mm the sole under the tip is mostly under 4 mm; 5 mm is critical.",
        "800 hind claws in a scanner, below 70 mm: 3.8 and 4.0 mm of sole; Holstein-Friesians "
        "need 83 mm (median), 90 mm at least is proposed: Vet Rec 177:222",
        "412 routine\nLH outside length 68 mm", "412 heifer\nLH outside length 68 mm"},
    CheckRule{
        "both-claws-painful", Rank::ask,
        "With pain on both claws no block can help, and the vet may have to.",
        "no block where the other claw is painful, thin or ulcerated: common practice, no source",
        "412\nLH outside sole ulcer; inside white line abscess",
        "412\nLH outside sole ulcer; inside bruise slight"},
    CheckRule{"claw-that-is-missing", Rank::ask,
              "Nothing is found on a claw that is not there, and no block holds on it.",
              "common practice, no source", "412\nLH inside claw missing; block on inside",
              "412\nLH inside claw missing; block still on outside"},
    CheckRule{"block-side-not-called", Rank::ask,
              "Nobody can check or take off a block whose side is not known.",
              "common practice, no source", "412\nLH outside sole ulcer; block on",
              "412\nLH outside sole ulcer; block on inside; block stacked; pain relief given"},
    CheckRule{"block-over-what-may-hurt", Rank::ask,
              "What hurts only when it is bad may hurt under the block, and nobody said how bad it "
              "is.",
              "block on the sound claw only: Cattle Lameness claw trimming group, Cramer 2015 "
              "(University of Minnesota); that it is asked is our judgement",
              "412\nLH outside sole ulcer; inside bruise; block on inside; pain relief given",
              "412\nLH outside sole ulcer; inside bruise slight; block on inside; pain relief "
              "given"},
    CheckRule{
        "comes-off-on-that-day", Rank::ask,
        "A day that no wrap or block is meant to reach is a slip, and the farmer keeps to it.",
        "wraps off after 3 to 7 days: derived from Fiedler 2015; a look at a block at about 4 "
        "weeks: AHDB, Cramer 2015; two and six weeks as its bounds are our judgement",
        "412\nLH DD raw behind; wrap on, off 30d",
        "412\nLH outside bruise; block on inside, off 28d; wrap on, off 5d"},
    CheckRule{"swelling-side-not-called", Rank::ask,
              "Whoever comes to open or to look must know above which claw it is.",
              "common practice, no source", "412\nLH blew up above the claw on one side; vet",
              "412\nLH blew up above the outside claw; vet"},
    CheckRule{"it-stinks", Rank::ask,
              "What stinks and has no name may be dead tissue, deeper than trimming reaches.",
              "common practice, no source", "412\nLH outside sole ulcer; it stinks",
              "412\nLH foul; it stinks; vet"},
    CheckRule{"called-in-doubt", Rank::ask,
              "What somebody is not sure of is looked at while she stands there, not remembered.",
              "common practice, no source", "412\nLH sole ulcer outside?",
              "412\nLH sole ulcer outside"},
    CheckRule{"side-or-claw-swapped", Rank::ask,
              "Left for right and inside for outside are the slips most easily made.",
              "common practice, no source",
              "412\nLH outside sole ulcer\n---\n412\nLH inside sole ulcer",
              "412\nLH outside sole ulcer\n---\n412\nLH outside sole ulcer\nRH outside sole ulcer"},
    CheckRule{"wrap-or-block-not-known", Rank::ask,
              "Told of the wrong cow, it stays on the right one and nobody looks for it.",
              "common practice, no source", "412\nLH fine\n---\n412\nLH wrap off; nothing found",
              "412\nLH DD raw behind; wrap on\n---\n412\nLH wrap off; nothing found"},
    CheckRule{"called-in-two-ways", Rank::ask,
              "One thing is one way: one stage, one degree, one length. The later word may mend "
              "the first.",
              "common practice, no source", "412\nRH DD raw behind; DD chronic behind",
              "412\nRH DD raw behind; DD chronic in front"},
    CheckRule{still_on_slug, Rank::ask,
              "A forgotten wrap cuts in, a forgotten block tips her back on the heel.",
              "wraps off after 3 to 7 days: derived from Fiedler 2015; a block left on too long is "
              "a listed error: AHDB",
              "412\nLH DD raw behind; wrap on\n---\n412\nrest fine",
              "412\nLH DD raw behind; wrap on\n---\n412\nLH wrap taken off; nothing found"},
    CheckRule{"blocked-again-twice", Rank::ask,
              "What a second block does not heal needs another look than the trimmer's.",
              "no improvement at the recheck, or a second block: delay worsens the outcome, Thomas "
              "2016, Vet Rec 178:116; twice is our judgement",
              "412\nLH outside sole ulcer; block again inside\n---\n412\nLH outside sole ulcer; "
              "block again inside; pain relief given",
              "412\nLH outside sole ulcer; block again inside\n---\n412\nLH outside sole ulcer; "
              "block refitted inside"},
    CheckRule{"third-visit-same-lesion", Rank::ask,
              "A lesion of the horn that is there at a third visit may need more than trimming.",
              "white line and ulcers that do not heal: opened under anaesthesia, white line review "
              "of 2025; three visits are our judgement",
              "412\nLH outside sole ulcer\n---\n412\nLH outside sole ulcer\n---\n412\nLH outside "
              "sole ulcer",
              "412\nLH outside sole ulcer\n---\n412\nLH outside sole ulcer\n---\n412\nLH outside "
              "sole ulcer slight"},
    CheckRule{"one-hind-lifted", Rank::ask,
              "The other hind of a cow lame behind is often lame too.",
              "38 % were lame on the other hind in the end: Thomas 2016, Vet Rec 178:116",
              "412 lame LH\nLH outside sole ulcer\nRH not lifted",
              "412 lame LF\nLF inside sole ulcer\nLH outside bruise slight\nRH not lifted"},
    CheckRule{"lame-cause-not-found", Rank::ask,
              "She is seen again, which is right; the cause is still to be found.",
              "common practice, no source", "412 lame LH\nLH nothing found; watch her walk in 7d",
              "412 lame LH\nLH outside bruise slight; watch her walk in 7d"},
    CheckRule{"foul-wrapped", Rank::ask, "Foul lives without air, and a wrap keeps the air out.",
              "common practice, no source; what foul lives on from memory",
              "412 lame RH\nRH foul; wrap on; vet", "412 lame RH\nRH DD raw behind; wrap on"},
    CheckRule{
        "worst-walk-nursing", Rank::ask,
        "A cow that hardly walks needs straw or a short way now, and an early look.",
        "no long walks, straw or grass: AHDB/DairyCo mobility score; a look after 5 to 7 days: "
        "dairy-cattle.blogspot.com 2006",
        "412 lame LH; mobility 5 of 5\nLH outside sole ulcer",
        "412 lame LH; mobility 5 of 5; near the parlour; see again 5d\nLH outside sole ulcer"},
    CheckRule{
        "toe-short", Rank::ask,
        "A toe under 75 mm can be too short for an adult Holstein-Friesian; the sole there is "
        "felt before she walks.",
        "at 75 mm 6.1 to 6.4 mm of sole (800 hind claws in a scanner); Holstein-Friesians "
        "need 83 mm (median), 90 mm at least is proposed: Vet Rec 177:222",
        "412 routine\nLH outside length 72 mm", "412 routine\nLH outside length 75 mm"},
    CheckRule{"leaving-with-block-or-wrap", Rank::ask,
              "What she wears tells of a foot that hurts; unfit cows do not travel.",
              "unfit for transport: common practice, no source; local law decides",
              "412\nLH DD raw behind; wrap on; cull advised",
              "412\nLH DD chronic behind; cull advised"},
    CheckRule{"near-calving", Rank::ask,
              "The days round calving are hard enough; what can wait is trimmed afterwards.",
              "no trimming in the days round calving: agproud.com 28637; tipping late in calf: "
              "common practice, no source",
              "412 routine; due to calve in 3d\nnothing found", "412 not done; near calving"},
    CheckRule{
        "blood-drawn-on-several", Rank::ask,
        "Blood on the third foot of a day is no bad luck: the knife, the eye or the hand is tired.",
        "common practice, no source; from three on is our judgement",
        "409\nLH outside blood drawn\n410\nRH outside blood drawn\n412\nLH inside blood drawn",
        "409\nLH outside blood drawn\n412\nLH inside blood drawn"},
    CheckRule{"thin-soles-on-several", Rank::ask,
              "Thin soles in a row come from too much taken off or from the floors; both can be "
              "changed today.",
              "common practice, no source; from three on is our judgement",
              "409\nLH outside thin sole\n410\nLH outside thin sole\n412\nLH outside thin sole",
              "409\nLH outside thin sole\n410\nLH outside thin sole\n412\nLH outside bruise toe"},
    CheckRule{"blocked-again", Rank::note,
              "A block again because not healed: the vet's visit belongs beside it.",
              "no improvement at the recheck, or a second block: delay worsens the outcome, Thomas "
              "2016, Vet Rec 178:116",
              "412\nLH outside sole ulcer; block again inside; pain relief given",
              "412\nLH outside sole ulcer; block on inside; pain relief given"},
    CheckRule{"no-pain-relief-said", Rank::note,
              "A block without talk of pain relief is half the job.",
              "trim, block and pain relief together healed best: Thomas 2015; no pain relief is a "
              "listed error: AHDB",
              "412\nLH outside sole ulcer; block on inside",
              "412\nLH outside sole ulcer; block on inside; pain relief asked for"},
    CheckRule{"scab-without-treatment", Rank::note,
              "A scab follows a treatment; where none is known, somebody else gave it or it is an "
              "older stage.",
              "M3 is the stage of healing after treatment: Vet Res 10.1186/s13567-020-00750-8, "
              "table 1; 60 days are our judgement",
              "412\nnothing found\n---\n412\nRH DD scab behind",
              "412\nRH DD raw behind; spray\n---\n412\nRH DD scab behind"},
    CheckRule{
        "block-past-four-weeks", Rank::note,
        "A block that stays on past four weeks rocks her back on the heel once it has worn.",
        "a look at about four weeks: AHDB, Cramer 2015 (University of Minnesota); how long at most "
        "has no source",
        "412\nLH outside bruise; block on inside\n---\n412\nLH outside bruise; block still "
        "on\n---\n412\nLH block still on; nothing found",
        "412\nLH outside bruise; block on inside\n---\n412\nLH block still on; nothing found"},
    CheckRule{"raw-again", Rank::note,
              "A treated sore that is raw again needs a look planned, for it comes back often.",
              "recurrence is usual: 14.5 % in Kofler 2015; from 7 to 60 days are our judgement",
              "412\nRH DD raw behind; spray\n---\n412\nRH DD raw behind",
              "412\nRH DD raw behind; spray\n---\n412\nRH DD raw behind; see again 14d"},
    CheckRule{"thin-sole", Rank::note, "A thin sole bears no more cutting and no stony way.",
              "a sole under 5 mm is critical: 800 hind claws in a scanner; ground and ways: common "
              "practice, no source",
              "412\nLH outside thin sole toe", "412\nLH outside bruise toe"},
    CheckRule{
        "walk-watched-early", Rank::note,
        "In the days after a trim she walks worse than her feet are; a walk watched then "
        "misleads.",
        "lame 14 % before, 34 % right after trimming, 20 % two months later: Van Hertem 2014; "
        "that it means a week is our judgement",
        "412\nLH outside bruise; watch her walk in 3d",
        "412\nLH outside bruise; watch her walk in 14d"},
    CheckRule{"act-reserved-for-vet", Rank::stop,
              "Injections, anaesthesia and surgery are the vet's; local law decides who else may.",
              "surgery and anaesthesia: Kümper (Germany), RCVS (UK); injections and all other "
              "countries: strict where nobody has said otherwise",
              "412 nerve block", "412 nerve block by the vet"},
    CheckRule{"withdrawal-below-floor", Rank::stop,
              "Used off label, a product has a least withdrawal that no vet goes below.",
              "Veterinary Medicines Regulations 2013 (GB) and 2006 (NI); elsewhere Regulation (EU) "
              "2019/6 from memory",
              "412\nLH DD raw behind; spray with strongmix",
              "412\nLH DD raw behind; spray with plainmix"},
    CheckRule{"medicine-name-near", Rank::ask,
              "A slip in the name would take her for treated with another product.",
              "common practice, no source", "412\nLH DD raw behind; spray with plainmx",
              "412\nLH DD raw behind; spray with plainmix"},
    CheckRule{withdrawal_missing_rule, Rank::ask,
              "Whoever sells her milk or meat must know how long it is held back.",
              "the record states the period as the vet or the label does: common practice, no "
              "source",
              "412\nLH DD raw behind; spray with greenmix",
              "412\nLH DD raw behind; spray with plainmix"},
    CheckRule{
        "long-in-the-crush", Rank::note,
        "The longer she is held, the more it costs her, and the more she fights it next time.",
        "common practice, no source; no time in the crush is published that we found, so 20 "
        "minutes are our judgement and each business sets its own",
        "412\n# 27 minutes in the crush\nLH trimmed",
        "412\n# 12 minutes in the crush\nLH trimmed"}};

using Check = std::vector<Firing> (*)(const Situation&);

// In the order of the table above. It decides between two of one rank that share a cause: a wrap
// told of on the wrong foot is a slip, not a wrap forgotten.
constexpr std::array<Check, rules.size()> checks = {notifiable_signs,
                                                    block_on_painful_claw,
                                                    both_claws_blocked,
                                                    pus_above_the_horn,
                                                    toe_or_bone,
                                                    swollen_on_one_side,
                                                    bleeding_goes_on,
                                                    down_in_the_crush,
                                                    foul_without_the_vet,
                                                    lame_nothing_found,
                                                    worst_walk_needs_the_vet,
                                                    lame_on_two_legs,
                                                    toe_far_too_short,
                                                    both_claws_painful,
                                                    claw_that_is_missing,
                                                    block_side_not_called,
                                                    block_over_what_may_hurt,
                                                    comes_off_on_that_day,
                                                    swelling_side_not_called,
                                                    it_stinks,
                                                    called_in_doubt,
                                                    side_or_claw_swapped,
                                                    fixture_nobody_knows,
                                                    called_in_two_ways,
                                                    still_on_not_mentioned,
                                                    blocked_again_twice,
                                                    third_visit_same_lesion,
                                                    one_hind_lifted,
                                                    lame_cause_not_found,
                                                    foul_wrapped,
                                                    worst_walk_nursing,
                                                    toe_short,
                                                    leaving_with_block_or_wrap,
                                                    near_calving,
                                                    blood_drawn_on_several,
                                                    thin_soles_on_several,
                                                    blocked_again,
                                                    no_pain_relief_said,
                                                    scab_without_treatment,
                                                    block_past_four_weeks,
                                                    raw_again,
                                                    thin_sole,
                                                    walk_watched_early,
                                                    act_reserved_for_vet,
                                                    withdrawal_below_floor,
                                                    medicine_name_near,
                                                    withdrawal_missing,
                                                    long_in_the_crush};

std::vector<Firing> all_firings(const Situation& situation) {
  std::vector<Firing> firings;
  for (std::size_t i = 0; i < rules.size(); ++i) {
    for (Firing& firing : checks[i](situation)) {
      firing.warning.rule = rules[i].slug;
      firing.warning.rank = rules[i].rank;
      firings.push_back(std::move(firing));
    }
  }
  return firings;
}

/// Where a disease that must be reported is suspected, no other question is worth her time.
void leave_notifiable_alone(std::vector<Firing>& firings) {
  const auto is_notifiable = [](const Firing& firing) {
    return firing.warning.rule == notifiable_slug;
  };
  if (!std::any_of(firings.begin(), firings.end(), is_notifiable)) return;
  firings.erase(std::remove_if(firings.begin(), firings.end(),
                               [&](const Firing& firing) { return !is_notifiable(firing); }),
                firings.end());
}

bool same_place(const Warning& a, const Warning& b) {
  return a.rule == b.rule && a.foot == b.foot && a.claw == b.claw;
}

bool share_cause(const Firing& a, const Firing& b) {
  return std::any_of(a.causes.begin(), a.causes.end(), [&](const Cause& cause) {
    return std::find(b.causes.begin(), b.causes.end(), cause) != b.causes.end();
  });
}

bool is_covered_by(const Firing& kept, const Firing& other) {
  if (kept.warning.rule == other.warning.rule) return same_place(kept.warning, other.warning);
  return share_cause(kept, other);
}

}  // namespace

std::span<const CheckRule> all_checks() {
  return rules;
}

std::vector<Warning> check_turn(const Turn& turn, const CowPast& past, Day today, bool finished,
                                const Language& language) {
  std::vector<Firing> firings = all_firings({turn, past, today, finished, language});
  leave_notifiable_alone(firings);
  std::stable_sort(firings.begin(), firings.end(), [](const Firing& a, const Firing& b) {
    return a.warning.rank > b.warning.rank;
  });
  std::vector<Firing> kept;
  std::vector<Warning> warnings;
  for (const Firing& firing : firings) {
    const bool covered = std::any_of(kept.begin(), kept.end(), [&](const Firing& higher) {
      return is_covered_by(higher, firing);
    });
    if (covered) continue;
    kept.push_back(firing);
    warnings.push_back(firing.warning);
  }
  return warnings;
}

/// A wrap has no claw, a block has one, be it not called.
std::optional<Fixture> fixture_asked_about(const Warning& warning) {
  if (warning.rule != still_on_slug) return std::nullopt;
  return warning.claw == Claw::none ? Fixture::wrap : Fixture::block;
}

}  // namespace evenclaw
