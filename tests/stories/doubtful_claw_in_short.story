# "SU out?" is asked about as "SU outside?" is

## said
visit 2026-10-27
today hinds
410 LH SU out?
no, inside
rest fine
411 RH bruise in?
rest fine; go ahead
done

## answered
told: today's feet: LH RH
mark 410: place, degree not called (left hind sole ulcer)
ask 410: Left hind, sole ulcer: "out?" Is it so? (answer: no, inside / go ahead)
saved 410
mark 411: place, degree not called (right hind sole haemorrhage)
ask 411: Right hind, sole haemorrhage: "in?" Is it so? (answer: no, outside / go ahead)
saved 411

## recorded
410 | LH inside SU out? | fine RH
411 | RH inside SH in? | fine LH
