# "Wrap off" with a wrap on both hinds is asked about

Nothing is closed until it is clear which foot is meant.

## given
visit 2026-10-20
today all four
412 lame RH
both hinds DD raw behind; wrap on
rest fine
done

## said
visit 2026-10-27
412 wrap off
412 wrap off LH

## answered
question 412: 412: wrap off on which foot (left hind, right hind)?
told 412: wrap off left hind: wrap taken off

## due 2026-10-27
due 412: wrap off right hind (farmer, by 2026-10-25)
