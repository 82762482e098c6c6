# "No, outside sole ulcer" mends "nothing found", or the claw of the sole ulcer that was called

## said
visit 2026-10-27
today hinds
305 LH nothing found
no, outside SU
rest fine
306 LH inside sole ulcer middle, bad
no, outside SU
rest fine
307 LH inside sole ulcer middle, bad
no, outside WLA
never mind
rest fine
done

## answered
told: today's feet: LH RH
mark 305: place, degree not called (left hind sole ulcer)
saved 305
saved 306
refused line 9: it is unclear whether "white line abscess" is right or was wrong; if it was wrong, say "no, no white line abscess"; if it is right, take back the other one
mark 307: "no, outside WLA" is dropped
saved 307

## recorded
305 | LH outside SU | fine RH
306 | LH outside SU sole_middle bad | fine RH
307 | LH inside SU sole_middle bad | fine RH
