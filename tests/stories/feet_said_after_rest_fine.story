# Feet said late fill in what "rest fine" and "all good" waited for

Nobody said which feet are lifted today until three cows were out. What was said of them then holds
of these feet: nothing called is lost. A foot of which a line was not understood stays open.

## said
visit 2026-10-27
29 all good
30 LH SU bad outside heel; rest fine
31 walks sound, rest fine
32 RH SU outsde
rest fine
33 just the backs; LH fine; rest fine
today all four
34 all good
done

## answered
question: Which feet are lifted today? Until that is said "rest fine" fills none. (answer: today all four / today both hinds)
saved 29
saved 30
refused line 4: "outsde" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "outside"?
saved 31
mark 32: right hind stays open: what was said of it was not understood
mark 32: "32 RH SU outsde" was not understood, nor said again
saved 32
told: today's feet: LF RF LH RH
saved 29
saved 30
saved 31
saved 32
told: "rest fine" now speaks of these feet of 29, 30, 31, 32
saved 33
saved 34

## recorded
29 | fine LF RF LH RH
30 | LH outside SU heel bad | fine LF RF RH
31 | fine LF RF LH RH | walks sound
32 | RH not called | fine LF RF LH | unfinished: "32 RH SU outsde" was not understood
33 | RH not called | fine LH | not lifted LF RF
34 | fine LF RF LH RH
