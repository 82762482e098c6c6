# What is done about a lame cow may be said behind "rest fine", and only then is she stopped for

"Rest fine" ends what was found; the plan comes in the next breath. Without one she is stopped for with
the next line, at "done", or when the next cow is named.

## said
visit 2026-10-27
today hinds
342 lame RH
RH nothing found; rest fine
watch her walk in 7d
go ahead
done
343 lame RH
RH nothing found; rest fine
RH vet
done
344 lame RH
RH nothing found; rest fine
note short behind
go ahead
done
345 lame RH
RH nothing found; rest fine
done
go ahead
done
346 lame RH
RH nothing found; rest fine
347 nothing found
done

## answered
told: today's feet: LH RH
ask 342: Came lame right hind, no cause found: compare the other leg, think higher up. (answer: RH vet / go ahead)
saved 342
saved 343
stop 344: Came lame right hind, nothing found: look again, look higher, or vet. (answer: RH vet / go ahead)
saved 344
stop 345: Came lame right hind, nothing found: look again, look higher, or vet. (answer: RH vet / go ahead)
saved 345
stop 346: Came lame right hind, nothing found: look again, look higher, or vet. (answer: RH vet / go ahead)
saved 346
saved 347

## ended
unanswered 346: Came lame right hind, nothing found: look again, look higher, or vet.
