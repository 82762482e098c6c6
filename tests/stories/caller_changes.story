# When another one takes over in the middle of the day, each cow is held by who judged her

She who stands there when it changes was called by the one before, unless more is called of her.

## said
visit 2026-10-27
caller Anna
writer Joss
today hinds
412 nothing found
caller Ben
413 LH DD raw behind
done
414 RH DD raw behind
caller Anna
rest fine
done
413 no, chronic

## callers
Anna: 412, 414
Ben: 413

## answered
told: caller Anna
told: writer Joss
told: today's feet: LH RH
told: caller Ben
saved 412
saved 413
told: caller Anna
saved 414
saved 413
told 413: now reads: 413 / LH DD chronic behind
