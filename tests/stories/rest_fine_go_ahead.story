# "Rest fine; go ahead" answers in one breath what the rest raises

## said
visit 2026-10-27
today hinds
412 lame LH
rest fine; go ahead
done
413 lame LH; rest fine; go ahead; done

## answered
told: today's feet: LH RH
stop 412: Came lame left hind, nothing found: look again, look higher, or vet. (answer: LH vet / go ahead)
saved 412
stop 413: Came lame left hind, nothing found: look again, look higher, or vet. (answer: LH vet / go ahead)
saved 413

## recorded
412 lame LH | fine LH RH
413 lame LH | fine LH RH

## ended
