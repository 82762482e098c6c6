# A cow of whom nothing but "go ahead" was said is done: it was decided

Said while she stands there, or when she is out already.

## said
visit 2026-10-27
today hinds
412 lame LH
done
go ahead
done
415 lame LH
done
done
go ahead
416
go ahead
done

## answered
told: today's feet: LH RH
stop 412: Came lame left hind, and that foot was not lifted: lift it, or vet. (answer: LH vet / go ahead)
saved 412
stop 415: Came lame left hind, and that foot was not lifted: lift it, or vet. (answer: LH vet / go ahead)
saved 415
saved 415
mark: there is nothing to answer
saved 416

## recorded
412 lame LH
415 lame LH
416 | unfinished: nothing was said

## ended
unfinished 416: Her turn was not finished: nothing was said
lifted_not_called 412: Both hinds: not lifted, or what was found?
lifted_not_called 415: Both hinds: not lifted, or what was found?
