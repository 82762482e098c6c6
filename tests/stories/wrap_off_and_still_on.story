# "412 wraps still on" behind "412 wrap off" is asked about, and stays asked until it is clear

One says it is off, and then it is on: somebody has to look, so it stays to be taken off. Said once
more beside the crush, it is on after all, or off.

## given
visit 2026-10-20
today hinds
412 LH DD raw behind; wrap on, off 3d
rest fine
413 RH DD raw behind; wrap on, off 3d
rest fine
414 RH DD raw behind; wrap on, off 3d
rest fine
done

## said
visit 2026-10-27
today hinds
412 wrap off
412 wraps still on
413 wrap off
413 wraps still on
413 wraps still on
414 wrap off
414 wraps still on
414 wrap off
done

## answered
told: today's feet: LH RH
told 412: closed: wrap off left hind
question 412: Her wrap on left hind was said to be off at this visit. Is it off, or still on?
told 413: closed: wrap off right hind
question 413: Her wrap on right hind was said to be off at this visit. Is it off, or still on?
told 413: to do: wrap off right hind
told 414: closed: wrap off right hind
question 414: Her wrap on right hind was said to be off at this visit. Is it off, or still on?
told 414: closed: wrap off right hind
mark: no cow is in the crush

## ended
news_unclear 412: "412 wraps still on": Her wrap on left hind was said to be off at this visit. Is it off, or still on?
due_not_seen 413: wrap off right hind is due and she was not seen

## due 2026-10-27
overdue 412: wrap off left hind (told off and told still on: which holds?) (farmer, by 2026-10-23)
overdue 413: wrap off right hind (farmer, by 2026-10-23)
due 412: look at the sore on left hind (farmer, by 2026-10-30)
due 413: look at the sore on right hind (farmer, by 2026-10-30)
due 414: look at the sore on right hind (farmer, by 2026-10-30)

## cow 413
on her: wrap RH since 2026-10-20
case: DD RH, found 1x
2026-10-20 LH: nothing found
2026-10-20 RH: digital dermatitis, raw, behind (DD); wrap on, off by Fri 23 Oct
