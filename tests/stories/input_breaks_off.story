# Lines came in together and the power went: the cow in the crush is still there

The same lines given once more are not doubled, and the turn goes on.

## said together
visit 2026-10-27
today hinds
411 nothing found
412 lame LH
LH outside sole ulcer middle, bad
block onn inside

## the battery dies

## from a file
today hinds
411 nothing found
412 lame LH
LH outside sole ulcer middle, bad
block onn inside
block on inside
rest fine
done

## said together
413 lame LH
LH outside sole ulcer middle, bad

## the battery dies

## from a file
413 lame LH
LH outside sole ulcer middle, bad
rest fine
done

## said together
414 lame LH
LH outside sole ulcer middle, bad

## the battery dies

## ended
unfinished 414: Her turn was not finished: the recording broke off

## answered
told: today's feet: LH RH
saved 411
refused line 5: "block onn" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "block on"?
mark 412: still in the crush: 412 lame LH / LH outside sole ulcer middle, bad
saved 412
there already 411
refused line 5: "block onn" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "block on"?
saved 412
mark 413: still in the crush: 413 lame LH / LH outside sole ulcer middle, bad
saved 413
mark 414: still in the crush: 414 lame LH / LH outside sole ulcer middle, bad
saved 414

## recorded
411 | fine LH RH
412 lame LH | LH outside SU sole_middle bad; block_on inside | fine RH
413 lame LH | LH outside SU sole_middle bad | fine RH
414 lame LH | LH outside SU sole_middle bad | unfinished: the recording broke off
