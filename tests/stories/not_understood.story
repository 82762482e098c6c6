# A line of a file that cannot be read is refused, and her turn counts as unfinished

Nothing is guessed, nothing said after it goes to the wrong cow, and the foot that was most likely
meant is not "nothing found".

## from a file
visit 2026-10-27
today all four
412 nothing found
413 LHH sole ulcer middle, bad
RH DD raw behind
rest fine
414 nothing found
done

## answered
told: today's feet: LF RF LH RH
refused line 3: "LHH" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "LH"?
saved 412
saved 413
saved 414

## cow 412
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: nothing found
2026-10-27 RH: nothing found

## cow 413
case: DD RH, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH: finding not called
2026-10-27 RH: digital dermatitis, raw, behind (DD)

## ended
unfinished 413: Her turn was not finished: "413 LHH sole ulcer middle, bad" was not understood
lifted_not_called 413: Left hind: what was found?
