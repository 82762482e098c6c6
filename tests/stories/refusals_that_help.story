# A refusal says back what was said, and how to say it

## given
visit 2026-10-13
today hinds
900 LH SU outside heel bad; block on inside
rest fine
done
done

## said
visit 2026-10-27
today hinds
900 LH SU healed
LH nothing found; block taken off
901 LH swelling gone
LH nothing found
rest fine
902 LH SU outside heel bad
block other claw
block inside, 28d
block inside, off 28d
wrap 3 days
28d
RH outside, 78 mm
no, only hinds
never mind
903 RH DD raw behind
powder under wrap
powder; wrap
rest fine
done

## answered
told: today's feet: LH RH
refused line 2: "SU healed" is called by what is found today; when nothing is found there any more: "LH nothing found"; else what is found today
refused line 4: "swelling gone" is called by what is found today; when nothing is found there any more: "LH nothing found"; else what is found today
saved 900
saved 901
refused line 8: which claw is "other claw"? say inside or outside
refused line 9: "28d" tells a time, and not what is to happen then; when it comes off: "off 28d"
refused line 12: "28d" tells a time, and not what is to happen then; say such as "see again 28d", or "off 28d" behind a wrap or block that is put on
refused line 13: "78 mm" tells a length, and not what was measured; say such as "length 78 mm", "heel 78 mm"
refused line 14: "hinds" cannot stand here; expected a foot, a claw, a number, a stage, a degree or a place; of one foot say "no, only LH"; when the others stayed down "just the backs"
mark 902: "no, only hinds" is dropped
mark 902: "28d", "RH outside, 78 mm" were not understood, nor said again
saved 902
refused line 17: "under" is not taken for the name of a product; leave it out; if it is the name, put it in quotes or say: powder with under
saved 903

## ended
unfinished 902: Her turn was not finished: "28d", "RH outside, 78 mm" were not understood
lifted_not_called 900: Right hind: not lifted, or what was found?
lifted_not_called 902: Right hind: what was found?

## said
12 fresh heifers, all good
12 heifers, fresh, all good
9 big cows all trimmed
9 cows, big, all trimmed
8 cows all good bar 606, 607, and the blind one
done
7 heifers all good bar 608, 609 LH DD
done

## counted
12 heifers, fresh: both hind feet lifted, nothing found on 12
9 cows, big: both hind feet lifted, 9 trimmed
8 cows: both hind feet lifted, nothing found on 5; called on her own: 606; 607; blind one

## recorded
900 | LH nothing_found; block_off
901 | fine LH RH
902 | LH outside SU heel bad; block_on inside for 2026-11-24; wrap_on for 2026-10-30 | RH not called | unfinished: "28d", "RH outside, 78 mm" were not understood
903 | RH DD behind raw; powder; wrap_on | fine LH
606 | unfinished: nothing was said
607 | unfinished: nothing was said
blind one | unfinished: nothing was said

## answered
refused line 1: "fresh" cannot stand here; expected animals that are counted; say the animals right behind their number, and what they are like behind a comma: "12 heifers, fresh, all good"
saved 12 heifers
told 12 heifers: fresh, LH RH lifted, 12 with nothing found
refused line 3: "big" is not understood; expected animals that are counted; say the animals right behind their number, and what they are like behind a comma: "12 heifers, fresh, all good"
saved 9 cows
told 9 cows: big, LH RH lifted, 9 trimmed
saved 8 cows
told 8 cows: LH RH lifted, 5 with nothing found, 606 on her own, 607 on her own, blind one on her own
saved 606
saved 607
mark blind one: call what was found on her; her number is asked for when the visit closes
saved blind one
refused line 7: "DD" cannot stand here; expected nothing found, trimmed, a foot or who was not like the others
mark: no cow is in the crush
