# A wrap that is off stays off when the turn that put it on is corrected

The recording broke off after the wrap of 412, and the farmer rang: it has come off, the one of this
visit, and that is said once more when it is asked. The file is
given again with the rest of her turn. It is the same wrap, so nothing is to be done again; the
wrap on the other foot is new.

## from a file
visit 2026-10-27
today all four
412 lame LH
LH DD raw behind; wrap on

## answered
told: today's feet: LF RF LH RH
saved 412

## said
412 wrap came off LH
412 wrap came off LH

## answered
question 412: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
told 412: closed: wrap off left hind

## due 2026-10-28
coming 412: look at the sore on left hind (farmer, by 2026-11-06)

## from a file
visit 2026-10-27
412 lame LH
LH DD raw behind; wrap on
RH DD raw behind; wrap on
rest fine
done

## answered
saved 412

## due 2026-10-28
coming 412: wrap off right hind (farmer, by 2026-11-01)
coming 412: look at the sore on left hind (farmer, by 2026-11-06)
coming 412: look at the sore on right hind (farmer, by 2026-11-06)

## cow 412
on her: wrap RH since 2026-10-27
case: DD LH, found 1x
case: DD RH, found 1x
2026-10-27 LF: nothing found
2026-10-27 RF: nothing found
2026-10-27 LH (lame): digital dermatitis, raw, behind (DD); wrap on
2026-10-27 RH: digital dermatitis, raw, behind (DD); wrap on
