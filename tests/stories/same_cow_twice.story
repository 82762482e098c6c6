# The same foot called again when she came a second time is asked about

## said
visit 2026-10-27
today all four
412 routine
LH outside bruise middle, slight
rest fine
413 nothing found
412 RH outside bruise middle, slight
done

## answered
told: today's feet: LF RF LH RH
saved 412
saved 413
saved 412

## turns
412: 2
413: 1

## ended
called_twice 412: Right hind was called twice in this visit. Do both calls hold?
