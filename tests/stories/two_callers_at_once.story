# Two names are no caller: one calls at a time

Whoever called before goes on until one name is said.

## said
visit 2026-10-27
today hinds
caller Ben
412 nothing found
caller Ben and Anna
413 nothing found
caller Anna
414 nothing found
done

## answered
told: today's feet: LH RH
told: caller Ben
refused line 4: Ben and Anna are two names; one person calls, and one writes, at a time. Say one name, and the other one when that person takes over.
saved 412
told: caller Anna
saved 413
saved 414

## callers
Anna: 414
Ben: 412, 413
