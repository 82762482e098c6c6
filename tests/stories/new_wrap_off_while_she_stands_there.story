# "308 wrap off" while she stands there with a new one is asked about as behind "done"

What was told of the old wrap is told; the new one was put on since, and it may be the one that is
off.

## given
visit 2026-10-20
today hinds
308 lame LH
LH DD raw; wrap on
rest fine
done
320 lame RH
RH DD raw; wrap on
rest fine
done

## said
visit 2026-10-27
today hinds
308 wrap off
308 LH DD chronic behind; wrap on, off 2d
308 wrap off
rest fine
done
308 LH wrap off
320 RH wrap off; DD chronic behind; wrap on, off 2d
320 wrap off
rest fine
done

## answered
told: today's feet: LH RH
told 308: closed: wrap off left hind
question 308: Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.
saved 308
question 308: Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
question 320: Her wrap on right hind was put on at this visit. Is that one off? Then say the foot.
saved 320

## ended
news_unclear 308: "308 LH wrap off": Her wrap on left hind was put on at this visit. Is that one off? Then say this again.
news_unclear 320: "320 wrap off": Her wrap on right hind was put on at this visit. Is that one off? Then say the foot.
