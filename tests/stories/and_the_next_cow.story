# "And 413" is the next cow, and each cow begins a line of her own

What is said behind it is hers and never given to the cow before. A line that names two cows is not
understood, and nobody's feet are told of until one of them is named.

## said
visit 2026-10-27
today hinds
412 LH outside bruise middle, slight
and 413 LH sole ulcer outside middle
rest fine
done
414 LH fine; 415 RH outside sole ulcer
RH growth between, slight
414 nothing found
415 RH outside sole ulcer middle
rest fine
done

## answered
told: today's feet: LH RH
saved 412
mark 413: degree not called (left hind sole ulcer)
saved 413
refused line 6: "415" begins another cow in the middle of the line; each cow on a line of her own: say 415 on the next one
saved no number
saved 414
mark 415: degree not called (right hind sole ulcer)
saved 415

## recorded
412 | LH outside SH sole_middle slight
413 | LH outside SU sole_middle | fine RH
no number | RH IH between slight
414 | fine LH RH
415 | RH outside SU sole_middle | fine LH
