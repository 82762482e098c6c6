# A mistake seen two cows later is mended by her number and a correction

The cow in the crush stays there: what is said next is hers. The record is read back.

## said
visit 2026-10-27
today hinds
412 lame LH
LH outside sole ulcer middle, bad; block on inside
rest fine
done
413 RH DD raw behind
rest fine
done
414 fresh; LH growth between
412 no, right hind
RH nothing found
413 no, chronic
413 no, no DD
414 LH no, bad
412 no, not lame
done
412 no, no block

## answered
told: today's feet: LH RH
saved 412
saved 413
mark 414: degree not called (left hind growth between the claws)
stop 412: Came lame left hind, nothing found: look again, look higher, or vet. (answer: LH vet / no, lame RH / go ahead)
saved 412
told 412: now reads: 412 lame LH; rest fine / RH outside sole ulcer middle of the sole, bad; block on inside / LH nothing found
saved 413
told 413: now reads: 413 rest fine / RH DD chronic behind / LH nothing found
saved 413
told 413: now reads: 413 rest fine / RH / LH nothing found
saved 412
told 412: now reads: 412 rest fine / RH outside sole ulcer middle of the sole, bad; block on inside / LH nothing found
saved 414
saved 412
told 412: now reads: 412 rest fine / RH outside sole ulcer middle of the sole, bad / LH nothing found

## recorded
413 | RH not called | fine LH
414 fresh | LH IH between bad | fine RH
412 | RH outside SU sole_middle bad | fine LH

## ended
lifted_not_called 413: Right hind: what was found?

## due 2026-10-27
coming 412: look at right hind, ring if no better (farmer, by 2026-11-04)
coming 412: see again right hind (trimmer, by 2026-11-24)
