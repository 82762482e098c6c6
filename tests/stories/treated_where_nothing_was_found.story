# A treatment is not put on a foot only because "nothing found" was said of it last

The ulcers are on the left hind, "RH fine" was said between, and then "vet" alone: the sheet would
send the vet to the right hind. Said with its foot it is taken, of a sound one too.

## said
visit 2026-10-27
today hinds
203 LH SU outside bad
LH SU inside bad
RH fine
vet
LH vet
done
204 LH SU outside
RH fine
block on inside
LH block on inside
RH wrap on, off 3d
done

## answered
told: today's feet: LH RH
mark 203: place not called (left hind sole ulcer)
ask 203: Left hind: both claws hurt, no good one for a block. Vet? (answer: LH vet / go ahead)
refused line 5: "vet" would go to RH, of which "nothing found" was said; say the foot with it: "LH vet"; or, if it is meant, "RH vet"
saved 203
mark 204: place, degree not called (left hind sole ulcer)
refused line 10: "block on inside" would go to RH, of which "nothing found" was said; say the foot with it: "LH block on inside"; or, if it is meant, "RH block on inside"
saved 204

## recorded
203 | LH outside SU bad; inside SU bad; vet | fine RH
204 | LH outside SU; block_on inside | RH nothing_found; wrap_on for 2026-10-30
