# A wrap still on from last visit is asked about

A forgotten wrap cuts in. When a cow that had one comes back and nobody says what became of it,
the question comes while she is still in the crush; one word settles it and closes the task.

## given
visit 2026-10-13
today all four
350 lame RH
RH DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
today all four
350 recheck
RH DD chronic behind
rest fine
RH wrap taken off
done

## answered
told: today's feet: LF RF LH RH
ask 350: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
saved 350

## due 2026-10-27

## ended
