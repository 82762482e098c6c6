# It is not forgotten with the battery that another cow may have been named, nor asked without need

## given
visit 2026-10-13
today hinds
77 nothing found
done

## said
visit 2026-10-27
today hinds
412 LH fine
now then 413

## the battery dies

## said
RH outside sole ulcer middle, bad
413
RH outside sole ulcer middle, bad
rest fine
done
414 LH fine
77 gone Thu
77 gone
414 RH fine
done

## answered
told: today's feet: LH RH
refused line 3: "now then" is not understood; leave it out
mark 412: still in the crush: 412 LH fine
saved 412
refused line 1: A line before may have named another cow, so it is not clear whose this is. Say her number, and this once more.
saved 413
refused line 7: "Thu" cannot stand here; expected a foot or today's feet; what is off by now is told without its day; of one put on today, say in the crush when it comes off: "wrap on, off Thu"
told 77: kept as gone
saved 414

## recorded
412 | fine LH
413 | RH outside SU sole_middle bad | fine LH
414 | fine LH RH

## ended
lifted_not_called 412: Right hind: not lifted, or what was found?
