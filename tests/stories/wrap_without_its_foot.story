# A wrap said without its foot is not settled by what is found next

Only a wrap told of again settles it: else nobody would know of the wrap that is on her.

## from a file
visit 2026-10-27
today hinds
304 wrap on
LH DD raw behind
rest fine
305 wrap on
LH DD raw behind; wrap on
rest fine
done

## answered
told: today's feet: LH RH
refused line 2: no foot is named for what was done; say the foot first: LF, RF, LH, RH
refused line 5: no foot is named for what was done; say the foot first: LF, RF, LH, RH
saved 304?
saved 305?

## ended
doubtful_number 304?: Is her number 304?
doubtful_number 305?: Is her number 305?
unfinished 304?: Her turn was not finished: "304 wrap on" was not understood
lifted_not_called 304?: Right hind: what was found?
