# "Done" with nobody in the crush ends nothing and is not refused

Who says "done" behind everything says it behind news as well. What was let out can still be mended.

## given
visit 2026-10-20
today hinds
412 LH DD raw behind; wrap on, off 3d
done

## said
visit 2026-10-27
today hinds
412 wrap off
done
413 LH outside bruise middle, slight
rest fine
done
done
no, inside

## answered
told: today's feet: LH RH
told 412: closed: wrap off left hind
mark: no cow is in the crush
saved 413
mark: no cow is in the crush
saved 413

## cow 413
case: SH LH inside, found 1x
2026-10-27 LH: inside claw: sole haemorrhage, middle of the sole, slight (SH)
2026-10-27 RH: nothing found
