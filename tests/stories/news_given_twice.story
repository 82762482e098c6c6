# News in a file counts once, however it was understood, when the file is given again

## given
visit 2026-10-13
today hinds
201 RH DD raw behind; wrap on
203 lame LH
LH SU outside middle bad; block on inside
206 nothing found
done

## from a file
visit 2026-10-27
today hinds
203 no longer lame
201 no longer limping
206 gone
206 still here
206 gone
413 nothing found
done

## answered
told: today's feet: LH RH
refused line 3: "no longer limping" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "no longer kicking"?
told 203: noted
told 206: kept as gone
told 206: taken back: 206 gone
told 206: kept as gone
ask 201: Not finished; was the wrap on right hind since 13 Oct (14 d) seen? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
saved 201
saved 413

## the same file again

## answered
refused line 3: "no longer limping" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "no longer kicking"?
there already 203
there already 206
there already 206
there already 206
there already 201
there already 413

## ended
unfinished 201: Her turn was not finished: "201 no longer limping" was not understood
unanswered 201: Not finished; was the wrap on right hind since 13 Oct (14 d) seen?
