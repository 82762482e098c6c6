# Who types on after a refused line is told which foot stays open, also after the battery died

## said
visit 2026-10-27
today all four
412 lame LH
LH outsde sole ulcer middle, bad

## the battery dies

## said
rest fine
LH outside sole ulcer middle, bad
done

## answered
told: today's feet: LF RF LH RH
refused line 3: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
mark 412: still in the crush: 412 lame LH
mark 412: left hind stays open: what was said of it was not understood
saved 412

## cow 412
case: SU LH outside, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): outside claw: sole ulcer, middle of the sole, bad (SU)
2026-10-27 RH: nothing found

## ended
