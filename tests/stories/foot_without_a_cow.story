# A foot told of while no cow is in the crush is kept, and it is asked whose it was

## said
visit 2026-10-27
today hinds
412 LH DD raw behind
rest fine
done
RH growth between, slight
412 RH growth between, slight
done
LH see again 28d
413
LH see again 28d
rest fine
done
RH outside sole ulcer middle, bad
414 nothing found
done
rest fine

## answered
told: today's feet: LH RH
saved 412
refused line 5: "RH" is said of a cow, and no cow is named yet; start with her number
saved 412
refused line 8: "LH" is said of a cow, and no cow is named yet; start with her number
saved 413
refused line 13: "RH" is said of a cow, and no cow is named yet; start with her number
mark no number: "RH outside sole ulcer middle, bad" was not understood, nor said again
saved no number
saved 414
refused line 16: "rest fine" is said of a cow, and no cow is named yet; start with her number

## recorded
412 | LH DD behind raw | fine RH
412 | RH IH between slight
413 | LH not called; see_again for 2026-11-24 | fine RH
no number | RH not called | unfinished: "RH outside sole ulcer middle, bad" was not understood
414 | fine LH RH

## ended
unnumbered no number: Which number has she?
unfinished no number: Her turn was not finished: "RH outside sole ulcer middle, bad" was not understood
called_twice 412: Right hind was called twice in this visit. Do both calls hold?
lifted_not_called 413: Left hind: what was found?
lifted_not_called no number: Right hind: what was found?
news_unclear rest fine: "rest fine": This was not understood. Of whom was it, and what was told?
