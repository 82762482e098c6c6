# A line typed about her, refused and never said again is asked about when the visit closes

## said
visit 2026-10-27
today hinds
412 lame LH
LH outside sole ulcer middle, bad
blokc on inside, off 35d
rest fine
done
413 LH DD raw behind
wrpa on, off Sat
LH wrap on, off Sat
rest fine
done
513 blck came off last week

## the battery dies

## said
414 nothing found
done

## answered
told: today's feet: LH RH
refused line 4: "blokc on" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "block on"?
refused line 4: nothing was said just before that could come off; say what comes off: "wrap on, off Thu", "wrap taken off"
mark 412: "blokc on inside, off 35d" was not understood, nor said again
saved 412
refused line 8: "wrpa on" is not understood; expected a foot, a number, "no number", a claw, a lesion or nothing found; did you mean "wrap on"?
refused line 8: nothing was said just before that could come off; say what comes off: "wrap on, off Thu", "wrap taken off"
saved 413
refused line 12: "blck came off" is not understood; expected a foot, a claw, a lesion, nothing found, why she came or a degree; did you mean "block came off"?
refused line 12: "last" is not understood either
mark 513?: still in the crush: 513 blck came off last week
mark 513?: "513 blck came off last week" was not understood, nor said again
saved 513?
saved 414

## recorded
412 lame LH | LH outside SU sole_middle bad | fine RH | unfinished: "blokc on inside, off 35d" was not understood
413 | LH DD behind raw; wrap_on for 2026-10-31 | fine RH
513? | unfinished: "513 blck came off last week" was not understood
414 | fine LH RH

## ended
unfinished 412: Her turn was not finished: "blokc on inside, off 35d" was not understood
unfinished 513?: Her turn was not finished: "513 blck came off last week" was not understood
