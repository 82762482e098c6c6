# Called to the end and called by her number once more, otherwise: both calls stay, and it is asked

Whether "done" was said between makes no difference. What adds to the first call goes on with it.

## said
visit 2026-10-27
today hinds
412 nothing found
412 LH outside sole ulcer middle, bad; block on inside
413 nothing found
done
413 LH outside sole ulcer middle, bad; block on inside
done
414 LH DD raw behind
rest fine
414 LH spray
415 LH fine
415 RH DD raw behind
done

## answered
told: today's feet: LH RH
saved 412
saved 412
saved 413
saved 413
saved 414
saved 415

## ended
called_twice 412: Left hind was called twice in this visit. Do both calls hold?
called_twice 413: Left hind was called twice in this visit. Do both calls hold?

## recorded
412 | fine LH RH
412 | LH outside SU sole_middle bad; block_on inside
413 | fine LH RH
413 | LH outside SU sole_middle bad; block_on inside
414 | LH DD behind raw; spray | fine RH
415 | RH DD behind raw | fine LH
