# Rest fine means the feet too that were only trimmed

"All four trimmed" names every foot and says of none what was found there. What is said to be fine
afterwards is fine; the foot with words nobody could read stays open.

## said
visit 2026-10-27
today all four
412 all four trimmed, LH outside SU heel bad, rest fine
413 both hinds trimmed
RH SU outsde
rest fine
done

## answered
told: today's feet: LF RF LH RH
saved 412
refused line 4: "outsde" is not understood; expected a place, a stage, a degree, words in quotes, a claw or a foot; did you mean "outside"?
mark 413: right hind stays open: what was said of it was not understood
mark 413: "RH SU outsde" was not understood, nor said again
saved 413

## recorded
412 | LF nothing_found; trimmed | RF nothing_found; trimmed | LH outside SU heel bad; trimmed | RH nothing_found; trimmed
413 | LH nothing_found; trimmed | RH not called; trimmed | fine LF RF | unfinished: "RH SU outsde" was not understood

## ended
unfinished 413: Her turn was not finished: "RH SU outsde" was not understood
lifted_not_called 413: Right hind: what was found?
