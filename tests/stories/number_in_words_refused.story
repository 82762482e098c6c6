# A refused line that begins with a number in words may name the next cow, as one in digits does

"Seven LH" is a doubtful 7 until it is said again; "two thousand and five" is read. News of numbers in
words is kept for every one of them.

## said
visit 2026-10-27
today hinds
412 lame RH
RH DD raw behind
rest fine
seven LH sole ulcr
7 LH outside sole ulcer middle, bad
rest fine
two thousand and five
RH growth between, bad
rest fine
four-thirteen LH outsde bruise
four-thirteen LH outside bruise middle, slight
rest fine
done
four-twelve, five-thirteen stil lame

## answered
told: today's feet: LH RH
refused line 5: "seven" cannot stand here; expected a foot, a number, "no number", a claw, a lesion or nothing found; say the number of a cow in digits, or all of it as in four twelve; a time with its unit
refused line 5: "ulcr" is not understood either
saved 412
saved 7
refused line 11: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
saved 2005
saved 413
refused line 15: "stil lame" is not understood; expected news of the cow, something done, a foot or a number; did you mean "still lame"?

## recorded
412 lame RH | RH DD behind raw | fine LH
7 | LH outside SU sole_middle bad | fine RH
2005 | RH IH between bad | fine LH
413 | LH outside SH sole_middle slight | fine RH

## ended
news_unclear 412: "four-twelve, five-thirteen stil lame": This was not understood. What was told?
news_unclear 513: "four-twelve, five-thirteen stil lame": This was not understood. What was told?
