# A correction that says again what was refused settles it, also when she is let out

What else nobody could read stays asked, and so does an end that was said.

## said
visit 2026-10-27
today hinds
180 LH outside sole ulcer middle, bad
no, insde
rest fine
done
180 no, inside
181 LH outside sole ulcer middle, bad
no, insde
rest fine
182 nothing found
181 no, inside
183 LH outside sole ulcer middle, bad
RH brooze, bad
no, insde
rest fine
done
no, inside
184 LH outside sole ulcer middle, bad
no, insde
unfinished, went down
done
no, inside

## answered
told: today's feet: LH RH
refused line 3: "insde" is not understood; expected a foot, a claw, a number, a stage, a degree or a place; did you mean "inside"?
mark 180: "no, insde" was not understood, nor said again
saved 180
saved 180
told 180: now reads: 180 rest fine / RH nothing found / LH inside sole ulcer middle of the sole, bad
refused line 8: "insde" is not understood; expected a foot, a claw, a number, a stage, a degree or a place; did you mean "inside"?
mark 181: "no, insde" was not understood, nor said again
saved 181
saved 181
told 181: now reads: 181 rest fine / RH nothing found / LH inside sole ulcer middle of the sole, bad
saved 182
refused line 13: "brooze" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
refused line 14: "insde" is not understood; expected a foot, a claw, a number, a stage, a degree or a place; did you mean "inside"?
mark 183: right hind stays open: what was said of it was not understood
mark 183: "RH brooze, bad", "no, insde" were not understood, nor said again
saved 183
saved 183
refused line 19: "insde" is not understood; expected a foot, a claw, a number, a stage, a degree or a place; did you mean "inside"?
mark 184: "no, insde" was not understood, nor said again
saved 184
saved 184

## recorded
180 | LH inside SU sole_middle bad | fine RH
181 | LH inside SU sole_middle bad | fine RH
182 | fine LH RH
183 | LH inside SU sole_middle bad | RH not called | unfinished: "RH brooze, bad" was not understood
184 | LH inside SU sole_middle bad | unfinished: went down; "no, insde" was not understood

## ended
unfinished 183: Her turn was not finished: "RH brooze, bad" was not understood
unfinished 184: Her turn was not finished: went down; "no, insde" was not understood
lifted_not_called 183: Right hind: what was found?
