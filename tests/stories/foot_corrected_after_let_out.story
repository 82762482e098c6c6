# "No, right hind" after she was let out corrects the feet of the last turn

The wrong foot no longer carries the block, and the tasks go with it. A file with the same lines
given again changes nothing.

## from a file
visit 2026-10-27
today hinds
412 lame LH
LH outside sole ulcer middle, bad; block on inside
done
no, right hind
no, no block
513 nothing found
done

## answered
told: today's feet: LH RH
saved 412
stop 412: Came lame left hind, and that foot was not lifted: lift it, or vet. (answer: LH vet / no, lame RH / go ahead)
saved 412
saved 412
saved 513

## the same file again

## answered
there already 412
there already 412
there already 412
there already 513

## cow 412
case: SU RH outside, found 1x
2026-10-27 RH: outside claw: sole ulcer, middle of the sole, bad (SU)

## due 2026-10-27
coming 412: look at right hind, ring if no better (farmer, by 2026-11-04)
coming 412: see again right hind (trimmer, by 2026-11-24)

## turns
412: 1
513: 1
