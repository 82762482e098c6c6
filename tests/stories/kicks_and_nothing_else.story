# Of whom only is said how she is handled is asked about, and it is known all the same

The farmer may have told it of a cow that does not come in; nothing of it is silently a cow that
was seen to.

## given
visit 2026-10-13
today hinds
416 kicks
412 nothing found
done

## said
visit 2026-10-27
today hinds
417 jumps
416 nothing found
done

## answered
told: today's feet: LH RH
saved 417
mark 416: careful: kicks
saved 416

## ended
unfinished 417: Her turn was not finished: nothing was said of her feet
