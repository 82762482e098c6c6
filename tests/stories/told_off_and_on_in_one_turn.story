# A wrap said to be off and to be still on in one turn stays to be taken off until it is clear

A wrap that stays on a foot hurts a cow; one that is looked for in vain costs a minute. Said which of
the two holds, it is off, or on.

## given
visit 2026-10-20
today hinds
105 LH DD raw behind; wrap on, off 3d
rest fine
106 LH DD raw behind; wrap on, off 3d
rest fine
107 RH outside SU, heel, bad; block on inside, off 4 weeks
rest fine
done

## said
visit 2026-10-27
today hinds
105 LH wrap off; DD chronic behind
LH wrap still on
rest fine
106 LH wrap still on; DD chronic behind
LH wrap off
rest fine
done
107 block off
107 block still on
done

## answered
told: today's feet: LH RH
ask 105: Left hind: wrap off and still on. Which holds? (answer: LH no, no wrap taken off / LH no, no wrap still on / go ahead)
saved 105
ask 106: Left hind: wrap off and still on. Which holds? (answer: LH no, no wrap taken off / LH no, no wrap still on / go ahead)
ask 106: Left hind: wrap off and still on. Which holds? (answer: LH no, no wrap taken off / LH no, no wrap still on / go ahead)
told 107: closed: block off right hind, inside claw; block still on? right hind, inside claw
question 107: Her block on right hind was said to be off at this visit. Is it off, or still on?
saved 106

## due 2026-10-27
overdue 105: wrap off left hind (told off and told still on: which holds?) (farmer, by 2026-10-23)
overdue 106: wrap off left hind (told off and told still on: which holds?) (farmer, by 2026-10-23)
due 107: block still on? right hind, inside claw (told off and told still on: which holds?) (farmer, by 2026-10-28)
coming 107: block off right hind, inside claw (told off and told still on: which holds?) (trimmer, by 2026-11-17)

## ended
unanswered 105: Left hind: wrap off and still on. Which holds?
unanswered 106: Left hind: wrap off and still on. Which holds?
news_unclear 107: "107 block still on": Her block on right hind was said to be off at this visit. Is it off, or still on?

## said
106 LH no, no wrap still on
107 no, block off

## answered
saved 106
told 106: now reads: 106 rest fine / LH DD chronic behind; wrap taken off / RH nothing found
told 107: taken back: 107 block still on
there already 107

## due 2026-10-28
overdue 105: wrap off left hind (told off and told still on: which holds?) (farmer, by 2026-10-23)

## cow 106
case: DD LH, found 2x
2026-10-27 LH: digital dermatitis, chronic, behind (DD); wrap taken off
2026-10-27 RH: nothing found
2026-10-20 LH: digital dermatitis, raw, behind (DD); wrap on, off by Fri 23 Oct
2026-10-20 RH: nothing found
