# Wrap and block off: it is said of both

Nothing is put on by it. Where a comma parts the two, the wrap may be a new one, and it is asked.

## given
visit 2026-10-06
today hinds
302 LH outside SU; block on inside; wrap on, off 3d; rest fine
303 LH outside SU; block on inside; wrap on, off 3d; rest fine
304 LH outside SU; block on inside; wrap on, off 3d; rest fine
305 LH outside SU; block on inside; wrap on, off 3d; rest fine
done

## said
visit 2026-10-27
today hinds
302 recheck
LH wrap and block off
LH outside SU, slight
rest fine
303 LH wrap and block still on
304 wrap and block off
305 recheck; LH wrap, block off
LH wrap off; block off
LH nothing found; rest fine
done

## answered
told: today's feet: LH RH
mark 302: place not called (left hind sole ulcer)
saved 302
told 304: closed: wrap off left hind
told 304: closed: block check left hind, inside claw; block off left hind, inside claw; block still on? left hind, inside claw
refused line 8: is that said of the wrap as well, or is the wrap put on today? of both: "wrap taken off; block off"; put on today: "wrap on; block off"
told 303: noted
told 303: closed: block still on? left hind, inside claw
mark 303: taken as news of her; if she was in the crush, say her number and what was found
mark 305: "305 recheck; LH wrap, block off" was not understood, nor said again
saved 305

## cow 302
case: SU LH outside, found 2x
2026-10-27 LH: outside claw: sole ulcer, slight (SU); wrap taken off; block taken off
2026-10-27 RH: nothing found
2026-10-06 LH: outside claw: sole ulcer (SU); block on, inside claw; wrap on, off by Fri 9 Oct
2026-10-06 RH: nothing found

## cow 303
on her: block LH inside since 2026-10-06
on her: wrap LH since 2026-10-06
case: SU LH outside, found 1x
2026-10-06 LH: outside claw: sole ulcer (SU); block on, inside claw; wrap on, off by Fri 9 Oct
2026-10-06 RH: nothing found

## cow 304
case: SU LH outside, found 1x
2026-10-06 LH: outside claw: sole ulcer (SU); block on, inside claw; wrap on, off by Fri 9 Oct
2026-10-06 RH: nothing found

## cow 305
2026-10-27 LH: nothing found; wrap taken off; block taken off
2026-10-27 RH: nothing found
2026-10-06 LH: outside claw: sole ulcer (SU); block on, inside claw; wrap on, off by Fri 9 Oct
2026-10-06 RH: nothing found

## ended
unfinished 305: Her turn was not finished: "305 recheck; LH wrap, block off" was not understood
place_not_called 302: Left hind, sole ulcer: where?
due_not_seen 303: wrap off left hind is due and she was not seen
due_not_seen 303: block check left hind, inside claw is due and she was not seen
