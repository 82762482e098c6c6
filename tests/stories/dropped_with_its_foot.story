# A line that is dropped later takes the foot with it that only it named

Nothing was found on that foot that could be read, so nothing is asked of it any more. A foot that
was named in a line of its own is still asked about.

## said
visit 2026-10-27
today hinds
416 LH SU outsid
417 LH
SU outsid
418 nothing found
416 never mind
417 never mind

## answered
told: today's feet: LH RH
refused line 2: "outsid" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "outside"?
mark 416: "416 LH SU outsid" was not understood, nor said again
saved 416
refused line 4: "outsid" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "outside"?
mark 417: "SU outsid" was not understood, nor said again
saved 417
mark 416: nothing is on record of left hind now
saved 416
saved 417

## ended
unfinished 416: Her turn was not finished: nothing was said
lifted_not_called 417: Left hind: what was found?
lifted_not_called 417: Right hind: not lifted, or what was found?
