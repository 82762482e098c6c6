# "321 recheck", and then "231": she is 231, and there is no 321

The number of a cow who is new here is a slip away from one who carries a wrap. It is asked, and the
right number is the answer. What was called of a foot before that stays with the number it was called
with.

## given
visit 2026-10-13
today hinds
231 LH DD raw behind; wrap on
241 LH DD raw behind; wrap on
done

## said
visit 2026-10-27
today hinds
321 recheck
231
LH wrap taken off; nothing found
rest fine
214 recheck; LH DD scab behind
241 LH wrap taken off; DD scab behind
rest fine
done

## answered
told: today's feet: LH RH
ask 321: 321 is new here; 231 has a wrap on left hind. 231 meant? (answer: no, 231 / go ahead)
saved 231
ask 214: 214 is new here; 241 has a wrap on left hind. 241 meant? (answer: no, 241 / go ahead)
saved 214
saved 241

## recorded
231 recheck | LH nothing_found; wrap_off | fine RH
214 recheck | LH DD behind scab
241 | LH DD behind scab; wrap_off | fine RH

## ended
unanswered 214: 214 is new here; 241 has a wrap on left hind. 241 meant?
lifted_not_called 214: Right hind: not lifted, or what was found?
