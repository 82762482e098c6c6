# What is called behind a correction of a cow who is out is hers, and of the foot that is right

She does not come back into the crush for it. What is called without a foot is of the foot that is
right; where that is not clear the whole line is refused with what is missing.

## said
visit 2026-10-27
today all four
410 LH DD raw
420 LH DD raw
430 LH SU; RF fine
440 LH DD raw; RH bruise
450 LH DD raw
411 rest fine
410 LH no, RH; spray
420 no, chronic; LF fine
430 no, RH; RH block in
440 LH no, chronic; spray
450 LH no, bad; see again 14d
440 no, no bruise; block in
450 LH no, RH DD raw
done

## answered
told: today's feet: LF RF LH RH
mark 410: place not called (left hind digital dermatitis)
saved 410
mark 420: place not called (left hind digital dermatitis)
saved 420
mark 430: claw, place, degree not called (left hind sole ulcer)
saved 430
mark 440: place not called (left hind digital dermatitis)
mark 440: claw, place, degree not called (right hind sole haemorrhage)
saved 440
mark 450: place not called (left hind digital dermatitis)
saved 450
saved 410
told 410: now reads: 410 / RH DD raw; spray
saved 420
told 420: now reads: 420 / LH DD chronic / LF nothing found
saved 430
told 430: now reads: 430 / RF nothing found / RH sole ulcer; block on inside
saved 440
told 440: now reads: 440 / LH DD chronic; spray / RH bruise
saved 450
told 450: now reads: 450 / LH DD raw, bad; see again 14d
saved 440
told 440: now reads: 440 / LH DD chronic; spray / RH block on inside
saved 411
mark 450: place not called (both hinds digital dermatitis)
saved 450

## recorded
410 | RH DD raw; spray
420 | LH DD chronic | fine LF
430 | RH SU; block_on inside | fine RF
440 | LH DD chronic; spray | RH not called; block_on inside
411 | fine LF RF LH RH
450 | LH DD bad raw; see_again for 2026-11-10 | RH DD raw
