# What came off since last time is never what was put on today

The assistant types the farmer's news when 412 and 417 have been through the crush: their old wrap
and block are off. Each carries a new one by then. A foot named says that it is the new one.

## given
visit 2026-10-20
today hinds
412 lame LH
LH DD raw behind; wrap on
417 lame RH
RH outside SU middle bad; block on inside
418 nothing found
done

## said
visit 2026-10-27
today hinds
412 recheck
LH wrap taken off; DD raw behind; wrap on, off Sat
rest fine
417 recheck
RH block taken off; outside SU middle plain; block on inside
rest fine
418 nothing found
412 wraps off
417 blocks off
412 wrap came off LH

## answered
told: today's feet: LH RH
saved 412
saved 417
question 412: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
question 417: Her block on right hind was put on at this visit. Is that one off? Then say the foot.
told 412: closed: wrap off left hind

## due 2026-11-24
overdue 417: block still on? right hind, inside claw (farmer, by 2026-11-04)
overdue 412: look at the sore on left hind (farmer, by 2026-11-06)
due 417: block check right hind, inside claw (trimmer, by 2026-11-24)
due 417: block off right hind, inside claw (trimmer, by 2026-12-01)
