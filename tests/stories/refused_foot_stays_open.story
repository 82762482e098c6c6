# A foot named in a line nobody could read stays open: "rest fine" does not fill it

She came lame on the left hind and something was called there. To say "nothing found" of that foot,
or to cry that nothing was found on the lame leg, would be wrong both times.

## from a file
visit 2026-10-27
today all four
412 lame LH
LH outsde sole ulcer middle, bad
rest fine
413 lame RH
RH outside sole ulcer middle, bad; blck on inside
RH outside sole ulcer middle, bad; block on inside
rest fine
done

## answered
told: today's feet: LF RF LH RH
refused line 3: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
saved 412
refused line 6: "blck on" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "block on"?
saved 413

## cow 412
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): finding not called
2026-10-27 RH: nothing found

## ended
unfinished 412: Her turn was not finished: "LH outsde sole ulcer middle, bad" was not understood
lifted_not_called 412: Left hind: what was found?
