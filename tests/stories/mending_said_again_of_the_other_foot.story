# A correction that was refused is settled when it is said again of the foot that was meant

A correction of the cow in the crush does not settle one of 413.

## said
visit 2026-10-27
today hinds
412 LH outside sole ulcer middle, bad
rest fine
413 LH DD raw behind
412 RH no, no SU
412 LH no, no SU
RH no, no DD
LH no, no DD
done
414 LH DD raw behind
413 no, chronc
no, chronic
rest fine
done

## answered
told: today's feet: LH RH
saved 412
refused line 5: That mends nothing that was called of 412. On record: 412 rest fine / LH outside sole ulcer middle of the sole, bad / RH nothing found.
saved 412
told 412: now reads: 412 rest fine / LH / RH nothing found
refused line 7: digital dermatitis was not called on RH
saved 413
refused line 11: "chronc" is not understood; expected a foot, a claw, a number, a stage, a degree or a place; did you mean "chronic"?
saved 414

## recorded
412 | LH not called | fine RH
413 | LH not called
414 | LH DD behind chronic | fine RH

## ended
lifted_not_called 412: Left hind: what was found?
lifted_not_called 413: Left hind: what was found?
lifted_not_called 413: Right hind: not lifted, or what was found?
news_unclear 413: "413 no, chronc": It was not understood, so nothing of hers was mended. What holds?
