# "LH raw" answers what was not called of the one finding it can be of

Where, how bad, at which stage and on which claw are asked at the close. The foot and the detail are
answer enough where one finding of that foot waits for it, in the crush and once she is out.

## said
visit 2026-10-27
today hinds
408 LH DD
rest fine
409 LH SU outside; bruise inside
LH heel
LH bruise toe
LH heel
LH bad
LH SU bad
LH slight
rest fine
408 LH raw
408 LH behind
410 LH raw
LH DD raw
behind
rest fine
411 both hinds SU outside
heel bad
rest fine
done

## answered
told: today's feet: LH RH
mark 408: place, stage not called (left hind digital dermatitis)
saved 408
mark 409: place, degree not called (left hind sole ulcer)
mark 409: place, degree not called (left hind sole haemorrhage)
refused line 5: "heel" could be of several findings on LH; say the lesion as well: "LH sole ulcer heel"
mark 409: degree not called (left hind sole haemorrhage)
mark 409: degree not called (left hind sole ulcer)
refused line 8: "bad" could be of several findings on LH; say the lesion as well: "LH sole ulcer bad"
saved 408
told 408: now reads: 408 rest fine / LH DD raw / RH nothing found
saved 408
told 408: now reads: 408 rest fine / LH DD raw behind / RH nothing found
refused line 14: "raw" is said of nothing here; name the lesion or the act it belongs to, foot first: "LH outside sole ulcer"
saved 409
mark 410: place not called (left hind digital dermatitis)
saved 410
mark 411: place, degree not called (both hinds sole ulcer)
saved 411

## recorded
408 | LH DD behind raw | fine RH
409 | LH outside SU heel bad; inside SH toe slight | fine RH
410 | LH DD behind raw | fine RH
411 | LH outside SU heel bad | RH outside SU heel bad

## ended

## from a file
412 LH DD
rest fine
413 LH SU
rest fine
412 LH raw behind
413 LH outside heel bad
done

## recorded
408 | LH DD behind raw | fine RH
409 | LH outside SU heel bad; inside SH toe slight | fine RH
410 | LH DD behind raw | fine RH
411 | LH outside SU heel bad | RH outside SU heel bad
412 | LH DD behind raw | fine RH
413 | LH outside SU heel bad | fine RH

## ended
