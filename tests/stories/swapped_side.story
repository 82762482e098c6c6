# Left for right is asked about when the other foot is the one that is known

## given
visit 2026-10-13
today all four
118 lame LH
LH outside sole ulcer middle, bad; block on inside; see again 14d
rest fine
done

## said
visit 2026-10-27
today all four
118 recheck
RH outside sole ulcer middle, slight; block still on
no, left hind
rest fine
done

## answered
told: today's feet: LF RF LH RH
ask 118: The block of 13 Oct is on left hind. Left hind meant? (answer: no, LH / go ahead)
saved 118

## cow 118
on her: block LH inside since 2026-10-13
case: SU LH outside, found 2x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: outside claw: sole ulcer, middle of the sole, slight (SU); block still on
2026-10-27 RH: nothing found
2026-10-13 LF: nothing found
2026-10-13 RF: nothing found
2026-10-13 LH (lame): outside claw: sole ulcer, middle of the sole, bad (SU); block on, inside claw; see again by Tue 27 Oct
2026-10-13 RH: nothing found
