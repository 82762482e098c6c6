# What is told of a foot in a file after a line that may have named another cow is nobody's

It is recorded, and whose it is is asked when the visit closes.

## from a file
visit 2026-10-27
today hinds
217 nothing found
413/2 lame
LH outside sole ulcer middle, bad; block on inside
rest fine
414 LH fine
next cow
RH DD raw behind
rest fine
255 LH fine
256 culled, RH DD
RH fine
511 LH fine
512 block off LH
RH DD raw behind
done

## answered
told: today's feet: LH RH
refused line 3: "lame" cannot stand here; expected news of the cow, something done, a foot or a number; what is found is called of one cow: her number, the foot and what was found, on a line of its own
saved 217
question: Whose is this? A line before it was not understood.
saved no number
refused line 7: "next" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
refused line 7: "cow" is not understood either
saved 414
question: Whose is this? A line before it was not understood.
saved no number
refused line 11: a cow is gone, not a foot; of a claw say "inside claw missing"; of a block or wrap "block came off", "wrap came off"
refused line 11: "DD" cannot stand here; expected something done, a foot or today's feet; what is found is called of one cow: her number, the foot and what was found, on a line of its own
saved 255
saved 256?
refused line 14: No cow of this herd carries the number 512.
saved 511
question: Whose is this? A line before it was not understood.
saved no number

## the same file again

## answered
refused line 3: "lame" cannot stand here; expected news of the cow, something done, a foot or a number; what is found is called of one cow: her number, the foot and what was found, on a line of its own
there already 217
question: Whose is this? A line before it was not understood.
there already no number
refused line 7: "next" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
refused line 7: "cow" is not understood either
there already 414
question: Whose is this? A line before it was not understood.
there already no number
refused line 11: a cow is gone, not a foot; of a claw say "inside claw missing"; of a block or wrap "block came off", "wrap came off"
refused line 11: "DD" cannot stand here; expected something done, a foot or today's feet; what is found is called of one cow: her number, the foot and what was found, on a line of its own
there already 255
there already 256?
refused line 14: No cow of this herd carries the number 512. Did you mean 511?
there already 511
question: Whose is this? A line before it was not understood.
there already no number

## ended
unnumbered no number: Which number has she? (left hind sole ulcer)
unnumbered no number: Which number has she? (right hind digital dermatitis)
unnumbered no number: Which number has she? (right hind digital dermatitis)
doubtful_number 256?: Is her number 256?
unfinished 256?: Her turn was not finished: "256 culled, RH DD" was not understood
unfinished no number: Her turn was not finished: "next cow" was not understood
unfinished no number: Her turn was not finished: "512 block off LH" was not understood
lifted_not_called 255: Right hind: not lifted, or what was found?
lifted_not_called 414: Right hind: not lifted, or what was found?
lifted_not_called 511: Right hind: not lifted, or what was found?
lifted_not_called no number: Left hind: what was found?
news_unclear 2: "413/2 lame": This was not understood. What was told?
news_unclear 413: "413/2 lame": This was not understood. What was told?
news_unclear 512: "512 block off LH": No cow of this herd carries the number 512. Which cow was it?

## recorded
217 | fine LH RH
no number | LH outside SU sole_middle bad; block_on inside | fine RH
414 | fine LH
no number | RH DD behind raw | fine LH | unfinished: "next cow" was not understood
255 | fine LH
256? | fine RH | unfinished: "256 culled, RH DD" was not understood
511 | fine LH
no number | LH not called | RH DD behind raw | unfinished: "512 block off LH" was not understood
