# A cow named in a refused line stands in the crush, also when nobody looks at the screen

What is typed next is hers. What was refused and never said again is asked when the visit closes.

## said
visit 2026-10-27
today hinds
26 nothing found
27 RH DD raw behnd spray
RH DD raw behind; spray
rest fine
22 nothnig found
22 nothing found
3 4 recheck
34 recheck
RH DD chronic behind
rest fine
409 lame RHH
RH growth between, slight
rest fine
413 LH SU middel slight

## the battery dies

## said
rest fine
done

## answered
told: today's feet: LH RH
refused line 3: "behnd" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "behind"?
saved 26
refused line 6: "nothnig found" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "nothing found"?
saved 27
refused line 8: "recheck" cannot stand here; expected news of the cow, something done, a foot or a number
saved 22
refused line 12: "RHH" is not understood; expected a foot, a number, a claw, a lesion, nothing found or why she came; did you mean "RH"?
saved 34
refused line 15: "middel" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "middle"?
mark 409: "409 lame RHH" was not understood, nor said again
saved 409
mark 413: still in the crush: 413 LH SU middel slight
mark 413: left hind stays open: what was said of it was not understood
mark 413: "413 LH SU middel slight" was not understood, nor said again
saved 413

## recorded
26 | fine LH RH
27 | RH DD behind raw; spray | fine LH
22 | fine LH RH
34 recheck | RH DD behind chronic | fine LH
409 | RH IH between slight | fine LH | unfinished: "409 lame RHH" was not understood
413 | LH not called | fine RH | unfinished: "413 LH SU middel slight" was not understood

## ended
unfinished 409: Her turn was not finished: "409 lame RHH" was not understood
unfinished 413: Her turn was not finished: "413 LH SU middel slight" was not understood
lifted_not_called 413: Left hind: what was found?
