# Told again after a new wrap was put on, "wrap off" is news

The same told twice with nothing in between is there already.

## given
visit 2026-10-20
today hinds
412 lame LH
LH DD raw behind; wrap on
RH nothing found
done

## from a file
visit 2026-10-27
today hinds
412 wrap off LH
412 wrap off LH
412 recheck
LH DD raw behind; wrap on
RH nothing found
done
412 wrap off LH

## answered
told: today's feet: LH RH
told 412: closed: wrap off left hind
there already 412
saved 412
told 412: closed: wrap off left hind

## the same file again

## answered
there already 412
there already 412
there already 412
there already 412

## ended
