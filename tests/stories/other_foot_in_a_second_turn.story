# The same cow twice with another foot: the feet join and nothing is asked

## said
visit 2026-10-27
today hinds
412 routine
LH outside bruise middle, slight
413 nothing found
412 RH outside bruise middle, slight
done

## answered
told: today's feet: LH RH
saved 412
saved 413
saved 412

## turns
412: 2
413: 1

## ended

## cow 412
case: SH LH outside, found 1x
case: SH RH outside, found 1x
2026-10-27 LH: outside claw: sole haemorrhage, middle of the sole, slight (SH)
2026-10-27 RH: outside claw: sole haemorrhage, middle of the sole, slight (SH)
