# "Inside" answers on which claw the block is, when that was asked just before

The claw of what was found stays as it was called, or not called. Where something else was found
since, the claw is of that.

## said
visit 2026-10-27
today hinds
410 LH SU; block
inside
rest fine
420 LH WL heel; block
in
rest fine
430 LH block; WL
LH out
rest fine
440 both hinds SU; block
in
rest fine
450 LH SU; block
LH no, no SU; bruise
inside
go ahead
rest fine
done

## answered
told: today's feet: LH RH
mark 410: claw, place, degree not called (left hind sole ulcer)
ask 410: Left hind: block on, which claw? (answer: LH block on inside / LH block on outside / go ahead)
mark 410: taken as: block on inside
saved 410
mark 420: claw, degree not called (left hind white line lesion)
ask 420: Left hind: block on, which claw? (answer: LH block on inside / LH block on outside / go ahead)
mark 420: taken as: block on inside
saved 420
mark 430: claw, place, degree not called (left hind white line lesion)
ask 430: Left hind: block on, which claw? (answer: LH block on inside / LH block on outside / go ahead)
mark 430: taken as: block on outside
saved 430
mark 440: claw, place, degree not called (both hinds sole ulcer)
ask 440: Left hind: block on, which claw? (answer: LH block on inside / LH block on outside / go ahead)
ask 440: Right hind: block on, which claw? (answer: RH block on inside / RH block on outside / go ahead)
mark 440: taken as: block on inside
saved 440
mark 450: claw, place, degree not called (left hind sole ulcer)
ask 450: Left hind: block on, which claw? (answer: LH block on inside / LH block on outside / go ahead)
mark 450: claw, place, degree not called (left hind sole haemorrhage)
mark 450: place, degree not called (left hind sole haemorrhage)
saved 450

## recorded
410 | LH SU; block_on inside | fine RH
420 | LH WL white_line_heel; block_on inside | fine RH
430 | LH WL; block_on outside | fine RH
440 | LH SU; block_on inside | RH SU; block_on inside
450 | LH inside SH; block_on | fine RH
