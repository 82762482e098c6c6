# A number that is clear is that cow, whatever nobody could read behind it

What became of last time is told in words that are no news here. She is known, so what was said
stands with her, and what is on her foot is asked about. A number nobody carries stays in doubt.

## given
visit 2026-09-29
today all four
301 lame LH
LH outside sole ulcer heel, bad; block on inside; wrap on
rest fine
302 lame LH
both hinds outside sole ulcer heel, bad; block on inside
rest fine
113 LH swelling in front; see again 28d
rest fine
828 RH bruise heel, plain; see again 28d
rest fine
done

## said
visit 2026-10-27
today all four
301 LH SU gone
302 LH RH SU gone, blocks off
113 LH swelling gone
828 antibiotics by the vet
829 antibiotics by the vet
828 never mind
829 never mind

## answered
told: today's feet: LF RF LH RH
refused line 2: "SU gone" is called by what is found today; when nothing is found there any more: "LH nothing found"; else what is found today
refused line 3: "SU gone" is called by what is found today; when nothing is found there any more: "LH nothing found"; else what is found today
mark 301: "301 LH SU gone" was not understood, nor said again
ask 301: Not finished; was the wrap on left hind since 29 Sep (28 d) seen? (answer: LH wrap still on / LH wrap came off by itself / LH wrap taken off / LH wrap don't know)
ask 301: Not finished; was the block on left hind since 29 Sep (28 d) seen? (answer: LH block still on / LH block came off / LH block taken off / LH block don't know)
saved 301
refused line 4: "swelling gone" is called by what is found today; when nothing is found there any more: "LH nothing found"; else what is found today
mark 302: "302 LH RH SU gone, blocks off" was not understood, nor said again
ask 302: Not finished; was the block on left hind since 29 Sep (28 d) seen? (answer: LH block still on / LH block came off / LH block taken off / LH block don't know)
ask 302: Not finished; was the block on right hind since 29 Sep (28 d) seen? (answer: RH block still on / RH block came off / RH block taken off / RH block don't know)
saved 302
refused line 5: "antibiotics" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
mark 113: "113 LH swelling gone" was not understood, nor said again
saved 113
refused line 6: "antibiotics" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree
mark 828: "828 antibiotics by the vet" was not understood, nor said again
saved 828
saved 828
mark 829?: "829 antibiotics by the vet" is dropped

## ended
unfinished 113: Her turn was not finished: "113 LH swelling gone" was not understood
unfinished 301: Her turn was not finished: "301 LH SU gone" was not understood
unfinished 302: Her turn was not finished: "302 LH RH SU gone, blocks off" was not understood
unfinished 828: Her turn was not finished: nothing was said
unanswered 301: Not finished; was the wrap on left hind since 29 Sep (28 d) seen?
unanswered 301: Not finished; was the block on left hind since 29 Sep (28 d) seen?
unanswered 302: Not finished; was the block on left hind since 29 Sep (28 d) seen?
unanswered 302: Not finished; was the block on right hind since 29 Sep (28 d) seen?
lifted_not_called 113: Left hind: what was found?
lifted_not_called 301: Left hind: what was found?
lifted_not_called 302: Left hind: what was found?
lifted_not_called 302: Right hind: what was found?
