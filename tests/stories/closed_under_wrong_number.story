# A task closed under the wrong number stays closed when the number is put right

412 was called, and her wrap told to be off again on another tablet before anybody saw that she was
421. It was the wrap of that turn, so nobody has to take it off once more. Whether 421 has a wrap on
her is asked when she is next in the crush, for nobody has spoken of 421's foot.

## said
visit 2026-10-27
today all four
412 lame LH
LH DD raw behind; wrap on
rest fine
done

## on tablet B

## said
visit 2026-10-27
412 wrap off LH
412 wrap off LH

## the tablets meet

## on tablet A

## said
no, 421

## answered
told: today's feet: LF RF LH RH
saved 412
question 412: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
told 412: closed: wrap off left hind
saved 421

## due 2026-11-03
due 421: look at the sore on left hind (farmer, by 2026-11-06)

## cow 421
cow 421, called 412 on 2026-10-27, then put right
on her: wrap LH since 2026-10-27
case: DD LH, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): digital dermatitis, raw, behind (DD); wrap on
2026-10-27 RH: nothing found
