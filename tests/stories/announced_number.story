# "No 413" is asked about: the next cow, or the right number of the one before?

Nobody looks at the screen, and what follows is not given to the cow before. Said again as the
refusal asks, it is the next cow or mends the number, and nothing is left to ask. The same goes for a number with
letters in it.

## from a file
visit 2026-10-27
today hinds
412 lame LH
LH outside sole ulcer middle, bad
rest fine
No 413
413 lame RH
RH outside sole ulcer middle, bad
rest fine
414 nothing found
No 415
no, 415
4l6 lame LH
416 lame LH
LH outside sole ulcer middle, bad
rest fine
No. 417
RH outside sole ulcer middle, bad
rest fine
done

## answered
told: today's feet: LH RH
refused line 5: is 413 the next cow, or the right number of the one before? say 413 for the next cow; or "no, 413" to mend her number
saved 412
saved 413
refused line 10: is 415 the next cow, or the right number of the one before? say 415 for the next cow; or "no, 415" to mend her number
saved 414
saved 415
refused line 12: "4l6" is not the number of a cow; a cow is digits only: say the number again, 416 if that is meant
refused line 16: is 417 the next cow, or the right number of the one before? say 417 for the next cow; or "no, 417" to mend her number
saved 416
saved 417?

## recorded
412 lame LH | LH outside SU sole_middle bad | fine RH
413 lame RH | RH outside SU sole_middle bad | fine LH
415 | fine LH RH
416 lame LH | LH outside SU sole_middle bad | fine RH
417? | RH outside SU sole_middle bad | fine LH

## ended
doubtful_number 417?: Is her number 417?
