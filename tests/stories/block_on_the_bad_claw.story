# A block on the bad claw is stopped

A block puts her whole weight on the claw that carries it. Called on the claw with the ulcer it is
stopped at once, and one word of mouth puts it right.

## said
visit 2026-10-27
today all four
160 lame LH
LH outside sole ulcer middle, bad; block on outside
no, inside
rest fine
done

## answered
told: today's feet: LF RF LH RH
stop 160: Block on the claw with the sole ulcer (left hind outside). Inside meant? (answer: no, inside / go ahead)
saved 160

## cow 160
on her: block LH inside since 2026-10-27
case: SU LH outside, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): outside claw: sole ulcer, middle of the sole, bad (SU); block on, inside claw
2026-10-27 RH: nothing found

## due 2026-10-27
coming 160: block still on? left hind, inside claw (farmer, by 2026-11-04)
coming 160: block check left hind, inside claw (trimmer, by 2026-11-24)
coming 160: block off left hind, inside claw (trimmer, by 2026-12-01)
