# Today's feet said late on both tablets fill the same turn once

Both have the visit as it stood when they met. What one fills in, the other fills in alike: it is
one call of each foot.

## on tablet B

## on tablet A

## said
visit 2026-10-27
412 all good
413 LH SU bad outside heel; rest fine
done

## the tablets meet

## on tablet B

## said
visit 2026-10-27
today all four
414 all good
done

## on tablet A

## said
visit 2026-10-27
today all four
415 all good
done

## the tablets meet

## answered
question: Which feet are lifted today? Until that is said "rest fine" fills none. (answer: today all four / today both hinds)
saved 412
saved 413
told: today's feet: LF RF LH RH
saved 412
saved 413
told: "rest fine" now speaks of these feet of 412, 413
saved 414
told: today's feet: LF RF LH RH
saved 412
saved 413
told: "rest fine" now speaks of these feet of 412, 413
saved 415

## ended

## recorded
414 | fine LF RF LH RH
412 | fine LF RF LH RH
413 | LH outside SU heel bad | fine LF RF RH
415 | fine LF RF LH RH
