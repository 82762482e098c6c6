# In a file as well, what only goes on with a cow calls none behind a refused line

It stays with her who stood there, and is asked about when the visit closes. A finding calls a cow.

## from a file
visit 2026-10-27
today hinds
111 LH SU outside heel, bad
brown heifer
rest fine
done
112 LH SU outside heel, bad
now then 413
RH DD raw behind
rest fine
done

## answered
told: today's feet: LH RH
refused line 3: "brown" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found
refused line 4: A line before may have named another cow, so it is not clear whose this is. Of her in the crush: "111 rest fine"; of another: her number before it.
saved 111
refused line 7: "now then" is not understood; leave it out
saved 112
question: Whose is this? A line before it was not understood.
saved no number

## recorded
111 | LH outside SU heel bad | unfinished: "brown heifer", "rest fine" were not understood
112 | LH outside SU heel bad
no number | RH DD behind raw | fine LH | unfinished: "now then 413" was not understood

## ended
unnumbered no number: Which number has she?
unfinished 111: Her turn was not finished: "brown heifer", "rest fine" were not understood
unfinished no number: Her turn was not finished: "now then 413" was not understood
lifted_not_called 112: Right hind: not lifted, or what was found?
