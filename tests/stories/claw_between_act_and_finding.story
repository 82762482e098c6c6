# A claw behind a semicolon leads the finding, not what was done before

With commas alone, or semicolons on both sides, it could be of either.

## said
visit 2026-10-27
today all four
410 RH block; outside, SU heel
inside
LF opened; inside, WLA
410 RF block, outside, SU heel
RF block inside, outside, SU heel
LH wrap, outside, bruise slight
LH block; outside; bruise
LH block outside; bruise
done

## answered
told: today's feet: LF RF LH RH
mark 410: degree not called (right hind sole ulcer)
ask 410: Right hind: block on, which claw? The sole ulcer is outside. (answer: RH block on inside / RH block on outside / go ahead)
mark 410: taken as: block on inside
mark 410: place, degree not called (left front white line abscess)
refused line 5: "outside" could be of "block" or of "SU"; say "block outside; SU" or "block; outside SU"
mark 410: degree not called (right front sole ulcer)
mark 410: place not called (left hind sole haemorrhage)
refused line 8: "outside" could be of "block" or of "bruise"; say "block outside; bruise" or "block; outside bruise"
saved 410

## recorded
410 | LF inside WLA; opened | RF outside SU heel; block_on inside | LH outside SH slight; wrap_on; block_on outside | RH outside SU heel; block_on inside
