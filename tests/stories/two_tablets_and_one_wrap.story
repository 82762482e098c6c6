# Two tablets that tell two fates of one wrap are asked which is right

The farmer told the one at the gate that it is off, the other saw it on in the crush. Neither word is
taken for the later one, and until somebody says which holds it is to be taken off.

## on tablet B

## on tablet A

## given
visit 2026-10-20
today hinds
412 LH DD raw behind; wrap on, off 3d
rest fine
done

## the tablets meet

## on tablet A

## said
visit 2026-10-27
412 wrap off

## answered
told 412: closed: wrap off left hind

## on tablet B

## said
visit 2026-10-27
today hinds
412 recheck
LH wrap still on; nothing found
rest fine
done

## answered
told: today's feet: LH RH
saved 412

## the tablets meet

## on tablet A

## ended
told_two_ways 412: Wrap on left hind: said to be off, and to be still on. Which is right?

## due 2026-10-28
overdue 412: wrap off left hind (told off and told still on: which holds?) (farmer, by 2026-10-23)

## on tablet B

## due 2026-10-28
overdue 412: wrap off left hind (told off and told still on: which holds?) (farmer, by 2026-10-23)
