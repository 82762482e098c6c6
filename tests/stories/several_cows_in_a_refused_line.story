# A refused line that names other cows is kept with them, never with the cow in the crush

What is found is called of one cow; said again one by one it is settled. The feet that are lifted
today are nobody's either.

## said
visit 2026-10-27
today hinds
800 LH SU outside heel bad
rest fine
883 and 884 LH DD
883 LH DD raw behind
rest fine
884 LH DD chronic behind
rest fine
885-886 LH DD
885 LH DD raw behind
rest fine
887/888 LH SU
today all
889 nothing found
today all four
next 890 LH bruise toe, slight
890 LH bruise toe, slight
rest fine
done

## answered
told: today's feet: LH RH
refused line 4: "DD" cannot stand here; expected news of the cow, something done or a foot; what is found is called of one cow: her number, the foot and what was found, on a line of its own
saved 800
saved 883
refused line 9: "885-886" may mean the numbers between too; say each number: 885, 886
saved 884
refused line 12: "SU" cannot stand here; expected news of the cow, something done or a foot; what is found is called of one cow: her number, the foot and what was found, on a line of its own
refused line 13: "all" is not understood; expected a foot; say such as "today all four", "today hinds"
saved 885
told: today's feet: LF RF LH RH
refused line 16: is 890 the next cow, or the right number of the one before? say 890 for the next cow; or "no, 890" to mend her number
saved 889
mark 890: claw not called (left hind sole haemorrhage)
saved 890

## recorded
800 | LH outside SU heel bad | fine RH
883 | LH DD behind raw | fine RH
884 | LH DD behind chronic | fine RH
885 | LH DD behind raw | fine RH
889 | fine LF RF LH RH
890 | LH SH toe slight | fine LF RF RH

## ended
lifted_not_called 800: Both fronts: not lifted, or what was found?
lifted_not_called 883: Both fronts: not lifted, or what was found?
lifted_not_called 884: Both fronts: not lifted, or what was found?
lifted_not_called 885: Both fronts: not lifted, or what was found?
place_not_called 890: Left hind, sole haemorrhage: on which claw?
news_unclear 886: "885-886 LH DD": This was not understood. What was told?
news_unclear 887: "887/888 LH SU": This was not understood. What was told?
news_unclear 888: "887/888 LH SU": This was not understood. What was told?
