# "No number" while one stands there without a number is the next cow

Without a word of what she looks like nobody can know whether the same one is meant. She is taken as
the next one and that is told at once. What was refused and is said again is of the same cow.

## said
visit 2026-10-27
today hinds
no number; lame LH; LH SU outside, middle, bad; RH nothing found
no number; LH DDD raw behind
no number; LH DD raw behind
rest fine
done
no number
no number; lame RH; RH SU outside, middle, bad
no number; lame LH; LH SU outside, middle, bad
done

## answered
told: today's feet: LH RH
refused line 3: "DDD" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "DD"?
saved no number
saved no number
saved no number
mark no number: taken as the next one; the cow before her has no number either
saved no number

## turns
no number: 4

## recorded
no number lame LH | LH outside SU sole_middle bad | fine RH
no number | LH DD behind raw | fine RH
no number lame RH | RH outside SU sole_middle bad
no number lame LH | LH outside SU sole_middle bad

## ended
unnumbered no number: Which number has she? (left hind sole ulcer)
unnumbered no number: Which number has she? (left hind digital dermatitis)
unnumbered no number: Which number has she? (left hind sole ulcer)
unnumbered no number: Which number has she? (right hind sole ulcer)
lifted_not_called no number: Right hind: not lifted, or what was found?
lifted_not_called no number: Left hind: not lifted, or what was found?
