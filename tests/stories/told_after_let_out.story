# A question she left with is answered by the next line

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
351 routine; nothing found
350 wrap came off
done

## answered
told: today's feet: LF RF LH RH
ask 350: Wrap on right hind since 13 Oct (14 d): still on? (answer: RH wrap still on / RH wrap came off by itself / RH wrap taken off / RH wrap don't know)
saved 350
told 350: closed: wrap off right hind
saved 350
saved 351

## ended

## due 2026-10-27
