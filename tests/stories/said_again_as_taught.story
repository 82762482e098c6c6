# A line said again as the refusal teaches is settled, in one line or in several

What nobody knows is left out, what is not so is not said, and what stood in one line may stand in
two.

## said
visit 2026-10-27
today hinds
110 RH growth slight, worse, vet perhaps
RH growth slight, worse, vet
rest fine
123 RH DD raw in front, no wrap, spray
RH DD raw in front, spray
rest fine
203 LH SU middle bad outsid block inside
LH SU middle bad outside
block inside
rest fine
114 RH long toe inside, 95mm
RH long toe inside
length inside 95mm
rest fine
115 LH no DD
LH nothing found
rest fine
116 LH SU outsid middle bad
RH fine
LH inside block
done

## answered
told: today's feet: LH RH
refused line 2: "perhaps" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
mark 110: RH: nothing is known of it from an earlier visit
refused line 5: "wrap" cannot stand here; expected a foot, a claw, a number, a stage, a degree or a place; what was not done is not said; if it was said and is wrong: "no, no wrap"
saved 110
refused line 8: "outsid" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "outside"?
saved 123
refused line 12: "95mm" tells a length, and not what was measured; say such as "length 95mm", "heel 95mm"
saved 203
refused line 16: it is unclear whether "DD" is not there, or mends what was said; what is not there is not said, and a foot without anything is "LH nothing found"; if it was called and is wrong: "no, no DD"; if it is right: "no, DD"
saved 114
refused line 19: "outsid" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "outside"?
saved 115
mark 116: "116 LH SU outsid middle bad" was not understood, nor said again
saved 116

## recorded
110 | RH IH worse slight; vet | fine LH
123 | RH DD in_front raw; spray | fine LH
203 | LH outside SU sole_middle bad; block_on inside | fine RH
114 | RH inside overgrown | fine LH
115 | fine LH RH
116 | LH not called; block_on inside | fine RH | unfinished: "116 LH SU outsid middle bad" was not understood

## ended
unfinished 116: Her turn was not finished: "116 LH SU outsid middle bad" was not understood
lifted_not_called 116: Left hind: what was found?
