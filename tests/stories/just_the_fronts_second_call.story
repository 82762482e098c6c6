# "Just the fronts" at a second call leaves the hinds as they were called first

Her hinds were lifted and called when she came first. That only the fronts are lifted now takes
nothing of that away, and there is nothing to ask.

## said
visit 2026-10-27
today all four
412 just the backs
LH outside bruise middle, slight
RH fine
413 nothing found
412 just the fronts
LF fine
RF fine
done

## answered
told: today's feet: LF RF LH RH
saved 412
saved 413
saved 412

## ended
