# A refused line that may have named another cow holds back what is told of a foot

The feet are not those of the cow in the crush then, nor of any other before a cow is named.

## said
visit 2026-10-27
today hinds
217 LH fine
218 lame LH, vet came
LH outside sole ulcer middle, bad; block on inside
rest fine
300 LH fine
301, 302 lame LH
RH outside sole ulcer middle, bad
302
RH outside sole ulcer middle, bad
rest fine
412 LH fine
next one 413
rest fine
413 nothing found
414 LH fine
#415 lame
415 lame RH
RH growth between, slight
rest fine
416 RH fine
77 gone Thu
no, left hind
LH fine
416
LH fine
done
417 LH fine
brown heifer
RH outsde sole ulcer

## answered
told: today's feet: LH RH
refused line 3: "vet came" cannot stand here; expected a foot, a claw, a lesion, nothing found, why she came or a degree; news comes behind the number of a cow: 77 gone
saved 217
mark 218?: "218 lame LH, vet came" was not understood, nor said again
saved 218?
refused line 7: "lame" cannot stand here; expected news of the cow, something done, a foot or a number; what is found is called of one cow: her number, the foot and what was found, on a line of its own
saved 300
refused line 8: A line before may have named another cow, so it is not clear whose this is. Say her number, and this once more.
saved 302
refused line 13: is 413 the next cow, or the right number of the one before? say 413 for the next cow; or "no, 413" to mend her number
saved 412
saved 413
refused line 17: # makes the line a comment, and a number follows; leave out # for the cow, or put a space behind it for a comment
saved 414
saved 415
refused line 22: "Thu" cannot stand here; expected a foot or today's feet; what is off by now is told without its day; of one put on today, say in the crush when it comes off: "wrap on, off Thu"
refused line 23: The line before told of 77, so it is not clear whose this is. Of her in the crush: "416 no, left hind"; of 77: "77 no, left hind".
mark 416: "no, left hind" was not understood, nor said again
saved 416
refused line 29: "brown" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
refused line 30: "outsde" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "outside"?
saved 417

## ended
unnumbered no number: Which number has she?
doubtful_number 218?: Is her number 218?
unfinished 218?: Her turn was not finished: "218 lame LH, vet came" was not understood
unfinished 416: Her turn was not finished: "no, left hind" was not understood
unfinished no number: Her turn was not finished: "brown heifer", "RH outsde sole ulcer" were not understood
lifted_not_called 217: Right hind: not lifted, or what was found?
lifted_not_called 300: Right hind: not lifted, or what was found?
lifted_not_called 412: Right hind: not lifted, or what was found?
lifted_not_called 414: Right hind: not lifted, or what was found?
lifted_not_called 417: Right hind: not lifted, or what was found?
lifted_not_called no number: Right hind: what was found?
news_unclear 301: "301, 302 lame LH": This was not understood. What was told?
news_unclear 302: "301, 302 lame LH": This was not understood. What was told?
news_unclear 77: "77 gone Thu": This was not understood. What was told?

## recorded
217 | fine LH
218? | LH outside SU sole_middle bad; block_on inside | fine RH | unfinished: "218 lame LH, vet came" was not understood
300 | fine LH
302 | RH outside SU sole_middle bad | fine LH
412 | fine LH
413 | fine LH RH
414 | fine LH
415 lame RH | RH IH between slight | fine LH
416 | fine LH RH | unfinished: "no, left hind" was not understood
417 | fine LH
no number | RH not called | unfinished: "brown heifer", "RH outsde sole ulcer" were not understood
